import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { density, fields, optional, readInput, temperature } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Unit } from '../quantity/units';
import { type Basis, behind, type Caution, measured } from '../sources/basis';
import { practiceBasis } from '../sources/table';
import { waterDensity } from '../steam/waterDensity';
import { headspace } from '../words/headspace';
import { jar } from '../words/jar';
import { mouth } from '../words/mouth';
import { jarCaution } from './cautions';
import { type Jar, resolveJar } from './describeJar';

const schema = /* @__PURE__ */ fields({
  /** A size (`pint`, `wide-mouth quart`) or a measured jar `{ brimful, opening }`. */
  jar: jar(),
  /** `regular` (the default) or `wide`, where the jar does not say. */
  mouth: optional(mouth()),
  /** The room left between the rim and the food, above zero. */
  headspace: headspace(),
  /** Density of the contents as you fill them. */
  density: optional(density()),
  /**
   * Temperature of watery contents as you fill them, 0 to 100 degC, in place of their density: they weigh what water
   * of that temperature weighs (`waterDensity` of stillroom/steam).
   */
  temperature: optional(temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } })),
});
export type FillJarInput = z.input<typeof schema>;

export interface FilledJar {
  /** What goes into the jar. */
  readonly fillVolume: Quantity<'volume'>;
  /** What stays empty above it. */
  readonly headspaceVolume: Quantity<'volume'>;
  /** The weight of the contents, where their density is given. */
  readonly netMass?: Quantity<'mass'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const MASS_OF: Readonly<Record<Unit<'density'>, Unit<'mass'>>> = {
  'g/mL': 'g',
  'kg/m3': 'kg',
  'lb/gal': 'lb',
  'lb/ft3': 'lb',
  'g/cup': 'g',
  'lb/quart': 'lb',
};
const METRIC: ReadonlySet<string> = new Set(['m', 'mm', 'cm', 'km', 'mL', 'dL', 'L', 'm3', 'metric cup']);

/** Milliliters above the contents: the opening's area times the depth, as in a straight neck. */
export const headspaceMilliliters = (opening: Quantity<'length'>, headspace: Quantity<'length'>): number =>
  (Math.PI / 4) * valueIn(opening, 'cm') ** 2 * valueIn(headspace, 'cm');

export interface JarRoom {
  readonly jar: Jar;
  /** All in mL. */
  readonly capacity: number;
  readonly empty: number;
  readonly fill: number;
  /** Unit of volumes for the answer. */
  readonly unit: Unit<'volume'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** That the capacity counts to the rim is known of a brimful one, and taken so of a nominal one. */
const capacityLess = ({ capacityIs }: Jar): Basis => {
  const note = `${capacityIs} capacity less headspace volume`;
  return capacityIs === 'brimful' ? { of: 'fillVolume', kind: 'equation', note } : practiceBasis('fillVolume', note);
};

/** How a jar divides into contents and headspace; a headspace that leaves no room for food is an error. */
export function roomIn(jar: Jar, headspace: Quantity<'length'>, given: unknown): JarRoom {
  const capacity = valueIn(jar.capacity, 'mL');
  const empty = headspaceMilliliters(jar.opening, headspace);
  if (empty >= capacity) {
    const deepest = quantityIn(valueIn(headspace, 'm') * (capacity / empty), 'm', headspace.unit);
    fail(
      'OUT_OF_RANGE',
      'headspace',
      given,
      `less than the depth of the jar (${deepest.value.toPrecision(2)} ${deepest.unit})`,
    );
  }
  return {
    jar,
    capacity,
    empty,
    fill: capacity - empty,
    unit: jar.capacityIs === 'nominal' && METRIC.has(headspace.unit) ? 'mL' : jar.capacity.unit,
    basis: [
      ...jar.basis,
      { of: 'fillVolume', kind: 'equation', note: 'headspace: area of the opening times its depth' },
      capacityLess(jar),
    ],
    cautions: [...jar.cautions, jarCaution('straight-neck')],
  };
}

/**
 * How much goes into a jar at a headspace, how much room stays empty, and what the contents weigh.
 *
 * headspace volume = π/4 × opening² × headspace; fill volume = capacity less that; net mass = fill volume × density.
 *
 * The capacity is the brimful one where you measured it. Otherwise it is the published nominal one, counted to the
 * rim: no source says where on the jar it is reached, and this is the reading that never promises more room than
 * there is (so it readies a jar too many rather than too few).
 *
 * Source of the sizes and openings: USDA Complete Guide to Home Canning (AIB 539), Guide 1.
 *
 * @returns volumes in the unit of the jar's capacity (fl oz for a size), or in mL for a size and a headspace in mm or cm
 * @throws StillroomError OUT_OF_RANGE when the headspace is as deep as the jar, UNKNOWN_NAME for an unknown jar
 *
 * @example
 * ```ts
 * import { fillJar } from 'stillroom/jars';
 *
 * const pint = fillJar({ jar: 'pint', headspace: '1/2 in', density: '1.05 g/mL' });
 * pint.headspaceVolume.value; // ≈ 1.23
 * pint.fillVolume.value; // ≈ 14.77
 * pint.netMass.value; // ≈ 458.7
 * fillJar({ jar: 'pint', headspace: '12 mm', temperature: '90 degC' }).netMass.value; // ≈ 423.7
 * fillJar({ jar: 'pint', headspace: '9 in' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function fillJar(input: FillJarInput): FilledJar {
  const given = readInput(schema, input);
  const room = roomIn(resolveJar(given.jar, given.mouth), given.headspace, input.headspace);
  if (given.density !== undefined && given.temperature !== undefined) {
    fail('CONTRADICTION', 'temperature', input.temperature, 'density or temperature, not both');
  }
  const water = given.temperature && waterDensity({ temperature: given.temperature });
  const contents = given.density ?? water?.density;
  const massUnit = given.density ? MASS_OF[given.density.unit] : METRIC.has(room.unit) ? 'g' : 'oz';
  return answer({
    fillVolume: quantityIn(room.fill, 'mL', room.unit),
    headspaceVolume: quantityIn(room.empty, 'mL', room.unit),
    ...(contents && { netMass: quantityIn(room.fill * valueIn(contents, 'g/mL'), 'g', massUnit) }),
    basis: [
      ...behind('fillVolume', room.basis),
      ...(given.density ? [measured('netMass', 'density of the contents')] : []),
      ...behind('netMass', water?.basis ?? []).map((line) => ({
        ...line,
        note: 'density of water, as that of the contents',
      })),
    ],
    cautions: room.cautions,
  });
}
