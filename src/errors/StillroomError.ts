/** What kind of mistake an input held. */
export type ErrorCode =
  | 'MISSING' // a required field was not given
  | 'WRONG_TYPE' // a value of the wrong kind, such as a number where a text belongs
  | 'UNKNOWN_FIELD' // a field the function does not know
  | 'UNKNOWN_NAME' // a food, jar, unit, form ... that is in no table
  | 'UNKNOWN_UNIT' // a unit in no table, or a spelling that could be two
  | 'NOT_A_QUANTITY' // text that cannot be read as an amount and a unit
  | 'WRONG_DIMENSION' // a volume where a mass belongs
  | 'OUT_OF_RANGE' // outside what is physically or by the source allowed
  | 'CONTRADICTION' // fields that cannot hold together
  | 'TOO_MUCH'; // more items or work than the function takes

export interface ErrorDetails {
  code: ErrorCode;
  /** The field, as a path into the argument: `lots[0].raw`; empty for the argument itself. */
  path: string;
  /** What was given, shortened for reading. */
  given: string;
  /** What would be right. */
  expected: string;
}

const BRAND = Symbol.for('stillroom.error');

/**
 * The one error that stillroom throws: it names the field, what was given, and what would be right. `instanceof` knows
 * it whichever copy of the package threw it.
 *
 * An answer that does not exist (no tested process, say) is no error but a refusal, returned as a value.
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
  readonly code: ErrorCode;
  readonly path: string;
  readonly given: string;
  readonly expected: string;

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

  constructor(details: ErrorDetails) {
    const path = typeof details.path === 'string' ? details.path : show(details.path);
    const where = path === '' ? '' : `${path}: `;
    super(`${where}expected ${details.expected}, was given ${details.given}`);
    this.code = details.code;
    this.path = path;
    this.given = details.given;
    this.expected = details.expected;
  }
}

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

/** Throws the error; `given` may be any value. */
export function fail(code: ErrorCode, path: string, given: unknown, expected: string): never {
  throw new StillroomError({ code, path, given: show(given), expected });
}

/** Runs `work`, putting `prefix` before the path of any StillroomError it throws. */
export function within<T>(prefix: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof StillroomError) || prefix === '') throw error;
    const { code, given, expected } = error;
    throw new StillroomError({ code, path: joinPath(prefix, error.path), given, expected });
  }
}

/** `lots` + `[0].raw` -> `lots[0].raw`; `kitchen` + `elevation` -> `kitchen.elevation`. */
export function joinPath(before: string, after: string): string {
  if (before === '' || after === '') return before + after;
  return after.startsWith('[') ? before + after : `${before}.${after}`;
}
