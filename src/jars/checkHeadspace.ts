import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { findNamed, lookUp, type Named } from '../common/names';
import { fail } from '../errors/StillroomError';
import { choice, fields, flag, length, name, optional, readInput, share, time } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { jar } from '../words/jar';
import { mouth } from '../words/mouth';
import { jarCaution } from './cautions';
import { resolveJar } from './describeJar';
import { headspaceMilliliters } from './fillJar';
import { type Handling, handleProcessed } from './liquidLost';
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
  /**
   * A class (`jam`, `jelly`, `fruit`, `tomatoes`, `pickles`, `juice`, `vegetables`, `meat`, `poultry`, `low-
   * acid`), or a food for which every tested recipe agrees with its class.
   */
  food: optional(name('a food or a class of food, such as peach, jam, pickles, vegetables or poultry')),
  /** Its form: `halves`, `sauce`, `juice`. */
  form: optional(name('a form, such as halves, sauce or juice')),
  /** From the rim down to the food, zero or more. */
  measured: length({ min: { value: 0, unit: 'in' } }),
  /** The headspace printed with your tested recipe; it overrides the class. */
  printed: optional(length()),
  /** A jar (see `fillJar`), to learn how much to take out or to add before processing. */
  jar: optional(jar()),
  mouth: optional(mouth()),
  /** `before processing` (the default) or `after processing`. */
  when: optional(choice('when it was measured', ['before processing', 'after processing'])),
  /** After processing: the share of the liquid that is gone, 0 to 1 or percent. */
  liquidLost: optional(share()),
  /** After processing: whether the jar has sealed. */
  sealed: optional(flag('whether the jar has sealed, by checkSeal')),
  /** Time since the jar came out of the canner. */
  sinceProcessing: optional(time({ min: { value: 0, unit: 'h' } })),
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
  /** What to do now. */
  readonly next: readonly string[];
  /** What becomes of the jar; after processing. */
  readonly handling?: Handling;
  /** What to take out, or to add, to be right; where a jar is given, before processing. */
  readonly adjust?: { readonly action: 'take out' | 'add'; readonly volume: Quantity<'volume'> };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const MEANING: Readonly<Record<HeadspaceCheck['verdict'], string>> = {
  right: 'The headspace is the published one.',
  'too little':
    'Food may boil out under the lid and keep it from sealing, the vacuum is weak and the process may not be enough.',
  'too much': 'The process may not drive all the air out: the food can darken and spoil and the seal be weak.',
};
const MEANING_AFTER: typeof MEANING = {
  right: 'Food and liquid stand where they were filled.',
  'too little': 'The jar was filled too high, or its food swelled: food under the lid can keep it from sealing.',
  'too much': 'Liquid left the jar in the canner, or air left the food and it shrank.',
};
const NEXT_BEFORE: Readonly<Record<HeadspaceCheck['verdict'], readonly string[]>> = {
  right: [],
  'too little': ['Take some out before processing.'],
  'too much': ['Add food or liquid before processing.'],
};

/** How a food is cut, which leaves its headspace alone: `peach halves`, `sliced carrots`. */
const CUT =
  /\b(?:half|halves|halved|slices?|sliced|pieces?|chunks?|cubes?|cubed|diced|spears?|whole|hot pack|raw pack)\b/gi;
const CUT_CLASSES: ReadonlySet<string> = new Set(['fruit', 'tomato', 'vegetable']);

/** The class that a product's name belongs to. */
function classOf(product: string, path: string): string {
  const [exact] = findNamed(product, CLASSES);
  if (exact !== undefined) return exact.name;
  const [byLastWord] = findNamed(/\S+$/.exec(product)?.[0] ?? '', LAST_WORDS);
  if (byLastWord !== undefined) return byLastWord.name;
  const [uncut] = findNamed(product.replace(CUT, ' '), CLASSES);
  if (uncut !== undefined && CUT_CLASSES.has(uncut.name)) return uncut.name;
  return lookUp(product, CLASSES, path, CLASS_NAMES).name;
}

/** The published headspace of a class; where several copies print it, what all of them allow. */
function publishedFor(product: string, path: string): { least: number; most: number; basis: Basis[] } {
  const productClass = classOf(product, path);
  const rows = headspaceRows.filter((row) => row.productClass === productClass);
  return {
    least: Math.max(...rows.map(({ least_in }) => least_in)),
    most: Math.min(...rows.map(({ most_in }) => most_in)),
    basis: rows.map((row) => basisOf(row, 'least', `headspace of ${row.printed}`)),
  };
}

/** The food asked about, and the field it was asked in; nothing where neither is given. */
function askedFor({
  food,
  form,
}: {
  food?: string | undefined;
  form?: string | undefined;
}): { text: string; path: string } | undefined {
  if (form !== undefined && food === undefined) fail('MISSING', 'food', food, 'the food of that form');
  return food === undefined ? undefined : { text: form === undefined ? food : `${food} ${form}`, path: 'food' };
}

/**
 * Whether the headspace measured in a jar is the published one for its food, and what to do about it: before
 * processing, take out or add; after it, never open the jar to fill it up.
 *
 * Headspace runs from the rim down to the food or liquid. Jams and jellies, juices and purees 1/4 in; fruit,
 * tomatoes and pickles 1/2 in; vegetables and red meat 1 in; poultry 1 1/4 in; low-acid food in general 1 to
 * 1 1/4 in. A reading within 1/16 in counts as the figure (common practice: half a mark of a kitchen ruler).
 *
 * After processing, a sealed jar that lost less than half its liquid is stored and used first. Where half or more is
 * gone, break the seal, refrigerate it and eat it within 2 to 3 days; found later than a day, throw it out untasted.
 *
 * Source: USDA Complete Guide to Home Canning, Guide 1; Penn State, Clemson, Illinois, Michigan State and
 * Nebraska Extension. What too little and too much do: U.S. FDA guide to inspections, headspace section. Liquid lost:
 * Nebraska Extension quoting the National Center for Home Food Preservation; Michigan State Extension (never refill).
 *
 * @returns the verdict, the figures in the unit of `measured`, what it means and what to do next; after processing
 *   `handling` says what becomes of the jar
 * @throws StillroomError UNKNOWN_NAME for a food in no class, MISSING when neither food nor printed is given,
 *   CONTRADICTION for liquid lost or a seal before processing
 *
 * @example
 * ```ts
 * import { checkHeadspace } from 'stillroom/jars';
 *
 * checkHeadspace({ food: 'jam', measured: '1/4 in' }).verdict; // => 'right'
 * checkHeadspace({ food: 'peach', form: 'halves', measured: '1 in' }).verdict; // => 'too much'
 * checkHeadspace({ food: 'poultry', measured: '2.5 cm' }).verdict; // => 'too little'
 * const pint = checkHeadspace({ food: 'fruit', measured: '1 in', jar: 'pint' });
 * pint.adjust.volume.value; // ≈ 1.23
 * const processed = { food: 'peach', measured: '3 in', when: 'after processing', sealed: true } as const;
 * checkHeadspace({ ...processed, liquidLost: '30 %' }).handling; // => 'use first'
 * checkHeadspace({ ...processed, liquidLost: '60 %' }).handling; // => 'refrigerate'
 * ```
 */
export function checkHeadspace(input: CheckHeadspaceInput): HeadspaceCheck {
  const given = readInput(schema, input);
  const { measured, printed, jar, mouth, when = 'before processing', liquidLost, sealed, sinceProcessing } = given;
  const after = when === 'after processing';
  if (!after) {
    for (const [field, value] of Object.entries({ liquidLost, sealed, sinceProcessing })) {
      if (value !== undefined)
        fail('CONTRADICTION', field, input[field as 'sealed'], "when: 'after processing' with it");
    }
  }
  const asked = askedFor(given);
  if (asked === undefined && printed === undefined) {
    fail('MISSING', 'food', undefined, 'a food, or the headspace printed with your recipe');
  }
  const published =
    printed === undefined
      ? publishedFor((asked as { text: string }).text, (asked as { path: string }).path)
      : {
          least: valueIn(printed, 'in'),
          most: valueIn(printed, 'in'),
          basis: [{ of: 'least', kind: 'measured', note: 'headspace printed with the recipe' } satisfies Basis],
        };
  const depth = valueIn(measured, 'in');
  const lowest = published.least - READING_IN;
  const highest = published.most + READING_IN;
  const verdict = depth < lowest ? 'too little' : depth > highest ? 'too much' : 'right';
  const off = verdict === 'too little' ? published.least - depth : depth - published.most;
  const room = after || jar === undefined || verdict === 'right' ? undefined : resolveJar(jar, mouth);
  const adjust = room && {
    action: verdict === 'too little' ? ('take out' as const) : ('add' as const),
    volume: quantityIn(headspaceMilliliters(room.opening, { value: off, unit: 'in' }), 'mL', room.capacity.unit),
  };
  const processed = after
    ? handleProcessed({
        low: verdict === 'too much',
        liquidLost,
        sealed,
        hours: sinceProcessing === undefined ? undefined : valueIn(sinceProcessing, 'h'),
      })
    : undefined;
  const effects = vacuumFactRows.filter(({ fact }) => fact === 'too-little-or-much');
  return answer({
    verdict,
    least: quantityIn(published.least, 'in', measured.unit),
    most: quantityIn(published.most, 'in', measured.unit),
    meaning: (after ? MEANING_AFTER : MEANING)[verdict],
    next: processed?.next ?? NEXT_BEFORE[verdict],
    ...(processed === undefined ? {} : { handling: processed.handling }),
    ...(adjust === undefined ? {} : { adjust }),
    basis: joinBasis(
      published.basis,
      [{ of: 'verdict', kind: 'common-practice', note: 'a reading within 1/16 in counts as the figure' }],
      verdict === 'right'
        ? []
        : effects.map((row) => basisOf(row, 'meaning', 'what too little and too much headspace do')),
      room?.basis ?? [],
      processed?.basis ?? [],
    ),
    cautions: [
      caution('tested-only'),
      ...(printed === undefined ? [jarCaution('recipe-headspace-first')] : []),
      ...(room === undefined ? [] : [jarCaution('straight-neck')]),
      ...(processed === undefined ? [] : [jarCaution('no-reading-proves-a-seal')]),
      ...(processed?.handling === 'discard' ? [jarCaution('liquid-lost-late')] : []),
    ],
  });
}
