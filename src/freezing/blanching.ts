import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { choice, fields, kitchenElevation, mass, name, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { Basis, Caution, Refusal } from '../sources/index';
import { basisOf } from '../sources/table';
import { beforeFreezingOf, cutOf, refuseForm, rowsOfFood, vegetableNamed } from './beforeFreezing';
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
  food: name('a vegetable, such as "green bean"'),
  form: optional(name('the form or size, such as "medium" or "sliced"')),
  blanchIn: optional(choice('what to blanch in', ['water', 'steam'])),
  mass: optional(mass()),
  elevation: optional(kitchenElevation()),
});
export type BlanchingInput = z.input<typeof schema>;

export interface Blanching {
  readonly food: string;
  readonly form: string;
  readonly blanchIn: 'water' | 'steam';
  /** In boiling water from its return to the boil, or in steam. */
  readonly minutes: Span<number>;
  /** Cooling in ice water. */
  readonly coolingMinutes: Span<number>;
  /** With a mass: boiling water and ice for it. */
  readonly water?: Quantity<'volume'>;
  readonly ice?: Quantity<'mass'>;
  /** What a second source prints in boiling water for the same cut, with the water it was measured in. */
  readonly otherSource?: {
    readonly minutes: Span<number>;
    readonly amount?: string;
    readonly water?: Quantity<'volume'>;
  };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The one row of the cut asked for, by the method where several print it; an error lists the cuts. */
function oneRow(
  fitting: readonly BlanchingRow[],
  food: string,
  form: string | undefined,
  method: 'water' | 'steam' | undefined,
): BlanchingRow {
  const printed = method === undefined ? fitting : fitting.filter((row) => minutesIn(row, method) !== null);
  const [row, second] = printed.length > 0 ? printed : fitting;
  if (row === undefined || second !== undefined) {
    refuseForm(
      food,
      form,
      rowsOfFood(food).map((each) => cutOf(each, food)),
    );
  }
  return row;
}

const minutesIn = (row: BlanchingRow, method: 'water' | 'steam') =>
  method === 'water' ? row.waterMinutes : row.steamMinutes;

/** Minutes by the method: as printed, or in steam by the printed factor. */
function minutesOf(
  row: BlanchingRow,
  method: 'water' | 'steam',
): { minutes: Span<number>; basis: readonly Basis[] } | undefined {
  const printed = minutesIn(row, method);
  if (printed !== null) return { minutes: spanOf(printed), basis: [basisOf(row, 'blanching time')] };
  if (row.waterMinutes === null) return undefined;
  const factor = rule('steam-factor');
  const [low, high] = row.waterMinutes;
  return {
    minutes: { low: low * factor.low, high: high * factor.high },
    basis: [basisOf(row, 'boiling-water time'), basisOf(factor, 'steam takes longer by this factor')],
  };
}

/** The answer for a food that is cooked, or frozen raw. */
function notBlanched(food: string, does: 'cook' | 'raw', rows: readonly BeforeFreezingRow[]): Refusal {
  const sizes = rows.flatMap(({ minutes, size }) =>
    minutes === undefined ? [] : [`${minutes.join(' to ')} min${size === undefined ? '' : ` (${size})`}`],
  );
  const cooked = sizes.length === 0 ? 'Cook it until tender' : `Cook it until tender, ${sizes.join(', ')}`;
  return {
    tested: false,
    reason:
      does === 'cook'
        ? `${food} is cooked until tender before freezing, not blanched.`
        : `${food} in this cut needs no blanching before freezing.`,
    instead: does === 'cook' ? `${cooked}; cool it and pack it.` : 'Wash it, cut it, and freeze it raw.',
    basis: rows.map((row) => basisOf(row, does === 'cook' ? 'cooked, not blanched' : 'frozen without blanching')),
    cautions: rows.some(({ obtained }) => obtained === 'memory') ? [caution('recalled')] : [],
  };
}

/** Boiling water and ice for a weight of the prepared vegetable. */
function bath(row: BlanchingRow, method: 'water' | 'steam', prepared: Quantity<'mass'>) {
  const perPound = rule(row.leafy === true ? 'blanch-water-per-lb-leafy' : 'blanch-water-per-lb');
  const ice = rule('ice-per-lb');
  return {
    amounts: {
      ...(method === 'water'
        ? { water: quantityIn<'volume'>(valueIn(prepared, 'lb') * perPound.low, 'gallon', 'gallon') }
        : {}),
      ice: quantityIn<'mass'>(prepared.value * ice.low, prepared.unit, prepared.unit),
    },
    basis: [...(method === 'water' ? [basisOf(perPound, 'boiling water')] : []), basisOf(ice, 'ice')],
  };
}

/** The minutes that a high kitchen adds. */
function highKitchen(at: Quantity<'length'> | undefined): { more: number; basis: readonly Basis[] } {
  const from = rule('high-blanch-elevation');
  if (at === undefined || valueIn(at, 'ft') < from.low - 1e-6) return { more: 0, basis: [] };
  const more = rule('high-blanch-minutes');
  return { more: more.low, basis: [basisOf(more, `longer from ${from.low} ft`)] };
}

/**
 * How long to blanch a vegetable before freezing, how long to cool it, and the water and ice that takes.
 *
 * A time belongs to a cut and a size. Boiling-water times count from the return to the boil, which should come
 * within a minute. Where no steam time is printed it is the boiling-water time x 1.5. From 5,000 ft blanching takes
 * 1 minute longer. Cooling takes as long as blanching; corn on the cob twice as long.
 *
 * @param input.food - `"green beans"`, `"corn on the cob"`; a wider name such as `"corn"` needs a form
 * @param input.form - size or cut, where the list tells them apart: `"medium"`, `"shredded"`, `"kernels"`; a cut that
 *   the list does not print is refused
 * @param input.blanchIn - `water` (default; `steam` where only that is printed) or `steam`
 * @param input.mass - of the prepared vegetable, for `water` (1 gallon for each lb, 2 for leafy greens) and `ice`
 *   (1 lb for each lb)
 * @param input.elevation - of the kitchen; below 5,000 ft if not given
 * @returns the times, or a refusal for vegetables that are cooked, or frozen raw, instead
 * @throws StillroomError UNKNOWN_NAME for a vegetable or a cut that is not in the list; MISSING where a form must be
 *   named, listing the forms
 *
 * @example
 * ```ts
 * import { blanching } from 'stillroom/freezing';
 *
 * const beans = blanching({ food: 'green beans', mass: '3 lb' });
 * 'minutes' in beans && beans.minutes; // => { low: 3, high: 3 }
 * blanching({ food: 'asparagus' }); // throws StillroomError MISSING
 * blanching({ food: 'corn', form: 'on the cob' }); // throws StillroomError UNKNOWN_NAME
 * ```
 */
export function blanching(input: BlanchingInput): Blanching | Refusal {
  const { food: asked, form, blanchIn: wanted, mass: prepared, elevation: height } = readInput(schema, input);
  const food = vegetableNamed(asked);
  const first = beforeFreezingOf(food, form);
  if (first.does === 'cook' || first.does === 'raw') return answer(notBlanched(food, first.does, first.rows));
  const row = oneRow(first.does === 'blanch' ? first.rows : [], food, form, wanted);
  const blanchIn = wanted ?? (row.waterMinutes === null ? 'steam' : 'water');
  const timed = minutesOf(row, blanchIn);
  if (timed === undefined) {
    return answer({
      tested: false,
      reason: `These tables hold no boiling-water time for ${food}, ${row.form}.`,
      instead: `Steam it: ${(row.steamMinutes as Ends).join(' to ')} min.`,
      basis: [basisOf(row, 'steam time')],
      cautions: [],
    });
  }
  const high = highKitchen(height);
  const minutes = { low: timed.minutes.low + high.more, high: timed.minutes.high + high.more };
  const cooling = rule('cooling-time');
  const coolingFactor = row.coolingTimes ?? cooling.low;
  const needs = prepared === undefined ? undefined : bath(row, blanchIn, prepared);
  // a boiling-water time is no second reading of a steam time
  const second =
    blanchIn === 'water'
      ? BLANCHING_WATER.find((other) => other.food === row.food && other.form === row.form)
      : undefined;
  return answer({
    food: row.food,
    form: row.form,
    blanchIn,
    minutes,
    coolingMinutes: { low: minutes.low * coolingFactor, high: minutes.high * coolingFactor },
    ...needs?.amounts,
    ...(second === undefined ? {} : { otherSource: otherSource(second) }),
    basis: joinBasis(
      timed.basis,
      high.basis,
      [basisOf(row.coolingTimes === undefined ? cooling : row, 'cooling time')],
      needs?.basis ?? [],
      second === undefined ? [] : [basisOf(second, 'times of a second source')],
    ),
    cautions: [
      freezingCaution('boiling-water-scalds'),
      freezingCaution('blanching-no-process'),
      ...(row.obtained === 'memory' ? [caution('recalled')] : []),
    ],
  });
}

const otherSource = ({
  waterMinutes,
  amount,
  waterQuarts,
}: BlanchingWaterRow): NonNullable<Blanching['otherSource']> => ({
  minutes: spanOf(waterMinutes),
  ...(amount === null ? {} : { amount }),
  ...(waterQuarts === null ? {} : { water: { value: waterQuarts, unit: 'quart' } }),
});
