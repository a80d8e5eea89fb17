import * as z from 'zod/mini';
import json from '../../data/sugar/sweeteners.json';
import { fail } from '../errors/StillroomError';
import { readFood } from '../foods/fields';
import { nameOf } from '../foods/tables';
import { reading } from '../quantity/fields';
import type { Basis } from '../sources/basis';
import { forReaders, id, positive, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';

export const sweetenerRow = () =>
  z.strictObject({
    id: id(),
    food: id(),
    printed: forReaders(text()),
    /** Dissolved solids, g in 100 g. */
    solids: positive(),
    sugars: positive(),
    gramsPerCup: positive(),
    ...sourcedColumns(),
  });
export type SweetenerRow = RowOf<typeof sweetenerRow>;
const rows = asTable<SweetenerRow>(json).rows;

const NAMES = rows.map(({ food }) => nameOf(food));

/** A sweetener, by any name it goes by. */
export const sweetenerField = () =>
  reading<string, SweetenerRow>((given) => {
    const found = readFood(given);
    const row = rows.find(({ food }) => food === found.id);
    return row ?? fail('UNKNOWN_NAME', '', given, `a sweetener: ${NAMES.join(', ')}`, { options: NAMES });
  });

/** The sweetener of this id of the pantry. */
export const sweetener = (food: string): SweetenerRow => {
  const found = rows.find((row) => row.food === food);
  // ids come from our own code: a missing one is a mistake that every test meets
  if (found === undefined) throw new Error(`no sweetener ${food}`);
  return found;
};
/** Grams in a US cup of a sweetener. */
export const cupOf = (food: string): number => sweetener(food).gramsPerCup;
/** The basis line of the weight of a cup of sugar; `of` is the path of the answer's field. */
export const sugarBasis = (of: string): Basis => basisOf(sweetener('sugar'), of, 'weight of a cup of sugar');
