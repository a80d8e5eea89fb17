import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { choice, fields, optional, readInput, share } from '../../quantity/fields';
import { roundToStep } from '../../quantity/fractions';
import { mapRange, sureRange, turnRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { basisOf, practiceBasis } from '../../sources/table';
import { area } from '../../words/area';
import { count } from '../../words/count';
import { density } from '../../words/density';
import { length } from '../../words/length';
import { ready as readyWord } from '../../words/ready';
import { measured } from '../basis';
import { caution } from '../cautions';
import { endsOf, figure, numberOf, practice } from '../rows';
import { setting } from './tables';

const COVER = practice('tray-cover');
/** The share of a tray that a single layer of pieces covers without touching. */
export const trayCover = (): Range<number> => ({
  low: figure(COVER.low),
  likely: figure(COVER.likely),
  high: figure(COVER.high),
});
/** g/mL of pieces that nobody has measured. */
export const pieceDensity = (): number => numberOf(practice('piece-density'));
const PIECE_INCHES = numberOf(practice('piece-thickness'));
const OVEN = setting('oven-load');

/** kg of pieces in one layer: area (m2) x thickness (m) x density (kg/m3) x covered share. */
export const layerMass = (squareMeters: number, meters: number, gramsPerMilliliter: number, cover: number): number =>
  squareMeters * meters * gramsPerMilliliter * 1000 * cover;

/** The least whole number of lots that hold it; noise of the arithmetic does not add one. */
export const lotsFor = (amount: number, lot: number): number => roundToStep(amount / lot, 1, 'up').toNumber();

/** Pounds for one who measures trays in inches, kilograms for the rest. */
export const massUnitFor = (unit: string): 'lb' | 'kg' => (unit === 'in2' || unit === 'ft2' ? 'lb' : 'kg');

const schema = /* @__PURE__ */ fields({
  /** Of one tray: above zero. */
  area: area(),
  /** Of the pieces: up to 10 cm; 1/4 in if not given. */
  thickness: optional(length({ max: { value: 10, unit: 'cm' } })),
  /** Share of the tray that the pieces cover, if you know it: above 0 to 1, or percent. */
  cover: optional(share({ above: 0 })),
  /** Of the pieces: up to 2 g/mL; 1 g/mL if not given. */
  density: optional(density({ max: { value: 2, unit: 'g/mL' } })),
  /** Ready food to dry, for `traysNeeded`: a mass above zero. */
  ready: optional(readyWord()),
  /** Trays of the dryer, 1 to 1,000, for `loads`; needs `ready`. */
  trays: optional(count('trays', 1, 1000)),
  /** What it dries in: `dryer` or `oven`. */
  dryIn: optional(choice('the dryer', ['dryer', 'oven'])),
});
export type TrayLoadInput = z.input<typeof schema>;

export interface TrayLoad {
  /** Ready food in one layer on one tray. */
  readonly perTray: Range<Quantity<'mass'>>;
  /** Trays that `ready` takes: `high` is the number to have at hand. */
  readonly traysNeeded?: Range<number>;
  /** Dryer loads that `ready` takes with `trays` trays. */
  readonly loads?: Range<number>;
  /** The printed limit for one oven load. */
  readonly ovenLoad?: {
    /** The least that is printed. */
    readonly low: Quantity<'mass'>;
    /** The most that is printed. */
    readonly high: Quantity<'mass'>;
  };
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * How much ready food one dryer tray holds in a single layer, and how many trays or loads an amount takes.
 *
 * per tray = area x thickness x density x covered share. These tables hold no printed load for a tray area; the covered
 * share (0.6 to 0.9 of the tray, pieces not touching) is common practice, so the answer is a range. Weigh one full
 * tray and give its `cover` to do better.
 *
 * @returns masses in the unit of `ready`, otherwise lb for a tray in in2 or ft2 and kg for the rest
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
  const { thickness = { value: PIECE_INCHES, unit: 'in' } as const, cover, ready, trays, dryIn: dryer } = given;
  if (trays !== undefined && ready === undefined) {
    fail('MISSING', 'ready', undefined, 'the mass of ready food that the trays are for');
  }
  const unit = ready?.unit ?? massUnitFor(given.area.unit);
  const perMilliliter = given.density === undefined ? pieceDensity() : valueIn(given.density, 'g/mL');
  const covers = cover === undefined ? trayCover() : sureRange(cover);
  const kilograms = mapRange(covers, (part) =>
    layerMass(valueIn(given.area, 'm2'), valueIn(thickness, 'm'), perMilliliter, part),
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
    basis: [
      { of: 'perTray', kind: 'equation', note: 'area x thickness x density x covered share' },
      cover === undefined
        ? practiceBasis('perTray', 'share of the tray covered, 0.6 to 0.9')
        : measured('perTray', 'share of the tray covered'),
      ...(given.density === undefined ? [practiceBasis('perTray', 'pieces as heavy as water')] : []),
      ...(given.thickness === undefined ? [practiceBasis('perTray', 'pieces 1/4 in thick')] : []),
      ...(oven ? [basisOf(OVEN, 'ovenLoad', 'load of an oven, over 2 to 4 trays')] : []),
    ],
    cautions: [caution('estimate')],
  });
}
