/** What every function of this module asks for, and the one formula they share. */
import type { Basis } from '../sources/basis';
import { temperature } from '../words/temperature';
import { temperatureDifference } from '../words/temperatureDifference';
import { time } from '../words/time';

/** A temperature of food under heat treatment, or of a record of it. */
export const foodTemperature = () =>
  temperature({ min: { value: -80, unit: 'degC' }, max: { value: 200, unit: 'degC' } });

/** A reference temperature: from a warm room to well above any canner. */
export const referenceTemperature = () =>
  temperature({ min: { value: 0, unit: 'degC' }, max: { value: 200, unit: 'degC' } });

/** The z value: how many degrees make the kill ten times as fast. */
export const zValueField = () =>
  temperatureDifference({ min: { value: 1, unit: 'delta degC' }, max: { value: 100, unit: 'delta degC' } });

/** A time above zero at a temperature. */
export const holdTime = () => time({ max: { value: 3650, unit: 'day' } });

/** Minutes at the reference temperature that one minute is worth: 10^((T - reference)/z), all in degC. */
export const rateAt = (degrees: number, reference: number, z: number): number => 10 ** ((degrees - reference) / z);

/** What that formula rests on, and its sum over a record: `of` is the path of the answer's field. */
export const rateBasis = (of: string): Basis => ({
  of,
  kind: 'equation',
  source: 'fao-fishcan-1985',
  locator: 'section 1.5',
});
