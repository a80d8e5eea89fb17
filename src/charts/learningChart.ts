import { answer } from '../common/answer';
import { readInput } from '../quantity/fields';
import type { Range } from '../quantity/types';
import { measured } from '../sources/basis';
import { caution } from '../sources/cautions';
import { check, type Ends, type LearningChartInput, type LearningRow, schema, shown } from './learningFigures';
import { layersOf } from './learningLayers';
import { type ChartSpec, capital, chart, digits } from './spec';

export type { LearningChartInput, LearningRow };

/**
 * What your batches taught: the range before them, your own figures in their order, and the range learned from both.
 *
 * The bar on the left is the range before, dashed across; the bar on the right is where the next batch falls 9 times in
 * 10, shaded across. A batch that was set aside is a cross, or an arrow at the edge where it lies far off.
 *
 * @returns a Vega-Lite spec
 * @throws StillroomError CONTRADICTION for a range out of order; OUT_OF_RANGE for a share outside 0 to 1 or a place that
 * is not in the list; TOO_MUCH
 *
 * @example
 * ```ts
 * import { learningChart } from 'stillroom/charts';
 * import { learnFromRecords } from 'stillroom/record';
 *
 * const before = { low: 6, likely: 9, high: 12 };
 * const observed = [7, 7.5, 7.2, 7.4, 72];
 * const { figure: after, outliers } = learnFromRecords({ prior: before, observed });
 * const places = outliers.map(({ index }) => index);
 * const chart = learningChart({ what: 'drying time of apple rings', unit: 'h', before, after, observed, asidePlaces: places });
 * chart.data.values[4]; // => { batchNumber: 5, figure: 72, counts: 'set aside', beyond: 'above' }
 * ```
 */
export function learningChart(input: LearningChartInput): ChartSpec<LearningRow> {
  const given = readInput(schema, input);
  check(given);
  const { what, unit, before, after, recalled = true, observed, asidePlaces = [], invented = false } = given;
  const [low, high] = shown(given);
  const ends: Ends = unit === undefined ? [Math.max(0, low), Math.min(1, high)] : [low, high];
  const values = observed.map((value, index): LearningRow => {
    const beyond = value > ends[1] ? 'above' : value < ends[0] ? 'below' : undefined;
    return {
      batchNumber: index + 1,
      figure: value,
      counts: asidePlaces.includes(index) ? 'set aside' : 'in full',
      ...(beyond === undefined ? {} : { beyond }),
    };
  });
  const write = writer(unit, ends);
  const span = (one: Range<number>) =>
    `${write(one.low)} to ${write(one.high)} ${unit ?? '%'}, likely ${write(one.likely)}`;
  const aside = values.filter(({ counts }) => counts === 'set aside');
  const asideText =
    aside.length === 0
      ? []
      : [
          `Set aside, far from the others: ${aside
            .slice(0, MOST_NAMED)
            .map((row) => `batch ${row.batchNumber} (${write(row.figure)} ${unit ?? '%'})`)
            .join(', ')}${aside.length > MOST_NAMED ? `, and ${aside.length - MOST_NAMED} more` : ''}.`,
        ];
  const said = [
    `${recalled ? 'Published or recalled' : 'Published'}: ${span(before)}.`,
    `Next batch, 9 times in 10: ${span(after)}; learned from ${batchCount(observed.length)} of your own.`,
    ...asideText,
  ];
  return answer(
    chart({
      title: `Learned: ${what}`,
      subtitle: [...(invented ? ['An invented example.'] : []), ...said],
      description: `${capital(what)}. ${said.join(' ')} ${batchesText(values, write, unit)}`.trim(),
      values,
      layer: layersOf(given, values, ends),
      basis: [[measured('data.values', 'ranges and figures as you gave them')]],
      cautions: [[caution('estimate')]],
    }),
  );
}

const batchCount = (n: number): string => (n === 0 ? 'no batch' : n === 1 ? '1 batch' : `${n} batches`);

/** How many batches the texts name one by one. */
const MOST_NAMED = 4;
const MOST_READ_OUT = 100;

type Write = (value: number) => string;

/** Three digits of what is shown, in percent where no unit is named. */
function writer(unit: string | undefined, [low, high]: Ends): Write {
  const times = unit === undefined ? 100 : 1;
  const places = Math.min(9, Math.max(0, 2 - Math.floor(Math.log10(times * (high - low || 1)))));
  return (value) => digits(times * value, places);
}

const batchesText = (values: readonly LearningRow[], write: Write, unit: string | undefined): string =>
  values.length === 0
    ? ''
    : `Batches in order, ${unit ?? '%'}: ${values
        .slice(0, MOST_READ_OUT)
        .map((row) => write(row.figure))
        .join(', ')}${values.length > MOST_READ_OUT ? ' and more' : ''}.`;
