/**
 * The one balance under drying, boiling down, sweetening and blending: what is dissolved or dry stays, and water or
 * sugar comes or goes. Shares are of the mass, 0 to 1. Internal: modules import it, callers see only their answers.
 */
import { fail } from '../errors/StillroomError';
import { mapRange, turnRange } from '../quantity/range';
import type { Range } from '../quantity/types';
import type { Basis } from '../sources/basis';

/** A mass, in any unit, and the share of it that is solids. */
export interface Part {
  readonly mass: number;
  readonly solids: number;
}

/** Everything in one pot: the masses add up, and so do their solids. */
export function mixOf(parts: readonly Part[]): Part {
  const mass = parts.reduce((sum, part) => sum + part.mass, 0);
  const solids = parts.reduce((sum, part) => sum + part.mass * part.solids, 0);
  return { mass, solids: mass === 0 ? 0 : solids / mass };
}

/**
 * What to add to one unit of mass to bring it from one share of solids to another, where what is added has `added`
 * (0 for water, 1 for sugar or salt): (to - from) / (added - to). Below zero it is taken away: water that boils off.
 * `to` must differ from `added`, or equal `from`.
 */
export const toAdd = (from: number, to: number, added: number): number =>
  from === to ? 0 : (to - from) / (added - to);

/**
 * The Pearson square: the parts by mass of a strong and a weak share that mix to a target between, in percent. It is
 * `toAdd` without a mass: strong parts for each weak part are `toAdd(weak, target, strong)`. Doubles: 60 % less 10 % is 50.
 */
export const partsOf = (strong: number, weak: number, target: number): { strong: number; weak: number } => {
  const percent = (from: number, to: number): number => Number((100 * (from - to)).toPrecision(12));
  return { strong: percent(target, weak), weak: percent(strong, target) };
};

/** The share of the mass that is left when water goes until the solids are `to`: from / to. */
export const leftAtSolids = (from: number, to: number): number => from / to;

/** The share of the fresh mass that is left at a target moisture: the solids stay, so (1 - moisture) / (1 - target). */
export const shareLeft = (moisture: number, target: number): number => leftAtSolids(1 - moisture, 1 - target);

/** The same for a range of moistures: the moistest food leaves the least, so it makes the low end. */
export const sharesLeft = (moisture: Range<number>, target: number): Range<number> =>
  turnRange(mapRange(moisture, (start) => shareLeft(start, target)));

/** The moisture now of food that has come down to `left` of its fresh mass: the inverse of `shareLeft`. */
export const moistureAtShare = (moisture: number, left: number): number => 1 - (1 - moisture) / left;

/** The moisture at first of food that now is `left` of its fresh mass and has this moisture. */
export const moistureBefore = (moistureNow: number, left: number): number => 1 - left * (1 - moistureNow);

/** A target above the start cannot be reached by drying; where no target was given, the moisture is what is wrong. */
export function refuseWetter(moisture: number, target: number, givenTarget: unknown): void {
  if (target <= moisture) return;
  if (givenTarget === undefined)
    fail('CONTRADICTION', 'moisture', moisture, `a moisture above the target of ${target}`);
  fail('CONTRADICTION', 'targetMoisture', givenTarget, `a target of at most the start's moisture, ${moisture}`);
}

/** Solids below the start cannot be reached by boiling down or sweetening; `path` names the target's field. */
export function refuseThinner(start: number, target: number, path: string): void {
  if (target < start)
    fail('CONTRADICTION', path, target, `at least ${start}, what it has now; to thin it, add water (pearsonSquare)`);
}

/** Masses add up: no source is needed, and none is named. `of` is the path of the answer's field. */
export const balanceBasis = (
  of: string,
  note = 'mass balance: the solids stay, and water or sugar comes or goes',
): Basis => ({
  of,
  kind: 'derived',
  note,
});
