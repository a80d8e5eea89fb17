import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { lookUp, type Named } from '../../common/names';
import { fields, name, readInput } from '../../quantity/fields';
import type { Basis } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { brixTables } from './composition';

const schema = fields({ juice: name('a juice by its fruit, such as "apple"') });
export type JuiceBrixInput = z.input<typeof schema>;

export interface JuiceBrix {
  readonly juice: string;
  /** Average of the unconcentrated natural juice, by United States customs. */
  readonly averageUS?: number;
  /** Least degrees Brix of single-strength juice in the United States. */
  readonly minimumUS?: number;
  /** Least degrees Brix of reconstituted juice or puree in the European Union. */
  readonly minimumEU?: number;
  readonly basis: readonly Basis[];
}

/** Names under which the tables print juices, the catalogue's name among the synonyms. */
const juices: readonly Named[] = [
  ...new Map(
    Object.values(brixTables)
      .flat()
      .map((row) => [row.food, { name: row.food, synonyms: row.produce === null ? [] : [row.produce] }]),
  ).values(),
];

/**
 * The degrees Brix that law and customs print for the juice of a fruit.
 *
 * @param input.juice - by its fruit: `apple`, `sour cherry`, `prune`
 * @returns the figures that exist; `basis` names each
 * @throws StillroomError UNKNOWN_NAME for a juice in none of the three tables
 *
 * Sources: 19 CFR 151.91 (average); 21 CFR 101.30(h)(1) (least); Directive 2001/112/EC Annex V (least).
 *
 * @example
 * ```ts
 * import { juiceBrix } from 'stillroom/produce';
 *
 * const { averageUS, minimumUS, minimumEU } = juiceBrix({ juice: 'apples' });
 * [averageUS, minimumUS, minimumEU]; // => [13.3, 11.5, 11.2]
 * ```
 */
export function juiceBrix(input: JuiceBrixInput): JuiceBrix {
  const given = readInput(schema, input);
  const { name: juice } = lookUp(given.juice, juices, 'juice', 'juice');
  const found = (Object.keys(brixTables) as (keyof typeof brixTables)[]).flatMap((key) => {
    const row = brixTables[key].find(({ food }) => food === juice);
    return row === undefined ? [] : [{ key, row }];
  });
  return answer({
    juice,
    ...Object.fromEntries(found.map(({ key, row }) => [key, row.degBrix])),
    basis: found.map(({ key, row }) => basisOf(row, key)),
  });
}
