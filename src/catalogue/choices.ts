import { answer } from '../common/answer';
import { StillroomError } from '../errors/StillroomError';
import { call } from './call';
import { type Choosable, candidates } from './candidates';
import { type CatalogueEntry, entryOf, type JsonSchema, whole } from './entries';
import { type FoundField, isTree, readField, valueAt, withoutValue, withValue } from './fieldPath';
import { readName } from './functions';
import { leads, leadsDay, type Outcome } from './leads';
import { candidatesOfDay } from './ofDay';

export type { Choosable } from './candidates';

/** What a field may still hold. */
export interface StillToChoose {
  /** The values, in the order of the tables; empty where none leads to an answer, or where `by` is `open`. */
  readonly choices: readonly Choosable[];
  /**
   * How they were found: `tried`, each leads to an answer with what is given; `listed`, all that the field takes, as what
   * is given is wrong elsewhere; `open`, a quantity, a number or a free text, which no list holds.
   */
  readonly by: 'tried' | 'listed' | 'open';
  /** What the field takes, as JSON Schema. */
  readonly takes: JsonSchema;
}

/** How often a function is asked for one value of a field. */
const MOST_CALLS = 100;
/** No name of any table. */
const NO_NAME = 'no such name';

/**
 * The values that a field may still hold beside what is given: those that lead to an answer. A form asks it field by
 * field: food, form, pack, jar, canner.
 *
 * Each value is tried: the function is called with it, and what is still missing is filled in with what it may hold. For
 * `planDay` the foods are those that recipes name, and the recipes are the ways these lots have in this kitchen.
 *
 * @param name - the function, such as `"testedProcess"`
 * @param field - the path of a field: `"form"`, `"lots[0].food"`; of a function of several arguments `"[1]"`
 * @param given - the argument as far as it is known; the field itself is left out of it
 * @throws StillroomError UNKNOWN_NAME for a name that no function has, or a field that the function has not
 *
 * @example
 * ```ts
 * import { choices } from 'stillroom/catalogue';
 *
 * const peaches = { food: 'peach', form: 'halves', jar: 'quart' };
 * choices('testedProcess', 'method', peaches).choices; // => ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam']
 * choices('testedProcess', 'method', { food: 'corn', form: 'kernels' }).choices; // => ['dial-gauge', 'weighted-gauge']
 * choices('fillJar', 'headspace').by; // => 'open'
 * ```
 */
export function choices(name: string, field: string, given: unknown = {}): StillToChoose {
  const entry = entryOf(readName(name, 'name'));
  const { steps, path, schemas } = readField(entry, field);
  const known = withoutValue(given, steps);
  const could = candidatesFor(entry, { steps, path, schemas }, known);
  const takes = whole(schemas.length === 1 ? (schemas[0] as JsonSchema) : { anyOf: schemas }, `${name}.${field}`);
  if (could.length === 0) return answer({ choices: [], by: 'open', takes });
  const outcomes = could.map((value) => outcomeOf(name, path, withValue(known, steps, value)));
  if (outcomes.every((outcome) => outcome === 'elsewhere')) return answer({ choices: could, by: 'listed', takes });
  const left = could.filter((_, index) => outcomes[index] === 'answered' || outcomes[index] === 'missing');
  return answer({ choices: left, by: 'tried', takes });
}

/** What could stand in the field; where neither schema nor tables list it, what the function itself offers. */
function candidatesFor(
  entry: CatalogueEntry,
  { steps, path, schemas }: FoundField,
  known: unknown,
): readonly Choosable[] {
  const ofDay = entry.name === 'planDay' ? candidatesOfDay(path, known) : undefined;
  if (ofDay !== undefined) return ofDay;
  const beside = valueAt(known, steps.slice(0, -1));
  const found = candidates(steps, schemas, entry.input, isTree(beside) ? beside : {});
  return found.length > 0 ? found : offered(entry.name, path, withValue(known, steps, NO_NAME));
}

/** What the error of a name that there is not offers. */
function offered(name: string, path: string, input: unknown): readonly string[] {
  try {
    call(name, input);
    return [];
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    return error.path === path ? (error.options ?? []) : [];
  }
}

const outcomeOf = (name: string, path: string, input: unknown): Outcome =>
  name === 'planDay' ? leadsDay(path, input) : leads({ name, path, left: MOST_CALLS }, input);
