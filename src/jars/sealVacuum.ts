import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { elevation, fields, length, optional, pressure, readInput, share, temperature } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../sources/basis';
import { airPressure } from '../steam/airPressure';
import { boilingTemperature } from '../steam/boilingTemperature';
import { saturationPressure } from '../steam/saturationPressure';
import { waterDensity } from '../steam/waterDensity';
import { jar } from '../words/jar';
import { mouth } from '../words/mouth';
import { jarCaution } from './cautions';
import { IDEAL_GAS } from './cooledAirPressure';

import { shareOfHeadspace } from './expansionInJar';
import { VACUUM_BASIS } from './vacuumReading';

const ROOM_TEMPERATURE = { value: 20, unit: 'degC' } as const;
const FREEZING = { value: 0.01, unit: 'degC' } as const;

const CUSTOMARY: ReadonlySet<string> = new Set(['ft', 'in', 'degF']);
/** Boiling water at the pressure it boils at must not fail for the last digit. */
const ROUNDING = 1e-6;

const schema = /* @__PURE__ */ fields({
  /** Of contents and headspace as the jar closes; at most the boiling point there. */
  closingTemperature: temperature({ min: FREEZING, max: { value: 130, unit: 'degC' } }),
  /** The temperature at which the vacuum is read; 20 degC where left out. */
  cooledTo: optional(temperature({ min: FREEZING, max: { value: 130, unit: 'degC' } })),
  /** Of the kitchen, -500 to 5,000 m; or `pressure`, the air pressure itself. */
  elevation: optional(elevation()),
  pressure: optional(pressure()),
  /** A jar and `headspace`, or `headspaceShare`, to count the shrinking of the contents. */
  jar: optional(jar()),
  mouth: optional(mouth()),
  headspace: optional(length()),
  headspaceShare: optional(share({ above: 0, below: 1 })),
});
export type SealVacuumInput = z.input<typeof schema>;

export interface SealVacuum {
  /** Air pressure outside less the pressure inside; in inHg for a question in feet or degF, otherwise in kPa. */
  readonly vacuum: Quantity<'pressure'>;
  /** Absolute pressure inside the cooled jar. */
  readonly inside: Quantity<'pressure'>;
  /** Air pressure at the place. */
  readonly outside: Quantity<'pressure'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

function outsideAir(
  place: Quantity<'length'> | undefined,
  measured: Quantity<'pressure'> | undefined,
): { pressure: Quantity<'pressure'>; basis: readonly Basis[] } {
  if (place !== undefined && measured !== undefined) {
    fail('CONTRADICTION', 'pressure', measured.value, 'elevation or pressure, not both');
  }
  if (measured !== undefined) return { pressure: measured, basis: [{ of: 'air pressure', kind: 'measured' }] };
  if (place === undefined) fail('MISSING', 'elevation', place, 'the elevation of the kitchen, or its air pressure');
  return airPressure({ elevation: place });
}

/**
 * The vacuum in a jar that closed hot and has cooled: why a hot-filled jar pulls its lid down.
 *
 * When the jar closes, its headspace is at the air pressure of the place: steam at its saturation pressure and air for
 * the rest (Dalton). Cooling turns the steam to water and shrinks the air (ideal gas law), and the contents shrink as
 * water does, which leaves more room:
 * inside = (P − psat(T1)) × T2/T1 × V1/V2 + psat(T2); V2/V1 = 1 + (1/share − 1)(1 − density(T1)/density(T2)).
 * Where no headspace is given, V2 = V1. The vacuum is P less that.
 *
 * In a canner the boil drives air out past the lid, so a processed jar holds more vacuum than this; enter the
 * temperature of the headspace when the lid takes hold.
 *
 * Source: Dalton's law, the ideal gas law, saturation by IAPWS-IF97 and the density of water by IAPWS SR6-08.
 *
 * @returns the vacuum and both pressures, in inHg for a question in feet, inches or degF, otherwise in kPa
 * @throws StillroomError OUT_OF_RANGE when the contents would boil as the jar closes
 *
 * @example
 * ```ts
 * import { sealVacuum } from 'stillroom/jars';
 *
 * sealVacuum({ closingTemperature: '80 degC', elevation: '0 m' }).vacuum.value; // ≈ 54.2
 * sealVacuum({ closingTemperature: '180 degF', elevation: '5000 ft' }).vacuum.value; // ≈ 16.3
 * sealVacuum({ closingTemperature: '100 degC', elevation: '1500 m' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function sealVacuum(input: SealVacuumInput): SealVacuum {
  const given = readInput(schema, input);
  const { closingTemperature, cooledTo = ROOM_TEMPERATURE } = given;
  const air = outsideAir(given.elevation, given.pressure);
  const outside = valueIn(air.pressure, 'Pa');
  const steamAtClosing = saturationPressure({ temperature: closingTemperature });
  const hot = valueIn(steamAtClosing.pressure, 'Pa');
  if (hot > outside * (1 + ROUNDING)) {
    const boils = boilingTemperature({ pressure: air.pressure }).temperature;
    const limit = quantityIn(boils.value, boils.unit, closingTemperature.unit);
    fail(
      'OUT_OF_RANGE',
      'closingTemperature',
      input.closingTemperature,
      `at most the boiling point there, ${limit.value.toFixed(1)} ${limit.unit}`,
    );
  }
  const [closed, cooled] = [valueIn(closingTemperature, 'K'), valueIn(cooledTo, 'K')];
  if (cooled > closed) fail('CONTRADICTION', 'cooledTo', input.cooledTo, 'at most the closing temperature');

  const part = shareOfHeadspace(given);
  const closedWater = waterDensity({ temperature: closingTemperature });
  const cooledWater = waterDensity({ temperature: cooledTo });
  const shrinking = 1 - closedWater.density.value / cooledWater.density.value;
  const roomier = part === undefined ? 1 : 1 + (1 / part.share - 1) * shrinking;
  const steam = valueIn(saturationPressure({ temperature: cooledTo }).pressure, 'Pa');
  const inside = (Math.max(0, outside - hot) * (cooled / closed)) / roomier + steam;

  const customary = [given.elevation, given.headspace, closingTemperature].some((each) =>
    CUSTOMARY.has(each?.unit ?? ''),
  );
  const shown = (pascals: number) => quantityIn(pascals, 'Pa', customary ? 'inHg' : 'kPa');
  return answer({
    vacuum: shown(outside - inside),
    inside: shown(inside),
    outside: shown(outside),
    basis: joinBasis(
      [VACUUM_BASIS],
      air.basis,
      steamAtClosing.basis,
      [IDEAL_GAS],
      part === undefined ? [] : closedWater.basis,
      part?.room?.basis ?? [],
    ),
    cautions: joinCautions(
      [jarCaution('vacuum-model'), jarCaution('no-reading-proves-a-seal')],
      part?.room?.cautions ?? [],
    ),
  });
}
