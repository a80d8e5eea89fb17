/** The word `mouth`: the opening of a canning jar, regular or wide. */
import * as z from 'zod/mini';
import mouthTable from '../../data/words/mouths.json';
import { forReaders, id, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';
import { type Choices, choiceField, readChoice, spelledColumns } from './choices';
import { word } from './word';

/** The two mouths of home-canning jars. */
export const MOUTHS = ['regular', 'wide'] as const;
export type JarMouth = (typeof MOUTHS)[number];

export const mouthColumns = () =>
  z.strictObject({
    id: forReaders(id()),
    ...spelledColumns(MOUTHS),
    /** Diameter of the opening as printed: a kitchen fraction. */
    opening_in: text(),
    ...sourcedColumns(),
  });
export type MouthRow = RowOf<typeof mouthColumns>;
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
