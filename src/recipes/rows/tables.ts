/** The printed recipes and the operations that they are made of: schemas of the tables, and the rows. */
import * as z from 'zod/mini';
import { forReaders, id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../../sources/columns';

/** What a recipe makes, by how it is kept and eaten. */
export const MAKES = [
  'fruit in jars',
  'puree',
  'sauce',
  'juice',
  'syrup',
  'butter',
  'pie filling',
  'salsa',
  'chutney',
  'relish',
  'pickles',
  'ferment',
  'ketchup',
  'tomatoes in jars',
  'vegetables in jars',
  'soup',
  'meat in jars',
  'fish in jars',
  'jam',
  'jelly',
  'preserves',
  'marmalade',
  'spread',
  'leather',
  'dried',
  'jerky',
  'freeze-dried',
  'powder',
  'vinegar',
  'stock',
  'frozen',
] as const;
export type Makes = (typeof MAKES)[number];

const ROLES = [
  'fruit',
  'vegetable',
  'meat',
  'fish',
  'sugar',
  'sweetener',
  'acid',
  'salt',
  'pectin',
  'starch',
  'liquid',
  'spice',
  'fat',
  'firming',
  'dairy',
  'other',
] as const;
export type Role = (typeof ROLES)[number];

/** Whether the foods of the scope may go into one batch together. */
const MIXES = ['one food', 'may mix', 'as printed', 'not printed'] as const;
/** What the page says of larger and smaller batches. */
const SCALES = [
  'one batch at a time',
  'whole batches',
  'may be doubled',
  'any size',
  'by the container',
  'not printed',
] as const;
const PACKS = ['hot', 'raw'] as const;

/** Words that the quantity reader understands: `8 lb`, `2 1/4 cups`. The tests read each one. */
const quantity = () => text();
/** A time or a temperature: one figure or a range. */
const span = () => z.union([quantity(), z.strictObject({ low: quantity(), high: quantity() })]);
const ids = () => z.array(id()).check(z.minLength(1));

/** One line of the list of ingredients. */
export const ingredient = () =>
  z.strictObject({
    /** Id of the pantry, or `@scope`: the foods the recipe is for. */
    food: z.exactOptional(z.union([id(), z.literal('@scope')])),
    /** What it is, where the pantry has no such food: a spice, a package. */
    item: z.exactOptional(text()),
    /** Id of the form it is measured in. */
    form: z.exactOptional(id()),
    /** Other words of the page: `finely chopped`, `4 in long`. */
    printed: z.exactOptional(text()),
    amount: z.exactOptional(quantity()),
    /** The upper end, where the page prints a range. */
    most: z.exactOptional(quantity()),
    /** A number of pieces, with what is counted: 2 `cloves`, 1 `package of 1 3/4 oz`. */
    count: z.exactOptional(positive()),
    countMost: z.exactOptional(positive()),
    counted: z.exactOptional(text()),
    /** Packages or pouches of pectin in the usual size. */
    packages: z.exactOptional(positive()),
    /** What goes into each jar, by its size. */
    perJar: z.exactOptional(z.partialRecord(z.enum(['half-pint', 'pint', 'quart', 'half-gallon']), quantity())),
    /** It is bought in this form: the page does not say how to make it of the fresh food. */
    bought: z.exactOptional(z.literal(true)),
    /** What the page says that the amount weighs as bought. */
    weighs: z.exactOptional(quantity()),
    /** What the amount is for, where it is not the batch: 1 quart of juice, 1 lb raw, a pot of 8 quarts. */
    per: z.exactOptional(
      z.strictObject({ amount: quantity(), of: z.enum(['raw', 'ready', 'juice', 'liquid', 'water', 'pot']) }),
    ),
    role: z.enum(ROLES),
    /** Share of acetic acid that the page asks of a vinegar. */
    acetic: z.exactOptional(positive()),
    /** The page, or the safety of the recipe, needs at least this much. */
    keep: z.exactOptional(z.literal(true)),
    optional: z.exactOptional(z.literal(true)),
    /** Draws water out of the food, or soaks it, and is drained before the jars are filled. */
    drained: z.exactOptional(z.literal(true)),
    /** Lines of one recipe with the same word here are choices: take one of them. */
    choose: z.exactOptional(id()),
    pack: z.exactOptional(z.enum(PACKS)),
    notes: z.exactOptional(text()),
  });

/** One step: an operation with its figures. */
export const step = () =>
  z.strictObject({
    /** Id of an operation. */
    do: id(),
    /** What it is done to, for people. */
    of: z.exactOptional(text()),
    /** The whole of it, where the name of the operation makes no sentence: its figures stand at `{time}` and the like. */
    says: z.exactOptional(text()),
    time: z.exactOptional(span()),
    temperature: z.exactOptional(span()),
    /** Size of the pieces or depth of the layer. */
    size: z.exactOptional(span()),
    /** Moisture that it ends at, as a share. */
    moisture: z.exactOptional(z.union([positive(), z.strictObject({ low: positive(), high: positive() })])),
    /** Sign that it is done, for people. */
    to: z.exactOptional(text()),
    /** What else is measured: its words have `{1}` where the first stands. */
    figures: z.exactOptional(z.array(span()).check(z.minLength(1))),
    /** Room left below the rim of what is not canned: at `{headspace}` in its words. */
    headspace: z.exactOptional(quantity()),
    /** How the table of freezer headspaces sorts the pack; none where it is wrapped, or filled without a space. */
    style: z.exactOptional(z.enum(['dry', 'liquid', 'juice'])),
    times: z.exactOptional(positive()),
    pack: z.exactOptional(z.enum(PACKS)),
    optional: z.exactOptional(z.literal(true)),
    /** Another recipe whose steps stand here. */
    recipe: z.exactOptional(id()),
    notes: z.exactOptional(text()),
  });

/** What it ends in: a row of the process tables, or another place. */
export const keeping = () =>
  z.union([
    /** Name of the recipe in the process tables. */
    z.strictObject({ process: id() }),
    z.strictObject({
      place: z.enum(['shelf', 'refrigerator', 'freezer', 'crock']),
      time: z.exactOptional(span()),
      temperature: z.exactOptional(span()),
      notes: forReaders(z.exactOptional(text())),
    }),
  ]);

/** One document in which a reading saw the recipe. */
const sighting = () =>
  z.strictObject({
    document: id(),
    locator: z.exactOptional(text()),
    seen: z.enum(['original', 'reproduction', 'citation']),
  });

/** What a recipe is, wherever it comes from. */
const recipeShape = () => ({
  id: id(),
  name: text(),
  /** Other names that cooks and older pages use. */
  names: z.exactOptional(z.array(text()).check(z.minLength(1))),
  makes: z.enum(MAKES),
  /** Id of the form that the ready food is asked for by. */
  form: z.exactOptional(id()),
  /** The foods that the page names, and no others. */
  foods: ids(),
  /** The foods that a pack is for, where the page names others for the other pack. */
  packFoods: z.exactOptional(z.strictObject({ hot: z.exactOptional(ids()), raw: z.exactOptional(ids()) })),
  /** The foods that its heat process is asked for by, where not every food of the page alone is what it makes. */
  askedBy: z.exactOptional(z.array(id())),
  /** Foods that the page, or later guidance, leaves out. */
  excludes: z.exactOptional(ids()),
  /** It is made of what falls off when other things are made of the food: peels, cores, tops. */
  madeOf: z.exactOptional(z.literal('trimmings')),
  mix: z.enum(MIXES),
  ingredients: z.array(ingredient()),
  steps: z.array(step()),
  batch: z.strictObject({
    /** What one batch gives or fills, in the words of the page. */
    printedFor: forReaders(z.exactOptional(text())),
    scale: z.enum(SCALES),
    /** Common practice: the most batches that are made in a day, one after the other. */
    most: z.exactOptional(z.int().check(z.positive())),
    /** Common practice: only whole batches, each cooked and filled by itself. */
    whole: z.exactOptional(z.literal(true)),
  }),
  yields: z.exactOptional(
    z.array(z.strictObject({ jar: text(), low: positive(), high: positive() })).check(z.minLength(1)),
  ),
  /** Printed raw weight for jars. */
  rawNeed: z.exactOptional(
    z.array(z.strictObject({ raw: quantity(), jars: positive(), jar: text() })).check(z.minLength(1)),
  ),
  /** The published pounds of fresh food for a frozen pint hold for it. */
  byFrozenPints: z.exactOptional(z.literal(true)),
  /** What must not be changed, for people. */
  /** What must not be changed; with its pack where it is not for both. */
  mustKeep: z.exactOptional(
    z.array(z.union([text(), z.strictObject({ pack: z.enum(['hot', 'raw']), text: text() })])).check(z.minLength(1)),
  ),
  keeps: z.array(keeping()).check(z.minLength(1)),
  /** Ids of cautions. */
  cautions: z.exactOptional(ids()),
  /** Where the two readings differ: the field, what each has, and which is served. */
  readings: z.exactOptional(
    z.array(z.strictObject({ of: text(), served: text(), other: text(), document: id(), why: text() })),
  ),
});

/**
 * One printed recipe; or one that is recalled and was not seen, served as recalled; or one that is only common practice.
 * The last two never end in a heat process.
 */
export const recipeRow = () =>
  z.union([
    z.strictObject({
      ...recipeShape(),
      ...sourcedColumns(),
      seenIn: forReaders(z.array(sighting()).check(z.minLength(1))),
    }),
    z.strictObject({ ...recipeShape(), ...sourcedColumns(), obtained: z.literal('memory') }),
    z.strictObject({ ...recipeShape(), ...practiceColumns() }),
  ]);
export type RecipeRow = RowOf<typeof recipeRow>;
export type IngredientRow = RecipeRow['ingredients'][number];
export type StepRow = RecipeRow['steps'][number];
export type KeepingRow = RecipeRow['keeps'][number];

const minutes = () => z.strictObject({ low: z.number().check(z.gte(0)), high: positive() });

/** What people do, and what it takes of a kitchen. */
export const operationRow = () =>
  z.strictObject({
    id: id(),
    /** As a step says it: `cut off`. */
    name: text(),
    takes: z.enum([
      'hands',
      'burner',
      'canner',
      'dryer',
      'freeze-dryer',
      'freezer',
      'refrigerator',
      'oven',
      'crock',
      'nothing',
    ]),
    /** It goes with the step before it, and is no work by itself. */
    small: z.exactOptional(z.literal(true)),
    /** Skins, seeds or pulp stay behind. */
    separates: z.exactOptional(z.literal(true)),
    /** Whether someone stays with it the whole time. */
    attended: z.boolean(),
    /** Minutes for each kilogram; left out where the step prints its time. */
    minutesPerKg: z.exactOptional(minutes()),
    /** Minutes for each jar, tray or bag. */
    minutesEach: z.exactOptional(minutes()),
    /** Minutes, however much there is. */
    minutes: z.exactOptional(minutes()),
    /** The longest that the result may wait, in minutes. */
    waits: z.exactOptional(positive()),
    ...practiceColumns(),
  });
export type OperationRow = RowOf<typeof operationRow>;
