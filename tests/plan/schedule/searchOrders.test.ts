import { describe, expect, test } from 'vitest';
import type { Job, Means } from '../../../src/plan/schedule/job';
import { overtimeOf } from '../../../src/plan/schedule/scheduleJobs';
import { type Ordered, ordersOf, type Until } from '../../../src/plan/schedule/searchOrders';
import { randomJobs } from './randomJobs';

const effort = () => ({ looks: Number.POSITIVE_INFINITY });
const toTheEnd: Until = { enough: () => false, tries: 30, inVain: 30 };
const lossOf = (left: readonly Job[]) => left.length;
/** Days on which every job finds a place. */
const seeds = Array.from({ length: 80 }, (_, index) => index + 1).filter((seed) => {
  const { jobs, means, windows } = randomJobs(seed);
  const first: Until = { enough: () => true, tries: 0, inVain: 0 };
  return ordersOf({ jobs, means, windows, effort: effort(), overtime: overtimeOf(jobs, means) })(first) !== undefined;
});
test('there are enough of such days', () => expect(seeds.length).toBeGreaterThan(20));

/** What stands where at the end of a search. */
const standing = ({ day }: Ordered) => day.placed.map(({ start, tasks }) => [start, tasks.map(({ kind }) => kind)]);

describe('the best order', () => {
  test.each(seeds)('is placed as if nothing had been tried before, seed %i', (seed) => {
    const { jobs, means, windows } = randomJobs(seed);
    const overtime = overtimeOf(jobs, means);
    const found = ordersOf({ jobs, means, windows, effort: effort(), overtime })(toTheEnd) as Ordered;
    const again = ordersOf({ jobs, means, windows, effort: effort(), overtime, like: found.order })({
      enough: () => true,
      tries: 0,
      inVain: 0,
    }) as Ordered;
    expect(standing(again)).toEqual(standing(found));
    expect([again.makespan, again.sum]).toEqual([found.makespan, found.sum]);
  });
  test('gets no worse by a longer search, which goes on where it ended', () => {
    for (const seed of seeds) {
      const { jobs, means, windows } = randomJobs(seed);
      const search = ordersOf({ jobs, means, windows, effort: effort(), overtime: overtimeOf(jobs, means) });
      const short = search({ enough: () => false, tries: 2, inVain: 2 }) as Ordered;
      expect(search(toTheEnd)?.makespan).toBeLessThanOrEqual(short.makespan);
    }
  });
});

describe('what finds no place in the hours', () => {
  test.each(seeds)('is left out, and the rest stands within them, seed %i', (seed) => {
    const { jobs, means, windows } = randomJobs(seed);
    const short = windows.map((window) => ({
      ...window,
      endMinute: window.startMinute + (window.endMinute - window.startMinute) / 2,
    }));
    const found = ordersOf({ jobs, means, windows: short, effort: effort(), overtime: 0, lossOf })(toTheEnd) as Ordered;
    expect(found.loss).toBe(found.left.length);
    expect(found.makespan).toBeLessThanOrEqual(short[short.length - 1]?.endMinute ?? 0);
    const products = new Set(found.day.placed.flatMap(({ tasks }) => tasks.flatMap((each) => each.forProducts)));
    for (const job of jobs)
      for (const { product } of job.portions) expect(products.has(product)).toBe(!found.left.includes(job));
  });
  test('is nothing where all of it fits', () => {
    for (const seed of seeds) {
      const { jobs, means, windows } = randomJobs(seed);
      const whole = ordersOf({ jobs, means, windows, effort: effort(), overtime: overtimeOf(jobs, means) })(toTheEnd);
      if (whole === undefined || whole.makespan > (windows[windows.length - 1]?.endMinute ?? 0)) continue;
      const like = whole.order;
      const found = ordersOf({ jobs, means, windows, effort: effort(), overtime: 0, lossOf, like })(toTheEnd);
      expect(found?.left).toEqual([]);
    }
  });
  test('of two jobs the one whose loss is less', () => {
    const means: Means = { start: 480, hands: 1, burners: 1, pots: [], canners: [], trays: 0 };
    const job = (product: string): Job => ({
      portions: [
        {
          product,
          what: 'fruit',
          raw: { value: 1, unit: 'kg' },
          filled: { count: 1, unit: 'pack' },
          prepare: 40,
          fill: 0,
          drops: [],
        },
      ],
      needs: [],
    });
    const jobs = [job('cheap'), job('dear')];
    const price = (left: readonly Job[]) =>
      left.reduce((sum, { portions }) => sum + (portions[0]?.product === 'dear' ? 9 : 1), 0);
    const windows = [{ day: 0, startMinute: 0, endMinute: 60 }];
    const found = ordersOf({ jobs, means, windows, effort: effort(), overtime: 0, lossOf: price })(toTheEnd);
    expect(found?.left.map(({ portions }) => portions[0]?.product)).toEqual(['cheap']);
    expect(found?.loss).toBe(1);
  });
});
