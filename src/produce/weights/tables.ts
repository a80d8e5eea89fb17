/** The tables of weights: of measures, of pieces, and of containers. */
import * as z from 'zod/mini';
import recalledJson from '../../../data/produce/containers-recalled.json';
import kitchenJson from '../../../data/produce/kitchen-weights.json';
import legalJson from '../../../data/produce/legal-bushels.json';
import preservedJson from '../../../data/produce/weights-preserved.json';
import rawJson from '../../../data/produce/weights-raw.json';
import { forReaders, id, positive, type RowOf, sourcedColumns, text } from '../../sources/columns';
import { asTable } from '../../sources/table';
import { ndb, pair } from '../columns';

const measure = () => ({
  ndb: ndb(),
  amount: positive(),
  measure: forReaders(text()),
  grams: positive(),
  unit: z.exactOptional(z.enum(['cup', 'tbsp', 'tsp', 'fl oz'])),
});
export const rawWeightRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    ...measure(),
    piece: z.exactOptional(z.enum(['small', 'medium', 'large', 'usual'])),
    forms: z.exactOptional(z.array(id())),
    ...sourcedColumns(),
  });
export const preservedWeightRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    form: z.exactOptional(id()),
    ...measure(),
    filled: z.exactOptional(z.array(id())),
    typical: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
export const kitchenWeightRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    printed: text(),
    g_per_cup: z.exactOptional(positive()),
    g_per_tbsp: z.exactOptional(positive()),
    g_per_tsp: z.exactOptional(positive()),
    ...sourcedColumns(),
  });
export const legalBushelRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    state: text(),
    printed: forReaders(text()),
    lb: positive(),
    ...sourcedColumns(),
  });
export const recalledContainerRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    container: text(),
    called: z.exactOptional(z.array(text())),
    printed: forReaders(z.exactOptional(text())),
    lb: pair(),
    ...sourcedColumns(),
  });

export type RawWeightRow = RowOf<typeof rawWeightRow>;
export type PreservedWeightRow = RowOf<typeof preservedWeightRow>;
export type KitchenWeightRow = RowOf<typeof kitchenWeightRow>;
export type LegalBushelRow = RowOf<typeof legalBushelRow>;
export type RecalledContainerRow = RowOf<typeof recalledContainerRow>;

export const rawWeights = asTable<RawWeightRow>(rawJson).rows;
export const preservedWeights = asTable<PreservedWeightRow>(preservedJson).rows;
export const kitchenWeights = asTable<KitchenWeightRow>(kitchenJson).rows;
export const legalBushels = asTable<LegalBushelRow>(legalJson).rows;
export const recalledContainers = asTable<RecalledContainerRow>(recalledJson).rows;
