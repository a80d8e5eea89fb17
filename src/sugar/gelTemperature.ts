import * as z from 'zod/mini';
import gelJson from '../../data/sugar/gel-point.json';
import rulesJson from '../../data/sugar/gel-point-rules.json';
import { answer } from '../common/answer';
import { choice, fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { id, positive, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { boilingTemperature } from '../steam/boilingTemperature';
import { kitchenElevation } from '../words/elevation';
import { under } from './inputs';

export const gelPointRow = () =>
  z.strictObject({
    id: id(),
    /** ft */
    elevation: z.number(),
    /** degF */
    temperature: positive(),
    ...sourcedColumns(),
  });
export const gelRuleRow = () =>
  z.strictObject({ id: id(), rule: text(), formula: text(), value: positive(), unit: text(), ...sourcedColumns() });
type GelRuleRow = RowOf<typeof gelRuleRow>;
const printed = asTable<RowOf<typeof gelPointRow>>(gelJson).rows;
const rules = asTable<GelRuleRow>(rulesJson).rows;
const gelRule = (name: string): GelRuleRow => rules.find((row) => row.id === name) as GelRuleRow;

const PRODUCTS = ['jelly', 'jam', 'preserves'] as const;
/** Which rule a product is done by. */
const RULES = { jelly: 'gel', jam: 'gel', preserves: 'preserves' } as const;
const schema = fields({
  /** Elevation of the kitchen, -500 m to 5,000 m. */
  elevation: kitchenElevation(),
  /** `jelly` when left out; `preserves` are whole fruit in syrup. */
  spread: optional(choice('what is cooked', PRODUCTS)),
});
export type GelTemperatureInput = z.input<typeof schema>;
export interface GelTemperature {
  /** The temperature at which it is done. */
  readonly temperature: Quantity<'temperature'>;
  /** The boiling point of water at this elevation. */
  readonly boiling: Quantity<'temperature'>;
  /** The printed table's line for the nearest thousand feet, 0 to 8,000 ft; jams and jellies only. */
  readonly printedLine?: {
    /** The elevation of the line. */
    readonly elevation: Quantity<'length'>;
    /** The temperature that it prints. */
    readonly temperature: Quantity<'temperature'>;
  };
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
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
 * @param input - `elevation`: -500 m to 5,000 m; `spread`: `jelly` (the default), `jam` or `preserves`
 * @returns `temperature` in degF, or degC where the elevation is given in meters
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
  const rule = gelRule(RULES[given.spread ?? 'jelly']);
  const water = boilingTemperature({ elevation: given.elevation });
  const boiling = valueIn(water.temperature, 'degF');
  const unit = water.temperature.unit;
  const feet = valueIn(given.elevation, 'ft');
  const row = printed.find((candidate) => Math.abs(candidate.elevation - feet) <= 500);
  const shown =
    row === undefined || given.spread === 'preserves'
      ? {}
      : {
          printedLine: {
            elevation: quantityIn(row.elevation, 'ft', 'ft'),
            temperature: quantityIn(row.temperature, 'degF', unit),
          },
        };
  return answer({
    temperature: quantityIn(boiling + rule.value, 'degF', unit),
    boiling: water.temperature,
    ...shown,
    basis: [
      basisOf(rule, 'temperature', 'rise above boiling'),
      ...under('boiling', 'boiling point of water', water.basis),
      ...(row === undefined || given.spread === 'preserves' ? [] : [basisOf(row, 'printedLine.temperature')]),
    ],
    cautions: water.cautions,
  });
}
