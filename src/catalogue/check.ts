import { answer } from '../common/answer';
import { StillroomError } from '../errors/StillroomError';
import { planProblems } from '../plan/planProblems';
import { askedWhen } from '../quantity/fields';
import { type Problem, problemOf, problemsOf } from '../quantity/problems';
import { call } from './call';
import { readName } from './functions';

/** What is wrong with an argument. */
export interface Checked {
  /** Every problem, in the order of the fields; empty where the function answers. */
  readonly problems: readonly Problem[];
}

/**
 * Everything that is wrong with an argument, all at once: each mistake with its path, what was given, what would be right,
 * and the nearest right words. The first one is what the function throws.
 *
 * What the fields hold is checked together; what only shows when the function is at work, such as two fields that
 * contradict each other, comes one at a time. An answer that says no (`tested: false`) is an answer, and no problem.
 *
 * @param name - the function, such as `"testedProcess"`
 * @param input - its argument, as `call` takes it
 * @throws StillroomError UNKNOWN_NAME for a name that no function has
 *
 * @example
 * ```ts
 * import { check } from 'stillroom/catalogue';
 *
 * const { problems } = check('testedProcess', { food: 'peach', jar: 'pimt', elevation: '900 ft' });
 * problems.map(({ path }) => path); // => ['jar', 'method']
 * problems[0].nearest[0]; // => 'pint'
 * check('airPressure', { elevation: '900 ft' }); // => { problems: [] }
 * ```
 */
export function check(name: string, input?: unknown): Checked {
  return answer({ problems: problemsWith(name, input).map(plain) });
}

function problemsWith(name: string, input: unknown): readonly Problem[] {
  readName(name, 'name');
  try {
    // a day is checked without planning it
    if (name === 'planDay') return planProblems(Array.isArray(input) ? input[0] : input);
    call(name, input);
    return [];
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    const asked = askedWhen(error);
    const all = asked === undefined ? [] : problemsOf(asked.schema, asked.input);
    return all.length > 0 ? all : [problemOf(error)];
  }
}

/** Of what was given an answer keeps what is plain; the message says it all. */
const plain = ({ given, ...problem }: Problem): Problem =>
  typeof given === 'string' || typeof given === 'boolean' || Number.isFinite(given) ? { ...problem, given } : problem;
