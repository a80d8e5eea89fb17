import type { Quantity } from '../../quantity/types';

/** The order of work of a day, as the plan answers it. Minutes count from the start of the first day. */
export interface DaySchedule {
  /** Time of day of minute 0, in minutes after midnight. */
  readonly startClock: number;
  /** In the order of their starts. */
  readonly tasks: readonly ScheduledTask[];
  /** The hours of work. In a break on one day what takes no hands goes on; between two days only what needs nobody. */
  readonly windows: readonly Window[];
  /** Everything that tasks use, and how much of it there is; without an amount it is not limited. */
  readonly resources: readonly {
    /** Name of the resource. */
    readonly resource: string;
    /** How much of it there is. */
    readonly available?: number;
    /** Minute until which it still does what it did before the day. */
    readonly busyUntilMinute?: number;
  }[];
  /**
   * When the last work of hands, pots and canners ends and dryer and freezer are loaded. To pack what comes dry later,
   * and to load the freeze-dryer again, is not counted.
   */
  readonly makespan: number;
  /** No order of the same work ends before this. */
  readonly lowerBound: number;
  /** How much longer than that the order found is, in hours of work against the bound's. */
  readonly gap: number;
  /** When the last dryer, freeze-dryer or freezer load is done; a crock goes on past it. */
  readonly allDoneMinute: number;
}

/** One stretch of the hours of work; breaks part a day into several. */
export interface Window {
  /** The day it belongs to, from 0. */
  readonly day: number;
  /** Minute it begins at, from the start of the first day. */
  readonly startMinute: number;
  /** Minute it ends at. */
  readonly endMinute: number;
}

/** What a task does. */
export const TASK_KINDS = [
  'heat canner', // water in a canner, before its first load of a day
  'prepare', // washing, peeling, cutting
  'stand', // by itself: salted, limed, dripping; before it is cooked or at the end
  'heat water', // water in a pot, before a vegetable is blanched in it
  'blanch', // batch after batch in the same water; each with its return to the boil
  'cook',
  'keep hot', // in its pot, on a low burner, until the last jar of the last load is filled
  'fill', // jars filled, wiped, lidded; bags and boxes packed; trays spread
  'load', // jars lifted into the canner
  'can', // one canner load, jars in to jars out
  'unload', // jars lifted out again
  'dry',
  'freeze-dry',
  'freeze',
  'ferment', // in a crock
  'pack', // what comes dry off its trays
] as const;
export type TaskKind = (typeof TASK_KINDS)[number];

/** One thing that is done, from a minute to another. */
export interface ScheduledTask {
  /** What is done. */
  readonly kind: TaskKind;
  /** What is at hand: the lots that are prepared, or else the product; of a canner to be heated, its name. */
  readonly what: string;
  /** The products that it is for. */
  readonly forProducts: readonly string[];
  /** Raw weight of what is prepared. */
  readonly raw?: Quantity<'mass'>;
  /** How many are filled, canned or laid on trays, or how many batches are blanched. */
  readonly units?: {
    /** How many. */
    readonly count: number;
    /** What is counted, in the singular. */
    readonly unit: string;
  };
  /** Minute it starts at, from the start of the first day. */
  readonly startMinute: number;
  /** Minute it ends at. */
  readonly endMinute: number;
  /** What it keeps busy meanwhile. */
  readonly uses: readonly Use[];
  /** Who does it, where the kitchen names its people: as many as the hands it takes. */
  readonly who?: readonly string[];
  /** Whether it goes on by itself, overnight as well. */
  readonly unattended: boolean;
  /** Present where only some of a portion is prepared: the minute at which its next part is. Other work comes between. */
  readonly goesOnMinute?: number;
  /** Present where it goes on through a break: nobody needs to be at it then. */
  readonly throughBreak?: true;
  /** Minutes that it must go on at the least: what stands or ferments by its recipe. */
  readonly leastMinutes?: number;
  /**
   * In the rest of a day: how far the food was when the rest began, `prepared`, `hot` or `filled`; or `running`, a load
   * whose end this is.
   */
  readonly was?: 'prepared' | 'hot' | 'filled' | 'running';
  /** Minute since which it was that; below 0 where that was before the start. */
  readonly sinceMinute?: number;
}

/** What a task keeps busy from its start to its end: `hands` 2, `burners` 1, `12 quart pot` 1, `dryer trays` 7. */
export interface Use {
  /** Name of the resource, as in `resources`. */
  readonly resource: string;
  /** How much of it: pieces, or kg of the freezer. */
  readonly used: number;
}
