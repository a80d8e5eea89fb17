import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import type { DayPlan, FeasibleDay, LotShare } from '../plan/index';
import { withPlan } from '../plan/request/withPlan';
import { formatQuantity } from '../quantity/formatQuantity';
import { valueIn } from '../quantity/scale';
import type { Unit } from '../quantity/units';
import { behindRows, type ChartLayer, type ChartSpec, capital, chart, coloursFor } from './spec';

export interface AllocationChartInput {
  /** A feasible answer of `planDay`. */
  readonly plan: DayPlan;
}

/** What goes from one lot into one product; or is left fresh. */
export interface AllocationRow {
  /** Name of the product, or `Left fresh`. */
  readonly name: string;
  /** Name of the lot. */
  readonly lot: string;
  /** Raw mass in the unit of the chart; for a product of trimmings, the trimmings. */
  readonly weighs: number;
}

const ROW_HEIGHT = 34;
const LEFT_FRESH = 'left fresh';

/** The plan of a chart's argument, which must be feasible. */
export function feasiblePlan(input: { readonly plan: DayPlan }): FeasibleDay {
  const plan: unknown = (input as { plan?: unknown } | undefined | null)?.plan;
  if (plan === undefined) fail('MISSING', 'plan', plan, 'an answer of planDay');
  const { feasible, products } = (plan ?? {}) as Partial<FeasibleDay>;
  if (feasible === true && Array.isArray(products)) return plan as FeasibleDay;
  fail('CONTRADICTION', 'plan', plan, 'a feasible answer of planDay');
}

/**
 * How a day's plan shares out the lots: a bar for each product and for what is left fresh, stacked by lot.
 *
 * @returns a Vega-Lite spec; weights in the unit of the first lot
 * @throws StillroomError MISSING, CONTRADICTION where there is no feasible plan
 *
 * @example
 * ```ts
 * import { allocationChart } from 'stillroom/charts';
 * import { planDay } from 'stillroom/plan';
 *
 * const plan = planDay({
 *   lots: [{ food: 'apple', raw: '20 lb' }],
 *   kitchen: { elevation: '500 m', hours: '6 h', dryer: { trays: 6, trayArea: '200 in2' } },
 *   products: [{ make: 'dried', from: 'apples', packSize: '4 oz' }],
 * });
 * allocationChart({ plan }).data.values[0]?.name; // => 'Apple slices, dried'
 * ```
 */
export function allocationChart(input: AllocationChartInput): ChartSpec<AllocationRow> {
  return withPlan('plan', feasiblePlan(input), (plan) => {
    const unit: Unit<'mass'> = plan.products[0]?.raw.unit ?? plan.leftFresh[0]?.raw.unit ?? 'kg';
    const shares = (name: string, from: readonly LotShare[]): AllocationRow[] =>
      from.map(({ lot, raw }) => ({ name, lot, weighs: valueIn(raw, unit) }));
    const values = [
      ...plan.products.flatMap(({ name, fromLots: from }) => shares(capital(name), from)),
      ...shares(capital(LEFT_FRESH), plan.leftFresh),
    ];
    const lots = [...new Set(values.map(({ lot }) => lot))];
    const bars = new Set(values.map(({ name }) => name)).size;
    const trimmings = plan.products.some((product) => product.trimmings === undefined);
    return answer(
      chart({
        title: 'What the lots become',
        subtitle: [
          ...(plan.invented ? ['An invented example.'] : []),
          `Raw weight of each lot in each product${trimmings ? '; powder, vinegar and jelly stock are made of trimmings, which count a second time' : ''}.`,
        ],
        description: values.map(({ name, lot, weighs }) => `${name}: ${weightText(weighs, unit)} of ${lot}`).join('; '),
        values,
        layer: layersOf(lots, unit),
        height: Math.max(bars, 2) * ROW_HEIGHT,
        basis: [behindRows('weighs', plan.basis)],
        cautions: [plan.cautions],
      }),
    );
  });
}

const weightText = (value: number, unit: Unit<'mass'>): string =>
  formatQuantity({ value, unit }, { step: value < 10 ? 0.1 : 1 });

function layersOf(lots: readonly string[], unit: string): ChartLayer[] {
  const y = { field: 'name', type: 'nominal', sort: null, title: null, axis: { labelLimit: 260 } };
  return [
    {
      mark: { type: 'bar', stroke: 'white' },
      encoding: {
        y,
        x: { field: 'weighs', type: 'quantitative', title: `raw weight, ${unit}`, stack: 'zero' },
        color: {
          field: 'lot',
          type: 'nominal',
          title: 'lot',
          scale: { domain: lots, range: coloursFor(lots.length) },
          legend: { orient: 'bottom', columns: 2 },
        },
      },
    },
    {
      transform: [{ aggregate: [{ op: 'sum', field: 'weighs', as: 'total' }], groupby: ['name'] }],
      mark: { type: 'text', align: 'left', dx: 6 },
      encoding: {
        y,
        x: { field: 'total', type: 'quantitative' },
        text: { field: 'total', type: 'quantitative', format: '.1f' },
      },
    },
  ];
}
