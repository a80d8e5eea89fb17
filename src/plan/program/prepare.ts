import { fail } from '../../errors/StillroomError';
import { readInput } from '../../quantity/fields';
import { makeProduct } from '../makes/make';
import { type Day, within as inProduct, isMaking, type LeftOutProduct, type Made, type Making } from '../makes/making';
import { LIFT_A_JAR } from '../makes/work';
import type { Activity, Capacity } from '../request/activity';
import type { LeftOut } from '../request/dayPlan';
import { learnedOf } from '../request/learned';
import { readLots } from '../request/lots';
import { type PlanDayInput, type PlanRequest, planSchema, type Wanted } from '../request/planInput';
import type { Means } from '../schedule/job';
import { loadsThatFit } from '../schedule/loadsThatFit';
import { checkRequest } from './checkRequest';
import { choose } from './choose';
import type { DayProgram } from './decisions';
import { capacityOf, meansOf } from './kitchen';
import { pricesIn, withPrices } from './prices';
import { toProgram } from './program';
import { withSpread } from './spread';
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

/** Ways to put a lot into a product that a plan can be found among in a few seconds. */
const MOST_PAIRS = 300;

/** Reads the request, makes each product ready for the program, and writes the program. */
export function prepare(input: PlanDayInput): Prepared {
  const { day, made } = readDay(input);
  const { request, lots } = day;
  const names = tellApart(made, request.products);
  const makings = made.flatMap((each, index) => (isMaking(each) ? [{ ...each, label: names[index] as string }] : []));
  const prices = pricesIn(request, lots);
  const priced = makings.map(({ activity }) => withPrices(withSpread(activity, lots), prices));
  const capacity = capacityOf({ lots, kitchen: request.kitchen }, priced);
  const means = meansOf(request.kitchen, capacity);
  const activities = loadsThatFit(priced, means, LIFT_A_JAR / 2);
  const leftOut = made.flatMap((each, index) =>
    isMaking(each) ? [] : [{ each, index, name: names[index] as string }],
  );
  return {
    request,
    day,
    makings: makings.map((making, index) => ({ ...making, activity: activities[index] as Activity })),
    leftOut: leftOut.map(({ each, name }) => leftOutOf(each, name)),
    unmetMusts: leftOut.flatMap(({ each, index, name }) => {
      const least = request.products[index]?.least ?? 0;
      return least === 0 ? [] : [{ name, least, reason: each.text }];
    }),
    capacity,
    means,
    program: toProgram(activities, capacity, request.aim ?? 'most worth'),
  };
}

const leftOutOf = ({ code, text, instead }: LeftOutProduct, name: string): LeftOut => ({
  name,
  reason: { code, text },
  instead: [{ text: instead }],
});

/** The day that was asked for, and its products: those that were named, or those that the plan is to choose among. */
function readDay(input: PlanDayInput): { readonly day: Day; readonly made: readonly Made[] } {
  const read = readInput(planSchema, input);
  const wanted = (read.products ?? []).filter(({ never }) => never !== true);
  const never = (read.products ?? []).filter((each) => each.never === true);
  const asked: PlanRequest = { ...read, products: wanted };
  checkRequest(asked);
  const known = readLots(read.lots, input.lots, read.kitchen);
  const day: Day = { request: asked, ...known, learned: learnedOf(read.learned) };
  const named = wanted.map((each, index) => inProduct(index, () => makeProduct(day, each, index)));
  const { open, closed } = wanted.length > 0 ? { open: [], closed: [] } : choose(day, never, 0);
  const made = [...named, ...open.map(({ making }) => making), ...closed.map(({ why }) => why)];
  const pairs = made.reduce((sum, each) => sum + (isMaking(each) ? each.activity.supplies.length : 0), 0);
  if (pairs > MOST_PAIRS) {
    const expected = `at most ${MOST_PAIRS} pairs of a lot and a product made of it: put lots of the same food together`;
    fail('TOO_MUCH', 'lots', pairs, expected);
  }
  const products: readonly Wanted[] = [...wanted, ...[...open, ...closed].map((each) => each.wanted)];
  return { day: { ...day, request: { ...asked, products } }, made };
}
