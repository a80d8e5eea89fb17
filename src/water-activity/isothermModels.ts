/** The names of the isotherm equations, and their reader. Internal. */
import { nameKey } from '../common/names';
import { fail } from '../errors/StillroomError';
import { reading } from '../quantity/fields';

export const ISOTHERM_MODELS = [
  'GAB',
  'GAB, Arrhenius',
  'BET',
  'Oswin',
  'Oswin, linear in T',
  'Oswin, percent and kelvin',
  'Halsey',
  'Henderson',
  'Henderson, four constants',
  'modified Henderson',
  'modified Halsey',
  'modified Oswin',
  'modified Chung-Pfost',
  'modified GAB',
  'Peleg',
  'Smith',
  'Adam and Shove',
  'Iglesias and Chirife',
] as const;
/** Name of an isotherm equation. */
export type IsothermModel = (typeof ISOTHERM_MODELS)[number];

/** The name of an isotherm equation, in any spelling. */
export const isothermModel = () =>
  reading<IsothermModel, IsothermModel>((given) => {
    const expected = `the name of an equation: ${ISOTHERM_MODELS.join('; ')}`;
    const options = ISOTHERM_MODELS;
    if (typeof given !== 'string') fail('WRONG_TYPE', '', given, expected, { options });
    const found = ISOTHERM_MODELS.find((model) => nameKey(model) === nameKey(given));
    return found ?? fail('UNKNOWN_NAME', '', given, expected, { options });
  });
