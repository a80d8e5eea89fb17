import type { Range } from '../../quantity/types';
import type { PantryItem } from '../../recipes/pantryItems';
import type { Window } from './daySchedule';
import type { InStock } from './stock';

/**
 * What one wanted product asks of the lots and the kitchen, in plain numbers (kg, L, min): all that the program
 * needs to know of it. `low` is always the poor end of what nature gives, `high` the rich one.
 */
export interface Activity {
  /** Place of the product in the list that was asked for. */
  readonly product: number;
  /** The lots it can be made of; empty where it is made of trimmings, which then come from `trimmingsOf`. */
  readonly supplies: readonly Supply[];
  /** Whether it takes whole fruit or what falls off when other products are made. */
  readonly madeOf: 'fruit' | 'trimmings';
  /** What one promised unit is worth, in the objective's own measure. */
  readonly worth: number;
  readonly least: number;
  readonly most: number;
  /** The smallest batch worth the trouble: promise none, or at least this many. */
  readonly smallest?: number;
  /** Stock that one unit takes. */
  readonly stockPerUnit: readonly InStock[];
  /** Kg of what the pantry holds for each unit readied, for each kg of prepared food and of raw food. */
  readonly pantry?: Readonly<Partial<Record<PantryItem, PantryTaken>>>;
  /** Units promised of each batch, where only whole batches are made: as many as `cook.batchLitres` gives at least. */
  readonly unitsPerBatch?: number;
  /** Electricity of one tray in a machine whose power is known, kWh. */
  readonly energyPerTray?: Range<number>;
  /** What is paid for each unit readied and each tray, in the request's currency. */
  readonly costPerUnit?: number;
  readonly costPerTray?: number;
  /** Minutes of hands for each kg of raw food and for each unit filled, in and out of the canner included. */
  readonly handsPerKg: number;
  readonly handsPerUnit: number;
  /** Of `handsPerKg`, the minutes that come after the pot, before it goes on trays or into packs. */
  readonly laterPerKg?: number;
  /** Kg that one unit readied takes of another lot: the onions of a salsa. */
  readonly also?: readonly { readonly lot: number; readonly kgPerUnit: number }[];
  /** Minutes that it stands by itself after it is prepared, before it is cooked or filled: salted, limed, dripping. */
  readonly soak?: number;
  readonly cook?: Cook;
  /** The canner work. Products with the same key share a load. */
  readonly canning?: Canning;
  /** Dryer trays filled by each kg of raw food at the rich end. */
  readonly traysPerKg?: number;
  /** Share of a tray's days that one load takes: 1 where it is loaded once in all these days. */
  readonly trayShare?: number;
  /** Water that each kg of raw food gives up in the freeze-dryer, in kg, and its trays. */
  readonly freezeDry?: { readonly waterPerKg: number; readonly traysPerKg: number };
  /** Minutes that it goes on by itself at the end: in a crock, in the dryer, in the freeze-dryer, in the freezer. */
  readonly after?: { readonly kind: 'dry' | 'freeze-dry' | 'freeze' | 'ferment' | 'stand'; readonly minutes: number };
  /** Where it is food that is in work already. */
  readonly held?: Held;
}

/** Food that is in work already when the rest of a day begins; minutes from the start of the first day. */
export interface Held {
  readonly state: 'prepared' | 'hot' | 'filled';
  /** Raw kg of it: all of it goes on. */
  readonly kg: number;
  readonly since: number;
  /** It goes on no sooner than this, and no later than that: what is hot is filled by then. */
  readonly from: number;
  readonly by: number;
  /** Liters in its pot, where it is hot. */
  readonly litres?: number;
}

/** Kg of one item of the pantry. */
export interface PantryTaken {
  readonly perUnit: number;
  readonly perReadyKg: number;
  readonly perRawKg?: number;
}

/** The pot work of a product. */
export interface Cook {
  /** Litres in the pot for each kg of raw food at the rich end. */
  readonly litresPerKg: number;
  /** Litres of one batch that is cooked whole and by itself: never two in one pot, never a part of one. */
  readonly batchLitres?: number;
  /** Minutes of one batch, however large. */
  readonly minutes: number;
  /** Minutes more for each kg in the pot: heated up, boiled down. */
  readonly minutesPerKg?: number;
  /** Minutes that it may be kept hot in its pot, so that one pot feeds several loads; none where it may not. */
  readonly holdsHot?: number;
  /** Where it is boiled down, the share of the pot's content that is left at the end. */
  readonly leftOf?: number;
  /** Whether one pair of hands is at the pot as long as it cooks. */
  readonly stirred: boolean;
  /** To hold one batch at the boil, kWh of the stove. */
  readonly energyPerBatch?: Range<number>;
  /** What is paid for one batch, in the request's currency. */
  readonly costPerBatch?: number;
  /** Where it is blanched, batch after batch in one water: that water, heated before the first batch. */
  readonly blanch?: BlanchWater;
}

/** The water that a vegetable is blanched in. */
export interface BlanchWater {
  /** To bring it to the boil, at the slow end. */
  readonly minutes: number;
  /** The same in kWh of the stove. */
  readonly energy: Range<number>;
  /** What is paid for that, in the request's currency. */
  readonly cost?: number;
}

/** One lot as it goes into one product. */
export interface Supply {
  readonly lot: number;
  /** Units from each kg of raw food (or of trimmings). */
  readonly unitsPerKg: Range<number>;
  /** Kg of trimmings from each kg of raw food. */
  readonly trimmingsPerKg: Range<number>;
  /** Kg of ready food from each kg of raw food. */
  readonly readyPerKg: Range<number>;
  /** KWh for each kg of raw food: of the stove, and of electricity. */
  readonly energyPerKg?: { readonly stove?: Range<number>; readonly electricity?: Range<number> };
  /** What is paid for each kg of raw food, the work on it and what goes in by its weight. */
  readonly costPerKg?: number;
}

export interface Canning {
  /** Same key, same process: such products may stand in one load together. */
  readonly key: string;
  readonly jar: string;
  /** Minutes of one whole load in each canner that can run it, heat-up to unloading, at the slow end. */
  readonly canners: readonly {
    readonly canner: number;
    readonly jars: number;
    /** Jars it holds, where fewer of this product can be ready for it in time. */
    readonly holds?: number;
    readonly minutes: number;
    /** Minutes to heat its water before the first load of a day, at the slow end. */
    readonly warmUp: number;
    /** Whether a load may boil on through a break; a pressure canner is looked after. */
    readonly throughBreaks?: boolean;
    /** KWh of the stove: for one load whose water is hot, and to heat that water. */
    readonly energyPerLoad?: Range<number>;
    readonly energyToWarmUp?: Range<number>;
    readonly costPerLoad?: number;
    readonly costToWarmUp?: number;
  }[];
}

/** The kitchen in the same plain numbers. */
export interface Capacity {
  /** Raw mass of each lot, kg. */
  readonly lots: readonly number[];
  readonly days: number;
  /** The hours of work, where it matters when on a day something is done. */
  readonly windows?: readonly Window[];
  /** Minutes of work in all, and how many pairs of hands work through them. */
  readonly minutes: number;
  readonly hands: number;
  readonly burners: number;
  /** Litres that may be cooked in each pot at once: its volume times its fill limit. */
  readonly pots: readonly number[];
  readonly canners: number;
  /** For each canner the pot that is the same vessel, by its place. */
  readonly vessels?: readonly (number | undefined)[];
  /** Minutes of work that go by on the first days before each canner is free; 0 where it is free at the start. */
  readonly cannersBusy?: readonly number[];
  /** Minutes of each day before the first canner load can start. */
  readonly lead: number;
  /** Stock on hand; what is not listed is not limited. */
  readonly stock: readonly InStock[];
  /** Trays of the dryer; a load takes the `trayShare` of one. */
  readonly trays: number;
  readonly freezeDryer?: { readonly trays: number; readonly iceKg: number; readonly loads: number };
}
