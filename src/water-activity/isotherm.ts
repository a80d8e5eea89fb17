/** Choosing the isotherm an answer is made from, and reading it either way. Internal. */
import * as z from 'zod/mini';
import { fail } from '../errors/StillroomError';
import { food } from '../foods/fields';
import { name, optional } from '../quantity/fields';
import type { NotKnown } from '../sources/no';
import { temperature } from '../words/temperature';
import { isothermModel } from './isothermModels';
import { isothermOfFood } from './isothermOfFood';
import { isothermOfParameters } from './isothermParameters';
import type { Isotherm, IsothermChoice, IsothermParameters, IsothermUsed } from './isothermTypes';

/** The fields by which a caller names an isotherm. */
export const isothermFields = {
  /** The food, by any name; its published isotherm is used. */
  food: optional(food()),
  /** Or the constants of an equation: `{ model: 'GAB', M0: 0.1, C: 10, K: 0.9 }`, in g water per g dry matter. */
  parameters: optional(z.custom<IsothermParameters>(() => true)),
  /** Which of a food's published sets, by id, where it has several; `waterActivityOf` lists them. */
  set: optional(name('the id of a published set')),
  /** Which of a food's equations: `GAB`, `BET`, `Oswin` ... */
  model: optional(isothermModel()),
  /** Temperature of the food; left out, the published one nearest 25 degC. */
  temperature: optional(temperature()),
};
/** The isotherm without its functions, for an answer whose main field is `of`. */
export const usedOf = ({ moisture: _, basis, ...used }: Isotherm, of: string): IsothermUsed => ({
  ...used,
  basis: basis(of),
});

/** The isotherm a caller means: a food's published one, or an equation with constants of their own. */
export function chooseIsotherm(choice: IsothermChoice): Isotherm | NotKnown {
  const { food: asked, parameters } = choice;
  if (asked === undefined && parameters === undefined) {
    fail('MISSING', 'food', asked, 'either a food with a published isotherm, or the parameters of an equation');
  }
  if (asked !== undefined && parameters !== undefined) {
    fail('CONTRADICTION', 'food', asked.name, 'either a food or the parameters of an equation, not both');
  }
  return asked === undefined
    ? isothermOfParameters(parameters as IsothermParameters, choice)
    : isothermOfFood(asked, choice);
}

const spoken = (value: number): string => String(Number(value.toPrecision(4)));
const nameOfIt = ({ food: own, model }: Isotherm): string =>
  own === undefined ? 'these constants' : `the ${model} isotherm of ${own}`;

/** Moisture on the isotherm; refuses outside its range. */
export function moistureOn(isotherm: Isotherm, aw: number): number {
  const { low, high } = isotherm.waterActivityLimits;
  const what = nameOfIt(isotherm);
  if (aw < low || aw > high) {
    const expected = `a water activity from ${spoken(low)} to ${spoken(high)}, the range of ${what}`;
    fail('OUT_OF_RANGE', 'waterActivity', aw, expected);
  }
  const moisture = isotherm.moisture(aw);
  if (!Number.isFinite(moisture) || moisture < 0) {
    fail('OUT_OF_RANGE', 'waterActivity', aw, `an activity at which ${what} give a moisture of at least 0`);
  }
  return moisture;
}

/** As near an end as an equation without a value there is taken. */
const EDGE = 1e-6;
/** An end of the scale, or just inside it where the equation has no value at it. */
const usable = (isotherm: Isotherm, end: number, inside: number): number => {
  const moisture = isotherm.moisture(end);
  return Number.isFinite(moisture) && moisture >= 0 ? end : inside;
};

/** A moisture worked out from the end of the range is not outside it. */
const LAST_DIGITS = 1e-9;
/** Halvings that take an activity to the last digits of a double. */
const HALVINGS = 60;

/** Activity on the isotherm at a moisture, by halving; refuses outside its range. */
export function activityOn(isotherm: Isotherm, moisture: number): number {
  let { low, high } = isotherm.waterActivityLimits;
  low = usable(isotherm, low, low + EDGE);
  high = usable(isotherm, high, high - EDGE);
  const least = isotherm.moisture(low);
  const most = isotherm.moisture(high);
  if (!(moisture >= least * (1 - LAST_DIGITS) && moisture <= most * (1 + LAST_DIGITS))) {
    fail(
      'OUT_OF_RANGE',
      'moisture',
      moisture,
      `a moisture from ${spoken(least)} to ${spoken(most)} g per g dry matter, which is the range of ${nameOfIt(isotherm)} (water activity ${spoken(low)} to ${spoken(high)})`,
    );
  }
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (isotherm.moisture(middle) < moisture) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
