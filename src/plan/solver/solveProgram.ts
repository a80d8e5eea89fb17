import { fail } from '../../errors/StillroomError';
import type { Program } from './linearProgram';
import { optimize } from './optimize';
import type { Solved } from './solve';

/** What `solveProgram` takes on: larger programs than any day that `planDay` takes. */
const MOST = { variables: 5_000, bounds: 5_000, terms: 200_000, nodes: 50_000 };

type Fields = Readonly<Record<string, unknown>>;

const objectAt = (value: unknown, path: string, expected: string): Fields => {
  if (value === undefined) fail('MISSING', path, value, expected);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) fail('WRONG_TYPE', path, value, expected);
  return value as Fields;
};
const listAt = (value: unknown, path: string, most: number): readonly unknown[] => {
  if (value === undefined) fail('MISSING', path, value, 'a list');
  if (!Array.isArray(value)) fail('WRONG_TYPE', path, value, 'a list');
  if (value.length > most) fail('TOO_MUCH', path, value, `at most ${most} entries`);
  return value;
};
function numberAt(value: unknown, path: string): void {
  if (value === undefined) fail('MISSING', path, value, 'a number');
  if (typeof value !== 'number') fail('WRONG_TYPE', path, value, 'a number');
  if (!Number.isFinite(value)) fail('OUT_OF_RANGE', path, value, 'a finite number');
}

/** Terms that name a variable of the program; answers how many there are. */
function checkTerms(given: unknown, path: string, names: ReadonlySet<string>): number {
  const terms = listAt(given, path, MOST.terms);
  terms.forEach((term, index) => {
    const at = `${path}[${index}]`;
    if (!Array.isArray(term) || term.length !== 2) fail('WRONG_TYPE', at, term, 'a variable and its weight');
    const [name, weight] = term as [unknown, unknown];
    if (typeof name !== 'string' || !names.has(name)) fail('UNKNOWN_NAME', at, name, 'the name of a variable');
    numberAt(weight, at);
  });
  return terms.length;
}

function checkedProgram(given: unknown): Program {
  const { variables, bounds, per } = objectAt(given, '', 'a program: variables and bounds');
  const names = new Set<string>();
  listAt(variables, 'variables', MOST.variables).forEach((each, index) => {
    const at = `variables[${index}]`;
    const { name, worth, integer } = objectAt(each, at, 'a variable: name, worth, integer');
    if (typeof name !== 'string') fail(name === undefined ? 'MISSING' : 'WRONG_TYPE', `${at}.name`, name, 'a name');
    if (names.has(name)) fail('CONTRADICTION', `${at}.name`, name, 'a name that no other variable has');
    numberAt(worth, `${at}.worth`);
    if (integer !== undefined && typeof integer !== 'boolean')
      fail('WRONG_TYPE', `${at}.integer`, integer, 'true or false');
    names.add(name);
  });
  let terms = 0;
  listAt(bounds, 'bounds', MOST.bounds).forEach((each, index) => {
    const at = `bounds[${index}]`;
    const { name, terms: own, min, max } = objectAt(each, at, 'a bound: name, terms, min, max');
    if (typeof name !== 'string') fail(name === undefined ? 'MISSING' : 'WRONG_TYPE', `${at}.name`, name, 'a name');
    terms += checkTerms(own, `${at}.terms`, names);
    if (min !== undefined) numberAt(min, `${at}.min`);
    if (max !== undefined) numberAt(max, `${at}.max`);
  });
  if (terms > MOST.terms) fail('TOO_MUCH', 'bounds', terms, `at most ${MOST.terms} terms`);
  if (per !== undefined) checkTerms(per, 'per', names);
  return given as Program;
}

/**
 * Solves a program of `planProgram`, or one of yours: the whole and continuous amounts, none below zero, that are worth
 * the most within the bounds. Where the program has `per`, the worth for each unit of that sum.
 *
 * @param program - `variables` (`name`, `worth` of one unit, `integer`) and `bounds` (`name`, `terms` as pairs of a
 *   variable's name and its weight, `min`, `max`): up to 5,000 of each; `per`, a sum that the bounds keep at 1 or more
 * @param options.nodes - the most nodes the search may open, 0 to 50,000; by the size of the program when left out
 * @returns `feasible`, `worth`, `values` (a Map by name), `optimal` (proven), and `gap`: how much better a plan could be
 *   relative to this one
 * @throws StillroomError MISSING, WRONG_TYPE, OUT_OF_RANGE, UNKNOWN_NAME, CONTRADICTION, TOO_MUCH, naming the field
 *
 * @example
 * ```ts
 * import { solveProgram } from 'stillroom/plan';
 *
 * const found = solveProgram({
 *   variables: [{ name: 'jars', worth: 2, integer: true }],
 *   bounds: [{ name: 'fruit', terms: [['jars', 1.4]], max: 10 }],
 * });
 * [found.values.get('jars'), found.worth, found.optimal]; // => [7, 14, true]
 * ```
 */
export function solveProgram(program: Program, options: { readonly nodes?: number } = {}): Solved {
  const checked = checkedProgram(program);
  const { nodes } = objectAt(options, 'options', 'an object with `nodes`');
  if (nodes === undefined) return optimize(checked);
  numberAt(nodes, 'options.nodes');
  if (!Number.isInteger(nodes) || (nodes as number) < 0 || (nodes as number) > MOST.nodes)
    fail('OUT_OF_RANGE', 'options.nodes', nodes, `a whole number from 0 to ${MOST.nodes}`);
  return optimize(checked, { nodes: nodes as number });
}
