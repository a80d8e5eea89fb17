import { describe, expect, test } from 'vitest';
import { valueIn } from '../../../src/quantity/scale';
import { planOf, productOf } from '../fullKitchen';

const jam = { make: 'jam', pectin: 'none', jar: 'half-pint' } as const;
describe('a batch that is cooked whole', () => {
  test('needs a pot that holds it with the room to foam', () => {
    const [out] = planOf('peach', jam, { pots: [{ volume: '3 quarts' }] }).leftOut;
    expect(out?.reason.code).toBe('no-pot-for-batch');
    expect(out?.reason.text).toMatch(/needs \d.* quarts with the room to foam/);
    expect(productOf('peach', jam, { pots: [{ volume: '12 quarts' }] }).units.promised).toBeGreaterThan(0);
  });
  test('is in a pot by itself: as many pots full as batches', () => {
    const { units, cooking: pots } = productOf('peach', { ...jam, most: 21 });
    const batches = (pots?.batches ?? []).reduce((sum, each) => sum + each.count, 0);
    expect(batches).toBe(units.promised / 6);
  });
});
test('a raw pack heats no food', () => {
  const asked = { make: 'jars', form: 'halves', jar: 'quart', method: 'boiling-water' } as const;
  expect(productOf('peach', { ...asked, pack: 'raw' }).cooking).toBeUndefined();
  expect(productOf('peach', { ...asked, pack: 'hot' }).cooking?.batches.length).toBeGreaterThan(0);
});
test('nor does a raw pack of pickles: only what it is covered with is in the pot', () => {
  const { cooking: pots, raw } = productOf('cucumber', { recipe: 'quick-fresh-pack-dill-pickles', jar: 'pint' });
  // 3.5 quarts of vinegar and water to 8 lb of cucumbers: under a liter a kilogram
  const perKg = valueIn(pots?.volume as never, 'L') / valueIn(raw, 'kg');
  expect(perKg).toBeGreaterThan(0.8);
  expect(perKg).toBeLessThan(1.3);
});
test('no more in a pot than it holds', () => {
  const { cooking: pots, raw } = productOf(
    'apple',
    { make: 'jars', form: 'sauce', jar: 'pint' },
    { pots: [{ volume: '8 quarts' }] },
    '40 lb',
  );
  const room = (pots?.batches ?? []).reduce(
    (sum, { count: batches, mostAtOnce: most }) => sum + batches * valueIn(most, 'L'),
    0,
  );
  expect(room).toBeGreaterThanOrEqual(valueIn(pots?.volume as never, 'L') - 1e-6);
  expect(valueIn(pots?.volume as never, 'L')).toBeGreaterThan(0.5 * valueIn(raw, 'kg'));
});
