import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput, share, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { boundWater, milesIce } from './iceFraction';
import { COMPONENTS, CONSTANTS, type ComponentRow, correlation } from './tables';

const PARTS = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const;
type Part = (typeof PARTS)[number];

const schema = fields({
  /** Shares of the weight, together 1 within 0.01: `water`, `protein`, `fat`, `carbohydrate`. */
  composition: fields({
    water: share(),
    protein: optional(share()),
    fat: optional(share()),
    carbohydrate: optional(share()),
    fibre: optional(share()),
    ash: optional(share()),
  }),
  /** -40 to 150 degC. */
  temperature: temperature({ min: { value: -40, unit: 'degC' }, max: { value: 150, unit: 'degC' } }),
  /** 0 degC or below; needed below 0 degC (see `initialFreezingPoint`). */
  initialFreezing: optional(temperature({ max: { value: 0, unit: 'degC' } })),
});
export type FoodPropertiesInput = z.input<typeof schema>;

export interface FoodProperties {
  readonly density: Quantity<'density'>;
  /** kJ/(kg K); below freezing without the heat of the ice that melts or forms. */
  readonly specificHeat: number;
  /** W/(m K) */
  readonly conductivity: number;
  /** m²/s: conductivity / (density x specific heat) */
  readonly diffusivity: number;
  /** Share of the weight that is ice. */
  readonly ice: number;
  /** Below freezing: specific heat with the heat of freezing in it, kJ/(kg K). */
  readonly apparentSpecificHeat?: number;
  /** Below freezing: heat content above -40 degC, kJ/kg. */
  readonly enthalpy?: number;
  /** Above freezing: what other formulas give for the specific heat, kJ/(kg K). */
  readonly otherSpecificHeats?: { readonly chen: number; readonly heldmanSingh: number };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const BY_NAME = new Map(COMPONENTS.map((row) => [`${row.component} ${row.property}`, row]));
function componentRow(component: string, property: ComponentRow['property']): ComponentRow {
  const row = BY_NAME.get(`${component} ${property}`);
  if (row === undefined) throw new Error(`no ${property} for ${component}`);
  return row;
}
const polynomial = ({ a0, a1, a2 }: ComponentRow, t: number): number => a0 + t * (a1 + t * a2);

/** A composition in whole: its parts weigh 1 together, to within what a food table rounds. */
const ROUNDING = 0.01;

/** Chen's constants: heat of fusion of water, and the reference of his enthalpy. */
const FUSION =
  CONSTANTS.find(({ source, quantity }) => source === 'chen-1985' && quantity.startsWith('latent'))?.value ?? 0;
const REFERENCE = -40;

/** Chen's apparent specific heat and enthalpy of a food below its freezing point; temperatures in degC. */
function chenFrozen(solids: number, freezable: number, freezing: number, t: number) {
  const sensible = 1.55 + 1.26 * solids;
  const melting = freezable * FUSION * freezing;
  return {
    apparentSpecificHeat: sensible - melting / (t * t),
    enthalpy: (t - REFERENCE) * (sensible - melting / (REFERENCE * t)),
  };
}

/**
 * Density, specific heat and thermal conductivity of a food from its composition, by Choi and Okos.
 *
 * Each component has a polynomial in temperature. Specific heats add by weight, densities by 1/rho = sum x/rho, and
 * conductivities by volume. Below the initial freezing point part of the water is ice (Miles), and the apparent
 * specific heat and enthalpy follow Chen.
 *
 * (without fibre), `fibre`, `ash`
 * @returns `density` in kg/m3, `specificHeat` in kJ/(kg K), `conductivity` in W/(m K), `diffusivity`, `ice`
 * @throws StillroomError CONTRADICTION when the parts do not add up, MISSING for a freezing point below 0 degC
 *
 * @example
 * ```ts
 * import { foodProperties } from 'stillroom/freezing';
 *
 * const syrup = foodProperties({ composition: { water: 0.6, carbohydrate: 0.4 }, temperature: '25 degC' });
 * syrup.density.value; // ≈ 1170.37
 * syrup.specificHeat; // ≈ 3.1441
 * ```
 */
export function foodProperties(input: FoodPropertiesInput): FoodProperties {
  const { composition, temperature: at, initialFreezing } = readInput(schema, input);
  const total = PARTS.reduce((sum, part) => sum + (composition[part] ?? 0), 0);
  if (Math.abs(total - 1) > ROUNDING + 1e-9) {
    fail('CONTRADICTION', 'composition', total, `parts that add up to 1 (within ${ROUNDING})`);
  }
  const t = valueIn(at, 'degC');
  if (t < 0 && initialFreezing === undefined) {
    fail('MISSING', 'initialFreezing', undefined, 'the initial freezing point, for a temperature below 0 degC');
  }
  const freezing = initialFreezing === undefined ? 0 : valueIn(initialFreezing, 'degC');
  const share = (part: Part): number => composition[part] ?? 0;
  const freezable = share('water') - boundWater(share('water'), share('protein'));
  const ice = milesIce(freezable, freezing, t);
  const parts: [component: string, share: number][] = [
    ...PARTS.map((part): [string, number] => [part, share(part) - (part === 'water' ? ice : 0)]),
    ['ice', ice],
  ];
  const heatRow = (component: string) =>
    componentRow(component === 'water' && t < 0 ? 'supercooled water' : component, 'specificHeat');
  const present = parts.filter(([, x]) => x > 0);
  const volumes = present.map(([component, x]) => x / polynomial(componentRow(component, 'density'), t));
  const volume = volumes.reduce((sum, v) => sum + v, 0);
  const specificHeat = present.reduce((sum, [component, x]) => sum + x * polynomial(heatRow(component), t), 0);
  const conductivity = present.reduce(
    (sum, [component], index) =>
      sum + ((volumes[index] ?? 0) / volume) * polynomial(componentRow(component, 'conductivity'), t),
    0,
  );
  const density = 1 / volume;
  const solids = 1 - share('water');
  const frozen = t < freezing;
  return answer({
    density: { value: density, unit: 'kg/m3' },
    specificHeat,
    conductivity,
    diffusivity: conductivity / (density * specificHeat * 1000),
    ice,
    ...(frozen
      ? chenFrozen(solids, freezable, freezing, t)
      : {
          otherSpecificHeats: {
            chen: 4.19 - 2.3 * solids - 0.628 * solids ** 3,
            heldmanSingh:
              4.187 * share('water') +
              1.549 * share('protein') +
              1.675 * share('fat') +
              1.424 * (share('carbohydrate') + share('fibre')) +
              0.837 * share('ash'),
          },
        }),
    basis: [
      ...present.map(([component]) => basisOf(componentRow(component, 'density'), `properties of ${component}`)),
      ...(frozen
        ? [
            basisOf(componentRow('ice', 'specificHeat'), 'specific heat of ice'),
            basisOf(correlation('miles-ice'), 'ice'),
            basisOf(correlation('chen-cp-frozen'), 'apparent specific heat'),
            basisOf(correlation('chen-enthalpy-frozen'), 'enthalpy'),
          ]
        : [
            basisOf(correlation('chen-cp-unfrozen'), 'specific heat by Chen, for comparison'),
            basisOf(correlation('composition-cp'), 'specific heat by Heldman and Singh, for comparison'),
          ]),
    ],
    cautions: [caution('estimate')],
  });
}
