import { describe, expect, test } from 'vitest';
import { learnFromRecords } from '../../src/record/index';
import { halfWidths, learn, updated } from '../../src/record/statistics';
import { ninetyPercentT } from '../../src/record/studentT';
import { seededNormal } from '../helpers/normal';

const book = { low: 0.7, likely: 0.78, high: 0.86 };

/** How often the next batch, and the average, fall inside their 90 % interval. */
function coverage(n: number, kitchens: number, kitchen: (normal: () => number) => { mean: number; sd: number }) {
  const normal = seededNormal(20260814 + n);
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
    const normal = seededNormal(11 + n);
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

// A First Course in Bayesian Statistical Methods, section 5.3: data and prior read, posterior recalled
test('wing lengths of midges', () => {
  const wings = [1.64, 1.7, 1.72, 1.74, 1.82, 1.82, 1.82, 1.9, 2.08];
  const prior = { mean: 1.9, measurements: 1, spread: 0.1, degrees: 1 };
  const known = updated(
    prior,
    wings,
    wings.map(() => 1),
  );
  expect(known).toMatchObject({ measurements: 10, degrees: 10 });
  expect(Math.abs(known.mean - 1.814)).toBeLessThan(5e-4);
  expect(Math.abs(known.spread ** 2 - 0.0153)).toBeLessThan(1e-4);
  expect(updated(prior, [], [])).toBe(prior);
});

test('the textbook update is what no far record disturbs', () => {
  const observed = [0.77, 0.79, 0.8];
  const spread = 0.08 / (ninetyPercentT(4) * Math.SQRT2);
  const known = updated({ mean: 0.78, measurements: 1, spread, degrees: 4 }, observed, [1, 1, 1]);
  const { next, average } = halfWidths(known);
  const learned = learnFromRecords({ prior: book, observed });
  expect(learned.figure.low).toBeCloseTo(known.mean - next, 12);
  expect(learned.average.high).toBeCloseTo(known.mean + average, 12);
});
