import { describe, expect, it } from 'vitest';
import { KITCHEN, made } from './made';

describe('a plan that makes nothing', () => {
  it('is never proven best, and says what would let something in', () => {
    const plan = made({
      lots: [{ food: 'peach', raw: '30 lb' }],
      kitchen: { ...KITCHEN, hours: '1 h' },
      products: [{ make: 'jars', from: 'peach', form: 'halves', jar: 'pint' }],
    });
    expect(plan.products).toEqual([]);
    expect(plan.provenBest).toBe(false);
    expect(plan.nothingMade?.instead).toEqual([{ text: 'peach halves in pints: add hours' }]);
  });

  it('says which equipment was not named, where the plan chooses and nothing is open', () => {
    const plan = made({
      lots: [{ food: 'green beans', raw: '10 lb' }],
      kitchen: { elevation: '0 ft', hours: '8 h', hands: 1 },
    });
    expect(plan.products).toEqual([]);
    expect(plan.nothingMade?.instead.length).toBeGreaterThan(0);
    for (const { text } of plan.nothingMade?.instead ?? []) expect(text).not.toBe('');
  });

  it('is not said of one that makes something', () => {
    const plan = made({
      lots: [{ food: 'peach', raw: '10 lb' }],
      kitchen: KITCHEN,
      products: [{ make: 'jars', from: 'peach', form: 'halves', jar: 'pint' }],
    });
    expect(plan.nothingMade).toBeUndefined();
    expect(plan.products).toHaveLength(1);
  });
});
