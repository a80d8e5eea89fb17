import { answer } from '../common/answer';
import { readFood } from '../foods/fields';
import { readInput } from '../quantity/fields';
import { type Problem, problemsIn, problemsOf } from '../quantity/problems';
import { requestChecks } from './program/checkRequest';
import { prepare } from './program/prepare';
import { type PlanDayInput, planSchema } from './request/planInput';

/**
 * Everything that is wrong with a day before it is planned: all mistakes at once, each with its path, what was given, what
 * would be right, and the nearest right words. `planDay` throws the first of them.
 *
 * First every field by itself: words, units, ranges, names that no field has. Where those are right, what does not hold
 * together (currencies, `least` and `most`, breaks, aims) and the foods that no table knows. Where that is right too, what
 * else only the tables can tell, such as a container that no row weighs.
 *
 * @param input - as `planDay` takes it: `lots`, `kitchen`, and what else you name
 * @returns the problems in the order of the fields; none where `planDay` takes the day
 * @throws StillroomError for a number that is not finite
 *
 * @example
 * ```ts
 * import { planProblems } from 'stillroom/plan';
 *
 * const kitchen = { elevation: '900 ft', hours: '6 h', burner: 4 };
 * const found = planProblems({ lots: [{ food: 'plum', row: '40 lb' }], kitchen });
 * found.map(({ path }) => path); // => ['lots[0].raw', 'lots[0].row', 'kitchen.burner']
 * found.at(-1).nearest; // => ['burners', 'burnerPower']
 * ```
 */
export function planProblems(input: unknown): readonly Problem[] {
  const problems = problemsWith(input);
  // a number that is not finite comes out of a program, not out of a file: it is an error there
  if (problems.some(({ given }) => typeof given === 'number' && !Number.isFinite(given))) readInput(planSchema, input);
  return answer(problems.map(asAnswer));
}

function problemsWith(input: unknown): readonly Problem[] {
  const inFields = problemsOf(planSchema, input);
  if (inFields.length > 0) return inFields;
  const read = readInput(planSchema, input);
  const wanted = (read.products ?? []).filter(({ never }) => never !== true);
  const foods = read.lots.map(
    ({ food }, index) =>
      () =>
        void readFood(food, `lots[${index}].food`),
  );
  const together = problemsIn(...requestChecks({ ...read, products: wanted }), ...foods);
  return together.length > 0 ? together : problemsIn(() => void prepare(input as PlanDayInput));
}

/** Of what was given an answer keeps what is plain; the message says it all. */
function asAnswer({ given, ...problem }: Problem): Problem {
  return ['string', 'boolean', 'number'].includes(typeof given) ? { ...problem, given } : problem;
}
