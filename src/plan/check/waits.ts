import table from '../../../data/plan/waits.json';
import type { Basis } from '../../sources/basis';
import { practiceBasis } from '../../sources/table';

/** What may wait in an order of work. */
export type WaitId = 'filled-jar' | 'filled-tray' | 'prepared' | 'hot-canner' | 'hot-sauce';

interface WaitRow {
  readonly id: string;
  readonly what: string;
  readonly minutes: number;
}

const { rows } = table as { readonly rows: readonly WaitRow[] };
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
