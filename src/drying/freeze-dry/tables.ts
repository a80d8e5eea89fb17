/** The tables of freeze-drying: their schemas and rows. */
import * as z from 'zod/mini';
import collapseTable from '../../../data/drying/freeze-dry/collapse.json';
import freezeDryingTable from '../../../data/drying/freeze-dry/freeze-drying.json';
import fruitTable from '../../../data/drying/freeze-dry/glass-transition-fruit.json';
import sugarTable from '../../../data/drying/freeze-dry/glass-transition-sugars.json';
import formulaTable from '../../../data/drying/freeze-dry/gordon-taylor.json';
import { forReaders, id, positive, type RowOf, sourcedColumns } from '../../sources/columns';
import { asTable } from '../../sources/table';
import { endsColumn, foodColumns, itemRow, rowOf } from '../rows';

const maybe = () => z.exactOptional(z.number());
const several = () => z.exactOptional(z.array(z.number()).check(z.minLength(1)));

/** A published time or condition of freeze-drying. */
export const freezeDryingRow = () =>
  z.strictObject({
    id: id(),
    food: z.exactOptional(z.string()),
    foods: z.exactOptional(z.array(z.string())),
    form: z.exactOptional(z.string()),
    printed: forReaders(z.string()),
    what: z.exactOptional(z.string()),
    sublimationShare: z.exactOptional(z.number().check(z.positive(), z.maximum(1))),
    thickness_mm: z.exactOptional(positive()),
    formula: forReaders(z.exactOptional(z.string())),
    hours_to_4_percent: maybe(),
    hours_total: z.exactOptional(z.union([z.number(), endsColumn()])),
    hours_low: maybe(),
    hours_high: maybe(),
    degF_low: maybe(),
    degF_high: maybe(),
    frozenAt_degC: maybe(),
    shelf_degC: z.exactOptional(z.union([z.number(), z.array(z.number())])),
    primaryPressure_Pa: maybe(),
    secondaryPressure_Pa: z.exactOptional(endsColumn()),
    pressure_Pa: several(),
    exposureHumidity_percent: maybe(),
    order_m2_per_s: maybe(),
    ...sourcedColumns(),
  });
export type FreezeDryingRow = RowOf<typeof freezeDryingRow>;
const freezeDryingRows = asTable<FreezeDryingRow>(freezeDryingTable).rows;
/** The row of this id. */
export const freezeDrying = (wanted: string): FreezeDryingRow => rowOf(freezeDryingRows, wanted);

/** A collapse temperature. */
export const collapseRow = () =>
  z.strictObject({ id: id(), ...foodColumns(), Tc_degC: endsColumn(), ...sourcedColumns() });
export type CollapseRow = RowOf<typeof collapseRow>;
export const collapseRows = asTable<CollapseRow>(collapseTable).rows;

/** The glass transition of a food. */
export const glassFruitRow = () =>
  z.strictObject({
    id: id(),
    ...foodColumns(),
    Tgs_degC: z.exactOptional(z.nullable(z.number())),
    k: z.exactOptional(z.nullable(z.number())),
    TgPrime_degC: z.exactOptional(z.nullable(z.number())),
    TmPrime_degC: maybe(),
    unfrozenWater_g_per_g: maybe(),
    Tg_degC: maybe(),
    TgRise_degC: z.exactOptional(endsColumn()),
    uncertainty_degC: maybe(),
    ...sourcedColumns(),
  });
export type GlassFruitRow = RowOf<typeof glassFruitRow>;
export const glassFruitRows = asTable<GlassFruitRow>(fruitTable).rows;

/** The glass transition of a dry sugar. */
export const glassSugarRow = () =>
  z.strictObject({
    id: id(),
    food: z.string(),
    sugar: z.string(),
    Tg_degC: z.number(),
    k_GordonTaylor: z.nullable(z.number()),
    ...sourcedColumns(),
  });
export type GlassSugarRow = RowOf<typeof glassSugarRow>;
export const glassSugarRows = asTable<GlassSugarRow>(sugarTable).rows;

/** An equation of the glass transition, or a constant of one. */
export const glassFormulaRow = () => z.extend(itemRow(), { slope: maybe(), intercept: maybe() });
export type GlassFormulaRow = RowOf<typeof glassFormulaRow>;
const formulaRows = asTable<GlassFormulaRow>(formulaTable).rows;
/** The row of this id. */
export const glassFormula = (wanted: string): GlassFormulaRow => rowOf(formulaRows, wanted);
