import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dryingCurve } from '../../src/drying/index';
import { learnFromRecords } from '../../src/record/index';
import { expectError } from '../helpers/errors';
import { seededNormal } from '../helpers/normal';

const book = { low: 0.7, likely: 0.78, high: 0.86 };

describe('learning', () => {
  test('with no records it is the published range, leaning and all', () => {
    const leaning = { low: 0.7, likely: 0.84, high: 0.86 };
    const { figure, priorCountsFor, n } = learnFromRecords({ prior: leaning, observed: [] });
    expect(figure.low).toBeCloseTo(0.7, 9);
    expect(figure.likely).toBe(0.84);
    expect(figure.high).toBeCloseTo(0.86, 9);
    expect([priorCountsFor, n]).toEqual([1, 0]);
  });

  test('the interval shrinks and the book fades as records grow', () => {
    const normal = seededNormal(7);
    const own = Array.from({ length: 200 }, () => 0.74 + 0.02 * normal());
    const widths = [0, 3, 12, 50, 200].map((n) => {
      const { figure, average, priorCountsFor } = learnFromRecords({ prior: book, observed: own.slice(0, n) });
      expect(priorCountsFor).toBeCloseTo(1 / (1 + n), 1);
      return [figure.high - figure.low, average.high - average.low] as const;
    });
    widths.slice(1).forEach(([next, average], i) => {
      expect(next).toBeLessThan(widths[i]?.[0] as number);
      expect(average).toBeLessThan(widths[i]?.[1] as number);
    });
    const { average } = learnFromRecords({ prior: book, observed: own });
    expect(average.likely).toBeCloseTo(0.74, 2);
  });

  test.each([1, 2, 3, 5, 20])('one slip of the pen among %d good records moves little', (n) => {
    const good = Array.from({ length: n }, (_, i) => 0.76 + 0.01 * ((i % 3) - 1));
    const clean = learnFromRecords({ prior: book, observed: good });
    for (const slip of [7.6, 0.076, -50, 1e6]) {
      const { figure, outliers } = learnFromRecords({ prior: book, observed: [...good, slip] });
      expect(Math.abs(figure.likely - clean.figure.likely)).toBeLessThan(0.02);
      expect(outliers.map(({ value }) => value)).toEqual([slip]);
      expect(outliers[0]?.countsFor).toBeLessThan(0.02);
      // and makes the interval little wider
      const width = ({ low, high }: { low: number; high: number }) => high - low;
      expect(width(figure)).toBeLessThan(1.5 * width(clean.figure));
    }
    // the farther off, the less it moves
    const by = (slip: number) =>
      Math.abs(learnFromRecords({ prior: book, observed: [...good, slip] }).figure.likely - clean.figure.likely);
    expect(by(1e6)).toBeLessThan(by(10));
  });

  test('records that agree with each other outvote the book', () => {
    const { figure, outliers } = learnFromRecords({ prior: book, observed: [0.55, 0.56, 0.54, 0.55, 0.56, 0.55] });
    expect(outliers).toEqual([]);
    expect(figure.likely).toBeCloseTo(0.583, 2);
  });

  test('a figure that varies by a factor stays above zero', () => {
    const prior = { low: 0.5, likely: 1, high: 2 };
    const { figure } = learnFromRecords({
      prior,
      observed: [0.2, 0.3, 0.25],
      varies: 'times',
      what: 'hours per pound',
    });
    expect(figure.low).toBeGreaterThan(0);
    expect(figure.low).toBeLessThan(figure.likely);
    expect(learnFromRecords({ prior, observed: [], varies: 'times' }).figure.high).toBeCloseTo(2, 9);
  });

  test('a drying constant, fitted to each load: toward the own dryer, one wrong load aside', () => {
    const normal = seededNormal(3);
    const hours = [0, 1, 2, 3, 4, 5, 6];
    const load = (k: number) =>
      dryingCurve({
        model: 'lewis',
        points: hours.map((value) => ({
          time: { value, unit: 'h' },
          moistureRatio: Math.exp(-k * value) + 0.005 * normal(),
        })),
      }).constants.k as number;
    // a range of a book (invented) at 0.2 to 0.45 per hour; the own dryer does 0.5, give or take a tenth
    const prior = { low: 0.2, likely: 0.3, high: 0.45 };
    const own = Array.from({ length: 12 }, () => load(0.5 * Math.exp(0.1 * normal())));
    const clean = learnFromRecords({ what: 'drying constant', prior, observed: own, varies: 'times' });
    expect(clean.outliers).toEqual([]);
    expect(clean.average.low).toBeLessThan(0.5);
    expect(clean.average.high).toBeGreaterThan(0.5);
    expect(clean.figure.low).toBeGreaterThan(0.3);
    const slipped = learnFromRecords({ prior, observed: [...own, load(0.02)], varies: 'times' });
    expect(slipped.outliers.map(({ index }) => index)).toEqual([12]);
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
          const { figure, average, priorCountsFor } = learnFromRecords({
            prior: { low, likely, high },
            observed,
            varies,
          });
          for (const range of [figure, average]) {
            for (const end of Object.values(range)) expect(Number.isFinite(end)).toBe(true);
            expect(range.low).toBeLessThanOrEqual(range.likely);
            expect(range.likely).toBeLessThanOrEqual(range.high);
          }
          expect(priorCountsFor).toBeGreaterThan(0);
          expect(priorCountsFor).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  test('ends that doubles can hardly tell apart are no range', () => {
    const prior = { low: 1e-9, likely: 1e-9, high: 1.0000000000000003e-9 };
    expectError(() => learnFromRecords({ prior, observed: [], varies: 'times' }), 'CONTRADICTION', 'prior');
  });

  test('the order of the records is nothing to it', () => {
    const observed = [0.71, 0.8, 0.75, 0.3, 0.77];
    const back = learnFromRecords({ prior: book, observed: [...observed].reverse() });
    expect(learnFromRecords({ prior: book, observed }).figure.likely).toBeCloseTo(back.figure.likely, 12);
  });

  test('a hundred thousand records in a moment', () => {
    const observed = Array.from({ length: 100_000 }, (_, i) => 0.7 + (i % 100) / 1000);
    const before = performance.now();
    expect(learnFromRecords({ prior: book, observed }).n).toBe(100_000);
    expect(performance.now() - before).toBeLessThan(3000);
  });
});

describe('shares and bad figures', () => {
  test('a moisture in percent stays between 0 and 1', () => {
    const { figure } = learnFromRecords({
      prior: { low: '95 %', likely: '97 %', high: '99 %' },
      observed: ['99.9 %', 1, 1],
      varies: 'share',
    });
    expect(figure.high).toBe(1);
    const flat = { low: 0.5, likely: 0.5, high: 0.5 };
    expectError(() => learnFromRecords({ prior: flat, observed: [], varies: 'share' }), 'CONTRADICTION', 'prior');
    const over = { low: 0.5, likely: 0.9, high: 1.1 };
    expectError(() => learnFromRecords({ prior: over, observed: [], varies: 'share' }), 'OUT_OF_RANGE', 'prior.high');
    expectError(
      () => learnFromRecords({ prior: { ...over, high: 1 }, observed: [0.5, 85], varies: 'share' }),
      'OUT_OF_RANGE',
      'observed[1]',
    );
    expectError(() => learnFromRecords({ prior: over, observed: ['850 %'] }), 'OUT_OF_RANGE', 'observed[0]');
  });
  test('bad figures', () => {
    const prior = { low: 1, likely: 2, high: 3 };
    expectError(() => learnFromRecords({ prior, observed: [1, -1], varies: 'times' }), 'OUT_OF_RANGE', 'observed[1]');
    expectError(
      () => learnFromRecords({ prior: { ...prior, low: 0 }, observed: [], varies: 'times' }),
      'OUT_OF_RANGE',
      'prior.low',
    );
    expectError(() => learnFromRecords({ prior, observed: [Number.NaN] }), 'OUT_OF_RANGE', 'observed[0]');
    expectError(() => learnFromRecords({ prior, observed: [2e9] }), 'OUT_OF_RANGE', 'observed[0]');
    expectError(() => learnFromRecords({ prior, observed: [true] } as never), 'WRONG_TYPE', 'observed[0]');
    expectError(
      () => learnFromRecords({ prior: { low: 1, high: 3 }, observed: [] } as never),
      'MISSING',
      'prior.likely',
    );
    expectError(() => learnFromRecords({ prior } as never), 'MISSING', 'observed');
  });
});
