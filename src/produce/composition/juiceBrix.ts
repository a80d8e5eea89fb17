import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import type { Given } from '../../common/given';
import { food } from '../../foods/fields';
import { nameOf } from '../../foods/tables';
import { fields, readInput } from '../../quantity/fields';
import type { Basis, Caution } from '../../sources/basis';
import type { NotKnown } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { missing } from '../shape';
import { brixTables } from './tables';

const schema = fields({
  /** The fruit of the juice: `apple`, `sour cherry`, `prune`. */
  food: food(),
});
export type JuiceBrixInput = Given<z.input<typeof schema>>;

/** What law and customs print for a juice. */
export interface JuiceBrix {
  /** One of the three tables prints it. */
  readonly known: true;
  /** Trade name of the fruit. */
  readonly food: string;
  /** Average degrees Brix of the unconcentrated natural juice, by United States customs. */
  readonly averageUS?: number;
  /** Least degrees Brix of single-strength juice in the United States. */
  readonly minimumUS?: number;
  /** Least degrees Brix of reconstituted juice or puree in the European Union. */
  readonly minimumEU?: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * The degrees Brix that law and customs print for the juice of a fruit.
 *
 * @returns the figures that exist; `known: false` for a juice in none of the three tables
 * @throws StillroomError UNKNOWN_NAME for a food that is not in the pantry
 *
 * Sources: 19 CFR 151.91 (average); 21 CFR 101.30(h)(1) (least); Directive 2001/112/EC Annex V (least).
 *
 * @example
 * ```ts
 * import { juiceBrix } from 'stillroom/produce';
 *
 * const apple = juiceBrix({ food: 'apples' });
 * apple.known && [apple.averageUS, apple.minimumUS, apple.minimumEU]; // => [13.3, 11.5, 11.2]
 * ```
 */
export function juiceBrix(input: JuiceBrixInput): JuiceBrix | NotKnown {
  const { id } = readInput(schema, input).food;
  const found = (Object.keys(brixTables) as (keyof typeof brixTables)[]).flatMap((key) => {
    const row = brixTables[key].find((each) => each.food === id);
    return row === undefined ? [] : [{ key, row }];
  });
  if (found.length === 0) {
    const text = `Law and customs in these tables print no degrees Brix for the juice of ${nameOf(id)}.`;
    return answer(missing('no brix', text, [{ text: 'Measure it with a refractometer.' }]));
  }
  return answer({
    known: true as const,
    food: nameOf(id),
    ...Object.fromEntries(found.map(({ key, row }) => [key, row.degBrix])),
    basis: found.map(({ key, row }) => basisOf(row, key)),
    cautions: [],
  });
}
