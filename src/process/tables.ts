/** The process tables as `data/process/` holds them: the schema of each, and its rows. */
import * as z from 'zod/mini';
import acidTable from '../../data/process/acid.json';
import bandTable from '../../data/process/elevation-bands.json';
import formNameTable from '../../data/process/form-names.json';
import fruitTable from '../../data/process/fruit.json';
import jamTable from '../../data/process/jam.json';
import nearFormTable from '../../data/process/near-forms.json';
import notRecommendedTable from '../../data/process/not-recommended.json';
import pickleTable from '../../data/process/pickle.json';
import recipeTable from '../../data/process/recipes.json';
import lowAcidTable from '../../data/process/tomato-low-acid.json';
import { forReaders, id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';

/** The canners that a process is printed for. */
export const PRINTED_METHODS = ['boiling-water', 'dial-gauge', 'weighted-gauge'] as const;
export type PrintedMethod = (typeof PRINTED_METHODS)[number];
/** Jar sizes that the tables print, from the smallest up. */
export const LISTED_JARS = ['half-pint', 'pint', 'quart', 'half-gallon'] as const;
export type ListedJar = (typeof LISTED_JARS)[number];
const KEEPS = ['freeze', 'dry', 'refrigerate', 'ferment', 'eat fresh'] as const;
/** Ways of keeping food that are not canning. */
export type Keep = (typeof KEEPS)[number];

const ids = () => z.array(id()).check(z.minLength(1));
const pack = () => z.enum(['hot', 'raw']);
/** Minutes: one figure for every elevation, or one for each band. */
const minutes = () => z.union([positive(), z.array(positive()).check(z.minLength(3), z.maxLength(4))]);

/** The letters of lines printed as alternatives. */
export const ALTERNATIVES = ['a', 'b', 'c'] as const;
export type Alternative = (typeof ALTERNATIVES)[number];

/** One printed line of a process table. */
export const processRow = () =>
  z.strictObject({
    id: id(),
    recipe: id(),
    food: id(),
    form: id(),
    printed: forReaders(text()),
    /** `null` where the source states none. */
    pack: z.nullable(pack()),
    jars: z.array(z.enum(LISTED_JARS)).check(z.minLength(1)),
    method: z.enum(PRINTED_METHODS),
    /** Which of the lines printed as alternatives. */
    alternative: z.exactOptional(z.enum(ALTERNATIVES)),
    jarState: z.exactOptional(text()),
    /** Boiling water: minutes by elevation band. Pressure: minutes at every elevation. */
    minutes: minutes(),
    /** Gauge pressure by elevation band; `null` where it is refused. */
    psi: z.exactOptional(z.array(z.nullable(z.number().check(z.gte(5), z.lte(15))))),
    /** Inches. */
    headspace: z.number().check(z.gte(0.125), z.lte(1.5)),
    /** The acid that the process requires. */
    acid: z.exactOptional(id()),
    pasteurize: z.exactOptional(z.literal(true)),
    /** Band index -> why that cell is not served. */
    refused: z.exactOptional(z.record(z.string(), z.enum(['not-recommended', 'recalled']))),
    /** What each copy prints, where copies disagree; the row serves the safer figure. */
    copies: z.exactOptional(
      z
        .array(
          z.strictObject({
            minutes: z.exactOptional(minutes()),
            psi: z.exactOptional(z.array(z.number())),
            source: z.nullable(id()),
            /** Why a longer time or higher pressure of this copy is not followed. */
            notServed: z.exactOptional(z.enum(['older edition', 'copying fault'])),
          }),
        )
        .check(z.minLength(2)),
    ),
    /** Least minutes on high heat with the vent open, before the venting. */
    leastHeatUp: z.exactOptional(positive()),
    cautions: z.exactOptional(ids()),
    ...sourcedColumns(),
  });
export type ProcessRow = RowOf<typeof processRow>;

/** Acid that a process requires: amounts for each jar, or for the recipe. */
export const acidRow = () =>
  z.strictObject({
    id: id(),
    acid: id(),
    food: z.exactOptional(id()),
    jar: z.exactOptional(z.enum(LISTED_JARS)),
    where: z.enum(['each jar', 'recipe']),
    choose: z.enum(['one', 'all']),
    bottledLemonJuice: z.exactOptional(text()),
    citricAcid: z.exactOptional(text()),
    vinegar: z.exactOptional(text()),
    per: z.exactOptional(text()),
    /** Other bottled juice that may take its place, in the same amount. */
    standIn: z.exactOptional(z.array(z.enum(['bottled lemon juice', 'bottled lime juice']))),
    /** Acid that never takes its place. */
    noStandIn: z.exactOptional(z.array(z.enum(['vinegar']))),
    /** What each copy prints, where copies disagree; the row serves the largest amount. */
    copies: z.exactOptional(z.array(z.strictObject({ bottledLemonJuice: text(), source: id() })).check(z.minLength(2))),
    also: z.exactOptional(text()),
    ...sourcedColumns(),
  });
export type AcidRow = RowOf<typeof acidRow>;

/** What the answers of this module say of a recipe of data/recipes that ends in a heat process. */
export const processRecipeRow = () =>
  z.strictObject({
    id: id(),
    /** Id of the recipe. */
    name: text(),
    names: z.exactOptional(z.array(text()).check(z.minLength(1))),
    /** `recipe` of the process rows. */
    process: id(),
    foods: ids(),
    /** The foods of one pack, where its page names fewer. */
    packFoods: z.exactOptional(z.partialRecord(pack(), ids())),
    /** The foods that the process is asked for by, where they are not all foods of the page. */
    askedBy: z.exactOptional(z.array(id())),
    /** The foods are what it is made of. */
    product: z.exactOptional(z.literal(true)),
    excludes: z.exactOptional(ids()),
    /** Its acid that is never left out. */
    acid: z.exactOptional(
      z
        .array(
          z.strictObject({
            what: text(),
            amount: z.exactOptional(text()),
            perJar: z.exactOptional(z.partialRecord(z.enum(LISTED_JARS), text())),
            choose: z.exactOptional(id()),
          }),
        )
        .check(z.minLength(1)),
    ),
    mustKeep: z.exactOptional(z.array(text()).check(z.minLength(1))),
    scale: text(),
    ...sourcedColumns(),
  });
export type ProcessRecipeRow = RowOf<typeof processRecipeRow>;

/** What a word that names no tested form leads to. */
export const nearFormRow = () =>
  z.strictObject({
    id: id(),
    /** Forms that are asked for. */
    asked: ids(),
    /** Kinds of food that it is for. */
    kinds: z.array(text()).check(z.minLength(1)),
    /** The tested form that comes near. */
    to: id(),
    /** What to do so that the food is inside the tested recipe. */
    must: text(),
    ...practiceColumns(),
  });
export type NearFormRow = RowOf<typeof nearFormRow>;

/** Other words that the form of a recipe is asked for by. */
export const formNameRow = () =>
  z.strictObject({
    id: id(),
    recipe: id(),
    forms: z.exactOptional(ids()),
    words: z.exactOptional(z.array(text()).check(z.minLength(1))),
    /** Foods that are names of the product itself. */
    products: z.exactOptional(ids()),
    ...practiceColumns(),
  });
export type FormNameRow = RowOf<typeof formNameRow>;

/** A food or form that is not canned. */
export const notRecommendedRow = () =>
  z.strictObject({
    id: id(),
    foods: ids(),
    covers: z.enum(['every form', 'every form without a process', 'these forms']),
    forms: z.exactOptional(ids()),
    printed: forReaders(z.exactOptional(text())),
    pack: z.exactOptional(pack()),
    jar: z.exactOptional(z.enum(LISTED_JARS)),
    quality: z.exactOptional(z.literal(true)),
    reason: text(),
    instead: text(),
    /** Ways of keeping it that are not canning. */
    keeps: z.array(z.enum(KEEPS)).check(z.minLength(1)),
    /** Whether `instead` speaks of canning it another way. */
    cans: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
export type NotRecommendedRow = RowOf<typeof notRecommendedRow>;

/** The elevation bands of one canner. */
export const bandRow = () =>
  z.strictObject({
    id: id(),
    method: z.enum(PRINTED_METHODS),
    /** Upper end of each band in feet, inclusive; `null` is open. */
    upToFt: z.array(z.nullable(positive())),
    /** Above this elevation in feet the air is too thin for the highest pressure printed. */
    thinAirFt: z.exactOptional(positive()),
    ...sourcedColumns(),
  });
export type BandRow = RowOf<typeof bandRow>;

export const processRows: readonly ProcessRow[] = [fruitTable, lowAcidTable, pickleTable, jamTable].flatMap(
  (table) => asTable<ProcessRow>(table).rows,
);
export const acidRows = asTable<AcidRow>(acidTable).rows;
export const processRecipeRows = asTable<ProcessRecipeRow>(recipeTable).rows;
export const nearFormRows = asTable<NearFormRow>(nearFormTable).rows;
export const formNameRows = asTable<FormNameRow>(formNameTable).rows;
export const notRecommendedRows = asTable<NotRecommendedRow>(notRecommendedTable).rows;
export const bandRows = asTable<BandRow>(bandTable).rows;

let byRecipe: ReadonlyMap<string, readonly ProcessRow[]> | undefined;
/** Every recipe of the tables with its rows, in the order of the tables. */
export function recipes(): ReadonlyMap<string, readonly ProcessRow[]> {
  if (byRecipe === undefined) {
    const found = new Map<string, ProcessRow[]>();
    for (const row of processRows) {
      const rows = found.get(row.recipe);
      if (rows === undefined) found.set(row.recipe, [row]);
      else rows.push(row);
    }
    byRecipe = found;
  }
  return byRecipe;
}

/** The rows of a recipe, whatever the jar and method; none where the tables have no such recipe. */
export const rowsOf = (recipe: string): readonly ProcessRow[] => recipes().get(recipe) ?? [];
