import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fruitWaterActivity, keeps } from '../../src/water-activity/index';
import { foodActivityRows } from '../../src/water-activity/typicalWaterActivity';
import { codeAndPath as errorOf } from '../helpers/errors';

/** Honey by the food tables (USDA SR28: 82.12 g of sugars in 82.9 g of solids), with water enough to ask about. */
const HONEY = { solids: 0.7, sugars: 0.7 * (82.12 / 82.9) };
const fruitOf = (name: string) =>
  /honey/.test(name) ? { composition: HONEY } : { fruit: name.replace(/ \(.*/, '').replace('prunes', 'prune') };

/** Every published pair of moisture and water activity; dates are in no table of composition. */
const pairs = foodActivityRows.flatMap((row) =>
  row.moisture_pct === undefined || row.name === 'dried date' ? [] : [{ ...row, moisture: row.moisture_pct }],
);

describe('against every published pair', () => {
  test('there are thirteen', () => {
    expect(pairs).toHaveLength(13);
  });

  test.each(pairs.map((pair) => [pair.name, pair] as const))('%s: the middle lies in the range', (name, pair) => {
    const [dry, wet] = pair.moisture;
    const answer = fruitWaterActivity({ ...fruitOf(name), moisture: (dry + wet) / 200 });
    const middle = (pair.low + pair.high) / 2;
    expect(answer.range.low).toBeLessThanOrEqual(middle);
    expect(answer.range.high).toBeGreaterThanOrEqual(middle);
    expect(Math.abs(answer.waterActivity - middle)).toBeLessThan(/fig/.test(name) ? 0.115 : 0.08);
  });

  test.each(pairs.map((pair) => [pair.name, pair] as const))(
    '%s: neither end is wetter than the range',
    (name, pair) => {
      for (const [moisture, activity] of [
        [pair.moisture[0], pair.low],
        [pair.moisture[1], pair.high],
      ] as const) {
        if (moisture < 14) continue;
        expect(fruitWaterActivity({ ...fruitOf(name), moisture: moisture / 100 }).range.high).toBeGreaterThanOrEqual(
          activity,
        );
      }
    },
  );

  // nyag-wateractivity: fresh fruit 0.98 and above; jams and jellies 0.60 to 0.85
  test.each(['apple', 'apricot', 'peach', 'pear', 'plum', 'strawberry', 'raspberry', 'blueberry', 'grape', 'fig'])(
    'fresh %s is at 0.97 or above',
    (fruit) => {
      const wettest = fruitWaterActivity({ fruit, moisture: 0.2 }).moistureRange[1];
      expect(fruitWaterActivity({ fruit, moisture: wettest }).waterActivity).toBeGreaterThan(0.97);
    },
  );

  test.each(['strawberry', 'apricot', 'raspberry', 'plum'])(
    '%s jam at the moisture of the food tables is at 0.75 to 0.87',
    (fruit) => {
      // USDA SR28: jam and preserves 30.47 % water; recalled range of jams 0.75 to 0.86
      const jam = fruitWaterActivity({ fruit, moisture: 0.3047, addedSugar: 1, inverted: '33 %' });
      expect(jam.waterActivity).toBeGreaterThan(0.75);
      expect(jam.waterActivity).toBeLessThan(0.87);
    },
  );
});

describe('properties', () => {
  test('drier and more inverted is lower', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('apple', 'peach', 'raspberry', 'grape'),
        fc.double({ min: 0.15, max: 0.4, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (fruit, moisture, addedSugar) => {
          const at = (input: object) => fruitWaterActivity({ fruit, moisture, addedSugar, ...input }).waterActivity;
          expect(at({ moisture: moisture * 0.99 + 0.0014 })).toBeLessThanOrEqual(
            at({}) + (moisture <= 0.14 ? 0 : 1e-12),
          );
          expect(at({ inverted: 0.5 })).toBeLessThan(at({}));
        },
      ),
    );
  });

  test('the fruit by name and by its own composition say the same', () => {
    const named = fruitWaterActivity({ fruit: 'fig', moisture: 0.2 });
    const own = fruitWaterActivity({
      composition: { solids: 1 - named.moistureRange[1], sugars: 0.1626, acid: 0.004 },
      moisture: 0.2,
    });
    expect(own.waterActivity).toBeCloseTo(named.waterActivity, 2);
    expect(own.basis[0]?.kind).toBe('measured');
  });

  test('a fruit of much fibre says on which side it errs', () => {
    expect(fruitWaterActivity({ fruit: 'raspberry', moisture: 0.2 }).cautions.map(({ id }) => id)).toContain(
      'fibre-holds-water',
    );
    expect(fruitWaterActivity({ fruit: 'grape', moisture: 0.2 }).cautions.map(({ id }) => id)).not.toContain(
      'fibre-holds-water',
    );
  });

  test('its range goes straight into keeps', () => {
    expect(keeps({ waterActivity: fruitWaterActivity({ fruit: 'raisins', moisture: 0.15 }).range }).verdict).toBe(
      'may spoil',
    );
    expect(keeps({ waterActivity: fruitWaterActivity({ fruit: 'apple', moisture: 0.5 }).range }).verdict).toBe(
      'not safe',
    );
  });
});

describe('refusals', () => {
  const bad: [string, unknown, [string, string]][] = [
    ['too dry', { fruit: 'apple', moisture: 0.139 }, ['OUT_OF_RANGE', 'moisture']],
    ['wetter than fresh', { fruit: 'apple', moisture: 0.9 }, ['OUT_OF_RANGE', 'moisture']],
    ['wetter than fruit and sugar', { fruit: 'apple', moisture: 0.6, addedSugar: 1 }, ['OUT_OF_RANGE', 'moisture']],
    ['more sugar than leaves water', { fruit: 'apple', moisture: 0.2, addedSugar: 9 }, ['OUT_OF_RANGE', 'addedSugar']],
    ['an unknown fruit', { fruit: 'brick', moisture: 0.2 }, ['UNKNOWN_NAME', 'fruit']],
    ['no fruit', { moisture: 0.2 }, ['MISSING', 'fruit']],
    ['both', { fruit: 'apple', composition: HONEY, moisture: 0.2 }, ['CONTRADICTION', 'fruit']],
    [
      'more sugar than solids',
      { composition: { solids: 0.1, sugars: 0.2 }, moisture: 0.2 },
      ['CONTRADICTION', 'composition'],
    ],
    ['inverted without sugar', { fruit: 'apple', moisture: 0.2, inverted: 0.3 }, ['CONTRADICTION', 'inverted']],
    ['dry-basis moisture', { fruit: 'apple', moisture: 1.2 }, ['OUT_OF_RANGE', 'moisture']],
  ];
  test.each(bad)('%s', (_, input, expected) => {
    expect(errorOf(() => fruitWaterActivity(input as never))).toEqual(expected);
  });
});
