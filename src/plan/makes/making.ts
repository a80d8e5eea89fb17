import { StillroomError } from '../../errors/StillroomError';
import { type FoundFood, readFood } from '../../foods/fields';
import { type FoodKind, foodOf, formName } from '../../foods/tables';
import { type Composition, compositionOf as partsOf } from '../../produce/composition/composition';
import { knownOr } from '../../produce/shape';
import { type ReadyFromRaw, readyFromRaw } from '../../produce/yields/readyFromRaw';
import { BOILED_OFF, formsWithYield } from '../../produce/yields/share';
import { formatQuantity } from '../../quantity/formatQuantity';
import { mapRange, turnRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import type { Unit } from '../../quantity/units';
import type { RecipeRow } from '../../recipes/rows/tables';
import type { Basis, Caution } from '../../sources/basis';
import type { NotKnown } from '../../sources/no';
import { customaryBasis, customaryRange } from '../figures/customary';
import { LIFT_A_JAR } from '../figures/liftAJar';
import { standsBehind } from '../figures/standsBehind';
import type { Activity, Supply } from '../request/activity';
import { type Learned, learnedFigure } from '../request/learned';
import type { KnownLot } from '../request/lots';
import type { PlanRequest, Wanted } from '../request/planInput';
import type { Ingredient, JarWork, PackWork, TrayWork } from '../request/plannedProduct';
import { type RecipeWork, WORK_BASIS } from './work';

/** A product with the recipe it is made by. */
export interface Product {
  readonly wanted: Wanted;
  /** Its place in the list of products. */
  readonly index: number;
  readonly row: RecipeRow;
  /** What it is mostly made of: figures of one food are asked for this one. */
  readonly food: FoundFood;
  /** Ids of all foods that it is made of. */
  readonly foods: readonly string[];
  /** The lots that its measure is of, of one food or of several that mix. */
  readonly lots: readonly KnownLot[];
  /** The form that the food goes in by, by its name; as the cook says, or as the recipe prints it. */
  readonly form?: string;
  /** What the cook adds by taste. */
  readonly taste?: readonly TasteLine[];
}

/** Sugar or water that the cook adds by taste. */
export interface TasteLine {
  readonly what: 'sugar' | 'water';
  readonly role: 'sugar' | 'liquid';
  /** Its amount, for these kg of prepared food. */
  readonly amount: Quantity<'mass'> | Quantity<'volume'>;
  readonly perReadyKg: number;
  /** Kg of it, and liters that it adds, for each kg of prepared food. */
  readonly kg: number;
  readonly liters: number;
  readonly note: string;
}

/** What every make needs to know of the day. */
export interface Day {
  readonly request: PlanRequest;
  readonly lots: readonly KnownLot[];
  /** What the cook's own batches have taught. */
  readonly learned: readonly Learned[];
  /** The unit of mass that answers are given in. */
  readonly massUnit: Unit<'mass'>;
  readonly metric: boolean;
}

/** A product that can be made, as the program sees it, and what the sheet says of it once it is decided. */
export interface Making {
  readonly activity: Activity;
  readonly label: string;
  /** The recipe it is made by. */
  readonly row: RecipeRow;
  readonly food: string;
  readonly form?: string;
  readonly unit: string;
  readonly plural: string;
  /** Weight of one bag or jar of powder; or the liters of one unit that is poured. */
  readonly size?: Quantity<'mass'>;
  readonly liters?: number;
  readonly describe: (decided: Decided) => Described;
}

/** What the program decided of one product. */
export interface Decided {
  /** Kg of each lot that go into it. */
  readonly rawByLot: ReadonlyMap<number, number>;
  readonly rawKg: number;
  readonly readyKg: Range<number>;
  readonly promised: number;
  readonly likely: number;
  readonly ready: number;
  readonly trays: number;
}

export interface Described {
  readonly recipe?: readonly Ingredient[];
  readonly jars?: JarsDescribed;
  readonly cookMinutes?: number;
  readonly trays?: TrayWork;
  readonly packs?: PackWork;
  /** Of jars that are not canned. */
  readonly headspace?: Quantity<'length'>;
  readonly steps: readonly string[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The jar work of a product before its loads are shared out. */
export type JarsDescribed = Omit<JarWork, 'loads'>;

/** A product that cannot be made, and what it was to be. */
export interface LeftOutProduct {
  readonly wanted: Wanted;
  readonly code: string;
  readonly text: string;
  readonly instead: string;
}
export type Made = Making | LeftOutProduct;
export const isMaking = (made: Made): made is Making => 'activity' in made;

export const leftOut = (
  wanted: Wanted,
  why: { readonly code: string; readonly text: string; readonly instead: string },
): LeftOutProduct => ({ wanted, ...why });

/** The same for a no of another module. */
export const leftOutBy = (wanted: Wanted, { reason, instead }: Pick<NotKnown, 'reason' | 'instead'>): LeftOutProduct =>
  leftOut(wanted, { ...reason, instead: instead.map(({ text }) => text).join(', or ') });

const KG: Quantity<'mass'> = { value: 1, unit: 'kg' };

/** What one kg of a lot gives ready in a form; the cook's own weighing of the lot where there is one. */
export interface LotYield {
  readonly ready: Range<number>;
  /** What falls off and can be used, water boiled away not counted. */
  readonly trimmings: Range<number>;
  /** How the cook's own yield compares with the published one: above 1 the lot gives more. */
  readonly better: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Trimmings go in whole: nothing is lost before. */
export const WHOLE_LOT: LotYield = {
  ready: { low: 1, likely: 1, high: 1 },
  trimmings: { low: 0, likely: 0, high: 0 },
  better: 1,
  basis: [],
  cautions: [],
};

/** What another module holds, or nothing: a form that its tables do not know is a no like any other. */
export function heldOf<T extends { readonly known: true }>(ask: () => T | NotKnown): T | undefined {
  try {
    const found = ask();
    return found.known ? (found as T) : undefined;
  } catch (error) {
    if (error instanceof StillroomError) return undefined;
    throw error;
  }
}

/** What a kg of a lot gives ready where no table holds the form: by a wider or any other form, or as customary. */
function publishedYield(lot: KnownLot, form: string | undefined): ReadyFromRaw | undefined {
  for (const each of [form, undefined, ...formsWithYield(lot.food).map(formName)]) {
    const found = heldOf(() =>
      readyFromRaw({ food: lot.trade, ...(each === undefined ? {} : { form: each }), raw: KG }),
    );
    if (found !== undefined) return found;
  }
  return undefined;
}

/** A food whose yield no table holds: what is cut away is customary. */
function customaryYield(lot: KnownLot): LotYield {
  const own = lot.readyShare;
  const ready = own === undefined ? customaryRange('ready-not-known') : { low: own, likely: own, high: own };
  return {
    ready,
    trimmings: { low: 0, likely: 0, high: 0 },
    better: 1,
    basis: [customaryBasis('ready-not-known', 'ready')],
    cautions: [],
  };
}

export function yieldFromLot(day: Day, lot: KnownLot, form: string | undefined): LotYield {
  const published = publishedYield(lot, form);
  if (published === undefined) return customaryYield(lot);
  const own = lot.readyShare;
  const answer =
    own === undefined
      ? published
      : knownOr(
          readyFromRaw({ food: lot.trade, form: published.form, raw: KG, ownYield: { yield: own } }),
          'form',
          published.form,
        );
  const lost = published.parts.reduce((sum, part) => sum + part.mass.value, 0);
  const water = published.parts
    .filter(({ what }) => what === BOILED_OFF)
    .reduce((sum, part) => sum + part.mass.value, 0);
  const usable = lost === 0 ? 0 : (lost - water) / lost;
  // a weighing of the lot itself says more than earlier batches do
  const learned = own === undefined ? learnedFigure(day.learned, 'yield', lot.trade, form) : undefined;
  if (learned !== undefined) {
    return {
      ready: learned.figure,
      trimmings: mapRange(turnRange(learned.figure), (ready) => (1 - ready) * usable),
      better: learned.figure.likely / published.yield.likely,
      basis: [learned.basis],
      cautions: published.cautions,
    };
  }
  const kilograms = (range: Range<Quantity<'mass'>>, share = 1): Range<number> =>
    mapRange(range, ({ value }) => value * share);
  return {
    ready: kilograms(answer.ready),
    trimmings: kilograms(answer.trimmings, usable),
    better: own === undefined ? 1 : own / published.yield.likely,
    basis: answer.basis,
    cautions: answer.cautions,
  };
}

/** Units from each kg of a lot, from the raw kg that one unit takes; turned round, so that low is the poor end. */
export const unitsFrom = (rawPerUnit: Range<number>): Range<number> => mapRange(turnRange(rawPerUnit), (kg) => 1 / kg);

export const supplyOf = (lot: KnownLot, given: LotYield, unitsPerKg: Range<number>): Supply => ({
  lot: lot.index,
  unitsPerKg,
  trimmingsPerKg: given.trimmings,
  readyPerKg: given.ready,
});

const POUNDS_PER_KG = 1 / 0.45359237;

/** The parts of an activity that every product shares. */
export function commonOf(
  day: Day,
  { wanted, index, food, form }: Product,
  work: RecipeWork,
  perUnitKg: number,
): Pick<
  Activity,
  'product' | 'worth' | 'least' | 'most' | 'smallest' | 'handsPerKg' | 'laterPerKg' | 'handsPerUnit' | 'soak'
> & {
  readonly workBasis: readonly Basis[];
} {
  const learned =
    wanted.minutesPerPound === undefined ? learnedFigure(day.learned, 'minutesPerPound', food.name, form) : undefined;
  const perPound = wanted.minutesPerPound ?? learned?.figure.high;
  const handsPerKg = perPound === undefined ? work.handsPerKg : perPound * POUNDS_PER_KG;
  // jars are filled at once: what is done to hot food stays with the rest
  const later = work.end === 'can' || work.handsPerKg === 0 ? 0 : (handsPerKg * work.laterPerKg) / work.handsPerKg;
  return {
    product: index,
    // without its own worth a unit counts as the kg of food it saves
    worth: wanted.worth?.value ?? perUnitKg,
    least: wanted.least ?? 0,
    most: wanted.never === true ? 0 : (wanted.most ?? 5000),
    ...(wanted.smallest === undefined ? {} : { smallest: wanted.smallest }),
    handsPerKg,
    ...(later === 0 ? {} : { laterPerKg: later }),
    handsPerUnit: (wanted.minutesPerUnit ?? work.handsPerUnit) + (work.end === 'can' ? LIFT_A_JAR : 0),
    ...(work.soak === 0 ? {} : { soak: work.soak }),
    workBasis: [WORK_BASIS, ...standsBehind('handsMinutes', learned === undefined ? [] : [learned.basis])],
  };
}

/** A mass in the day's own unit. */
export const massOf = (day: Day, kilograms: number): Quantity<'mass'> => quantityIn(kilograms, 'kg', day.massUnit);
export const massRange = (day: Day, range: Range<number>): Range<Quantity<'mass'>> =>
  mapRange(range, (kilograms) => massOf(day, kilograms));

/** A volume in the day's own measure: by the cup, or by the millilitre where lots are weighed in metric units. */
export const volumeOf = (day: Day, amount: Quantity<'volume'>): Quantity<'volume'> =>
  day.metric ? quantityIn<'volume'>(valueIn(amount, 'mL'), 'mL', 'mL') : amount;

/** A headspace as tables print it, in inches, with millimetres beside it on a metric day. */
export function headspaceText({ metric }: Day, headspace: Quantity<'length'>): string {
  const printed = formatQuantity(headspace, { fraction: 8 });
  return metric ? `${printed} (${formatQuantity(headspace, { unit: 'mm', rounding: 'up' })})` : printed;
}

export const compositionOf = (trade: string, path = 'food'): Composition =>
  knownOr(partsOf(readFood(trade, path).id), path, trade);

const LEAN: ReadonlySet<FoodKind> = new Set(['meat', 'game', 'poultry', 'fish']);

/** The water of a food as it is bought: learned, or else published, or else what is usual of its kind. */
export function waterOf(day: Day, trade: string): { readonly water: Range<number>; readonly basis: readonly Basis[] } {
  const learned = learnedFigure(day.learned, 'moisture', trade, undefined);
  if (learned !== undefined) return { water: learned.figure, basis: [learned.basis] };
  const held = heldOf(() => partsOf(readFood(trade).id));
  if (held !== undefined) return { water: held.moisture, basis: held.basis };
  const figure = LEAN.has(foodOf(readFood(trade).id).kind) ? 'water-in-lean-meat' : 'water-not-known';
  return { water: customaryRange(figure), basis: [customaryBasis(figure, 'drying.dried')] };
}
