import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { area, energy, fields, list, mass, number, optional, power, readInput, time } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import { GUIDE_DRYING_TEMPERATURE } from './dryingHeat';
import { latentHeat, vaporizationRow } from './vaporization';

const schema = fields({
  phases: optional(list('the phases of the run', fields({ power: power(), time: time() }), 1, 100)),
  energy: optional(energy()),
  waterRemoved: optional(mass()),
  latentHeat: optional(number('latent heat in kJ/kg, from 2,000 to 3,000', { min: 2000, max: 3000 })),
});
export type DryerEnergyInput = z.input<typeof schema>;

export interface DryerEnergy {
  readonly energy: Quantity<'energy'>;
  /** Energy for each kilogram of water taken out. */
  readonly perKilogramWater?: Quantity<'energy'>;
  /** The share of the energy that evaporated water. */
  readonly efficiency?: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * What a dryer used, from the power it drew and for how long, or from a meter; and how much of it evaporated water.
 *
 * energy = sum of power x time; efficiency = water x latent heat / energy.
 *
 * @param input.phases - `power` and `time` of each phase, such as warming up and holding; or
 * @param input.energy - what the meter showed, or the heat of the fuel burnt
 * @param input.waterRemoved - weight lost by the load, for the efficiency
 * @param input.latentHeat - kJ/kg; that of water at 140 degF if not given
 * @returns `energy` in the unit given, otherwise kWh
 * @throws StillroomError CONTRADICTION unless just one of `phases` and `energy` is given
 *
 * @example
 * ```ts
 * import { dryerEnergy } from 'stillroom/heat';
 *
 * const phases = [
 *   { power: '675 W', time: '2 h' },
 *   { power: '450 W', time: '9 h' },
 * ] as const;
 * dryerEnergy({ phases: [...phases] }).energy.value; // ≈ 5.4
 * ```
 */
export function dryerEnergy(input: DryerEnergyInput): DryerEnergy {
  const { phases, energy: metered, waterRemoved, latentHeat: latent } = readInput(schema, input);
  if ((phases === undefined) === (metered === undefined)) {
    fail('CONTRADICTION', 'phases', input.phases, 'either the phases or the energy, and not both');
  }
  const joules =
    metered === undefined
      ? (phases ?? []).reduce((sum, phase) => sum + valueIn(phase.power, 'W') * valueIn(phase.time, 's'), 0)
      : valueIn(metered, 'J');
  const unit = metered?.unit ?? 'kWh';
  const kilojoules = latent ?? latentHeat(valueIn(GUIDE_DRYING_TEMPERATURE, 'degC'));
  const water = waterRemoved === undefined ? undefined : valueIn(waterRemoved, 'kg');
  return answer({
    energy: quantityIn(joules, 'J', unit),
    ...(water === undefined
      ? {}
      : {
          perKilogramWater: quantityIn(joules / water, 'J', unit),
          efficiency: (water * kilojoules * 1000) / joules,
        }),
    basis: [
      { of: 'energy used', kind: 'measured' },
      ...(water === undefined || latent !== undefined ? [] : [basisOf(vaporizationRow, 'latent heat of vaporization')]),
    ],
    cautions: [],
  });
}

const rateSchema = fields({
  drySolids: mass(),
  area: area(),
  from: number('a dry-basis moisture above 0 and at most 1,000', { above: 0, max: 1000 }),
  to: number('a dry-basis moisture from 0 to 1,000', { min: 0, max: 1000 }),
  rates: list(
    'points of the rate curve',
    fields({
      moisture: number('a dry-basis moisture from 0 to 1,000', { min: 0, max: 1000 }),
      rate: number('a rate in kg/(m2 s), above 0 and at most 100', { above: 0, max: 100 }),
    }),
    2,
    1000,
  ),
});
export type DryingRateTimeInput = z.input<typeof rateSchema>;

export interface DryingRateTime {
  readonly time: Quantity<'time'>;
  readonly waterRemoved: Quantity<'mass'>;
  /** The rate while the surface stays wet, kg/(m2 s). */
  readonly constantRate: number;
  /** The moisture at which the rate begins to fall, dry basis. */
  readonly criticalMoisture: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Rates within one part in a hundred of the highest count as the constant rate. */
const CONSTANT_WITHIN = 0.99;

/**
 * Drying time from a measured rate curve: time = (solids / area) integral of dX / R, R straight between the points.
 *
 * @param input.drySolids - weight of the dry matter
 * @param input.area - of the drying surface
 * @param input.from - free moisture at the start, dry basis; and `to`, at the end
 * @param input.rates - points of the curve: free `moisture` (dry basis) and `rate` in kg of water per m2 and second
 * @returns `time` in s, `waterRemoved` in the unit of `drySolids`, `constantRate` and `criticalMoisture`
 * @throws StillroomError CONTRADICTION when `to` is not below `from`, or two points share a moisture; OUT_OF_RANGE when
 *   the curve does not reach from one to the other
 *
 * @example
 * ```ts
 * import { dryingRateTime } from 'stillroom/heat';
 *
 * dryingRateTime({
 *   drySolids: '2 kg',
 *   area: '1 m2',
 *   from: 1.5,
 *   to: 0.5,
 *   rates: [
 *     { moisture: 0.5, rate: 0.0004 },
 *     { moisture: 1.5, rate: 0.0004 },
 *   ],
 * }).time; // => { value: 5000, unit: 's' }
 * ```
 */
export function dryingRateTime(input: DryingRateTimeInput): DryingRateTime {
  const { drySolids, area: surface, from, to, rates } = readInput(rateSchema, input);
  if (to >= from) fail('CONTRADICTION', 'to', to, `a moisture below the start, ${from}`);
  const points = [...rates].sort((one, other) => one.moisture - other.moisture);
  points.forEach(({ moisture }, i) => {
    if (i > 0 && moisture === points[i - 1]?.moisture) {
      fail('CONTRADICTION', 'rates', input.rates, `one rate for each moisture, and not two at ${moisture}`);
    }
  });
  const [driest, wettest] = [
    points[0] as (typeof points)[number],
    points[points.length - 1] as (typeof points)[number],
  ];
  if (to < driest.moisture || from > wettest.moisture) {
    fail('OUT_OF_RANGE', 'rates', input.rates, `rates from a moisture of ${to} to ${from}`);
  }
  let integral = 0;
  for (let i = 1; i < points.length; i++) {
    const [below, above] = [points[i - 1] as (typeof points)[number], points[i] as (typeof points)[number]];
    const slope = (above.rate - below.rate) / (above.moisture - below.moisture);
    const [low, high] = [Math.max(below.moisture, to), Math.min(above.moisture, from)];
    if (low >= high) continue;
    const rateAt = (moisture: number) => below.rate + slope * (moisture - below.moisture);
    const [rateLow, rateHigh] = [rateAt(low), rateAt(high)];
    const change = (rateHigh - rateLow) / rateLow;
    // the logarithm's own series where the rate hardly changes
    integral += (high - low) * (Math.abs(change) < 1e-9 ? 1 / rateLow : Math.log1p(change) / (rateHigh - rateLow));
  }
  const constantRate = Math.max(...points.map(({ rate }) => rate));
  const constant = points.find(({ rate }) => rate >= CONSTANT_WITHIN * constantRate) as (typeof points)[number];
  return answer({
    time: { value: (valueIn(drySolids, 'kg') / valueIn(surface, 'm2')) * integral, unit: 's' },
    waterRemoved: { value: drySolids.value * (from - to), unit: drySolids.unit },
    constantRate,
    criticalMoisture: constant.moisture,
    basis: [
      { of: 'rate curve', kind: 'measured' },
      {
        of: 'time = (solids / area) x integral of dX / R',
        kind: 'equation',
        source: 'singh-heldman',
        locator: 'Example 12.1',
      },
    ],
    cautions: [],
  });
}
