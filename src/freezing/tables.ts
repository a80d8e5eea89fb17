/** The tables of freezing: schemas, types and rows. */
import * as z from 'zod/mini';
import beforeTable from '../../data/freezing/before-freezing.json';
import blanchingTable from '../../data/freezing/blanching.json';
import blanchingRecalledTable from '../../data/freezing/blanching-recalled.json';
import blanchingWaterTable from '../../data/freezing/blanching-water.json';
import cautionTable from '../../data/freezing/cautions.json';
import componentTable from '../../data/freezing/component-polynomials.json';
import constantTable from '../../data/freezing/constants.json';
import correlationTable from '../../data/freezing/correlations.json';
import recalledPointTable from '../../data/freezing/freezing-points-recalled.json';
import packTable from '../../data/freezing/fruit-packs.json';
import recalledPackTable from '../../data/freezing/fruit-packs-recalled.json';
import headspaceTable from '../../data/freezing/headspace.json';
import shapeTable from '../../data/freezing/plank-shapes.json';
import practiceTable from '../../data/freezing/practice.json';
import ruleTable from '../../data/freezing/rules.json';
import textbookTable from '../../data/freezing/thermal-textbook.json';
import usUnitTable from '../../data/freezing/thermal-us-units.json';
import vegetableTable from '../../data/freezing/thermal-vegetables.json';
import type { Caution } from '../sources/basis';
import { id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';

const share = () => z.number().check(z.gte(0), z.lte(100));
/** The two ends of a printed range; equal where one figure is printed. */
const ends = () => z.tuple([positive(), positive()]);
export type Ends = readonly [low: number, high: number];
/** Where food begins to freeze, degC. */
const point = () => z.number().check(z.gte(-5), z.lte(0));
const ids = () => z.array(id()).check(z.minLength(1));
/** The food by its id, with the words of the page. */
const named = () => ({ id: id(), food: id(), printed: text() });
/** Specific heats in kJ/(kg K), and the heat to freeze the food in kJ/kg. */
const heats = () => ({
  specificHeatAbove: positive(),
  specificHeatBelow: positive(),
  latentHeat: positive().check(z.lte(335)),
});

export const ruleRow = () =>
  z.strictObject({
    id: id(),
    about: text(),
    food: z.exactOptional(id()),
    low: z.number(),
    high: z.number(),
    unit: text(),
    ...sourcedColumns(),
  });
export const headspaceRow = () =>
  z.strictObject({
    id: id(),
    pack: z.enum(['liquid', 'dry', 'juice']),
    mouth: z.enum(['wide', 'regular']),
    size: z.enum(['pint', 'quart']),
    inches: positive().check(z.lte(1.5)),
    ...sourcedColumns(),
  });
export const packRow = () =>
  z.strictObject({
    id: id(),
    foods: ids(),
    pack: z.enum(['syrup', 'sugar', 'dry', 'puree', 'unsweetened', 'water', 'juice', 'sauce']),
    rank: z.int().check(z.positive()),
    syrupBrix: z.exactOptional(ends()),
    sugarCups: z.exactOptional(ends()),
    perCups: z.exactOptional(positive()),
    quartLb: z.exactOptional(positive()),
    partsFruitToSugar: z.exactOptional(positive()),
    lemonJuiceTspPerQuart: z.exactOptional(positive()),
    ascorbicTsp: z.exactOptional(positive()),
    ascorbicPerQuartOf: z.exactOptional(z.enum(['syrup', 'fruit', 'water'])),
    ascorbicInTbspWater: z.exactOptional(positive()),
    steamInsteadMinutes: z.exactOptional(ends()),
    preheatMinutes: z.exactOptional(ends()),
    preheatIn: z.exactOptional(text()),
    ...sourcedColumns(),
    notes: z.exactOptional(z.string()),
  });
export const blanchingRow = () =>
  z.strictObject({
    ...named(),
    forms: z.exactOptional(ids()),
    waterMinutes: z.nullable(ends()),
    steamMinutes: z.nullable(ends()),
    coolingTimes: z.exactOptional(z.literal(2)),
    leafy: z.exactOptional(z.literal(true)),
    whenNamed: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
export const blanchingWaterRow = () =>
  z.strictObject({
    ...named(),
    forms: z.exactOptional(ids()),
    amount: z.nullable(text()),
    waterQuarts: z.nullable(positive()),
    waterMinutes: ends(),
    ...sourcedColumns(),
  });
export const beforeFreezingRow = () =>
  z.strictObject({
    ...named(),
    forms: z.exactOptional(ids()),
    treatment: z.enum(['cook', 'raw']),
    minutes: z.exactOptional(ends()),
    size: z.exactOptional(text()),
    ...sourcedColumns(),
  });
/** Parts of the weight in percent. */
export const thermalRow = () =>
  z.strictObject({
    ...named(),
    initialFreezing: point(),
    water: share(),
    protein: z.exactOptional(share()),
    fat: z.exactOptional(share()),
    carbohydrate: z.exactOptional(share()),
    fiber: z.exactOptional(share()),
    ash: z.exactOptional(share()),
    ...heats(),
    ...sourcedColumns(),
  });
export const usUnitRow = () =>
  z.strictObject({
    ...named(),
    initialFreezingF: z.number().check(z.gte(25), z.lte(32)),
    specificHeatAboveBtu: positive(),
    specificHeatBelowBtu: positive(),
    latentHeatBtu: positive().check(z.lte(144)),
    ...sourcedColumns(),
  });
export const recalledPointRow = () => z.strictObject({ ...named(), initialFreezing: point(), ...sourcedColumns() });
export const componentRow = () =>
  z.strictObject({
    id: id(),
    component: text(),
    property: z.enum(['density', 'specificHeat', 'conductivity']),
    unit: text(),
    a0: positive(),
    a1: z.number(),
    a2: z.number(),
    ...sourcedColumns(),
  });
export const correlationRow = () => z.strictObject({ id: id(), formula: text(), units: text(), ...sourcedColumns() });
export const shapeRow = () =>
  z.strictObject({
    ...sourcedColumns(),
    id: z.enum(['slab', 'cylinder', 'sphere']),
    P: positive(),
    R: positive(),
    length: text(),
  });
export const constantRow = () =>
  z.strictObject({ id: id(), quantity: text(), value: positive(), unit: text(), ...sourcedColumns() });
export const practiceRow = () =>
  z.strictObject({
    id: id(),
    low: z.number(),
    likely: z.number(),
    high: z.number(),
    unit: text(),
    ...practiceColumns(),
  });

export type RuleRow = RowOf<typeof ruleRow>;
export type PackRow = RowOf<typeof packRow>;
export type BlanchingRow = RowOf<typeof blanchingRow>;
export type BlanchingWaterRow = RowOf<typeof blanchingWaterRow>;
export type BeforeFreezingRow = RowOf<typeof beforeFreezingRow>;
export type ThermalRow = RowOf<typeof thermalRow>;
export type UsUnitRow = RowOf<typeof usUnitRow>;
export type ComponentRow = RowOf<typeof componentRow>;
export type CorrelationRow = RowOf<typeof correlationRow>;

export const RULES = asTable<RuleRow>(ruleTable).rows;
export const HEADSPACE = asTable<RowOf<typeof headspaceRow>>(headspaceTable).rows;
export const PACKS: readonly PackRow[] = [packTable, recalledPackTable].flatMap((json) => asTable<PackRow>(json).rows);
export const BLANCHING: readonly BlanchingRow[] = [blanchingTable, blanchingRecalledTable].flatMap(
  (json) => asTable<BlanchingRow>(json).rows,
);
export const BLANCHING_WATER = asTable<BlanchingWaterRow>(blanchingWaterTable).rows;
export const BEFORE_FREEZING = asTable<BeforeFreezingRow>(beforeTable).rows;
export const THERMAL_VEGETABLES = asTable<ThermalRow>(vegetableTable).rows;
export const THERMAL_US = asTable<UsUnitRow>(usUnitTable).rows;
export const THERMAL_TEXTBOOK = asTable<ThermalRow>(textbookTable).rows;
export const RECALLED_POINTS = asTable<RowOf<typeof recalledPointRow>>(recalledPointTable).rows;
export const COMPONENTS = asTable<ComponentRow>(componentTable).rows;
export const CORRELATIONS = asTable<CorrelationRow>(correlationTable).rows;
export const SHAPES = asTable<RowOf<typeof shapeRow>>(shapeTable).rows;
export const CONSTANTS = asTable<RowOf<typeof constantRow>>(constantTable).rows;
export const PRACTICE = asTable<RowOf<typeof practiceRow>>(practiceTable).rows;

/** The row of this id; ids come from our own code, so a missing one is met by every test. */
export function rowOf<Row extends { readonly id: string }>(rows: readonly Row[], rowId: string): Row {
  const found = rows.find((row) => row.id === rowId);
  if (found === undefined) throw new Error(`no row ${rowId} in the tables of freezing`);
  return found;
}
/** The rule of this id. */
export const rule = (ruleId: string): RuleRow => rowOf(RULES, ruleId);
/** The formula of this id. */
export const correlation = (formula: string): CorrelationRow => rowOf(CORRELATIONS, formula);

const cautions = cautionTable as readonly Caution[];
/** A caution of this module. */
export const freezingCaution = (name: string): Caution => rowOf(cautions, name);
