import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { food } from '../foods/fields';
import { drawn, type HeatNeeded } from '../heat/needed';
import { fields, mass, number, optional, readInput, share, temperature } from '../quantity/fields';
import { sureRange } from '../quantity/range';
import { valueIn } from '../quantity/scale';
import { type Basis, measured } from '../sources/basis';
import { caution } from '../sources/cautions';
import { practiceBasis } from '../sources/table';
import { heatsByMoisture } from './heatsByMoisture';
import { printedProperties } from './printedProperties';
import { PRACTICE, rowOf } from './tables';

const COEFFICIENT = 'coefficient of performance of the freezer';

const specificHeat = () => number('a specific heat in kJ/(kg K), from 0.5 to 5', { min: 0.5, max: 5 });
const schema = /* @__PURE__ */ fields({
  /** Mass of the food. */
  mass: mass(),
  /** A food whose specific heats are printed, such as `"peach"`; or `moisture` or `properties` in its place. */
  food: optional(food()),
  /** Water of the food, share of its weight, above 0 and at most 1 or in percent. */
  moisture: optional(share({ above: 0 })),
  /** Properties of a food of your own. */
  properties: optional(
    fields({
      /** Where it begins to freeze, -40 to 0 degC. */
      freezing: temperature({ min: { value: -40, unit: 'degC' }, max: { value: 0, unit: 'degC' } }),
      /** Above freezing, kJ/(kg K), 0.5 to 5. */
      specificHeatAbove: specificHeat(),
      /** When frozen, kJ/(kg K), 0.5 to 5. */
      specificHeatBelow: specificHeat(),
      /** Heat to freeze it, kJ/kg, 0 to 400. */
      latentHeat: number('a latent heat in kJ/kg, from 0 to 400', { min: 0, max: 400 }),
    }),
  ),
  /** Temperature as it goes in, -60 to 100 degC. */
  startTemperature: temperature({ min: { value: -60, unit: 'degC' }, max: { value: 100, unit: 'degC' } }),
  /** Temperature as it is kept, -60 to 100 degC, not above `startTemperature`. */
  targetTemperature: temperature({ min: { value: -60, unit: 'degC' }, max: { value: 100, unit: 'degC' } }),
  /** Heat taken out for each unit of electricity, 0.1 to 10; 0.8 to 2 by default. */
  performance: optional(number('a coefficient of performance, from 0.1 to 10', { min: 0.1, max: 10 })),
});
export type FreezeEnergyInput = z.input<typeof schema>;
/** Food properties of your own. */
export type FreezingProperties = NonNullable<FreezeEnergyInput['properties']>;

type OwnProperties = NonNullable<z.output<typeof schema>['properties']>;
interface Properties {
  readonly freezes: number;
  readonly above: number;
  readonly below: number;
  readonly latent: number;
  readonly basis: readonly Basis[];
}

function ofFood(asked: string): Properties {
  const found = printedProperties({ food: asked });
  const printed = found.known ? found : undefined;
  const {
    temperature: freezes,
    specificHeatAbove: above,
    specificHeatBelow: below,
    latentHeat: latent,
  } = printed ?? {};
  if (freezes === undefined || above === undefined || below === undefined || latent === undefined) {
    return fail(
      'MISSING',
      'moisture',
      undefined,
      `the moisture of the food in place of its name: no heats are printed for ${asked}`,
    );
  }
  return { freezes: valueIn(freezes, 'degC'), above, below, latent, basis: standsFor(found.basis) };
}

/** The figures of a food as they stand in this answer: behind the heat. */
const standsFor = (lines: readonly Basis[]): Basis[] =>
  lines.map((line) => ({ ...line, of: 'heat', note: 'freezing point, specific heats and latent heat' }));

function ofMoisture(moisture: number): Properties {
  const { basis, ...heats } = heatsByMoisture(moisture);
  return {
    freezes: rowOf(PRACTICE, 'freezing-point').likely,
    ...heats,
    basis: [...basis, practiceBasis('heat', 'where it begins to freeze')],
  };
}

function own({ freezing, specificHeatAbove, specificHeatBelow, latentHeat }: OwnProperties): Properties {
  return {
    freezes: valueIn(freezing, 'degC'),
    above: specificHeatAbove,
    below: specificHeatBelow,
    latent: latentHeat,
    basis: [measured('heat', 'freezing point, specific heats and latent heat')],
  };
}

/**
 * The energy a freezer takes to freeze food, beyond what keeps it cold from then on (see `energyNeeded`).
 *
 * heat = mass x (specific heat above x degrees down to the freezing point + latent heat + specific heat below x degrees
 * from there); energy = heat / coefficient of performance, 0.8 to 2 (likely 1.3) unless given, which is common practice
 * for a home freezer. All of the latent heat is counted, though a little water stays liquid.
 *
 * Source: Earle, Unit Operations in Food Processing, example 2.10 for the sum; heats as
 * `foodProperties` prints them or, by the moisture, the equations of Earle, Appendix 7.
 *
 * @returns `energy` in kWh; `heat` to take out, in kJ
 * @throws StillroomError CONTRADICTION unless just one of `food`, `moisture` and `properties` is given, or when
 *   `targetTemperature` is above `startTemperature`; UNKNOWN_NAME, with the nearest names; MISSING for a food without
 * printed heats
 *
 * @example
 * ```ts
 * import { freezeEnergy } from 'stillroom/freezing';
 *
 * const peaches = freezeEnergy({ mass: '20 lb', food: 'peaches', startTemperature: '70 degF', targetTemperature: '0 degF' });
 * peaches.heat.value; // ≈ 3725
 * peaches.energy.likely.value; // ≈ 0.80
 * ```
 */
export function freezeEnergy(input: FreezeEnergyInput): HeatNeeded {
  const { mass: amount, food: asked, moisture, properties, performance, ...given } = readInput(schema, input);
  if ([asked, moisture, properties].filter((each) => each !== undefined).length !== 1) {
    fail('CONTRADICTION', 'food', input.food, 'one of the food, its moisture and its properties');
  }
  const [from, to] = [valueIn(given.startTemperature, 'degC'), valueIn(given.targetTemperature, 'degC')];
  if (to > from)
    fail('CONTRADICTION', 'targetTemperature', input.targetTemperature, 'a temperature of at most `startTemperature`');
  const { freezes, above, below, latent, basis } =
    asked !== undefined
      ? ofFood(asked.name)
      : moisture !== undefined
        ? ofMoisture(moisture)
        : own(properties as OwnProperties);
  const perKilogram =
    above * Math.max(0, from - Math.max(to, freezes)) +
    (from >= freezes && to < freezes ? latent : 0) +
    below * Math.max(0, Math.min(from, freezes) - to);
  const kilojoules = valueIn(amount, 'kg') * perKilogram;
  return answer({
    energy: drawn(
      kilojoules,
      performance === undefined ? rowOf(PRACTICE, 'freezer-performance') : sureRange(performance),
    ),
    heat: { value: kilojoules, unit: 'kJ' },
    basis: [
      ...basis,
      {
        of: 'heat',
        kind: 'equation',
        source: 'earle',
        locator: 'Example 2.10',
        note: 'heat = cooling + freezing + cooling on',
      },
      performance === undefined ? practiceBasis('energy', COEFFICIENT) : measured('energy', COEFFICIENT),
    ],
    cautions: [caution('estimate')],
  });
}
