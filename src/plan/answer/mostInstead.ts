import type { Making } from '../makes/making';
import { amountIn, type DayProgram, keyOf, promised } from '../program/decisions';
import type { Prepared } from '../program/prepare';
import { toProgram } from '../program/program';
import { mustOf } from '../program/resources/units';
import type { MostPromised } from '../request/dayPlan';
import { effortFor } from '../solver/effort';
import { type Solved, solve } from '../solver/solve';
import { tryDay } from './tryDay';

/** Days that are planned again at the most, for all products together: each takes as long as the day itself. */
const MOST_DAYS = 12;
/** Days that are planned again for one product. */
const MOST_TRIES = 6;

interface Budget {
  days: number;
}

/**
 * The most that could be asked of each of these products instead, all else that is required kept.
 *
 * First the most by the sums of minutes: the same day without this must, which then promises as many as it can. That many
 * are asked for and the day is planned again, with its order of work. Where no order fits, the number is halved towards
 * the most that is known to fit, up to six plans for one product and twelve in all. What is answered has a plan; whether
 * more is ruled out is in `proven`.
 */
export function mostInstead(prepared: Prepared, conflict: readonly Making[]): MostPromised[] {
  const budget: Budget = { days: MOST_DAYS };
  return conflict.flatMap((making) => {
    const most = mostOf(prepared, making, budget);
    return most === undefined ? [] : [{ name: making.label, least: mustOf(making.activity), ...most }];
  });
}

/** For musts that cannot be made here: none of each, where the day has a plan without it. */
export function noneInstead(prepared: Prepared): MostPromised[] {
  const [unmet] = prepared.unmetMusts;
  if (unmet === undefined || prepared.unmetMusts.length > 1) return [];
  const rest: Prepared = { ...prepared, unmetMusts: [] };
  return tryDay(rest, effortFor(rest.program)).fits
    ? [{ name: unmet.name, least: unmet.least, count: 0, proven: true }]
    : [];
}

function mostOf(
  prepared: Prepared,
  making: Making,
  budget: Budget,
): Pick<MostPromised, 'count' | 'proven'> | undefined {
  const { smallest = 1 } = making.activity;
  const bySums = promisedBySums(prepared, making);
  if (bySums === undefined) return undefined;
  let left = MOST_TRIES;
  const hasPlan = (least: number): boolean => {
    left -= 1;
    budget.days -= 1;
    const day = withLeast(prepared, making, least);
    return tryDay(day, effortFor(day.program)).fits;
  };
  if (budget.days <= 0) return undefined;
  if (hasPlan(bySums.units)) return { count: bySums.units, proven: bySums.optimal };
  // the most that is known to fit, and the fewest that is known not to
  let [fits, tooMany] = [-1, bySums.units];
  while (tooMany - fits > 1 && left > 0 && budget.days > 0) {
    const next = fits < 0 && left === 1 ? 0 : Math.floor((Math.max(fits, 0) + tooMany) / 2);
    const asked = next < smallest ? 0 : next;
    if (hasPlan(asked)) fits = Math.max(next, asked);
    else if (asked === 0) return undefined;
    else tooMany = next;
  }
  if (fits < 0) return undefined;
  return { count: fits < smallest ? 0 : fits, proven: false };
}

/** The most that the day without this must can promise of it, by the sums of minutes; nothing where it has no plan. */
function promisedBySums(
  prepared: Prepared,
  making: Making,
): { readonly units: number; readonly optimal: boolean } | undefined {
  const { program } = withLeast(prepared, making, 0);
  const own = keyOf(promised(making.activity.product));
  const { per: _, ...linear } = program;
  const most: DayProgram = {
    ...linear,
    variables: program.variables.map((each) => ({ ...each, worth: each.name === own ? 1 : 0 })),
  };
  const found: Solved = solve(most);
  if (!found.feasible) return undefined;
  return { units: Math.round(amountIn(found.values, promised(making.activity.product))), optimal: found.optimal };
}

/** The same day with another `least` of one product. */
function withLeast(prepared: Prepared, { activity: { product } }: Making, least: number): Prepared {
  const makings = prepared.makings.map((each) =>
    each.activity.product === product ? { ...each, activity: { ...each.activity, least } } : each,
  );
  const { capacity, request } = prepared;
  const aim = request.aim ?? 'most worth';
  const activities = makings.map(({ activity }) => activity);
  return { ...prepared, makings, program: toProgram(activities, capacity, aim) };
}
