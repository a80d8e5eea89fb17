import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { elevation, fields, list, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { atmosphereBasis } from './atmosphere';
import { saturationBasis } from './saturation';
import { gaugePressure, steamCautions, steamKelvin } from './steamTemperature';
import { isCustomary, temperatureLike } from './units';

const schema = /* @__PURE__ */ fields({
  bands: list('elevation bands', fields({ gauge: gaugePressure(), bottom: elevation(), top: elevation() }), 1, 100),
});

export type GaugeBandPhysicsInput = z.input<typeof schema>;
/** One band of a gauge table, with the steam temperatures at its ends. */
export interface GaugeBand {
  readonly gauge: Quantity<'pressure'>;
  readonly bottom: Quantity<'length'>;
  readonly top: Quantity<'length'>;
  readonly temperatureAtBottom: Quantity<'temperature'>;
  /** The coolest of the band. */
  readonly temperatureAtTop: Quantity<'temperature'>;
  /** `temperatureAtTop` less that of the first band: below zero where this band runs cooler than the base band may. */
  readonly againstBase: Quantity<'temperatureDifference'>;
}
export interface GaugeBandPhysics {
  readonly bands: readonly GaugeBand[];
  /** The most that any band's top falls below the first band's top; zero where none does. */
  readonly shortfall: Quantity<'temperatureDifference'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The steam temperatures behind a table of gauge pressures by elevation band: at the foot and at the top of each, and
 * the top against that of the base band, which is the coolest that the tested process itself allows.
 *
 * It shows why a table is what it is. It never makes or changes one.
 *
 * Source: U.S. Standard Atmosphere 1976; IAPWS-IF97 equation 31.
 *
 * @param input.bands - 1 to 100 of `{ gauge, bottom, top }`, the base band first
 * @returns each band with its temperatures, in degF for elevations in feet and in degC otherwise
 * @throws StillroomError CONTRADICTION where a band's top is below its bottom, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { gaugeBandPhysics } from 'stillroom/steam';
 *
 * const { bands, shortfall } = gaugeBandPhysics({
 *   bands: [
 *     { gauge: '11 psi', bottom: '0 ft', top: '2000 ft' },
 *     { gauge: '12 psi', bottom: '2001 ft', top: '4000 ft' },
 *   ],
 * });
 * bands[0].temperatureAtTop.value; // ≈ 239.3
 * bands[1].againstBase.value; // ≈ 0.06
 * shortfall.value; // => 0
 * ```
 */
export function gaugeBandPhysics(input: GaugeBandPhysicsInput): GaugeBandPhysics {
  const given = readInput(schema, input);
  const tops = given.bands.map(({ gauge, bottom, top }, index) => {
    if (valueIn(top, 'm') < valueIn(bottom, 'm')) {
      fail(
        'CONTRADICTION',
        `bands[${index}].top`,
        input.bands[index]?.top,
        'an elevation above the bottom of the band',
      );
    }
    return steamKelvin(valueIn(gauge, 'Pa'), valueIn(top, 'm'));
  });
  const base = tops[0] as number;
  const difference = (kelvins: number, unit: { unit: string }): Quantity<'temperatureDifference'> =>
    quantityIn(kelvins, 'delta degC', isCustomary(unit) ? 'delta degF' : 'delta degC');
  const bands = given.bands.map(({ gauge, bottom, top }, index): GaugeBand => {
    const atTop = tops[index] as number;
    return {
      gauge,
      bottom,
      top,
      temperatureAtBottom: temperatureLike(bottom, steamKelvin(valueIn(gauge, 'Pa'), valueIn(bottom, 'm'))),
      temperatureAtTop: temperatureLike(top, atTop),
      againstBase: difference(atTop - base, top),
    };
  });
  return answer({
    bands,
    shortfall: difference(Math.max(0, base - Math.min(...tops)), given.bands[0]?.top as Quantity),
    basis: [atmosphereBasis, saturationBasis('steam temperature')],
    cautions: steamCautions(),
  });
}
