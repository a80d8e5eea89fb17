/** What kind of mistake an input held. */
export type ErrorCode =
  | 'MISSING' // a required field was not given
  | 'WRONG_TYPE' // a value of the wrong kind, such as a number where a string belongs
  | 'UNKNOWN_FIELD' // a field the function does not know
  | 'UNKNOWN_NAME' // a food, jar, unit, form ... that is in no table
  | 'UNKNOWN_UNIT' // a unit in no table, or a spelling that could be two
  | 'NOT_A_QUANTITY' // a string that cannot be read as an amount and a unit
  | 'WRONG_DIMENSION' // a volume where a mass belongs
  | 'OUT_OF_RANGE' // outside what is physically or by the source allowed
  | 'CONTRADICTION' // fields that cannot hold together
  | 'TOO_MUCH'; // more items or work than the function takes

/** What an error says, as data. */
export interface ErrorDetails {
  /** What kind of mistake it is. */
  code: ErrorCode;
  /** The field, as a path into the argument: `lots[0].raw`; empty for the argument itself. */
  path: string;
  /** What was given: strings, numbers and the like unchanged, an object or a list as a few words. */
  given: Given;
  /** What would be right. */
  expected: string;
  /** Every right choice, where they are few. */
  options?: readonly string[];
  /** The right choices nearest to what was given, best first. */
  nearest?: readonly string[];
}
/** What an error repeats of the input. */
export type Given = string | number | bigint | boolean | null | undefined;
/** The right choices, as `fail` takes them. */
export type Choices = Pick<ErrorDetails, 'options' | 'nearest'>;

const BRAND = Symbol.for('stillroom.error');

/**
 * The one error that stillroom throws: it names the field, what was given, and what would be right. `instanceof` knows
 * it whichever copy of the package threw it.
 *
 * A missing answer (no tested process, say) is not an error: it is returned as a value.
 *
 * @example
 * ```ts
 * import { convert } from 'stillroom/quantity';
 *
 * convert('2 cups', 'lb'); // throws StillroomError WRONG_DIMENSION
 * ```
 */
export class StillroomError extends Error implements ErrorDetails {
  override readonly name = 'StillroomError';
  /** What kind of mistake it is. */
  readonly code: ErrorCode;
  /** The field, as a path into the argument; empty for the argument itself. */
  readonly path: string;
  /** What was given. */
  readonly given: Given;
  /** What would be right. */
  readonly expected: string;
  /** Every right choice, where they are few. */
  readonly options?: readonly string[];
  /** The right choices nearest to what was given, best first. */
  readonly nearest?: readonly string[];

  /**
   * Marks the error across copies of the package: an app may load one as ESM and another as CommonJS.
   * @internal
   */
  get [BRAND](): boolean {
    return true;
  }

  static override [Symbol.hasInstance](value: unknown): boolean {
    return typeof value === 'object' && value !== null && (value as { [BRAND]?: unknown })[BRAND] === true;
  }

  constructor(details: Omit<ErrorDetails, 'given'> & { readonly given: unknown }) {
    const { code, given, expected, options, nearest } = details;
    const path = typeof details.path === 'string' ? details.path : show(details.path);
    super(`${path === '' ? '' : `${path}: `}${messageOf(code, given, expected, nearest)}`);
    this.code = code;
    this.path = path;
    this.given = repeated(given);
    this.expected = expected;
    if (options !== undefined) this.options = [...options];
    if (nearest !== undefined && nearest.length > 0) this.nearest = [...nearest];
    inputs.set(this, given);
  }
}

/** What each error was given, as it was: an error that is thrown on with a longer path says it again. */
const inputs = new WeakMap<StillroomError, unknown>();

function messageOf(code: ErrorCode, given: unknown, expected: string, nearest: readonly string[] = []): string {
  if (code === 'UNKNOWN_FIELD') {
    const [first] = nearest;
    return `unknown field ${show(given)}${first === undefined ? `; expected ${expected}` : `; did you mean "${first}"?`}`;
  }
  return `expected ${expected}${nearest.length === 0 ? '' : `; nearest: ${nearest.join(nearest.some((name) => name.includes(',')) ? '; ' : ', ')}`}, was given ${show(given)}`;
}

const repeated = (given: unknown): Given =>
  typeof given === 'object' && given !== null
    ? show(given)
    : typeof given === 'function' || typeof given === 'symbol'
      ? show(given)
      : (given as Given);

const LONGEST = 60;

/** Shows any value in a short, safe form for an error message; never throws. */
export function show(value: unknown): string {
  if (typeof value === 'string') {
    return value.length > LONGEST
      ? `${JSON.stringify(value.slice(0, LONGEST))}... (${value.length} characters)`
      : JSON.stringify(value);
  }
  if (typeof value === 'number' || typeof value === 'bigint' || typeof value === 'boolean') return String(value);
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'function') return 'a function';
  if (typeof value === 'symbol') return 'a symbol';
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  const keys = Object.keys(value).slice(0, 4);
  return keys.length === 0 ? 'an empty object' : `an object with ${keys.map((key) => show(key)).join(', ')}`;
}

/** Throws the error; `given` may be any value. `choices` are the right ones, as data. */
export function fail(code: ErrorCode, path: string, given: unknown, expected: string, choices: Choices = {}): never {
  throw new StillroomError({ code, path, given, expected, ...choices });
}

/** The same error with another path. */
export const atPath = (error: StillroomError, path: string): StillroomError =>
  new StillroomError({ ...error, code: error.code, path, given: inputs.has(error) ? inputs.get(error) : error.given });

/** Runs `work`, putting `prefix` before the path of any StillroomError it throws. */
export function within<T>(prefix: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof StillroomError) || prefix === '') throw error;
    throw atPath(error, joinPath(prefix, error.path));
  }
}

/** `lots` + `[0].raw` -> `lots[0].raw`; `kitchen` + `elevation` -> `kitchen.elevation`. */
export function joinPath(before: string, after: string): string {
  if (before === '' || after === '') return before + after;
  return after.startsWith('[') ? before + after : `${before}.${after}`;
}
