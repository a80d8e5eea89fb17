/** Shares: 0 to 1, or text in percent, such as "85 %"; the whole that each is a share of is said with it. */
import { share as shareField } from '../quantity/fields';
import { type NumberLimits, numberEnds } from './limits';
import { word } from './word';

export type { ShareInput } from '../quantity/types';

/** A factory of the schema of one share, 0 to 1 or in percent; a field may narrow it. */
const share =
  (name: string, says: string) =>
  (limits: NumberLimits = {}) =>
    word(shareField(limits), { name, kind: 'share', says, ...numberEnds(limits, 0, 1) });

/** Water in a food, as a share of its whole mass (wet basis). */
export const moisture = share('moisture', 'Water in a food, as a share of its whole mass (wet basis).');
/** The moisture to reach, as a share of the whole mass (wet basis). */
export const targetMoisture = share(
  'targetMoisture',
  'The moisture to reach, as a share of the whole mass (wet basis).',
);
/** Everything in a food but water, as a share of its mass. */
export const solids = share('solids', 'Everything in a food but water, as a share of its mass.');
/** The solids to reach, as a share of the mass. */
export const targetSolids = share('targetSolids', 'The solids to reach, as a share of the mass.');
/** Salt, as a share of the mass it is in. */
export const salt = share('salt', 'Salt, as a share of the mass it is in.');
/** Sugars, as a share of the mass they are in. */
export const sugars = share('sugars', 'Sugars, as a share of the mass they are in.');
/** Acid, as a share of the mass it is in. */
export const acidShare = share('acidShare', 'Acid, as a share of the mass it is in.');
/** Fat, as a share of the mass it is in. */
export const fat = share('fat', 'Fat, as a share of the mass it is in.');
/** The field `yield`: what is ready, as a share of what was raw. (`yield` is no name for a constant.) */
export const yieldShare = share('yield', 'What is ready, as a share of what was raw.');
/** Water vapor in air, as a share of the most it holds at its temperature. */
export const relativeHumidity = share(
  'relativeHumidity',
  'Water vapor in air, as a share of the most it holds at its temperature.',
);
/** Useful heat or work, as a share of the energy paid for. */
export const efficiency = share('efficiency', 'Useful heat or work, as a share of the energy paid for.');
/** How full a pot or a container may be, as a share of its volume. */
export const fill = share('fill', 'How full a pot or a container may be, as a share of its volume.');
/** Sound food, as a share of what was bought. */
export const sound = share('sound', 'Sound food, as a share of what was bought.');
/** Any other share: the field's own line says of what. */
export const otherShare = (name: string, says: string, limits: NumberLimits = {}) => share(name, says)(limits);
