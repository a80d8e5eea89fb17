/** Figures of the jam pot and the syrup that are in no other table. */
import * as z from 'zod/mini';
import json from '../../data/sugar/pot-rules.json';
import type { Basis } from '../sources/basis';
import { id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable, basisOf, practiceBasis } from '../sources/table';

const figure = () => ({ id: id(), about: text(), value: positive(), unit: text() });
export const potRuleRow = () =>
  z.union([
    z.strictObject({ ...figure(), ...sourcedColumns() }),
    z.strictObject({ ...figure(), ...practiceColumns() }),
  ]);
type PotRule = RowOf<typeof potRuleRow>;
const rows = asTable<PotRule>(json).rows;

/** The figure of this id; ids come from our own code, so a missing one is met by every test. */
export function potRule(name: string): PotRule {
  const found = rows.find((row) => row.id === name);
  if (found === undefined) throw new Error(`no rule ${name}`);
  return found;
}
/** The basis line of a figure; `of` is the path of the answer's field that rests on it. */
export function potBasis(name: string, of: string): Basis {
  const row = potRule(name);
  return row.obtained === 'common-practice' ? practiceBasis(of, row.about) : basisOf(row, of, row.about);
}

/** The cups of juice that set when they are cooked at a time. */
export const juiceAtATime = () => ({
  low: potRule('juice-at-a-time-low').value,
  high: potRule('juice-at-a-time-high').value,
});
