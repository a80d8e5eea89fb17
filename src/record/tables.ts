/** The published tables of records, labels and reviews: the schema of each, which the tests run, and its rows. */
import * as z from 'zod/mini';
import addedTable from '../../data/record/added-kinds.json';
import coolingTable from '../../data/record/cooling-limits.json';
import evidenceTable from '../../data/record/evidence.json';
import labelTable from '../../data/record/label-rules.json';
import mavTable from '../../data/record/maximum-allowable-variation.json';
import mistakeTable from '../../data/record/mistake-rules.json';
import mixedTable from '../../data/record/mixed-foods.json';
import recordTable from '../../data/record/record-rules.json';
import tneTable from '../../data/record/tolerable-negative-error.json';
import vitaminTable from '../../data/record/vitamin-c-stored.json';
import { type FoodKind, KINDS } from '../foods/tables';
import { id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable, type Practice } from '../sources/table';

export const RECORD_TOPICS = [
  'acidified food',
  'filing',
  'lot code',
  'every record',
  'hazard plan',
  'batch record',
] as const;

const some = () => z.exactOptional(positive());
const ids = () => z.array(id()).check(z.minLength(1));

export const recordRuleRow = () =>
  z.strictObject({
    id: id(),
    topic: z.enum(RECORD_TOPICS),
    text: text(),
    figure: some(),
    unit: z.exactOptional(z.enum(['year', 'pH', 'day', 'h', 'log'])),
    field: z.exactOptional(text()),
    ...sourcedColumns(),
  });
export const mistakeRow = () => z.strictObject({ id: id(), text: text(), hours: some(), ...sourcedColumns() });
export const mavRow = () =>
  z.strictObject({
    id: id(),
    over_g: some(),
    to_g: positive(),
    over_lb: some(),
    to_lb: positive(),
    mav_g: some(),
    mav_lb: some(),
    mav_oz: z.exactOptional(text()),
    mav_share: some(),
    ...sourcedColumns(),
  });
export const tneRow = () =>
  z.strictObject({ id: id(), over: positive(), to: some(), tne_g: some(), tne_percent: some(), ...sourcedColumns() });
export const labelRuleRow = () =>
  z.strictObject({ id: id(), text: text(), least_lb: some(), below_lb: some(), ...sourcedColumns() });
export const coolingRow = () =>
  z.strictObject({
    id: id(),
    printed: text(),
    from_degF: some(),
    to_degF: positive(),
    max_hours: positive(),
    ...sourcedColumns(),
  });
export const vitaminRow = () =>
  z.strictObject({
    id: id(),
    place: text(),
    mean_degF: positive(),
    retention_percent: positive(),
    ...sourcedColumns(),
  });
/** Foods of the process tables whose printed recipe holds several foods. */
export const mixedRow = () =>
  z.strictObject({ id: id(), food: id(), forms: z.exactOptional(ids()), ...practiceColumns() });
/** Kinds of foods that are no part of a printed recipe for a single food. */
export const addedRow = () => z.strictObject({ ...practiceColumns(), id: z.enum(KINDS) });

const evidenceColumns = () => ({
  id: id(),
  line: id(),
  how: z.array(z.enum(['jars', 'dried', 'oil', 'other'])).check(z.minLength(1)),
  where: z.array(z.enum(['shelf', 'refrigerator', 'freezer'])).check(z.minLength(1)),
  kinds: z.array(z.enum(['any', ...KINDS])).check(z.minLength(1)),
  measure: z.enum([
    'tested process',
    'same food',
    'seals',
    'moisture',
    'water activity',
    'meat heat',
    'oil recipe',
    'refrigerator',
    'freezer',
    'use by',
  ]),
  most: some(),
  unit: z.exactOptional(text()),
  foods: z.exactOptional(ids()),
  field: text(),
  wanted: text(),
  next: text(),
  remedies: z.array(z.enum(['refrigerate', 'freeze', 'discard'])).check(z.minLength(1)),
  hours: some(),
});
export const evidenceRow = () =>
  z.union([
    z.strictObject({ ...evidenceColumns(), reason: text(), ...sourcedColumns() }),
    z.strictObject({ ...evidenceColumns(), ...practiceColumns(), reason: text() }),
  ]);

export type MavRow = RowOf<typeof mavRow>;
export type TneRow = RowOf<typeof tneRow>;
export type EvidenceRow = RowOf<typeof evidenceRow>;

export const RECORD_RULES = asTable<RowOf<typeof recordRuleRow>>(recordTable).rows;
export const MISTAKES = asTable<RowOf<typeof mistakeRow>>(mistakeTable).rows;
export const VARIATIONS = asTable<MavRow>(mavTable).rows;
export const ERRORS = asTable<TneRow>(tneTable).rows;
export const LABEL_RULES = asTable<RowOf<typeof labelRuleRow>>(labelTable).rows;
export const COOLING = asTable<RowOf<typeof coolingRow>>(coolingTable).rows;
export const VITAMIN_C = asTable<RowOf<typeof vitaminRow>>(vitaminTable).rows;
export const MIXED = asTable<RowOf<typeof mixedRow>>(mixedTable).rows;
export const EVIDENCE = asTable<EvidenceRow>(evidenceTable).rows;
const added = asTable<Practice & { readonly id: FoodKind }>(addedTable).rows;
/** Kinds of foods that make another recipe of a process for a single food. */
export const STRANGE_KINDS: ReadonlySet<string> = new Set(added.map((row) => row.id));

/** The row of this id; ids come from our own code, and the tests ask for each. */
export function rowNamed<Row extends { readonly id: string }>(rows: readonly Row[], rowId: string): Row {
  const found = rows.find((row) => row.id === rowId);
  if (found === undefined) throw new Error(`no row ${rowId}`);
  return found;
}

/** A figure that the row is known to hold. */
export function figureOf<Row, K extends keyof Row>(row: Row, key: K): NonNullable<Row[K]> {
  const value = row[key];
  if (value === undefined || value === null) throw new Error(`no ${String(key)} in the row`);
  return value;
}
