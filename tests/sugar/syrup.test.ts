import fc from 'fast-check';
import { expect, test } from 'vitest';
import { convert } from '../../src/quantity/index';
import { type SyrupStrength, syrup } from '../../src/sugar/index';
import { freezingSyrup, STRENGTHS, syrupOfPercent } from '../../src/sugar/printedSyrups';
import { codeText as errorOf } from '../helpers/errors';

test('by Brix and mass: sugar and water are the two parts of it', () => {
  const { sugar, water, mass } = syrup({ brix: 20, mass: '25 kg' }); // Earle, problem 2.1
  expect([sugar.value, water.value, mass]).toEqual([5, 20, { value: 25, unit: 'kg' }]);
});

test('by volume: the density of the syrup (ICUMSA: 50 Brix holds 614.8 g of sugar in a litre)', () => {
  const { sugar, volume } = syrup({ brix: 50, volume: '1 L' });
  expect(sugar.unit).toBe('g');
  expect(sugar.value).toBeCloseTo(614.8, 1);
  expect(volume).toEqual({ value: 1, unit: 'L' });
});

test('names follow the printed percentage, which is by volume: medium is 26.6 Brix and not 30', () => {
  const { brix, sugarVolume, waterVolume } = syrup({ strength: 'medium', mass: '5 lb' });
  expect(brix).toBeCloseTo(26.6, 1);
  expect(sugarVolume.value / (sugarVolume.value + waterVolume.value)).toBeCloseTo(0.3, 9);
  const names: SyrupStrength[] = ['very light', 'light', 'medium', 'heavy', 'very heavy'];
  const strengths = names.map((strength) => syrup({ strength, mass: '1 kg' }).brix);
  expect(strengths).toEqual([...strengths].sort((a, b) => a - b));
});

test('mass is conserved, and sugar and water need more room apart than together', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1.01, max: 66, noNaN: true }),
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      (brix, litres) => {
        const made = syrup({ brix, volume: { value: litres, unit: 'L' } });
        expect(made.sugar.value + made.water.value).toBeCloseTo(made.mass.value, 6);
        expect(made.sugarVolume.value + made.waterVolume.value).toBeGreaterThan(made.volume.value);
        expect(syrup({ brix, mass: made.mass }).volume.value).toBeCloseTo(convert(made.volume, 'cup').value, 6);
      },
    ),
  );
});

test('above the solubility of sugar it is refused, close to it cautioned, and heat lifts the limit', () => {
  expect(errorOf(() => syrup({ brix: 68, mass: '1 kg' }))).toBe('OUT_OF_RANGE brix');
  expect(syrup({ brix: 66.9, mass: '1 kg' }).cautions.map(({ id }) => id)).toContain('may-crystallize');
  expect(syrup({ brix: 60, mass: '1 kg' }).cautions.map(({ id }) => id)).not.toContain('may-crystallize');
  expect(syrup({ brix: 75, mass: '1 kg', temperature: '90 degC' }).sugar.value).toBe(0.75);
});

test('bad input', () => {
  expect(errorOf(() => syrup({ brix: 30 } as never))).toBe('MISSING volume');
  expect(errorOf(() => syrup({ mass: '1 kg' } as never))).toBe('MISSING brix');
  expect(errorOf(() => syrup({ brix: 30, strength: 'light', mass: '1 kg' } as never))).toBe('CONTRADICTION strength');
  expect(errorOf(() => syrup({ brix: 30, mass: '1 kg', volume: '1 L' } as never))).toBe('CONTRADICTION mass');
  expect(errorOf(() => syrup({ strength: 'thick' as never, mass: '1 kg' }))).toBe('UNKNOWN_NAME strength');
  expect(errorOf(() => syrup({ brix: 30, volume: '1 kg' as never }))).toBe('WRONG_DIMENSION volume');
  expect(errorOf(() => syrup({ brix: 30, volume: '0 L' }))).toBe('OUT_OF_RANGE volume');
  expect(errorOf(() => syrup({ brix: 0.3, volume: '1 L' }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => syrup({ brix: 30, volume: '1 L', jar: 'pint' } as never))).toBe('CONTRADICTION jar');
});

test('the printed loads of jars, and others in proportion', () => {
  const cups = (jars: string | number, jar?: string) => {
    const { sugarVolume, waterVolume } = syrup({ strength: 'heavy', jars, ...(jar === undefined ? {} : { jar }) });
    return [sugarVolume.value, waterVolume.value];
  };
  expect(cups('9 pints')).toEqual([3.25, 5]);
  expect(cups('7 quarts')).toEqual([5.25, 7.75]);
  expect(cups('14-quart')).toEqual([10.5, 15.5]);
  expect(cups('4 quarts')).toEqual([3.25, 5]);
  expect(cups('2 quarts')).toEqual([1.625, 2.5]);
  expect(cups('18 pints')).toEqual([6.5, 10]);
  expect(cups(9, 'pint')).toEqual([3.25, 5]);
  // other jars count as pints by their volume
  expect(cups(18, 'half-pint')).toEqual([3.25, 5]);
});

test('for jars, Brix by mass is said beside the printed percentage', () => {
  const { brix, printedPercent, volume, sugar, water } = syrup({ strength: 'heavy', jars: '7 quarts' });
  expect(printedPercent).toBe(40);
  expect(brix).toBeCloseTo(36.5, 1);
  expect(brix).toBeCloseTo((100 * sugar.value) / (sugar.value + water.value), 9);
  expect(volume.value).toBeLessThan(13);
});

test('jars of a syrup by its Brix take as much as the printed syrup nearest to it', () => {
  const medium = syrup({ strength: 'medium', jars: '9 pints' });
  const own = syrup({ brix: 25, jars: '9 pints' });
  expect(own.brix).toBe(25);
  expect(own.volume.value).toBeCloseTo(medium.volume.value, 9);
});

test('bad loads', () => {
  for (const jars of ['', 'seven quarts', '-1 pints', 'x'.repeat(10_000)]) {
    expect(errorOf(() => syrup({ strength: 'light', jars }))).toBe('NOT_A_QUANTITY jars');
  }
  expect(errorOf(() => syrup({ strength: 'light', jars: '7 buckets' }))).toBe('UNKNOWN_NAME jars');
  expect(errorOf(() => syrup({ strength: 'light', jars: '0 pints' }))).toBe('OUT_OF_RANGE jars');
  expect(errorOf(() => syrup({ strength: 'light', jars: 7 }))).toBe('MISSING jar');
  expect(errorOf(() => syrup({ strength: 'light', jars: '7 pints', jar: 'quart' }))).toBe('CONTRADICTION jar');
  expect(errorOf(() => syrup({ strength: 'light', jars: true as never }))).toBe('WRONG_TYPE jars');
});

test('for the freezer: the printed mix of each strength, scaled by what it makes', () => {
  for (const strength of STRENGTHS) {
    const { sugarCups, waterCups, yieldCups, percent } = freezingSyrup(strength);
    const made = syrup({ strength, volume: { value: yieldCups, unit: 'cup' }, purpose: 'freezing' });
    expect(made.sugarVolume.value).toBeCloseTo(sugarCups, 9);
    expect(made.waterVolume.value).toBeCloseTo(waterCups, 9);
    expect(made.printedPercent).toBe(percent);
    const { mass, volume } = made;
    expect(syrup({ strength, mass, purpose: 'freezing' }).volume.value).toBeCloseTo(volume.value, 9);
  }
  expect(() => syrupOfPercent(35)).toThrow('10, 20, 30, 40, 50');
});

// 200 g to a cup of sugar and 236.2 g to a cup of water: the percentages are rounded by the source
test.each([
  ['very light', 9.6],
  ['light', 17.4],
  ['medium', 27],
  ['heavy', 36.8],
  ['very heavy', 45.8],
] as const)('a %s freezing syrup is %d percent sugar by weight', (strength, byWeight) => {
  const { brix } = syrup({ strength, volume: '1 quart', purpose: 'freezing' });
  expect(Math.abs(brix - byWeight)).toBeLessThan(0.1);
});

test('a freezing syrup is a printed one, for no jars', () => {
  const freezing = { purpose: 'freezing' } as const;
  expect(errorOf(() => syrup({ brix: 30, volume: '1 L', ...freezing } as never))).toBe('CONTRADICTION purpose');
  expect(errorOf(() => syrup({ strength: 'light', jars: '7 pints', ...freezing }))).toBe('CONTRADICTION purpose');
});
