import gelJson from '../../data/sugar/gel-point.json';
import rulesJson from '../../data/sugar/gel-point-rules.json';
import { answer } from '../common/answer';
import { choice, fields, kitchenElevation, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { LengthInput, Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { boilingTemperature } from '../steam/boilingTemperature';

export interface GelPointRow extends Sourced {
  readonly elevation: number;
  readonly temperature: number;
}
export interface GelRuleRow extends Sourced {
  readonly rule: string;
  readonly formula: string;
  readonly value: number;
  readonly unit: string;
}
const printed = asTable<GelPointRow>(gelJson).rows;
const rules = asTable<GelRuleRow>(rulesJson).rows;
export const gelRule = (rule: string): GelRuleRow => rules.find((row) => row.rule === rule) as GelRuleRow;

const PRODUCTS = {
  jelly: 'gel temperature',
  jam: 'gel temperature',
  preserves: 'whole-fruit preserves end point',
} as const;
const schema = fields({
  elevation: kitchenElevation(),
  product: optional(choice('what is cooked', ['jelly', 'jam', 'preserves'] as const)),
});
export interface GelTemperatureInput {
  readonly elevation: LengthInput;
  /** `jelly` when left out; `preserves` are whole fruit in syrup. */
  readonly product?: keyof typeof PRODUCTS;
}
export interface GelTemperature {
  readonly temperature: Quantity<'temperature'>;
  /** Of water, at this elevation. */
  readonly boiling: Quantity<'temperature'>;
  /** The printed table's figure for the nearest thousand feet, 0 to 8,000 ft; jams and jellies only. */
  readonly printed?: { readonly elevation: Quantity<'length'>; readonly temperature: Quantity<'temperature'> };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The temperature at which a jam or jelly without added pectin is done: 8 degF above the boiling point of water at
 * the kitchen's elevation (9 degF for whole-fruit preserves).
 *
 * The boiling point is the standard atmosphere's for that elevation; a low-pressure day lowers it, so a cook with a
 * good thermometer boils water first and adds the 8 degF to what it shows. The printed table (Complete Guide to
 * Home Canning, Guide 7) holds for each thousand feet to 8,000 and agrees within 1 degF.
 *
 * @param input - `elevation`: -500 m to 5,000 m; `product`: `jelly` (the default), `jam` or `preserves`
 * @returns `temperature` in degF, or degC where the elevation is given in metres
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { gelTemperature } from 'stillroom/sugar';
 *
 * gelTemperature({ elevation: '4000 ft' }).temperature.value; // ≈ 212.7
 * ```
 */
export function gelTemperature(input: GelTemperatureInput): GelTemperature {
  const given = readInput(schema, input);
  const rule = gelRule(PRODUCTS[given.product ?? 'jelly']);
  const water = boilingTemperature({ elevation: given.elevation });
  const boiling = valueIn(water.temperature, 'degF');
  const unit = water.temperature.unit;
  const feet = valueIn(given.elevation, 'ft');
  const row = printed.find((candidate) => Math.abs(candidate.elevation - feet) <= 500);
  const shown =
    row === undefined || given.product === 'preserves'
      ? {}
      : {
          printed: {
            elevation: quantityIn(row.elevation, 'ft', 'ft'),
            temperature: quantityIn(row.temperature, 'degF', unit),
          },
        };
  return answer({
    temperature: quantityIn(boiling + rule.value, 'degF', unit),
    boiling: water.temperature,
    ...shown,
    basis: [
      basisOf(rule, 'rise above boiling'),
      ...water.basis,
      ...(row === undefined ? [] : [basisOf(row, 'printed table')]),
    ],
    cautions: water.cautions,
  });
}
