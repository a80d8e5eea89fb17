import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, density, fields, length, number, optional, readInput, temperature } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { correlation, freezingCaution, rowOf, SHAPES } from './tables';

const conductivity = (of: string) =>
  number(`the thermal conductivity of ${of}, above 0 and at most 500 W/(m K)`, { above: 0, max: 500 });
const coefficient = () =>
  number('the surface heat-transfer coefficient, above 0 and at most 100,000 W/(m2 K)', { above: 0, max: 1e5 });
const heat = (what: string) => number(`${what}, above 0 and at most 10 kJ/(kg K)`, { above: 0, max: 10 });

const schema = fields({
  /** `slab` (give `thickness`), `cylinder` or `sphere` (`diameter`), `cube` (`edge`). */
  shape: choice('the shape', ['slab', 'cylinder', 'sphere', 'cube']),
  /** Full thickness of a slab. */
  thickness: optional(length()),
  /** Diameter of a cylinder or sphere. */
  diameter: optional(length()),
  /** Edge of a cube. */
  edge: optional(length()),
  /** Cooled faces of a slab: 2 unless it lies on one cold plate, then 1. */
  faces: optional(number('how many faces of the slab are cooled: 1 or 2', { min: 1, max: 2, integer: true })),
  /** Density of the food: `"950 kg/m3"`. */
  density: density(),
  /** Heat to freeze the food, kJ/kg, above 0 and at most 400: its share of water x 334. */
  latentHeat: number('the latent heat of the food, above 0 and at most 400 kJ/kg', { above: 0, max: 400 }),
  /** Conductivity of the frozen food, W/(m K), above 0 and at most 500. */
  conductivity: conductivity('the frozen food'),
  /** Heat transfer from the surface to air, brine or plate, W/(m2 K), above 0 and at most 100,000. */
  surfaceCoefficient: coefficient(),
  /** Initial freezing point of the food. */
  freezingPoint: temperature(),
  /** Temperature of the air, brine or plate; below the freezing point. */
  medium: temperature(),
  /** What the food is wrapped in. */
  wrap: optional(
    fields({
      /** Thickness of the wrap. */
      thickness: length(),
      /** Conductivity of the wrap, W/(m K), above 0 and at most 500. */
      conductivity: conductivity('the wrap'),
    }),
  ),
  /** Cooling before and after the freezing itself, to count it too. */
  sensible: optional(
    fields({
      /** Temperature at the start, not below the freezing point. */
      startTemperature: temperature(),
      /** Specific heat of the unfrozen food, kJ/(kg K), above 0 and at most 10. */
      specificHeatAbove: heat('the specific heat of the unfrozen food'),
      /** Mean temperature at the end, not above the freezing point. */
      targetTemperature: temperature(),
      /** Specific heat of the frozen food, kJ/(kg K), above 0 and at most 10. */
      specificHeatBelow: heat('the specific heat of the frozen food'),
    }),
  ),
});
export type FreezingTimeInput = z.input<typeof schema>;

export interface FreezingTime {
  /** Time to take out the latent heat. */
  readonly time: Quantity<'time'>;
  /** Surface coefficient with the wrap's resistance added, W/(m2 K). */
  readonly effectiveCoefficient: number;
  /** With `sensible`: the heat that each kilogram gives off. */
  readonly heatPerKilogram?: {
    /** Down to the freezing point, kJ/kg. */
    readonly above: number;
    /** By freezing, kJ/kg. */
    readonly latent: number;
    /** Below the freezing point, kJ/kg. */
    readonly below: number;
    /** In all, kJ/kg. */
    readonly sum: number;
  };
  /** With `sensible`: the time stretched by all heat over latent heat. */
  readonly timeWithSensible?: Quantity<'time'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** Which measure belongs to which shape. */
const MEASURE = { slab: 'thickness', cylinder: 'diameter', sphere: 'diameter', cube: 'edge' } as const;

/** The one measure of the shape, in meters. */
function characteristicLength(
  shape: keyof typeof MEASURE,
  given: { [K in 'thickness' | 'diameter' | 'edge']?: Quantity<'length'> | undefined },
): number {
  const wanted = MEASURE[shape];
  for (const other of ['thickness', 'diameter', 'edge'] as const) {
    if (other !== wanted && given[other] !== undefined) {
      fail('CONTRADICTION', other, given[other].value, `${wanted}, the measure of a ${shape}`);
    }
  }
  const measure = given[wanted];
  if (measure === undefined) fail('MISSING', wanted, undefined, `the ${wanted} of the ${shape}`);
  return valueIn(measure, 'm');
}

/** P and R of the shape: a cube has the sphere's, a slab cooled on one face 1 and 1/2. */
function shapeConstants(shape: keyof typeof MEASURE, faces: number) {
  const row = rowOf(SHAPES, shape === 'cube' ? 'sphere' : shape);
  return shape === 'slab' && faces === 1 ? { row, P: 1, R: 0.5 } : { row, P: row.P, R: row.R };
}

/**
 * How long a piece takes to freeze through, by the Plank equation.
 *
 * time = density x latent heat / (freezing point - medium) x (P a / h + R a² / k), with P and R by shape. A wrap
 * adds its resistance: 1/h becomes 1/h + thickness/conductivity. Cooling to the freezing point and below it is not in
 * the equation; `sensible` stretches the time by all heat over latent heat, as the textbook does.
 *
 * @returns `time` in hours
 * @throws StillroomError CONTRADICTION when the medium is no colder than the freezing point, or the measure is not the
 * shape's own
 *
 * @example
 * ```ts
 * import { freezingTime } from 'stillroom/freezing';
 *
 * freezingTime({
 *   shape: 'sphere', diameter: '2 cm', density: '950 kg/m3', latentHeat: 293.216, conductivity: 1.3,
 *   surfaceCoefficient: 40, freezingPoint: '-2 degC', medium: '-40 degC',
 * }).time.value; // ≈ 0.196
 * ```
 */
export function freezingTime(input: FreezingTimeInput): FreezingTime {
  const given = readInput(schema, input);
  const { shape, faces, latentHeat, conductivity: frozen, surfaceCoefficient: h, wrap, sensible } = given;
  if (faces !== undefined && shape !== 'slab') {
    fail('CONTRADICTION', 'faces', faces, `no faces for a ${shape}: it is cooled all round`);
  }
  const size = characteristicLength(shape, given);
  const freezing = valueIn(given.freezingPoint, 'degC');
  const medium = valueIn(given.medium, 'degC');
  if (!(medium < freezing)) {
    fail('CONTRADICTION', 'medium', input.medium, 'a temperature below the freezing point of the food');
  }
  const { row, P, R } = shapeConstants(shape, faces ?? 2);
  const wrapResistance = wrap === undefined ? 0 : valueIn(wrap.thickness, 'm') / wrap.conductivity;
  const effective = 1 / (1 / h + wrapResistance);
  const heatPerVolume = valueIn(given.density, 'kg/m3') * latentHeat * 1000;
  const seconds = (heatPerVolume / (freezing - medium)) * ((P * size) / effective + (R * size * size) / frozen);
  const basis = [basisOf(correlation('plank'), 'time'), basisOf(row, 'time', 'shape constants P and R')];
  const found = {
    time: quantityIn(seconds, 's', 'h'),
    effectiveCoefficient: effective,
    basis,
    cautions: [freezingCaution('plank-short'), caution('estimate')],
  };
  if (sensible === undefined) return answer(found);
  const from = valueIn(sensible.startTemperature, 'degC');
  const to = valueIn(sensible.targetTemperature, 'degC');
  if (from < freezing) {
    fail(
      'CONTRADICTION',
      'sensible.startTemperature',
      input.sensible?.startTemperature,
      'a start no colder than the freezing point',
    );
  }
  if (to > freezing)
    fail(
      'CONTRADICTION',
      'sensible.targetTemperature',
      input.sensible?.targetTemperature,
      'an end no warmer than the freezing point',
    );
  const above = sensible.specificHeatAbove * (from - freezing);
  const below = sensible.specificHeatBelow * (freezing - to);
  const sum = above + latentHeat + below;
  return answer({
    ...found,
    heatPerKilogram: { above, latent: latentHeat, below, sum },
    timeWithSensible: quantityIn(seconds * (sum / latentHeat), 's', 'h'),
    basis: [
      ...basis,
      {
        of: 'timeWithSensible',
        kind: 'equation',
        source: 'earle',
        locator: 'Example 6.7',
        note: 'time x all heat / latent heat',
      },
    ],
  });
}
