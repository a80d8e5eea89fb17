import type { ScheduledTask } from '../request/daySchedule';

/** One rule that an order of work breaks. */
export interface BrokenRule {
  /**
   * `overlap`: more of something is in use than there is; `order`: a step before the one it needs; `wait`: something
   * waits too long; `hours`: work when nobody is there; `work`: not the work that the plan's products need.
   */
  readonly rule: 'overlap' | 'order' | 'wait' | 'hours' | 'work';
  /** The minute it shows at, from the start of the first day. */
  readonly minute: number;
  /** What is wrong, in words. */
  readonly text: string;
}

/** Kilograms and minutes nearer than this are the same. */
export const NEAR = 1e-6;

export const rule = (of: BrokenRule['rule'], minute: number, text: string): BrokenRule => ({ rule: of, minute, text });

export const by = (edge: 'startMinute' | 'endMinute') => (one: ScheduledTask, other: ScheduledTask) =>
  one[edge] - other[edge];
