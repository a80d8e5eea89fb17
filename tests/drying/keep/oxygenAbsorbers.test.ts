import { describe, expect, it } from 'vitest';
import { oxygenAbsorbers } from '../../../src/drying/index';
import { errorOf } from '../helpers';

describe('oxygenAbsorbers', () => {
  it('leaves out the room of the food, and rounds up', () => {
    const answer = oxygenAbsorbers({
      containerVolume: '1 quart',
      moisture: 0.05,
      dried: '140 g',
      density: '1.4 g/mL',
      absorber: '50 mL',
    });
    if (!answer.known) throw new Error(answer.reason.text);
    expect(answer.oxygen.value).toBeCloseTo(0.20946 * 846.352946, 6);
    expect(answer.absorbers).toBe(4);
  });
  it('refuses moist food, with what to do instead', () => {
    expect(oxygenAbsorbers({ containerVolume: '1 quart', moisture: 0.1001 })).toMatchObject({
      known: false,
      reason: { code: 'too-moist-without-air' },
      instead: [{}, { keep: 'refrigerator' }, { keep: 'freezer' }],
    });
    expect(oxygenAbsorbers({ containerVolume: '1 quart', moisture: 0.1 })).toMatchObject({ known: true });
  });
  it('refuses on what extension sheets print, and says that the share of oxygen is recalled', () => {
    const moist = oxygenAbsorbers({ containerVolume: '1 quart', moisture: 0.11 });
    expect(moist.basis.map(({ kind, source, seen }) => [kind, source, seen])).toEqual([
      ['published', 'nchfp-dry', 'reproduction'],
      ['published', 'psu-safety-issues', 'original'],
    ]);
    const dry = oxygenAbsorbers({ containerVolume: '1 quart', moisture: 0.05 });
    expect(dry.basis[0]).toMatchObject({ kind: 'recalled', source: 'from-memory' });
  });
  it('throws for half a pair and for food that does not fit', () => {
    expect(errorOf(() => oxygenAbsorbers({ containerVolume: '1 L', moisture: 0.05, dried: '1 g' })).path).toBe(
      'density',
    );
    expect(errorOf(() => oxygenAbsorbers({ containerVolume: '1 L', moisture: 0.05, density: '1 g/mL' })).path).toBe(
      'dried',
    );
    const full = () => oxygenAbsorbers({ containerVolume: '1 L', moisture: 0.05, dried: '2 kg', density: '1 g/mL' });
    expect(errorOf(full)).toMatchObject({ code: 'CONTRADICTION', path: 'dried' });
  });
});
