import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitDryingCurve } from '../../src/drying/index';
import { readyFromRaw } from '../../src/produce/index';
import { learnFigure, learnMoisture, learnYield, updateMean, updateMeanAndSpread } from '../../src/record/index';
import { learn } from '../../src/record/learnFigure';
import { ninetyPercentT, tailOfT } from '../../src/record/studentT';
import { expectError } from '../helpers/errors';
import { known } from '../helpers/known';

// NIST/SEMATECH e-Handbook 1.3.6.7.2, upper critical values of Student's t; read in a copy
describe("Student's t", () => {
  test.each([
    [1, 6.314],
    [2, 2.92],
    [3, 2.353],
    [4, 2.132],
    [5, 2.015],
    [6, 1.943],
    [7, 1.895],
    [8, 1.86],
    [9, 1.833],
    [10, 1.812],
    [14, 1.761],
    [20, 1.725],
    [30, 1.697],
    [60, 1.671],
    [100, 1.66],
  ])('%d degrees: %d', (degrees, t) => {
    expect(Math.abs(ninetyPercentT(degrees) - t)).toBeLessThan(5.1e-4);
  });
  test.each([
    [5, 2.571, 0.025],
    [10, 2.764, 0.01],
    [20, 3.552, 0.001],
    [1, 3.078, 0.1],
    [30, 1.31, 0.1],
  ])('the tail of %d degrees above %d is %d', (degrees, t, tail) => {
    expect(Math.abs(tailOfT(t, degrees) / tail - 1)).toBeLessThan(2e-3);
  });
  test('ends at the normal', () => {
    expect(ninetyPercentT(1e7)).toBeCloseTo(1.6448536, 5);
  });
});

/** A seeded generator (mulberry32) and normal figures from it. */
function seeded(seed: number) {
  let state = seed;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

const book = { low: 0.7, likely: 0.78, high: 0.86 };

/** How often the next batch, and the average, fall inside their 90 % interval. */
function coverage(n: number, kitchens: number, kitchen: (normal: () => number) => { mean: number; sd: number }) {
  const normal = seeded(20260814 + n);
  let next = 0;
  let average = 0;
  for (let k = 0; k < kitchens; k++) {
    const { mean, sd } = kitchen(normal);
    const draw = () => mean + sd * normal();
    const learned = learn(book, Array.from({ length: n }, draw), 'plain');
    const batch = draw();
    if (batch >= learned.figure.low && batch <= learned.figure.high) next += 1;
    if (mean >= learned.average.low && mean <= learned.average.high) average += 1;
  }
  return { next: next / kitchens, average: average / kitchens };
}

describe('coverage of the 90 % intervals, by simulation', () => {
  const spread = 0.08 / (2.1318468 * Math.SQRT2);
  // kitchens drawn from the model itself: spread by the inverse of chi-square of 4, average about the book
  test.each([0, 1, 2, 3, 5, 10, 30])('kitchens like those of the book, %d records', (n) => {
    const { next, average } = coverage(n, 2000, (normal) => {
      const chi = normal() ** 2 + normal() ** 2 + normal() ** 2 + normal() ** 2;
      const sd = spread * Math.sqrt(4 / chi);
      return { mean: 0.78 + sd * normal(), sd };
    });
    expect(next).toBeGreaterThan(0.87);
    expect(next).toBeLessThan(0.93);
    expect(average).toBeGreaterThan(0.85);
    expect(average).toBeLessThan(0.95);
  });
  // figures that vary by a factor, from a range that leans in their own measure
  test.each([0, 3, 10])('figures out by a factor, %d records', (n) => {
    const prior = { low: 1.5, likely: 3, high: 6 };
    const spreadOfLogs = Math.log(2) / (2.1318468 * Math.SQRT2);
    const normal = seeded(11 + n);
    let inside = 0;
    for (let kitchen = 0; kitchen < 2000; kitchen++) {
      const chi = normal() ** 2 + normal() ** 2 + normal() ** 2 + normal() ** 2;
      const sd = spreadOfLogs * Math.sqrt(4 / chi);
      const mean = Math.log(3) + sd * normal();
      const draw = () => Math.exp(mean + sd * normal());
      const { figure } = learn(prior, Array.from({ length: n }, draw), 'times');
      const next = draw();
      if (next >= figure.low && next <= figure.high) inside += 1;
    }
    expect(inside / 2000).toBeGreaterThan(0.87);
    expect(inside / 2000).toBeLessThan(0.93);
  });

  // kitchens that the book does not describe: after some records the interval is theirs all the same
  test.each([
    ['at the low end of the book', 0.7, 0.7, 10, 100],
    ['outside the book', 0.62, 0.7, 10, 100],
    ['half as varied', 0.78, 0.5, 30, 100],
    ['half as varied again', 0.78, 1.5, 10, 100],
  ])('%s', (_, mean, times, some, many) => {
    const kitchen = () => ({ mean, sd: times * spread });
    expect(coverage(some, 1000, kitchen).next).toBeGreaterThan(0.82);
    const late = coverage(many, 1000, kitchen);
    expect(late.next).toBeGreaterThan(0.86);
    expect(late.average).toBeGreaterThan(0.86);
  });
});

describe('learning', () => {
  test('with no records it is the published range, leaning and all', () => {
    const leaning = { low: 0.7, likely: 0.84, high: 0.86 };
    const { figure, priorWeight, n } = learnFigure({ prior: leaning, observed: [] });
    expect(figure.low).toBeCloseTo(0.7, 9);
    expect(figure.likely).toBe(0.84);
    expect(figure.high).toBeCloseTo(0.86, 9);
    expect([priorWeight, n]).toEqual([1, 0]);
  });

  test('the interval shrinks and the book fades as records grow', () => {
    const normal = seeded(7);
    const own = Array.from({ length: 200 }, () => 0.74 + 0.02 * normal());
    const widths = [0, 3, 12, 50, 200].map((n) => {
      const { figure, average, priorWeight } = learnFigure({ prior: book, observed: own.slice(0, n) });
      expect(priorWeight).toBeCloseTo(1 / (1 + n), 1);
      return [figure.high - figure.low, average.high - average.low] as const;
    });
    widths.slice(1).forEach(([next, average], i) => {
      expect(next).toBeLessThan(widths[i]?.[0] as number);
      expect(average).toBeLessThan(widths[i]?.[1] as number);
    });
    const { average } = learnFigure({ prior: book, observed: own });
    expect(average.likely).toBeCloseTo(0.74, 2);
  });

  test.each([1, 2, 3, 5, 20])('one slip of the pen among %d good records moves little', (n) => {
    const good = Array.from({ length: n }, (_, i) => 0.76 + 0.01 * ((i % 3) - 1));
    const clean = learnFigure({ prior: book, observed: good });
    for (const slip of [7.6, 0.076, -50, 1e6]) {
      const { figure, setAside } = learnFigure({ prior: book, observed: [...good, slip] });
      expect(Math.abs(figure.likely - clean.figure.likely)).toBeLessThan(0.02);
      expect(setAside.map(({ value }) => value)).toEqual([slip]);
      expect(setAside[0]?.weight).toBeLessThan(0.02);
      // and makes the interval little wider
      const width = ({ low, high }: { low: number; high: number }) => high - low;
      expect(width(figure)).toBeLessThan(1.5 * width(clean.figure));
    }
    // the farther off, the less it moves
    const by = (slip: number) =>
      Math.abs(learnFigure({ prior: book, observed: [...good, slip] }).figure.likely - clean.figure.likely);
    expect(by(1e6)).toBeLessThan(by(10));
  });

  test('records that agree with each other outvote the book', () => {
    const { figure, setAside } = learnFigure({ prior: book, observed: [0.55, 0.56, 0.54, 0.55, 0.56, 0.55] });
    expect(setAside).toEqual([]);
    expect(figure.likely).toBeCloseTo(0.583, 2);
  });

  test('a figure that varies by a factor stays above zero', () => {
    const prior = { low: 0.5, likely: 1, high: 2 };
    const { figure } = learnFigure({ prior, observed: [0.2, 0.3, 0.25], varies: 'times', what: 'hours per pound' });
    expect(figure.low).toBeGreaterThan(0);
    expect(figure.low).toBeLessThan(figure.likely);
    expect(learnFigure({ prior, observed: [], varies: 'times' }).figure.high).toBeCloseTo(2, 9);
  });

  test('a drying constant, fitted to each load: toward the own dryer, one wrong load aside', () => {
    const normal = seeded(3);
    const hours = [0, 1, 2, 3, 4, 5, 6];
    const load = (k: number) =>
      fitDryingCurve({
        model: 'lewis',
        points: hours.map((value) => ({
          time: { value, unit: 'h' },
          moistureRatio: Math.exp(-k * value) + 0.005 * normal(),
        })),
      }).constants.k as number;
    // a range of a book (invented) at 0.2 to 0.45 per hour; the own dryer does 0.5, give or take a tenth
    const prior = { low: 0.2, likely: 0.3, high: 0.45 };
    const own = Array.from({ length: 12 }, () => load(0.5 * Math.exp(0.1 * normal())));
    const clean = learnFigure({ what: 'drying constant', prior, observed: own, varies: 'times' });
    expect(clean.setAside).toEqual([]);
    expect(clean.average.low).toBeLessThan(0.5);
    expect(clean.average.high).toBeGreaterThan(0.5);
    expect(clean.figure.low).toBeGreaterThan(0.3);
    const slipped = learnFigure({ prior, observed: [...own, load(0.02)], varies: 'times' });
    expect(slipped.setAside.map(({ index }) => index)).toEqual([12]);
    expect(Math.abs(slipped.figure.likely / clean.figure.likely - 1)).toBeLessThan(0.02);
  });

  test('every answer is in order and finite', () => {
    const value = fc.double({ min: 1e-9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(value, value, value),
        fc.array(value, { maxLength: 12 }),
        fc.constantFrom('plain' as const, 'times' as const),
        (three, observed, varies) => {
          const [low, likely, high] = [...three].sort((a, b) => a - b) as [number, number, number];
          fc.pre(high - low > 1e-9 * high);
          const { figure, average, priorWeight } = learnFigure({ prior: { low, likely, high }, observed, varies });
          for (const range of [figure, average]) {
            for (const end of Object.values(range)) expect(Number.isFinite(end)).toBe(true);
            expect(range.low).toBeLessThanOrEqual(range.likely);
            expect(range.likely).toBeLessThanOrEqual(range.high);
          }
          expect(priorWeight).toBeGreaterThan(0);
          expect(priorWeight).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  test('ends that doubles can hardly tell apart are no range', () => {
    const prior = { low: 1e-9, likely: 1e-9, high: 1.0000000000000003e-9 };
    expectError(() => learnFigure({ prior, observed: [], varies: 'times' }), 'CONTRADICTION', 'prior');
  });

  test('the order of the records is nothing to it', () => {
    const observed = [0.71, 0.8, 0.75, 0.3, 0.77];
    const back = learnFigure({ prior: book, observed: [...observed].reverse() });
    expect(learnFigure({ prior: book, observed }).figure.likely).toBeCloseTo(back.figure.likely, 12);
  });

  test('a hundred thousand records in a moment', () => {
    const observed = Array.from({ length: 100_000 }, (_, i) => 0.7 + (i % 100) / 1000);
    const before = performance.now();
    expect(learnFigure({ prior: book, observed }).n).toBe(100_000);
    expect(performance.now() - before).toBeLessThan(3000);
  });
});

describe('learnYield', () => {
  test('takes the published yield of a produce and form', () => {
    const { yield: learned, basis } = learnYield({ produce: 'peaches', form: 'halves', records: [] });
    const { yield: printed } = known(readyFromRaw({ food: 'peaches', form: 'halves', raw: '1 lb' }));
    expect(learned.low).toBeCloseTo(printed.low, 9);
    expect(learned.likely).toBeCloseTo(printed.likely, 9);
    expect(basis.some(({ kind }) => kind === 'published')).toBe(true);
  });
  test('stays between 0 and 1', () => {
    const { yield: learned } = learnYield({
      prior: { low: 0.9, likely: 0.97, high: 1 },
      records: [{ raw: '10 lb', ready: '10 lb' }],
    });
    expect(learned.high).toBe(1);
  });
  test('bad input', () => {
    const prior = { low: 0.7, likely: 0.8, high: 0.9 };
    expectError(
      () =>
        learnYield({
          prior,
          records: [
            { raw: '10 lb', ready: '9 lb' },
            { raw: '10 lb', ready: '5 kg' },
          ],
        }),
      'CONTRADICTION',
      'records[1].ready',
    );
    expectError(
      () => learnYield({ prior: { low: 0.9, likely: 0.8, high: 0.95 }, records: [] }),
      'CONTRADICTION',
      'prior',
    );
    expectError(
      () => learnYield({ prior: { low: 0.9, likely: 0.9, high: 0.9 }, records: [] }),
      'CONTRADICTION',
      'prior',
    );
    expectError(() => learnYield({ prior, produce: 'peach', records: [] }), 'CONTRADICTION', 'prior');
    expectError(() => learnYield({ records: [] }), 'MISSING', 'prior');
    expectError(() => learnYield({ produce: 'peach', records: [] }), 'MISSING', 'form');
    expectError(() => learnYield({ produce: 'peech', form: 'halves', records: [] }), 'UNKNOWN_NAME', 'produce');
    expectError(
      () => learnYield({ prior, records: [{ raw: '0 lb', ready: '0 lb' } as never] }),
      'OUT_OF_RANGE',
      'records[0].raw',
    );
  });
});

describe('other learners', () => {
  test('moisture in percent, held between 0 and 1', () => {
    const { moisture } = learnMoisture({
      prior: { low: '95 %', likely: '97 %', high: '99 %' },
      observed: ['99.9 %', 1, 1],
    });
    expect(moisture.high).toBe(1);
    expectError(
      () => learnMoisture({ prior: { low: 0.5, likely: 0.5, high: 0.5 }, observed: [] }),
      'CONTRADICTION',
      'prior',
    );
  });
  test('bad figures', () => {
    const prior = { low: 1, likely: 2, high: 3 };
    expectError(() => learnFigure({ prior, observed: [1, -1], varies: 'times' }), 'OUT_OF_RANGE', 'observed[1]');
    expectError(
      () => learnFigure({ prior: { ...prior, low: 0 }, observed: [], varies: 'times' }),
      'OUT_OF_RANGE',
      'prior.low',
    );
    expectError(() => learnFigure({ prior, observed: [Number.NaN] }), 'OUT_OF_RANGE', 'observed[0]');
    expectError(() => learnFigure({ prior } as never), 'MISSING', 'observed');
  });
  test('the textbook update is what no far record disturbs', () => {
    const observed = [0.77, 0.79, 0.8];
    const spread = 0.08 / (ninetyPercentT(4) * Math.SQRT2);
    const plain = updateMeanAndSpread({ prior: { mean: 0.78, weight: 1, spread, degrees: 4 }, observed });
    const learned = learnFigure({ prior: book, observed });
    expect(learned.figure.low).toBeCloseTo(plain.next.low, 12);
    expect(learned.average.high).toBeCloseTo(plain.average.high, 12);
  });
  test('a sure prior stays, a vague one gives way', () => {
    const sample = { mean: 10, n: 4 };
    expect(updateMean({ prior: { mean: 0, sd: 1e-4 }, sample, spread: 1 }).mean).toBeCloseTo(0, 6);
    expect(updateMean({ prior: { mean: 0, sd: 1e6 }, sample, spread: 1 }).mean).toBeCloseTo(10, 6);
    expectError(() => updateMean({ prior: { mean: 0, sd: 0 }, sample, spread: 1 }), 'OUT_OF_RANGE', 'prior.sd');
  });
});
