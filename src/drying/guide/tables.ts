/** The tables of the guide: their schemas, their rows, and the settings that other rooms ask for too. */
import * as z from 'zod/mini';
import fatTable from '../../../data/drying/guide/fat.json';
import guideTable from '../../../data/drying/guide/guide.json';
import jerkyTable from '../../../data/drying/guide/jerky.json';
import leatherTable from '../../../data/drying/guide/leather.json';
import hoursTable from '../../../data/drying/guide/leather-hours.json';
import pasteurizingTable from '../../../data/drying/guide/pasteurizing.json';
import pretreatmentTable from '../../../data/drying/guide/pretreatments.json';
import rehydrationTable from '../../../data/drying/guide/rehydration.json';
import rehydrationGeneralTable from '../../../data/drying/guide/rehydration-general.json';
import settingsTable from '../../../data/drying/guide/settings.json';
import yieldTable from '../../../data/drying/guide/yields.json';
import { forReaders, id, positive, type RowOf, sourcedColumns } from '../../sources/columns';
import { asTable } from '../../sources/table';
import { endsColumn, foodColumns, type ItemRow, itemRow, numberOf, rowOf } from '../rows';

const kindColumn = () => z.enum(['fruit', 'vegetable']);
const minutesColumn = () => z.nullable(endsColumn());

/** One publication's line for one food. */
export const guideRow = () =>
  z.strictObject({
    id: id(),
    food: z.string(),
    forms: z.exactOptional(z.array(z.string()).check(z.minLength(1))),
    printed: z.string(),
    kind: kindColumn(),
    thickness_in: z.exactOptional(endsColumn()),
    preparation: z.nullable(z.string()),
    steamBlanch_minutes: minutesColumn(),
    waterBlanch_minutes: minutesColumn(),
    syrupBlanch_minutes: z.nullable(z.number()),
    checkSkins_seconds: z.exactOptional(z.strictObject({ sweet: z.number(), sour: z.number() })),
    sulfur_minutes: z.exactOptional(z.number()),
    hours: z.nullable(endsColumn()),
    drynessTest: z.nullable(z.string()),
    ...sourcedColumns(),
    notes: z.exactOptional(z.string()),
  });
export type GuideRow = RowOf<typeof guideRow>;
export const guideRows = asTable<GuideRow>(guideTable).rows;

/** What fresh produce gives dried. */
export const yieldRow = () =>
  z.strictObject({
    id: id(),
    ...foodColumns(),
    fresh_lb: z.exactOptional(z.number()),
    dried_lb: z.exactOptional(endsColumn()),
    dried_pints: z.exactOptional(endsColumn()),
    freshPerDried: z.exactOptional(endsColumn()),
    rawPerProduct: z.exactOptional(endsColumn()),
    freshMoisture_percent: z.exactOptional(z.number()),
    endMoisture_percent: z.exactOptional(endsColumn()),
    afterRehydration_percent: z.exactOptional(endsColumn()),
    ...sourcedColumns(),
  });
export type YieldRow = RowOf<typeof yieldRow>;
export const yieldRows = asTable<YieldRow>(yieldTable).rows;

/** A food that holds much fat. */
export const fatRow = () =>
  z.strictObject({
    id: id(),
    ...foodColumns(),
    fat_percent: z.number().check(z.positive(), z.maximum(100)),
    ...sourcedColumns(),
  });
export type FatRow = RowOf<typeof fatRow>;
export const fatRows = asTable<FatRow>(fatTable).rows;

/** A reading of a dip. */
export const dipRow = () =>
  z.strictObject({
    id: id(),
    name: z.string(),
    synonyms: z.array(z.string()),
    ingredients: z.array(
      z.strictObject({ name: z.string(), amount: endsColumn(), unit: z.enum(['tsp', 'tbsp', 'cup']) }),
    ),
    water: z.nullable(z.strictObject({ value: z.number(), unit: z.enum(['cup', 'quart', 'gallon']) })),
    soak_minutes: minutesColumn(),
    soakByForm_minutes: z.exactOptional(z.record(z.string(), z.number())),
    soakByFood_minutes: z.exactOptional(z.record(z.string(), z.number())),
    foods: z.exactOptional(z.array(z.string())),
    simmer_minutes: z.exactOptional(z.number()),
    fruit_lb: z.exactOptional(z.number()),
    sulfite: z.boolean(),
    ...sourcedColumns(),
    notes: z.exactOptional(z.string()),
  });
export type DipRow = RowOf<typeof dipRow>;
export const dipRows = asTable<DipRow>(pretreatmentTable).rows;

/** A figure of fruit leather; `sheet_in` is the sheet it is for. */
export const leatherRow = () => z.extend(itemRow(), { sheet_in: z.exactOptional(z.tuple([z.number(), z.number()])) });
export type LeatherRow = RowOf<typeof leatherRow>;
const leatherRows = asTable<LeatherRow>(leatherTable).rows;
/** The row of a figure of fruit leather. */
export const leatherItem = (wanted: string): LeatherRow => rowOf(leatherRows, wanted);

/** Hours of leather by its thickness. */
export const leatherHoursRow = () =>
  z.strictObject({
    id: id(),
    where: z.enum(['dryer', 'oven']),
    thickness_in: z.number().check(z.positive(), z.maximum(0.25)),
    mean_in: z.exactOptional(positive()),
    food: z.exactOptional(z.string()),
    printed: forReaders(z.exactOptional(z.string())),
    hours: z.tuple([z.nullable(z.number()), z.number()]),
    ...sourcedColumns(),
  });
export type LeatherHoursRow = RowOf<typeof leatherHoursRow>;
/** From the thinnest sheet to the thickest. */
export const leatherHours = [...asTable<LeatherHoursRow>(hoursTable).rows].sort(
  (one, other) => one.thickness_in - other.thickness_in,
);

/** A treatment that kills insects and their eggs. */
export const pasteurizingRow = () =>
  z.strictObject({
    id: id(),
    by: z.enum(['freezer', 'oven']),
    kinds: z.array(kindColumn()).check(z.minLength(1)),
    served: z.boolean(),
    temperature_degF: z.nullable(z.number()),
    hours_min: z.exactOptional(z.number()),
    minutes: z.exactOptional(z.number()),
    maxDepth_in: z.exactOptional(z.number()),
    maxTrays: z.exactOptional(z.number()),
    ...sourcedColumns(),
  });
export type PasteurizingRow = RowOf<typeof pasteurizingRow>;
export const pasteurizingRows = asTable<PasteurizingRow>(pasteurizingTable).rows;

/** A step of jerky. */
export const jerkyRow = () =>
  z.strictObject({
    id: id(),
    step: z.string(),
    foods: z.exactOptional(z.array(z.string())),
    forms: z.exactOptional(z.array(z.string())),
    temperature_degF: z.nullable(z.tuple([z.number(), z.nullable(z.number())])),
    atLeast: z.exactOptional(z.strictObject({ value: positive(), unit: z.enum(['h', 'min']) })),
    thickest_in: z.exactOptional(positive()),
    keeps: z.exactOptional(z.string()),
    offered: z.boolean(),
    ...sourcedColumns(),
  });
export type JerkyRow = RowOf<typeof jerkyRow>;
const offeredJerky = asTable<JerkyRow>(jerkyTable).rows.filter(({ offered }) => offered);
/** A step of jerky that may be offered; an unsafe direction of the table is never found. */
export const jerkyStep = (wanted: string): JerkyRow => rowOf(offeredJerky, wanted);

/** Water that dried food takes up again. */
export const rehydrationRow = () =>
  z.strictObject({
    id: id(),
    ...foodColumns(),
    water_cups_per_cup_dried: positive(),
    soak_hours_min: positive(),
    ...sourcedColumns(),
  });
export type RehydrationRow = RowOf<typeof rehydrationRow>;
export const rehydrationRows = asTable<RehydrationRow>(rehydrationTable).rows;
/** A general figure of soaking. */
export const rehydrationItemRow = () => z.extend(itemRow(), { soak_hours: z.exactOptional(z.number()) });
const rehydrationItems = asTable<ItemRow>(rehydrationGeneralTable).rows;
/** The row of a general figure of soaking. */
export const rehydrationItem = (wanted: string): ItemRow => rowOf(rehydrationItems, wanted);

const settings = asTable<ItemRow>(settingsTable).rows;
/** The row of a dryer setting, a target moisture or a finishing rule. */
export const setting = (wanted: string): ItemRow => rowOf(settings, wanted);
/** The most fat that food to be dried may hold, percent. */
export const mostFat = (): number => numberOf(setting('fat-most'));
