import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foodRows, nameOf } from '../../src/foods/tables';
import { fruitWaterActivity, keeps } from '../../src/water-activity/index';
import { foodActivityRows } from '../../src/water-activity/typicalFigures';
import { codeAndPath as errorOf } from '../helpers/errors';
import { known } from '../helpers/known';

/** Honey by the food tables (USDA SR28: 82.12 g of sugars in 82.9 g of solids), with water enough to ask about. */
const HONEY = { solids: 0.7, sugars: 0.7 * (82.12 / 82.9) };
const fruitOf = ({ food, form }: (typeof foodActivityRows)[number]) => {
  const id = food as string;
  if (/honey/.test(id)) return { composition: HONEY };
  return { food: form === undefined ? nameOf(id) : `${form} ${nameOf(id)}` };
};
const waterActivityOf = (input: Parameters<typeof fruitWaterActivity>[0]) => known(fruitWaterActivity(input));

/** Every published pair of moisture and water activity; dates are in no table of composition. */
const pairs = foodActivityRows.flatMap((row) =>
  row.moisture_pct === undefined || row.food === 'date' ? [] : [{ ...row, moisture: row.moisture_pct }],
);

describe('against every published pair', () => {
  test('there are thirteen', () => {
    expect(pairs).toHaveLength(13);
  });

  test.each(pairs.map((pair) => [pair.printed, pair] as const))('%s: the middle lies in the range', (name, pair) => {
    const [dry, wet] = pair.moisture;
    const answer = waterActivityOf({ ...fruitOf(pair), moisture: (dry + wet) / 200 });
    const middle = (pair.low + pair.high) / 2;
    expect(answer.waterActivityRange.low).toBeLessThanOrEqual(middle);
    expect(answer.waterActivityRange.high).toBeGreaterThanOrEqual(middle);
    expect(Math.abs(answer.waterActivity - middle)).toBeLessThan(/fig/.test(name) ? 0.115 : 0.08);
  });

  test.each(pairs.map((pair) => [pair.printed, pair] as const))(
    '%s: neither end is wetter than the range',
    (_, pair) => {
      for (const [moisture, activity] of [
        [pair.moisture[0], pair.low],
        [pair.moisture[1], pair.high],
      ] as const) {
        if (moisture < 14) continue;
        expect(
          waterActivityOf({ ...fruitOf(pair), moisture: moisture / 100 }).waterActivityRange.high,
        ).toBeGreaterThanOrEqual(activity);
      }
    },
  );

  // nyag-wateractivity: fresh fruit 0.98 and above; jams and jellies 0.60 to 0.85
  test.each(['apple', 'apricot', 'peach', 'pear', 'plum', 'strawberry', 'raspberry', 'blueberry', 'grape', 'fig'])(
    'fresh %s is at 0.97 or above',
    (food) => {
      const wettest = waterActivityOf({ food, moisture: 0.2 }).moistureLimits.high;
      expect(waterActivityOf({ food, moisture: wettest }).waterActivity).toBeGreaterThan(0.97);
    },
  );

  test.each(['strawberry', 'apricot', 'raspberry', 'plum'])(
    '%s jam at the moisture of the food tables is at 0.75 to 0.87',
    (food) => {
      // USDA SR28: jam and preserves 30.47 % water; recalled range of jams 0.75 to 0.86
      const jam = waterActivityOf({ food, moisture: 0.3047, sugarToFruit: 1, inverted: '33 %' });
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
        (food, moisture, sugarToFruit) => {
          const at = (input: object) => waterActivityOf({ food, moisture, sugarToFruit, ...input }).waterActivity;
          expect(at({ moisture: moisture * 0.99 + 0.0014 })).toBeLessThanOrEqual(
            at({}) + (moisture <= 0.14 ? 0 : 1e-12),
          );
          expect(at({ inverted: 0.5 })).toBeLessThan(at({}));
        },
      ),
    );
  });

  test('the fruit by name and by its own composition say the same', () => {
    const named = waterActivityOf({ food: 'fig', moisture: 0.2 });
    const own = waterActivityOf({
      composition: { solids: 1 - named.moistureLimits.high, sugars: 0.1626, acidShare: 0.004 },
      moisture: 0.2,
    });
    expect(own.waterActivity).toBeCloseTo(named.waterActivity, 2);
    expect(own.basis[0]?.kind).toBe('measured');
  });

  test('a fruit of much fiber says on which side it errs', () => {
    expect(waterActivityOf({ food: 'raspberry', moisture: 0.2 }).cautions.map(({ id }) => id)).toContain(
      'fiber-holds-water',
    );
    expect(waterActivityOf({ food: 'grape', moisture: 0.2 }).cautions.map(({ id }) => id)).not.toContain(
      'fiber-holds-water',
    );
  });

  test('its range goes straight into keeps', () => {
    expect(
      keeps({ waterActivity: waterActivityOf({ food: 'raisins', moisture: 0.15 }).waterActivityRange }).verdict,
    ).toBe('may spoil');
    expect(keeps({ waterActivity: waterActivityOf({ food: 'apple', moisture: 0.5 }).waterActivityRange }).verdict).toBe(
      'not safe',
    );
  });
});

describe('refusals', () => {
  const bad: [string, unknown, [string, string]][] = [
    ['too dry', { food: 'apple', moisture: 0.139 }, ['OUT_OF_RANGE', 'moisture']],
    ['wetter than fresh', { food: 'apple', moisture: 0.9 }, ['OUT_OF_RANGE', 'moisture']],
    ['wetter than fruit and sugar', { food: 'apple', moisture: 0.6, sugarToFruit: 1 }, ['OUT_OF_RANGE', 'moisture']],
    [
      'more sugar than leaves water',
      { food: 'apple', moisture: 0.2, sugarToFruit: 9 },
      ['OUT_OF_RANGE', 'sugarToFruit'],
    ],
    ['an unknown fruit', { food: 'brick', moisture: 0.2 }, ['UNKNOWN_NAME', 'food']],
    ['no fruit', { moisture: 0.2 }, ['MISSING', 'food']],
    ['both', { food: 'apple', composition: HONEY, moisture: 0.2 }, ['CONTRADICTION', 'food']],
    [
      'more sugar than solids',
      { composition: { solids: 0.1, sugars: 0.2 }, moisture: 0.2 },
      ['CONTRADICTION', 'composition'],
    ],
    ['inverted without sugar', { food: 'apple', moisture: 0.2, inverted: 0.3 }, ['CONTRADICTION', 'inverted']],
    ['dry-basis moisture', { food: 'apple', moisture: 1.2 }, ['OUT_OF_RANGE', 'moisture']],
  ];
  test.each(bad)('%s', (_, input, expected) => {
    expect(errorOf(() => fruitWaterActivity(input as never))).toEqual(expected);
  });
});

test('dried fruit with its own name is worked out from the fresh one', () => {
  for (const [dried, fresh] of [
    ['raisins', 'grape'],
    ['sultanas', 'grape'],
    ['prunes', 'plum'],
    ['dried apples', 'apple'],
  ] as const) {
    const one = waterActivityOf({ food: dried, moisture: 0.2 });
    expect(one.waterActivity).toBe(waterActivityOf({ food: fresh, moisture: 0.2 }).waterActivity);
  }
});

test('the basis names the tables of composition, the equations and the published pairs', () => {
  const { basis } = waterActivityOf({ food: 'apple', moisture: 0.2 });
  expect(
    basis.filter(({ of, note }) => of === 'waterActivity' && /of the fruit/.test(note ?? '')).length,
  ).toBeGreaterThan(1);
  expect(basis.map(({ source }) => source)).toEqual(
    expect.arrayContaining(['baeza-2010', 'ross-1975', 'gdv-container']),
  );
});

test('every food of the pantry has an answer or a no', () => {
  for (const { name } of foodRows) {
    let answer: ReturnType<typeof fruitWaterActivity>;
    try {
      answer = fruitWaterActivity({ food: name, moisture: 0.2 });
    } catch (error) {
      // a dry food holds less water than that before any is taken out
      expect(error).toMatchObject({ code: 'OUT_OF_RANGE', path: 'moisture' });
      continue;
    }
    if (!answer.known) expect(answer.reason.code).toBe('no-composition');
  }
});
