import type * as z from 'zod/mini';
import facts from '../../../data/produce/extension-facts.json';
import { answer } from '../../common/answer';
import { fields, readInput } from '../../quantity/fields';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { findProduce, namesAbove, numbersOf } from '../catalogue';
import { rawWeights } from '../weights/weights';
import { factorRows, refuseRows } from '../yields/edible';
import { produceField } from '../yields/readyFromRaw';
import { spanIn } from '../yields/span';
import { type Composition, compositionOf, compositionRows } from './composition';

const schema = fields({ produce: produceField });
export type DescribeProduceInput = z.input<typeof schema>;

export interface FactRow extends Sourced {
  readonly produce: string;
  readonly given: string;
  readonly lb: readonly [number, number];
  readonly cups?: readonly [number, number];
  readonly pt_frozen?: readonly [number, number];
  readonly qt_frozen?: readonly [number, number];
  readonly qt_canned?: readonly [number, number];
  readonly pt_canned?: readonly [number, number];
  readonly cupForm?: string;
}
export const factRows = asTable<FactRow>(facts).rows;

/** A row of the food tables, per 100 g of the edible part; null where the release has no figure. */
export interface Proximates {
  readonly description: string;
  readonly water: number;
  readonly energy: number;
  readonly protein: number;
  readonly fat: number;
  readonly carbohydrate: number;
  readonly fibre: number | null;
  readonly sugars: number | null;
  readonly ash: number;
}
export interface ProduceDescription {
  readonly produce: string;
  readonly kind: 'fruit' | 'vegetable';
  readonly synonyms: readonly string[];
  /** Customary preparation before halves, slices, pieces, sauce or puree. */
  readonly cut: 'trimmed' | 'cored' | 'pitted' | 'peeled';
  /** What is thrown away, in percent of the weight as bought, and what it is. */
  readonly refuse: readonly { readonly of: string; readonly percent: number; readonly what: string | null }[];
  /** Grams (energy: kcal) in 100 g of the raw edible part, a row for each variety listed. */
  readonly per100g: readonly Proximates[];
  /** The shares that plans work with, as ranges. */
  readonly composition?: Composition;
  /** Weights of measures of the edible part. */
  readonly measures: readonly { readonly measure: string; readonly mass: Quantity<'mass'> }[];
  /** Cooked, drained or dried weight over weight bought, where the price survey counts cooking or packing. */
  readonly keptAfter: readonly { readonly as: string; readonly ratio: number; readonly cup: Quantity<'mass'> }[];
  /** What extension sheets say of customary amounts. */
  readonly customary: readonly {
    readonly of: string;
    readonly mass: Range<Quantity<'mass'>>;
    readonly gives: Readonly<Record<string, readonly [number, number]>>;
  }[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The measured outcomes of an extension row, under names a reader knows. */
const GIVES = {
  cups: 'cups',
  pt_frozen: 'pints frozen',
  qt_frozen: 'quarts frozen',
  qt_canned: 'quarts canned',
  pt_canned: 'pints canned',
} as const;

/**
 * Everything the tables hold on one fruit or vegetable: refuse, composition, weights of measures and pieces.
 *
 * @param input.produce - any name of a fruit or vegetable
 * @returns plain rows as published, and `composition` as ranges for planning
 * @throws StillroomError UNKNOWN_NAME for produce in no table, offering the nearest names
 *
 * Sources: USDA SR28; ERS preparation factors; extension fact sheets.
 *
 * @example
 * ```ts
 * import { describeProduce } from 'stillroom/produce';
 *
 * const plum = describeProduce({ produce: 'plums' });
 * plum.refuse; // => [{ of: 'Plums, raw', percent: 6, what: 'Pits' }]
 * plum.per100g[0]?.water; // ≈ 87.23
 * describeProduce({ produce: 'plumb' }); // throws StillroomError UNKNOWN_NAME
 * ```
 */
export function describeProduce(input: DescribeProduceInput): ProduceDescription {
  const produce = findProduce(readInput(schema, input).produce);
  const numbers = numbersOf(produce);
  const names = namesAbove(produce);
  const order = (a: { ndb: string }, b: { ndb: string }): number => numbers.indexOf(a.ndb) - numbers.indexOf(b.ndb);
  const refuse = refuseRows.filter(({ ndb, obtained }) => obtained === 'read' && numbers.includes(ndb)).sort(order);
  const parts = compositionRows.filter(({ ndb }) => numbers.includes(ndb)).sort(order);
  const weights = rawWeights.filter(({ ndb }) => numbers.includes(ndb)).sort(order);
  const kept = factorRows.filter(
    (row) => row.produce === produce.name && (row.cooked === true || row.form !== 'fresh'),
  );
  const customary = factRows.filter((row) => names.includes(row.produce));
  const inside = parts.length === 0 ? undefined : compositionOf(produce);
  return answer({
    produce: produce.name,
    kind: produce.kind,
    synonyms: produce.synonyms ?? [],
    cut: produce.cut,
    refuse: refuse.map(({ description, refusePct, refuseIs }) => ({
      of: description,
      percent: refusePct,
      what: refuseIs,
    })),
    per100g: parts.map((row) => ({
      description: row.description,
      water: row.water_g,
      energy: row.energy_kcal,
      protein: row.protein_g,
      fat: row.fat_g,
      carbohydrate: row.carbohydrate_g,
      fibre: row.fibre_g,
      sugars: row.sugars_g,
      ash: row.ash_g,
    })),
    ...(inside === undefined ? {} : { composition: inside }),
    measures: weights.map(({ amount, measure, grams }) => ({
      measure: `${amount} ${measure}`,
      mass: { value: grams, unit: 'g' },
    })),
    keptAfter: kept.map((row) => ({
      as: `${row.food}, ${row.form}`,
      ratio: row.yieldFactor,
      cup: { value: row.cupEquivalent_lb, unit: 'lb' },
    })),
    customary: customary.map((row) => ({
      of: row.given,
      mass: spanIn({ low: row.lb[0], likely: (row.lb[0] + row.lb[1]) / 2, high: row.lb[1] }, 'lb', 'lb'),
      gives: Object.fromEntries(
        (Object.keys(GIVES) as (keyof typeof GIVES)[]).flatMap((key) => {
          const amounts = row[key];
          return amounts === undefined ? [] : [[GIVES[key], amounts]];
        }),
      ),
    })),
    basis: joinBasis(
      refuse.map((row) => basisOf(row, 'refuse')),
      parts.map((row) => basisOf(row, 'composition')),
      weights.map((row) => basisOf(row, 'weight of a measure')),
      kept.map((row) => basisOf(row, 'kept after cooking, draining or drying')),
      customary.map((row) => basisOf(row, 'customary amounts')),
      inside?.basis ?? [],
    ),
    cautions: joinCautions(inside?.cautions ?? []),
  });
}
