import * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { type TestedProcess, type TestedProcessInput, testedProcess } from '../process/index';
import { elevation, fields, optional, readInput } from '../quantity/fields';
import { formatQuantity } from '../quantity/formatQuantity';
import { exactIn, valueIn } from '../quantity/scale';
import type { LengthInput, Quantity } from '../quantity/types';
import type { Unit } from '../quantity/units';
import type { NotTested } from '../sources/no';
import { type CanningMethod, METHODS, method } from '../words/method';
import {
  behindRows,
  type ChartLayer,
  type ChartSpec,
  capital,
  chart,
  HEIGHT,
  OKABE_ITO,
  QUIET_GREY,
  sourceLine,
} from './spec';

const schema = /* @__PURE__ */ fields({
  food: optional(z.unknown()),
  form: optional(z.unknown()),
  pack: optional(z.unknown()),
  jar: optional(z.unknown()),
  alternative: optional(z.unknown()),
  pressure: optional(z.unknown()),
  method: optional(method()),
  fromElevation: optional(elevation()),
  toElevation: optional(elevation()),
  elevation: optional(elevation()),
});

export interface ProcessTimeChartInput extends Omit<TestedProcessInput, 'method' | 'elevation'> {
  /** The first of boiling water, dial gauge and weighted gauge that is tested, when left out. */
  readonly method?: CanningMethod | undefined;
  /** Elevation at the left end of the chart, -500 to 5,000 m; 0 ft when left out. */
  readonly fromElevation?: LengthInput | undefined;
  /** Elevation at the right end, above `fromElevation`; 10,000 ft when left out. */
  readonly toElevation?: LengthInput | undefined;
  /** The kitchen's own elevation, marked on the chart. */
  readonly elevation?: LengthInput | undefined;
}

/** One band of elevations with one answer, its ends in the unit of the chart. */
export interface ProcessTimeRow {
  /** Elevation the band begins at. */
  readonly bandStart: number;
  /** Elevation it ends at. */
  readonly bandEnd: number;
  /** The tested minutes; none where no process is tested. */
  readonly minutes?: number;
  /** Gauge pressure in psi, of a pressure canner. */
  readonly psi?: number;
  /** Why there is no tested process in this band. */
  readonly untested?: string;
}

type Answer = TestedProcess | NotTested;
interface Band {
  readonly from: number;
  readonly to: number;
  readonly answer: Answer;
}

/** No printed band is narrower than 1,000 ft. */
const STEP_FT = 500;
const FOOT = 1;
const DEFAULT_TO: Quantity<'length'> = { value: 10_000, unit: 'ft' };
const SEA_LEVEL: Quantity<'length'> = { value: 0, unit: 'ft' };

const same = (one: Answer, other: Answer): boolean =>
  one.tested && other.tested
    ? one.minutes === other.minutes && one.pressure?.value === other.pressure?.value
    : one.tested === other.tested;

/** The bands between two elevations in feet, found by asking: every answer of the chart is one of the function's. */
function bandsBetween(from: number, to: number, ask: (feet: number) => Answer): Band[] {
  const bands: Band[] = [];
  let start = from;
  let at = from;
  let answer = ask(from);
  while (at < to) {
    const next = Math.min(at + STEP_FT, to);
    const there = ask(next);
    if (!same(answer, there)) {
      let [low, high] = [at, next];
      while (high - low > FOOT) {
        const middle = Math.round((low + high) / 2);
        if (same(answer, ask(middle))) low = middle;
        else high = middle;
      }
      const edge = Math.floor(low);
      bands.push({ from: start, to: edge, answer });
      start = edge;
      answer = there;
    }
    at = next;
  }
  bands.push({ from: start, to, answer });
  return bands;
}

/** The method asked for, or the first that is tested at the foot of the chart. */
function methodOf(given: CanningMethod | undefined, ask: (method: CanningMethod) => Answer): CanningMethod {
  if (given !== undefined) return given;
  return METHODS.slice(0, 3).find((method) => ask(method).tested) ?? 'boiling-water';
}

const METHOD_TEXT: Readonly<Record<CanningMethod, string>> = {
  'boiling-water': 'in boiling water',
  'dial-gauge': 'dial-gauge pressure canner',
  'weighted-gauge': 'weighted-gauge pressure canner',
  'atmospheric-steam': 'atmospheric steam canner',
};

/**
 * Process time, or gauge pressure, against elevation: the printed bands as steps.
 *
 * Every step is an answer of `testedProcess`; elevations with no tested process are left gray. In boiling water or
 * steam the minutes rise from band to band; under pressure the minutes stay and the gauge pressure rises, so that is
 * drawn. A chart shows the shape; take the process itself from `testedProcess`, with its acid and cautions.
 *
 * @returns a Vega-Lite spec, its rows in the unit of `toElevation`; or what `testedProcess` answers, where nothing is
 * tested from end to end
 * @throws StillroomError as `testedProcess`; CONTRADICTION where `toElevation` is not above `fromElevation`
 *
 * @example
 * ```ts
 * import { processTimeChart } from 'stillroom/charts';
 *
 * const chart = processTimeChart({ food: 'peaches', form: 'halves', pack: 'hot', jar: 'quart' });
 * 'data' in chart && chart.data.values[1]; // => { bandStart: 1000, bandEnd: 3000, minutes: 30 }
 * ```
 */
export function processTimeChart(input: ProcessTimeChartInput): ChartSpec<ProcessTimeRow> | NotTested {
  const given = readInput(schema, input);
  const { method: _, fromElevation: __, toElevation: ___, elevation: ____, ...asked } = input;
  const to = given.toElevation ?? DEFAULT_TO;
  const from = given.fromElevation ?? SEA_LEVEL;
  const feet = (place: Quantity<'length'>): number => exactIn(place, 'ft').toNumber();
  if (feet(to) <= feet(from))
    fail('CONTRADICTION', 'toElevation', input.toElevation, 'an elevation above `fromElevation`');
  const at = (value: number, method: CanningMethod): Answer =>
    testedProcess({ ...asked, method, elevation: { value, unit: 'ft' } });
  const method = methodOf(given.method, (candidate) => at(feet(from), candidate));
  const bands = bandsBetween(feet(from), feet(to), (value) => at(value, method));
  const tested = bands.map(({ answer }) => answer).filter((answer): answer is TestedProcess => answer.tested);
  const [first] = tested;
  if (first === undefined) return answer((bands[0] as Band).answer as NotTested);
  const inUnit = (value: number): number => exactIn({ value, unit: 'ft' }, to.unit).toNumber();
  const values = bands.map(({ from: foot, to: top, answer }) => rowOf(inUnit(foot), inUnit(top), answer));
  const byPressure = first.pressure !== undefined;
  const kitchen =
    given.elevation === undefined ? [] : [kitchenOf(given.elevation, at(feet(given.elevation), method), to.unit)];
  const name = `${capital(first.food)}, ${first.form}, ${first.pack} pack, ${first.jar} jars`.replace(
    ', not stated pack',
    '',
  );
  const minutes = [...new Set(tested.map((answer) => answer.minutes))];
  return answer(
    chart({
      title: `${byPressure ? 'Gauge pressure' : 'Process time'} by elevation`,
      subtitle: [
        `${name}; ${METHOD_TEXT[method]}${byPressure ? `, ${minutes.join(' or ')} min at every elevation` : ''}.`,
        ...(first.acid === undefined ? [] : ['Acid must be added to every jar: see the process.']),
        sourceLine(first.basis.slice(0, 1)),
      ],
      description: `${name}: ${values.map((row) => stepText(row, to.unit)).join('; ')}.`,
      values,
      layer: layersOf(values, byPressure, to.unit, kitchen),
      basis: tested.map(({ basis }) => behindRows(undefined, basis)),
      cautions: tested.map(({ cautions }) => cautions),
    }),
  );
}

interface Kitchen {
  readonly elevation: number;
  readonly text: string;
}

function kitchenOf(place: Quantity<'length'>, answer: Answer, unit: Unit<'length'>): Kitchen {
  const row = rowOf(0, 0, answer);
  return { elevation: valueIn(place, unit), text: `${formatQuantity(place)}: ${answerText(row)}` };
}

function rowOf(from: number, to: number, answer: Answer): ProcessTimeRow {
  if (!answer.tested) return { bandStart: from, bandEnd: to, untested: answer.reason.text };
  const { minutes, pressure } = answer;
  return { bandStart: from, bandEnd: to, minutes, ...(pressure === undefined ? {} : { psi: pressure.value }) };
}

const answerText = ({ minutes, psi }: ProcessTimeRow): string =>
  minutes === undefined ? 'no tested process' : `${minutes} min${psi === undefined ? '' : ` at ${psi} psi`}`;

const stepText = (row: ProcessTimeRow, unit: string): string =>
  `${Math.round(row.bandStart)} to ${Math.round(row.bandEnd)} ${unit}: ${answerText(row)}`;

function layersOf(
  values: readonly ProcessTimeRow[],
  byPressure: boolean,
  unit: string,
  kitchen: readonly Kitchen[],
): ChartLayer[] {
  const field = byPressure ? 'psi' : 'minutes';
  const edges = [
    ...new Set([...values.map(({ bandStart: from }) => from), ...values.slice(-1).map(({ bandEnd: to }) => to)]),
  ];
  const x = {
    field: 'bandStart',
    type: 'quantitative',
    title: `elevation, ${unit}`,
    scale: { domain: [edges[0], edges[edges.length - 1]], nice: false },
    axis: { values: edges, format: ',.0f', grid: false },
  };
  const y = {
    field,
    type: 'quantitative',
    title: byPressure ? 'gauge pressure, psi' : 'process time, minutes',
    scale: { zero: true },
  };
  const served = { filter: `isValid(datum.${field})` };
  const middle = { calculate: '(datum.bandStart + datum.bandEnd) / 2', as: 'middle' };
  const across = { ...x, field: 'middle' };
  return [
    {
      transform: [{ filter: 'isValid(datum.untested)' }],
      mark: { type: 'rect', color: QUIET_GREY, opacity: 0.4 },
      encoding: { x, x2: { field: 'bandEnd' }, y: { value: 0 }, y2: { value: HEIGHT } },
    },
    {
      transform: [{ filter: 'isValid(datum.untested)' }, middle],
      mark: { type: 'text', text: ['no tested', 'process'], lineBreak: '\n' },
      encoding: { x: across, y: { value: HEIGHT / 2 } },
    },
    {
      transform: [served],
      mark: { type: 'rect', color: OKABE_ITO.skyBlue, opacity: 0.35 },
      encoding: { x, x2: { field: 'bandEnd' }, y, y2: { datum: 0 } },
    },
    {
      transform: [served],
      mark: { type: 'rule', color: OKABE_ITO.blue, strokeWidth: 4 },
      encoding: { x, x2: { field: 'bandEnd' }, y },
    },
    {
      transform: [served, middle],
      mark: { type: 'text', dy: -12, fontWeight: 'bold' },
      encoding: { x: across, y, text: { field, type: 'quantitative' } },
    },
    ...kitchen.flatMap((place): ChartLayer[] => [
      {
        data: { values: [place] },
        mark: { type: 'rule', color: OKABE_ITO.vermillion, strokeWidth: 2, strokeDash: [6, 4] },
        encoding: { x: { ...x, field: 'elevation' } },
      },
      {
        data: { values: [place] },
        mark: { type: 'text', color: OKABE_ITO.vermillion, align: 'left', dx: 6, dy: -10 },
        encoding: { x: { ...x, field: 'elevation' }, y: { value: HEIGHT }, text: { field: 'text' } },
      },
    ]),
  ];
}
