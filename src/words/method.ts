/** The word `method`: the canner, one of four; the gauge of a pressure canner must be named. */
import methodTable from '../../data/words/methods.json';
import { asTable, type Practice } from '../sources/table';
import { type Choices, choiceField, readChoice, type Spelled } from './choices';
import { word } from './word';

/** The canners of the process tables. */
export const METHODS = ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam'] as const;
/** How jars are heated. */
export type CanningMethod = (typeof METHODS)[number];

export const methodRows = asTable<Spelled & Practice>(methodTable).rows;

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
