/** The word `method`: the canner, one of four; the gauge of a pressure canner must be named. */
import * as z from 'zod/mini';
import methodTable from '../../data/words/methods.json';
import { forReaders, id, practiceColumns, type RowOf, text } from '../sources/columns';
import { asTable } from '../sources/table';
import { type Choices, choiceField, readChoice, spelledColumns } from './choices';
import { word } from './word';

/** The canners of the process tables. */
export const METHODS = ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam'] as const;
/** How jars are heated. */
export type CanningMethod = (typeof METHODS)[number];

export const methodColumns = () =>
  z.strictObject({
    id: forReaders(id()),
    ...spelledColumns([...METHODS, 'pressure canner']),
    asks: z.exactOptional(z.array(text()).check(z.minLength(2))),
    question: z.exactOptional(text()),
    ...practiceColumns(),
  });
export const methodRows = asTable<RowOf<typeof methodColumns>>(methodTable).rows;

const choices = <T extends CanningMethod>(allowed: readonly T[]): Choices<T> => ({
  what: 'a canner',
  rows: methodRows,
  allowed,
});

/** Reads a canner by any of its spellings. */
export const readMethod = (given: unknown, path = 'method'): CanningMethod => readChoice(choices(METHODS), given, path);

/** The canner; `allowed` narrows it, as to the pressure canners. */
export const method = <const T extends CanningMethod = CanningMethod>(allowed: readonly T[] = METHODS as never) =>
  word(choiceField(choices(allowed)), {
    name: 'method',
    kind: 'choice',
    says: 'The canner that the jars are heated in.',
    choices: allowed,
  });
