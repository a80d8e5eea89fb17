import { plainCopy } from '../../common/answer';
import { fail, StillroomError } from '../../errors/StillroomError';

const EXPECTED = 'a plan as planDay answered it, unchanged';

/**
 * Reads a plan that a caller hands back: what `work` makes of it, or the one error where it is no plan.
 *
 * A plan is large and comes from this library, so it is not checked field by field: whatever cannot be read as one is
 * no plan. Figures that are not finite are refused before.
 *
 * @throws StillroomError WRONG_TYPE
 */
export function withPlan<Plan, T>(path: string, given: Plan, work: (plan: Plan) => T): T {
  try {
    return work(plainCopy(given));
  } catch (error) {
    if (error instanceof StillroomError && error.path === path) throw error;
    return fail('WRONG_TYPE', path, given, EXPECTED);
  }
}
