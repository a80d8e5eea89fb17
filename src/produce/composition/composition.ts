import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import type { Given } from '../../common/given';
import { food, form } from '../../foods/fields';
import { figuresFor } from '../../foods/figuresFor';
import { formName, nameOf } from '../../foods/tables';
import { fields, optional, readInput } from '../../quantity/fields';
import type { Range } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import type { NotKnown } from '../../sources/no';
import { caution } from '../cautions';
import { formOfId } from '../forms';
import { formNamedBy, inForms, inWords, missing } from '../shape';
import { basisOfRows, type Span, spanOf } from '../span';
import { rawParts } from './rawParts';
import { type PreservedCompositionRow, preservedCompositions, type RawCompositionRow } from './tables';

const schema = fields({
  /** A food by any of its names, with or without how it is kept: `peach`, `dried apples`, `honey`. */
  food: food(),
  /** How it is kept: `dried`, `canned in heavy syrup`, `frozen, sweetened` ...; raw where left out. */
  form: optional(form()),
});
export type CompositionInput = Given<z.input<typeof schema>>;

/** A row of the food tables, in 100 g of the edible part; null where the release has no figure. */
export interface Proximates {
  /** The food as printed. */
  readonly printed: string;
  /** Food number in the release. */
  readonly ndb: string;
  /** Water, g. */
  readonly waterGrams: number;
  /** Energy, kcal. */
  readonly kcal: number;
  /** Protein, g. */
  readonly proteinGrams: number;
  /** Fat, g. */
  readonly fatGrams: number;
  /** Carbohydrate by difference, fiber included, g. */
  readonly carbohydrateGrams: number;
  /** Dietary fiber, g. */
  readonly fiberGrams: number | null;
  /** Total sugars, g. */
  readonly sugarsGrams: number | null;
  /** Ash, g. */
  readonly ashGrams: number;
}
/** What is in a food. */
export interface Composition {
  /** These tables have a row of it. */
  readonly known: true;
  /** Its trade name. */
  readonly food: string;
  /** How it is kept, where that was named. */
  readonly form?: string;
  /** Water over weight of the edible part, 0 to 1. */
  readonly moisture: Range<number>;
  /** Total sugars over weight, 0 to 1; absent where no table has them. */
  readonly sugars?: Range<number>;
  /** Soluble solids over weight, 0 to 1: degrees Brix of the juice / 100; of raw food. */
  readonly solubleSolids?: Range<number>;
  /** Titratable acid over weight, 0 to 1, as the fruit's main acid; of raw food. */
  readonly acidShare?: Range<number>;
  /** Dietary fiber over weight, 0 to 1: what is insoluble for the most part. */
  readonly fiber?: Range<number>;
  /** The rows of the food tables, one for each variety or kind that they list. */
  readonly per100g: readonly Proximates[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

const proximates = (row: RawCompositionRow | PreservedCompositionRow): Proximates => ({
  printed: row.description,
  ndb: row.ndb,
  waterGrams: row.water_g,
  kcal: row.energy_kcal,
  proteinGrams: row.protein_g,
  fatGrams: row.fat_g,
  carbohydrateGrams: row.carbohydrate_g,
  fiberGrams: row.fiber_g,
  sugarsGrams: row.sugars_g,
  ashGrams: row.ash_g,
});

/** The rows of a food as it is kept; of a wider food where the pantry lends it and the food has none. */
function keptRows(food: string, form: string | undefined): readonly PreservedCompositionRow[] {
  for (const each of figuresFor(food, 'composition')) {
    const rows = preservedCompositions.filter((row) => row.food === each && row.form === form);
    if (rows.length > 0) return rows;
  }
  return [];
}

/** The printed figures of some rows as a range; nothing where a row has none. */
function spanOfRows(figures: readonly (number | null)[]): Span | undefined {
  const found = figures.filter((each) => each !== null).map((each) => each / 100);
  return found.length === figures.length ? spanOf(found[0] as number, found) : undefined;
}

function keptComposition(food: string, form: string | undefined): Composition | undefined {
  const rows = keptRows(food, form);
  if (rows.length === 0) return undefined;
  const sugars = spanOfRows(rows.map(({ sugars_g }) => sugars_g));
  const fiber = spanOfRows(rows.map(({ fiber_g }) => fiber_g));
  return {
    known: true,
    food: nameOf(food),
    ...(form === undefined ? {} : { form: formName(form) }),
    moisture: spanOfRows(rows.map(({ water_g }) => water_g)) as Span,
    ...(sugars === undefined ? {} : { sugars }),
    ...(fiber === undefined ? {} : { fiber }),
    per100g: rows.map(proximates),
    basis: [
      ...basisOfRows(food, rows, 'moisture'),
      ...(sugars === undefined ? [] : basisOfRows(food, rows, 'sugars')),
      ...(fiber === undefined ? [] : basisOfRows(food, rows, 'fiber')),
      ...basisOfRows(food, rows, 'per100g'),
    ],
    cautions: [],
  };
}

/** Whether a form is raw food, cut or whole, which holds what the raw food holds. */
function isRaw(form: string): boolean {
  const behaves = formOfId(form)?.behaves;
  return behaves === 'whole' || behaves === 'cut';
}

/**
 * What is in a food, raw or kept: water, sugars, soluble solids and acid as shares of the weight of the edible part,
 * and the rows of the food tables.
 *
 * Water is that of the food tables, its range over the varieties listed and the other tables' dry matter. Soluble
 * solids are the average Brix of the natural juice (customs tables), else the legal least, which is a low figure; a
 * sweet fruit without either takes its solids less fiber and fat, and other food gives none, for starch is no soluble
 * solid. Brix is that of the juice: the whole fruit, with its fiber, has a few hundredths less. Ripeness and season move
 * all of it: a refractometer and a scale beat any table. Food as it is kept (dried, canned, frozen, jam, sugar) has
 * the figures of its row.
 *
 * @returns ranges from 0 to 1, and `per100g` as published; a part that no table has is left out; `known: false` where
 *   the food tables have no row
 * @throws StillroomError UNKNOWN_NAME for a food or form that is not in the pantry
 *
 * Sources: USDA SR28 (NUT_DATA); 19 CFR 151.91; 21 CFR 101.30; Directive 2001/112/EC Annex V; food chemistry tables.
 *
 * @example
 * ```ts
 * import { composition } from 'stillroom/produce';
 *
 * const peach = composition({ food: 'peach' });
 * peach.known && peach.moisture.likely; // ≈ 0.8887
 * peach.known && peach.solubleSolids?.likely; // ≈ 0.118
 * const dried = composition({ food: 'dried apples' });
 * dried.known && dried.per100g[0]?.waterGrams; // ≈ 31.76
 * ```
 */
export function composition(input: CompositionInput): Composition | NotKnown {
  const given = readInput(schema, input);
  return answer(compositionOf(given.food.id, formNamedBy(given.food, given.form)));
}

/** What is in a food, by its id and that of its form. */
export function compositionOf(id: string, form?: string): Composition | NotKnown {
  const kept = keptComposition(id, form);
  if (kept !== undefined) return kept;
  const parts = form === undefined || isRaw(form) ? rawParts(id) : undefined;
  if (parts === undefined) {
    const forms = preservedCompositions.flatMap((row) => (row.food === id && row.form !== undefined ? [row.form] : []));
    const text = `The food tables here have no row of ${inWords(id, form)}.`;
    return missing('no composition', text, [
      ...inForms(id, [...new Set(forms)]),
      { text: 'Take the figures of its label; or weigh a sample, dry it and weigh it again: what it lost is water.' },
    ]);
  }
  const { rows, ...shares } = parts;
  return {
    known: true,
    food: nameOf(id),
    ...(form === undefined ? {} : { form: formName(form) }),
    ...shares,
    per100g: rows.map(proximates),
    cautions: [caution('estimate')],
  };
}
