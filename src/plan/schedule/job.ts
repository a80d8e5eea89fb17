import type { Quantity } from '../../quantity/types';
import type { Cook, Held } from '../request/activity';
import type { ScheduledTask, TaskKind } from '../request/daySchedule';

/** Some kg of a lot's trimmings. */
export interface Trimmings {
  readonly lot: number;
  readonly kg: number;
}

/** What a portion does in a pot. */
export interface Cooking {
  /** All of it, from the food in to the food out. */
  readonly minutes: number;
  /** In the pot at once. */
  readonly litres: number;
  /** Whether one pair of hands stays at the pot. */
  readonly stirred: boolean;
  /** Where it is blanched: the minutes its water takes to boil before, and the batches that go in one after the other. */
  readonly blanch?: { readonly heat: number; readonly batches: number };
}

/** Whole minutes of some kg of raw food in one pot. */
export const potMinutes = ({ minutes, minutesPerKg = 0 }: Cook, kg: number): number =>
  Math.ceil(minutes + minutesPerKg * kg - 1e-6);

/** Minutes that pot and burner are busy before the food goes in. */
export const heatOf = (cook: Cooking | undefined): number => cook?.blanch?.heat ?? 0;

/** One batch of one product: prepared, cooked if it is cooked, and filled, without a wait that spoils it. */
export interface Portion {
  readonly product: string;
  /** What is prepared, in words: `marked-down peaches`; and its raw weight. */
  readonly what: string;
  readonly raw: Quantity<'mass'>;
  readonly filled: NonNullable<ScheduledTask['units']>;
  /** Minutes of one pair of hands to prepare it, and to fill it. */
  readonly prepare: number;
  readonly fill: number;
  /** Minutes that it stands by itself after it is prepared, no less, before it is cooked or filled. */
  readonly soak?: number;
  readonly cook?: Cooking;
  /** What falls off when it is prepared, at the poor end. */
  readonly drops: readonly Trimmings[];
  /** Where it is in work already: since when, and when it goes on. */
  readonly held?: Held;
}

/** A canner that can run a load, and how. */
export interface CannerChoice {
  readonly canner: number;
  /** Minutes of the load, jars in to jars out. */
  readonly minutes: number;
  /** Minutes to heat its water before the first load of a day. */
  readonly warmUp: number;
  /** Whether it may boil on through a break; otherwise somebody looks after it. */
  readonly throughBreaks?: boolean;
}

/** One load of jars, to be run in any of these canners. */
export interface CanStep {
  readonly kind: 'can';
  readonly jars: NonNullable<ScheduledTask['units']>;
  /** Minutes of one pair of hands to put the jars in, and again to lift them out. */
  readonly lift: number;
  readonly canners: readonly CannerChoice[];
}

/** What goes on by itself: in the dryer, the freeze-dryer, the freezer, a crock. */
export interface QuietStep {
  readonly kind: Extract<TaskKind, 'dry' | 'freeze-dry' | 'freeze' | 'ferment' | 'stand'>;
  readonly units: NonNullable<ScheduledTask['units']>;
  /** Of what it goes into: trays of the dryer, kg of the freezer's day, the one freeze-dryer; of a crock nothing. */
  readonly amount: number;
  readonly minutes: number;
  /** Minutes of one pair of hands to take it off the trays and pack it. */
  readonly pack: number;
}

/** A further load that is filled from a pot which is kept hot. */
export interface LaterLoad {
  readonly filled: Portion['filled'];
  /** Minutes of one pair of hands to fill it. */
  readonly fill: number;
  readonly into: CanStep;
}

/** One pot for several loads: the portion is all of it, and `into` the first of them. */
export interface Together {
  /** Minutes that the pot may be kept hot, from the end of the cooking to the last jar filled. */
  readonly hot: number;
  readonly more: readonly LaterLoad[];
  /** The same work with a pot for each load, for a day on which it does not fit together. */
  readonly apart: readonly Job[];
}

/** Work that belongs together: portions, and what they go into all at once. */
export interface Job {
  readonly portions: readonly Portion[];
  readonly into?: CanStep | QuietStep;
  readonly together?: Together;
  /** Trimmings that must have fallen off before it can start. */
  readonly needs: readonly Trimmings[];
}

/** A canner load that runs already when the rest of a day begins. */
export interface RunningLoad {
  readonly products: readonly string[];
  readonly canner: number;
  readonly jars: number;
  /** Minute that its jars are out. */
  readonly until: number;
  /** Minutes of one pair of hands to lift them out. */
  readonly lift: number;
}

/** What the day has to work with. */
export interface Means {
  readonly hands: number;
  readonly burners: number;
  /** Each pot: its name and the litres that may be cooked in it at once. */
  readonly pots: readonly { readonly label: string; readonly litres: number }[];
  readonly canners: readonly string[];
  /** For each canner the pot that is the same vessel, by its place; none where it is a vessel by itself. */
  readonly vessels?: readonly (number | undefined)[];
  readonly trays: number;
  /** Kg that the freezer freezes in a day; without a figure it is not limited. */
  readonly freezerKg?: number;
  /** Time of day of minute 0, in minutes after midnight. */
  readonly start: number;
  /** Minutes from the start until which machines still run; nothing where they are free. */
  readonly busy?: {
    readonly dryer?: number;
    readonly freezeDryer?: number;
    /** By the place of the canner. */
    readonly canners?: readonly (number | undefined)[];
  };
  /** Who the hands are, where the kitchen names them: as many as `hands`. */
  readonly names?: readonly string[];
  /** Loads that run already. */
  readonly running?: readonly RunningLoad[];
  /** Canners whose water is hot when the rest of a day begins. */
  readonly hotCanners?: readonly number[];
}

/** Minutes that a machine is busy with what goes on by itself; a crock is none. */
export const machineMinutes = ({ into }: Job): number =>
  into === undefined || into.kind === 'can' || into.kind === 'ferment' || into.kind === 'stand' ? 0 : into.minutes;

/** Minutes of one job with nothing beside it: a day that long after the last window always has room for all. */
export const minutesAlone = (job: Job): number =>
  job.together === undefined
    ? minutesOf(job)
    : Math.max(
        minutesOf(job),
        job.together.apart.reduce((sum, each) => sum + minutesOf(each) + 1, 0),
      );

const minutesOf = ({ portions, into }: Job): number =>
  portions.reduce(
    (total, { prepare, soak = 0, cook, fill }) =>
      total + Math.ceil(prepare) + soak + heatOf(cook) + (cook?.minutes ?? 0) + Math.ceil(fill),
    0,
  ) +
  (into === undefined
    ? 0
    : into.kind === 'can'
      ? Math.max(...into.canners.map((each) => each.minutes + each.warmUp))
      : 0);
