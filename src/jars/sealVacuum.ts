import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, pressure, readInput, share, temperature } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, behind, type Caution, measured } from '../sources/basis';
import { practiceBasis } from '../sources/table';
import { airPressure } from '../steam/airPressure';
import { boilingTemperature } from '../steam/boilingTemperature';
import { saturationPressure } from '../steam/saturationPressure';
import { waterDensity } from '../steam/waterDensity';
import { kitchenElevation } from '../words/elevation';
import { headspace } from '../words/headspace';
import { jar } from '../words/jar';
import { mouth } from '../words/mouth';
import { jarCaution } from './cautions';
import { shareOfHeadspace } from './expansionInJar';
import { practiceRows, rowOf } from './tables';

const FREEZING = { value: 0.01, unit: 'degC' } as const;

const CUSTOMARY: ReadonlySet<string> = new Set(['ft', 'in', 'degF']);
/** Boiling water at the pressure it boils at must not fail for the last digit. */
const ROUNDING = 1e-6;

const schema = /* @__PURE__ */ fields({
  /** Temperature of contents and headspace as the jar closes; at most the boiling point at that elevation. */
  closingTemperature: temperature({ min: FREEZING, max: { value: 130, unit: 'degC' } }),
  /** Temperature at which you read the vacuum; room temperature, 20 degC, by default. */
  cooledTo: optional(temperature({ min: FREEZING, max: { value: 130, unit: 'degC' } })),
  /** Elevation of the kitchen; give it or `pressure`. */
  elevation: optional(kitchenElevation()),
  /** Absolute pressure of the air, in place of the elevation. */
  pressure: optional(pressure()),
  /** The jar, together with `headspace`, to count how the contents shrink. */
  jar: optional(jar()),
  /** `regular` (the default) or `wide`, where the jar does not say. */
  mouth: optional(mouth()),
  /** The room left between the rim and the food. */
  headspace: optional(headspace()),
  /** In place of jar and headspace: the headspace as a share of the jar, 0 to 1 or percent. */
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
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** A vacuum gauge shows how far the pressure inside is below that outside. */
const READING: Basis = {
  of: 'vacuum',
  kind: 'published',
  source: 'iasri-canning',
  locator: 'lesson 3.2.3.3',
  seen: 'original',
  note: 'outside pressure less inside pressure',
};
const IDEAL_GAS: Basis = {
  of: 'inside',
  kind: 'equation',
  source: 'borgnakke',
  locator: 'ideal-gas chapter problem',
  note: 'pressure of the air in a closed room, by the ideal gas law',
};
/** The pressure of dry air in a closed room once it has cooled; temperatures in kelvin. */
export const cooledAir = (pressure: number, from: number, to: number): number => pressure * (to / from);

function outsideAir(
  place: Quantity<'length'> | undefined,
  given: Quantity<'pressure'> | undefined,
): { pressure: Quantity<'pressure'>; basis: readonly Basis[] } {
  if (place !== undefined && given !== undefined) {
    fail('CONTRADICTION', 'pressure', given.value, 'elevation or pressure, not both');
  }
  if (given !== undefined) return { pressure: given, basis: [measured('outside', 'air pressure')] };
  if (place === undefined) fail('MISSING', 'elevation', place, 'the elevation of the kitchen, or its air pressure');
  const { pressure, basis } = airPressure({ elevation: place });
  return { pressure, basis: behind('outside', basis) };
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
 * In a canner the boil drives air out past the lid, so a processed jar holds more vacuum than this; give the
 * temperature of the headspace when the lid takes hold. Publications print 9 to 15 inHg for metal cans, and nothing
 * for home jars (data/jars/container-vacuums.json). The same jar reads less where the air is thinner.
 *
 * Source: IASRI, lesson 3.2.3.3 (a vacuum is outside less inside pressure); Dalton's law, the ideal gas law, saturation by IAPWS-IF97 and the density of water by IAPWS SR6-08.
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
  const room = rowOf(practiceRows, 'room-temperature');
  const { closingTemperature, cooledTo = { value: room.value, unit: 'degC' } as const } = given;
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
  const inside = cooledAir(Math.max(0, outside - hot), closed, cooled) / roomier + steam;

  const customary = [given.elevation, given.headspace, closingTemperature].some((each) =>
    CUSTOMARY.has(each?.unit ?? ''),
  );
  const shown = (pascals: number) => quantityIn(pascals, 'Pa', customary ? 'inHg' : 'kPa');
  return answer({
    vacuum: shown(outside - inside),
    inside: shown(inside),
    outside: shown(outside),
    basis: [
      READING,
      ...air.basis,
      ...behind('inside', [...steamAtClosing.basis, IDEAL_GAS, ...(part === undefined ? [] : closedWater.basis)]),
      ...behind('inside', part?.room?.basis ?? []),
      ...(given.cooledTo === undefined ? [practiceBasis('vacuum', 'read at room temperature, 20 degC')] : []),
    ],
    cautions: [jarCaution('vacuum-model'), jarCaution('no-reading-proves-a-seal'), ...(part?.room?.cautions ?? [])],
  });
}
