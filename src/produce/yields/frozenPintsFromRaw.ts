import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import type { Given } from '../../common/given';
import { food } from '../../foods/fields';
import { figuresFor } from '../../foods/figuresFor';
import { nameOf } from '../../foods/tables';
import { fields, readInput } from '../../quantity/fields';
import { roundToStep } from '../../quantity/fractions';
import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import type { NotKnown } from '../../sources/no';
import { caution } from '../cautions';
import { missing } from '../shape';
import { basisOfRows, memoryCaution, type Span, spanIn, spanOf } from '../span';
import { bought, massBought } from '../weights/asBought';
import { type FrozenRow, frozenRows, poundsRows } from './tables';

const schema = fields({
  /** A fruit or vegetable by any of its names. */
  food: food(),
  /** As bought or picked: a mass, a volume, or a number of pieces or containers. */
  raw: bought(),
});
export type FrozenPintsFromRawInput = Given<z.input<typeof schema>>;

/** The packs that a raw amount gives. */
export interface FrozenPintsFromRaw {
  /** These tables print a yield. */
  readonly known: true;
  /** Its trade name. */
  readonly food: string;
  /** Full US pint packs, rounded down at each end. */
  readonly pints: Range<number>;
  /** Raw mass that one pint pack takes, in the unit of `raw`. */
  readonly rawPerPint: Range<Quantity<'mass'>>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** Pounds a frozen pint by one row: as printed, or the container over its pints where it prints measures. */
function poundsPerPint({ lb, pt_frozen, perPintFrozen, perPintUnit }: FrozenRow): number[] {
  if (perPintUnit === 'lb') return [...perPintFrozen];
  return lb === null ? [] : [lb / pt_frozen[1], lb / pt_frozen[0]];
}

/**
 * How many pint packs of frozen food a raw amount gives.
 *
 * pints = raw / printed pounds a pint, over every row for the food; rows that were read go before recalled ones.
 *
 * @returns `pints` whole, rounded down at each end; `rawPerPint` in the unit of `raw`; `known: false` where no table
 *   prints frozen pints of the food, or weighs the amount
 * @throws StillroomError UNKNOWN_NAME for a food that is not in the pantry
 *
 * Sources: Home and Garden Bulletin 10 (most rows recalled, and marked so); UGA Circular 780.
 *
 * @example
 * ```ts
 * import { frozenPintsFromRaw } from 'stillroom/produce';
 *
 * const plums = frozenPintsFromRaw({ food: 'plums', raw: '50 lb' });
 * plums.known && plums.pints; // => { low: 33, likely: 40, high: 50 }
 * ```
 */
export function frozenPintsFromRaw(input: FrozenPintsFromRawInput): FrozenPintsFromRaw | NotKnown {
  const given = readInput(schema, input);
  const { id } = given.food;
  const foods = figuresFor(id, 'yields');
  const frozen = frozenRows.filter((row) => foods.includes(row.food)).map((row) => ({ row, lb: poundsPerPint(row) }));
  const extension = poundsRows
    .filter((row) => foods.includes(row.food))
    .map((row) => ({ row, lb: row.lbPerPtFrozen ?? [] }));
  const printed = [...frozen, ...extension].filter(({ lb }) => lb.length > 0);
  const read = printed.filter(({ row }) => row.obtained !== 'memory');
  const used = read.length > 0 ? read : printed;
  if (used.length === 0) {
    const text = `These tables print no pints of frozen ${nameOf(id)} from raw.`;
    return answer(missing('no yield', text, [{ text: 'Weigh what goes into one pack, and divide.' }]));
  }
  const amount = massBought(id, given.raw);
  if (!amount.known) return answer(amount);
  const figures = used.flatMap(({ lb }) => lb);
  const { low, high } = spanOf(figures[0] as number, figures);
  const perPint: Span = { low, likely: (low + high) / 2, high };
  const packs = (raw: Quantity<'mass'>, lb: number): number =>
    roundToStep(valueIn(raw, 'lb') / lb, 1, 'down').toNumber();
  const rows = used.map(({ row }) => row);
  return answer({
    known: true as const,
    food: nameOf(id),
    pints: {
      low: packs(amount.raw.low, perPint.high),
      likely: packs(amount.raw.likely, perPint.likely),
      high: packs(amount.raw.high, perPint.low),
    },
    rawPerPint: spanIn(perPint, 'lb', amount.raw.likely.unit),
    basis: [
      ...basisOfRows(id, rows, 'rawPerPint', 'raw weight for a frozen pint'),
      ...amount.basis.map((line) => ({ ...line, of: 'pints' })),
    ],
    cautions: [caution('yield-varies'), ...memoryCaution(rows), ...amount.cautions],
  });
}
