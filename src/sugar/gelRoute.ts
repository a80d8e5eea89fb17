/** By what route a fruit spread sets, and the published ranges of a gel. */
import * as z from 'zod/mini';
import chemistryJson from '../../data/sugar/gel-chemistry.json';
import type { Basis, Caution } from '../sources/basis';
import { id, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { sugarCaution } from './cautions';
import { lawBasis, ORDINARY_SOLIDS } from './jamLaw';

export const QUANTITIES = ['pH', 'finishSolids', 'calcium', 'addedPectin', 'sag'] as const;
export const gelRow = () =>
  z.strictObject({
    id: id(),
    pectin: z.enum(['high-methoxyl', 'low-methoxyl', 'preserves']),
    quantity: z.enum(QUANTITIES),
    low: z.number(),
    high: z.number(),
    unit: text(),
    /** Whether the figures are percent by weight. */
    percent: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
export type GelRow = RowOf<typeof gelRow>;
const chemistry = asTable<GelRow>(chemistryJson).rows;
/** The range of a quantity for a kind of pectin. */
export const gelRange = (pectin: GelRow['pectin'], quantity: GelRow['quantity']): GelRow | undefined =>
  chemistry.find((row) => row.pectin === pectin && row.quantity === quantity);

/** The route by which a spread sets. */
export interface SetRoute {
  /** `full sugar` sets with sugar and acid; `low sugar` and `no sugar` need a pectin and a process made for them. */
  readonly route: 'full sugar' | 'low sugar' | 'no sugar';
  /** The kind of pectin that sets at these solids. */
  readonly pectinKind: 'high-methoxyl' | 'low-methoxyl';
  /** True where the sugar does not set it and an ordinary jam's process does not fit it. */
  readonly ownProcess: boolean;
  /** The same in words. */
  readonly text: string;
}

/** The route of a spread of these solids, both shares; no sugar at all is a route by itself. */
export function routeOf(
  finishSolids: number,
  sugarToFruit: number | undefined,
): SetRoute & { readonly basis: readonly Basis[]; readonly cautions: readonly Caution[] } {
  const ordinary = gelRange('high-methoxyl', 'finishSolids') as GelRow;
  const route = sugarToFruit === 0 ? 'no sugar' : 100 * finishSolids >= ORDINARY_SOLIDS ? 'full sugar' : 'low sugar';
  const pectin = 100 * finishSolids >= ordinary.low ? 'high-methoxyl' : 'low-methoxyl';
  const ownProcess = route !== 'full sugar';
  return {
    route,
    pectinKind: pectin,
    ownProcess,
    text: ownProcess
      ? `At ${Number((100 * finishSolids).toFixed(1))} % solids it is no ordinary jam: take a tested ${route} recipe with its own pectin and its own process, or freeze it.`
      : 'Sugar, acid and pectin set it, and it keeps as a jam does.',
    basis: [
      lawBasis('route', 'least solids of a jam'),
      basisOf(ordinary, 'pectinKind', 'solids at which ordinary pectin sets'),
    ],
    cautions: ownProcess ? [sugarCaution('own-process')] : [],
  };
}
