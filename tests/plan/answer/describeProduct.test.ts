import { describe, expect, it } from 'vitest';
import { KITCHEN, made } from './made';

describe('one yield basis', () => {
  it.each([
    { recipe: 'peach-halves-or-slices', food: 'peach', raw: '40 lb' },
    { recipe: 'tomato-sauce', food: 'tomato', raw: '60 lb' },
    { recipe: 'salsa-using-paste-tomatoes', food: 'tomato', raw: '30 lb' },
    { recipe: 'apple-sauce', food: 'apple', raw: '40 lb' },
  ] as const)('units of $recipe, times what one takes, are its ready weight', ({ recipe, food, raw }) => {
    const [product] = made({ lots: [{ food, raw }], kitchen: KITCHEN, products: [{ recipe, jar: 'pint' }] }).products;
    const { units, ready } = product as NonNullable<typeof product>;
    const { low, high } = units.readyEach;
    expect(units.promised * low.value).toBeLessThanOrEqual(ready.low.value + 1e-9);
    expect((units.promised + 1) * high.value).toBeGreaterThan(ready.low.value);
    expect(units.ready * high.value).toBeGreaterThanOrEqual(ready.high.value - 1e-9);
    expect((units.ready - 1) * low.value).toBeLessThan(ready.high.value);
  });
});
