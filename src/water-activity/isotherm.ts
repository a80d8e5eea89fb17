/** Choosing the isotherm an answer is made from, and reading it either way. Internal. */
import * as z from 'zod/mini';
import equationsJson from '../../data/water-activity/isotherm-equations.json';
import isothermsJson from '../../data/water-activity/isotherms.json';
import { lookUp, type Named, nameKey } from '../common/names';
import { fail } from '../errors/StillroomError';
import { name, optional, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { activityCaution } from './cautions';
import { REFERENCE_TEMPERATURE } from './fields';
import { type Constants, equationNamed, type IsothermEquation, isothermEquations, poleOf } from './isothermEquations';

export interface IsothermRow extends Named, Sourced {
  /** How the food was prepared, or whose data. */
  readonly state: string;
  readonly model: string;
  readonly temperature_degC: readonly [number, number] | null;
  readonly awRange: readonly [number, number] | null;
  readonly parameters: Constants;
  /** A caution that goes with the set. */
  readonly caution?: string;
}
interface EquationRow extends Sourced {
  readonly model: string;
}
export const isotherms = asTable<IsothermRow>(isothermsJson).rows;
const equationRows = asTable<EquationRow>(equationsJson).rows;

/** One food of the table, with all its sets. */
export interface IsothermFood extends Named {
  readonly sets: readonly IsothermRow[];
}
export const isothermFoodsKnown: readonly IsothermFood[] = [...new Set(isotherms.map((row) => row.name))].map((own) => {
  const sets = isotherms.filter((row) => row.name === own);
  return { name: own, synonyms: [...new Set(sets.flatMap(({ synonyms }) => synonyms ?? []))], sets };
});

/** The constants of an equation: its `model` and each constant by its letter, as in `isothermEquations`. */
export interface IsothermParameters {
  /** `GAB` when left out and M0, C and K are given; `BET` with M0 and C. */
  readonly model?: string;
  /** The range the constants were fitted over; left out, all that the equation can bear. */
  readonly awRange?: readonly [number, number];
  /** Each constant; moisture constants in g water per g dry matter. */
  readonly [constant: string]: number | string | readonly [number, number] | undefined;
}

/** The fields by which a caller names an isotherm. */
export const isothermFields = {
  food: optional(name('a food with a published isotherm')),
  parameters: optional(z.custom<IsothermParameters>(() => true)),
  model: optional(name('the name of an isotherm equation')),
  state: optional(name('how the food was prepared, or whose data')),
  temperature: optional(temperature()),
};
export interface IsothermChoice {
  readonly food?: string | undefined;
  readonly parameters?: IsothermParameters | undefined;
  readonly model?: string | undefined;
  readonly state?: string | undefined;
  readonly temperature?: Quantity<'temperature'> | undefined;
}

/** An isotherm ready to be read. */
export interface Isotherm {
  readonly food?: string;
  readonly state?: string;
  readonly model: string;
  readonly temperature?: Quantity<'temperature'>;
  readonly awRange: readonly [number, number];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
  readonly moisture: (aw: number) => number;
}

/** No range is printed for some equations: kept to the middle of the scale, where the sets of one food agree. */
const MIDDLE = [0.1, 0.8] as const;
/** No temperatures are printed for some pasta sets: kept to those that their checks are given at. */
const ASSUMED_TEMPERATURES = [20, 60] as const;
/** Near its pole an equation with K above 1 runs away. */
const SHORT_OF_POLE = 0.95;
/** Printed temperatures are whole degrees. */
const DEGREE = 0.5;

const range = ([low, high]: readonly [number, number], unit = ''): string =>
  low === high ? `${low}${unit}` : `${low} to ${high}${unit}`;

/** The activities a published set may be asked about. */
function rangeOf(row: IsothermRow, equation: IsothermEquation): readonly [number, number] {
  if (row.awRange !== null) return row.awRange;
  const [low, high] = equation.awRange ?? MIDDLE;
  const { K } = row.parameters;
  return [low, K !== undefined && K > 1 ? Math.min(high, poleOf(K) * SHORT_OF_POLE) : high];
}

/** The temperatures a set is for; every one for those found free of its influence. */
const temperaturesOf = (row: IsothermRow): readonly [number, number] => row.temperature_degC ?? ASSUMED_TEMPERATURES;

const farFrom = (row: IsothermRow, t: number): number => {
  const [low, high] = temperaturesOf(row);
  return Math.max(low - t, t - high, 0);
};

/** The sets of the asked model and state. */
function setsOf(food: IsothermFood, { model, state }: IsothermChoice): readonly IsothermRow[] {
  const models = [...new Set(food.sets.map((row) => row.model))];
  const exact = food.sets.filter((row) => model !== undefined && nameKey(row.model) === nameKey(model));
  const akin = food.sets.filter(
    (row) => model !== undefined && nameKey(row.model.split(',')[0] ?? '') === nameKey(model),
  );
  const byModel = model === undefined ? food.sets : exact.length > 0 ? exact : akin;
  if (byModel.length === 0)
    fail('UNKNOWN_NAME', 'model', model, `a model published for ${food.name}: ${models.join('; ')}`);
  if (state === undefined) return byModel;
  const key = nameKey(state);
  const byState = byModel.filter((row) => nameKey(row.state) === key || nameKey(row.state).includes(key));
  const states = [...new Set(byModel.map((row) => row.state).filter((text) => text !== ''))];
  if (byState.length === 0) fail('UNKNOWN_NAME', 'state', state, `one of: ${states.join('; ')}`);
  return byState;
}

/** The published isotherm of a food. */
function ofFood(asked: string, choice: IsothermChoice): Isotherm {
  const food = lookUp(
    asked,
    isothermFoodsKnown,
    'food',
    'food with a published isotherm (other fruit: fruitWaterActivity)',
  );
  const sets = setsOf(food, choice);
  const given = choice.temperature === undefined ? undefined : valueIn(choice.temperature, 'degC');
  const wanted = given ?? REFERENCE_TEMPERATURE;
  // the table lists GAB first; a stable sort keeps that order among sets as near as each other
  const row = [...sets].sort((one, other) => farFrom(one, wanted) - farFrom(other, wanted))[0] as IsothermRow;
  if (given !== undefined && farFrom(row, given) > DEGREE) {
    const all = [...new Set(sets.map((set) => range(temperaturesOf(set), ' degC')))].join(', ');
    fail('OUT_OF_RANGE', 'temperature', `${given} degC`, `a temperature that ${food.name} was measured at: ${all}`);
  }
  const equation = equationNamed(row.model);
  const [coldest, warmest] = temperaturesOf(row);
  const t = Math.min(Math.max(wanted, coldest), warmest);
  const form = basisOf(
    equationRows.find(({ model }) => model === equation.row) as EquationRow,
    `${row.model} equation`,
  );
  return {
    food: food.name,
    ...(row.state === '' ? {} : { state: row.state }),
    model: row.model,
    temperature: { value: t, unit: 'degC' },
    awRange: rangeOf(row, equation),
    basis: joinBasis([
      basisOf(row, `isotherm constants of ${food.name}`),
      form.kind === 'published' ? { ...form, kind: 'equation' } : form,
    ]),
    cautions: [
      activityCaution('isotherm-state'),
      activityCaution('wettest-piece'),
      ...(row.awRange === null && equation.awRange === undefined ? [activityCaution('isotherm-range-assumed')] : []),
      ...(row.temperature_degC === null ? [activityCaution('isotherm-temperature-assumed')] : []),
      ...(given === undefined ? [activityCaution('isotherm-temperature-chosen')] : []),
      ...(row.caution === undefined ? [] : [activityCaution(row.caution)]),
      ...(form.kind === 'recalled' || row.obtained === 'memory' ? [caution('recalled')] : []),
    ],
    moisture: (aw) => equation.moisture(aw, row.parameters, t),
  };
}

const PARAMETERS = 'parameters';

/** The equation that the caller's constants are for. */
function equationFor(model: unknown, given: Readonly<Record<string, unknown>>): IsothermEquation {
  const models = isothermEquations.map((equation) => equation.model);
  if (model === undefined) {
    if (given.M0 !== undefined && given.C !== undefined) return equationNamed(given.K === undefined ? 'BET' : 'GAB');
    fail('MISSING', `${PARAMETERS}.model`, model, `the name of the equation: ${models.join('; ')}`);
  }
  if (typeof model !== 'string') fail('WRONG_TYPE', `${PARAMETERS}.model`, model, 'the name of an equation');
  const found = isothermEquations.find((equation) => nameKey(equation.model) === nameKey(model));
  return found ?? fail('UNKNOWN_NAME', `${PARAMETERS}.model`, model, `the name of an equation: ${models.join('; ')}`);
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

function rangeGiven(given: unknown): readonly [number, number] | undefined {
  if (given === undefined) return undefined;
  const path = `${PARAMETERS}.awRange`;
  const expected = 'the lowest and the highest water activity of the fit, from 0 to 1';
  if (!Array.isArray(given) || given.length !== 2) fail('WRONG_TYPE', path, given, expected);
  const [low, high] = given as [unknown, unknown];
  if (typeof low !== 'number' || typeof high !== 'number') fail('WRONG_TYPE', path, given, expected);
  if (!(low >= 0 && low < high && high <= 1)) fail('OUT_OF_RANGE', path, given, expected);
  return [low, high];
}

/** As near an end as an equation without a value there is taken. */
const EDGE = 1e-6;
/** An end of the scale, or just inside it where the equation has no value at it. */
const usable = (isotherm: Isotherm, end: number, inside: number): number => {
  const moisture = isotherm.moisture(end);
  return Number.isFinite(moisture) && moisture >= 0 ? end : inside;
};

/** An isotherm by the caller's own constants. */
function ofParameters(parameters: IsothermParameters, { temperature: asked, model: outer }: IsothermChoice): Isotherm {
  if (typeof parameters !== 'object' || parameters === null || Array.isArray(parameters)) {
    fail('WRONG_TYPE', PARAMETERS, parameters, 'an object such as { model: "GAB", M0: 0.1, C: 10, K: 0.9 }');
  }
  const { model, awRange, ...given } = parameters as Readonly<Record<string, unknown>>;
  const equation = equationFor(model ?? outer, given);
  const constants = constantsOf(equation, given);
  const t = asked === undefined ? undefined : valueIn(asked, 'degC');
  if (equation.withTemperature && t === undefined) {
    fail('MISSING', 'temperature', asked, `the temperature, which ${equation.model} needs`);
  }
  const { K = 1 } = constants;
  const pole = equation.model === 'GAB' && K > 1 ? poleOf(K) : 1;
  const [low, high] = rangeGiven(awRange) ?? [0, pole];
  const form = basisOf(
    equationRows.find((row) => row.model === equation.row) as EquationRow,
    `${equation.model} equation`,
  );
  return {
    model: equation.model,
    ...(asked === undefined ? {} : { temperature: asked }),
    awRange: [low, Math.min(high, pole)],
    basis: [
      { of: 'isotherm constants', kind: 'measured' },
      form.kind === 'published' ? { ...form, kind: 'equation' } : form,
    ],
    cautions: [
      activityCaution('isotherm-state'),
      activityCaution('wettest-piece'),
      ...(form.kind === 'recalled' ? [caution('recalled')] : []),
    ],
    moisture: (aw) => equation.moisture(aw, constants, t ?? REFERENCE_TEMPERATURE),
  };
}

/** The isotherm a caller means: a food's published one, or an equation with constants of their own. */
export function chooseIsotherm(choice: IsothermChoice): Isotherm {
  const { food, parameters } = choice;
  if ((food === undefined) === (parameters === undefined)) {
    const code = food === undefined ? 'MISSING' : 'CONTRADICTION';
    fail(code, 'food', food, 'either a food with a published isotherm, or the parameters of an equation');
  }
  return parameters === undefined ? ofFood(food as string, choice) : ofParameters(parameters, choice);
}

const spoken = (value: number): string => String(Number(value.toPrecision(4)));

/** Moisture on the isotherm; refuses outside its range. */
export function moistureOn(isotherm: Isotherm, aw: number): number {
  const [low, high] = isotherm.awRange;
  const what = isotherm.food === undefined ? 'these constants' : `the ${isotherm.model} isotherm of ${isotherm.food}`;
  if (aw < low || aw > high) {
    fail(
      'OUT_OF_RANGE',
      'waterActivity',
      aw,
      `a water activity from ${spoken(low)} to ${spoken(high)}, the range of ${what}`,
    );
  }
  const moisture = isotherm.moisture(aw);
  if (!Number.isFinite(moisture) || moisture < 0) {
    fail('OUT_OF_RANGE', 'waterActivity', aw, `an activity at which ${what} give a moisture of at least 0`);
  }
  return moisture;
}

/** A moisture worked out from the end of the range is not outside it. */
const LAST_DIGITS = 1e-9;
/** Halvings that take an activity to the last digits of a double. */
const HALVINGS = 60;

/** Activity on the isotherm at a moisture, by halving; refuses outside its range. */
export function activityOn(isotherm: Isotherm, moisture: number): number {
  let [low, high] = isotherm.awRange;
  low = usable(isotherm, low, low + EDGE);
  high = usable(isotherm, high, high - EDGE);
  const least = isotherm.moisture(low);
  const most = isotherm.moisture(high);
  if (!(moisture >= least * (1 - LAST_DIGITS) && moisture <= most * (1 + LAST_DIGITS))) {
    const what = isotherm.food === undefined ? 'these constants' : `the ${isotherm.model} isotherm of ${isotherm.food}`;
    fail(
      'OUT_OF_RANGE',
      'moisture',
      moisture,
      `a moisture from ${spoken(least)} to ${spoken(most)} g per g dry matter, which is the range of ${what} (water activity ${spoken(low)} to ${spoken(high)})`,
    );
  }
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (isotherm.moisture(middle) < moisture) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
