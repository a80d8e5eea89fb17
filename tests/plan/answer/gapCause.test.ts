import { describe, expect, it } from 'vitest';
import { KITCHEN, made } from './made';

describe('gapCause', () => {
  const day = (hours: `${number} h`) =>
    made({
      lots: [{ food: 'peach', raw: '60 lb' }],
      kitchen: { ...KITCHEN, hands: 1, hours },
      products: [{ make: 'jars', from: 'peach', form: 'halves', jar: 'pint' }],
    });

  it('is there where a better plan may exist, and not where the plan is proven best', () => {
    for (const hours of ['4 h', '5 h', '6 h', '20 h'] as const) {
      const { provenBest, gap, gapCause } = day(hours);
      expect(gapCause === undefined).toBe(provenBest);
      expect(gap > 0).toBe(!provenBest);
    }
  });

  it('names what runs late, and how long', () => {
    const causes = (['4 h', '5 h', '6 h'] as const).flatMap((hours) => day(hours).gapCause ?? []);
    expect(causes.length).toBeGreaterThan(0);
    for (const { kind: of, late = 0, stillBusy: uses = [] } of causes) {
      expect(of).toBe('order of work');
      expect(late).toBeGreaterThan(0);
      expect(uses.length).toBeGreaterThan(0);
    }
  });
});
