import { sureRange, turnRange } from '../quantity/range';
import type { Range } from '../quantity/types';
import type { Activity } from './activity';
import type { YieldKnown } from './dayPlan';
import type { Fitted } from './fitDay';
import { nodesFor } from './limits';
import type { Program } from './linearProgram';
import type { Prepared } from './prepare';
import { minuteShare, toProgram } from './program';
import type { Solved, SolveOptions } from './solve';

const ENDS = ['low', 'likely', 'high'] as const;

/**
 * How the plan leans on each yield: for each fruit that is used the day is solved again as if its yield were known to be
 * its poor end, its likely figure or its rich end, nothing else changed.
 */
export function yieldsKnown(
  { makings, capacity, request }: Prepared,
  { found, kept, share }: Fitted,
  search: (program: Program, options: SolveOptions) => Solved,
): YieldKnown[] {
  const used = [...new Set(kept.map(({ making }) => making.produce))];
  return used.map((produce) => {
    const gains = ENDS.map((end): number | undefined => {
      const activities = makings.map(({ activity, produce: own }) =>
        own === produce ? knownTo(end, activity) : activity,
      );
      const program = minuteShare(toProgram(activities, capacity, request.aim ?? 'most worth'), share);
      const again = search(program, { nodes: nodesFor(program) });
      return again.feasible ? again.worth - found.worth : undefined;
    });
    const [poor, likely, rich] = gains;
    return {
      produce,
      ...(poor === undefined ? {} : { poor }),
      ...(likely === undefined ? {} : { likely }),
      ...(rich === undefined ? {} : { rich }),
    };
  });
}

/** The same product with its yields narrowed to one of their figures. */
function knownTo(end: (typeof ENDS)[number], activity: Activity): Activity {
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
