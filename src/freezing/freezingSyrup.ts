import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { lookUp } from '../common/names';
import { fail } from '../errors/StillroomError';
import { fields, name, number, optional, readInput, volume } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { SYRUPS, type SyrupRow } from './tables';

const schema = fields({
  strength: optional(name('a syrup strength: very light, light, medium, heavy or very heavy')),
  percent: optional(number('a printed syrup percentage: 10, 20, 30, 40 or 50', { above: 0, below: 100 })),
  volume: volume(),
});
export type FreezingSyrupInput = z.input<typeof schema>;

export interface FreezingSyrup {
  readonly strength: string;
  /** Approximate sugar by weight, percent. */
  readonly percent: number;
  readonly sugar: Quantity<'volume'>;
  readonly water: Quantity<'volume'>;
  readonly volume: Quantity<'volume'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const NAMED = SYRUPS.map((row) => ({ name: row.strength, row }));

/** The printed syrup of a percentage. */
export function syrupOfPercent(percent: number): SyrupRow {
  const row = SYRUPS.find((entry) => entry.percent === percent);
  if (row === undefined) {
    fail(
      'UNKNOWN_NAME',
      'percent',
      percent,
      `a printed percentage: ${SYRUPS.map((entry) => entry.percent).join(', ')}`,
    );
  }
  return row;
}

/** A printed syrup scaled to a volume. */
export const scaleSyrup = (row: SyrupRow, made: Quantity<'volume'>) => {
  const batches = valueIn(made, 'cup') / row.yieldCups;
  return {
    sugar: quantityIn(row.sugarCups * batches, 'cup', 'cup'),
    water: quantityIn(row.waterCups * batches, 'cup', 'cup'),
  };
};

/**
 * Sugar and water for a volume of syrup to pack fruit in for the freezer.
 *
 * The five printed mixes, scaled by the volume they make. Sugar and water are in US cups, because the table is.
 *
 * @param input.strength - `very light`, `light`, `medium`, `heavy` or `very heavy`; or
 * @param input.percent - 10, 20, 30, 40 or 50
 * @param input.volume - of syrup wanted
 * @throws StillroomError MISSING without either, CONTRADICTION with both, UNKNOWN_NAME for a strength not printed
 *
 * @example
 * ```ts
 * import { freezingSyrup } from 'stillroom/freezing';
 *
 * const syrup = freezingSyrup({ strength: 'medium', volume: '10 cups' });
 * syrup.sugar; // => { value: 3.5, unit: 'cup' }
 * syrup.water; // => { value: 8, unit: 'cup' }
 * ```
 */
export function freezingSyrup(input: FreezingSyrupInput): FreezingSyrup {
  const { strength, percent, volume: made } = readInput(schema, input);
  if (strength !== undefined && percent !== undefined) {
    fail('CONTRADICTION', 'percent', percent, 'either a strength or a percentage, not both');
  }
  let row: SyrupRow;
  if (strength !== undefined) row = lookUp(strength, NAMED, 'strength', 'syrup strength').row;
  else if (percent !== undefined) row = syrupOfPercent(percent);
  else fail('MISSING', 'strength', undefined, 'a strength such as "medium", or a percentage');
  return answer({
    strength: row.strength,
    percent: row.percent,
    ...scaleSyrup(row, made),
    volume: made,
    basis: [basisOf(row, 'sugar', 'and water, by the yield of the syrup'), basisOf(row, 'water')],
    cautions: [],
  });
}
