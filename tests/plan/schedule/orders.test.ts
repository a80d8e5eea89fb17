import { expect, test } from 'vitest';
import { seeded } from '../../../src/common/seeded';
import type { CanStep, Job, Means } from '../../../src/plan/schedule/job';
import { alikeOf, customaryOrders, inOrderOf, moved } from '../../../src/plan/schedule/orders';

const means: Means = { start: 480, hands: 2, burners: 4, pots: [], canners: ['canner'], trays: 4 };
const job = (product: string, more: Partial<Job> = {}, held = false): Job => ({
  portions: [
    {
      product,
      what: product,
      raw: { value: 1, unit: 'kg' },
      filled: { count: 7, unit: 'jar' },
      prepare: 10,
      fill: 5,
      drops: [],
      ...(held ? { held: { state: 'prepared', kg: 1, since: 0, from: 0, by: 30 } as const } : {}),
    },
  ],
  needs: [],
  ...more,
});
const can = (minutes: number): CanStep => ({
  kind: 'can',
  jars: { count: 7, unit: 'jar' },
  lift: 3,
  canners: [{ canner: 0, minutes, warmUp: 10 }],
});
const names = (order: readonly Job[]) => order.map(({ portions }) => portions[0]?.product);
const jobs = [
  job('peel', { needs: [{ lot: 0, kg: 1 }] }),
  job('dried'),
  job('short', { into: can(30) }),
  job('long', { into: can(90) }),
  job('begun', {}, true),
];

test('customary orders hold every job once, what is in work first and what is made of trimmings last', () => {
  for (const order of customaryOrders(jobs, means)) {
    expect([...names(order)].sort()).toEqual(['begun', 'dried', 'long', 'peel', 'short']);
    expect(names(order)[0]).toBe('begun');
    expect(names(order)[4]).toBe('peel');
  }
});

test('a moved order holds the same jobs; every second time one of those that found no place is moved', () => {
  const random = seeded(3);
  const order = [jobs[4], jobs[1], jobs[2], jobs[3], jobs[0]] as Job[];
  const places = new Set<number>();
  for (let tries = 0; tries < 60; tries++) {
    const next = moved(order, random, [jobs[3] as Job]);
    expect([...names(next)].sort()).toEqual([...names(order)].sort());
    expect([names(next)[0], names(next)[4]]).toEqual(['begun', 'peel']);
    places.add(names(next).indexOf('long'));
  }
  expect([...places].sort()).toEqual([1, 2, 3]);
  expect(moved([jobs[0] as Job], random)).toEqual([jobs[0]]);
});

test('jobs that are alike have the same number', () => {
  const alike = alikeOf();
  expect(alike(job('plums'))).toBe(alike(job('plums')));
  expect(alike(job('plums'))).not.toBe(alike(job('pears')));
  expect(alike(job('plums', { into: can(30) }))).not.toBe(alike(job('plums', { into: can(31) })));
});

test('jobs in the order of another plan, kind by kind; what that has fewer of comes after, trimmings last', () => {
  const like = [job('long', { into: can(90) }), job('dried'), job('long', { into: can(90) })];
  const now = [job('dried'), job('peel', { needs: [{ lot: 0, kg: 1 }] }), job('long', { into: can(60) }), job('new')];
  expect(names(inOrderOf(now, like))).toEqual(['long', 'dried', 'new', 'peel']);
  expect(names(inOrderOf([...now, job('begun', {}, true)], like))[0]).toBe('begun');
});
