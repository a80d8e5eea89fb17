import { describe, expect, it } from 'vitest';
import { valueIn } from '../../../src/quantity/scale';
import { KITCHEN, type Kitchen, made } from './made';

describe('what to buy', () => {
  const salsa = (pantry: Kitchen['pantry']) =>
    made({
      lots: [{ food: 'tomato', raw: '20 lb' }],
      kitchen: { ...KITCHEN, pantry },
      products: [
        { recipe: 'salsa-using-paste-tomatoes', jar: 'pint', least: 2, name: 'one' },
        { recipe: 'salsa-using-slicing-tomatoes', jar: 'pint', least: 2, name: 'other' },
      ],
    });

  it('names the acid of a recipe where no pantry is given, all of it to be bought', () => {
    const acid = salsa(undefined).haveReady.filter(({ what }) => what === 'bottled lemon juice');
    expect(acid).toHaveLength(1);
    expect(acid[0]?.short).toEqual(acid[0]?.needed);
  });

  it('has one line for a thing that two products take, by weight where it is cut, and counts what is counted', () => {
    const plan = salsa(undefined);
    const whats = plan.haveReady.map(({ what }) => what);
    expect(new Set(whats).size).toBe(whats.length);
    const onion = plan.haveReady.find(({ what }) => what === 'onion');
    const asked = plan.products.flatMap(({ ingredients }) => ingredients.filter(({ toBuy }) => toBuy === 'onion'));
    expect(asked).toHaveLength(2);
    const kg = asked.reduce((sum, { or }) => sum + valueIn(or as { value: number; unit: 'lb' }, 'kg'), 0);
    expect(valueIn(onion?.needed as { value: number; unit: 'lb' }, 'kg')).toBeCloseTo(kg, 6);
    const cloves = plan.haveReady.find(({ what }) => what === 'garlic, cloves');
    expect(Number.isInteger(cloves?.needed)).toBe(true);
    expect(cloves?.short).toBe(cloves?.needed);
  });

  it('is short of what the pantry holds too little of', () => {
    const plan = salsa([{ item: 'bottled lemon juice', amount: '0.1 lb' }]);
    const acid = plan.haveReady.find(({ what }) => what === 'bottled lemon juice');
    const kg = (mass: unknown) => valueIn(mass as { value: number; unit: 'cup' }, 'cup');
    expect(kg(acid?.short)).toBeGreaterThan(0);
    expect(kg(acid?.short)).toBeLessThan(kg(acid?.needed));
  });
});
