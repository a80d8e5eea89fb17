import { expect, test } from 'vitest';
import { joinBasis, joinCautions } from '../../src/sources/basis';
import { caution } from '../../src/sources/cautions';
import { sources } from '../../src/sources/index';
import { source } from '../../src/sources/source';
import { basisOf } from '../../src/sources/table';

test('a source is found by its id', () => {
  expect(source('usda-cghc-2015')).toMatchObject({ year: 2015 });
  expect(sources()).toContainEqual(source('usda-cghc-2015'));
});

test('an unknown id offers the nearest', () => {
  expect(() => source('usda-cghc-2051')).toThrow(expect.objectContaining({ code: 'UNKNOWN_NAME', path: 'id' }));
  expect(() => source('usda-cghc-2051')).toThrow('usda-cghc-2015');
  expect(() => source(undefined as never)).toThrow(expect.objectContaining({ code: 'UNKNOWN_NAME' }));
});

test('a row says how its figure was obtained', () => {
  const place = { source: 'usda-cghc-2015', locator: 'p. 2-6' };
  const row = { id: 'peach-halves', ...place };
  expect(basisOf({ ...row, obtained: 'read' }, 'process time')).toEqual({
    of: 'process time',
    kind: 'published',
    ...place,
  });
  expect(basisOf({ ...row, obtained: 'read-secondary' }, 'x').kind).toBe('published');
  expect(basisOf({ ...row, obtained: 'memory' }, 'x').kind).toBe('recalled');
  expect(basisOf({ ...row, obtained: 'derived' }, 'x').kind).toBe('equation');
});

test('lists join without repeating', () => {
  const line = { of: 'a', kind: 'published', source: 's', locator: 'l' } as const;
  expect(joinBasis([line], [{ ...line }, { ...line, locator: 'm' }])).toHaveLength(2);
  const burn = caution('hot-liquids-burn');
  expect(joinCautions([burn], [burn, caution('estimate')])).toHaveLength(2);
  expect(() => caution('nothing')).toThrow('no caution nothing');
});
