import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { Decimal } from '../../common/decimal';
import { fail } from '../../errors/StillroomError';
import { fields, mass, name, optional, readInput, share } from '../../quantity/fields';
import { toDecimalIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../../sources/basis';
import { findProduce } from '../catalogue';
import { caution } from '../cautions';
import { findForm } from './forms';
import { readyShare } from './share';
import { memoryCaution, type Span } from './span';

export const produceField = name('a fruit or vegetable, such as "peach"');
export const formField = name('a form, such as "halves", "slices", "sauce" or "juice"');
export const measuredField = optional(
  fields({ ready: optional(mass()), raw: optional(mass()), ratio: optional(share({ above: 0 })) }),
);
const readySchema = fields({ produce: produceField, form: formField, raw: mass(), measured: measuredField });
const rawSchema = fields({ produce: produceField, form: formField, ready: mass(), measured: measuredField });
export type ReadyFromRawInput = z.input<typeof readySchema>;
export type RawForReadyInput = z.input<typeof rawSchema>;

type Mass = Quantity<'mass'>;

/** One kind of what is lost, at the likely yield. */
export interface TrimmingsPart {
  readonly what: string;
  readonly mass: Mass;
}
interface YieldAnswer {
  readonly produce: string;
  readonly form: string;
  /** What is taken off: `trimmed`, `cored`, `pitted`, `peeled`, `milled`, `juiced`; `measured` where you measured it. */
  readonly preparation: string;
  /** Ready over raw. */
  readonly yield: Range<number>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
export interface ReadyFromRaw extends YieldAnswer {
  readonly ready: Range<Mass>;
  /** Raw less ready: the low end goes with the high end of `ready`. */
  readonly trimmings: Range<Mass>;
  /** What the likely trimmings are; water boiled off is a part of its own. */
  readonly parts: readonly TrimmingsPart[];
}
export interface RawForReady extends YieldAnswer {
  /** The low end goes with the high end of `yield`. */
  readonly raw: Range<Mass>;
  readonly trimmings: Range<Mass>;
}

interface Yield extends YieldAnswer {
  readonly lost: readonly { what: string; share: number }[];
}

type Measured = { ready?: Mass | undefined; raw?: Mass | undefined; ratio?: number | undefined } | undefined;

/** The share that the user measured: a ratio, or a ready weight over the raw weight it came from. */
function measuredShare(measured: Measured, raw: Mass | undefined): number | undefined {
  if (measured === undefined) return undefined;
  const { ready, ratio: share } = measured;
  const from = measured.raw ?? raw;
  if (share !== undefined && ready !== undefined) {
    fail('CONTRADICTION', 'measured', measured, 'either the ready weight or the ratio, not both');
  }
  if (share !== undefined) return share;
  if (ready === undefined) fail('MISSING', 'measured', measured, 'a measured ready weight or ratio');
  if (from === undefined) fail('MISSING', 'measured.raw', undefined, 'the raw weight that the ready weight came from');
  const result = toDecimalIn(ready, 'g').div(toDecimalIn(from, 'g'));
  if (result.gt(1)) fail('CONTRADICTION', 'measured.ready', ready.value, 'no more than the raw weight it came from');
  return result.toNumber();
}

/** Yield of one produce in one form: measured where the user measured it, else published. */
export function yieldOf(produceText: string, formText: string, measured: Measured, raw?: Mass): Yield {
  const produce = findProduce(produceText);
  const own = measuredShare(measured, raw);
  if (own !== undefined) {
    return {
      produce: produce.name,
      form: findForm(formText).name,
      preparation: 'measured',
      yield: { low: own, likely: own, high: own },
      lost: own < 1 ? [{ what: 'trimmings', share: 1 - own }] : [],
      basis: [{ of: 'share left', kind: 'measured' }],
      cautions: [],
    };
  }
  const { form, share } = readyShare(produce, formText);
  return {
    produce: produce.name,
    form: form.name,
    preparation: share.preparation,
    yield: share.span,
    lost: share.lost.filter((part) => part.share > 0),
    basis: joinBasis(share.basis),
    cautions: joinCautions(
      [caution('yield-varies'), caution('yield-is-no-process')],
      share.boiledDown ? [caution('loss-includes-water')] : [],
      share.estimated ? [caution('estimate')] : [],
      memoryCaution(share.rows),
    ),
  };
}

// Decimal keeps ready + trimmings = raw to the last digit that a double holds.
const times = ({ value, unit }: Mass, share: number): Mass => ({
  value: new Decimal(value).times(share).toNumber(),
  unit,
});
const over = ({ value, unit }: Mass, share: number): Mass => ({
  value: new Decimal(value).div(share).toNumber(),
  unit,
});
const less = (one: Mass, other: Mass): Mass => ({
  value: new Decimal(one.value).minus(other.value).toNumber(),
  unit: one.unit,
});

/**
 * How much ready produce a raw weight gives, and how much is taken off, before the first fruit is cut.
 *
 * ready = raw x share left; trimmings = raw - ready. The range is that of the published sources for this food
 * and this preparation: refuse of the food tables, extension trim losses, kitchen yield percentages; its ends are
 * at least 3 points from the likely share, which is how far two sources usually differ. Sauce and juice come from
 * the raw pounds printed for a quart of them. Whole and cut forms count what custom takes off: peaches, apples and
 * pears are peeled for halves and slices; plums, apricots, nectarines and cherries keep their skin.
 *
 * @param input.produce - any name of a fruit or vegetable
 * @param input.form - `whole`, `halves`, `slices`, `diced`, `pitted`, `cored`, `peeled`, `puree`, `sauce`, `juice` ...
 * @param input.raw - weight as bought or picked
 * @param input.measured - your own figure instead: `{ ready }` from this raw weight, `{ ready, raw }` or `{ ratio }`
 *   from an earlier lot
 * @returns `ready` and `trimmings` in the unit of `raw`, adding up to it at each end; `parts` of the likely trimmings
 * @throws StillroomError UNKNOWN_NAME for produce in no table (the nearest names are offered) or a form without a
 *   published yield (the forms that have one are named); CONTRADICTION for a ready weight above the raw
 *
 * Sources: USDA SR28 (FOOD_DES refuse), extension trim loss, culinary yields, buying guide, canning guide.
 *
 * @example
 * ```ts
 * import { readyFromRaw } from 'stillroom/produce';
 *
 * const { ready, trimmings, yield: share } = readyFromRaw({ produce: 'peaches', form: 'halves', raw: '40 lb' });
 * share; // => { low: 0.76, likely: 0.85, high: 0.88 }
 * ready.likely; // => { value: 34, unit: 'lb' }
 * trimmings.likely; // => { value: 6, unit: 'lb' }
 * readyFromRaw({ produce: 'peechs', form: 'halves', raw: '40 lb' }); // throws StillroomError UNKNOWN_NAME
 * ```
 */
export function readyFromRaw(input: ReadyFromRawInput): ReadyFromRaw {
  const { produce, form, raw, measured } = readInput(readySchema, input);
  const { lost, ...found } = yieldOf(produce, form, measured, raw);
  const share: Span = found.yield;
  const ready = { low: times(raw, share.low), likely: times(raw, share.likely), high: times(raw, share.high) };
  return answer({
    ...found,
    ready,
    trimmings: { low: less(raw, ready.high), likely: less(raw, ready.likely), high: less(raw, ready.low) },
    parts: lost.map((part) => ({ what: part.what, mass: times(raw, part.share) })),
  });
}

/**
 * How much to buy or pick for a weight of ready produce: `readyFromRaw` turned round.
 *
 * raw = ready / share left; buy the high end to be sure of enough.
 *
 * @param input.produce - any name of a fruit or vegetable
 * @param input.form - see `readyFromRaw`
 * @param input.ready - weight wanted after preparation
 * @param input.measured - your own figure instead: `{ ratio }`, or `{ ready, raw }` of an earlier lot
 * @returns `raw` and `trimmings` in the unit of `ready`
 * @throws StillroomError as `readyFromRaw`
 *
 * @example
 * ```ts
 * import { rawForReady } from 'stillroom/produce';
 *
 * rawForReady({ produce: 'pears', form: 'sliced', ready: '32 oz' }).raw.likely.value; // ≈ 41.03
 * ```
 */
export function rawForReady(input: RawForReadyInput): RawForReady {
  const { produce, form, ready, measured } = readInput(rawSchema, input);
  const { lost: _, ...found } = yieldOf(produce, form, measured);
  const share: Span = found.yield;
  const raw = { low: over(ready, share.high), likely: over(ready, share.likely), high: over(ready, share.low) };
  return answer({
    ...found,
    raw,
    trimmings: { low: less(raw.low, ready), likely: less(raw.likely, ready), high: less(raw.high, ready) },
  });
}
