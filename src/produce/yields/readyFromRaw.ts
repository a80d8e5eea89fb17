import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { exact } from '../../common/exact';
import type { Given } from '../../common/given';
import { fail } from '../../errors/StillroomError';
import { type FoundFood, food, form } from '../../foods/fields';
import { formName, nameOf } from '../../foods/tables';
import { fields, mass, optional, readInput, share } from '../../quantity/fields';
import { exactIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, type Caution, measured as measuredBasis } from '../../sources/basis';
import type { NotKnown } from '../../sources/no';
import { ready as readyWord } from '../../words/ready';
import { caution } from '../cautions';
import { formOfId } from '../forms';
import { formNeeded, inForms, inWords, missing } from '../shape';
import { memoryCaution, type Span } from '../span';
import { bought, massBought } from '../weights/asBought';
import { formsWithYield, type LostPart, readyShare } from './share';

const measuredSchema = fields({
  /** What you had ready; with the raw mass of this question, or of `raw`. */
  ready: optional(mass()),
  /** The raw mass that it came from, where that was an earlier lot. */
  raw: optional(mass()),
  /** Ready over raw, 0 to 1 or percent, in place of both. */
  yield: optional(share({ above: 0 })),
});
const readySchema = fields({
  /** A fruit or vegetable by any of its names, with or without a form: `peach`, `peach halves`. */
  food: food(),
  /** `whole`, `halves`, `slices`, `diced`, `pitted`, `peeled`, `puree`, `sauce`, `juice` ... */
  form: optional(form()),
  /** As bought or picked: a mass, a volume, or a number of pieces or containers (`"40 lb"`, `"2 flats"`, `"40 apples"`). */
  raw: bought(),
  /** Your own yield, in place of the published one. */
  ownYield: optional(measuredSchema),
});
const rawSchema = fields({
  /** A fruit or vegetable by any of its names, with or without a form: `peach`, `peach halves`. */
  food: food(),
  /** The form that you need: `halves`, `sauce` ... */
  form: optional(form()),
  /** What you need prepared, above zero, in place of `raw`. */
  ready: readyWord(),
  /** Your own yield, in place of the published one. */
  ownYield: optional(measuredSchema),
});
export type ReadyFromRawInput = Given<z.input<typeof readySchema>>;
export type RawForReadyInput = Given<z.input<typeof rawSchema>>;

type Mass = Quantity<'mass'>;

/** One kind of what is lost, at the likely yield. */
export interface TrimmingsPart {
  /** What it is: skins, pits, water boiled off. */
  readonly what: string;
  /** How much of it. */
  readonly mass: Mass;
  /** Whether it leaves as steam, so that nothing of it can be used. */
  readonly boiledOff: boolean;
}
interface YieldAnswer {
  /** These tables, or your own weighing, have a figure. */
  readonly known: true;
  /** Its trade name. */
  readonly food: string;
  /** The name of the form. */
  readonly form: string;
  /** What is taken off: `trimmed`, `cored`, `pitted`, `peeled`, `milled`, `juiced`; `measured` where you measured it. */
  readonly preparation: string;
  /** Ready over raw, 0 to 1. */
  readonly yield: Range<number>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}
/** What a raw amount gives. */
export interface ReadyFromRaw extends YieldAnswer {
  /** What the amount weighs as bought; all three ends are yours where you gave a mass. */
  readonly raw: Range<Mass>;
  /** What is ready, in the unit of `raw`. */
  readonly ready: Range<Mass>;
  /** Raw less ready: the low end goes with the high end of `yield`. */
  readonly trimmings: Range<Mass>;
  /** What the likely trimmings are; water boiled off is listed separately. */
  readonly parts: readonly TrimmingsPart[];
}
/** What to buy or pick. */
export interface RawForReady extends YieldAnswer {
  /** What to buy, in the unit of `ready`; the low end goes with the high end of `yield`. */
  readonly raw: Range<Mass>;
  /** Raw less ready. */
  readonly trimmings: Range<Mass>;
}

/** The yield of a food in a form. */
export interface Yield extends YieldAnswer {
  readonly lost: readonly LostPart[];
}

type Measured = { ready?: Mass | undefined; raw?: Mass | undefined; yield?: number | undefined } | undefined;

/** The share that the user measured: itself, or a ready mass over the raw mass it came from. */
function measuredShare(measured: Measured, raw: Mass | undefined): number | undefined {
  if (measured === undefined) return undefined;
  const { ready, yield: own } = measured;
  const from = measured.raw ?? raw;
  if (own !== undefined && ready !== undefined) {
    fail('CONTRADICTION', 'ownYield', measured, 'either the ready mass or the yield, not both');
  }
  if (own !== undefined) return own;
  if (ready === undefined) fail('MISSING', 'ownYield', measured, 'a measured ready mass or yield');
  if (from === undefined) fail('MISSING', 'ownYield.raw', undefined, 'the raw mass that the ready mass came from');
  const result = exactIn(ready, 'g').div(exactIn(from, 'g'));
  if (result.gt(1)) fail('CONTRADICTION', 'ownYield.ready', ready.value, 'no more than the raw mass it came from');
  return result.toNumber();
}

/** Yield of a food in a form, by their ids: measured where the user measured it, else published. */
export function yieldOf(id: string, form: string, measured?: Measured, raw?: Mass): Yield | NotKnown {
  const own = measuredShare(measured, raw);
  const names = { known: true as const, food: nameOf(id), form: formName(form) };
  if (own !== undefined) {
    return {
      ...names,
      preparation: 'measured',
      yield: { low: own, likely: own, high: own },
      lost: own < 1 ? [{ what: 'trimmings', share: 1 - own, boiledOff: false }] : [],
      basis: [measuredBasis('yield', 'as you measured it')],
      cautions: [],
    };
  }
  const shape = formOfId(form);
  const found = shape && readyShare(id, shape);
  if (found === undefined) return noYield(id, form);
  return {
    ...names,
    preparation: found.preparation,
    yield: found.span,
    lost: found.lost.filter((part) => part.share > 0),
    basis: found.basis,
    cautions: [
      caution('yield-varies'),
      caution('yield-is-no-process'),
      ...(found.lost.some(({ boiledOff }) => boiledOff) ? [caution('loss-includes-water')] : []),
      ...(found.estimated ? [caution('estimate')] : []),
      ...memoryCaution(found.rows),
    ],
  };
}

const noYield = (id: string, form: string): NotKnown =>
  missing('no yield', `These tables print no yield for ${inWords(id, form)}.`, [
    { text: 'Weigh some before and after you prepare it, and give it as `ownYield`.' },
    ...inForms(id, formsWithYield(id)),
  ]);

/** Yield of a food as an argument names it. */
function yieldAsked(
  given: { readonly food: FoundFood; readonly form?: string | undefined; readonly ownYield?: Measured },
  raw?: Mass,
): Yield | NotKnown {
  return yieldOf(given.food.id, formNeeded(given.food, given.form), given.ownYield, raw);
}

// Exact numbers keep ready + trimmings = raw to the last digit that a double holds.
const times = ({ value, unit }: Mass, by: number): Mass => ({ value: exact(value).times(by).toNumber(), unit });
const over = ({ value, unit }: Mass, by: number): Mass => ({ value: exact(value).div(by).toNumber(), unit });
const less = (one: Mass, other: Mass): Mass => ({
  value: exact(one.value).minus(other.value).toNumber(),
  unit: one.unit,
});

/**
 * How much ready food a raw amount gives, and how much is taken off, before the first fruit is cut; or, for a mass that
 * you need `ready`, how much to buy or pick: buy the high end to be sure of enough.
 *
 * ready = raw x share left; trimmings = raw - ready; raw = ready / share left. The range is that of the published sources for this food and this
 * preparation: refuse of the food tables, extension trim losses, kitchen yield percentages; its ends are at least 3
 * points from the likely share, which is how far two sources usually differ. Sauce and juice come from the raw pounds
 * printed for a quart of them. Whole and cut forms count what custom takes off: peaches, apples and pears are peeled
 * for halves and slices; plums, apricots, nectarines and cherries keep their skin.
 *
 * An amount that is no mass is weighed by the printed weight of the container, of a bushel, of a measure of the whole
 * food, or of a piece with its refuse; its range goes into the ends of the answer.
 *
 * @returns `ready` and `trimmings` in the unit of `raw` (lb where that is no mass), adding up to it at each end of a
 *   mass; `parts` of the likely trimmings; of a `ready` mass `raw` and `trimmings` in its unit; `known: false` where no table prints the yield, or weighs the amount
 * @throws StillroomError UNKNOWN_NAME for a food or form that is not in the pantry; CONTRADICTION for a ready mass
 *   above the raw, or for both `raw` and `ready`; MISSING for no form
 *
 * Sources: USDA SR28 (FOOD_DES refuse), extension trim loss, culinary yields, buying guide, canning guide.
 *
 * @example
 * ```ts
 * import { readyFromRaw } from 'stillroom/produce';
 *
 * const halves = readyFromRaw({ food: 'peaches', form: 'halves', raw: '40 lb' });
 * halves.known && halves.yield; // => { low: 0.76, likely: 0.85, high: 0.88 }
 * halves.known && halves.ready.likely; // => { value: 34, unit: 'lb' }
 * halves.known && halves.trimmings.likely; // => { value: 6, unit: 'lb' }
 * const bushel = readyFromRaw({ food: 'peaches', form: 'halves', raw: '1 bushel' });
 * bushel.known && bushel.raw.likely; // => { value: 48, unit: 'lb' }
 * const pears = readyFromRaw({ food: 'pears', form: 'sliced', ready: '32 oz' });
 * pears.known && pears.raw.likely.value; // ≈ 41.03
 * readyFromRaw({ food: 'pawpaw', form: 'puree', raw: '4 lb' }).known; // => false
 * readyFromRaw({ food: 'peechs', form: 'halves', raw: '40 lb' }); // throws StillroomError UNKNOWN_NAME
 * ```
 */
export function readyFromRaw(input: RawForReadyInput): RawForReady | NotKnown;
export function readyFromRaw(input: ReadyFromRawInput): ReadyFromRaw | NotKnown;
export function readyFromRaw(input: ReadyFromRawInput | RawForReadyInput): ReadyFromRaw | RawForReady | NotKnown {
  if (typeof input !== 'object' || input === null || !('ready' in input)) return readyOf(input);
  if ('raw' in input) fail('CONTRADICTION', 'ready', input.ready, 'the raw amount or what you need ready, not both');
  return rawForReady(input);
}

function readyOf(input: ReadyFromRawInput): ReadyFromRaw | NotKnown {
  const given = readInput(readySchema, input);
  const amount = massBought(given.food.id, given.raw);
  const found = yieldAsked(given, amount.known ? amount.raw.likely : undefined);
  if (!found.known) return answer(found);
  if (!amount.known) return answer(amount);
  const { lost, ...rest } = found;
  const { raw } = amount;
  const left: Span = found.yield;
  const ready = {
    low: times(raw.low, left.low),
    likely: times(raw.likely, left.likely),
    high: times(raw.high, left.high),
  };
  return answer({
    ...rest,
    raw,
    ready,
    trimmings: {
      low: less(raw.low, times(raw.low, left.high)),
      likely: less(raw.likely, ready.likely),
      high: less(raw.high, times(raw.high, left.low)),
    },
    parts: lost.map(({ what, share: of, boiledOff }) => ({ what, mass: times(raw.likely, of), boiledOff })),
    basis: [...rest.basis, ...amount.basis],
    cautions: [...rest.cautions, ...amount.cautions],
  });
}

/** How much to buy or pick for a mass of ready food: raw = ready / share left. */
function rawForReady(input: RawForReadyInput): RawForReady | NotKnown {
  const given = readInput(rawSchema, input);
  const { ready } = given;
  const found = yieldAsked(given);
  if (!found.known) return answer(found);
  const { lost: _, ...rest } = found;
  const left: Span = found.yield;
  const raw = { low: over(ready, left.high), likely: over(ready, left.likely), high: over(ready, left.low) };
  return answer({
    ...rest,
    raw,
    trimmings: { low: less(raw.low, ready), likely: less(raw.likely, ready), high: less(raw.high, ready) },
  });
}
