/** The published tables of acid, pickles and ferments, with their row types; the tests prove each against its schema. */
import cautionTable from '../../data/acid/cautions.json';
import fermentSaltTable from '../../data/acid/ferment-salt.json';
import fermentTimeTable from '../../data/acid/ferment-time.json';
import foodPhTable from '../../data/acid/food-ph.json';
import recalledPhTable from '../../data/acid/food-ph-recalled.json';
import recipeTable from '../../data/acid/pickle-recipes.json';
import ruleTable from '../../data/acid/pickle-rules.json';
import saltMeasureTable from '../../data/acid/salt-measures.json';
import type { Quantity } from '../quantity/types';
import type { Caution } from '../sources/basis';
import { asTable, type Sourced } from '../sources/table';

export interface FoodPhRow extends Sourced {
  readonly food: string;
  readonly base: string;
  readonly pHLow: number;
  readonly pHHigh: number;
  readonly prepared?: boolean;
}
/** What is done to the vegetables before the covering liquid, and drained: the amounts of one round. */
export interface DrainedStep {
  readonly what: string;
  readonly salt?: Quantity<'volume'>;
  readonly water?: Quantity<'volume'>;
  readonly ice?: Quantity<'volume'>;
  readonly vinegar?: Quantity<'volume'>;
  readonly sugar?: Quantity<'volume'>;
  readonly rounds?: number;
  readonly time?: { readonly low: number; readonly high: number; readonly unit: 'h' | 'min' };
  /** Where the amounts are for a measure of the water, and not for the recipe. */
  readonly each?: 'gallon';
}
export interface RecipeRow extends Sourced {
  readonly recipe: string;
  readonly names: readonly string[];
  readonly makes: 'pickle' | 'relish' | 'ferment';
  /** The recipe of the process tables whose minutes are its own. */
  readonly process?: string;
  readonly produce: string;
  readonly vinegarCups: number;
  readonly waterCups: number;
  readonly lemonJuiceCups?: number;
  readonly oilCups?: number;
  /** Salt of the covering liquid; salt that is drained is in `drained`. */
  readonly salt?: Quantity<'volume'>;
  readonly saltEachJar?: { readonly salt: Quantity<'volume'>; readonly jar: string };
  readonly sugar?: Quantity<'volume'>;
  readonly drained?: readonly DrainedStep[];
  readonly also?: readonly string[];
  readonly yields?: { readonly low: number; readonly high: number; readonly jar: string };
  /** The most times the recipe is scaled, and whether only in whole batches. */
  readonly batches: { readonly most: number; readonly whole: boolean };
}
export interface PickleRuleRow extends Sourced {
  readonly rule: string;
  readonly about: string;
  readonly value?: number;
  readonly range?: readonly [low: number, high: number];
  readonly unit: string;
  readonly lowest?: number;
  readonly highest?: number;
}
export interface FermentSaltRow extends Sourced {
  readonly food: string;
  readonly use: string;
  readonly saltTbsp?: number;
  readonly saltLb?: number;
  readonly produceLb?: number;
  readonly saltTbspPerQuartWater?: number;
  readonly saltCups?: number;
  readonly waterCups?: number;
  readonly vinegarCups?: number;
  readonly percentLow?: number;
  readonly percentHigh?: number;
  readonly lacticPercentAtLeast?: number;
  /** The row is the least salt of a ferment, of the water of its brine or of all that is in the crock. */
  readonly leastOf?: readonly ('water' | 'water and produce')[];
}
export interface FermentTimeRow extends Sourced {
  readonly food: string;
  readonly what: string;
  readonly degFLow?: number;
  readonly degFHigh?: number;
  readonly weeksLow?: number;
  readonly weeksHigh?: number;
  readonly degF?: number;
  readonly outcome?: string;
  readonly monthsLow?: number;
  readonly monthsHigh?: number;
  readonly inchesLow?: number;
  readonly inchesHigh?: number;
}
export interface SaltMeasureRow extends Sourced {
  readonly crystal: string;
  readonly gramsLow: number;
  readonly gramsHigh: number;
  readonly measure: 'tsp' | 'tbsp' | 'cup';
}

export const FOOD_PH = asTable<FoodPhRow>(foodPhTable).rows;
export const RECALLED_PH = asTable<FoodPhRow>(recalledPhTable).rows;
export const RECIPES = asTable<RecipeRow>(recipeTable).rows;
export const PICKLE_RULES = asTable<PickleRuleRow>(ruleTable).rows;
export const FERMENT_SALT = asTable<FermentSaltRow>(fermentSaltTable).rows;
export const FERMENT_TIME = asTable<FermentTimeRow>(fermentTimeTable).rows;
export const SALT_MEASURES = asTable<SaltMeasureRow>(saltMeasureTable).rows;

/** The first row that passes; what is looked for comes from our own code, so a missing row is met by every test. */
export function rowWhere<Row>(rows: readonly Row[], test: (row: Row) => boolean, what: string): Row {
  const found = rows.find(test);
  if (found === undefined) throw new Error(`no ${what}`);
  return found;
}

/** A figure that the row is known to hold. */
export function printed<Row, K extends keyof Row>(row: Row, key: K): NonNullable<Row[K]> {
  const value = row[key];
  if (value === undefined || value === null) throw new Error(`no ${String(key)} in the row`);
  return value;
}

/** The rule of this fixed name. */
export const pickleRule = (id: string): PickleRuleRow =>
  rowWhere(PICKLE_RULES, ({ rule }) => rule === id, `pickle rule ${id}`);

const cautions = cautionTable as readonly Caution[];
/** A caution of this module. */
export const acidCaution = (id: string): Caution => rowWhere(cautions, (entry) => entry.id === id, `caution ${id}`);

/** Vinegar of 5 % acetic acid: what tested pickles are made with, and the least they may be made with. */
export const LEAST_ACETIC = printed(pickleRule('vinegar-acidity'), 'value') / 100;
