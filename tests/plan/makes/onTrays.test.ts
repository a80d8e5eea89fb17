import { describe, expect, test } from 'vitest';
import { planDay } from '../../../src/plan/index';
import { valueIn } from '../../../src/quantity/scale';
import { FULL_KITCHEN, planOf, productOf } from '../fullKitchen';

const pounds = (mass: unknown) => valueIn(mass as never, 'lb');

describe('dried', () => {
  test.each([
    ['dried', 'bag of 1 oz'],
    ['freeze-dried', 'bag of 1 oz'],
    ['leather', 'sheet'],
  ])('%s: thinner and drier as asked, on trays, lighter than it went on', (make, unit) => {
    const product = productOf('apple', {
      make,
      packSize: '1 oz',
      moisture: make === 'freeze-dried' ? 0.04 : 0.15,
      thickness: '1/4 in',
    });
    expect(product.units.unit).toBe(unit);
    expect(product.drying?.trays).toBeGreaterThan(0);
    expect(pounds(product.drying?.dried.high)).toBeLessThan(pounds(product.ready.high));
    // dry matter stays: an apple is some 85 % water, and 15 % of what is left
    expect(pounds(product.drying?.dried.likely)).toBeLessThan(0.25 * pounds(product.ready.likely));
  });
  test('bags are promised from what is dry at the poor end', () => {
    const { units, drying: trays } = productOf('apple', { make: 'dried', form: 'slices', packSize: '4 oz' });
    expect(units.promised).toBe(Math.floor(4 * pounds(trays?.dried.low) + 1e-6));
    expect(units.ready).toBeGreaterThanOrEqual(4 * pounds(trays?.dried.high) - 1e-6);
  });
  test('powder is made of what falls off: no more than the low end of it', () => {
    const plan = planDay({
      lots: [{ food: 'apple', raw: '40 lb' }],
      kitchen: FULL_KITCHEN,
      products: [
        { make: 'jars', from: 'apple', form: 'sauce', jar: 'pint', worth: 2 },
        { recipe: 'fruit-trimmings-powder', from: 'apple', packSize: '1 oz', worth: 1 },
      ],
    });
    if (!plan.feasible) throw new Error(plan.reason.text);
    const [sauce, powder] = plan.products;
    expect(powder?.units.unit).toBe('jar of 1 oz');
    expect(powder?.name).toBe('apple powder');
    expect(powder?.trimmings).toBeUndefined();
    expect(pounds(powder?.raw)).toBeGreaterThan(0.5);
    expect(pounds(powder?.raw)).toBeLessThanOrEqual(pounds(sauce?.trimmings?.low) + 1e-6);
  });
  test('what is blanched first is blanched before it goes on trays', () => {
    const { directions: steps, cooking: pots } = productOf('carrot', { make: 'dried', form: 'slices' });
    const at = (words: string) => steps.findIndex((step) => step.startsWith(words));
    expect(at('Blanch for')).toBeGreaterThan(at('Wash'));
    expect(steps.filter((step) => step.startsWith('Blanch'))).toHaveLength(1);
    expect(pots?.minutesEach).toBeGreaterThan(1);
  });
  test('no more on the trays than they hold', () => {
    const { drying: trays, ready } = productOf(
      'apple',
      { make: 'dried', form: 'slices' },
      { dryer: { trays: 3, trayArea: '200 in2' } },
    );
    expect((trays?.trays ?? 0) * pounds(trays?.perTray)).toBeGreaterThanOrEqual(pounds(ready.high) - 1e-6);
  });
  test.each([
    ['no-dryer', { dryer: undefined }, 'dried'],
    ['no-dryer', { dryer: undefined }, 'leather'],
    ['no-freeze-dryer', { freezeDryer: undefined }, 'freeze-dried'],
    ['machine-busy', { dryer: { ...FULL_KITCHEN.dryer, busyUntil: '160 h' } }, 'dried'],
  ])('%s', (code, kitchen, make) => {
    expect(planOf('apple', { make }, kitchen).leftOut[0]?.reason.code).toBe(code);
  });
});
