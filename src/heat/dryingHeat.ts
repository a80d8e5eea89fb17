/** The least heat that drying takes. Internal: `energyNeeded` answers it. */
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { vaporizationBasis, vaporizationHeat } from '../steam/water';
import { temperature } from '../words/temperature';
import { figure, figureBasis, temperatureFigure } from './tables';

/** 140 degF: the temperature of the printed drying guides. */
export const GUIDE_DRYING_TEMPERATURE: Quantity<'temperature'> = /* @__PURE__ */ temperatureFigure('dryer-temperature');
/** The food as it goes in, where nobody says how warm it is, degC. */
export const START_C = /* @__PURE__ */ valueIn(/* @__PURE__ */ temperatureFigure('produce-start'), 'degC');

/** What a heat of drying rests on: `of` is the path of the answer's field. */
export const dryingHeatBasis = (of: string): readonly Basis[] => [
  figureBasis('produce-heat', of),
  vaporizationBasis(of),
  {
    of,
    kind: 'equation',
    source: 'earle',
    locator: 'Example 7.2',
    note: 'heat = warming the food + evaporating the water',
  },
];

/** kJ that a kilogram of water takes to evaporate at a temperature in degC. */
export const latentHeatAt = (degC: number): number =>
  vaporizationHeat(valueIn({ value: degC, unit: 'degC' }, 'K')) / 1000;

/** kJ to warm the food to the dryer's temperature and evaporate the water. */
export function heatToDry(freshKg: number, waterKg: number, startC: number, dryerC: number): number {
  return freshKg * figure('produce-heat').value * (dryerC - startC) + waterKg * latentHeatAt(dryerC);
}

/** The temperatures a drying heat can be asked for. */
export const dryerTemperature = () =>
  temperature({ min: { value: 20, unit: 'degC' }, max: { value: 100, unit: 'degC' } });
