import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { findNamed, lookUp, type Named, nameKey } from '../common/names';
import { fields, name, readInput } from '../quantity/fields';
import { joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { limitRow, pHLimit } from './phLimits';
import { acidCaution, FOOD_PH, type FoodPhRow, printed, RECALLED_PH } from './tables';

const schema = fields({ food: name('a food, such as "peach"') });
export type PhOfInput = z.input<typeof schema>;

export interface PhOf {
  readonly food: string;
  /** From the lowest to the highest figure of the published lists (of the recalled ones where none is published). */
  readonly pH: { readonly low: number; readonly high: number };
  /** By the highest figure of any list: one lot above the limit is enough. */
  readonly class: 'acid' | 'low-acid';
  /** Whether the figures lie on both sides of the limit. */
  readonly crosses: boolean;
  /** Every row behind the answer. */
  readonly figures: readonly {
    readonly food: string;
    readonly low: number;
    readonly high: number;
    readonly source: string;
    readonly recalled: boolean;
  }[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const ROWS: readonly FoodPhRow[] = [...FOOD_PH, ...RECALLED_PH];

/** Names that people say and the lists do not. */
const SYNONYMS: Readonly<Record<string, readonly string[]>> = {
  bean: ['dry bean'],
  'string bean': ['green bean', 'snap bean'],
  'honeydew melon': ['honeydew'],
  cantaloupe: ['muskmelon'],
  pepper: ['bell pepper', 'sweet pepper'],
  zucchini: ['courgette'],
  eggplant: ['aubergine'],
  pimento: ['pimiento'],
  beet: ['beetroot'],
  'dill pickle': ['pickle'],
  ketchup: ['catsup'],
  'apple sauce': ['applesauce'],
};

let keyed: readonly { row: FoodPhRow; own: string; base: string }[] | undefined;
/** The rows with their keys, made at the first use. */
const keyedRows = () => {
  keyed ??= ROWS.map((row) => ({ row, own: nameKey(row.food), base: nameKey(row.base) }));
  return keyed;
};
/** The foods: base names with their synonyms, and every name as a list prints it. */
const BASES: readonly Named[] = [...new Set(ROWS.map(({ base }) => base))].map((name) => ({
  name,
  synonyms: SYNONYMS[name] ?? [],
}));
const LISTED: readonly Named[] = ROWS.map(({ food }) => ({ name: food }));

/** The rows of a food: those of its name and its varieties; prepared forms only where asked for by name. */
function rowsOf(food: string): readonly FoodPhRow[] {
  const key = nameKey(food);
  const rows = keyedRows().filter(({ row, own, base }) => own === key || (base === key && row.prepared !== true));
  const found = rows.length > 0 ? rows : keyedRows().filter(({ base }) => base === key);
  return found.map(({ row }) => row);
}

/** Foods that the guides name as lying above the limit at times, whatever the lists say. */
const namedAbove = (food: string): boolean =>
  printed(limitRow('named-above'), 'foods').some((named) =>
    nameKey(named.replace('some ', ''))
      .split(' ')
      .every((word) => nameKey(food).split(' ').includes(word)),
  );

/**
 * The typical pH of a food, from the published lists, and the class to treat it as.
 *
 * The class goes by the highest figure of any list, recalled ones included, and by the guides' own list of foods that
 * are sometimes above the limit (tomatoes, figs). A typical pH never shows that a food needs no acid.
 *
 * @param input.food - `"peaches"`, `"apple juice"`, `"Figs, Calimyrna"`
 * @returns `pH` with `low` and `high`, and `class`
 * @throws StillroomError UNKNOWN_NAME, with the nearest names
 *
 * @example
 * ```ts
 * import { phOf } from 'stillroom/acid';
 *
 * phOf({ food: 'mangoes' }).class; // => 'low-acid'
 * phOf({ food: 'apple juice' }).pH; // => { low: 3.35, high: 4 }
 * ```
 */
export function phOf(input: PhOfInput): PhOf {
  const { food: asked } = readInput(schema, input);
  // a name as a list prints it ("Figs, Calimyrna") where it is no base name; else the base name or its synonym
  const known = findNamed(asked, BASES).length > 0 ? undefined : findNamed(asked, LISTED)[0];
  const food = (known ?? lookUp(asked, BASES, 'food', 'food with a listed pH')).name;
  const rows = rowsOf(food);
  const limit = pHLimit('home-acid');
  const acidUpTo = limit.pH;
  const published = rows.filter((row) => row.obtained !== 'memory');
  const served = published.length > 0 ? published : rows;
  const low = Math.min(...served.map((row) => row.pHLow));
  const high = Math.max(...served.map((row) => row.pHHigh));
  const highest = Math.max(...rows.map((row) => row.pHHigh));
  const above = namedAbove(food);
  const isAcid = highest <= acidUpTo && !above;
  const crosses = low <= acidUpTo && !isAcid;
  return answer({
    food,
    pH: { low, high },
    class: isAcid ? 'acid' : 'low-acid',
    crosses,
    figures: rows.map((row) => ({
      food: row.food,
      low: row.pHLow,
      high: row.pHHigh,
      source: row.source,
      recalled: row.obtained === 'memory',
    })),
    basis: joinBasis(
      rows.map((row) => basisOf(row, `pH of ${row.food}`)),
      [basisOf(limit, 'limit between acid and low-acid')],
      above ? [basisOf(limitRow('named-above'), 'foods above the limit unless acidified')] : [],
    ),
    cautions: [
      acidCaution('typical-ph-no-proof'),
      ...(isAcid ? [] : [acidCaution('low-acid-in-jars')]),
      ...(above ? [acidCaution('acidify-every-jar')] : crosses ? [acidCaution('both-sides-of-limit')] : []),
      ...(rows.some((row) => row.obtained === 'memory') ? [caution('recalled')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
