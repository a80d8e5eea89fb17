/** The published tables of acid, pickles and ferments: the schema of each, which the tests run, and its rows. */
import * as z from 'zod/mini';
import jarAcidTable from '../../data/acid/acid-in-jars.json';
import brineTable from '../../data/acid/brine-figures.json';
import cautionTable from '../../data/acid/cautions.json';
import fermentSaltTable from '../../data/acid/ferment-salt.json';
import fermentTimeTable from '../../data/acid/ferment-time.json';
import fermentTable from '../../data/acid/ferments.json';
import foodPhTable from '../../data/acid/food-ph.json';
import recalledPhTable from '../../data/acid/food-ph-recalled.json';
import ruleTable from '../../data/acid/pickle-rules.json';
import saltMeasureTable from '../../data/acid/salt-measures.json';
import type { Caution } from '../sources/basis';
import { forReaders, id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';

const some = () => z.exactOptional(positive());
const pH = () => z.number().check(z.gte(0), z.lte(14));
const ids = () => z.array(id()).check(z.minLength(1));
const texts = () => z.array(text());
export const jarAcidRow = () =>
  z.strictObject({
    id: id(),
    acid: text(),
    foods: ids(),
    forms: z.array(id()),
    lowAcid: z.exactOptional(z.literal(true)),
    ...practiceColumns(),
  });
export const brineFigureRow = () =>
  z.strictObject({ id: id(), about: text(), value: positive(), unit: text(), ...sourcedColumns() });
export const foodPhRow = () =>
  z.strictObject({
    id: id(),
    food: z.exactOptional(id()),
    foods: z.exactOptional(ids()),
    form: z.exactOptional(id()),
    printed: text(),
    pHLow: pH(),
    pHHigh: pH(),
    prepared: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
export const ruleRow = () =>
  z.strictObject({
    id: id(),
    about: text(),
    value: some(),
    range: z.exactOptional(z.tuple([positive(), positive()])),
    unit: text(),
    lowest: some(),
    highest: some(),
    ...sourcedColumns(),
  });
export const fermentRow = () =>
  z.strictObject({ id: id(), foods: ids(), brine: z.exactOptional(z.literal(true)), ...practiceColumns() });
export const fermentSaltRow = () =>
  z.strictObject({
    id: id(),
    food: z.exactOptional(id()),
    printed: forReaders(text()),
    use: z.enum(['dry-salt', 'brine', 'brine-to-top-up', 'brine-in-the-weight-bag', 'share-of-the-cabbage']),
    saltTbsp: some(),
    saltLb: some(),
    produceLb: some(),
    saltTbspPerQuartWater: some(),
    saltCups: some(),
    waterCups: some(),
    vinegarCups: some(),
    percentLow: some(),
    percentHigh: some(),
    lacticPercentAtLeast: some(),
    /** The row is the least salt of a ferment, of the water of its brine or of all that is in the crock. */
    leastOf: z.exactOptional(z.array(z.enum(['water', 'water-and-food'])).check(z.minLength(1))),
    ...sourcedColumns(),
  });
export const fermentTimeRow = () =>
  z.strictObject({
    id: id(),
    food: z.exactOptional(id()),
    printed: forReaders(text()),
    what: z.enum(['time', 'too-cold-below', 'too-warm-above', 'refrigerated', 'headroom', 'brine-over']),
    degFLow: some(),
    degFHigh: some(),
    weeksLow: some(),
    weeksHigh: some(),
    degF: some(),
    outcome: z.exactOptional(text()),
    monthsLow: some(),
    monthsHigh: some(),
    inchesLow: some(),
    inchesHigh: some(),
    ...sourcedColumns(),
  });
export const saltMeasureRow = () =>
  z.strictObject({
    id: id(),
    crystal: text(),
    names: texts(),
    measure: z.enum(['tsp', 'tbsp', 'cup']),
    gramsLow: positive(),
    gramsHigh: positive(),
    ...sourcedColumns(),
  });

export type BrineFigureRow = RowOf<typeof brineFigureRow>;
export type FoodPhRow = RowOf<typeof foodPhRow>;
export type PickleRuleRow = RowOf<typeof ruleRow>;
export type FermentRow = RowOf<typeof fermentRow>;
export type FermentSaltRow = RowOf<typeof fermentSaltRow>;
export type FermentTimeRow = RowOf<typeof fermentTimeRow>;
export type SaltMeasureRow = RowOf<typeof saltMeasureRow>;

export const JAR_ACIDS = asTable<RowOf<typeof jarAcidRow>>(jarAcidTable).rows;
export const BRINE_FIGURES = asTable<BrineFigureRow>(brineTable).rows;
export const FOOD_PH = asTable<FoodPhRow>(foodPhTable).rows;
export const RECALLED_PH = asTable<FoodPhRow>(recalledPhTable).rows;
export const PICKLE_RULES = asTable<PickleRuleRow>(ruleTable).rows;
export const FERMENTS = asTable<FermentRow>(fermentTable).rows;
export const FERMENT_SALT = asTable<FermentSaltRow>(fermentSaltTable).rows;
export const FERMENT_TIME = asTable<FermentTimeRow>(fermentTimeTable).rows;
export const SALT_MEASURES = asTable<SaltMeasureRow>(saltMeasureTable).rows;

/** The first row that passes; what is looked for comes from our own code, so a missing row is met by every test. */
export function rowWhere<Row>(rows: readonly Row[], test: (row: Row) => boolean, what: string): Row {
  const found = rows.find(test);
  if (found === undefined) throw new Error(`no ${what}`);
  return found;
}
/** The row of this id. */
export const rowOf = <Row extends { readonly id: string }>(rows: readonly Row[], rowId: string, what: string): Row =>
  rowWhere(rows, (row) => row.id === rowId, `${what} ${rowId}`);

/** A figure that the row is known to hold. */
export function printed<Row, K extends keyof Row>(row: Row, key: K): NonNullable<Row[K]> {
  const value = row[key];
  if (value === undefined || value === null) throw new Error(`no ${String(key)} in the row`);
  return value;
}

/** The rule of this id. */
export const pickleRule = (rule: string): PickleRuleRow => rowOf(PICKLE_RULES, rule, 'pickle rule');

const cautions = cautionTable as readonly Caution[];
/** A caution of this module. */
export const acidCaution = (name: string): Caution => rowOf(cautions, name, 'caution');

/** Vinegar of 5 % acetic acid: what tested pickles are made with, and the least they may be made with. */
export const LEAST_ACETIC = printed(pickleRule('vinegar-acidity'), 'value') / 100;
