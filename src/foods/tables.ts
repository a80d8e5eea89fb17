/** The tables of the pantry, and what is looked up in them by id. */
import groupTable from '../../data/foods/craft-groups.json';
import craftTable from '../../data/foods/crafts.json';
import foodTable from '../../data/foods/foods.json';
import formTable from '../../data/foods/forms.json';
import knownTable from '../../data/foods/known.json';
import sharedTable from '../../data/foods/shared-names.json';

/** The kinds of food. */
export const KINDS = [
  'fruit',
  'vegetable',
  'herb',
  'mushroom',
  'nut',
  'grain',
  'meat',
  'game',
  'poultry',
  'fish',
  'shellfish',
  'egg',
  'dairy',
  'sweetener',
  'seasoning',
  'fat',
  'prepared',
  'other',
] as const;
/** A kind of food: `prepared` is a dish or a preserve with a trade name, such as sauerkraut or ketchup. */
export type FoodKind = (typeof KINDS)[number];

export interface FoodRow {
  readonly id: string;
  readonly name: string;
  /** What people call several of them; absent for a name that has no plural. */
  readonly plural?: string;
  readonly kind: FoodKind;
  readonly names: readonly string[];
  readonly wider?: readonly { readonly food: string; readonly crafts: readonly string[] }[];
  readonly asForm?: readonly { readonly name: string; readonly form: string; readonly said?: true }[];
  readonly not?: readonly { readonly name: string; readonly food: string }[];
  /** The food that is meant where `fresh` stands before a name of this one: fresh prunes are plums. */
  readonly whenFresh?: string;
}
export interface FormRow {
  readonly id: string;
  readonly name: string;
  /** How a sentence says it: `{food}` stands for the food's name, `{foods}` for its plural. */
  readonly phrase?: string;
  /** How a heading says it, where that is not the phrase. */
  readonly title?: string;
  readonly names: readonly string[];
  /** Other names that are not put beside the name of a food: an apple pie is no apple pie filling. */
  readonly alone?: readonly string[];
  /** Whether people put it beside the name of a food: `peach halves`. */
  readonly joins: boolean;
  /** The forms that a page prints together as one: `halved or sliced`. */
  readonly either?: readonly string[];
  readonly within?: readonly string[];
}
export interface CraftRow {
  readonly id: string;
  readonly what: string;
  readonly lends: boolean;
  readonly tables: readonly string[];
}
/** Crafts that are lent together, under one id. */
export interface CraftGroupRow {
  readonly id: string;
  readonly what: string;
  readonly crafts: readonly string[];
}
/** Which crafts have figures for a food; the forms are those that their tables name. */
export interface KnownRow {
  readonly food: string;
  readonly crafts: readonly { readonly craft: string; readonly forms: readonly string[] }[];
}
export interface SharedName {
  readonly name: string;
  readonly foods: readonly string[];
}

// the tests prove each table against its schema
const rowsOf = <Row>(json: unknown): readonly Row[] => (json as { readonly rows: readonly Row[] }).rows;
export const foodRows = rowsOf<FoodRow>(foodTable);
export const formRows = rowsOf<FormRow>(formTable);
export const craftRows = rowsOf<CraftRow>(craftTable);
export const craftGroupRows = rowsOf<CraftGroupRow>(groupTable);
export const knownRows = rowsOf<KnownRow>(knownTable);
export const sharedNames = rowsOf<SharedName>(sharedTable);

const lazy = <Value>(make: () => Value): (() => Value) => {
  let made: Value | undefined;
  return () => {
    made ??= make();
    return made;
  };
};
const foodsById = lazy(() => new Map(foodRows.map((row) => [row.id, row])));
const formsById = lazy(() => new Map(formRows.map((row) => [row.id, row])));
const knownById = lazy(() => new Map(knownRows.map((row) => [row.food, row])));

/** An id of our own tables that is not there is a mistake of the library. */
function rowOf<Row>(rows: ReadonlyMap<string, Row>, id: string, what: string): Row {
  const row = rows.get(id);
  if (row === undefined) throw new Error(`no ${what} has the id ${id}`);
  return row;
}
/** The food of this id; the id comes from a table, never from a caller. */
export const foodOf = (id: string): FoodRow => rowOf(foodsById(), id, 'food');
/** The form of this id; the id comes from a table, never from a caller. */
export const formOf = (id: string): FormRow => rowOf(formsById(), id, 'form');
/** What the tables know of a food themselves, by craft. */
export const knownOf = (id: string): KnownRow['crafts'] => knownById().get(id)?.crafts ?? [];

/** The trade name of a food: `green bean` of `green-bean`. */
export const nameOf = (id: string): string => foodOf(id).name;
/** The name of a form: `pie filling` of `pie-filling`. */
export const formName = (id: string): string => formOf(id).name;
