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
import recipeTable from '../../data/acid/pickle-recipes.json';
import ruleTable from '../../data/acid/pickle-rules.json';
import saltMeasureTable from '../../data/acid/salt-measures.json';
import type { Caution } from '../sources/basis';
import { id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';

const some = () => z.exactOptional(positive());
const pH = () => z.number().check(z.gte(0), z.lte(14));
const ids = () => z.array(id()).check(z.minLength(1));
const texts = () => z.array(text());
/** The measures that pages print. */
const measure = () => z.strictObject({ value: positive(), unit: z.enum(['tsp', 'tbsp', 'cup', 'quart', 'gallon']) });
const maybeMeasure = () => z.exactOptional(measure());

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
/** What is done to the vegetables before the covering liquid, and drained: the amounts of one round. */
const drainedStep = () =>
  z.strictObject({
    /** What to do: `salt under ice`. */
    what: text(),
    /** Canning or pickling salt for one round. */
    salt: maybeMeasure(),
    /** Water for one round. */
    water: maybeMeasure(),
    /** Ice for one round. */
    ice: maybeMeasure(),
    /** Vinegar of 5 % acetic acid for one round, besides that of the covering liquid. */
    vinegar: maybeMeasure(),
    /** Sugar for one round. */
    sugar: maybeMeasure(),
    /** How often it is done, each time with these amounts; 1 when left out. */
    rounds: z.exactOptional(z.int().check(z.gte(2))),
    time: z.exactOptional(z.strictObject({ low: positive(), high: positive(), unit: z.enum(['h', 'min']) })),
    /** `gallon` where the amounts are for each gallon of the water you need, and not for the recipe. */
    each: z.exactOptional(z.literal('gallon')),
  });
export const recipeRow = () =>
  z.strictObject({
    id: id(),
    recipe: text(),
    names: texts(),
    food: id(),
    /** The form by which the process tables hold its process. */
    form: z.exactOptional(z.enum(['pickles', 'relish'])),
    makes: z.enum(['pickle', 'relish', 'ferment']),
    vegetables: text(),
    vinegarCups: positive(),
    waterCups: z.number().check(z.gte(0)),
    lemonJuiceCups: some(),
    oilCups: some(),
    /** Salt of the covering liquid; salt that is drained is in `drained`. */
    salt: maybeMeasure(),
    saltEachJar: z.exactOptional(z.strictObject({ salt: measure(), jar: z.literal('half-pint') })),
    sugar: maybeMeasure(),
    drained: z.exactOptional(z.array(drainedStep()).check(z.minLength(1))),
    also: z.exactOptional(texts().check(z.minLength(1))),
    yields: z.exactOptional(
      z.strictObject({ low: positive(), high: positive(), jar: z.enum(['pint', 'half-pint', '12-oz']) }),
    ),
    /** The most times the recipe is scaled, and whether only in whole batches. */
    batches: z.strictObject({ most: z.int().check(z.positive()), whole: z.boolean() }),
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
    printed: text(),
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
    printed: text(),
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
export type RecipeRow = RowOf<typeof recipeRow>;
export type DrainedStep = RowOf<typeof drainedStep>;
export type PickleRuleRow = RowOf<typeof ruleRow>;
export type FermentRow = RowOf<typeof fermentRow>;
export type FermentSaltRow = RowOf<typeof fermentSaltRow>;
export type FermentTimeRow = RowOf<typeof fermentTimeRow>;
export type SaltMeasureRow = RowOf<typeof saltMeasureRow>;

export const JAR_ACIDS = asTable<RowOf<typeof jarAcidRow>>(jarAcidTable).rows;
export const BRINE_FIGURES = asTable<BrineFigureRow>(brineTable).rows;
export const FOOD_PH = asTable<FoodPhRow>(foodPhTable).rows;
export const RECALLED_PH = asTable<FoodPhRow>(recalledPhTable).rows;
export const RECIPES = asTable<RecipeRow>(recipeTable).rows;
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
