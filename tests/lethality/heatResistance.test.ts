import { expect, test } from 'vitest';
import { heatResistance, publishedLethality } from '../../src/lethality/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test('any words of a name find all its lines; a recalled line is said to be recalled', () => {
  const ids = (input: Parameters<typeof heatResistance>[0]) => heatResistance(input).cautions.map(({ id }) => id);
  expect(heatResistance({ organism: 'clostridium botulinum' }).entries).toHaveLength(2);
  expect(heatResistance({ organism: 'Spores' }).entries.length).toBeGreaterThan(5);
  expect(ids({ organism: 'botulinum' })).not.toContain('recalled');
  expect(ids({ organism: 'Listeria' })).toContain('recalled');
  expect(heatResistance({ organism: 'Listeria' }).entries[0]).not.toHaveProperty('dValue');
  expect(publishedLethality({ about: 'juices' }).entries).toHaveLength(6);
  expect(publishedLethality({ about: 'apple cider' }).entries[0]).not.toHaveProperty('z');
  expect(publishedLethality({}).cautions.map(({ id }) => id)).toContain('published-heat-no-process');
});

test.each([
  [() => heatResistance({ organism: 'Salmonela' }), ['UNKNOWN_NAME', 'organism']],
  [() => heatResistance({ organism: '' }), ['UNKNOWN_NAME', 'organism']],
])('bad input %# is refused', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});

test('a misspelt organism is offered the nearest', () => {
  expect(() => heatResistance({ organism: 'Salmonela' })).toThrow(/Salmonella/);
});
