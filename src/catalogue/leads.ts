/** Whether a value in a field leads to an answer: the function is asked with it. */
import { StillroomError } from '../errors/StillroomError';
import { planProblems } from '../plan/planProblems';
import { call } from './call';
import { asksForProcess, candidates, processWords } from './candidates';
import { type CatalogueEntry, entryOf } from './entries';
import { isTree, type Steps, schemasAt, stepsOf, valueAt, withValue } from './fieldPath';
import { trialOfDay } from './ofDay';

/**
 * What came of asking: an answer; a no, or an error at the field; a field still missing that nothing could fill; or an
 * error elsewhere, which may be that of the other fields alone.
 */
export type Outcome = 'answered' | 'refused' | 'missing' | 'elsewhere';

/** A field of a function, and how often the function may still be asked for one value of it. */
export interface Trial {
  readonly name: string;
  readonly path: string;
  left: number;
}

/** How many fields are filled in at most, and how many values of one are tried. */
const DEEPEST = 6;
const MOST_FILLERS = 30;

const isNo = (found: unknown): boolean =>
  typeof found === 'object' &&
  found !== null &&
  ['tested', 'known', 'feasible'].some((key) => (found as Record<string, unknown>)[key] === false);

const isAt = (path: string, field: string): boolean =>
  path === field || path.startsWith(`${field}.`) || path.startsWith(`${field}[`);

/** What could fill a missing field: the options that the error lists, else names of the tables, else examples. */
function fillers(entry: CatalogueEntry, error: StillroomError, steps: Steps, input: unknown): readonly unknown[] {
  const beside = valueAt(input, steps.slice(0, -1));
  const given = isTree(beside) ? beside : {};
  const printed = asksForProcess(entry.input) ? processWords(steps[steps.length - 1], given) : [];
  if (printed.length > 0) return printed.slice(0, MOST_FILLERS);
  if (error.options !== undefined) return error.options.slice(0, MOST_FILLERS);
  const schemas = schemasAt(entry, steps);
  const found = candidates(steps, schemas, entry.input, given);
  if (found.length > 0 && found.length <= MOST_FILLERS) return found;
  const examples = schemas.flatMap((schema) => (schema.examples ?? []) as readonly unknown[]);
  return [valueAt(entry.example, steps), ...examples].filter((each) => each !== undefined);
}

/** Asks a function, and fills in what is missing until it answers. */
export function leads(trial: Trial, input: unknown, depth = DEEPEST): Outcome {
  if (trial.left <= 0) return 'missing';
  trial.left -= 1;
  const error = errorOf(trial.name, input);
  if (error === undefined) return 'answered';
  if (error === 'no' || isAt(error.path, trial.path)) return 'refused';
  if (error.code !== 'MISSING') return 'elsewhere';
  const steps = stepsOf(error.path);
  if (steps === undefined || steps.length === 0 || valueAt(input, steps) !== undefined || depth === 0) return 'missing';
  const outcomes = new Set<Outcome>();
  for (const filler of fillers(entryOf(trial.name), error, steps, input)) {
    const outcome = leads(trial, withValue(input, steps, filler), depth - 1);
    if (outcome === 'answered') return outcome;
    outcomes.add(outcome);
  }
  // what cannot be filled in may still come; what is refused however it is filled in is refused
  return outcomes.has('missing') || !outcomes.has('refused') ? 'missing' : 'refused';
}

/** What a function says: nothing where it answers, `no`, or its error. A day is checked and not planned. */
function errorOf(name: string, input: unknown): StillroomError | 'no' | undefined {
  try {
    return isNo(call(name, input)) ? 'no' : undefined;
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    return error;
  }
}

/** Whether a day has no problem at the field; what is missing elsewhere can still come. */
export function leadsDay(field: string, input: unknown): Outcome {
  const { path: tried, day } = trialOfDay(field, input);
  const problems = planProblems(day);
  if (problems.some(({ path }) => isAt(path, tried))) return 'refused';
  return problems.length === 0 ? 'answered' : 'missing';
}
