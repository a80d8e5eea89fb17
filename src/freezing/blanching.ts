import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { food, form, formOfBoth } from '../foods/fields';
import { nameOf } from '../foods/tables';
import { choice, fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { kitchenElevation } from '../words/elevation';
import { ready } from '../words/ready';
import { beforeFreezingOf, blanchingRows, cutOf, refuseForm } from './beforeFreezing';
import { type Span, spanOf } from './span';
import {
  type BeforeFreezingRow,
  BLANCHING_WATER,
  type BlanchingRow,
  type BlanchingWaterRow,
  type Ends,
  freezingCaution,
  rule,
} from './tables';

const schema = fields({
  /** A vegetable, such as `"green beans"`; its name may say the form: `"corn on the cob"`. */
  food: food(),
  /** The cut or size, where the list tells them apart: `"medium stalks"`, `"shredded"`, `"kernels"`. */
  form: optional(form()),
  /** `water` or `steam`; boiling water by default, or steam where only that is printed. */
  blanchIn: optional(choice('what it is blanched in', ['water', 'steam'])),
  /** Mass of the prepared vegetable, to get `waterVolume` and `ice` for it. */
  ready: optional(ready()),
  /** Elevation of the kitchen; below 5,000 ft by default. */
  elevation: optional(kitchenElevation()),
});
export type BlanchingInput = z.input<typeof schema>;

/** What a second source prints in boiling water for the same cut. */
export interface OtherBlanching {
  /** Minutes from the return to the boil. */
  readonly minutes: Span<number>;
  /** The amount of vegetable it was measured with. */
  readonly measuredWith?: string;
  /** The water it was measured in. */
  readonly waterVolume?: Quantity<'volume'>;
}

export interface Blanching {
  /** The figures are here. */
  readonly known: true;
  /** Trade name of the vegetable. */
  readonly food: string;
  /** The cut or size that the times hold for; absent where none is printed. */
  readonly form?: string;
  /** What it is blanched in. */
  readonly blanchIn: 'water' | 'steam';
  /** In boiling water from its return to the boil, or in steam from the closed lid. */
  readonly minutes: Span<number>;
  /** Minutes of cooling in ice water. */
  readonly coolingMinutes: Span<number>;
  /** Boiling water for `ready`, gallons; where `ready` is given and it is blanched in water. */
  readonly waterVolume?: Quantity<'volume'>;
  /** Ice for `ready`, in its unit; where `ready` is given. */
  readonly ice?: Quantity<'mass'>;
  /** What a second source prints in boiling water for the same cut. */
  readonly otherSource?: OtherBlanching;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The one row of the cut asked for, by the bath where several print it; an error lists the cuts. */
function oneRow(fitting: readonly BlanchingRow[], id: string, form: string | undefined, bath: Bath | undefined) {
  const printed = bath === undefined ? fitting : fitting.filter((row) => minutesIn(row, bath) !== null);
  const [row, second] = printed.length > 0 ? printed : fitting;
  if (row === undefined || second !== undefined) refuseForm(id, form, blanchingRows(id).map(cutOf));
  return row;
}

type Bath = 'water' | 'steam';
const minutesIn = (row: BlanchingRow, bath: Bath) => (bath === 'water' ? row.waterMinutes : row.steamMinutes);

/** Minutes in a bath: as printed, or in steam by the printed factor. */
function minutesOf(row: BlanchingRow, bath: Bath): { minutes: Span<number>; basis: readonly Basis[] } | undefined {
  const printed = minutesIn(row, bath);
  if (printed !== null) return { minutes: spanOf(printed), basis: [basisOf(row, 'minutes')] };
  if (row.waterMinutes === null) return undefined;
  const factor = rule('steam-factor');
  const [low, high] = row.waterMinutes;
  return {
    minutes: { low: low * factor.low, high: high * factor.high },
    basis: [
      basisOf(row, 'minutes', 'minutes in boiling water'),
      basisOf(factor, 'minutes', 'steam takes longer by this factor'),
    ],
  };
}

/** The answer for a food that is cooked, or frozen raw. */
function notBlanched(food: string, does: 'cook' | 'raw', rows: readonly BeforeFreezingRow[]): NotKnown {
  const sizes = rows.flatMap(({ minutes, size }) =>
    minutes === undefined ? [] : [`${minutes.join(' to ')} min${size === undefined ? '' : ` (${size})`}`],
  );
  const cooked = sizes.length === 0 ? 'Cook it until tender' : `Cook it until tender, ${sizes.join(', ')}`;
  return notKnown({
    code: does === 'cook' ? 'cooked instead' : 'frozen raw',
    text:
      does === 'cook'
        ? `${food} is cooked until tender before freezing, not blanched.`
        : `${food} in this cut needs no blanching before freezing.`,
    instead: [
      { text: does === 'cook' ? `${cooked}; cool it and pack it.` : 'Wash it, cut it, and freeze it raw.', food },
    ],
    basis: rows.map((row) => basisOf(row, 'reason')),
    cautions: rows.some(({ obtained }) => obtained === 'memory') ? [caution('recalled')] : [],
  });
}

/** The answer for a food of the pantry that the blanching tables do not have. */
const notInTables = (food: string): NotKnown =>
  notKnown({
    code: 'not in these tables',
    text: `These tables hold no blanching time for ${food}.`,
    instead: 'Find a published time for it, or keep it another way; do not freeze a vegetable unblanched by guess.',
    basis: [derived('reason', 'what the blanching tables hold')],
  });

/** Boiling water and ice for a weight of the prepared vegetable. */
function waterAndIce(row: BlanchingRow, bath: Bath, prepared: Quantity<'mass'>) {
  const perPound = rule(row.leafy === true ? 'blanch-water-per-lb-leafy' : 'blanch-water-per-lb');
  const ice = rule('ice-per-lb');
  return {
    amounts: {
      ...(bath === 'water'
        ? { waterVolume: quantityIn<'volume'>(valueIn(prepared, 'lb') * perPound.low, 'gallon', 'gallon') }
        : {}),
      ice: quantityIn<'mass'>(prepared.value * ice.low, prepared.unit, prepared.unit),
    },
    basis: [...(bath === 'water' ? [basisOf(perPound, 'waterVolume')] : []), basisOf(ice, 'ice')],
  };
}

/** The minutes that a high kitchen adds. */
function highKitchen(at: Quantity<'length'> | undefined): { more: number; basis: readonly Basis[] } {
  const from = rule('high-blanch-elevation');
  if (at === undefined || valueIn(at, 'ft') < from.low - 1e-6) return { more: 0, basis: [] };
  const more = rule('high-blanch-minutes');
  return { more: more.low, basis: [basisOf(more, 'minutes', `longer from ${from.low} ft`)] };
}

/**
 * How long to blanch a vegetable before freezing, how long to cool it, and the water and ice that takes.
 *
 * A time belongs to a cut and a size. Boiling-water times count from the return to the boil, which should come
 * within a minute. Where no steam time is printed it is the boiling-water time x 1.5. From 5,000 ft blanching takes
 * 1 minute longer. Cooling takes as long as blanching; corn on the cob twice as long.
 *
 * @returns the times, or `known: false` for vegetables that are cooked, or frozen raw, instead, and for foods that these
 *   tables do not have
 * @throws StillroomError UNKNOWN_NAME for a name that is no food, or a cut that is not in the list; MISSING where a form
 *   must be named, with the forms in `options`
 *
 * @example
 * ```ts
 * import { blanching } from 'stillroom/freezing';
 *
 * const beans = blanching({ food: 'green beans', ready: '3 lb' });
 * beans.known && beans.minutes; // => { low: 3, high: 3 }
 * const corn = blanching({ food: 'corn', form: 'kernels' });
 * corn.known && corn.minutes; // => { low: 4, high: 4 }
 * blanching({ food: 'asparagus' }); // throws StillroomError MISSING
 * ```
 */
export function blanching(input: BlanchingInput): Blanching | NotKnown {
  const { food: asked, form: named, blanchIn, ready: prepared, elevation: height } = readInput(schema, input);
  const wanted = formOfBoth(asked, named);
  const first = beforeFreezingOf(asked.id, wanted);
  if (first === undefined) return answer(notInTables(asked.name));
  if (first.does === 'cook' || first.does === 'raw') return answer(notBlanched(asked.name, first.does, first.rows));
  const row = oneRow(first.does === 'blanch' ? first.rows : [], asked.id, input.form, blanchIn);
  const bath = blanchIn ?? (row.waterMinutes === null ? 'steam' : 'water');
  const cut = cutOf(row);
  const timed = minutesOf(row, bath);
  if (timed === undefined) {
    return answer(
      notKnown({
        code: 'steam only',
        text: `These tables hold no boiling-water time for ${[asked.name, cut].filter(Boolean).join(', ')}.`,
        instead: `Steam it: ${(row.steamMinutes as Ends).join(' to ')} min.`,
        basis: [basisOf(row, 'instead')],
      }),
    );
  }
  const high = highKitchen(height);
  const minutes = { low: timed.minutes.low + high.more, high: timed.minutes.high + high.more };
  const cooling = rule('cooling-time');
  const coolingFactor = row.coolingTimes ?? cooling.low;
  const needs = prepared === undefined ? undefined : waterAndIce(row, bath, prepared);
  // a boiling-water time is no second reading of a steam time
  const second =
    bath === 'water'
      ? BLANCHING_WATER.find((other) => other.food === row.food && other.forms?.[0] === row.forms?.[0])
      : undefined;
  const lent = row.food === asked.id ? [] : [{ ...basisOf(row, 'minutes'), food: nameOf(row.food) }];
  return answer({
    known: true,
    food: asked.name,
    ...(cut === '' ? {} : { form: cut }),
    blanchIn: bath,
    minutes,
    coolingMinutes: { low: minutes.low * coolingFactor, high: minutes.high * coolingFactor },
    ...needs?.amounts,
    ...(second === undefined ? {} : { otherSource: otherSource(second) }),
    basis: [
      ...lent,
      ...timed.basis,
      ...high.basis,
      basisOf(row.coolingTimes === undefined ? cooling : row, 'coolingMinutes'),
      ...(needs?.basis ?? []),
      ...(second === undefined ? [] : [basisOf(second, 'otherSource')]),
    ],
    cautions: [
      freezingCaution('boiling-water-scalds'),
      freezingCaution('blanching-no-process'),
      ...(row.obtained === 'memory' ? [caution('recalled')] : []),
    ],
  });
}

const otherSource = ({ waterMinutes, amount, waterQuarts }: BlanchingWaterRow): OtherBlanching => ({
  minutes: spanOf(waterMinutes),
  ...(amount === null ? {} : { measuredWith: amount }),
  ...(waterQuarts === null ? {} : { waterVolume: { value: waterQuarts, unit: 'quart' } }),
});
