import { type Fitted, fitDay } from '../fit/fitDay';
import type { DayProgram } from '../program/decisions';
import type { Prepared } from '../program/prepare';
import { leastFruit, weightsOf } from '../program/program';
import { isFixed } from '../program/resources/units';
import type { Effort } from '../solver/effort';
import { optimize } from '../solver/optimize';
import type { Solved, SolveOptions } from '../solver/solve';

/** What the search for the plan of a day came to. */
export interface Tried {
  /** The best plan by the sums of minutes, or none. */
  readonly best: Solved;
  /** Whether an order of work was found that fits the hours. */
  readonly fits: boolean;
  /** The plan with its order of work; where none fits, the one that runs late. */
  readonly plan?: Fitted;
  /** The search itself, for days with a little more of something. */
  readonly search: (program: DayProgram, options?: SolveOptions) => Solved;
}

/** Without musts a day on which nothing is made meets every bound. */
const NOTHING: Solved = { feasible: true, optimal: false, gap: 0, worth: 0, values: new Map() };

/** Looks for the best plan of a day, and for an order of work that fits its hours. */
export function tryDay(prepared: Prepared, effort: Effort): Tried {
  const { request, makings, program } = prepared;
  const aim = request.aim ?? 'most worth';
  // what no promise needs stays fresh, unless as much as can be is to be used
  const mayBeNothing = makings.every(({ activity }) => activity.least === 0 && !isFixed(activity));
  const search = (of: DayProgram, options: SolveOptions = {}): Solved => {
    const best = optimize(of, {
      ...(weightsOf(aim).waste > 0 ? {} : { among: leastFruit(of) }),
      ...(mayBeNothing && aim !== 'least cost' ? { start: NOTHING } : {}),
      ...options,
    });
    // not one jar can be promised, and none must be
    return !best.feasible && mayBeNothing ? { ...NOTHING, optimal: best.optimal } : best;
  };
  const best = search(program);
  if (!best.feasible) return { best, fits: false, search };
  const { fits, plan } = fitDay(prepared, best, search, effort);
  return { best, fits, search, ...(plan === undefined ? {} : { plan }) };
}
