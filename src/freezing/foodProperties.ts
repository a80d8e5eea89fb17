import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput, share, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import type { NotKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { boundWater, milesIce } from './ice';
import { type PrintedProperties, type PrintedPropertiesInput, printedProperties } from './printedProperties';
import { COMPONENTS, CONSTANTS, type ComponentRow, correlation, rowOf } from './tables';

const PARTS = ['water', 'protein', 'fat', 'carbohydrate', 'fiber', 'ash'] as const;
type Part = (typeof PARTS)[number];

const schema = fields({
  /** Parts of the weight, each 0 to 1 or percent, together 1 within 0.01. */
  composition: fields({
    /** Water, frozen or not. */
    moisture: share(),
    /** Protein; 0 by default. */
    protein: optional(share()),
    /** Fat; 0 by default. */
    fat: optional(share()),
    /** Sugars and starch, without fiber; 0 by default. */
    carbohydrate: optional(share()),
    /** Fiber; 0 by default. */
    fiber: optional(share()),
    /** Minerals; 0 by default. */
    ash: optional(share()),
  }),
  /** Temperature of the food, -40 to 150 degC. */
  temperature: temperature({ min: { value: -40, unit: 'degC' }, max: { value: 150, unit: 'degC' } }),
  /** Where the food begins to freeze, 0 degC or below; needed below 0 degC (ask with a `food`). */
  initialFreezing: optional(temperature({ max: { value: 0, unit: 'degC' } })),
});
export type FoodPropertiesInput = z.input<typeof schema>;

export interface FoodProperties {
  /** Density, kg/m3. */
  readonly density: Quantity<'density'>;
  /** Specific heat, kJ/(kg K); below freezing without the heat of the ice that melts or forms. */
  readonly specificHeat: number;
  /** Thermal conductivity, W/(m K). */
  readonly conductivity: number;
  /** Thermal diffusivity, m²/s: conductivity / (density x specific heat). */
  readonly diffusivity: number;
  /** Ice, share of the food's weight, 0 to 1. */
  readonly iceShare: number;
  /** Below freezing: specific heat with the heat of freezing in it, kJ/(kg K). */
  readonly apparentSpecificHeat?: number;
  /** Below freezing: heat content above -40 degC, kJ/kg. */
  readonly enthalpy?: number;
  /** Above freezing: what other formulas give for the specific heat, kJ/(kg K). */
  readonly otherSpecificHeats?: {
    /** By Chen, from the solids. */
    readonly chen: number;
    /** By Heldman and Singh, from the composition. */
    readonly heldmanSingh: number;
  };
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
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
const FUSION = /* @__PURE__ */ rowOf(CONSTANTS, 'fusion-chen').value;
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
 * Density, specific heat and thermal conductivity of a food from its composition, by Choi and Okos; or, for a `food` by
 * name, where it begins to freeze and the heats that are printed of it.
 *
 * Each component has a polynomial in temperature. Specific heats add by weight, densities by 1/rho = sum x/rho, and
 * conductivities by volume. Below the initial freezing point part of the water is ice (Miles), and the apparent
 * specific heat and enthalpy follow Chen. Of printed figures the handbook comes first, then a textbook that rounds to
 * whole degrees, then recalled figures, which say so.
 *
 * @returns `density` in kg/m3, `specificHeat` in kJ/(kg K), `conductivity` in W/(m K), `diffusivity`, `iceShare`; for a
 *   `food` its `temperature` of freezing in the unit the source prints, specific heats, latent heat and `others`, or
 *   `known: false` where these tables have no figure
 * @throws StillroomError CONTRADICTION when the parts do not add up, MISSING for a freezing point below 0 degC;
 *   UNKNOWN_NAME for a name that is no food, with the nearest names
 *
 * @example
 * ```ts
 * import { foodProperties } from 'stillroom/freezing';
 *
 * const syrup = foodProperties({ composition: { moisture: 0.6, carbohydrate: 0.4 }, temperature: '25 degC' });
 * syrup.density.value; // ≈ 1170.37
 * syrup.specificHeat; // ≈ 3.1441
 * const peaches = foodProperties({ food: 'peaches' });
 * peaches.known && peaches.temperature; // => { value: 30.4, unit: 'degF' }
 * ```
 */
export function foodProperties(input: PrintedPropertiesInput): PrintedProperties | NotKnown;
export function foodProperties(input: FoodPropertiesInput): FoodProperties;
export function foodProperties(
  input: FoodPropertiesInput | PrintedPropertiesInput,
): FoodProperties | PrintedProperties | NotKnown {
  return typeof input === 'object' && input !== null && 'food' in input ? printedProperties(input) : choiOkos(input);
}

function choiOkos(input: FoodPropertiesInput): FoodProperties {
  const { composition: given, temperature: at, initialFreezing } = readInput(schema, input);
  const { moisture: water, ...dry } = given;
  const composition: { readonly [part in Part]?: number | undefined } = { water, ...dry };
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
    iceShare: ice,
    ...(frozen
      ? chenFrozen(solids, freezable, freezing, t)
      : {
          otherSpecificHeats: {
            chen: 4.19 - 2.3 * solids - 0.628 * solids ** 3,
            heldmanSingh:
              4.187 * share('water') +
              1.549 * share('protein') +
              1.675 * share('fat') +
              1.424 * (share('carbohydrate') + share('fiber')) +
              0.837 * share('ash'),
          },
        }),
    basis: [
      ...present.map(([component]) =>
        basisOf(
          componentRow(component, 'density'),
          'density',
          `density, specific heat and conductivity of ${component}`,
        ),
      ),
      ...(frozen
        ? [
            basisOf(componentRow('ice', 'specificHeat'), 'specificHeat', 'specific heat of ice'),
            basisOf(correlation('miles-ice'), 'iceShare'),
            basisOf(correlation('chen-cp-frozen'), 'apparentSpecificHeat'),
            basisOf(correlation('chen-enthalpy-frozen'), 'enthalpy'),
          ]
        : [
            basisOf(correlation('chen-cp-unfrozen'), 'otherSpecificHeats.chen'),
            basisOf(correlation('composition-cp'), 'otherSpecificHeats.heldmanSingh'),
          ]),
    ],
    cautions: [caution('estimate')],
  });
}
