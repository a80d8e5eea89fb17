import table from '../../data/produce/catalogue.json';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { asTable, type Sourced } from '../sources/table';

/** A fruit or vegetable, with the rows of the other tables that belong to it. */
export interface CatalogueRow extends Sourced, Named {
  readonly kind: 'fruit' | 'vegetable';
  /** Food numbers of its rows in the SR28 tables, the one quoted first; none for a group. */
  readonly ndb: readonly string[];
  /** Wider names whose printed rows also hold for this one: `berry` for `blueberry`. */
  readonly groups?: readonly string[];
  /** What custom takes off before it is cut. */
  readonly cut: 'trimmed' | 'cored' | 'pitted' | 'peeled';
}

export const catalogue = asTable<CatalogueRow>(table).rows;

const byName = new Map(catalogue.map((row) => [row.name, row]));
const named = (name: string): CatalogueRow => byName.get(name) as CatalogueRow;

/** The produce of this name, singular or plural, by any of its names. */
export const findProduce = (text: string, path = 'produce'): CatalogueRow =>
  lookUp(text, catalogue, path, 'fruit or vegetable');

/** The members of a group: every row that names it. */
const membersOf = (name: string): CatalogueRow[] => catalogue.filter(({ groups }) => groups?.includes(name));

/** The names whose printed rows hold for this produce: its own, then those of the groups it belongs to. */
export const namesAbove = (row: CatalogueRow): string[] => [
  row.name,
  ...(row.groups ?? []).flatMap((name) => namesAbove(named(name))),
];

/** The names whose rows describe this produce itself: its own and, of a group, those of its members. */
export const namesBelow = (row: CatalogueRow): string[] => [
  row.name,
  ...membersOf(row.name).flatMap((member) => namesBelow(member)),
];

/** Food numbers of the produce, or of a group's members, the one quoted first. */
export const numbersOf = (row: CatalogueRow): string[] => namesBelow(row).flatMap((name) => named(name).ndb);

/**
 * The trade names of all the fruits and vegetables this module knows, in the order of the alphabet.
 *
 * Singular and lower case. Functions also take the plural and other names: `Peaches`, `courgette`, `Cherries, sour`.
 *
 * @example
 * ```ts
 * import { produceNames } from 'stillroom/produce';
 *
 * produceNames().includes('sour cherry'); // => true
 * produceNames('vegetable').includes('sour cherry'); // => false
 * ```
 */
export function produceNames(kind?: 'fruit' | 'vegetable'): string[] {
  return answer(
    catalogue
      .filter((row) => kind === undefined || row.kind === kind)
      .map(({ name }) => name)
      .sort(),
  );
}
