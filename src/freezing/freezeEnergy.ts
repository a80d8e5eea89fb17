import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { drawn, type HeatNeeded } from '../heat/needed';
import { fields, mass, name, number, optional, readInput, share, temperature } from '../quantity/fields';
import { sureRange } from '../quantity/range';
import { valueIn } from '../quantity/scale';
import type { MassInput, Range, ShareInput, TemperatureInput } from '../quantity/types';
import { type Basis, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf, practiceBasis } from '../sources/table';
import { initialFreezingPoint } from './initialFreezingPoint';
import { propertiesFromWater } from './propertiesFromWater';
import { correlation } from './tables';

/** Heat that a home freezer takes out for each unit of electricity; common practice, no source. */
export const PERFORMANCE: Range<number> = { low: 0.8, likely: 1.3, high: 2 };
/** Where fruit and vegetables begin to freeze, degC, when only their water is known; common practice. */
const FREEZES = -1;

const specificHeat = () => number('a specific heat in kJ/(kg K), from 0.5 to 5', { min: 0.5, max: 5 });
const schema = /* @__PURE__ */ fields({
  mass: mass(),
  food: optional(name('a food, such as "peach"')),
  water: optional(share({ above: 0 })),
  properties: optional(
    fields({
      freezing: temperature({ min: { value: -40, unit: 'degC' }, max: { value: 0, unit: 'degC' } }),
      specificHeatAbove: specificHeat(),
      specificHeatBelow: specificHeat(),
      latentHeat: number('a latent heat in kJ/kg, from 0 to 400', { min: 0, max: 400 }),
    }),
  ),
  from: temperature({ min: { value: -60, unit: 'degC' }, max: { value: 100, unit: 'degC' } }),
  to: temperature({ min: { value: -60, unit: 'degC' }, max: { value: 100, unit: 'degC' } }),
  performance: optional(number('a coefficient of performance, from 0.1 to 10', { min: 0.1, max: 10 })),
});

/** Food properties of your own. */
export interface FreezingProperties {
  /** Where it begins to freeze, 0 degC or below. */
  readonly freezing: TemperatureInput;
  /** kJ/(kg K) */
  readonly specificHeatAbove: number;
  /** kJ/(kg K), frozen. */
  readonly specificHeatBelow: number;
  /** kJ/kg */
  readonly latentHeat: number;
}
export interface FreezeEnergyInput {
  readonly mass: MassInput;
  /** A food whose specific heats are printed, such as `peach`; or */
  readonly food?: string | undefined;
  /** its water, share of the weight; or */
  readonly water?: ShareInput | undefined;
  /** its own properties. */
  readonly properties?: FreezingProperties | undefined;
  /** As it goes in, -60 to 100 degC. */
  readonly from: TemperatureInput;
  /** As it is kept, not above `from`. */
  readonly to: TemperatureInput;
  /** Heat taken out for each unit of electricity, 0.1 to 10; 0.8 to 2 when left out. */
  readonly performance?: number | undefined;
}

type OwnProperties = NonNullable<z.output<typeof schema>['properties']>;
interface Properties {
  readonly freezes: number;
  readonly above: number;
  readonly below: number;
  readonly latent: number;
  readonly basis: readonly Basis[];
}

function ofFood(food: string): Properties {
  const {
    temperature: freezes,
    specificHeatAbove,
    specificHeatBelow,
    latentHeat,
    basis,
  } = initialFreezingPoint({ food });
  if (specificHeatAbove === undefined || specificHeatBelow === undefined || latentHeat === undefined) {
    fail('MISSING', 'water', undefined, `the water of the food in place of its name: no heats are printed for ${food}`);
  }
  return {
    freezes: valueIn(freezes, 'degC'),
    above: specificHeatAbove,
    below: specificHeatBelow,
    latent: latentHeat,
    basis,
  };
}

function ofWater(water: number): Properties {
  const { specificHeatAbove, specificHeatBelow, latentHeat } = propertiesFromWater({ water });
  const rows = ['earle-cp-above', 'earle-cp-below', 'earle-latent'].map(correlation);
  return {
    freezes: FREEZES,
    above: specificHeatAbove.earle,
    below: specificHeatBelow.earle,
    latent: latentHeat.earle,
    basis: [
      ...rows.map((row) => basisOf(row, 'heat', row.id.replaceAll('-', ' '))),
      practiceBasis('heat', 'where it begins to freeze'),
    ],
  };
}

function own({ freezing, specificHeatAbove, specificHeatBelow, latentHeat }: OwnProperties): Properties {
  return {
    freezes: valueIn(freezing, 'degC'),
    above: specificHeatAbove,
    below: specificHeatBelow,
    latent: latentHeat,
    basis: [{ of: 'freezing point, specific heats and latent heat', kind: 'measured' }],
  };
}

/**
 * The energy a freezer takes to freeze food, beyond what keeps it cold from then on (see `applianceEnergy`).
 *
 * heat = mass x (specific heat above x degrees down to the freezing point + latent heat + specific heat below x degrees
 * from there); energy = heat / coefficient of performance, 0.8 to 2 (likely 1.3) unless given, which is common practice
 * for a home freezer. All of the latent heat is counted, though a little water stays liquid.
 *
 * Source: Earle, Unit Operations in Food Processing, example 2.10 for the sum; heats as `initialFreezingPoint` or, by
 * the water, `propertiesFromWater`.
 *
 * @param input.mass - of the food
 * @param input.food - a food whose heats are printed (see `initialFreezingPoint`); or
 * @param input.water - its water, share of the weight; it then begins to freeze at -1 degC; or
 * @param input.properties - `freezing`, `specificHeatAbove` and `specificHeatBelow` in kJ/(kg K), `latentHeat` in kJ/kg
 * @param input.from - as it goes in, -60 to 100 degC
 * @param input.to - as it is kept, not above `from`
 * @param input.performance - heat taken out for each unit of electricity, 0.1 to 10
 * @returns `energy` in kWh; `heat` to take out, in kJ
 * @throws StillroomError CONTRADICTION unless just one of `food`, `water` and `properties` is given, or when `to` is
 *   above `from`; UNKNOWN_NAME, with the nearest names; MISSING for a food without printed heats
 *
 * @example
 * ```ts
 * import { freezeEnergy } from 'stillroom/freezing';
 *
 * const peaches = freezeEnergy({ mass: '20 lb', food: 'peaches', from: '70 degF', to: '0 degF' });
 * peaches.heat.value; // ≈ 3725
 * peaches.energy.likely.value; // ≈ 0.80
 * ```
 */
export function freezeEnergy(input: FreezeEnergyInput): HeatNeeded {
  const { mass: amount, food, water, properties, performance, ...given } = readInput(schema, input);
  if ([food, water, properties].filter((each) => each !== undefined).length !== 1) {
    fail('CONTRADICTION', 'food', input.food, 'one of the food, its water and its properties');
  }
  const [from, to] = [valueIn(given.from, 'degC'), valueIn(given.to, 'degC')];
  if (to > from) fail('CONTRADICTION', 'to', input.to, 'a temperature of at most `from`');
  const { freezes, above, below, latent, basis } =
    food !== undefined ? ofFood(food) : water !== undefined ? ofWater(water) : own(properties as OwnProperties);
  const perKilogram =
    above * Math.max(0, from - Math.max(to, freezes)) +
    (from >= freezes && to < freezes ? latent : 0) +
    below * Math.max(0, Math.min(from, freezes) - to);
  const kilojoules = valueIn(amount, 'kg') * perKilogram;
  return answer({
    energy: drawn(kilojoules, performance === undefined ? PERFORMANCE : sureRange(performance)),
    heat: { value: kilojoules, unit: 'kJ' },
    basis: joinBasis(basis, [
      { of: 'heat = cooling + freezing + cooling on', kind: 'equation', source: 'earle', locator: 'Example 2.10' },
      {
        of: 'coefficient of performance of the freezer',
        kind: performance === undefined ? 'common-practice' : 'measured',
      },
    ]),
    cautions: [caution('estimate')],
  });
}
