import { derived } from '../../sources/basis';
import { caution } from '../../sources/cautions';
import type { Reason } from '../../sources/no';
import { minutesLate } from '../fit/fitDay';
import { windowsOf } from '../kitchen/hours';
import type { Making } from '../makes/making';
import type { DayProgram } from '../program/decisions';
import { searchAgain } from '../program/limits';
import type { Prepared } from '../program/prepare';
import { mustOf } from '../program/resources/units';
import type { InfeasibleDay, MostPromised } from '../request/dayPlan';
import type { DaySchedule } from '../request/daySchedule';
import { type Effort, effortFor } from '../solver/effort';
import { type Solved, solve } from '../solver/solve';
import { mostInstead, noneInstead } from './mostInstead';

/** Sets of musts that are tried one by one. */
const MOST_TRIED = 300;

/** The answer for a day whose musts fit the hours as sums only: no order of their work was found that does. */
export function tooLate(prepared: Prepared, schedule: DaySchedule | undefined): InfeasibleDay {
  const { makings, request } = prepared;
  const over = schedule && minutesLate(schedule.makespan, windowsOf(request.kitchen));
  const musts = makings.filter(({ activity }) => activity.least > 0);
  const text =
    over === undefined
      ? 'no order of work was found for what you require'
      : `no order of work was found that fits the hours: the best for what you require ends ${over} min late`;
  return noPlan(prepared, { code: 'no-order-of-work', text }, mustsInWords(musts), mostInstead(prepared, musts));
}

const noPlan = (
  { leftOut }: Prepared,
  reason: Reason,
  conflicts: readonly string[],
  most: readonly MostPromised[],
): InfeasibleDay => ({
  feasible: false,
  reason,
  conflicts,
  most,
  leftOut,
  basis: [
    derived('conflicts', 'your lots, your kitchen and what you require'),
    ...(most.length === 0 ? [] : [derived('most', 'the day planned again with less of one product')]),
  ],
  cautions: [caution('follow-local-guidance')],
});

/** The answer for a day whose musts cannot be met: a set of them that cannot, from which none can be left out. */
export function impossible(prepared: Prepared, found?: Solved): InfeasibleDay {
  const { makings, unmetMusts, program } = prepared;
  const musts = makings.filter(({ activity }) => activity.least > 0);
  if (unmetMusts.length > 0) {
    return noPlan(
      prepared,
      { code: 'cannot-be-made', text: 'this kitchen cannot make what you require' },
      unmetMusts.map(({ name, least, reason }) => `at least ${least} of ${name}: ${reason}`),
      noneInstead(prepared),
    );
  }
  const answer = (code: string, text: string, conflict: readonly Making[]) =>
    noPlan(prepared, { code, text }, mustsInWords(conflict), mostInstead(prepared, conflict));
  if (found?.optimal === false)
    return answer('not-found', 'the search found no way to make everything you require', musts);
  const conflict = smallestConflict(program, musts);
  return conflict.length === 1
    ? answer('too-much', 'you require more of this than the lots, the stock and the hours give', conflict)
    : answer('conflict', 'you cannot have all of these on one day', conflict);
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

/** Every set of that number of the things, in their order. */
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
