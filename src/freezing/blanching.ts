import type * as z from 'zod/mini';
import { handOut } from '../common/handOut';
import { lookUp, nameKey } from '../common/names';
import { fail } from '../errors/StillroomError';
import { choice, fields, mass, name, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { Basis, Caution, Refusal } from '../sources/index';
import { basisOf } from '../sources/table';
import { namedFoods } from './foodNames';
import { type Span, spanOf } from './span';
import { BLANCHING, BLANCHING_WATER, type BlanchingRow, type BlanchingWaterRow, freezingCaution, rule } from './tables';

const schema = fields({
  food: name('a vegetable, such as "green bean"'),
  form: optional(name('the form or size, such as "medium" or "sliced"')),
  method: optional(choice('the method', ['water', 'steam'])),
  mass: optional(mass()),
});
export type BlanchingInput = z.input<typeof schema>;

export interface Blanching {
  readonly food: string;
  readonly form: string;
  readonly method: 'water' | 'steam';
  /** In boiling water from its return to the boil, or in steam. */
  readonly minutes: Span<number>;
  /** Cooling in ice water. */
  readonly coolingMinutes: Span<number>;
  /** With a mass: boiling water and ice for it. */
  readonly water?: Quantity<'volume'>;
  readonly ice?: Quantity<'mass'>;
  /** What a second source prints, with the water it was measured in. */
  readonly otherSource?: {
    readonly minutes: Span<number>;
    readonly amount: string;
    readonly water: Quantity<'volume'>;
  };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const COOKED = new Set(['beet', 'pumpkin', 'winter squash', 'sweet potato']);
const FOODS = namedFoods([...BLANCHING.map(({ food }) => food), ...BLANCHING_WATER.map(({ food }) => food), ...COOKED]);

/** The one row of the form asked for; an error lists the forms. */
function rowOf(rows: readonly BlanchingRow[], form: string | undefined): BlanchingRow {
  const words = form === undefined ? [] : nameKey(form).split(' ');
  const matching = rows.filter((row) => words.every((word) => nameKey(row.form).split(' ').includes(word)));
  const exact = matching.filter((row) => form !== undefined && nameKey(row.form) === nameKey(form));
  // a vegetable of one row has no forms to tell apart
  const [row, second] = rows.length === 1 ? rows : exact.length === 1 ? exact : matching;
  if (row === undefined || second !== undefined) {
    const forms = `one of the printed forms: ${rows.map((entry) => entry.form).join('; ')}`;
    fail(form === undefined ? 'MISSING' : 'UNKNOWN_NAME', 'form', form, forms);
  }
  return row;
}

/** Minutes by the method: the list's, else in water those of the second source, else in steam the printed factor. */
function minutesOf(
  row: BlanchingRow,
  method: 'water' | 'steam',
  second: BlanchingWaterRow | undefined,
): { minutes: Span<number>; basis: readonly Basis[] } {
  const printed = method === 'water' ? row.waterMinutes : row.steamMinutes;
  if (printed !== null) return { minutes: spanOf(printed), basis: [basisOf(row, 'blanching time')] };
  if (row.waterMinutes === null) {
    if (second === undefined) throw new Error(`no boiling-water time for ${row.food}, ${row.form}`);
    return { minutes: spanOf(second.waterMinutes), basis: [basisOf(second, 'blanching time')] };
  }
  const factor = rule('steam-factor');
  const [low, high] = row.waterMinutes;
  return {
    minutes: { low: low * factor.low, high: high * factor.high },
    basis: [basisOf(row, 'boiling-water time'), basisOf(factor, 'steam takes longer by this factor')],
  };
}

/**
 * How long to blanch a vegetable before freezing, how long to cool it, and the water and ice that takes.
 *
 * Boiling-water times count from the return to the boil, which should come within a minute. Where no steam
 * time is printed it is the boiling-water time x 1.5. Cooling takes as long as blanching; corn on the cob twice as long.
 *
 * @param input.food - `"green beans"`, `"corn on the cob"`
 * @param input.form - size or cut, where the list tells them apart: `"medium"`, `"shredded"`
 * @param input.method - `water` (default; `steam` where only that is printed) or `steam`
 * @param input.mass - of the prepared vegetable, for `water` (1 gallon for each lb) and `ice` (1 lb for each lb)
 * @returns the times, or a refusal for vegetables that are cooked instead
 * @throws StillroomError UNKNOWN_NAME; MISSING where a form must be named, listing the forms
 *
 * @example
 * ```ts
 * import { blanching } from 'stillroom/freezing';
 *
 * const beans = blanching({ food: 'green beans', mass: '3 lb' });
 * 'minutes' in beans && beans.minutes; // => { low: 3, high: 3 }
 * blanching({ food: 'asparagus' }); // throws StillroomError MISSING
 * ```
 */
export function blanching(input: BlanchingInput): Blanching | Refusal {
  const { food: asked, form, method: askedMethod, mass: prepared } = readInput(schema, input);
  const food = lookUp(asked, FOODS, 'food', 'vegetable of the blanching list').name;
  const second = BLANCHING_WATER.find((row) => row.food === food);
  if (COOKED.has(food)) {
    const boiled = second === undefined ? '' : ` (${second.waterMinutes.join(' to ')} min for beets)`;
    return handOut({
      tested: false,
      reason: `${food} is cooked until tender before freezing, not blanched.`,
      instead: `Cook it through${boiled}, cool it and pack it.`,
      basis:
        second === undefined
          ? [{ what: 'cooked, not blanched', kind: 'from-memory' }]
          : [basisOf(second, 'cooking time')],
      cautions: [],
    });
  }
  const listed = BLANCHING.filter((row) => row.food === food);
  // the second source alone: its row read as one of the list
  const rows =
    listed.length > 0 || second === undefined
      ? listed
      : [{ ...second, form: '', waterMinutes: second.waterMinutes, steamMinutes: null }];
  const row = rowOf(rows, form);
  const method = askedMethod ?? (row.waterMinutes === null ? 'steam' : 'water');
  const { minutes, basis } = minutesOf(row, method, second);
  const cooling = rule('cooling-time');
  const coolingFactor = food === 'corn on the cob' ? 2 : cooling.low;
  const perPound = rule('blanch-water-per-lb');
  const ice = rule('ice-per-lb');
  return handOut({
    food,
    form: row.form,
    method,
    minutes,
    coolingMinutes: { low: minutes.low * coolingFactor, high: minutes.high * coolingFactor },
    ...(prepared === undefined
      ? {}
      : {
          ...(method === 'water'
            ? { water: quantityIn<'volume'>(valueIn(prepared, 'lb') * perPound.low, 'gallon', 'gallon') }
            : {}),
          ice: quantityIn<'mass'>(prepared.value * ice.low, prepared.unit, prepared.unit),
        }),
    ...(second === undefined || listed.length === 0
      ? {}
      : {
          otherSource: {
            minutes: spanOf(second.waterMinutes),
            amount: second.amount,
            water: { value: second.waterQuarts, unit: 'quart' as const },
          },
        }),
    basis: joinBasis(
      basis,
      [basisOf(cooling, 'cooling time')],
      prepared === undefined ? [] : [basisOf(perPound, 'boiling water'), basisOf(ice, 'ice')],
      second === undefined || listed.length === 0 ? [] : [basisOf(second, 'times of a second source')],
    ),
    cautions: [
      freezingCaution('boiling-water-scalds'),
      freezingCaution('blanching-no-process'),
      ...(row.obtained === 'memory' ? [caution('from-memory')] : []),
    ],
  });
}
