import { temperature } from '../words/temperature';

/** The temperatures over which the density and solubility equations were published. */
export const liquidTemperature = () =>
  temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } });

/** Sugar tables are reduced to this temperature. */
export const REFERENCE_TEMPERATURE = 20; // degC
