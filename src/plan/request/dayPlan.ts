import type { Money, Quantity, Range } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import type { Instead, Reason } from '../../sources/no';
import type { DaySchedule } from './daySchedule';
import type { Aim } from './planFields';
import type { LotShare, PlannedProduct } from './plannedProduct';

/** The answer of `planDay`. */
export type DayPlan = FeasibleDay | InfeasibleDay;

/** The answer where not all you require can be made. */
export interface InfeasibleDay {
  /** There is no plan. */
  readonly feasible: false;
  /** Why there is no plan; `code` is a short fixed word, `text` the same in words. */
  readonly reason: Reason;
  /** The fewest requirements that cannot be met together, in words. */
  readonly conflicts: readonly string[];
  /**
   * The most you could ask for instead, for each product in `conflicts`, with everything else you require kept. A product
   * is not listed where there would be no plan even without it, or where the search was cut short before it found one.
   */
  readonly most: readonly MostPromised[];
  /** Products that cannot be made here, and why. */
  readonly leftOut: readonly LeftOut[];
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The most that one product can promise, everything else you require kept. */
export interface MostPromised {
  /** Name of the product. */
  readonly name: string;
  /** How many you asked for. */
  readonly least: number;
  /** How many you can ask for: with this as its `least` there is a plan. */
  readonly count: number;
  /** Whether more is ruled out; otherwise a plan with more may exist. */
  readonly proven: boolean;
}

/** The answer where there is a plan. */
export interface FeasibleDay {
  /** There is a plan. */
  readonly feasible: true;
  /** Whether you said that the scenario is invented. */
  readonly invented: boolean;
  /** What the plan makes the most of. */
  readonly aim: Aim;
  /** Of the kitchen, as you gave it. */
  readonly elevation: Quantity<'length'>;
  /**
   * The value of the aim: worth; kg used; minutes of work, or the cost of each promised unit, as negative numbers; or
   * the sum by weights.
   */
  readonly objective: number;
  /** Whether no plan can be better; never so of a plan that makes nothing, which says in `nothingMade` what would help. */
  readonly provenBest: boolean;
  /**
   * How much better a plan could still be, as a share of `objective`: 0 when proven best; 1 of a plan that makes nothing
   * where something may fit.
   */
  readonly gap: number;
  /** What keeps the plan from being proven best, and what would close the gap; none where it is. */
  readonly gapCause?: GapCause;
  /** Present where nothing is made: why, and what would let something in. */
  readonly nothingMade?: NothingMade;
  /** What is made. */
  readonly products: readonly PlannedProduct[];
  /** What is left of each lot and why, what you put aside and what is not sound not counted. */
  readonly leftFresh: readonly LeftFresh[];
  /** What you put aside of each lot to eat fresh. */
  readonly keptFresh: readonly LotShare[];
  /** What is not sound of each lot, and is thrown away. */
  readonly notSound: readonly LotShare[];
  /** Products that cannot be made here, and why. */
  readonly leftOut: readonly LeftOut[];
  /** Products that could be made and are not, and why. */
  readonly notMade: readonly NotMade[];
  /** What to have at hand before the fruit is cut. */
  readonly haveReady: readonly ToReady[];
  /** What limited the plan, the largest gain first; only where you asked for `oneMore`. */
  readonly limits?: readonly Limit[];
  /**
   * What may limit the plan too: the search was cut short before it found a gain or ruled one out. Only where you asked
   * for `oneMore`.
   */
  readonly limitsNotComputed?: readonly string[];
  /** What it would add to know each yield beforehand; only where you asked for `oneMore`. */
  readonly yields?: readonly YieldKnown[];
  /** What to do when. */
  readonly schedule: DaySchedule;
  /** In the plan of the rest of a day: minute that it is now, from the start of the first day. */
  readonly nowMinute?: number;
  /** In the plan of the rest of a day: what is finished, or runs by itself, of each product. It is in no other figure. */
  readonly done?: readonly FinishedSoFar[];
  /** In the plan of the rest of a day: food in work that does not go on, and what to do with it. */
  readonly setAside?: readonly SetAside[];
  /** How busy hands and burners are. */
  readonly work: Work;
  /** What the day costs, where something has a price. */
  readonly costs?: DayCost;
  /** Where the figures come from: those of the day and of all products. */
  readonly basis: readonly Basis[];
  /** What to mind on the day, dangers first; each product has its own besides. */
  readonly cautions: readonly Caution[];
}

/** What keeps a plan from being proven best. */
export interface GapCause {
  /** `order of work`: the best plan by the sums of minutes runs late. `search`: the search was cut short. */
  readonly kind: 'order of work' | 'search';
  /** Minutes that the best plan by the sums runs past the hours, where an order of it was found. */
  readonly late?: number;
  /** The machines and vessels that it still keeps busy then; hands or burners where nothing else is. */
  readonly stillBusy?: readonly string[];
  /** The same in words, with what would close the gap. */
  readonly text: string;
}

/** Why a plan makes nothing. */
export interface NothingMade {
  /** Why, in words. */
  readonly text: string;
  /** What would let something in, for each product that was looked at; or for the kitchen where none was. */
  readonly instead: readonly Instead[];
}

/** What is finished of a product by now. */
export interface FinishedSoFar {
  /** Name of the product. */
  readonly name: string;
  /** Raw weight of what went in. */
  readonly raw: Quantity<'mass'>;
  /** Jars, bags or sheets filled; 0 where you named no number. */
  readonly filled: number;
  /** What one is called. */
  readonly unit: string;
  /** What several are called. */
  readonly plural: string;
}

/** Food in work that does not go on. */
export interface SetAside {
  /** Name of the product that it was for. */
  readonly name: string;
  /** How far it was. */
  readonly howFar: 'prepared' | 'hot' | 'filled';
  /** Its lot and raw weight. */
  readonly fromLot: LotShare;
  /** Jars, bags or trays filled of it, where you named some. */
  readonly filled?: number;
  /** Minutes that it had waited by now. */
  readonly waited: number;
  /** Why it does not go on; `code` is a short fixed word, `text` the same in words. */
  readonly reason: Reason;
  /** What to do with it. */
  readonly instead: readonly Instead[];
}

/** A product that cannot be made here. */
export interface LeftOut {
  /** Name of the product. */
  readonly name: string;
  /** Why it is left out; `code` is a short fixed word, `text` the same in words. */
  readonly reason: Reason;
  /** What to do instead, best first. */
  readonly instead: readonly Instead[];
}

/** What is left of a lot. */
export interface LeftFresh extends LotShare {
  /** Why no product takes it; `code` is a short fixed word, `text` the same in words, product by product. */
  readonly reason: Reason;
}

/** A product that could be made, and is not. */
export interface NotMade {
  /** Name of the product. */
  readonly name: string;
  /** Why it is not made; `code` is a short fixed word, `text` the same in words. */
  readonly reason: Reason;
}

/** Something to have at hand before the fruit is cut. */
export interface ToReady {
  /** What it is, in words. */
  readonly what: string;
  /** How many, or how much. */
  readonly needed: number | Quantity<'mass'> | Quantity<'volume'>;
  /**
   * What to buy besides the stock you gave. Jars, lids and bags are not limited where you gave no stock of them, and have
   * none; what recipes take always has it unless the pantry holds enough.
   */
  readonly short?: number | Quantity<'mass'> | Quantity<'volume'>;
}

/** What you could gain at each end of a yield. */
export interface YieldEnds {
  /** If it is at its low end. */
  readonly poor?: number;
  /** If it is the likely one. */
  readonly likely?: number;
  /** If it is at its high end. */
  readonly rich?: number;
}

/**
 * What it would add to the aim to know the yield of a fruit beforehand, by where in its range it is. Never below 0: the
 * plan stands whatever the fruit gives.
 */
export interface YieldKnown extends YieldEnds {
  /** Trade name of the food. */
  readonly food: string;
  /** Where the search was cut short: the figure above is the least it would add, and this the most. */
  readonly atMost?: YieldEnds;
  /** Where the search found nothing and had not ruled it out. */
  readonly notComputed?: readonly ('poor' | 'likely' | 'rich')[];
}

/** What one more of something would give. */
export interface Limit {
  /** What there is too little of, in words. */
  readonly what: string;
  /** How much of it the plan uses. */
  readonly used: number;
  /** How much of it there is. */
  readonly available: number;
  /** How much more was tried, in words. */
  readonly tried: string;
  /** What that adds to the aim, by the sums of minutes: proven, or with `mostGain` the least it adds. */
  readonly gain: number;
  /** Where the search was cut short: the most it could add. */
  readonly mostGain?: number;
}

/** Minutes used and minutes there are. */
export interface MinutesUsed {
  /** Used by the plan. */
  readonly minutes: number;
  /** All there are: the hours of work times how many. */
  readonly available: number;
}

/** How busy hands and burners are. */
export interface Work {
  /** Of all pairs of hands. */
  readonly handsBusy: MinutesUsed;
  /** Of all burners. */
  readonly burnersBusy: MinutesUsed;
}

/** What is used up on the day, and the food that goes into nothing, which was paid for too. */
export interface DayCost {
  /** Food in the products. */
  readonly foodUsed: Money;
  /** Food that the plan leaves fresh. */
  readonly foodLeft: Money;
  /** Food put aside to eat fresh, as you asked. */
  readonly foodKeptFresh: Money;
  /** Food that was not sound and is thrown away. */
  readonly foodNotSound: Money;
  /** Jars over their lives, lids, bags, and what recipes take from the pantry. */
  readonly supplies: Money;
  /** Stove, dryer, freeze-dryer and freezer, at the likely figure. */
  readonly energyCost: Money;
  /** Work of hands, by your wage. */
  readonly handsCost: Money;
  /** All of these. */
  readonly total: Money;
  /**
   * The total by how much the food gives and the machines take: low at what you can count on and the least energy,
   * likely at the likely counts, high at all that you get ready for and the most energy. Rounded up to the cent.
   */
  readonly totalRange: Range<Money>;
  /** What the plan uses and you named no price for: it is in none of these. */
  readonly notPriced: readonly string[];
}
