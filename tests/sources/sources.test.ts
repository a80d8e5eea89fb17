import { expect, test } from 'vitest';
import { sources } from '../../src/sources/index';
import { thrownBy } from '../helpers/errors';

test('the citations of an answer, each once and in its order', () => {
  const ids = ['usda-sr28', 'usda-cghc-2015', 'usda-sr28'];
  expect(sources({ ids }).map(({ id }) => id)).toEqual(['usda-sr28', 'usda-cghc-2015']);
});

test('without ids the whole register', () => {
  expect(sources()).toEqual(sources({}));
  expect(sources().length).toBeGreaterThan(100);
  expect(sources()).toContainEqual(sources({ ids: ['usda-cghc-2015'] })[0]);
});

test('an unknown id is refused where it stands', () => {
  const error = thrownBy(() => sources({ ids: ['usda-sr28', 'usda-cghc-2051'] }));
  expect(error).toMatchObject({ code: 'UNKNOWN_NAME', path: 'ids[1]' });
  expect(error.message).toContain('usda-cghc-2015');
  expect(thrownBy(() => sources({ ids: [] }))).toMatchObject({ code: 'OUT_OF_RANGE', path: 'ids' });
});
