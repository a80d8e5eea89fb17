import { answer } from '../common/answer';
import { derived, joinBasis, joinCautions } from '../sources/basis';
import { caution } from '../sources/cautions';
import { impossible, tooLate } from './answer/conflicts';
import { describeProduct } from './answer/describeProduct';
import { type EnergyUsed, energyUsed } from './answer/energyUsed';
import { gapCause } from './answer/gapCause';
import { leftFresh } from './answer/leftFresh';
import { keptFresh, kgLeft, lotsSaid, notSound } from './answer/lotShares';
import { costsOf } from './answer/money';
import { nothingMade } from './answer/nothingMade';
import { restAnswered, setAsideCautions } from './answer/restOfDay';
import { toReady } from './answer/toReady';
import { type Tried, tryDay } from './answer/tryDay';
import { whyNotMade } from './answer/whyNotMade';
import { type WorkDone, workDone } from './answer/workDone';
import { yieldsKnown } from './answer/yieldsKnown';
import { waitsBasis } from './check/waits';
import { planCaution } from './figures/cautions';
import type { Fitted } from './fit/fitDay';
import { cannersOf, potsOf } from './kitchen/kitchen';
import { limitsOf, useOf } from './program/limits';
import { type Prepared, prepare } from './program/prepare';
import { wideningsOf } from './program/widenings';
import type { DayPlan, FeasibleDay } from './request/dayPlan';
import type { PlanDayInput } from './request/planInput';
import { type Effort, effortFor } from './solver/effort';
import type { Solved } from './solver/solve';

/**
 * The whole day: what each lot becomes, with what, when, and what it costs, as well as this kitchen and these hours allow.
 *
 * Every product is made by a recipe, printed or customary, and all are read alike: its foods, its batch, its steps onto
 * hands, pots, canners, trays, freezer and crock, and the tested process it ends in. Name the recipe, or say what to make
 * (`sauce`, `leather`, `jars`) and of what; or name no products: then the plan chooses among the ways these foods can be
 * kept here, by the kilograms they keep, how long they keep, and the work they take.
 *
 * An integer program shares out the lots: whole jars and packs, batches in each pot, loads of each process in each
 * canner, trays. Jars are promised at the low end of the yields; jars to ready, stock, pots, canners, trays and hours hold
 * at the high end, so the plan stands whatever the food gives within its published range. Recipes that set or are safe by
 * their proportions are made in whole batches. Trimmings are shared out too, among the products made of them.
 *
 * @returns the plan, each product with its recipe, lots, ingredients, jars, loads, trays, cost, cautions and basis; what
 *   stays fresh, what is left out and why, what to have at hand and what is short; `schedule`; with `oneMore` what
 *   limited the plan and what one more of it would add. Or `{ feasible: false }` with the fewest requirements that
 *   conflict, or by how many minutes all of them together run late
 * @throws StillroomError for a field that is wrong, naming it
 *
 * `schedule` is an order of work that fits the hours: what to do when, on hands, burners, pots, canners and trays. Each
 * wait keeps within `data/plan/waits.json`: prepared food, filled jars, hot water, sauce kept hot. Machines run on
 * overnight. `checkSchedule`, which knows nothing of how it was made, finds nothing wrong with it. Where the best plan by
 * the sums of minutes would run late, a smaller one is taken and `gap` says how far it may be from the best.
 *
 * `energy` of a product is what stove, dryer, freeze-dryer and freezer take for it: food heated from 20 degC and held at
 * the boil, water boiled off, the water that vegetables are blanched in, canner loads, the first of a day from cold water.
 * Its `costs` take the likely figure. All lines of all products add up to the day's `costs` to the cent.
 *
 * The day as it goes: with `now`, the time, the plan is of the rest of the day, on the same clock. `done` says what has
 * happened: what is finished, what runs in a canner or a dryer, and what is prepared, hot or filled and must go on. That
 * comes first, within its waits, as a product by itself (`was` says how far it was); what has waited too long, or cannot
 * go on in time, is in `setAside` with what to do instead. Lots, stock, `least` and `most` are those of the whole day: what
 * is done is taken off. `lost` says what is no longer there, `hotCanners` which water is hot. Nothing that is not in
 * `done` has been begun. Trimmings of what is finished are not counted on.
 *
 * Work times that you do not give are customary minutes of each operation; every other figure is in `basis`.
 *
 * @example
 * ```ts
 * import { planDay } from 'stillroom/plan';
 *
 * const plan = planDay({
 *   lots: [{ food: 'peach', raw: '30 lb' }],
 *   kitchen: {
 *     elevation: '3,400 ft',
 *     hours: '6 h',
 *     hands: 2,
 *     pots: [{ volume: '12 quarts' }],
 *     canners: [{ method: 'boiling-water', holds: { pint: 9, quart: 7 } }],
 *     jars: [{ jar: 'quart', count: 12 }],
 *   },
 *   products: [{ make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart', syrup: 'light' }],
 * });
 * plan.feasible && plan.products[0].canning.minutes; // => 35
 * plan.feasible && plan.products[0].units.promised; // => 8
 *
 * const rest = planDay({
 *   lots: [{ food: 'peach', raw: '30 lb' }],
 *   kitchen: {
 *     elevation: '3,400 ft',
 *     hours: '6 h',
 *     hands: 2,
 *     pots: [{ volume: '12 quarts' }],
 *     canners: [{ method: 'boiling-water', holds: { pint: 9, quart: 7 } }],
 *     jars: [{ jar: 'quart', count: 12 }],
 *   },
 *   products: [
 *     { name: 'halves', make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart', syrup: 'light' },
 *   ],
 *   now: '10:30',
 *   done: [{ name: 'halves', raw: '15 lb', filled: 6, until: '10:50' }],
 * });
 * rest.feasible && rest.products[0].doneSoFar; // => 6
 * rest.feasible && rest.schedule.windows; // => [{ day: 0, startMinute: 150, endMinute: 360 }]
 * ```
 */
export function planDay(input: PlanDayInput): DayPlan {
  return answer(planWith(input));
}

/** The plan; of the rest of a day with as much of what is in work as an order of work is found for. */
function planWith(input: PlanDayInput): DayPlan {
  const planned = (without: readonly number[]) => {
    const prepared = prepare(input, without);
    return { prepared, plan: planOf(prepared, effortFor(prepared.program)) };
  };
  const first = planned([]);
  const inWork = (first.prepared.rest?.held ?? []).map(({ index, more = [] }) => [index, ...more]);
  if (first.plan.feasible || inWork.length === 0) return first.plan;
  const oneLess = inWork.length > 1 ? inWork : [];
  for (const without of [...oneLess, inWork.flat()]) {
    const { plan } = planned(without);
    if (plan.feasible) return plan;
  }
  return first.plan;
}

/** The plan of a day that was read, within so much work: `effort` is left with what was not needed. */
export function planOf(prepared: Prepared, effort: Effort): DayPlan {
  const { request, makings, leftOut, unmetMusts } = prepared;
  if (unmetMusts.length > 0) return impossible(prepared);
  const { best, fits, plan, search } = tryDay(prepared, effort);
  if (!best.feasible) return impossible(prepared, best);
  if (!fits || plan === undefined) return tooLate(prepared, plan?.schedule);
  const { found, kept, schedule } = plan;
  const made = new Set(kept.map(({ making }) => making));
  const [pots, canners] = [potsOf(request.kitchen), cannersOf(request.kitchen).map(({ label }) => label)];
  const work = kept.map((each) => workDone(each, schedule, pots, canners));
  const energy = energyUsed(prepared, kept, schedule);
  const costs = costsOf(prepared, kept, work, energy);
  const products = kept.map((each, index) =>
    describeProduct(
      prepared,
      each,
      found.values,
      work[index] as WorkDone,
      energy[index] as EnergyUsed,
      costs?.products[index],
    ),
  );
  const used = { prepared, plan, leftKg: prepared.day.lots.map((lot) => kgLeft(kept, lot)) };
  const notMade = makings
    .filter((making) => !made.has(making))
    .map((making) => ({ name: making.label, reason: whyNotMade(making, used, effort) }));
  const none = products.length === 0;
  const cause = gapCause(plan);
  return {
    feasible: true,
    invented: request.invented ?? false,
    aim: request.aim ?? 'most worth',
    elevation: request.kitchen.elevation,
    objective: found.worth,
    provenBest: found.optimal && !none,
    gap: none && !found.optimal ? 1 : found.gap,
    ...(cause === undefined ? {} : { gapCause: cause }),
    ...(none ? { nothingMade: nothingMade(request.kitchen, leftOut, notMade, plan.runsLate !== undefined) } : {}),
    products,
    leftFresh: leftFresh(used, kept),
    keptFresh: keptFresh(prepared),
    notSound: notSound(prepared),
    leftOut,
    notMade,
    haveReady: toReady(prepared, kept),
    ...(request.oneMore === true ? oneMoreOf(prepared, plan, search, effort) : {}),
    schedule,
    ...restAnswered(prepared),
    work: workOf(prepared, found),
    ...(costs === undefined ? {} : { costs: costs.day }),
    basis: joinBasis(
      [derived('products', 'what is made of each lot')],
      ...products.map(({ basis }) => basis.map((line) => ({ ...line, of: `products[].${line.of}` }))),
      lotsSaid(prepared, kept).basis,
      schedule.tasks.length === 0 ? [] : [waitsBasis('schedule.tasks')],
    ),
    cautions: joinCautions(
      [caution('follow-local-guidance'), caution('hot-liquids-burn'), caution('estimate')],
      lotsSaid(prepared, kept).cautions,
      products.some((product) => product.cooking !== undefined) ? [planCaution('pot-fill-limit')] : [],
      setAsideCautions(prepared),
    ),
  };
}

/** What limited the plan and what it would add to know each yield: the day solved again with a little more, many times. */
function oneMoreOf(
  prepared: Prepared,
  plan: Fitted,
  search: Tried['search'],
  effort: Effort,
): Pick<FeasibleDay, 'limits' | 'limitsNotComputed' | 'yields'> {
  const { request, day, capacity } = prepared;
  const { hands, burners, minutes, pots, vessels = [] } = capacity;
  const widenings = wideningsOf(plan.program, {
    lots: day.lots.map(({ label }) => label),
    canners: cannersOf(request.kitchen).map(({ label }) => label),
    hands,
    burners,
    minutes,
    pots: pots.length,
    vessels,
  });
  const { limits, notComputed } = limitsOf(plan.program, plan.solved, widenings, effort);
  return { limits, limitsNotComputed: notComputed, yields: yieldsKnown(prepared, plan, search, effort) };
}

function workOf({ capacity, program }: Prepared, { values }: Solved): FeasibleDay['work'] {
  const { hands, burners, minutes } = capacity;
  const of = (resource: 'hands' | 'burners', pairs: number) => ({
    minutes: useOf(program, values, { of: resource })?.used ?? 0,
    available: pairs * minutes,
  });
  return { handsBusy: of('hands', hands), burnersBusy: of('burners', burners) };
}
