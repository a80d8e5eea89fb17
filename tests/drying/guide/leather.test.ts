import { describe, expect, it } from 'vitest';
import { type LeatherInput, type LeatherSheets, leather } from '../../../src/drying/index';
import { errorOf } from '../helpers';

const sheetsOf = (input: LeatherInput): LeatherSheets => {
  const answer = leather(input);
  if (!answer.known) throw new Error(answer.reason.text);
  return answer;
};

describe('leather', () => {
  it('has hours for the thicknesses that are printed, and none above', () => {
    const at = (thickness: '1/16 in' | '1/8 in' | '3/16 in' | '1/4 in' | '5/16 in' | '1/2 in') =>
      sheetsOf({ area: '195 in2', thickness });
    const ends = (answer: LeatherSheets) => [answer.hours?.low.value, answer.hours?.high.value];
    expect(ends(sheetsOf({ area: '195 in2' }))).toEqual([6, 8]);
    expect(ends(at('1/8 in'))).toEqual([6, 8]);
    expect(ends(at('1/16 in'))).toEqual([6, 8]);
    for (const thickness of ['3/16 in', '1/4 in'] as const) {
      expect(ends(at(thickness))).toEqual([10, 10]);
      expect(at(thickness).hoursFor).toEqual({ thickness: { value: 0.25, unit: 'in' }, food: 'mango' });
      expect(at(thickness).cautions.map(({ id }) => id)).toContain('leather-hours-of-one-fruit');
    }
    for (const thickness of ['5/16 in', '1/2 in'] as const) {
      expect(ends(at(thickness))).toEqual([undefined, undefined]);
      expect(at(thickness).ovenHours).toBeUndefined();
      expect(at(thickness).cautions[0]?.id).toBe('leather-too-thick');
    }
  });
  it('fills sheets by volume, weight or count alike', () => {
    const byVolume = sheetsOf({ area: '195 in2', puree: '6 cups' });
    const byWeight = sheetsOf({ area: '195 in2', puree: byVolume.pureeMass });
    const bySheets = sheetsOf({ area: '195 in2', sheets: 3 });
    expect(byVolume.sheets).toBe(3);
    expect(byWeight.sheets).toBe(3);
    expect(bySheets.puree.value).toBeCloseTo(6, 9);
    expect(sheetsOf({ area: '195 in2' }).sheets).toBe(1);
    expect(sheetsOf({ area: '0.1 m2', thickness: '4 mm' }).massPerSheet).toMatchObject({ unit: 'kg' });
    expect(sheetsOf({ area: '0.1 m2' }).thickness.unit).toBe('mm');
  });
  it('keeps the solids', () => {
    const answer = sheetsOf({
      area: '0.1 m2',
      thickness: '4 mm',
      density: '1.04 g/mL',
      moisture: { low: 0.8, likely: 0.85, high: 0.9 },
      targetMoisture: 0.15,
    });
    expect(answer.driedPerSheet?.low.value).toBeCloseTo((0.416 * 0.1) / 0.85, 9);
    expect(answer.driedPerSheet?.high.value).toBeCloseTo((0.416 * 0.2) / 0.85, 9);
    expect(answer.dried).toEqual(answer.driedPerSheet);
  });
  it('refuses two amounts, and a target wetter than the puree', () => {
    expect(errorOf(() => sheetsOf({ area: '1 ft2', puree: '1 cup', sheets: 2 })).code).toBe('CONTRADICTION');
    expect(errorOf(() => sheetsOf({ area: '1 ft2', moisture: 0.1 }))).toMatchObject({
      code: 'CONTRADICTION',
      path: 'moisture',
    });
  });
  it('says no more that the hours are of mango where it is mango', () => {
    const mango = sheetsOf({ food: 'mango', area: '195 in2', thickness: '1/4 in' });
    expect(mango.cautions.map(({ id }) => id)).not.toContain('leather-hours-of-one-fruit');
    const peach = sheetsOf({ food: 'peach', area: '195 in2', thickness: '1/4 in' });
    expect(peach.cautions.map(({ id }) => id)).toContain('leather-hours-of-one-fruit');
  });
  it('is known of fruit only', () => {
    for (const food of ['beef', 'avocado', 'pumpkin', 'cheddar cheese']) {
      expect(leather({ food, area: '195 in2' }), food).toMatchObject({ known: false, reason: { code: 'not-a-fruit' } });
    }
  });
});
