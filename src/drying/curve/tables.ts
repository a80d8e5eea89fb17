/** The tables of drying curves: their schemas and rows. */
import * as z from 'zod/mini';
import diffusivityTable from '../../../data/drying/curve/diffusivity.json';
import modelTable from '../../../data/drying/curve/kinetics-models.json';
import thinLayerTable from '../../../data/drying/curve/thin-layer.json';
import type { Basis } from '../../sources/basis';
import { forReaders, id, type RowOf, sourcedColumns } from '../../sources/columns';
import { asTable, basisOf } from '../../sources/table';
import { endsColumn, rowOf } from '../rows';

/** The formula of a model. */
export const modelRow = () => z.strictObject({ id: id(), model: z.string(), formula: z.string(), ...sourcedColumns() });
export type ModelRow = RowOf<typeof modelRow>;
const modelRows = asTable<ModelRow>(modelTable).rows;
/** The basis line of a model, by its id. */
export const modelBasis = (wanted: string, of: string): Basis => {
  const row = rowOf(modelRows, wanted);
  return basisOf(row, of, row.formula);
};

/** The constants of a model in a study. */
export const thinLayerRow = () =>
  z.strictObject({
    id: id(),
    food: z.string(),
    printed: forReaders(z.string()),
    model: z.string(),
    formula: z.string(),
    a: z.exactOptional(z.number()),
    b: z.exactOptional(z.number()),
    c: z.exactOptional(z.number()),
    k: z.exactOptional(z.number()),
    n: z.exactOptional(z.number()),
    SSE: z.number(),
    r: z.number(),
    RMSE: z.number(),
    ...sourcedColumns(),
  });
export type ThinLayerRow = RowOf<typeof thinLayerRow>;
const thinLayerRows = asTable<ThinLayerRow>(thinLayerTable).rows;
/** The basis line of a model that only the study prints. */
export const studiedBasis = (wanted: string, of: string): Basis => {
  const row = rowOf(thinLayerRows, wanted);
  return basisOf(row, of, row.formula);
};

const tried = () => z.array(z.number()).check(z.minLength(1));

/** What a study of drying found. */
export const studyRow = () =>
  z.strictObject({
    id: id(),
    food: z.exactOptional(z.string()),
    foods: z.exactOptional(z.array(z.string())),
    form: z.exactOptional(z.string()),
    printed: z.string(),
    D_m2_per_s: z.exactOptional(endsColumn()),
    D0_m2_per_s: z.exactOptional(endsColumn()),
    temperature_degC: z.exactOptional(tried()),
    thickness_mm: z.exactOptional(tried()),
    airVelocity_m_per_s: z.exactOptional(tried()),
    Ea_kJ_per_mol: z.exactOptional(z.number()),
    EaEnds_kJ_per_mol: z.exactOptional(endsColumn()),
    Ea_kJ_per_kg: z.exactOptional(z.number()),
    bestModel: z.exactOptional(z.string()),
    method: z.exactOptional(z.string()),
    relativeHumidity_percent: z.exactOptional(endsColumn()),
    timeSaving_percent: z.exactOptional(endsColumn()),
    osmoticFall_percent: z.exactOptional(endsColumn()),
    ...sourcedColumns(),
  });
export type StudyRow = RowOf<typeof studyRow>;
export const studyRows = asTable<StudyRow>(diffusivityTable).rows;
