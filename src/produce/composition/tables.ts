/** The tables of what is in food: proximate parts, degrees Brix, sugar and acid. */
import * as z from 'zod/mini';
import blueberryJson from '../../../data/produce/brix-blueberry.json';
import minimumEuJson from '../../../data/produce/brix-eu-minimum.json';
import averageUsJson from '../../../data/produce/brix-us-average.json';
import minimumUsJson from '../../../data/produce/brix-us-minimum.json';
import citrusJson from '../../../data/produce/citrus-juice-acid.json';
import preservedJson from '../../../data/produce/composition-preserved.json';
import rawJson from '../../../data/produce/composition-raw.json';
import belitzJson from '../../../data/produce/sugar-acid-belitz.json';
import mcgeeJson from '../../../data/produce/sugar-acid-mcgee.json';
import { forReaders, id, type RowOf, sourcedColumns, text } from '../../sources/columns';
import { asTable } from '../../sources/table';
import { ndb, percent } from '../columns';

const proximates = () => ({
  ndb: ndb(),
  description: text(),
  water_g: percent(),
  energy_kcal: z.number().check(z.minimum(0), z.maximum(902)),
  protein_g: percent(),
  fat_g: percent(),
  carbohydrate_g: percent(),
  fiber_g: z.nullable(percent()),
  sugars_g: z.nullable(percent()),
  ash_g: percent(),
});
export const rawCompositionRow = () =>
  z.strictObject({ id: forReaders(id()), food: id(), ...proximates(), ...sourcedColumns() });
export const preservedCompositionRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    form: z.exactOptional(id()),
    ...proximates(),
    ...sourcedColumns(),
  });
export const brixRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: z.exactOptional(id()),
    form: z.exactOptional(id()),
    printed: forReaders(text()),
    degBrix: z.number().check(z.minimum(3), z.maximum(30)),
    puree: z.exactOptional(z.boolean()),
    ...sourcedColumns(),
  });
export const blueberryRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    cultivar: text(),
    degBrix: z.number().check(z.minimum(8), z.maximum(16)),
    titratableAcidity_pct: z.number().check(z.minimum(0.3), z.maximum(2)),
    ...sourcedColumns(),
  });
const acid = () => z.number().check(z.minimum(0.1), z.maximum(6));
export const citrusRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    printed: forReaders(text()),
    anhydrousCitricAcid_pct: acid(),
    ...sourcedColumns(),
  });
export const belitzRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    printed: forReaders(text()),
    dryMatter_pct: percent(),
    totalSugar_pct: percent(),
    titratableAcidity_pct: acid(),
    ...sourcedColumns(),
  });
export const mcgeeRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    printed: forReaders(text()),
    sugar_pct: percent(),
    acid_pct: acid(),
    ...sourcedColumns(),
  });

export type RawCompositionRow = RowOf<typeof rawCompositionRow>;
export type PreservedCompositionRow = RowOf<typeof preservedCompositionRow>;
export type BrixRow = RowOf<typeof brixRow>;
export type BlueberryRow = RowOf<typeof blueberryRow>;
export type CitrusRow = RowOf<typeof citrusRow>;
export type BelitzRow = RowOf<typeof belitzRow>;
export type McGeeRow = RowOf<typeof mcgeeRow>;

export const rawCompositions = asTable<RawCompositionRow>(rawJson).rows;
export const preservedCompositions = asTable<PreservedCompositionRow>(preservedJson).rows;
export const brixTables = {
  averageUS: asTable<BrixRow>(averageUsJson).rows,
  minimumUS: asTable<BrixRow>(minimumUsJson).rows,
  minimumEU: asTable<BrixRow>(minimumEuJson).rows,
};
export const blueberryRows = asTable<BlueberryRow>(blueberryJson).rows;
export const citrusRows = asTable<CitrusRow>(citrusJson).rows;
export const belitzRows = asTable<BelitzRow>(belitzJson).rows;
export const mcgeeRows = asTable<McGeeRow>(mcgeeJson).rows;
