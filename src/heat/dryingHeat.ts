import type * as z from 'zod/mini';
import constants from '../../data/heat/drying-constants.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, mass, optional, readInput, share, temperature } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { refuseWetter, shareLeft } from '../solution/massBalance';
import type { Basis, Caution } from '../sources/index';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { latentHeat, vaporizationRow } from './vaporization';

interface ConstantRow extends Sourced {
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
}

const constantRow = (quantity: string): ConstantRow =>
  asTable<ConstantRow>(constants).rows.find((row) => row.quantity === quantity) as ConstantRow;

/** kJ/(kg K) of fruit and vegetables as they go in. */
const foodHeat = constantRow('specific heat of a high-moisture food in the drying example');

/** 140 degF: the temperature of the printed drying guides. */
export const GUIDE_DRYING_TEMPERATURE: Quantity<'temperature'> = { value: 140, unit: 'degF' };
/** The temperature of the kitchen in the textbook example. */
export const START_C = 21;

export const dryingHeatBasis: readonly Basis[] = [
  basisOf(foodHeat, 'specific heat of the produce'),
  basisOf(vaporizationRow, 'latent heat of vaporization'),
  {
    of: 'heat = warming the produce + evaporating the water',
    kind: 'equation',
    source: 'earle',
    locator: 'Example 7.2',
  },
];

/** kJ to warm the produce to the dryer's temperature and evaporate the water. */
export function heatToDry(freshKg: number, waterKg: number, startC: number, dryerC: number): number {
  return freshKg * foodHeat.value * (dryerC - startC) + waterKg * latentHeat(dryerC);
}

/** The temperatures a drying heat can be asked for: the latent-heat table runs from 0.01 to 100 degC. */
export const dryerTemperature = () =>
  temperature({ min: { value: 20, unit: 'degC' }, max: { value: 100, unit: 'degC' } });

const schema = fields({
  fresh: mass(),
  moisture: share({ below: 1 }),
  targetMoisture: share({ below: 1 }),
  start: optional(temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } })),
  temperature: optional(dryerTemperature()),
});

export type DryingHeatInput = z.input<typeof schema>;

export interface DryingHeat {
  readonly waterRemoved: Quantity<'mass'>;
  /** The least heat that does it; a dryer draws several times as much. */
  readonly heat: Quantity<'energy'>;
  /** The same for one kilogram of fresh produce. */
  readonly heatPerKilogram: Quantity<'energy'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The heat that drying takes: warming the produce to the dryer's temperature and evaporating the water.
 *
 * heat = fresh x 3.8 kJ/(kg K) x (dryer - start) + water x latent heat at the dryer's temperature. It is the floor:
 * a dryer draws more, by the share of its energy that does not dry (see `dryEnergy` in `stillroom/plan`).
 *
 * @param input.fresh - ready produce before drying
 * @param input.moisture - its moisture, wet basis, 0 to below 1 or percent
 * @param input.targetMoisture - the moisture to reach, wet basis
 * @param input.start - temperature of the produce as it goes in, 0 to 100 degC; 21 degC if not given
 * @param input.temperature - of the dryer, 20 to 100 degC; 140 degF if not given
 * @returns `waterRemoved` in the unit of `fresh`, `heat` and `heatPerKilogram` in kJ
 * @throws StillroomError CONTRADICTION when the target is wetter than the start, or the dryer colder than the produce
 *
 * @example
 * ```ts
 * import { dryingHeat } from 'stillroom/heat';
 *
 * dryingHeat({ fresh: '1 kg', moisture: '80 %', targetMoisture: '10 %', temperature: '100 degC' }).heat.value; // ≈ 2055
 * ```
 */
export function dryingHeat(input: DryingHeatInput): DryingHeat {
  const {
    fresh,
    moisture,
    targetMoisture,
    start,
    temperature: dryer = GUIDE_DRYING_TEMPERATURE,
  } = readInput(schema, input);
  refuseWetter(moisture, targetMoisture, input.targetMoisture);
  const startC = start === undefined ? START_C : valueIn(start, 'degC');
  const dryerC = valueIn(dryer, 'degC');
  if (dryerC < startC) fail('CONTRADICTION', 'temperature', input.temperature, 'a dryer warmer than the produce');
  const removed = 1 - shareLeft(moisture, targetMoisture);
  const perKilogram = heatToDry(1, removed, startC, dryerC);
  return answer({
    waterRemoved: { value: fresh.value * removed, unit: fresh.unit },
    heat: { value: perKilogram * valueIn(fresh, 'kg'), unit: 'kJ' },
    heatPerKilogram: quantityIn(perKilogram, 'kJ', 'kJ'),
    basis: dryingHeatBasis,
    cautions: [],
  });
}
