/** The word `acidity`: `acid` (pH 4.6 and below) or `low-acid` (above it). */
import * as z from 'zod/mini';
import acidityTable from '../../data/words/acidities.json';
import { forReaders, id, practiceColumns, type RowOf } from '../sources/columns';
import { asTable } from '../sources/table';
import { type Choices, choiceField, readChoice, spelledColumns } from './choices';
import { word } from './word';

/** The two kinds of food that canning tells apart. */
export const ACIDITIES = ['acid', 'low-acid'] as const;
export type Acidity = (typeof ACIDITIES)[number];

export const acidityColumns = () =>
  z.strictObject({ id: forReaders(id()), ...spelledColumns(ACIDITIES), ...practiceColumns() });
export const acidityRows = asTable<RowOf<typeof acidityColumns>>(acidityTable).rows;

const CHOICES: Choices<Acidity> = { what: 'an acidity', rows: acidityRows, allowed: ACIDITIES };

/** Reads an acidity by any of its spellings. */
export const readAcidity = (given: unknown, path = 'acidity'): Acidity => readChoice(CHOICES, given, path);

/** Whether a food counts as acid or low-acid. */
export const acidity = () =>
  word(choiceField(CHOICES), {
    name: 'acidity',
    kind: 'choice',
    says: 'Whether a food counts as acid (pH 4.6 and below) or low-acid.',
    choices: ACIDITIES,
  });
