import { answer } from '../common/answer';
import { type FinishForecast, type FinishForecastInput, finishForecast, type KnownFinish } from '../drying/index';
import { parseQuantity } from '../quantity/parseQuantity';
import { valueIn } from '../quantity/scale';
import { behindRows, type ChartLayer, type ChartSpec, chart, digits, OKABE_ITO } from './spec';

export type DryingCurveChartInput = FinishForecastInput;

/** A point of the fitted curve; after the last weighing also the ends of the forecast. */
export interface DryingCurveRow {
  /** Time since drying began, in the unit of the first weighing. */
  readonly after: number;
  /** Mass of the tray at that time, in the unit of the first weighing. */
  readonly weighs: number;
  /** The earliest time it may weigh that, where it is forecast. */
  readonly low?: number;
  /** The latest time it may weigh that, where it is forecast. */
  readonly high?: number;
}

type Point = Pick<DryingCurveRow, 'after' | 'weighs'>;

const POINTS = 60;

/**
 * The weighings of a tray, the curve fitted to them, the stop weight, and when the tray will reach it.
 *
 * Curve and times are `finishForecast`'s. The band holds the true time in 90 of 100 cases where it meets the stop
 * weight; before that it is drawn in proportion from the last weighing on. Where the weighings cannot tell yet, the
 * chart shows them and says why.
 *
 * @returns a Vega-Lite spec; rows in the units of the first weighing. No rows while nothing is fitted
 * @throws StillroomError as `finishForecast`
 *
 * @example
 * ```ts
 * import { dryingCurveChart } from 'stillroom/charts';
 *
 * const { title } = dryingCurveChart({
 *   weighings: [
 *     { time: '0 h', mass: '1000 g' },
 *     { time: '2 h', mass: '688 g' },
 *     { time: '4 h', mass: '461 g' },
 *   ],
 *   stopWeight: '188 g',
 *   model: 'lewis',
 *   scaleError: '5 g',
 * });
 * title.text; // => 'Drying curve and forecast'
 * ```
 */
export function dryingCurveChart(input: DryingCurveChartInput): ChartSpec<DryingCurveRow> {
  const forecast = finishForecast(input);
  const weighings = input.weighings.map(({ time, mass }) => ({
    time: parseQuantity(time, 'time'),
    mass: parseQuantity(mass, 'mass'),
  }));
  const [first] = weighings as [(typeof weighings)[number]];
  const units = { time: first.time.unit, mass: first.mass.unit };
  const points = weighings.map(({ time, mass }) => ({
    after: valueIn(time, units.time),
    weighs: valueIn(mass, units.mass),
  }));
  const stop = forecast.stopWeight.value;
  const values =
    forecast.known && forecast.curve !== undefined ? curveRows(forecast, points, forecast.equilibriumWeight.value) : [];
  const last = points[points.length - 1] as Point;
  const said = forecastText(forecast, last);
  return answer(
    chart({
      title: 'Drying curve and forecast',
      subtitle: [said],
      description: `Weight of the tray over time, from ${digits((points[0] as Point).weighs, 1)} to ${digits(last.weighs, 1)} ${units.mass}; stop weight ${digits(stop, 1)} ${units.mass}. ${said}`,
      values,
      layer: layersOf(values, points, stop, forecast, units),
      basis: [behindRows(undefined, forecast.basis)],
      cautions: [forecast.cautions],
    }),
  );
}

const spanText = ({ time: { low, high } }: KnownFinish): string =>
  `${digits(low.value, 1)} to ${digits(high.value, 1)} ${low.unit}`;

function forecastText(forecast: FinishForecast, last: Point): string {
  if (!forecast.known) {
    const [first] = forecast.instead;
    return `No forecast yet: ${forecast.reason.text}.${first === undefined ? '' : ` Instead: ${first.text}.`}`;
  }
  const { likely } = forecast.time;
  const span = spanText(forecast);
  if (forecast.finished) return `The tray passed its stop weight (${span}): it is done.`;
  return `Expected to reach the stop weight at ${digits(likely.value, 1)} ${likely.unit} (90 of 100 cases: ${span}); last weighed at ${digits(last.after, 1)} ${likely.unit}.`;
}

function curveRows(forecast: KnownFinish, points: readonly Point[], floor: number): DryingCurveRow[] {
  const { k, n } = forecast.curve as NonNullable<KnownFinish['curve']>;
  const ratioAt = (after: number): number => Math.exp(-k * after ** n);
  // with k and n known, the start mass that fits best is a plain sum
  const sums = points.reduce(
    (sum, { after, weighs }) => ({
      above: sum.above + (weighs - floor) * ratioAt(after),
      below: sum.below + ratioAt(after) ** 2,
    }),
    { above: 0, below: 0 },
  );
  const start = floor + sums.above / sums.below;
  const massAt = (after: number): number => floor + (start - floor) * ratioAt(after);
  const { after: from } = points[0] as Point;
  const { after: now } = points[points.length - 1] as Point;
  const { low, likely, high } = forecast.time;
  const end = likely.value;
  const measured = spread(from, now).map((after) => ({ after, weighs: massAt(after) }));
  const ahead =
    end <= now
      ? []
      : spread(now, end).map((after) => {
          const share = (after - now) / (end - now);
          return {
            after,
            weighs: massAt(after),
            low: now + share * (low.value - now),
            high: now + share * (high.value - now),
          };
        });
  return [...measured, ...ahead];
}

const spread = (from: number, to: number): number[] =>
  Array.from({ length: POINTS + 1 }, (_, step) => (step === POINTS ? to : from + ((to - from) * step) / POINTS));

function layersOf(
  values: readonly DryingCurveRow[],
  points: readonly Point[],
  stop: number,
  forecast: FinishForecast,
  units: { time: string; mass: string },
): ChartLayer[] {
  const x = {
    field: 'after',
    type: 'quantitative',
    title: `time since drying began, ${units.time}`,
    scale: { zero: true },
  };
  const y = {
    field: 'weighs',
    type: 'quantitative',
    title: `weight of the tray, ${units.mass}`,
    scale: { zero: true },
  };
  const stopRow = { weighs: stop, text: `stop weight, ${digits(stop, 1)} ${units.mass}` };
  const ends = forecast.known
    ? [
        {
          after: forecast.time.likely.value,
          weighs: stop,
          low: forecast.time.low.value,
          high: forecast.time.high.value,
          text: spanText(forecast),
        },
      ]
    : [];
  return [
    ...(values.length === 0
      ? []
      : [
          {
            transform: [{ filter: 'isValid(datum.low)' }],
            mark: { type: 'area', orient: 'horizontal', color: OKABE_ITO.orange, opacity: 0.4 },
            encoding: { y, x: { ...x, field: 'low' }, x2: { field: 'high' } },
          },
          { mark: { type: 'line', color: OKABE_ITO.blue, strokeWidth: 3 }, encoding: { x, y } },
        ]),
    {
      data: { values: [stopRow] },
      mark: { type: 'rule', color: OKABE_ITO.vermillion, strokeWidth: 2, strokeDash: [6, 4] },
      encoding: { y },
    },
    {
      data: { values: [stopRow] },
      mark: { type: 'text', color: OKABE_ITO.vermillion, align: 'left', dy: 14 },
      encoding: { x: { value: 6 }, y, text: { field: 'text' } },
    },
    ...(ends.length === 0
      ? []
      : [
          {
            data: { values: ends },
            mark: { type: 'rule', strokeWidth: 5, color: OKABE_ITO.black },
            encoding: { y, x: { ...x, field: 'low' }, x2: { field: 'high' } },
          },
          {
            data: { values: ends },
            mark: { type: 'text', align: 'right', dy: -14, fontWeight: 'bold' },
            encoding: { x: { ...x, field: 'high' }, y, text: { field: 'text' } },
          },
        ]),
    {
      data: { values: points },
      mark: { type: 'point', filled: true, size: 90, opacity: 1, color: OKABE_ITO.black },
      encoding: { x, y },
    },
  ];
}
