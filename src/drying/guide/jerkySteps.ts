/** The printed steps of jerky, and how a way of making it is held against them. */
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { basisOf } from '../../sources/table';
import { figure } from '../rows';
import { type JerkyRow, jerkyStep } from './tables';

export const MEAT = jerkyStep('inside-meat');
export const POULTRY = jerkyStep('inside-poultry');
export const DRYER = jerkyStep('dryer-after-heating');
export const HOT_DRYER = jerkyStep('dryer-before-oven');
export const OVEN = jerkyStep('oven-after');
/** The thickest strip that the oven step is for. */
export const STRIP: Quantity<'length'> = {
  value: Math.min(figure(HOT_DRYER.thickest_in), figure(OVEN.thickest_in)),
  unit: 'in',
};

/** The least and the most that a row prints, in degF; no most where it prints none. */
export function printed({ temperature_degF: ends }: JerkyRow): { readonly least: number; readonly most: number } {
  const [least, most] = figure(ends);
  return { least, most: most ?? Number.POSITIVE_INFINITY };
}

/** Whether a temperature is one that the row prints; none given is not. */
export function within(given: Quantity<'temperature'> | undefined, row: JerkyRow): boolean {
  if (given === undefined) return false;
  const [value, { least, most }] = [valueIn(given, 'degF'), printed(row)];
  return value >= least - 1e-9 && value <= most + 1e-9;
}

/** Whether a time is as long as the row asks for. */
export const longEnough = (given: Quantity<'time'> | undefined, { atLeast }: JerkyRow): boolean =>
  given !== undefined && atLeast !== undefined && valueIn(given, 'min') >= valueIn(atLeast, 'min') - 1e-9;

const ROOM = jerkyStep('keep-room');
const REFRIGERATOR = jerkyStep('keep-refrigerator');
const FREEZER = jerkyStep('keep-freezer');
const PLACES = [
  ['shelf', ROOM],
  ['refrigerator', REFRIGERATOR],
  ['freezer', FREEZER],
] as const;
/** How long it keeps, in words. */
export const keeping = () => PLACES.map(([place, { keeps }]) => ({ place, text: figure(keeps) }));
/** The lines behind it. */
export const keepingBasis = () => PLACES.map(([place, row]) => basisOf(row, 'keepsFor[].text', place));
