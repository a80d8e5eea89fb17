import type * as z from 'zod/mini';
import fruit from '../../../data/produce/frozen-yields-fruit.json';
import vegetable from '../../../data/produce/frozen-yields-vegetable.json';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { fields, mass, readInput } from '../../quantity/fields';
import { roundToStep } from '../../quantity/fractions';
import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { findProduce, namesAbove } from '../catalogue';
import { caution } from '../cautions';
import { poundsRows } from './printed';
import { produceField } from './readyFromRaw';
import { mapSpan, memoryCaution, type Span, spanIn, spanOf } from './span';

const schema = fields({ produce: produceField, raw: mass() });
export type FrozenPintsFromRawInput = z.input<typeof schema>;

export interface FrozenPintsFromRaw {
  readonly produce: string;
  /** Full US pint packs, rounded down at each end. */
  readonly pints: Range<number>;
  /** Raw weight that one pint pack takes. */
  readonly rawPerPint: Range<Quantity<'mass'>>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

export interface FrozenYieldRow extends Sourced {
  readonly produce: string;
  readonly container: string | null;
  readonly lb: number | null;
  readonly pt_frozen: readonly [number, number];
  readonly perPintFrozen: readonly [number, number];
  readonly perPintUnit: 'lb' | 'pint' | 'quart';
}
export const frozenRows = [...asTable<FrozenYieldRow>(fruit).rows, ...asTable<FrozenYieldRow>(vegetable).rows];

/** Pounds a frozen pint by one row: as printed, or the container over its pints where it prints measures. */
function poundsPerPint({ lb, pt_frozen, perPintFrozen, perPintUnit }: FrozenYieldRow): number[] {
  if (perPintUnit === 'lb') return [...perPintFrozen];
  return lb === null ? [] : [lb / pt_frozen[1], lb / pt_frozen[0]];
}

/**
 * How many pint packs of frozen produce a raw weight gives.
 *
 * pints = raw / printed pounds a pint, over every row for the produce; rows that were read go before recalled ones.
 *
 * @param input.produce - any name of a fruit or vegetable
 * @param input.raw - weight as bought or picked
 * @returns `pints` whole, rounded down at each end; `rawPerPint` in the unit of `raw`
 * @throws StillroomError UNKNOWN_NAME for produce in no table, or without a printed frozen yield
 *
 * Sources: Home and Garden Bulletin 10 (most rows recalled, and marked so); UGA Circular 780.
 *
 * @example
 * ```ts
 * import { frozenPintsFromRaw } from 'stillroom/produce';
 *
 * frozenPintsFromRaw({ produce: 'plums', raw: '50 lb' }).pints; // => { low: 33, likely: 40, high: 50 }
 * ```
 */
export function frozenPintsFromRaw(input: FrozenPintsFromRawInput): FrozenPintsFromRaw {
  const given = readInput(schema, input);
  const produce = findProduce(given.produce);
  const names = namesAbove(produce);
  const frozen = frozenRows
    .filter((row) => names.includes(row.produce))
    .map((row) => ({ row, lb: poundsPerPint(row) }));
  const extension = poundsRows
    .filter((row) => names.includes(row.produce))
    .map((row) => ({ row, lb: row.lbPerPtFrozen ?? [] }));
  const printed = [...frozen, ...extension].filter(({ lb }) => lb.length > 0);
  const read = printed.filter(({ row }) => row.obtained !== 'memory');
  const used = read.length > 0 ? read : printed;
  if (used.length === 0) fail('UNKNOWN_NAME', 'produce', given.produce, 'produce with a printed yield of frozen pints');
  const figures = used.flatMap(({ lb }) => lb);
  const { low, high } = spanOf(figures[0] as number, figures);
  const perPint: Span = { low, likely: (low + high) / 2, high };
  const pounds = valueIn(given.raw, 'lb');
  return answer({
    produce: produce.name,
    pints: mapSpan({ low: high, likely: perPint.likely, high: low }, (lb) =>
      roundToStep(pounds / lb, 1, 'down').toNumber(),
    ),
    rawPerPint: spanIn(perPint, 'lb', given.raw.unit),
    basis: joinBasis(used.map(({ row }) => basisOf(row, 'raw weight for a frozen pint'))),
    cautions: [caution('yield-varies'), ...memoryCaution(used.map(({ row }) => row))],
  });
}
