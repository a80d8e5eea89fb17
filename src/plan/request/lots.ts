/** The lots of a day: the fields of one, and what each comes to in plain numbers. */
import type * as z from 'zod/mini';
import { fail, within } from '../../errors/StillroomError';
import { readFood } from '../../foods/fields';
import { type Bought, type BoughtInput, type BoughtMass, isPiece, readBought } from '../../produce/weights/asBought';
import { fields, isMass, mass, money, name, number, optional, reading, share } from '../../quantity/fields';
import { formatQuantity } from '../../quantity/formatQuantity';
import { byEnds, scaleRange, sureRange, turnRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Money, Quantity, Range } from '../../quantity/types';
import type { Unit } from '../../quantity/units';
import { type Basis, type Caution, joinBasis, joinCautions } from '../../sources/basis';
import { amountsRatio, kilograms, paidFor, weightOf } from './lotAmounts';

/** An amount of a lot: a mass, a volume, or a number of pieces (the number alone) or containers (`"2 flats"`). */
export type LotAmountInput = BoughtInput | `${number}` | `${number} ${string}`;

export const amountBought = () => reading<LotAmountInput, Bought>((given) => readBought(given, 'pieces'));

/** The fields of one lot. */
export const lotFields = () => ({
  /** What you call it; the food's name when left out. */
  name: optional(name('a name for the lot, such as "the marked-down crate"')),
  /** The food, by any name it goes by. */
  food: name('the name of a food, such as "peach"'),
  /** As bought: a mass, a volume, a number of pieces or containers: `"40 lb"`, `"16 quarts"`, `"40"`, `"2 flats"`. */
  raw: amountBought(),
  /** Price of the whole lot, or of `per`. */
  price: optional(money()),
  /** What the price is for, given as `raw` is: `"1 lb"`, `"1 quart"`, `"1"`; the whole lot when left out. */
  per: optional(amountBought()),
  /**
   * Share by weight that is sound, above 0 to 1; 1 when left out. The rest is thrown away before anything else. As an
   * example, Michigan State University Extension (E-1874) prints a loss of 6 % for good strawberries, which is their
   * caps, and 14 % for fair ones, sorted too: 0.91 of such a fair lot is sound.
   */
  sound: optional(share({ above: 0 })),
  /** Sweetness as you tasted or measured it, degrees Brix, above 0 and below 100. */
  brix: optional(number('degrees Brix above 0 and below 100', { above: 0, below: 100 })),
  /** Put aside to eat fresh, given as `raw` is; no more than what is sound. None when left out. */
  keepFresh: optional(amountBought()),
  /** Weight when prepared, as you weighed it, of all that is sound and not kept fresh; no more than that. */
  ready: optional(mass()),
});

const lot = () => fields(lotFields());
/** A lot as it was read. */
export type Lot = z.output<ReturnType<typeof lot>>;
type LotGiven = Readonly<Partial<Record<keyof Lot, unknown>>>;

/** A lot in plain numbers: what the planner uses. */
export interface KnownLot {
  /** Its place in the list that was asked for. */
  readonly index: number;
  /** What it is called: no two lots alike. */
  readonly label: string;
  /** Id of the food. */
  readonly food: string;
  /** Trade name of the food. */
  readonly trade: string;
  /** What it weighs as bought, kg. */
  readonly rawKg: Range<number>;
  /** Sound and not kept fresh, likely kg: the program's amounts of the lot are of these. */
  readonly usableKg: number;
  /** Put aside to eat fresh, likely kg. */
  readonly keepFreshKg: number;
  /** Thrown away, likely kg. */
  readonly notSoundKg: number;
  /** How much less and more than `usableKg` it may be, as shares of it: 1 and 1 where it was weighed. */
  readonly spread: { readonly low: number; readonly high: number };
  /** Share of `usableKg` that is left when prepared, where the cook weighed it. */
  readonly readyShare?: number;
  /** What the whole lot cost, to the cent. */
  readonly price?: Money;
  /** Sweetness, degrees Brix. */
  readonly brix?: number;
  /** Where its weight comes from, where it was not weighed. */
  readonly basis: readonly Basis[];
  /** What to mind of that. */
  readonly cautions: readonly Caution[];
}

/** The lots, and how their weights are written in the answer. */
export interface KnownLots {
  readonly lots: readonly KnownLot[];
  /** The unit of mass that answers are given in. */
  readonly massUnit: Unit<'mass'>;
  readonly metric: boolean;
}

/**
 * Reads each lot into plain numbers.
 *
 * usable = raw x sound - keepFresh. A lot that is not weighed has a range of weights, as its container, measure or
 * pieces have; `spread` is that range of what is usable, against the likely figure. Where the cook weighed the lot
 * prepared, what it gives is known whatever it weighed raw, and there is no spread.
 *
 * @throws StillroomError UNKNOWN_NAME for a food, a container or a piece that these tables do not weigh; CONTRADICTION
 *   for more kept fresh than is sound, more ready than is usable, and a `per` with no price or of another kind
 */
export function readLots(
  given: readonly Lot[],
  input: readonly LotGiven[],
  { elevation }: { readonly elevation: Quantity<'length'> },
): KnownLots {
  const foods = given.map(({ food }, index) => readFood(food, `lots[${index}].food`));
  const labels = labelsOf(given.map(({ name: own }, index) => own ?? (foods[index]?.name as string)));
  const massUnit = massUnitOf(given, elevation);
  const lots = given.map((each, index): KnownLot => {
    const { id, name: trade } = foods[index] as { readonly id: string; readonly name: string };
    return {
      index,
      label: labels[index] as string,
      food: id,
      trade,
      ...(each.brix === undefined ? {} : { brix: each.brix }),
      ...within(`lots[${index}]`, () => readLot(id, each, input[index] ?? {}, massUnit)),
    };
  });
  return { lots, massUnit, metric: METRIC.has(massUnit) };
}

/** Each label; where several lots have the same, with the next number that no other has. */
function labelsOf(names: readonly string[]): string[] {
  const taken = new Set(names);
  return names.map((label) => {
    if (names.filter((each) => each === label).length === 1) return label;
    let number = 1;
    while (taken.has(`${label} ${number}`)) number += 1;
    taken.add(`${label} ${number}`);
    return `${label} ${number}`;
  });
}

type Weights = Omit<KnownLot, 'index' | 'label' | 'food' | 'trade' | 'brix'>;

function readLot(food: string, given: Lot, input: LotGiven, unit: Unit<'mass'>): Weights {
  const { raw, sound = 1, keepFresh, ready } = given;
  const whole = weightOf(food, raw, 'raw', input.raw);
  const rawKg = kilograms(whole);
  const soundKg = scaleRange(rawKg, sound);
  const fresh = keepFresh && weightOf(food, keepFresh, 'keepFresh', input.keepFresh);
  const freshKg = freshOf(soundKg, given, fresh);
  const inUnit = (kg: number) => formatQuantity(quantityIn<'mass'>(kg, 'kg', unit), { step: 0.01 });
  if (freshKg.likely > soundKg.likely * (1 + NOISE)) {
    const all = sound < 1 ? ` (${inUnit(rawKg.likely)} x ${sound})` : '';
    const [most, kept] = [soundKg.likely, freshKg.likely].map(inUnit);
    const expected = `no more than what is sound, ${most}${all}; to keep fresh are ${kept}`;
    fail('CONTRADICTION', 'keepFresh', input.keepFresh, expected);
  }
  const usable = byEnds(soundKg, freshKg, (all, kept) => Math.max(0, all - kept));
  const readyShare = ready && readyShareOf(valueIn(ready, 'kg'), usable, input.ready, inUnit);
  const price = paidFor(food, given, input.per);
  return {
    rawKg,
    usableKg: usable.likely,
    keepFreshKg: Math.min(freshKg.likely, soundKg.likely),
    notSoundKg: rawKg.likely - soundKg.likely,
    spread:
      readyShare !== undefined || usable.likely === 0
        ? { low: 1, high: 1 }
        : { low: usable.low / usable.likely, high: usable.high / usable.likely },
    ...(readyShare === undefined ? {} : { readyShare }),
    ...(price === undefined ? {} : { price: price.price }),
    basis: joinBasis(
      linesOf(whole, 'products[].raw'),
      linesOf(fresh, 'keptFresh[].raw'),
      linesOf(price, 'products[].costs'),
    ),
    cautions: joinCautions(...[whole, fresh, price].map((each) => each?.cautions ?? [])),
  };
}

/** The basis of an amount, at the path of the plan's field. */
const linesOf = (amount: Pick<KnownLot, 'basis'> | undefined, of: string): Basis[] =>
  (amount?.basis ?? []).map((line) => ({ ...line, of }));

/** Noise of the arithmetic of doubles, as a share. */
const NOISE = 1e-9;

/**
 * Kg kept fresh. In the same measure as the lot it is that share of it, whatever the measure weighs; otherwise the most
 * of it goes with the least of the lot, so that what is promised holds.
 */
function freshOf(soundKg: Range<number>, { raw, keepFresh, sound = 1 }: Lot, fresh: BoughtMass | undefined) {
  if (keepFresh === undefined || fresh === undefined) return sureRange(0);
  const ratio = amountsRatio(keepFresh, raw);
  return ratio === undefined ? turnRange(kilograms(fresh)) : scaleRange(soundKg, ratio.toNumber() / sound);
}

function readyShareOf(readyKg: number, usable: Range<number>, given: unknown, inUnit: (kg: number) => string): number {
  if (readyKg > usable.high * (1 + NOISE)) {
    const expected = `no more than the raw weight of the lot that is sound and not kept fresh, ${inUnit(usable.high)}`;
    fail('CONTRADICTION', 'ready', given, expected);
  }
  return Math.min(1, readyKg / usable.likely);
}

const METRIC: ReadonlySet<string> = new Set([
  'g',
  'mg',
  'kg',
  'tonne',
  'L',
  'mL',
  'dL',
  'm3',
  'metric cup',
  'm',
  'km',
  'cm',
  'mm',
]);

/**
 * The unit of mass of the answer: that of the first lot that is weighed or measured, or lb for a measure of the US; the
 * measure of the kitchen's elevation where all lots are counted by the piece.
 */
function massUnitOf(lots: readonly Lot[], elevation: Quantity<'length'>): Unit<'mass'> {
  for (const { food, raw } of lots) {
    if (raw.kind !== 'count') return isMass(raw.amount) ? raw.amount.unit : METRIC.has(raw.amount.unit) ? 'kg' : 'lb';
    // the containers of these tables are those of the US
    if (!isPiece(readFood(food).id, raw.of)) return 'lb';
  }
  return METRIC.has(elevation.unit) ? 'kg' : 'lb';
}
