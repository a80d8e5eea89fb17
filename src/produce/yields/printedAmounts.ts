import * as z from 'zod/mini';
import factsJson from '../../../data/produce/extension-facts.json';
import { answer } from '../../common/answer';
import type { Given } from '../../common/given';
import { food } from '../../foods/fields';
import { figuresFor } from '../../foods/figuresFor';
import { formName, nameOf } from '../../foods/tables';
import { fields, readInput } from '../../quantity/fields';
import type { Quantity, Range } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { id, type RowOf, sourcedColumns, text } from '../../sources/columns';
import type { NotKnown } from '../../sources/no';
import { asTable } from '../../sources/table';
import { pair } from '../columns';
import { byNumber, numbersOf } from '../forms';
import { missing } from '../shape';
import { basisOfRows, spanIn } from '../span';
import { rawWeights } from '../weights/tables';
import { factorRows, refuseRows } from './tables';

export const factRow = () =>
  z.strictObject({
    /** A fruit or vegetable by any of its names. */
    food: id(),
    printed: text(),
    lb: pair(),
    cups: z.exactOptional(pair()),
    pt_frozen: z.exactOptional(pair()),
    qt_frozen: z.exactOptional(pair()),
    qt_canned: z.exactOptional(pair()),
    pt_canned: z.exactOptional(pair()),
    cupForm: z.exactOptional(id()),
    ...sourcedColumns(),
  });
export type FactRow = RowOf<typeof factRow>;
const factRows = asTable<FactRow>(factsJson).rows;

const schema = fields({
  /** A fruit or vegetable by any of its names. */
  food: food(),
});
export type PrintedAmountsInput = Given<z.input<typeof schema>>;

/** Refuse of one variety. */
export interface PrintedRefuse {
  /** The variety as printed. */
  readonly printed: string;
  /** What is thrown away, as a share of the weight as bought, 0 to 1. */
  readonly refuse: number;
  /** What the refuse is; null where the table does not say. */
  readonly what: string | null;
}
/** Weight of one measure or piece of the edible part. */
export interface PrintedMeasure {
  /** The measure as worded in the source. */
  readonly measure: string;
  /** What it weighs, in g. */
  readonly mass: Quantity<'mass'>;
}
/** What is left after cooking, draining or drying. */
export interface PrintedShare {
  /** How it is sold, as printed. */
  readonly printed: string;
  /** Mass as eaten over mass bought; above 1 where water was taken up. */
  readonly eatenShare: number;
  /** What a cup of it weighs, in lb. */
  readonly cup: Quantity<'mass'>;
}
/** What an extension sheet says of an amount. */
export interface PrintedAmount {
  /** Of what, in the words of the sheet. */
  readonly printed: string;
  /** What it weighs, in lb. */
  readonly raw: Range<Quantity<'mass'>>;
  /** US cups from it. */
  readonly cups?: readonly [number, number];
  /** The form in the cups. */
  readonly cupForm?: string;
  /** Frozen pints from it, least and most. */
  readonly pintsFrozen?: readonly [number, number];
  /** Frozen quarts from it, least and most. */
  readonly quartsFrozen?: readonly [number, number];
  /** Canned quarts from it, least and most. */
  readonly quartsCanned?: readonly [number, number];
  /** Canned pints from it, least and most. */
  readonly pintsCanned?: readonly [number, number];
}
/** What the tables print of a food as bought. */
export interface PrintedAmounts {
  /** These tables print something. */
  readonly known: true;
  /** Its trade name. */
  readonly food: string;
  /** What is thrown away, by variety. */
  readonly refuse: readonly PrintedRefuse[];
  /** Weights of measures and pieces of the edible part. */
  readonly measures: readonly PrintedMeasure[];
  /** What is left where the price survey counts cooking, draining or drying. */
  readonly eaten: readonly PrintedShare[];
  /** Customary amounts of extension sheets. */
  readonly customary: readonly PrintedAmount[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

function amountOf(row: FactRow): PrintedAmount {
  const { lb, cups, cupForm, pt_frozen, qt_frozen, qt_canned, pt_canned } = row;
  return {
    printed: row.printed,
    raw: spanIn({ low: lb[0], likely: (lb[0] + lb[1]) / 2, high: lb[1] }, 'lb', 'lb'),
    ...(cups === undefined ? {} : { cups }),
    ...(cupForm === undefined ? {} : { cupForm: formName(cupForm) }),
    ...(pt_frozen === undefined ? {} : { pintsFrozen: pt_frozen }),
    ...(qt_frozen === undefined ? {} : { quartsFrozen: qt_frozen }),
    ...(qt_canned === undefined ? {} : { quartsCanned: qt_canned }),
    ...(pt_canned === undefined ? {} : { pintsCanned: pt_canned }),
  };
}

/**
 * What the tables print of one fruit or vegetable as people buy it: refuse, weights of measures and pieces, what
 * cooking or drying leaves, and the customary amounts of extension sheets. No other function gives rows as published;
 * for a plan, ask `readyFromRaw`, `rawForJars` or `kitchenMeasure`, which weigh them against each other.
 *
 * @returns plain rows as published; `known: false` where no table prints any
 * @throws StillroomError UNKNOWN_NAME for a food that is not in the pantry
 *
 * Sources: USDA SR28; ERS preparation factors; extension fact sheets.
 *
 * @example
 * ```ts
 * import { printedAmounts } from 'stillroom/produce';
 *
 * const plum = printedAmounts({ food: 'plums' });
 * plum.known && plum.refuse; // => [{ printed: 'Plums, raw', refuse: 0.06, what: 'Pits' }]
 * printedAmounts({ food: 'plumb' }); // throws StillroomError UNKNOWN_NAME
 * ```
 */
export function printedAmounts(input: PrintedAmountsInput): PrintedAmounts | NotKnown {
  const { id: asked } = readInput(schema, input).food;
  const foods = figuresFor(asked, 'yields');
  const read = refuseRows.filter(({ obtained }) => obtained === 'read');
  const refuse = byNumber(read, numbersOf(asked, 'yields'));
  const weights = byNumber(rawWeights, numbersOf(asked, 'weights'));
  const kept = factorRows.filter((row) => row.food === asked && (row.cooked === true || row.state !== 'fresh'));
  const customary = factRows.filter((row) => foods.includes(row.food));
  if ([refuse, weights, kept, customary].every(({ length }) => length === 0)) {
    const reason = `These tables print no amounts of ${nameOf(asked)}.`;
    return answer(missing('nothing printed', reason, [{ text: 'Weigh it.' }]));
  }
  return answer({
    known: true as const,
    food: nameOf(asked),
    refuse: refuse.map(({ description, refusePct, refuseIs }) => ({
      printed: description,
      refuse: refusePct / 100,
      what: refuseIs,
    })),
    measures: weights.map(({ amount, measure, grams }) => ({
      measure: `${amount} ${measure}`,
      mass: { value: grams, unit: 'g' as const },
    })),
    eaten: kept.map((row) => ({
      printed: `${row.printed}, ${row.state}`,
      eatenShare: row.yieldFactor,
      cup: { value: row.cupEquivalent_lb, unit: 'lb' as const },
    })),
    customary: customary.map(amountOf),
    basis: [
      ...basisOfRows(asked, refuse, 'refuse'),
      ...basisOfRows(asked, weights, 'measures'),
      ...basisOfRows(asked, kept, 'eaten'),
      ...basisOfRows(asked, customary, 'customary'),
    ],
    cautions: [],
  });
}
