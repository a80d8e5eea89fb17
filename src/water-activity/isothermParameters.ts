/** An isotherm by constants of the caller's own. Internal. */
import { nameKey } from '../common/names';
import { fail } from '../errors/StillroomError';
import { valueIn } from '../quantity/scale';
import { caution } from '../sources/cautions';
import { activityCaution } from './cautions';
import { REFERENCE_TEMPERATURE } from './fields';
import { type Constants, equationNamed, type IsothermEquation, isothermEquations, poleOf } from './isothermEquations';
import { formBasis } from './isothermTables';
import type { Isotherm, IsothermChoice, IsothermParameters, Limits } from './isothermTypes';

const PARAMETERS = 'parameters';

/** The equation that the caller's constants are for. */
function equationFor(model: unknown, given: Readonly<Record<string, unknown>>): IsothermEquation {
  const path = `${PARAMETERS}.model`;
  const options = isothermEquations.map((equation) => equation.model);
  if (model === undefined) {
    if (given.M0 !== undefined && given.C !== undefined) return equationNamed(given.K === undefined ? 'BET' : 'GAB');
    fail('MISSING', path, model, `the name of the equation: ${options.join('; ')}`, { options });
  }
  if (typeof model !== 'string') fail('WRONG_TYPE', path, model, 'the name of an equation', { options });
  const found = isothermEquations.find((equation) => nameKey(equation.model) === nameKey(model));
  return found ?? fail('UNKNOWN_NAME', path, model, `the name of an equation: ${options.join('; ')}`, { options });
}

function constantsOf(equation: IsothermEquation, given: Readonly<Record<string, unknown>>): Constants {
  const constants: Record<string, number> = {};
  for (const key of equation.constants) {
    const value = given[key];
    const path = `${PARAMETERS}.${key}`;
    if (value === undefined)
      fail('MISSING', path, value, `a number: ${equation.model} takes ${equation.constants.join(', ')}`);
    if (typeof value !== 'number' || !Number.isFinite(value)) fail('WRONG_TYPE', path, value, 'a number');
    constants[key] = value;
  }
  const extra = Object.keys(given).find((key) => !equation.constants.includes(key));
  if (extra !== undefined) {
    fail('UNKNOWN_FIELD', `${PARAMETERS}.${extra.slice(0, 60)}`, given[extra], `only ${equation.constants.join(', ')}`);
  }
  for (const key of ['M0', 'C', 'K']) {
    const value = constants[key];
    if (['GAB', 'BET'].includes(equation.model) && value !== undefined && value <= 0) {
      fail('OUT_OF_RANGE', `${PARAMETERS}.${key}`, value, 'a number above 0');
    }
  }
  return constants;
}

function limitsGiven(given: unknown): Limits | undefined {
  if (given === undefined) return undefined;
  const path = `${PARAMETERS}.waterActivityLimits`;
  const expected = '{ low, high }: the ends of the water activity of the fit, from 0 to 1';
  if (typeof given !== 'object' || given === null) fail('WRONG_TYPE', path, given, expected);
  const { low, high } = given as Readonly<Record<string, unknown>>;
  if (typeof low !== 'number' || typeof high !== 'number') fail('WRONG_TYPE', path, given, expected);
  if (!(low >= 0 && low < high && high <= 1)) fail('OUT_OF_RANGE', path, given, expected);
  return { low, high };
}

/** An isotherm by the caller's own constants. */
export function isothermOfParameters(
  parameters: IsothermParameters,
  { temperature: asked, model: outer, set }: IsothermChoice,
): Isotherm {
  if (typeof parameters !== 'object' || parameters === null || Array.isArray(parameters)) {
    fail('WRONG_TYPE', PARAMETERS, parameters, 'an object such as { model: "GAB", M0: 0.1, C: 10, K: 0.9 }');
  }
  if (set !== undefined) fail('CONTRADICTION', 'set', set, 'either a published set of a food or parameters, not both');
  const { model, waterActivityLimits, ...given } = parameters as Readonly<Record<string, unknown>>;
  const equation = equationFor(model ?? outer, given);
  const constants = constantsOf(equation, given);
  const t = asked === undefined ? undefined : valueIn(asked, 'degC');
  if (equation.withTemperature && t === undefined) {
    fail('MISSING', 'temperature', asked, `the temperature, which ${equation.model} needs`);
  }
  const { K = 1 } = constants;
  const pole = equation.model === 'GAB' && K > 1 ? poleOf(K) : 1;
  const { low, high } = limitsGiven(waterActivityLimits) ?? { low: 0, high: pole };
  return {
    known: true,
    model: equation.model,
    ...(asked === undefined ? {} : { temperature: asked }),
    waterActivityLimits: { low, high: Math.min(high, pole) },
    basis: (of) => [{ of, kind: 'measured', note: 'isotherm constants' }, formBasis(equation, of)],
    cautions: [
      activityCaution('isotherm-state'),
      activityCaution('wettest-piece'),
      ...(formBasis(equation, '').kind === 'recalled' ? [caution('recalled')] : []),
    ],
    moisture: (aw) => equation.moisture(aw, constants, t ?? REFERENCE_TEMPERATURE),
  };
}
