import { functionOf } from './functions';

/**
 * The answer of a public function, by its name: one door for forms, files and other languages.
 *
 * @param name - the function, such as `"testedProcess"`; `catalogue` lists them
 * @param input - its argument; a list is taken for the arguments one after the other (`convert` takes two)
 * @returns what the function answers: plain data
 * @throws StillroomError UNKNOWN_NAME for a name that no function has, with the nearest; and what the function throws
 *
 * @example
 * ```ts
 * import { call } from 'stillroom/catalogue';
 *
 * call('convert', ['1 cup', 'tbsp']); // => { value: 16, unit: 'tbsp' }
 * call('airPresure', {}); // throws StillroomError UNKNOWN_NAME
 * ```
 */
export function call(name: string, input?: unknown): unknown {
  const run = functionOf(name);
  return Array.isArray(input) ? run(...(input as readonly unknown[])) : run(input);
}
