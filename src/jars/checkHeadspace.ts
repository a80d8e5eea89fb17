import type * as z from 'zod/mini';
import { handOut } from '../common/handOut';
import { findNamed, lookUp, type Named } from '../common/names';
import { fail } from '../errors/StillroomError';
import { fields, length, name, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { jarCaution } from './cautions';
import { jarField, mouthField, resolveJar } from './describeJar';
import { headspaceMilliliters } from './fillJar';
import { headspaceRows, vacuumFactRows } from './tables';

const words = (text: string): string[] => text.split(', ');

/**
 * What people call the product, by class of the published table. A food stands here only where every tested recipe
 * for it agrees with its class; the others (lima beans, tomato sauce) need the headspace of their recipe.
 */
const CLASSES: readonly Named[] = [
  {
    name: 'jam',
    synonyms: words(
      'jelly, preserves, conserve, marmalade, fruit butter, butter, apple butter, fruit spread, jams and jellies',
    ),
  },
  {
    name: 'fruit',
    synonyms: words(
      'fruit pieces, fruit halves, fruit slices, fruit sauce, applesauce, apple sauce, apple, crab apple, apricot, ' +
        'berry, blackberry, blueberry, raspberry, cherry, sweet cherry, sour cherry, fig, nectarine, peach, pear, ' +
        'pineapple, plum, rhubarb, grapefruit, fruit cocktail, mixed fruit',
    ),
  },
  { name: 'tomato', synonyms: words('crushed tomato, whole tomato, tomato juice, tomato salsa, salsa') },
  {
    name: 'pickle',
    synonyms: words('pickled vegetables, pickled food, relish, chutney, sauerkraut, dill pickles, pickled beets'),
  },
  { name: 'juice', synonyms: words('fruit juice, puree, fruit puree, apple juice, grape juice') },
  { name: 'grape', synonyms: words('whole grapes') },
  { name: 'pie filling', synonyms: words('fruit pie filling, apple pie filling, peach pie filling, mincemeat') },
  { name: 'low-acid', synonyms: words('low acid food, soup, stock, broth, meat stock, fish, seafood, dry beans') },
  {
    name: 'vegetable',
    synonyms: words(
      'asparagus, beet, carrot, corn, green bean, snap bean, mushroom, okra, pea, green pea, potato, sweet potato, ' +
        'pumpkin, winter squash, spinach, greens',
    ),
  },
  { name: 'meat', synonyms: words('red meat, beef, pork, lamb, veal, venison, bear, ground meat, sausage') },
  { name: 'poultry', synonyms: words('chicken, rabbit') },
  { name: 'some vegetables and meats', synonyms: words('swelling vegetables') },
];

const CLASS_NAMES = `product class (${CLASSES.map(({ name }) => name).join(', ')})`;

/** Words that decide the class whatever stands before them: `strawberry jam`, `green tomato relish`. */
const LAST_WORDS: readonly Named[] = [
  { name: 'jam', synonyms: words('jelly, preserves, conserve, marmalade') },
  { name: 'pickle', synonyms: words('relish, chutney') },
];

/**
 * How far a reading may be off the printed figure and still be it: half of the 1/8 in that a kitchen ruler shows.
 * Common practice; the published rules state no tolerance (inspectors read to 1/32 in).
 */
const READING_IN = 1 / 16;

const schema = /* @__PURE__ */ fields({
  product: optional(name('a product, such as jam, fruit, pickles, vegetables or poultry')),
  measured: length({ min: { value: 0, unit: 'in' } }),
  printed: optional(length()),
  jar: optional(jarField()),
  mouth: mouthField(),
});
export type CheckHeadspaceInput = z.input<typeof schema>;

export interface HeadspaceCheck {
  readonly verdict: 'right' | 'too little' | 'too much';
  /** The least headspace that is right, in the unit of `measured`. */
  readonly least: Quantity<'length'>;
  /** The most; the same as `least` where one figure is printed. */
  readonly most: Quantity<'length'>;
  /** What the verdict means. */
  readonly meaning: string;
  /** What to take out, or to add, to be right; where a jar is given. */
  readonly adjust?: { readonly action: 'take out' | 'add'; readonly volume: Quantity<'volume'> };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const MEANING: Readonly<Record<HeadspaceCheck['verdict'], string>> = {
  right: 'The headspace is the published one.',
  'too little':
    'Food may boil out under the lid and keep it from sealing, the vacuum is weak and the process may not be enough. Take some out before processing.',
  'too much':
    'The process may not drive all the air out: the food can darken and spoil and the seal be weak. Add food or liquid before processing.',
};

/** How a food is cut, which leaves its headspace alone: `peach halves`, `sliced carrots`. */
const CUT =
  /\b(?:half|halves|halved|slices?|sliced|pieces?|chunks?|cubes?|cubed|diced|spears?|whole|hot pack|raw pack)\b/gi;
const CUT_CLASSES: ReadonlySet<string> = new Set(['fruit', 'tomato', 'vegetable']);

/** The class that a product's name belongs to. */
function classOf(product: string): string {
  const [exact] = findNamed(product, CLASSES);
  if (exact !== undefined) return exact.name;
  const [byLastWord] = findNamed(/\S+$/.exec(product)?.[0] ?? '', LAST_WORDS);
  if (byLastWord !== undefined) return byLastWord.name;
  const [uncut] = findNamed(product.replace(CUT, ' '), CLASSES);
  if (uncut !== undefined && CUT_CLASSES.has(uncut.name)) return uncut.name;
  return lookUp(product, CLASSES, 'product', CLASS_NAMES).name;
}

/** The published headspace of a class; where several copies print it, what all of them allow. */
function publishedFor(product: string): { least: number; most: number; basis: Basis[] } {
  const productClass = classOf(product);
  const rows = headspaceRows.filter((row) => row.productClass === productClass);
  return {
    least: Math.max(...rows.map(({ least_in }) => least_in)),
    most: Math.min(...rows.map(({ most_in }) => most_in)),
    basis: rows.map((row) => basisOf(row, `headspace of ${row.printed}`)),
  };
}

/**
 * Whether the headspace measured in a jar is the published one for its product, before the jar is processed.
 *
 * Headspace runs from the rim down to the food or liquid. Jams and jellies, juices and purees 1/4 in; fruit,
 * tomatoes and pickles 1/2 in; vegetables and red meat 1 in; poultry 1 1/4 in; low-acid food in general 1 to
 * 1 1/4 in. A reading within 1/16 in counts as the figure (common practice: half a mark of a kitchen ruler).
 *
 * Source: USDA Complete Guide to Home Canning, Guide 1; Penn State, Clemson, Illinois, Michigan State and
 * Nebraska Extension. What too little and too much do: U.S. FDA guide to inspections, headspace section.
 *
 * @param input.product - `jam`, `jelly`, `fruit`, `tomatoes`, `pickles`, `juice`, `vegetables`, `meat`, `poultry`,
 *   `low-acid`, or a food for which every tested recipe agrees with its class
 * @param input.measured - from the rim down to the food, zero or more
 * @param input.printed - the headspace printed with your tested recipe; it goes before the class
 * @param input.jar - a jar (see `fillJar`), to learn how much to take out or to add
 * @returns the verdict, the figures in the unit of `measured`, what it means and what to change
 * @throws StillroomError UNKNOWN_NAME for a product in no class, MISSING when neither product nor printed is given
 *
 * @example
 * ```ts
 * import { checkHeadspace } from 'stillroom/jars';
 *
 * checkHeadspace({ product: 'jam', measured: '1/4 in' }).verdict; // => 'right'
 * checkHeadspace({ product: 'peaches', measured: '1 in' }).verdict; // => 'too much'
 * checkHeadspace({ product: 'poultry', measured: '2.5 cm' }).verdict; // => 'too little'
 * const pint = checkHeadspace({ product: 'fruit', measured: '1 in', jar: 'pint' });
 * pint.adjust.volume.value; // ≈ 1.23
 * ```
 */
export function checkHeadspace(input: CheckHeadspaceInput): HeadspaceCheck {
  const { product, measured, printed, jar, mouth } = readInput(schema, input);
  if (product === undefined && printed === undefined) {
    fail('MISSING', 'product', product, 'a product, or the headspace printed with your recipe');
  }
  const published =
    printed === undefined
      ? publishedFor(product as string)
      : {
          least: valueIn(printed, 'in'),
          most: valueIn(printed, 'in'),
          basis: [{ what: 'headspace printed with the recipe', kind: 'measured' } satisfies Basis],
        };
  const depth = valueIn(measured, 'in');
  const lowest = published.least - READING_IN;
  const highest = published.most + READING_IN;
  const verdict = depth < lowest ? 'too little' : depth > highest ? 'too much' : 'right';
  const off = verdict === 'too little' ? published.least - depth : depth - published.most;
  const given = jar === undefined || verdict === 'right' ? undefined : resolveJar(jar, mouth);
  const adjust = given && {
    action: verdict === 'too little' ? ('take out' as const) : ('add' as const),
    volume: quantityIn(headspaceMilliliters(given.opening, { value: off, unit: 'in' }), 'mL', given.capacity.unit),
  };
  const effects = vacuumFactRows.filter(({ fact }) => fact === 'too-little-or-much');
  return handOut({
    verdict,
    least: quantityIn(published.least, 'in', measured.unit),
    most: quantityIn(published.most, 'in', measured.unit),
    meaning: MEANING[verdict],
    ...(adjust === undefined ? {} : { adjust }),
    basis: joinBasis(
      published.basis,
      [{ what: 'a reading within 1/16 in counts as the figure', kind: 'common-practice' }],
      verdict === 'right' ? [] : effects.map((row) => basisOf(row, 'what too little and too much headspace do')),
      given?.basis ?? [],
    ),
    cautions: [
      caution('tested-only'),
      ...(printed === undefined ? [jarCaution('recipe-headspace-first')] : []),
      ...(given === undefined ? [] : [jarCaution('straight-neck')]),
    ],
  });
}
