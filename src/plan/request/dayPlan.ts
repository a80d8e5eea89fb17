import type { Money, Quantity, Range } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import type { Instead, Reason } from '../../sources/no';
import type { Aim } from '../program/program';
import type { DaySchedule } from './daySchedule';
import type { Make } from './planInput';

type Mass = Quantity<'mass'>;

/** The answer of `planDay`. */
export type DayPlan = FeasibleDay | InfeasibleDay;

export interface InfeasibleDay {
  readonly feasible: false;
  readonly reason: string;
  /** The musts that cannot be met together. */
  readonly conflicts: readonly string[];
  readonly leftOut: readonly LeftOut[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

export interface FeasibleDay {
  readonly feasible: true;
  readonly invented: boolean;
  readonly aim: Aim;
  readonly elevation: Quantity<'length'>;
  /**
   * The value of the aim: worth; kg used; minutes of work, or the cost of each promised unit, as negative numbers; or
   * the sum by weights.
   */
  readonly objective: number;
  /** Whether the plan is proven the best; otherwise how much better one could still be. */
  readonly provenBest: boolean;
  readonly gap: number;
  readonly products: readonly PlannedProduct[];
  readonly leftFresh: readonly LotShare[];
  readonly leftOut: readonly LeftOut[];
  readonly notMade: readonly NotMade[];
  readonly ready: readonly ToReady[];
  readonly limits: readonly Limit[];
  /** What may limit the plan too: the search was cut short before it found a gain or ruled one out. */
  readonly limitsNotComputed: readonly string[];
  /** How the plan leans on the yields. */
  readonly yields: readonly YieldKnown[];
  /** What to do when. */
  readonly schedule: DaySchedule;
  readonly work: Work;
  readonly cost?: DayCost;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** How much of a lot goes somewhere. */
export interface LotShare {
  readonly lot: string;
  readonly produce: string;
  readonly raw: Mass;
}

export interface PlannedProduct {
  readonly name: string;
  readonly make: Make;
  readonly produce: string;
  readonly form?: string;
  /** Raw produce from each lot; trimmings where it is made of them. */
  readonly from: readonly LotShare[];
  readonly raw: Mass;
  /** Prepared produce; for a product of trimmings, the trimmings themselves. */
  readonly ready: Range<Mass>;
  readonly trimmings?: Range<Mass>;
  readonly units: Units;
  /** Minutes of one pair of hands. */
  readonly handsMinutes: HandsMinutes;
  /** What stove, dryer, freeze-dryer and freezer take for it, kWh; none where nothing is heated or frozen. */
  readonly energy?: Range<Quantity<'energy'>>;
  readonly recipe: readonly Ingredient[];
  readonly jars?: JarWork;
  readonly pots?: PotWork;
  readonly trays?: TrayWork;
  readonly packs?: PackWork;
  readonly steps: readonly string[];
  readonly cost?: ProductCost;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** What is counted: promised at the poor end of the yields, readied for at the rich end. */
export interface Units {
  /** `pint jar`, `bag of 8 oz`, `sheet`. */
  readonly unit: string;
  readonly promised: number;
  /** At the likely yield. */
  readonly likely: number;
  readonly ready: number;
}

/** Minutes of one pair of hands, at the rich end of the yields. */
export interface HandsMinutes {
  /** Washing, peeling, cutting. */
  readonly prepare: number;
  /** Filling and lidding, into the canner and out of it; spreading or bagging. */
  readonly fill: number;
  /** At the pot, where what cooks must be stirred. */
  readonly stir: number;
}

/** What an ingredient is there for. */
export type IngredientRole = 'acid' | 'fruit' | 'liquid' | 'pectin' | 'spice' | 'starch' | 'sugar' | 'vegetable';

export interface Ingredient {
  readonly what: string;
  readonly role: IngredientRole;
  readonly amount: Quantity<'mass'> | Quantity<'volume'>;
  /** The same by the cup or by weight, for a kitchen that measures the other way. */
  readonly or?: Quantity<'mass'> | Quantity<'volume'>;
  /** It is bought for the day, since the pantry of a request does not hold it. */
  readonly toBuy?: true;
  readonly note?: string;
}

export interface JarWork {
  readonly jar: string;
  readonly headspace: Quantity<'length'>;
  readonly fillVolume: Quantity<'volume'>;
  readonly netMass?: Mass;
  readonly pack: string;
  readonly method: string;
  readonly minutes: number;
  readonly pressure?: Quantity<'pressure'>;
  readonly acid?: string;
  readonly sterilizeJars: boolean;
  readonly loads: readonly CannerLoad[];
  /** One load, from lighting the burner to unloading. */
  readonly loadMinutes: Range<number>;
}

/** Loads of one process in one canner; several products may share them. */
export interface CannerLoad {
  readonly canner: string;
  readonly loads: number;
  readonly jarsPerLoad: number;
  /** One load in this canner at the slow end, from lighting the burner to unloading. */
  readonly minutesEach: number;
  readonly sharedWith: readonly string[];
}

export interface PotWork {
  readonly batches: readonly { readonly pot: string; readonly batches: number; readonly most: Quantity<'volume'> }[];
  readonly minutesEach: number;
  /** All that is cooked, at the rich end of the yields, with the room it needs to foam. */
  readonly volume: Quantity<'volume'>;
}

export interface TrayWork {
  readonly where: 'dryer' | 'freeze-dryer';
  readonly trays: number;
  readonly perTray: Mass;
  /** Weight of what is on one full tray when it is done, the tray not counted. */
  readonly stopWeight?: Range<Mass>;
  readonly temperature?: Quantity<'temperature'>;
  readonly hours?: Range<Quantity<'time'>>;
  readonly test?: string;
  readonly dried: Range<Mass>;
}

export interface PackWork {
  readonly size: Mass;
  readonly headspace?: Quantity<'length'>;
  readonly room: Quantity<'volume'>;
}

/** A product that cannot be made here. */
export interface LeftOut {
  /** Name of the product. */
  readonly product: string;
  /** Why it is left out; `code` is a short fixed word, `text` the same in words. */
  readonly reason: Reason;
  /** What to do instead, best first. */
  readonly instead: readonly Instead[];
}

/** A product that could be made, and is not. */
export interface NotMade {
  /** Name of the product. */
  readonly product: string;
  /** Why it is not made; `code` is a short fixed word, `text` the same in words. */
  readonly reason: Reason;
}

/** Something to have at hand before the fruit is cut. */
export interface ToReady {
  readonly what: string;
  readonly amount: number | Quantity<'mass'> | Quantity<'volume'>;
  /**
   * What has to be bought besides the stock that was given. Jars, lids and bags are not limited where no stock of them
   * was given, and have none; what recipes take always has it unless the pantry holds enough.
   */
  readonly short?: number | Quantity<'mass'> | Quantity<'volume'>;
}

/**
 * What it would add to the aim to know the yield of a fruit beforehand, by where in its range it lies. Never below 0: the
 * plan stands whatever the fruit gives.
 */
export interface YieldKnown {
  readonly produce: string;
  readonly poor?: number;
  readonly likely?: number;
  readonly rich?: number;
  /** Where the search was cut short: the figure above is what it would add at least, and this at the most. */
  readonly atMost?: { readonly poor?: number; readonly likely?: number; readonly rich?: number };
  /** Where the search found nothing and had not ruled it out. */
  readonly notComputed?: readonly ('poor' | 'likely' | 'rich')[];
}

/** What one more of something would give. */
export interface Limit {
  readonly what: string;
  readonly used: number;
  readonly available: number;
  readonly oneMore: string;
  /** What it adds to the aim, by the sums of minutes: proven, or with `atMost` the least it adds. */
  readonly gain: number;
  /** Where the search was cut short: the most it could add. */
  readonly atMost?: number;
}

export interface Work {
  readonly hands: { readonly minutes: number; readonly available: number };
  readonly burners: { readonly minutes: number; readonly available: number };
}

/** What money goes into; supplies are jars, lids, bags and what recipes take from the pantry. */
export type CostKind = 'produce' | 'supplies' | 'energy' | 'hands';

/** The lines of all products add up to the day's kinds, and each product's to its total, to the cent. */
export interface ProductCost {
  readonly lines: readonly { readonly what: string; readonly of: CostKind; readonly amount: Money }[];
  readonly total: Money;
  /** For each jar, bag or sheet promised; these three are rounded up to the cent. */
  readonly perUnit: Money;
  /** For an ounce of what is promised, or 100 g on a metric day; none where no net weight is known. */
  readonly perNet?: {
    readonly amount: Money;
    readonly per: Mass;
    /** The net weight is no weighed one: of a jar of fruit a kilogram for each litre it is filled with. */
    readonly estimated?: true;
  };
  /** For the serving that was asked about, or else a customary one. */
  readonly perServing?: {
    readonly amount: Money;
    readonly serving: Mass | Quantity<'volume'>;
    readonly customary?: true;
  };
}

/** What is used up on the day, and the produce that is left, which was paid for too. */
export interface DayCost {
  readonly produceUsed: Money;
  readonly produceLeft: Money;
  readonly supplies: Money;
  readonly energy: Money;
  readonly hands: Money;
  readonly total: Money;
}
