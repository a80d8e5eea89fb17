import { describe, expect, test } from 'vitest';
import { seeded } from '../../../src/common/seeded';
import { StillroomError } from '../../../src/errors/StillroomError';
import { longestWait } from '../../../src/plan/check/waits';
import { checkSchedule, type FeasibleDay, type PlanDayInput, planDay } from '../../../src/plan/index';
import { randomDay } from '../randomDay';
import { randomSmallKitchen } from '../randomSmallKitchen';
import { happened, hotCanners, nowOf } from './happened';

const day = {
  lots: [
    { food: 'peach', raw: '60 lb', price: '48.00 USD' },
    { food: 'apple', raw: '30 lb' },
  ],
  kitchen: {
    elevation: '3,400 ft',
    hours: '9 h',
    hands: 2,
    pots: [{ volume: '12 quarts' }, { volume: '8 quarts' }],
    canners: [{ method: 'boiling-water', holds: { pint: 9, quart: 7 } }],
    jars: [
      { jar: 'quart', count: 24 },
      { jar: 'pint', count: 20 },
    ],
    lids: { count: 40 },
    dryer: { trays: 9, trayArea: '200 in2' },
  },
  products: [
    { name: 'halves', make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart', syrup: 'light' },
    { name: 'sauce', make: 'jars', from: 'apples', form: 'sauce', jar: 'pint' },
    { name: 'dried', make: 'dried', from: 'apples', form: 'slices' },
  ],
} as const satisfies PlanDayInput;

type Rest = Omit<Partial<PlanDayInput>, 'lots' | 'kitchen' | 'products'>;
const restOf = (more: Rest, of: PlanDayInput = day): FeasibleDay => {
  const plan = planDay({ ...of, ...more });
  if (!plan.feasible) throw new Error(`${plan.reason.text}: ${plan.conflicts.join()}`);
  expect(checkSchedule(plan).broken).toEqual([]);
  return plan;
};
const errorOf = (more: object): StillroomError => {
  try {
    planDay({ ...day, ...more } as PlanDayInput);
  } catch (error) {
    if (error instanceof StillroomError) return error;
    throw error;
  }
  throw new Error('no error');
};
/** Pounds of a lot in all places of an answer. */
const pounds = (plan: FeasibleDay, lot: string): number => {
  const shares = [
    ...plan.products.flatMap(({ fromLots: from }) => from),
    ...plan.leftFresh,
    ...(plan.setAside ?? []).map(({ fromLot: from }) => from),
  ];
  return shares.reduce((sum, each) => (each.lot === lot ? sum + each.raw.value : sum), 0);
};

describe('the rest of a day', () => {
  test('begins now, with what is left', () => {
    const rest = restOf({ now: '10:30', done: [{ name: 'halves', raw: '18 lb', filled: 7 }] });
    expect(rest.nowMinute).toBe(150);
    expect(Math.min(...rest.schedule.tasks.map(({ startMinute: start }) => start))).toBeGreaterThanOrEqual(150);
    expect(rest.schedule.windows).toEqual([{ day: 0, startMinute: 150, endMinute: 540 }]);
    expect(rest.done).toEqual([
      {
        name: 'halves',
        raw: { value: expect.closeTo(18), unit: 'lb' },
        filled: 7,
        unit: 'quart jar',
        plural: 'quart jars',
      },
    ]);
    const [halves] = rest.products.filter(({ name }) => name === 'halves');
    expect(halves?.doneSoFar).toBe(7);
    expect(halves?.units.ready).toBeLessThanOrEqual(24 - 7);
    expect(pounds(rest, 'peach')).toBeCloseTo(60 - 18, 6);
    expect(pounds(rest, 'apple')).toBeCloseTo(30, 6);
  });

  test('with nothing done is the day with fewer hours', () => {
    const late = restOf({ now: '10:00', done: [] });
    const shorter = planDay({ ...day, kitchen: { ...day.kitchen, hours: '7 h', start: '10:00' } }) as FeasibleDay;
    expect(late.objective).toBeCloseTo(shorter.objective, 6);
    expect(late.schedule.makespan).toBe(shorter.schedule.makespan + 120);
  });

  test('a later day begins on that day', () => {
    const two = { ...day, kitchen: { ...day.kitchen, hours: ['5 h', '5 h'] } } as const;
    const rest = restOf({ now: { day: 2, at: '9:15' }, done: [] }, two);
    expect(rest.schedule.windows).toEqual([{ day: 1, startMinute: 1515, endMinute: 1740 }]);
  });

  test('a load that runs is not loaded again, and the next one goes into its hot water', () => {
    const rest = restOf({ now: '10:30', done: [{ name: 'halves', raw: '18 lb', filled: 7, until: '10:50' }] });
    const of = (kind: string) => rest.schedule.tasks.filter((task) => task.kind === kind && task.was === 'running');
    expect(of('can')).toMatchObject([{ startMinute: 150, endMinute: 170, units: { count: 7 } }]);
    expect(of('unload')).toMatchObject([{ endMinute: 170 }]);
    const others = rest.schedule.tasks.filter(
      ({ was, uses }) => was !== 'running' && uses.some((use) => use.resource === 'boiling-water canner'),
    );
    expect(Math.min(...others.map(({ startMinute: start }) => start))).toBeGreaterThanOrEqual(170);
    const canned = rest.schedule.tasks.filter(
      ({ kind, was, forProducts: products }) => kind === 'can' && was !== 'running' && products.includes('halves'),
    );
    const [halves] = rest.products.filter(({ name }) => name === 'halves');
    expect(canned.reduce((sum, { units }) => sum + (units?.count ?? 0), 0)).toBe(halves?.units.ready);
  });

  test('a canner that is hot is not heated again', () => {
    const heats = (plan: FeasibleDay) =>
      plan.schedule.tasks.filter(({ kind, was }) => kind === 'heat canner' && was !== 'running').length;
    const done = [{ name: 'sauce', raw: '10 lb', howFar: 'hot', since: '10:25' }] as const;
    expect(heats(restOf({ now: '10:30', done, hotCanners: ['boiling-water canner'] }))).toBe(0);
    expect(heats(restOf({ now: '10:30', done }))).toBeGreaterThan(0);
    const runs = { name: 'halves', raw: '18 lb', filled: 7, until: '10:50' } as const;
    expect(heats(restOf({ now: '10:30', done: [...done, runs] }))).toBe(0);
  });
});

describe('what is in work', () => {
  const first = (rest: FeasibleDay, name: string) =>
    rest.schedule.tasks.filter(({ forProducts: products }) => products.includes(name));

  test('prepared food goes on within its hour', () => {
    const rest = restOf({ now: '10:30', done: [{ name: 'dried', raw: '5 lb', howFar: 'prepared', since: '10:00' }] });
    const [dry] = first(rest, 'dried, prepared');
    expect(dry).toMatchObject({ kind: 'dry', was: 'prepared', sinceMinute: 120 });
    expect(dry?.startMinute).toBeLessThanOrEqual(120 + longestWait('prepared'));
    expect(rest.products.find(({ was }) => was === 'prepared')?.raw.value).toBeCloseTo(5, 6);
    expect(pounds(rest, 'apple')).toBeCloseTo(30, 6);
  });

  test('what is hot keeps its pot until it is filled', () => {
    const rest = restOf({
      now: '10:30',
      done: [{ name: 'sauce', raw: '10 lb', howFar: 'hot', since: '10:20' }],
      hotCanners: ['boiling-water canner'],
    });
    const own = first(rest, 'sauce, hot');
    expect(own.some(({ kind }) => kind === 'prepare' || kind === 'cook')).toBe(false);
    const [fill] = own.filter(({ kind }) => kind === 'fill');
    expect(fill?.endMinute).toBeLessThanOrEqual(140 + longestWait('hot-sauce'));
    for (const { startMinute: start, endMinute: end, uses } of own.filter(({ kind }) => kind === 'keep hot')) {
      expect([start, end]).toEqual([150, fill?.endMinute]);
      expect(uses.map(({ resource }) => resource)).toContain('burners');
    }
  });

  test('what must be filled at once and has stood hot is set aside', () => {
    const rest = restOf({ now: '10:30', done: [{ name: 'halves', raw: '9 lb', howFar: 'hot', since: '10:10' }] });
    expect(rest.setAside).toMatchObject([{ name: 'halves', howFar: 'hot', reason: { code: 'waited-too-long' } }]);
    expect(rest.cautions.map(({ id }) => id)).toContain('hot-waited');
  });

  test('filled jars go into the canner within their 20 minutes, and no other jars with them', () => {
    const rest = restOf({
      now: '10:30',
      done: [{ name: 'halves', raw: '15 lb', howFar: 'filled', filled: 6, since: '10:20' }],
      hotCanners: ['boiling-water canner'],
    });
    const loads = rest.schedule.tasks.filter(({ kind, was }) => kind === 'can' && was === 'filled');
    expect(loads).toMatchObject([{ forProducts: ['halves, filled'], units: { count: 6 }, sinceMinute: 140 }]);
    expect(loads[0]?.startMinute).toBeLessThanOrEqual(140 + longestWait('filled-jar'));
    expect(rest.products.find(({ was }) => was === 'filled')?.units).toMatchObject({ promised: 6, ready: 6 });
  });

  test('a filled jar that waited 40 minutes is not canned', () => {
    const rest = restOf({
      now: '10:30',
      done: [{ name: 'halves', raw: '15 lb', howFar: 'filled', filled: 6, since: '9:50' }],
      hotCanners: ['boiling-water canner'],
    });
    expect(rest.schedule.tasks.some(({ was }) => was === 'filled')).toBe(false);
    expect(rest.setAside).toMatchObject([
      { name: 'halves', howFar: 'filled', filled: 6, waited: 40, reason: { code: 'waited-too-long' } },
    ]);
    expect(rest.cautions[0]).toMatchObject({ severity: 'danger' });
    expect(rest.cautions.map(({ id }) => id)).toContain('filled-waited');
    expect(pounds(rest, 'peach')).toBeCloseTo(60, 6);
  });

  test('filled jars before a cold canner are set aside, and the day goes on without them', () => {
    const rest = restOf({
      now: '10:30',
      done: [{ name: 'halves', raw: '15 lb', howFar: 'filled', filled: 6, since: '10:25' }],
    });
    expect(rest.setAside).toMatchObject([{ reason: { code: 'no-room-for-it' } }]);
    expect(rest.products.length).toBeGreaterThan(0);
  });

  test('the checker finds what goes on too late', () => {
    const rest = restOf({ now: '10:30', done: [{ name: 'dried', raw: '5 lb', howFar: 'prepared', since: '10:00' }] });
    const tasks = rest.schedule.tasks.map((task) => (task.was === 'prepared' ? { ...task, sinceMinute: 60 } : task));
    const { broken } = checkSchedule({ ...rest.schedule, tasks });
    expect(broken.map(({ rule }) => rule)).toEqual(['wait']);
  });
});

describe('what is lost', () => {
  test('a pot, a canner, jars and hands are no longer there', () => {
    const names = ({ schedule }: FeasibleDay) => schedule.resources.map(({ resource }) => resource);
    const pot = restOf({ now: '10:30', lost: { potNames: ['12 quart pot'] } });
    expect(names(pot)).not.toContain('12 quart pot');
    expect(names(pot)).toContain('8 quart pot');
    const canner = restOf({ now: '10:30', lost: { cannerNames: ['boiling-water canner'] } });
    expect(canner.products.every(({ canning: jars }) => jars === undefined)).toBe(true);
    expect(canner.leftOut.map(({ name }) => name)).toContain('halves');
    const jars = restOf({ now: '10:30', lost: { jars: [{ jar: 'quart', count: 20 }] } });
    expect(jars.products.find(({ name }) => name === 'halves')?.units.ready ?? 0).toBeLessThanOrEqual(4);
    const alone = restOf({ now: '10:30', lost: { hands: 1 } });
    expect(alone.schedule.resources.find(({ resource }) => resource === 'hands')?.available).toBe(1);
  });

  test('what was for a lost canner is set aside', () => {
    const rest = restOf({
      now: '10:30',
      done: [{ name: 'sauce', raw: '10 lb', howFar: 'hot', since: '10:25' }],
      lost: { cannerNames: ['boiling-water canner'] },
    });
    expect(rest.setAside).toMatchObject([{ name: 'sauce', reason: { code: 'cannot-be-made' } }]);
  });

  test('pots of one size keep their names when one of them is lost', () => {
    const pots = [{ volume: '8 quarts', count: 3 }] as const;
    const rest = restOf(
      { now: '10:30', lost: { potNames: ['8 quart pot 2'] } },
      { ...day, kitchen: { ...day.kitchen, pots } },
    );
    const names = rest.schedule.resources.map(({ resource }) => resource);
    expect(names.filter((name) => name.startsWith('8 quart'))).toEqual(['8 quart pot 1', '8 quart pot 3']);
  });
});

describe('musts and the most are of the whole day', () => {
  test('less what is done', () => {
    const [halves, ...others] = day.products;
    const of = { ...day, products: [{ ...halves, least: 9, most: 12 }, ...others] } as const;
    const done = [{ name: 'halves', raw: '24 lb', filled: 9 }] as const;
    const rest = restOf({ now: '15:30', done }, of);
    expect(rest.products.find(({ name }) => name === 'halves')?.units.ready ?? 0).toBeLessThanOrEqual(3);
  });
});

describe('an input that is wrong names its field', () => {
  const done = (entry: object) => ({ now: '10:30', done: [entry] });
  test.each([
    ['no time', { done: [] }, 'MISSING', 'now'],
    ['after hours', { now: '17:30' }, 'CONTRADICTION', 'now'],
    ['a later day that is none', { now: { day: 2, at: '9:00' } }, 'CONTRADICTION', 'now'],
    ['a day 0', { now: { day: 0, at: '9:00' } }, 'OUT_OF_RANGE', 'now.day'],
    ['no time of day', { now: 630 }, 'WRONG_TYPE', 'now'],
    ['another product', done({ name: 'quarters', raw: '1 lb' }), 'UNKNOWN_NAME', 'done[0].name'],
    ['a field of the prototype', done({ name: 'constructor', raw: '1 lb' }), 'UNKNOWN_NAME', 'done[0].name'],
    ['another lot', done({ name: 'halves', lot: 'apple', raw: '1 lb' }), 'UNKNOWN_NAME', 'done[0].lot'],
    ['no weight', done({ name: 'halves' }), 'MISSING', 'done[0].raw'],
    ['no since', done({ name: 'halves', raw: '1 lb', howFar: 'prepared' }), 'MISSING', 'done[0].since'],
    [
      'since later',
      done({ name: 'halves', raw: '1 lb', howFar: 'prepared', since: '10:40' }),
      'CONTRADICTION',
      'done[0].since',
    ],
    [
      'hot slices',
      done({ name: 'dried', raw: '1 lb', howFar: 'hot', since: '10:20' }),
      'CONTRADICTION',
      'done[0].howFar',
    ],
    ['no count', done({ name: 'halves', raw: '1 lb', howFar: 'filled', since: '10:20' }), 'MISSING', 'done[0].filled'],
    ['a load without jars', done({ name: 'halves', raw: '1 lb', until: '10:50' }), 'MISSING', 'done[0].filled'],
    [
      'until, and prepared',
      done({ name: 'halves', raw: '1 lb', howFar: 'prepared', until: '10:50' }),
      'CONTRADICTION',
      'done[0].howFar',
    ],
    ['a stray field', done({ name: 'halves', raw: '1 lb', jar: 'pint' }), 'UNKNOWN_FIELD', 'done[0].jar'],
    ['more trays', done({ name: 'dried', raw: '1 lb', trays: 12, until: '18:00' }), 'CONTRADICTION', 'done[0].trays'],
    ['more jars', done({ name: 'halves', raw: '50 lb', filled: 25 }), 'CONTRADICTION', 'done[0].filled'],
    ['another pot', { now: '10:30', lost: { potNames: ['7 quart pot'] } }, 'UNKNOWN_NAME', 'lost.potNames[0]'],
    ['all hands', { now: '10:30', lost: { hands: 2 } }, 'CONTRADICTION', 'lost.hands'],
    [
      'more broken',
      { now: '10:30', lost: { jars: [{ jar: 'quart', count: 25 }] } },
      'CONTRADICTION',
      'lost.jars[0].count',
    ],
    ['another canner', { now: '10:30', hotCanners: ['stove'] }, 'UNKNOWN_NAME', 'hotCanners[0]'],
  ])('%s', (_, more, code, path) => {
    const error = errorOf(more);
    expect([error.code, error.path]).toEqual([code, path]);
  });

  test('more done than bought shows both', () => {
    const error = errorOf({
      now: '10:30',
      done: [
        { name: 'halves', raw: '40 lb', filled: 10 },
        { name: 'halves', raw: '21 lb', filled: 5 },
      ],
    });
    expect(error).toMatchObject({ code: 'CONTRADICTION', path: 'done[1].raw', given: '21 lb' });
    expect(error.expected).toContain('60 lb');
    expect(error.expected).toContain('61 lb');
  });
});

/** How many days: 24, or as many as the environment says. */
const DAYS = Number(process.env.STILLROOM_RESTS ?? 24);

describe(`${DAYS} random days that are broken off`, () => {
  const kept = (plan: FeasibleDay) =>
    plan.products.reduce((sum, { raw, trimmings }) => (trimmings === undefined ? sum : sum + raw.value), 0);
  test.each([0, 45])(
    'begun %d min late, go on without a broken rule',
    (late) => {
      let [days, share] = [0, 0];
      for (let seed = 1; seed <= DAYS; seed++) {
        const whole = seed % 2 === 0 ? randomSmallKitchen(seed) : randomDay(seed);
        const plan = planDay(whole);
        if (!plan.feasible || plan.products.length === 0) continue;
        const last = plan.schedule.windows.at(-1)?.endMinute ?? 0;
        const random = seeded(seed);
        random();
        const at = Math.floor(random() * Math.min(plan.schedule.makespan, last - 60));
        const done = happened(plan, at, late);
        if (done === undefined) continue;
        const rest = planDay({ ...whole, now: nowOf(plan, at + late), done, hotCanners: hotCanners(plan, at) });
        if (!rest.feasible) {
          // only a must can fail
          expect(
            whole.products?.some(({ least = 0 }) => least > 0),
            `day ${seed}`,
          ).toBe(true);
          continue;
        }
        days += 1;
        expect(checkSchedule(rest).broken, `day ${seed}`).toEqual([]);
        for (const { startMinute: start } of rest.schedule.tasks)
          expect(start, `day ${seed}`).toBeGreaterThanOrEqual(at + late);
        const finished = (rest.done ?? []).reduce((sum, { raw }) => sum + raw.value, 0);
        const aside = (rest.setAside ?? []).reduce((sum, { fromLot: from }) => sum + from.raw.value, 0);
        const fresh = (some: FeasibleDay) => some.leftFresh.reduce((sum, { raw }) => sum + raw.value, 0);
        expect(kept(rest) + finished + aside + fresh(rest), `day ${seed}`).toBeCloseTo(kept(plan) + fresh(plan), 3);
        share += (kept(rest) + finished) / kept(plan);
      }
      expect(days).toBeGreaterThan(DAYS / 3);
      // work that is broken off halfway begins again, and a canner that was being heated too
      expect(share / days).toBeGreaterThan(late === 0 ? 0.85 : 0.7);
    },
    600_000,
  );
});
