import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { driedStorage } from '../drying/keep/driedStorage';
import { type FoundFood, food } from '../foods/fields';
import { frozenStorage } from '../freezing/frozenStorage';
import { sealRows } from '../jars/tables';
import { choice, fields, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { temperature } from '../words/temperature';
import { recordCaution } from './cautions';
import { isoDate, monthsLater } from './date';
import { figureOf, VITAMIN_C } from './tables';

const schema = /* @__PURE__ */ fields({
  /** What it is: `jar` (home-canned), `dried` or `frozen`. */
  kind: choice('what it is', ['jar', 'dried', 'frozen']),
  /** Day of making as ISO text. */
  made: isoDate('the day it was made'),
  /** For `dried`: which food; not given, the shorter months of vegetables are used. */
  food: optional(food()),
  /** Of the store; not given: 70 degF for dried, 0 degF for frozen, the printed span for jars. */
  temperature: optional(temperature()),
});
export type UseByInput = z.input<typeof schema>;

/** The day to put on a label. */
export interface UseBy {
  /** These tables hold months for this store. */
  readonly known: true;
  /** Months of good quality, as printed. */
  readonly months: {
    /** The low figure. */
    readonly low: number;
    /** The high figure; the same where one figure is printed. */
    readonly high: number;
  };
  /** The day for the label, as ISO text: the day of making and the low figure. */
  readonly useBy: string;
  /** The day of making and the high figure. */
  readonly latestUseBy: string;
  /** What to know about keeping it. */
  readonly storageAdvice: readonly string[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const sealRow = (id: string) => sealRows.find((row) => row.id === id) as (typeof sealRows)[number];

type Months = Pick<UseBy, 'known' | 'months' | 'storageAdvice' | 'basis' | 'cautions'>;

const vitaminBasis = (of: string): Basis[] =>
  VITAMIN_C.map((row) => basisOf(row, of, `vitamin C left after 12 months, ${row.place}`));

/** The no for a store that is warmer than the printed months are for. */
function tooWarm(degF: number): NotKnown {
  const [within, warm, cool, hottest] = ['use-within', 'store-warm', 'store-cool', 'never-above'].map(sealRow) as [
    ReturnType<typeof sealRow>,
    ReturnType<typeof sealRow>,
    ReturnType<typeof sealRow>,
    ReturnType<typeof sealRow>,
  ];
  const tooHot = degF > figureOf(hottest, 'most');
  return notKnown({
    code: tooHot ? 'store-too-hot' : 'store-too-warm',
    text: tooHot
      ? hottest.text
      : `The ${within.most} months in these tables are for a store of ${cool.least} to ${warm.most} degF; these tables hold none for a warmer one.`,
    instead: [
      tooHot
        ? { text: 'Move the sound jars to a cool place at once, and look every jar over first.' }
        : { text: 'Move it to a cooler place, or use it first.' },
    ],
    basis: [...[within, warm, hottest].map((row) => basisOf(row, 'reason', row.text)), ...vitaminBasis('reason')],
    cautions: [recordCaution('quality-not-safety')],
  });
}

function jarMonths(store: Quantity<'temperature'> | undefined): Months | NotKnown {
  const [within, warm, cool] = [sealRow('use-within'), sealRow('store-warm'), sealRow('store-cool')];
  // a millionth of a degree for the conversion of units
  if (store !== undefined && valueIn(store, 'degF') > figureOf(warm, 'most') + 1e-6) {
    return tooWarm(valueIn(store, 'degF'));
  }
  const months = figureOf(within, 'most');
  return {
    known: true,
    months: { low: months, high: months },
    storageAdvice: [
      cool.text,
      warm.text,
      ...VITAMIN_C.map(
        ({ mean_degF, retention_percent }) =>
          `Canned tomatoes and orange juice kept ${retention_percent} % of their vitamin C over 12 months at ${mean_degF} degF.`,
      ),
      sealRow('check-monthly').text,
      sealRow('frozen-by-accident').text,
    ],
    basis: [
      basisOf(within, 'months'),
      ...[warm, sealRow('never-above')].map((row) => basisOf(row, 'storageAdvice', row.text)),
      ...vitaminBasis('storageAdvice'),
    ],
    cautions: [],
  };
}

const driedMonths = (asked: FoundFood | undefined, store: Quantity<'temperature'> | undefined) =>
  driedStorage({ food: asked?.name ?? 'vegetable', temperature: store ?? '70 degF' });

/** The months of a store that another module holds, or its no. */
function monthsOf(found: ReturnType<typeof driedStorage> | ReturnType<typeof frozenStorage>): Months | NotKnown {
  return found.known
    ? { known: true, months: found.months, storageAdvice: [], basis: found.basis, cautions: found.cautions }
    : found;
}

/**
 * The day to put on a label, by the printed storage months: advice for best quality, not a guarantee.
 *
 * Home-canned jars: 12 months in a store of 50 to 70 degF. Dried fruit and vegetables: by food and temperature, as
 * `driedStorage`. Frozen fruit and vegetables: 8 to 12 months at 0 degF, as `frozenStorage`. `useBy` takes the low figure.
 *
 * @returns `useBy` and `latestUseBy` as ISO days, `months`, `storageAdvice`; or `known: false` for a store warmer than any
 *   printed figure, or a food without one
 * @throws StillroomError OUT_OF_RANGE for a day that is not in the calendar, UNKNOWN_NAME
 *
 * Source: University of California (12 months, 50 to 70 degF), AIB 539 (95 degF); the tables of drying and freezing; vitamin C:
 * a study of nine warehouses, 1947.
 *
 * @example
 * ```ts
 * import { useBy } from 'stillroom/record';
 *
 * const jars = useBy({ kind: 'jar', made: '2026-08-14' });
 * jars.known && jars.useBy; // => '2027-08-14'
 * useBy({ kind: 'jar', made: '2026-08-14', temperature: '85 degF' }).known; // => false
 * ```
 */
export function useBy(input: UseByInput): UseBy | NotKnown {
  const { kind, made, food: asked, temperature: store } = readInput(schema, input);
  const found =
    kind === 'jar'
      ? jarMonths(store)
      : monthsOf(kind === 'dried' ? driedMonths(asked, store) : frozenStorage({ temperature: store }));
  if (!found.known) return answer(found);
  return answer({
    known: true,
    months: found.months,
    useBy: monthsLater(made, Math.floor(found.months.low)),
    latestUseBy: monthsLater(made, Math.floor(found.months.high)),
    storageAdvice: found.storageAdvice,
    basis: [...found.basis, derived('useBy', 'the day of making and the months')],
    cautions: [recordCaution('quality-not-safety'), ...found.cautions, caution('follow-local-guidance')],
  });
}
