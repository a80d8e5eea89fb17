/** The tables of the pantry, and what is looked up in them by id. */
import * as z from 'zod/mini';
import groupTable from '../../data/foods/craft-groups.json';
import craftTable from '../../data/foods/crafts.json';
import foodTable from '../../data/foods/foods.json';
import formTable from '../../data/foods/forms.json';
import knownTable from '../../data/foods/known.json';
import sharedTable from '../../data/foods/shared-names.json';
import { forReaders, id, type RowOf, text } from '../sources/columns';

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

/** The id is the name in kebab case: code makes it of the name, and the table writes it out for its readers. */
const names = () => ({ id: forReaders(id()), name: text() });
const some = <T extends z.core.SomeType>(item: T) => z.array(item).check(z.minLength(1));
export const foodRow = () =>
  z.strictObject({
    ...names(),
    /** What people call several of them; absent for a name that has no plural. */
    plural: z.exactOptional(text()),
    kind: z.enum(KINDS),
    names: z.array(text()),
    wider: z.exactOptional(some(z.strictObject({ food: id(), crafts: some(id()) }))),
    asForm: z.exactOptional(some(z.strictObject({ name: text(), form: id(), said: z.exactOptional(z.literal(true)) }))),
    not: z.exactOptional(some(z.strictObject({ name: text(), food: id() }))),
    /** The food that is meant where `fresh` stands before a name of this one: fresh prunes are plums. */
    whenFresh: z.exactOptional(id()),
    reason: forReaders(z.exactOptional(text())),
  });
/** Words with a gap for the food's name. */
const phrase = () => z.string().check(z.regex(/\{foods?\}/));
export const formRow = () =>
  z.strictObject({
    ...names(),
    /** How a sentence says it: `{food}` stands for the food's name, `{foods}` for its plural. */
    phrase: z.exactOptional(phrase()),
    /** How a heading says it, where that is not the phrase. */
    title: z.exactOptional(phrase()),
    names: z.array(text()),
    /** Other names that are not put beside the name of a food: an apple pie is no apple pie filling. */
    alone: z.exactOptional(some(text())),
    /** Whether people put it beside the name of a food: `peach halves`. */
    joins: z.boolean(),
    /** The forms that a page prints together as one: `halved or sliced`. */
    either: z.exactOptional(z.array(id()).check(z.minLength(2))),
    within: z.exactOptional(some(id())),
  });
export const craftRow = () =>
  z.strictObject({ id: id(), what: text(), lends: z.boolean(), tables: forReaders(some(text())) });
/** Crafts that are lent together, under one id. */
export const craftGroupRow = () =>
  z.strictObject({ id: id(), what: text(), crafts: z.array(id()).check(z.minLength(2)) });
/** Which crafts have figures for a food; the forms are those that their tables name. */
export const knownRow = () =>
  z.strictObject({ food: id(), crafts: some(z.strictObject({ craft: id(), forms: z.array(id()) })) });
export const sharedNameRow = () =>
  z.strictObject({ ...names(), foods: z.array(id()).check(z.minLength(2)), reason: forReaders(text()) });

interface WithId {
  /** The name in kebab case. */
  readonly id: string;
}
export type FoodRow = RowOf<typeof foodRow> & WithId;
export type FormRow = RowOf<typeof formRow> & WithId;
export type CraftRow = RowOf<typeof craftRow>;
export type CraftGroupRow = RowOf<typeof craftGroupRow>;
export type KnownRow = RowOf<typeof knownRow>;
export type SharedName = RowOf<typeof sharedNameRow> & WithId;

// the tests prove each table against its schema
const rowsOf = <Row>(json: unknown): readonly Row[] => (json as { readonly rows: readonly Row[] }).rows;
const kebab = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]+/g, '-');
const withIds = <Row extends { readonly name: string }>(json: unknown): readonly (Row & WithId)[] =>
  rowsOf<Row>(json).map((row) => ({ id: kebab(row.name), ...row }));
export const foodRows = withIds<RowOf<typeof foodRow>>(foodTable);
export const formRows = withIds<RowOf<typeof formRow>>(formTable);
export const craftRows = rowsOf<CraftRow>(craftTable);
export const craftGroupRows = rowsOf<CraftGroupRow>(groupTable);
export const knownRows = rowsOf<KnownRow>(knownTable);
export const sharedNames = withIds<RowOf<typeof sharedNameRow>>(sharedTable);

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
