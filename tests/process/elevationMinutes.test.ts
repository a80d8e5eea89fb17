import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ElevationMinutesInput, elevationMinutes } from '../../src/process/index';
import { processRows } from '../../src/process/tables';
import { thrownBy as errorOf } from '../helpers/errors';

const citation = 'extension bulletin, page 3';
const minutes = (input: Partial<ElevationMinutesInput>): number => {
  const answer = elevationMinutes({ baseMinutes: 15, rule: 'bands', elevation: '0 ft', citation, ...input });
  if (!('minutes' in answer)) expect.fail(answer.reason.text);
  return answer.minutes;
};
const feet = fc.double({ min: -1400, max: 10000, noNaN: true }).map((value) => ({ value, unit: 'ft' }) as const);
const base = fc.double({ min: 0.1, max: 600, noNaN: true });

describe('bands', () => {
  test('edges are exact, a fraction of a foot goes up', () => {
    expect(
      [1000, 1000.01, 3000, 3000.5, 6000, 6001, 8000, 8001, 10000].map((value) =>
        minutes({ elevation: { value, unit: 'ft' } }),
      ),
    ).toEqual([15, 20, 20, 25, 25, 30, 30, 35, 35]);
    expect(minutes({ elevation: '304.8 m' })).toBe(15);
    expect(minutes({ elevation: '304.8001 m' })).toBe(20);
  });

  test('adds at least what any printed boiling-water row adds, in every band', () => {
    const ends = { 4: [1000, 3000, 6000, 10000], 3: [1000, 6000, 10000] } as Record<number, number[]>;
    for (const row of processRows) {
      if (row.method !== 'boiling-water') continue;
      const printed = row.minutes as readonly number[];
      const [first = 0] = printed;
      for (const [band, time] of printed.entries()) {
        const upTo = (ends[printed.length] as number[])[band] as number;
        const from = band === 0 ? 0 : ((ends[printed.length] as number[])[band - 1] as number) + 1;
        for (const value of [from, upTo]) {
          expect(minutes({ baseMinutes: first, elevation: { value, unit: 'ft' } })).toBeGreaterThanOrEqual(time);
        }
      }
    }
  });
});

describe('per-1000-ft', () => {
  test('1 minute per 1,000 ft up to a base of 20, 2 above it, parts counted whole', () => {
    const older = (baseMinutes: number, value: number) =>
      minutes({ rule: 'per-1000-ft', baseMinutes, elevation: { value, unit: 'ft' } });
    expect([0, 999, 1000, 1001, 4200, 10000].map((value) => older(20, value))).toEqual([20, 20, 21, 22, 25, 30]);
    expect([0, 999, 1000, 1001, 4200, 10000].map((value) => older(21, value))).toEqual([21, 21, 23, 25, 31, 41]);
  });
});

describe('every rule', () => {
  test('never takes minutes off, never falls as elevation rises, and gives whole minutes', () => {
    fc.assert(
      fc.property(
        base,
        fc.constantFrom('bands', 'per-1000-ft', 'sterilizing'),
        feet,
        feet,
        (baseMinutes, rule, a, b) => {
          const [low, high] = a.value < b.value ? [a, b] : [b, a];
          const question = { baseMinutes, rule: rule as 'bands' };
          const [below, above] = [minutes({ ...question, elevation: low }), minutes({ ...question, elevation: high })];
          expect(below).toBeGreaterThanOrEqual(baseMinutes);
          expect(above).toBeGreaterThanOrEqual(below);
          expect(Number.isInteger(above)).toBe(true);
        },
      ),
    );
  });

  test('says whose the time is and which rule was followed', () => {
    const answer = elevationMinutes({ baseMinutes: 15, rule: 'bands', elevation: '2000 ft', citation });
    expect(answer).toMatchObject({
      minutes: 20,
      added: 5,
      basis: [
        { kind: 'measured', locator: citation },
        { kind: 'equation', source: 'usda-cghc-1994', of: 'added', note: '1,001 to 3,000 ft' },
      ],
    });
    expect(answer.cautions.map(({ id }) => id)).toEqual([
      'user-time',
      'general-bands',
      'tested-only',
      'follow-local-guidance',
    ]);
  });

  test('refuses where its table ends, and the rule of the 1910s altogether', () => {
    for (const rule of ['bands', 'per-1000-ft'] as const) {
      const answer = elevationMinutes({ baseMinutes: 15, rule, elevation: '10000.1 ft', citation });
      expect(answer).toMatchObject({ tested: false, reason: { text: "the rule's table ends at 10,000 ft" } });
    }
    // the book prints 132 minutes at 1,500 ft for 120: recognised, and not served
    const old = elevationMinutes({ baseMinutes: 120, rule: 'ten-percent', elevation: '1500 ft', citation });
    expect(old).toMatchObject({ tested: false, reason: { text: expect.stringContaining('1910s') } });
  });

  test('fewer minutes than the bands are said to be fewer, with the longer time', () => {
    const at = (rule: 'per-1000-ft' | 'sterilizing' | 'bands', baseMinutes: number) =>
      elevationMinutes({ baseMinutes, rule, elevation: '2,000 ft', citation });
    for (const [rule, caution] of [
      ['per-1000-ft', 'superseded-rule'],
      ['sterilizing', 'sterilizing-rule'],
    ] as const) {
      const answer = at(rule, 15);
      expect(answer).toMatchObject({ minutes: 17, byBands: 20 });
      expect(answer.cautions.map(({ id }) => id)).toEqual(expect.arrayContaining([caution, 'fewer-than-bands']));
    }
    expect(at('bands', 15)).not.toHaveProperty('byBands');
    fc.assert(
      fc.property(base, fc.constantFrom('per-1000-ft' as const, 'sterilizing' as const), feet, (time, rule, place) => {
        const answer = elevationMinutes({ baseMinutes: time, rule, elevation: place, citation });
        const bands = minutes({ baseMinutes: time, elevation: place });
        if (!('minutes' in answer)) expect.fail(answer.reason.text);
        const short = answer.cautions.some(({ id }) => id === 'fewer-than-bands');
        expect(short).toBe(answer.minutes < bands);
        expect(answer.byBands).toBe(short ? bands : undefined);
      }),
    );
  });

  test('the sterilizing rule ends where the bands end', () => {
    const question = { baseMinutes: 10, rule: 'sterilizing', citation } as const;
    expect(elevationMinutes({ ...question, elevation: '10,000 ft' })).toMatchObject({ minutes: 20 });
    expect(elevationMinutes({ ...question, elevation: '10,001 ft' })).toMatchObject({ tested: false });
  });

  test.each(['', 'yes', 'grandma', 'my grandma', 'grandma 1950', 'yes yes yes yes', '12345 67', 'a b c d 3', 7])(
    'a citation that cannot be followed up: %o',
    (wrong) => {
      const error = errorOf(() => minutes({ citation: wrong as string }));
      expect(error.path).toBe('citation');
      expect(error.expected).toContain('where the tested time is published');
    },
  );

  test.each([
    'extension bulletin 12',
    'USDA Complete Guide to Home Canning, 2015',
    'Kansas State University newsletter',
  ])('a citation that can: %s', (citation) => {
    expect(minutes({ citation })).toBe(15);
  });

  test.each([
    [{ citation: undefined }, 'MISSING', 'citation'],
    [{ citation: '   ' }, 'UNKNOWN_NAME', 'citation'],
    [{ baseMinutes: 0 }, 'OUT_OF_RANGE', 'baseMinutes'],
    [{ baseMinutes: Number.NaN }, 'OUT_OF_RANGE', 'baseMinutes'],
    [{ baseMinutes: Number.POSITIVE_INFINITY }, 'OUT_OF_RANGE', 'baseMinutes'],
    [{ rule: 'half' }, 'UNKNOWN_NAME', 'rule'],
    [{ elevation: '-500 m' }, 'OUT_OF_RANGE', 'elevation'],
    [{ elevation: '3 lb' }, 'WRONG_DIMENSION', 'elevation'],
  ])('%o', (wrong, code, path) => {
    expect(errorOf(() => minutes(wrong as Partial<ElevationMinutesInput>))).toMatchObject({ code, path });
  });
});
