import timesJson from '../../../data/plan/work-times.json';
import { MINUTES_A_JAR } from '../../process/loadTimeline';
import type { Basis } from '../../sources/basis';
import { asTable, type Practice, practiceBasis } from '../../sources/table';
import type { Make } from '../request/planInput';

/**
 * How long the work takes where the cook names no figures of their own: common practice, no source. Every figure can
 * be set on the product (`minutesPerPound`, `minutesPerUnit`, `cook`).
 */
export interface WorkTimes {
  /** Washing, cutting, peeling, pitting: minutes of one pair of hands for each raw pound. */
  readonly perPound: number;
  /** Filling, wiping, lidding or bagging: minutes for each jar or pack. */
  readonly perUnit: number;
  /** Minutes in the pot for one batch; none where nothing is cooked. */
  readonly cook?: number;
  /** One pair of hands stirs as long as it cooks. */
  readonly stir?: true;
}

/** Minutes of one pair of hands to put a jar into the canner and to lift it out again. */
export const LIFT_A_JAR = 2 * MINUTES_A_JAR.likely;

interface WorkRow extends Practice {
  readonly make: Make;
  readonly form?: string;
  readonly perPound: number;
  readonly perUnit: number;
  readonly cook?: number;
  readonly stir?: true;
}
const { rows } = asTable<WorkRow>(timesJson);

/** The customary work times of a product: by its form where that has its own, and without a pot where it is packed raw. */
export function workTimes(make: Make, form: string | undefined, pack: string | undefined): WorkTimes {
  const own = rows.filter((each) => each.make === make);
  const row = own.find((each) => each.form === form) ?? own.find((each) => each.form === undefined);
  if (row === undefined) throw new Error(`no work times for ${make}`);
  const { perPound, perUnit, cook, stir } = row;
  if (cook === undefined || (make === 'jars' && pack === 'raw')) return { perPound, perUnit };
  return { perPound, perUnit, cook, ...(stir === undefined ? {} : { stir }) };
}

export const WORK_BASIS: Basis = practiceBasis('handsMinutes', 'minutes of work and of cooking');
