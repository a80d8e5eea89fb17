/** Errors, and ends of ranges, that no source prints: `data/water-activity/assumptions.json`. Internal. */
import assumptionsJson from '../../data/water-activity/assumptions.json';
import { asTable } from '../sources/table';
import type { TableRow } from './schemas';

const values = new Map(asTable<TableRow<'assumptions'>>(assumptionsJson).rows.map(({ id, value }) => [id, value]));

/** The figure of this id; the id comes from our own code, so a missing one is met by every test. */
export function assumed(id: string): number {
  const value = values.get(id);
  if (value === undefined) throw new Error(`no assumption ${id}`);
  return value;
}
