import { expect, test } from 'vitest';
import { sweetenerMass } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('the weight of a cup (USDA SR28)', () => {
  expect(sweetenerMass({ sweetener: 'granulated sugar', volume: '1 cup' }).mass.value).toBe(200);
  expect(sweetenerMass({ sweetener: 'Honey', volume: '1/2 cup' }).cautions.map(({ id }) => id)).toEqual([
    'no-honey-under-one',
  ]);
  expect(sweetenerMass({ sweetener: 'molasses', volume: '1 cup' }).cautions).toEqual([]);
  expect(errorOf(() => sweetenerMass({ sweetener: 'sand', volume: '1 cup' }))).toBe('UNKNOWN_NAME sweetener');
});
