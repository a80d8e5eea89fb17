/** The word `pack`: how food goes into the jar, hot or raw; `not stated` where the page of the process does not say. */
import * as z from 'zod/mini';
import packTable from '../../data/words/packs.json';
import { forReaders, id, practiceColumns, type RowOf } from '../sources/columns';
import { asTable } from '../sources/table';
import { type Choices, choiceField, readChoice, spelledColumns } from './choices';
import { word } from './word';

/** The packs of the process tables. */
export const PACKS = ['hot', 'raw', 'not stated'] as const;
/** A pack that a page names. */
export type Pack = 'hot' | 'raw';
/** A pack, or that the page names none. */
export type AnyPack = (typeof PACKS)[number];

export const packColumns = () =>
  z.strictObject({ id: forReaders(id()), ...spelledColumns(PACKS), ...practiceColumns() });
export const packRows = asTable<RowOf<typeof packColumns>>(packTable).rows;

const CHOICES: Choices<AnyPack> = { what: 'a pack', rows: packRows, allowed: PACKS };

/** Reads a pack by any of its spellings. */
export const readPack = (given: unknown, path = 'pack'): AnyPack => readChoice(CHOICES, given, path);

/** How the food goes into the jar. */
export const pack = () =>
  word(choiceField(CHOICES), {
    name: 'pack',
    kind: 'choice',
    says: 'How the food goes into the jar: heated first, or raw.',
    choices: PACKS,
  });
