import * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { standsBehind } from '../plan/figures/standsBehind';
import { fields, name, optional, readInput } from '../quantity/fields';
import type { Basis, Caution } from '../sources/basis';
import {
  type FruitWaterActivityInput,
  fruitWaterActivity,
  type IsothermMoistureInput,
  isothermActivity,
  isothermMoisture,
  keeps,
} from '../water-activity/index';
import { moisture } from '../words/shares';
import {
  behindRows,
  type ChartLayer,
  type ChartSpec,
  capital,
  chart,
  digits,
  HEIGHT,
  OKABE_ITO,
  sourceLine,
} from './spec';

const batchFields = () =>
  fields({
    /** Its moisture, wet basis: above 0 and below 1, or in percent. */
    moisture: moisture({ above: 0, below: 1 }),
    /** What you call it. */
    name: optional(name('a name for the batch')),
  });

const schema = /* @__PURE__ */ fields({
  food: optional(z.unknown()),
  parameters: optional(z.unknown()),
  model: optional(z.unknown()),
  set: optional(z.unknown()),
  temperature: optional(z.unknown()),
  composition: optional(z.unknown()),
  sugarToFruit: optional(z.unknown()),
  inverted: optional(z.unknown()),
  batch: optional(batchFields()),
});

/** What names an isotherm. */
type IsothermChoice = Omit<IsothermMoistureInput, 'waterActivity'>;
/** Which curve: a food's published isotherm, or the estimate from its composition. */
export type IsothermChartInput = Partial<IsothermChoice> &
  Omit<FruitWaterActivityInput, 'moisture'> & {
    /** Your batch, marked on the curve. */
    readonly batch?: Given<z.input<ReturnType<typeof batchFields>>> | undefined;
  };

/** One point of the curve. */
export interface IsothermRow {
  /** Water activity, 0 to 1. */
  readonly waterActivity: number;
  /** Moisture, wet basis, 0 to 1. */
  readonly moisture: number;
  /** The lowest water activity, where it is an estimate. */
  readonly low?: number;
  /** The highest water activity, where it is an estimate. */
  readonly high?: number;
}

interface Curve {
  readonly title: string;
  readonly subtitle: readonly string[];
  readonly points: readonly IsothermRow[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
  /** The point of a wet-basis moisture; refuses outside the curve. */
  readonly at: (moisture: number) => IsothermRow;
}

const POINTS = 60;
const steps = (low: number, high: number): number[] =>
  Array.from({ length: POINTS + 1 }, (_, step) => (step === POINTS ? high : low + ((high - low) * step) / POINTS));
/** Isotherms that reach the ends of the scale have no value there. */
const INSIDE = 0.001;

/** A published isotherm, or one by the caller's own constants; none for a food that these tables have none of. */
function publishedCurve(chosen: Partial<IsothermChoice>): Curve | undefined {
  // the function itself refuses a choice without a food and constants
  const choice = chosen as { readonly food: string };
  const middle = isothermMoisture({ ...choice, waterActivity: 0.5 });
  if (!middle.known) return undefined;
  const { low, high } = middle.waterActivityLimits;
  const points = steps(Math.max(low, INSIDE), Math.min(high, 1 - INSIDE)).map((waterActivity) => ({
    waterActivity,
    moisture: known(isothermMoisture({ ...choice, waterActivity })).wetMoisture,
  }));
  const { food = 'your own constants', state, model, temperature } = middle;
  const degrees =
    temperature === undefined ? '' : `, ${digits(temperature.value, 1)} ${temperature.unit.replace('deg', '°')}`;
  return {
    title: `Isotherm: ${food}`,
    subtitle: [
      `${model} equation${degrees}${state === undefined ? '' : `; ${state}`}. ${sourceLine(middle.basis.filter(({ kind }) => kind === 'published'))}`,
    ],
    points,
    basis: middle.basis,
    cautions: middle.cautions,
    at: (moisture) => ({
      waterActivity: known(isothermActivity({ ...choice, moisture: moisture / (1 - moisture) })).waterActivity,
      moisture,
    }),
  };
}

/** What is asked again about a food that had an answer has one again. */
const known = <T extends { readonly known: boolean }>(answered: T): Extract<T, { known: true }> =>
  answered as Extract<T, { known: true }>;

/** A fruit by its sugars: an estimate, with its range; none for a food whose sugars these tables do not have. */
function estimatedCurve(choice: Omit<FruitWaterActivityInput, 'moisture'>): Curve | undefined {
  const at = (moisture: number) => {
    const { waterActivity, waterActivityRange: range } = known(fruitWaterActivity({ ...choice, moisture }));
    return { waterActivity, moisture, low: range.low, high: range.high };
  };
  // any moisture in range gives the range; a fifth is in that of every fruit
  const inside = fruitWaterActivity({ ...choice, moisture: 0.2 });
  if (!inside.known) return undefined;
  const { low: driest, high: wettest } = inside.moistureLimits;
  return {
    title: `Moisture and water activity: ${inside.food ?? 'your own fruit'}`,
    subtitle: ['Worked out from its sugars and acids; the band takes in the published pairs. Not a measured isotherm.'],
    points: steps(driest, Math.min(wettest, MOST_SHOWN)).map(at),
    basis: inside.basis,
    cautions: inside.cautions,
    at,
  };
}

/** Wetter fruit is fresh; the part that decides about keeping lies below. */
const MOST_SHOWN = 0.5;

/**
 * Moisture against water activity, with the batch on it and the limits of growth: will it keep at this dryness?
 *
 * For a `food` with a published isotherm, or `parameters` of your own, the curve is `isothermMoisture`; for another
 * fruit, or a `composition`, it is the estimate of `fruitWaterActivity`, its range as a band. The upright lines are the least
 * water activities of `keeps`: of the yeasts and molds that spoil, and of the bacteria that make ill, at any pH and temperature.
 *
 * @returns a Vega-Lite spec
 * @throws StillroomError as those functions; CONTRADICTION for parameters and a composition;
 * MISSING for a food that these tables have neither an isotherm nor the sugars of
 *
 * @example
 * ```ts
 * import { isothermChart } from 'stillroom/charts';
 *
 * const chart = isothermChart({ food: 'kiwifruit', temperature: '30 degC', batch: { moisture: '6 %' } });
 * chart.title.subtitle.at(-1); // => 'The batch at 6 % moisture: water activity 0.31. It keeps: below every published limit of growth.'
 * ```
 */
export function isothermChart(input: IsothermChartInput): ChartSpec<IsothermRow> {
  const { batch } = readInput(schema, input);
  const { food, parameters, model, set, temperature, composition, sugarToFruit, inverted } = input;
  if (parameters !== undefined && composition !== undefined) {
    fail('CONTRADICTION', 'composition', 'a composition', 'either parameters or a composition, not both');
  }
  const worked = composition !== undefined || sugarToFruit !== undefined || inverted !== undefined;
  const published = worked ? undefined : publishedCurve({ food, parameters, model, set, temperature });
  const curve = published ?? estimatedCurve({ food, composition, sugarToFruit, inverted });
  if (curve === undefined) {
    const expected = `its composition: these tables have neither an isotherm nor the sugars of ${food}`;
    fail('MISSING', 'composition', composition, expected);
  }
  const estimated = published === undefined;
  const point = batch === undefined ? undefined : curve.at(batch.moisture);
  const verdict = point === undefined ? undefined : keeps({ waterActivity: expected(point) });
  // the limits are the same whatever the activity is
  const { pathogenGrowth: pathogens, spoilerGrowth: spoilers, basis } = verdict ?? keeps({ waterActivity: 0.5 });
  const limits = [
    { waterActivity: spoilers.limit as number, text: `yeasts, molds\nfrom ${spoilers.limit?.toFixed(2)}` },
    { waterActivity: pathogens.limit as number, text: `harmful bacteria\nfrom ${pathogens.limit?.toFixed(2)}` },
  ];
  const said =
    point === undefined || verdict === undefined
      ? []
      : [
          `${capital(batch?.name ?? 'the batch')} at ${digits(100 * point.moisture, 1)} % moisture: water activity ${activityText(point)}. ${VERDICTS[verdict.verdict]}`,
        ];
  return answer(
    chart({
      title: curve.title,
      subtitle: [...curve.subtitle, ...said],
      description: `${curve.title}. ${said.join(' ')}`.trim(),
      values: curve.points,
      layer: layersOf(estimated, limits, point, batch?.name ?? 'the batch'),
      basis: [behindRows(undefined, curve.basis), standsBehind('layer', basis)],
      cautions: [curve.cautions, verdict?.cautions ?? []],
    }),
  );
}

/** What `keeps` judges: the estimate's own range, or the value, which it gives the uncertainty of a kitchen meter. */
const expected = ({ waterActivity, low, high }: IsothermRow) =>
  low === undefined || high === undefined ? waterActivity : { low, likely: waterActivity, high };

const activityText = ({ waterActivity, low, high }: IsothermRow): string =>
  low === undefined || high === undefined
    ? waterActivity.toFixed(2)
    : `${waterActivity.toFixed(2)} (${low.toFixed(2)} to ${high.toFixed(2)})`;

const VERDICTS = {
  keeps: 'It keeps: below every published limit of growth.',
  'may spoil': 'Yeasts and molds are not excluded: dry it further, or keep it cold.',
  'not shown to be safe': 'Not shown to be safe: measure it, or keep it cold.',
  'not safe': 'Not safe at room temperature: bacteria that make ill may grow.',
} as const;

function layersOf(
  estimated: boolean,
  limits: readonly { waterActivity: number; text: string }[],
  point: IsothermRow | undefined,
  label: string,
): ChartLayer[] {
  const x = {
    field: 'waterActivity',
    type: 'quantitative',
    title: 'water activity (0 to 1)',
    scale: { domain: [0, 1] },
    axis: { format: '.1f', values: Array.from({ length: 11 }, (_, tenth) => tenth / 10) },
  };
  const y = {
    field: 'moisture',
    type: 'quantitative',
    title: 'moisture, wet basis (water in the whole weight)',
    axis: { format: '.0%' },
    scale: { zero: true },
  };
  return [
    ...(estimated
      ? [
          {
            mark: { type: 'area', orient: 'horizontal', color: OKABE_ITO.orange, opacity: 0.35 },
            encoding: { y, x: { ...x, field: 'low' }, x2: { field: 'high' } },
          },
        ]
      : []),
    {
      mark: { type: 'line', orient: 'horizontal', color: OKABE_ITO.blue, strokeWidth: 3 },
      encoding: { x, y, order: { field: 'moisture' } },
    },
    {
      data: { values: limits },
      mark: { type: 'rule', color: OKABE_ITO.vermillion, strokeWidth: 2, strokeDash: [6, 4] },
      encoding: { x },
    },
    {
      data: { values: limits },
      mark: { type: 'text', color: OKABE_ITO.vermillion, align: 'right', dx: -6, lineBreak: '\n' },
      encoding: { x, y: { value: HEIGHT - 28 }, text: { field: 'text' } },
    },
    ...(point === undefined ? [] : batchLayers(point, label, x, y)),
  ];
}

function batchLayers(point: IsothermRow, label: string, x: object, y: object): ChartLayer[] {
  const data = { values: [{ ...point, text: label }] };
  return [
    ...(point.low === undefined
      ? []
      : [
          {
            data,
            mark: { type: 'rule', strokeWidth: 3, color: OKABE_ITO.black },
            encoding: { y, x: { ...x, field: 'low' }, x2: { field: 'high' } },
          },
        ]),
    {
      data,
      mark: { type: 'point', filled: true, size: 130, opacity: 1, color: OKABE_ITO.black },
      encoding: { x, y },
    },
    {
      data,
      mark: { type: 'text', align: 'left', dx: 12, dy: 16, fontWeight: 'bold' },
      encoding: { x, y, text: { field: 'text' } },
    },
  ];
}
