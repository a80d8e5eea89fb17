import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { driedStorage } from '../drying/keep/driedStorage';
import { frozenStorage } from '../freezing/frozenStorage';
import { sealRows } from '../jars/tables';
import { choice, fields, name, optional, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import { type Basis, type Caution, joinBasis, joinCautions, type Refusal } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { recordCaution } from './cautions';
import { isoDate, monthsLater } from './date';
import { vitaminCRows } from './tables';

const schema = /* @__PURE__ */ fields({
  /** `jar`, `dried` or `frozen`. */
  kind: choice('what it is', ['jar', 'dried', 'frozen']),
  /** Day of making as ISO text. */
  made: isoDate('the day it was made'),
  /** For `dried`: which food; `fruit`, the longer-keeping, is never assumed: left out it is `vegetable`. */
  food: optional(name('a dried fruit or vegetable')),
  /** Of the store; left out: 70 degF for dried, 0 degF for frozen, the printed span for jars. */
  temperature: optional(temperature()),
});
export type UseByInput = z.input<typeof schema>;

export interface UseBy {
  /** Months of good quality, printed; the ends are the same where one figure is printed. */
  readonly months: { readonly low: number; readonly high: number };
  /** The day for the label: the made day and the low figure. */
  readonly useBy: string;
  /** The made day and the high figure. */
  readonly latest: string;
  /** What storage does besides. */
  readonly notes: readonly string[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const sealRow = (rule: string) => sealRows.find((row) => row.id === rule) as (typeof sealRows)[number];
const VITAMIN = 'vitamin C left after 12 months';

type Months = Pick<UseBy, 'months' | 'notes' | 'basis' | 'cautions'>;

function jarMonths(degF: number | undefined): Months | Refusal {
  const within = sealRow('use-within');
  const warm = sealRow('store-warm');
  const cool = sealRow('store-cool');
  const hottest = sealRow('never-above');
  const basis = [
    basisOf(within, 'months of storage'),
    basisOf(warm, 'storage temperature'),
    basisOf(hottest, 'hottest store'),
  ];
  // a millionth of a degree for the conversion of units
  if (degF !== undefined && degF > (warm.most as number) + 1e-6) {
    const tooHot = degF > (hottest.most as number);
    return {
      tested: false,
      reason: tooHot
        ? hottest.text
        : `The ${within.most} months are printed for a store of ${cool.least} to ${warm.most} degF; none are printed for a warmer one.`,
      instead: tooHot
        ? 'Move what is sound to a cool place at once, and look every jar over first.'
        : 'Move it to a cooler place, or use it first.',
      basis: [...basis, ...vitaminCRows.map((row) => basisOf(row, VITAMIN))],
      cautions: [recordCaution('quality-not-safety')],
    };
  }
  const months = within.most as number;
  return {
    months: { low: months, high: months },
    notes: [
      cool.text,
      warm.text,
      ...vitaminCRows.map(
        ({ mean_degF, retention_percent }) =>
          `Canned tomatoes and orange juice kept ${retention_percent} % of their vitamin C over 12 months at ${mean_degF} degF.`,
      ),
      sealRow('check-monthly').text,
      sealRow('frozen-by-accident').text,
    ],
    basis: joinBasis(
      basis,
      vitaminCRows.map((row) => basisOf(row, VITAMIN)),
    ),
    cautions: [],
  };
}

/** The months of a store that another module prints, or its no. */
function monthsOf(found: ReturnType<typeof driedStorage> | ReturnType<typeof frozenStorage>): Months | Refusal {
  const { basis, cautions } = found;
  if (found.known) return { months: found.months, notes: [], basis, cautions };
  return {
    tested: false,
    reason: found.reason.text,
    instead: found.instead.map(({ text }) => text).join(', or '),
    basis,
    cautions,
  };
}

/**
 * The day to put on a label, by the printed storage months: advice for best quality, no guarantee.
 *
 * Home-canned jars: 12 months in a store of 50 to 70 degF. Dried fruit and vegetables: by food and temperature, as
 * `driedStorage`. Frozen fruit and vegetables: 8 to 12 months at 0 degF, as `frozenStorage`. `useBy` takes the low figure.
 *
 * @returns `useBy` and `latest` as ISO days, `months`, `notes`; or a refusal for a store warmer than any printed figure
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
 * 'useBy' in jars && jars.useBy; // => '2027-08-14'
 * 'useBy' in useBy({ kind: 'jar', made: '2026-08-14', temperature: '85 degF' }); // => false
 * ```
 */
export function useBy(input: UseByInput): UseBy | Refusal {
  const { kind, made, food = 'vegetable', temperature: store } = readInput(schema, input);
  const found =
    kind === 'jar'
      ? jarMonths(store === undefined ? undefined : valueIn(store, 'degF'))
      : kind === 'dried'
        ? monthsOf(driedStorage({ food, temperature: store ?? '70 degF' }))
        : monthsOf(frozenStorage({ temperature: store }));
  if ('tested' in found) return answer(found);
  return answer({
    months: found.months,
    useBy: monthsLater(made, Math.floor(found.months.low)),
    latest: monthsLater(made, Math.floor(found.months.high)),
    notes: found.notes,
    basis: found.basis,
    cautions: joinCautions([recordCaution('quality-not-safety')], found.cautions, [caution('follow-local-guidance')]),
  });
}
