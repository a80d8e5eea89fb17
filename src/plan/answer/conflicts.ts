import { derived } from '../../sources/basis';
import { caution } from '../../sources/cautions';
import { type Effort, effortFor } from '../makes/effort';
import type { Making } from '../makes/making';
import type { DayProgram } from '../program/decisions';
import { windowsOf } from '../program/kitchen';
import { searchAgain } from '../program/limits';
import type { Prepared } from '../program/prepare';
import { mustOf } from '../program/resources/units';
import type { InfeasibleDay, LeftOut } from '../request/dayPlan';
import type { DaySchedule } from '../request/daySchedule';
import { minutesLate } from '../schedule/fitDay';
import { type Solved, solve } from '../solver/solve';

/** Sets of musts that are tried one by one. */
const MOST_TRIED = 300;

/** The answer for a day whose musts fit the hours as sums only: no order of their work was found that does. */
export function tooLate({ makings, leftOut, request }: Prepared, schedule: DaySchedule | undefined): InfeasibleDay {
  const over = schedule && minutesLate(schedule.makespan, windowsOf(request.kitchen));
  return noPlan(
    leftOut,
    over === undefined
      ? 'no order of work was found for what must be made'
      : `no order of work was found that fits the hours: with what must be made the best ends ${over} min after them`,
    mustsInWords(makings.filter(({ activity }) => activity.least > 0)),
  );
}

const noPlan = (leftOut: readonly LeftOut[], reason: string, conflicts: readonly string[]): InfeasibleDay => ({
  feasible: false,
  reason,
  conflicts,
  leftOut,
  basis: [derived('conflicts', 'the lots, the kitchen and what must be made')],
  cautions: [caution('follow-local-guidance')],
});

/** The answer for a day whose musts cannot be met: a set of them that cannot, from which none can be left out. */
export function impossible({ makings, leftOut, unmetMusts, program }: Prepared, found?: Solved): InfeasibleDay {
  const answer = (reason: string, conflicts: readonly string[]) => noPlan(leftOut, reason, conflicts);
  if (unmetMusts.length > 0) return answer('what must be made cannot be made here', unmetMusts);
  const musts = makings.filter(({ activity }) => activity.least > 0);
  if (found?.optimal === false)
    return answer('the search found no way to meet these musts together', mustsInWords(musts));
  const conflict = smallestConflict(program, musts);
  return answer(
    conflict.length === 1
      ? 'this must is more than the lots, the stock and the hours give'
      : 'these musts cannot be met together',
    mustsInWords(conflict),
  );
}

const mustsInWords = (some: readonly Making[]): string[] =>
  some.map(({ label, activity }) => `at least ${mustOf(activity)} of ${label}`);

/**
 * The fewest musts that cannot be met together: every one alone, every two, and so on while there are not too many to
 * try; beyond that a set that none can be taken out of.
 */
function smallestConflict(program: DayProgram, musts: readonly Making[]): readonly Making[] {
  const effort = effortFor(program);
  const together = (some: readonly Making[]): boolean =>
    mayMeet(program, new Set(some.map(({ activity }) => activity.product)), effort);
  let left = MOST_TRIED;
  for (let size = 1; size < musts.length; size++) {
    const sets = setsOf(musts, size);
    left -= sets.length;
    if (left < 0) break;
    const conflict = sets.find((some) => !together(some));
    if (conflict !== undefined) return conflict;
  }
  return musts.reduce<readonly Making[]>((some, must) => {
    const without = some.filter((each) => each !== must);
    return together(without) ? some : without;
  }, musts);
}

/** Every set of so many of the things, in their order. */
function setsOf<T>(things: readonly T[], size: number): T[][] {
  if (size === 0) return [[]];
  return things.flatMap((first, index) => setsOf(things.slice(index + 1), size - 1).map((rest) => [first, ...rest]));
}

/** Whether these musts can be met together, or the search could not rule it out. */
function mayMeet({ variables, bounds }: DayProgram, products: ReadonlySet<number>, effort: Effort): boolean {
  const some: DayProgram = {
    variables: variables.map((variable) => ({ ...variable, worth: 0 })),
    bounds: bounds.filter(({ of }) => of.of !== 'least' || products.has(of.product)),
  };
  const found = searchAgain(effort, some, (nodes) => solve(some, { nodes, effort }));
  return found === undefined || found.feasible || !found.optimal;
}
