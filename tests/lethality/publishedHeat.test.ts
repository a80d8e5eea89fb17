import { expect, test } from 'vitest';
import { publishedHeat } from '../../src/lethality/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test('any words of a name find all its lines; a recalled line is said to be recalled', () => {
  const ids = (input: Parameters<typeof publishedHeat>[0]) => publishedHeat(input).cautions.map(({ id }) => id);
  expect(publishedHeat({ organism: 'clostridium botulinum' }).resistance).toHaveLength(2);
  expect(publishedHeat({ organism: 'Spores' }).resistance.length).toBeGreaterThan(5);
  expect(ids({ organism: 'botulinum' })).not.toContain('recalled');
  expect(ids({ organism: 'Listeria' })).toContain('recalled');
  expect(publishedHeat({ organism: 'Listeria' }).resistance[0]).not.toHaveProperty('dValue');
  expect(publishedHeat({ about: 'juices' }).enough).toHaveLength(6);
  expect(publishedHeat({ about: 'apple cider' }).enough[0]).not.toHaveProperty('z');
  expect(ids({})).toContain('published-heat-no-process');
});

test('answers what is asked for and nothing beside', () => {
  expect(publishedHeat({ organism: 'botulinum' }).enough).toEqual([]);
  expect(publishedHeat({ about: 'juices' }).resistance).toEqual([]);
  const both = publishedHeat({ organism: 'botulinum', about: 'juices' });
  expect([both.resistance.length, both.enough.length, both.basis.length]).toEqual([2, 6, 8]);
});

test.each([
  [() => publishedHeat({ organism: 'Salmonela' }), ['UNKNOWN_NAME', 'organism']],
  [() => publishedHeat({ organism: '' }), ['UNKNOWN_NAME', 'organism']],
  [() => publishedHeat({ about: 'zzzzzz' }), ['UNKNOWN_NAME', 'about']],
])('bad input %# is refused', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});

test('a misspelt organism is offered the nearest', () => {
  expect(() => publishedHeat({ organism: 'Salmonela' })).toThrow(/Salmonella/);
});
