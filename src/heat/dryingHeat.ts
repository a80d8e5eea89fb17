/** The least heat that drying takes. Internal: `dryEnergy` answers it. */
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { temperature } from '../words/temperature';
import { figure, figureBasis, temperatureFigure } from './tables';
import { latentHeatAt, vaporizationBasis } from './vaporization';

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

/** kJ to warm the food to the dryer's temperature and evaporate the water. */
export function heatToDry(freshKg: number, waterKg: number, startC: number, dryerC: number): number {
  return freshKg * figure('produce-heat').value * (dryerC - startC) + waterKg * latentHeatAt(dryerC);
}

/** The temperatures a drying heat can be asked for: the latent-heat table runs from 0.01 to 100 degC. */
export const dryerTemperature = () =>
  temperature({ min: { value: 20, unit: 'degC' }, max: { value: 100, unit: 'degC' } });
