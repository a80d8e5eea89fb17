import * as z from 'zod/mini';
import table from '../../../data/plan/pot-fill.json';
import { MAKES, type Makes } from '../../recipes/rows/tables';
import type { Basis } from '../../sources/basis';
import { forReaders, id, practiceColumns, type RowOf } from '../../sources/columns';
import { asTable, practiceBasis } from '../../sources/table';

export const potFillRow = () =>
  z.strictObject({
    id: forReaders(id()),
    makes: z.exactOptional(z.array(z.enum(MAKES)).check(z.minLength(1))),
    share: z.number().check(z.positive(), z.lte(1)),
    foams: z.boolean(),
    ...practiceColumns(),
  });
type PotFillRow = RowOf<typeof potFillRow>;
const { rows } = asTable<PotFillRow>(table);
const plain = rows.find(({ makes }) => makes === undefined) as PotFillRow;
const rowFor = (makes: Makes | undefined): PotFillRow =>
  rows.find((row) => makes !== undefined && row.makes?.includes(makes)) ?? plain;

/** As much of a pot as its fill depends on. */
export interface Fillable {
  readonly fill?: number | undefined;
  readonly foaming?: number | undefined;
}

/**
 * How full a pot may be when it cooks what recipes make (`jam`, `sauce`): the cook's own `foaming` for what foams and
 * `fill` for the rest; else the share of `data/plan/pot-fill.json`, for what foams never above the cook's own `fill`.
 * Without `makes`: its plain fill, which `Capacity.pots` counts in.
 */
export function fillOf({ fill, foaming }: Fillable, makes?: Makes): number {
  const row = rowFor(makes);
  return row.foams ? (foaming ?? Math.min(row.share, fill ?? 1)) : (fill ?? row.share);
}

/**
 * Liters of plain fill that one liter of what is made takes in each of these pots, at the pot where it takes most: what
 * `Cook.litresPerKg` and `batchLitres` are multiplied by, for `Capacity.pots` counts liters of plain fill.
 */
export const roomTaken = (pots: readonly Fillable[], makes: Makes): number =>
  Math.max(1, ...(pots.length === 0 ? [{}] : pots).map((pot) => fillOf(pot) / fillOf(pot, makes)));

/** The basis line of a fill: `of` is the path of the answer's field. */
export const fillBasis = (makes: Makes | undefined, of: string): Basis =>
  practiceBasis(of, `how full a pot with ${makes ?? 'blanching water'} may be`);
