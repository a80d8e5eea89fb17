import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../../src/errors/index';
import { type FeasibleDay, type PlanDayInput, planDay } from '../../../src/plan/index';
import { valueIn } from '../../../src/quantity/scale';
import { learnFromRecords } from '../../../src/record/index';

const kitchen: PlanDayInput['kitchen'] = {
  elevation: '300 m',
  hours: '10 h',
  hands: 2,
  pots: [{ volume: '12 L' }],
  canners: [{ method: 'boiling-water', holds: { pint: 9, quart: 7 } }],
  dryer: { trays: 12, trayArea: '1300 cm2' },
  freezer: { room: '60 L' },
};
const day = (products: PlanDayInput['products'], learned?: PlanDayInput['learned'], lot: object = {}): FeasibleDay => {
  const lots = [
    { food: 'peach', raw: '20 kg', ...lot },
    { food: 'apple', raw: '12 kg' },
  ] as PlanDayInput['lots'];
  const plan = planDay({ lots, kitchen, products, ...(learned === undefined ? {} : { learned }) });
  if (!plan.feasible) throw new Error(plan.reason.text);
  return plan;
};
const frozen: PlanDayInput['products'] = [{ make: 'frozen', from: 'peach', form: 'slices', packSize: '500 g' }];
const halves: PlanDayInput['products'] = [
  { make: 'jars', from: 'peach', form: 'halves', pack: 'hot', jar: 'quart', syrup: 'light' },
];
const dried: PlanDayInput['products'] = [{ make: 'dried', from: 'apple', form: 'slices', packSize: '100 g' }];
const only = ({ products }: FeasibleDay) => products[0] as FeasibleDay['products'][number];

describe('a learned figure takes the place of the published one', () => {
  test('yield: promised at its poor end, readied for at its rich end', () => {
    // 20 kg at 0.70 to 0.74: 28 packs of 500 g promised, 30 at the rich end
    const learned = [{ food: 'peaches', form: 'sliced', yield: { low: 0.7, likely: 0.72, high: 0.74 }, n: 6 }];
    const plan = day(frozen, learned);
    expect(only(plan).units).toMatchObject({ promised: 28, likely: 28, ready: 30 });
    expect(only(plan).basis).toContainEqual(
      expect.objectContaining({
        kind: 'measured',
        note: expect.stringContaining('yield of peach slices, learned from 6 of your own batches'),
      }),
    );
    expect(only(day(frozen)).units.promised).not.toBe(28);
  });
  test('of another form it says nothing, and a weighing of the lot itself goes before it', () => {
    const learned = [{ food: 'peach', form: 'halves', yield: { low: 0.5, likely: 0.5, high: 0.5 } }];
    expect(only(day(frozen, learned)).units).toEqual(only(day(frozen)).units);
    const slices = [{ food: 'peach', form: 'slices', yield: { low: 0.5, likely: 0.5, high: 0.5 } }];
    const weighed = { ready: '16 kg' };
    expect(only(day(frozen, slices, weighed)).units).toEqual(only(day(frozen, undefined, weighed)).units);
  });
  test('raw weight a jar, of that jar only', () => {
    const raw = { low: '0.9 kg', likely: '1 kg', high: '1.25 kg' } as const;
    const plan = day(halves, [{ food: 'peach', form: 'halves', jar: 'quarts', rawPerJar: raw }]);
    // 20 kg at 1.25 kg a jar: 16 promised; at 0.9 kg: 23 readied
    expect(only(plan).units).toMatchObject({ promised: 16, ready: 23 });
    const pints = day(halves, [{ food: 'peach', form: 'halves', jar: 'pint', rawPerJar: raw }]);
    expect(only(pints).units).toEqual(only(day(halves)).units);
  });
  test('minutes a pound: the hours hold at the slow end', () => {
    const plan = day(frozen, [{ food: 'peach', form: 'slices', minutesPerPound: { low: 1, likely: 2, high: 4 } }]);
    const pounds = valueIn(only(plan).raw, 'lb');
    expect(only(plan).handsMinutes.prepare).toBeCloseTo(4 * pounds, 6);
  });
  test('moisture moves the weight to stop at', () => {
    const prior = { low: '84 %', likely: '86 %', high: '88 %' } as const;
    const { figure: moisture, n } = learnFromRecords({ prior, observed: Array(12).fill('80 %'), varies: 'share' });
    const stop = (plan: FeasibleDay) => {
      const { drying: trays } = only(plan);
      return valueIn(trays?.stopWeight?.likely as never, 'g') / valueIn(trays?.perTray as never, 'g');
    };
    expect(stop(day(dried, [{ food: 'apple', moisture, n }]))).toBeGreaterThan(stop(day(dried)) * 1.2);
  });
  test('drying hours, or hours by a drying constant: ln(X0 / X) / k', () => {
    const own = { low: '5 h', likely: '6 h', high: '7 h' } as const;
    const hours = day(dried, [{ food: 'apple', form: 'slices', dryingHours: own }]);
    expect(only(hours).drying?.hours?.high).toEqual({ value: 7, unit: 'h' });
    const dry = hours.schedule.tasks.find(({ kind }) => kind === 'dry');
    expect((dry?.endMinute ?? 0) - (dry?.startMinute ?? 0)).toBe(7 * 60);
    const water = { low: 0.85, likely: 0.86, high: 0.87 };
    const plan = planDay({
      lots: [{ food: 'apple', raw: '12 kg' }],
      kitchen,
      products: [{ make: 'dried', from: 'apple', form: 'slices', packSize: '100 g', moisture: '20 %' }],
      learned: [
        { food: 'apple', moisture: water },
        { food: 'apple', form: 'slices', dryingConstant: { low: 0.4, likely: 0.5, high: 0.6 } },
      ],
    }) as FeasibleDay;
    const dryBasis = (moisture: number) => moisture / (1 - moisture);
    expect(only(plan).drying?.hours?.likely.value).toBeCloseTo(Math.log(dryBasis(0.86) / dryBasis(0.2)) / 0.5, 9);
    expect(only(plan).drying?.hours?.high.value).toBeCloseTo(Math.log(dryBasis(0.87) / dryBasis(0.2)) / 0.4, 9);
  });
});

test('what learnFromRecords answers goes in as it is', () => {
  const batch = { date: '2026-08-14', name: 'peach halves', jarsFilled: 7, jarsSealed: 7 } as const;
  const process = {
    food: 'peach',
    form: 'halves',
    pack: 'hot',
    jar: 'quart',
    method: 'boiling-water',
    elevation: '300 m',
    minutes: 25,
  } as const;
  const records = [18, 18.5, 17.8, 18.2, 18.1, 17.9].map((pounds, index) => ({
    ...batch,
    lotCode: `A${index}`,
    process,
    lots: [{ food: 'peach', form: 'halves', raw: { value: pounds, unit: 'lb' }, ready: { value: 14, unit: 'lb' } }],
  })) as Parameters<typeof learnFromRecords>[0]['records'];
  const { learned } = learnFromRecords({ records });
  const before = only(day(halves)).units;
  const after = only(day(halves, learned)).units;
  // the more is known, the nearer together are promise and readiness
  expect(after.ready - after.promised).toBeLessThan(before.ready - before.promised);
});

describe('bad input', () => {
  const range = { low: 0.7, likely: 0.8, high: 0.9 };
  test.each([
    ['UNKNOWN_NAME', 'learned[0].food', [{ food: 'glass', yield: range }]],
    ['UNKNOWN_NAME', 'learned[0].form', [{ food: 'peach', form: 'spirals', yield: range }]],
    ['CONTRADICTION', 'learned[0].yield', [{ food: 'peach', form: 'halves', yield: { ...range, low: 0.85 } }]],
    ['OUT_OF_RANGE', 'learned[0].yield.high', [{ food: 'peach', form: 'halves', yield: { ...range, high: 1.2 } }]],
    ['OUT_OF_RANGE', 'learned[0].moisture.low', [{ food: 'peach', moisture: { ...range, low: 0 } }]],
    [
      'CONTRADICTION',
      'learned[1].yield',
      [
        { food: 'peach', form: 'halves', yield: range },
        { food: 'peaches', form: 'halved', yield: range },
      ],
    ],
    [
      'UNKNOWN_NAME',
      'learned[0].jar',
      [
        {
          food: 'peach',
          form: 'halves',
          jar: 'bucket',
          rawPerJar: { low: '1 kg', likely: '2 kg', high: '3 kg' },
        },
      ],
    ],
    ['MISSING', 'learned[0].food', [{ yield: range }]],
    [
      'MISSING',
      'learned[0].jar',
      [{ food: 'peach', form: 'halves', rawPerJar: { low: '1 kg', likely: '2 kg', high: '3 kg' } }],
    ],
    ['UNKNOWN_FIELD', 'learned[0].yields', [{ food: 'peach', yields: range }]],
    ['TOO_MUCH', 'learned', Array(1001).fill({ food: 'peach', form: 'halves', yield: range })],
  ])('%s at %s', (code, path, learned) => {
    let error: unknown;
    try {
      day(halves, learned as never);
    } catch (thrown) {
      error = thrown;
    }
    expect(error).toBeInstanceOf(StillroomError);
    expect(error).toMatchObject({ code, path });
  });
});
