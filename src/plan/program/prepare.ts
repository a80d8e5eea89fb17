import { fail, within } from '../../errors/StillroomError';
import { readInput } from '../../quantity/fields';
import { readFood } from '../../foods/fields';
import { makeProduct } from '../makes/make';
import {
  compositionOf,
  type Day,
  within as inProduct,
  isMaking,
  type KnownLot,
  type Making,
} from '../makes/making';
import { LIFT_A_JAR } from '../makes/work';
import type { Activity, Capacity } from '../request/activity';
import type { LeftOut } from '../request/dayPlan';
import { learnedOf } from '../request/learned';
import {
  type Lot,
  type PlanDayInput,
  type PlanRequest,
  planSchema,
} from '../request/planInput';
import type { Means } from '../schedule/job';
import { loadsThatFit } from '../schedule/loadsThatFit';
import { checkRequest } from './checkRequest';
import type { DayProgram } from './decisions';
import { capacityOf, meansOf } from './kitchen';
import { pricesIn, withPrices } from './prices';
import { toProgram } from './program';
import { tellApart } from './tellApart';

/** A product that must be made and cannot be made here. */
export interface UnmetMust {
  readonly name: string;
  readonly least: number;
  readonly reason: string;
}

/** The day as asked, read and turned into a program. */
export interface Prepared {
  readonly request: PlanRequest;
  readonly day: Day;
  readonly makings: readonly Making[];
  readonly leftOut: readonly LeftOut[];
  /** Left out, though at least one was to be made: the day is impossible as asked. */
  readonly unmetMusts: readonly UnmetMust[];
  readonly capacity: Capacity;
  readonly means: Means;
  readonly program: DayProgram;
}

const METRIC: ReadonlySet<string> = new Set(['g', 'mg', 'kg', 'tonne']);

/** Ways to put a lot into a product that a plan can be found among in a few seconds. */
const MOST_PAIRS = 300;

/** Reads the request, makes each product ready for the program, and writes the program. */
export function prepare(input: PlanDayInput): Prepared {
  const read = readInput(planSchema, input);
  const named = (read.products ?? []).filter(({ never }) => never !== true);
  const never = (read.products ?? []).filter((each) => each.never === true);
  const asked: PlanRequest = { ...read, products: named };
  checkRequest(asked, input);
  const lots = knownLots(read.lots);
  const massUnit = (request.lots[0] as Lot).raw.unit;
  const day: Day = { request, lots, learned: learnedOf(request.learned), massUnit, metric: METRIC.has(massUnit) };
  const wanted = request.products;
  const made = wanted.map((each, index) => inProduct(index, () => makeProduct(day, each, index)));
  const pairs = made.reduce((sum, each) => sum + (isMaking(each) ? each.activity.supplies.length : 0), 0);
  if (pairs > MOST_PAIRS) {
    fail(
      'TOO_MUCH',
      'lots',
      pairs,
      `at most ${MOST_PAIRS} pairs of a lot and a product made of it: put lots of the same food together`,
    );
  }
  const names = tellApart(made, wanted);
  const named = made.map((each, product): Making | LeftOut => {
    const label = names[product] as string;
    if (isMaking(each)) return { ...each, label };
    return { name: label, reason: { code: each.code, text: each.text }, instead: [{ text: each.instead }] };
  });
  const prices = pricesIn(request);
  const priced = named.filter(isReady).map((making) => ({ ...making, activity: withPrices(making.activity, prices) }));
  const capacity = capacityOf(
    request,
    priced.map(({ activity }) => activity),
  );
  const means = meansOf(request.kitchen, capacity);
  const activities = loadsThatFit(
    priced.map(({ activity }) => activity),
    means,
    LIFT_A_JAR / 2,
  );
  const makings = priced.map((making, index) => ({ ...making, activity: activities[index] as Activity }));
  return {
    request,
    day,
    makings,
    leftOut: named.filter((each): each is LeftOut => !isReady(each)),
    unmetMusts: named.flatMap((each, product) => {
      const least = wanted[product]?.least ?? 0;
      return isReady(each) || least === 0 ? [] : [{ name: each.name, least, reason: each.reason.text }];
    }),
    capacity,
    means,
    program: toProgram(activities, capacity, request.aim ?? 'most worth'),
  };
}

const isReady = (each: Making | LeftOut): each is Making => 'activity' in each;

/** The lots by their trade names, each with its label. */
function knownLots(lots: PlanRequest['lots']): KnownLot[] {
  const trades = lots.map(({ food }, index) => within(`lots[${index}]`, () => compositionOf(food, 'food').food));
  const labels = lots.map(({ name }, index) => name ?? (trades[index] as string));
  return lots.map((lot, index) => {
    const label = labels[index] as string;
    const sameBefore = labels.slice(0, index).filter((each) => each === label).length;
    const several = labels.filter((each) => each === label).length > 1;
    return { ...lot, index, id: readFood(lot.food, `lots[${index}].food`).id, trade: trades[index] as string, label: several ? `${label} ${sameBefore + 1}` : label };
  });
}
