import * as z from 'zod/mini';
import table from '../../../data/plan/waits.json';
import type { Basis } from '../../sources/basis';
import { practiceColumns, type RowOf, text } from '../../sources/columns';
import { asTable, practiceBasis } from '../../sources/table';

/** What may wait in an order of work. */
const WAITS = ['filled-jar', 'filled-tray', 'prepared', 'hot-canner', 'hot-sauce'] as const;
export type WaitId = (typeof WAITS)[number];

export const waitRow = () =>
  z.strictObject({
    what: text(),
    from: text(),
    until: text(),
    minutes: z.int().check(z.positive()),
    ...practiceColumns(),
    id: z.enum(WAITS),
  });

const { rows } = asTable<RowOf<typeof waitRow>>(table);
const minutesOf = new Map(rows.map(({ id, minutes }) => [id, minutes]));

/** The longest wait of its kind, in minutes. */
export function longestWait(id: WaitId): number {
  const minutes = minutesOf.get(id);
  if (minutes === undefined) throw new Error(`no wait ${id}`);
  return minutes;
}

/** The basis line of the longest waits. */
export const waitsBasis = (of: string): Basis =>
  practiceBasis(of, 'how long prepared fruit, filled jars and hot water may wait');
