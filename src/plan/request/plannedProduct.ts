import type { Money, Quantity, Range } from '../../quantity/types';
import type { RecipeKeeping } from '../../recipes/keeping';
import type { Makes, Role } from '../../recipes/rows/tables';
import type { Basis, Caution } from '../../sources/basis';
import type { CanningMethod } from '../../words/method';
import type { AnyPack } from '../../words/pack';

type Mass = Quantity<'mass'>;

/** How much of a lot goes somewhere. */
export interface LotShare {
  /** Name of the lot. */
  readonly lot: string;
  /** Trade name of the food. */
  readonly food: string;
  /** Raw weight, in the unit of the first lot. */
  readonly raw: Mass;
}

/** One product of the plan. */
export interface PlannedProduct {
  /** Its name: yours, or one made of food, form and jar. */
  readonly name: string;
  /** Fixed name of the recipe it is made by: ask `recipe` for it; `own` for one of your own book, named in `canning.own`. */
  readonly recipe: string;
  /** What the recipe makes: `sauce`, `jam`, `dried` and so on. */
  readonly makes: Makes;
  /** Where it keeps, and how long. */
  readonly keeps: readonly RecipeKeeping[];
  /** Trade name of the food. */
  readonly food: string;
  /** Form of the food, where it has one. */
  readonly form?: string;
  /** Raw food from each lot; trimmings where it is made of them. */
  readonly fromLots: readonly LotShare[];
  /** All of that, raw. */
  readonly raw: Mass;
  /** Prepared food; for a product of trimmings, the trimmings themselves. */
  readonly ready: Range<Mass>;
  /** What falls off and can be used; none for a product of trimmings. */
  readonly trimmings?: Range<Mass>;
  /** How many you can count on, and how many to get ready for. */
  readonly units: Units;
  /** Minutes of one pair of hands. */
  readonly handsMinutes: HandsMinutes;
  /** What stove, dryer, freeze-dryer and freezer take for it, kWh; none where nothing is heated or frozen. */
  readonly energy?: Range<Quantity<'energy'>>;
  /** What goes in, in the order of the recipe. */
  readonly ingredients: readonly Ingredient[];
  /** The jars and their process, where it is canned. */
  readonly canning?: JarWork;
  /** The pots, where it is cooked or blanched. */
  readonly cooking?: PotWork;
  /** The trays, where it is dried or freeze-dried. */
  readonly drying?: TrayWork;
  /** The packs, where it is frozen. */
  readonly packs?: PackWork;
  /** Of jars that go into the refrigerator or the freezer and are not canned, from the food to the lid. */
  readonly headspace?: Quantity<'length'>;
  /** What to do, in order, in words. */
  readonly directions: readonly string[];
  /** What it costs, where something has a price. */
  readonly costs?: ProductCost;
  /** In the plan of the rest of a day: how many of it are done; in no other figure of the product. */
  readonly doneSoFar?: number;
  /** In the plan of the rest of a day: how far all of this product was when the rest began. */
  readonly was?: 'prepared' | 'hot' | 'filled';
  /** Where the figures of this product come from. */
  readonly basis: readonly Basis[];
  /** What to mind with this product, dangers first. */
  readonly cautions: readonly Caution[];
}

/** What is counted: promised at the low end of the yields, readied for at the high end. */
export interface Units {
  /** What one is called: `pint jar`, `bag of 8 oz`, `sheet`. */
  readonly unit: string;
  /** What several are called: `pint jars`, `bags of 8 oz`, `sheets`. */
  readonly plural: string;
  /** How many you can count on, at the low end of the yields. */
  readonly promised: number;
  /** How many there will be at the likely yield. */
  readonly likely: number;
  /** How many to get ready for, at the high end of the yields. */
  readonly ready: number;
  /** Prepared food in one: the ready weight of the product divided by this gives its units. */
  readonly readyEach: Range<Mass>;
}

/** Minutes of one pair of hands, at the high end of the yields. */
export interface HandsMinutes {
  /** Washing, peeling, cutting. */
  readonly prepare: number;
  /** Filling and lidding, into the canner and out of it; spreading or bagging. */
  readonly fill: number;
  /** At the pot, where somebody stirs or blanches. */
  readonly stir: number;
}

/** One ingredient, for all that is made of the product. */
export interface Ingredient {
  /** What it is, in words. */
  readonly what: string;
  /** What it is there for. */
  readonly role: Role;
  /** How much of it, for all units readied; none where the page counts pieces. */
  readonly amount?: Quantity<'mass'> | Quantity<'volume'>;
  /** The same by the cup or by weight, for a kitchen that measures the other way. */
  readonly or?: Quantity<'mass'> | Quantity<'volume'>;
  /** How many pieces, where the page counts them. */
  readonly pieces?: number;
  /** What is counted: `cloves`. */
  readonly counted?: string;
  /** What to buy for it: the pantry of a request does not hold such things. */
  readonly toBuy?: string;
  /** The amount as the page prints it, with what it is for: `1/4 cup in one batch`. */
  readonly printed?: string;
  /** The page, or the safety of the recipe, needs at least this much. */
  readonly neverLess?: true;
  /** It is of the syrup that covers the food in its jars, which is made for each canner load. */
  readonly forSyrup?: true;
  /** What else is to be said of it. */
  readonly note?: string;
}

/** The canning of a product. */
export interface JarWork {
  /** The jar, by its name in the table of sizes. */
  readonly jar: string;
  /** From the food to the rim. */
  readonly headspace: Quantity<'length'>;
  /** What one jar takes, up to its headspace. */
  readonly fillVolume: Quantity<'volume'>;
  /** Net weight of one jar, where its density is known. */
  readonly netMass?: Mass;
  /** `hot`, `raw`, or `not stated`. */
  readonly pack: AnyPack;
  /** Kind of canner. */
  readonly method: CanningMethod;
  /** Printed process time at your elevation, in minutes. */
  readonly minutes: number;
  /** Gauge pressure, for a pressure canner. */
  readonly pressure?: Quantity<'pressure'>;
  /** The acid that every jar must have, in words. */
  readonly acidToAdd?: string;
  /** Whether that acid goes into each jar, or into the pot as part of the recipe. */
  readonly acidGoesInto?: 'each jar' | 'recipe';
  /** Whether to sterilize the empty jars: the process is too short to do it. */
  readonly sterilizeJars: boolean;
  /** Present where the minutes are asked of your own book. */
  readonly own?: OwnRecipe;
  /** Its loads in each canner. */
  readonly loads: readonly CannerLoad[];
  /** Minutes of one load, from lighting the burner to unloading. */
  readonly loadMinutes: Range<number>;
}

/** A recipe of the cook's own book, wherever a plan shows it. */
export interface OwnRecipe {
  /** The figures are your book's and not of these tables. */
  readonly ownBook: true;
  /** What your book calls it. */
  readonly name: string;
  /** Where it is printed. */
  readonly citation: string;
  /** Whose minutes are planned: the longer ones. */
  readonly whoseMinutes: 'your book' | 'these tables';
  /** What your book gives at this elevation, minutes. */
  readonly byYourBook: number;
  /** What these tables hold for the same food, form, pack and jar. */
  readonly byTables?: {
    /** Their minutes here. */
    readonly minutes: number;
    /** Fixed name of their recipe. */
    readonly recipe: string;
  };
  /** Fixed name of the recipe whose steps and work are taken; none where they are the plainest. */
  readonly like?: string;
}

/** Loads of one process in one canner; several products may share them. */
export interface CannerLoad {
  /** Name of the canner. */
  readonly canner: string;
  /** How many loads, 1 or more. */
  readonly count: number;
  /** The most jars that one load may have. */
  readonly jarsPerLoad: number;
  /** Minutes of one load in this canner at the slow end, from lighting the burner to unloading. */
  readonly minutesEach: number;
  /** Other products in the same loads. */
  readonly sharedWith: readonly string[];
}

/** The batches of one product in one pot. */
export interface PotBatches {
  /** Name of the pot. */
  readonly pot: string;
  /** How many batches, 1 or more. */
  readonly count: number;
  /** The most that may be in it at once. */
  readonly mostAtOnce: Quantity<'volume'>;
  /** How full it is at most with this food, at rest: above it boils over. */
  readonly fillTo: PotLine;
  /** What is boiled down: to where a pot that was filled to `fillTo` comes down, by the water that goes; derived. */
  readonly downTo?: PotLine;
}

/** A level in a pot with straight sides. */
export interface PotLine {
  /** What is in the pot up to there. */
  readonly volume: Quantity<'volume'>;
  /** The same as a share of the pot's height, above 0 to 1: measure the depth with a clean stick. */
  readonly share: number;
}

/** What a product does in pots. */
export interface PotWork {
  /** Its batches in each pot. */
  readonly batches: readonly PotBatches[];
  /** Minutes of the longest batch as it is scheduled, heating up by its weight included; of a blanching with its return to the boil. */
  readonly minutesEach: number;
  /** Minutes of one batch by the recipe, or by yours, heating up not counted: none is cooked for less. */
  readonly leastEach: number;
  /** All that is cooked, at the high end of the yields, with the room it needs to foam; water to blanch in included. */
  readonly volume: Quantity<'volume'>;
}

/** What a product does on trays. */
export interface TrayWork {
  /** The machine. */
  readonly where: 'dryer' | 'freeze-dryer';
  /** How many trays, 1 or more. */
  readonly trays: number;
  /** Prepared food on one tray, at the most. */
  readonly perTray: Mass;
  /** Weight of what is on one full tray when it is done, the tray not counted. */
  readonly stopWeight?: Range<Mass>;
  /** Of the air in the dryer. */
  readonly temperature?: Quantity<'temperature'>;
  /** How long it dries. */
  readonly hours?: Range<Quantity<'time'>>;
  /** How to tell that it is dry. */
  readonly test?: string;
  /** What comes off all trays. */
  readonly dried: Range<Mass>;
}

/** The packs of a product that is frozen. */
export interface PackWork {
  /** Weight of one pack. */
  readonly packSize: Mass;
  /** In a rigid box, from the food to the lid; none for what is wrapped, or fills its box. */
  readonly headspace?: Quantity<'length'>;
  /** Freezer room of one pack. */
  readonly room: Quantity<'volume'>;
}

/** What money goes into; supplies are jars, lids, bags and what recipes take from the pantry. */
export type CostKind = 'food' | 'supplies' | 'energy' | 'hands';

/** One line of a cost. */
export interface CostLine {
  /** What it is for, in words. */
  readonly what: string;
  /** The kind it counts to. */
  readonly kind: CostKind;
  /** Money, to the cent. */
  readonly cost: Money;
}

/** The lines of all products add up to the day's kinds, and each product's to its total, to the cent. */
export interface ProductCost {
  /** What it is made up of. */
  readonly lines: readonly CostLine[];
  /** All lines together. */
  readonly total: Money;
  /** For each unit, up to the cent: low at all you get ready for, likely at the likely count, high at all promised. */
  readonly perUnit: Range<Money>;
  /** For an ounce of it, or 100 g on a metric day; none where no net weight is known. */
  readonly perNet?: {
    /** Money for `netMass`, by the same counts as `perUnit`. */
    readonly cost: Range<Money>;
    /** An ounce, or 100 g. */
    readonly netMass: Mass;
    /** Present where the net weight was not weighed: in a jar of fruit a kilogram for each liter. */
    readonly estimated?: true;
  };
  /** For the serving you asked about, or else a customary one. */
  readonly perServing?: {
    /** Money for `serving`, by the same counts as `perUnit`. */
    readonly cost: Range<Money>;
    /** The serving. */
    readonly serving: Mass | Quantity<'volume'>;
    /** Present where you named no serving. */
    readonly customary?: true;
  };
}
