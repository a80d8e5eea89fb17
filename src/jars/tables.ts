/** The tables of jars: schemas, types and rows. */
import * as z from 'zod/mini';
import loadsJson from '../../data/jars/canner-loads.json';
import cannersJson from '../../data/jars/canners.json';
import vacuumsJson from '../../data/jars/container-vacuums.json';
import headspaceJson from '../../data/jars/headspace.json';
import headspaceScopesJson from '../../data/jars/headspace-scopes.json';
import leastLoadsJson from '../../data/jars/least-loads.json';
import practiceJson from '../../data/jars/practice.json';
import sealJson from '../../data/jars/seal-rules.json';
import vacuumFactsJson from '../../data/jars/vacuum-facts.json';
import { forReaders, id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';

/** Jars are counted. */
const jars = () => z.int().check(z.positive());
const ids = () => z.array(id()).check(z.minLength(1));

export const headspaceRow = () =>
  z.strictObject({
    id: id(),
    rule: id(),
    printed: text(),
    least_in: positive(),
    most_in: positive(),
    ...sourcedColumns(),
  });
export const headspaceScopeRow = () =>
  z.strictObject({
    id: id(),
    rule: id(),
    foods: z.exactOptional(ids()),
    forms: z.exactOptional(ids()),
    withoutForm: z.exactOptional(z.literal(true)),
    withoutFood: z.exactOptional(z.literal(true)),
    except: z.exactOptional(ids()),
    ...practiceColumns(),
  });
export const cannerLoadRow = () =>
  z.strictObject({
    id: id(),
    canner: z.enum(['usual', 'small', 'large']),
    jar: text(),
    least: jars(),
    most: jars(),
    ...sourcedColumns(),
  });
export const cannerRow = () =>
  z.strictObject({
    id: id(),
    name: text(),
    synonyms: z.array(text()).check(z.minLength(1)),
    methods: z.array(text()),
    load: z.enum(['usual', 'small', 'large']),
    pressure: z.boolean(),
    ...practiceColumns(),
  });
export const leastLoadRow = () => z.strictObject({ id: id(), jar: text(), least: jars(), ...sourcedColumns() });
export const sealRuleRow = () =>
  z.strictObject({
    id: id(),
    text: text(),
    least: z.exactOptional(z.number()),
    most: z.exactOptional(z.number()),
    unit: z.exactOptional(text()),
    ...sourcedColumns(),
  });
export const vacuumFactRow = () =>
  z.strictObject({
    id: id(),
    text: forReaders(text()),
    value: z.exactOptional(z.number()),
    unit: z.exactOptional(text()),
    ...sourcedColumns(),
  });
export const containerVacuumRow = () =>
  z.strictObject({
    id: id(),
    container: text(),
    least: positive(),
    most: positive(),
    unit: z.enum(['inHg', 'mmHg']),
    ...sourcedColumns(),
  });
export const practiceRow = () => z.strictObject({ id: id(), value: positive(), unit: text(), ...practiceColumns() });

export type HeadspaceRow = RowOf<typeof headspaceRow>;
export type HeadspaceScopeRow = RowOf<typeof headspaceScopeRow>;
export type CannerRow = RowOf<typeof cannerRow>;
export type SealRuleRow = RowOf<typeof sealRuleRow>;

export const headspaceRows = asTable<HeadspaceRow>(headspaceJson).rows;
export const headspaceScopeRows = asTable<HeadspaceScopeRow>(headspaceScopesJson).rows;
export const cannerRows = asTable<CannerRow>(cannersJson).rows;
export const loadRows = asTable<RowOf<typeof cannerLoadRow>>(loadsJson).rows;
export const leastLoadRows = asTable<RowOf<typeof leastLoadRow>>(leastLoadsJson).rows;
export const sealRows = asTable<SealRuleRow>(sealJson).rows;
export const vacuumFactRows = asTable<RowOf<typeof vacuumFactRow>>(vacuumFactsJson).rows;
export const containerVacuumRows = asTable<RowOf<typeof containerVacuumRow>>(vacuumsJson).rows;
export const practiceRows = asTable<RowOf<typeof practiceRow>>(practiceJson).rows;

/** The row of this id; ids come from our own code, so a missing one is a mistake that every test meets. */
export function rowOf<Row extends { readonly id: string }>(rows: readonly Row[], rowId: string): Row {
  const found = rows.find((row) => row.id === rowId);
  if (found === undefined) throw new Error(`no row ${rowId} in the tables of jars`);
  return found;
}
/** The seal rule of this id. */
export const sealRule = (rule: string): SealRuleRow => rowOf(sealRows, rule);
