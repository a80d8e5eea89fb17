import { describe, expect, it } from 'vitest';
import { KITCHEN, made } from './made';

describe('leftFresh', () => {
  it('is less by what goes into a product besides its own food', () => {
    const plan = made({
      lots: [
        { food: 'tomato', raw: '30 lb' },
        { food: 'onion', raw: '10 lb' },
      ],
      kitchen: KITCHEN,
      products: [{ recipe: 'salsa-using-paste-tomatoes', from: 'tomato', jar: 'pint', least: 1 }],
    });
    const used = plan.products[0]?.fromLots.find(({ lot }) => lot === 'onion')?.raw.value ?? 0;
    expect(used).toBeGreaterThan(0);
    expect(plan.leftFresh.find(({ lot }) => lot === 'onion')?.raw.value).toBeCloseTo(10 - used, 9);
  });
});
