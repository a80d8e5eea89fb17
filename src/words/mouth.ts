/** The word `mouth`: the opening of a canning jar, regular or wide. */
import mouthTable from '../../data/words/mouths.json';
import { asTable, type Sourced } from '../sources/table';
import { type Choices, choiceField, readChoice, type Spelled } from './choices';
import { word } from './word';

/** The two mouths of home-canning jars. */
export const MOUTHS = ['regular', 'wide'] as const;
export type JarMouth = (typeof MOUTHS)[number];

export interface MouthRow extends Sourced, Spelled {
  readonly name: JarMouth;
  /** Diameter of the opening as printed: a kitchen fraction. */
  readonly opening_in: string;
}
export const mouthRows = asTable<MouthRow>(mouthTable).rows;

const CHOICES: Choices<JarMouth> = { what: 'a mouth', rows: mouthRows, allowed: MOUTHS };

/** Reads a mouth by any of its spellings. */
export const readMouth = (given: unknown, path = 'mouth'): JarMouth => readChoice(CHOICES, given, path);

/** The row of a mouth. */
export const mouthRow = (mouth: JarMouth): MouthRow => mouthRows.find(({ name }) => name === mouth) as MouthRow;

/** The opening of the jar. */
export const mouth = () =>
  word(choiceField<JarMouth, string>(CHOICES), {
    name: 'mouth',
    kind: 'choice',
    says: 'The opening of the jar.',
    choices: MOUTHS,
  });
