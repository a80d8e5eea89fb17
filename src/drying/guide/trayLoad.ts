import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { area, choice, count, density, fields, length, mass, optional, readInput, share } from '../../quantity/fields';
import { roundToStep } from '../../quantity/fractions';
import { mapRange, turnRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { caution } from '../cautions';
import { endsOf, setting } from './settings';

/** The share of a tray that a single layer of pieces covers without touching: what cooks do; no source prints it. */
const COVER: Range<number> = { low: 0.6, likely: 0.75, high: 0.9 };
/** Fresh fruit and vegetables weigh about as much as water; most float, a few sink. */
const PIECE_DENSITY = 1; // g/mL
const PIECE_THICKNESS: Quantity<'length'> = { value: 0.25, unit: 'in' };

const OVEN = setting('ovenLoad');

/** kg of pieces in one layer: area (m2) x thickness (m) x density (kg/m3) x covered share. */
export const layerMass = (squareMetres: number, metres: number, gramsPerMillilitre: number, cover: number): number =>
  squareMetres * metres * gramsPerMillilitre * 1000 * cover;

/** The least whole number of lots that hold it; noise of the arithmetic does not add one. */
export const lotsFor = (amount: number, lot: number): number => roundToStep(amount / lot, 1, 'up').toNumber();

/** Pounds for one who measures trays in inches, kilograms for the rest. */
export const massUnitFor = (unit: string): 'lb' | 'kg' => (unit === 'in2' || unit === 'ft2' ? 'lb' : 'kg');

const schema = fields({
  area: area(),
  thickness: optional(length({ max: { value: 10, unit: 'cm' } })),
  cover: optional(share({ above: 0 })),
  density: optional(density({ max: { value: 2, unit: 'g/mL' } })),
  ready: optional(mass()),
  trays: optional(count('trays', 1, 1000)),
  dryer: optional(choice('the dryer', ['dryer', 'oven'])),
});
export type TrayLoadInput = z.input<typeof schema>;

export interface TrayLoad {
  /** Ready produce in one layer on one tray. */
  readonly perTray: Range<Quantity<'mass'>>;
  /** Trays that `ready` takes: `high` is the number to have at hand. */
  readonly traysNeeded?: Range<number>;
  /** Dryer loads that `ready` takes with `trays` trays. */
  readonly loads?: Range<number>;
  /** The printed limit for one oven load. */
  readonly ovenLoad?: { readonly low: Quantity<'mass'>; readonly high: Quantity<'mass'> };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How much ready produce one dryer tray holds in a single layer, and how many trays or loads an amount takes.
 *
 * per tray = area x thickness x density x covered share. No publication prints a load per tray area; the covered
 * share (0.6 to 0.9 of the tray, pieces not touching) is common practice, so the answer is a range. Weigh one full
 * tray and give its `cover` to do better.
 *
 * @param input.area - of one tray
 * @param input.thickness - of the pieces; 1/4 in if not given
 * @param input.cover - share of the tray the pieces cover, above 0 to 1, if you know it
 * @param input.density - of the pieces, up to 2 g/mL; 1 g/mL if not given
 * @param input.ready - ready produce to dry, for `traysNeeded`
 * @param input.trays - trays of the dryer, 1 to 1,000, for `loads`; needs `ready`
 * @param input.dryer - `oven` adds the printed limit of an oven load and keeps `loads` within it
 * @returns weights in the unit of `ready`, otherwise lb for a tray in in2 or ft2 and kg for the rest
 * @throws StillroomError MISSING when `trays` is given without `ready`
 *
 * @example
 * ```ts
 * import { trayLoad } from 'stillroom/drying';
 *
 * const { perTray, traysNeeded } = trayLoad({ area: '1 ft2', thickness: '1/4 in', ready: '10 lb' });
 * perTray.likely.value; // ≈ 0.98
 * traysNeeded; // => { low: 9, likely: 11, high: 13 }
 * ```
 */
export function trayLoad(input: TrayLoadInput): TrayLoad {
  const given = readInput(schema, input);
  const { thickness = PIECE_THICKNESS, cover, ready, trays, dryer } = given;
  if (trays !== undefined && ready === undefined) {
    fail('MISSING', 'ready', undefined, 'the weight of ready produce that the trays are for');
  }
  const unit = ready?.unit ?? massUnitFor(given.area.unit);
  const perMillilitre = given.density === undefined ? PIECE_DENSITY : valueIn(given.density, 'g/mL');
  const covers = cover === undefined ? COVER : { low: cover, likely: cover, high: cover };
  const kilograms = mapRange(covers, (share) =>
    layerMass(valueIn(given.area, 'm2'), valueIn(thickness, 'm'), perMillilitre, share),
  );
  const readyKg = ready === undefined ? undefined : valueIn(ready, 'kg');
  const [ovenLow, ovenHigh] = endsOf(OVEN);
  const oven = dryer === 'oven';
  // an oven takes what its trays hold, or the printed limit where that is less; fewer loads are never promised
  const ovenKg = valueIn({ value: ovenLow, unit: 'lb' }, 'kg');
  const perLoad = mapRange(kilograms, (kg) =>
    trays === undefined ? 0 : oven ? Math.min(kg * trays, ovenKg) : kg * trays,
  );
  return answer({
    perTray: mapRange(kilograms, (kg) => quantityIn(kg, 'kg', unit)),
    ...(readyKg === undefined ? {} : { traysNeeded: turnRange(mapRange(kilograms, (kg) => lotsFor(readyKg, kg))) }),
    ...(readyKg === undefined || trays === undefined
      ? {}
      : { loads: turnRange(mapRange(perLoad, (kg) => lotsFor(readyKg, kg))) }),
    ...(oven ? { ovenLoad: { low: quantityIn(ovenLow, 'lb', unit), high: quantityIn(ovenHigh, 'lb', unit) } } : {}),
    basis: joinBasis(
      [{ of: 'load = area x thickness x density x covered share', kind: 'equation' }],
      cover === undefined ? [{ of: 'share of the tray covered, 0.6 to 0.9', kind: 'common-practice' }] : [],
      given.density === undefined ? [{ of: 'pieces as heavy as water', kind: 'common-practice' }] : [],
      oven ? [basisOf(OVEN, 'load of an oven, over 2 to 4 trays')] : [],
    ),
    cautions: [caution('estimate')],
  });
}
