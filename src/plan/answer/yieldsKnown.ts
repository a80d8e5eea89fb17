import { sureRange, turnRange } from '../../quantity/range';
import type { Range } from '../../quantity/types';
import type { Fitted } from '../fit/fitDay';
import { type DayProgram, keyOf, raw } from '../program/decisions';
import { gainOver, searchAgain } from '../program/limits';
import type { Prepared } from '../program/prepare';
import { minuteShare, toProgram } from '../program/program';
import type { Activity } from '../request/activity';
import type { YieldKnown } from '../request/dayPlan';
import type { Effort } from '../solver/effort';
import { meetsBounds, worthIn } from '../solver/linearProgram';
import { decidedOf } from '../solver/relaxation';
import type { Solved, SolveOptions } from '../solver/solve';

/** The ends of a yield, by the names of the answer. */
const ENDS = { poor: 'low', likely: 'likely', rich: 'high' } as const;
type End = keyof typeof ENDS;

/**
 * How the plan leans on each yield: for each fruit that is used the day is solved again, from the plan at hand, as if its
 * yield were known to be its poor end, its likely figure or its rich end, nothing else changed.
 *
 * The plan at hand holds for every yield within its range and can always be done as it is, so to know a yield adds
 * nothing at the least. A search that was cut short leaves a range, or is named in `notComputed`.
 */
export function yieldsKnown(
  { makings, capacity, request }: Prepared,
  { solved, kept, share }: Fitted,
  search: (program: DayProgram, options: SolveOptions) => Solved,
  effort: Effort,
): YieldKnown[] {
  const used = [...new Set(kept.map(({ making }) => making.food))];
  return used.map((food) => {
    const known: Partial<Record<End, number>> = {};
    const atMost: Partial<Record<End, number>> = {};
    const notComputed: End[] = [];
    for (const end of Object.keys(ENDS) as End[]) {
      const activities = makings.map(({ activity, food: own }) =>
        own === food ? knownTo(ENDS[end], activity) : activity,
      );
      const program = minuteShare(toProgram(activities, capacity, request.aim ?? 'most worth'), share);
      const own = makings.filter((making) => making.food === food).map(({ activity }) => activity);
      const start = planAtHand(program, solved, own, ENDS[end]);
      const again = searchAgain(effort, program, (nodes) => search(program, { nodes, effort, ...start }));
      const { least, most } = gainOver(solved, again);
      if (least === 0 && most > 0) notComputed.push(end);
      else known[end] = least;
      if (least > 0 && most > least) atMost[end] = most;
    }
    return {
      food,
      ...known,
      ...(Object.keys(atMost).length === 0 ? {} : { atMost }),
      ...(notComputed.length === 0 ? {} : { notComputed }),
    };
  });
}

/** The plan at hand where the yield is known: the same jars of as much less fruit; nothing where that is no plan. */
function planAtHand(
  program: DayProgram,
  { values }: Solved,
  activities: readonly Activity[],
  end: (typeof ENDS)[End],
): { readonly start?: Solved } {
  const same = new Map(values);
  for (const { product, supplies } of activities) {
    for (const { lot, unitsPerKg } of supplies) {
      const name = keyOf(raw(lot, product));
      if (unitsPerKg[end] > 0) same.set(name, (decidedOf(values, name) * unitsPerKg.low) / unitsPerKg[end]);
    }
  }
  const plan = [same, values].find((each) => meetsBounds(program, each));
  if (plan === undefined) return {};
  const total = worthIn(program, plan);
  const sum = (program.per ?? []).reduce((all, [name, weight]) => all + weight * decidedOf(plan, name), 0);
  const worth = program.per === undefined ? total : total / sum;
  return { start: { feasible: true, optimal: false, gap: 0, worth, values: plan } };
}

/** The same product with its yields narrowed to one of their figures. */
function knownTo(end: (typeof ENDS)[End], activity: Activity): Activity {
  const only = (range: Range<number>): Range<number> => sureRange(range[end]);
  return {
    ...activity,
    supplies: activity.supplies.map((supply) => ({
      ...supply,
      unitsPerKg: only(supply.unitsPerKg),
      // the more is ready, the less falls off
      trimmingsPerKg: only(turnRange(supply.trimmingsPerKg)),
    })),
  };
}
