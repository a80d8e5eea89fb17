import { fail } from '../../errors/StillroomError';
import { readInput } from '../../quantity/fields';
import type { Happened } from '../done/entry';
import { heldMaking } from '../done/held';
import { type NotGoneOn, type Rest, restOf } from '../done/rest';
import { LIFT_A_JAR } from '../figures/liftAJar';
import { cannersOf, capacityOf, meansOf } from '../kitchen/kitchen';
import { makeProduct } from '../makes/make';
import { type Day, isMaking, type LeftOutProduct, type Made, type Making } from '../makes/making';
import { within as inProduct } from '../makes/within';
import type { Activity, Capacity } from '../request/activity';
import type { LeftOut } from '../request/dayPlan';
import { learnedOf } from '../request/learned';
import { readLots } from '../request/lots';
import { type Kitchen, type PlanDayInput, type PlanRequest, planSchema, type Wanted } from '../request/planInput';
import type { Means, RunningLoad } from '../schedule/job';
import { loadsThatFit } from '../schedule/loadsThatFit';
import { checkRequest } from './checkRequest';
import { choose } from './choose';
import type { DayProgram } from './decisions';
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
  /** Where it is the rest of a day: what has happened. */
  readonly rest?: Rest;
}

/** Ways to put a lot into a product that a plan can be found among in a few seconds. */
const MOST_PAIRS = 300;

/**
 * Reads the request, makes each product ready for the program, and writes the program; of a day that has begun, for the
 * rest of it.
 *
 * @param without - entries of `done` in work that are left out: no order of work was found for them
 */
export function prepare(input: PlanDayInput, without: readonly number[] = []): Prepared {
  const read = readDay(input);
  const names = tellApart(read.made, read.day.request.products);
  const rest = restOf(read.day, read.made, names, input, without);
  if (rest === undefined) return prepared(read.day, read.made, names);
  const made = rest.day.request.products.map((each, index) =>
    inProduct(index, () => makeProduct(rest.day, each, index)),
  );
  return withHeld(rest, made, names);
}

/** The rest of a day, with what is in work as products by themselves. */
function withHeld(rest: Rest, made: readonly Made[], names: readonly string[]): Prepared {
  const { request } = rest.day;
  const goesOn = rest.held.filter(({ product }) => isMaking(made[product] as Made));
  const stays = rest.held.filter((each) => !goesOn.includes(each));
  const labels = heldNames(goesOn, names);
  const products = [...request.products];
  const makings: Made[] = [...made];
  goesOn.forEach((what, index) => {
    const { least: _, most: __, smallest: ___, ...wanted } = request.products[what.product] as Wanted;
    makings.push(heldMaking(made[what.product] as Making, what, products.length, labels[index] as string));
    products.push(wanted);
  });
  const notGoneOn: NotGoneOn[] = stays.map((what) => {
    const { since = 0, by = 0 } = what.held ?? {};
    return { what, code: 'cannot-be-made', waited: rest.now - since, most: Math.max(0, by - since) };
  });
  const day: Day = { ...rest.day, request: { ...request, products } };
  const whole = { ...rest, day, held: goesOn, notGoneOn: [...rest.notGoneOn, ...notGoneOn] };
  return { ...prepared(day, makings, [...names, ...labels], whole), rest: whole };
}

/** A name for each food in work, which no other product has. */
function heldNames(held: readonly Happened[], names: readonly string[]): string[] {
  const taken = new Set(names);
  return held.map(({ label, state }) => {
    const own = `${label}, ${state}`;
    let free = own;
    for (let number = 2; taken.has(free); number++) free = `${own} ${number}`;
    taken.add(free);
    return free;
  });
}

function prepared(day: Day, made: readonly Made[], names: readonly string[], rest?: Rest): Prepared {
  const { request, lots } = day;
  const makings = made.flatMap((each, index) => (isMaking(each) ? [{ ...each, label: names[index] as string }] : []));
  const prices = pricesIn(request, lots);
  const spread = (activity: Activity) => (activity.held?.state === 'filled' ? activity : withSpread(activity, lots));
  const priced = makings.map(({ activity }) => withPrices(spread(activity), prices));
  const running = runningOf(request.kitchen, rest);
  const capacity = capacityOf({ lots, kitchen: request.kitchen }, priced, running);
  const means: Means = {
    ...meansOf(request.kitchen, capacity),
    ...(rest === undefined ? {} : { running, hotCanners: rest.hotCanners }),
  };
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

/** The loads that canners are busy with: what is in one canner is one load. */
function runningOf(kitchen: Kitchen, rest: Rest | undefined): readonly RunningLoad[] {
  return cannersOf(kitchen).flatMap(({ label }, canner): RunningLoad[] => {
    const own = (rest?.finished ?? []).filter((each) => each.canner === label);
    if (own.length === 0) return [];
    const jars = own.reduce((sum, { units }) => sum + units, 0);
    return [
      {
        products: [...new Set(own.map((each) => each.label))],
        canner,
        jars,
        until: Math.max(...own.map(({ until = 0 }) => until)),
        lift: (LIFT_A_JAR / 2) * jars,
      },
    ];
  });
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
