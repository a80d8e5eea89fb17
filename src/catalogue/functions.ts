/** The public functions by name; a new one of any module is among them. */

import * as acid from '../acid/index';
import * as charts from '../charts/index';
import { nearestNames } from '../common/names';
import * as drying from '../drying/index';
import { fail } from '../errors/StillroomError';
import * as foods from '../foods/index';
import * as freezing from '../freezing/index';
import * as heat from '../heat/index';
import * as jars from '../jars/index';
import * as lethality from '../lethality/index';
import * as plan from '../plan/index';
import * as process from '../process/index';
import * as produce from '../produce/index';
import * as quantity from '../quantity/index';
import * as recipes from '../recipes/index';
import * as record from '../record/index';
import * as sheet from '../sheet/index';
import * as solution from '../solution/index';
import * as sources from '../sources/index';
import * as steam from '../steam/index';
import * as sugar from '../sugar/index';
import * as waterActivity from '../water-activity/index';

/** A public function, whatever it takes. */
type AnyFunction = (...args: readonly unknown[]) => unknown;

const FUNCTIONS: ReadonlyMap<string, AnyFunction> = new Map(
  [
    acid,
    charts,
    drying,
    foods,
    freezing,
    heat,
    jars,
    lethality,
    plan,
    process,
    produce,
    quantity,
    recipes,
    record,
    sheet,
    solution,
    sources,
    steam,
    sugar,
    waterActivity,
  ].flatMap((module: object) =>
    Object.entries(module).flatMap(([name, value]): [string, AnyFunction][] =>
      typeof value === 'function' ? [[name, value as AnyFunction]] : [],
    ),
  ),
);

/** Reads the name of a function. */
export function readName(given: unknown, path = ''): string {
  const what = 'the name of a public function, such as "testedProcess"';
  if (given === undefined) fail('MISSING', path, given, what);
  if (typeof given !== 'string') fail('WRONG_TYPE', path, given, what);
  if (!FUNCTIONS.has(given))
    fail('UNKNOWN_NAME', path, given, what, { nearest: nearestNames(given, [...FUNCTIONS.keys()]) });
  return given;
}

/** The function of a name. */
export const functionOf = (name: unknown): AnyFunction => FUNCTIONS.get(readName(name, 'name')) as AnyFunction;
