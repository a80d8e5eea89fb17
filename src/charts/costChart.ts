import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { withPlan } from '../plan/answer/withPlan';
import type { DayPlan } from '../plan/index';
import type { ProductCost } from '../plan/request/plannedProduct';
import { feasiblePlan } from './allocationChart';
import { type ChartLayer, type ChartSpec, capital, chart, OKABE_ITO } from './spec';

export interface CostChartInput {
  /** A feasible answer of `planDay`, made with prices. */
  readonly plan: DayPlan;
}

/** One line of one product's cost. */
export interface CostRow {
  readonly product: string;
  /** `produce`, the supply (`lids`, `bags`, `sugar`, `acid and pectin` ...), `energy` or `own hours`. */
  readonly what: string;
  readonly amount: number;
}

const ROW_HEIGHT = 34;

const { black, blue, bluishGreen, orange, reddishPurple, skyBlue, vermillion, yellow } = OKABE_ITO;
/** What money goes into, each in a colour of its own that it keeps in every chart. */
const COLOURS: ReadonlyMap<string, string> = new Map([
  ['produce', blue],
  ['jars, over their lives', orange],
  ['lids', bluishGreen],
  ['bags', reddishPurple],
  ['sugar', skyBlue],
  ['acid and pectin', yellow],
  ['energy', vermillion],
  ['own hours', black],
]);
/** Small amounts that share a colour, for there are eight that stay apart. */
const TOGETHER: ReadonlyMap<string, string> = new Map(
  ['bottled lemon juice', 'citric acid', 'pectin'].map((what) => [what, 'acid and pectin']),
);
const KINDS = [...COLOURS.keys()];

/**
 * What each product of a day's plan costs: a bar for each, stacked by what the money goes into: produce of all lots, jars
 * over their lives, lids, bags, what recipes take from the pantry, energy, own hours.
 *
 * @param input - `plan`: a feasible answer of `planDay`, made with prices
 * @returns a Vega-Lite spec, in the currency of the prices
 * @throws StillroomError MISSING, CONTRADICTION where there is no feasible plan or it has no prices
 *
 * @example
 * ```ts
 * import { costChart } from 'stillroom/charts';
 * import { planDay } from 'stillroom/plan';
 *
 * const plan = planDay({
 *   lots: [{ produce: 'apple', raw: '20 lb', price: '14.00 USD' }],
 *   kitchen: { elevation: '500 m', hours: '6 h', dryer: { trays: 6, trayArea: '200 in2' } },
 *   products: [{ make: 'dried', from: 'apples', size: '4 oz' }],
 * });
 * costChart({ plan }).data.values[0]?.what; // => 'produce'
 * ```
 */
export function costChart(input: CostChartInput): ChartSpec<CostRow> {
  return withPlan('plan', feasiblePlan(input), (plan) => {
    const { cost } = plan;
    if (cost === undefined) fail('CONTRADICTION', 'plan', input.plan, 'a plan made with prices');
    const lines = (own: ProductCost | undefined) => (own?.lines ?? []).filter(({ amount }) => amount.value > 0);
    const values = plan.products.flatMap(({ name, cost: own }): CostRow[] =>
      lines(own).map(({ what, of, amount }) => ({
        product: capital(name),
        what: of === 'produce' ? of : (TOGETHER.get(what) ?? what),
        amount: amount.value,
      })),
    );
    const unit = cost.total.unit;
    const kinds = KINDS.filter((kind) => values.some(({ what }) => what === kind));
    const bars = new Set(values.map(({ product }) => product)).size;
    return answer(
      chart({
        title: 'What the products cost',
        subtitle: [
          ...(plan.invented ? ['An invented example: the prices are made up.'] : []),
          `${cost.total.value.toFixed(2)} ${unit} in all; ${cost.produceLeft.value.toFixed(2)} ${unit} of it is produce left fresh, which is not in the bars.`,
        ],
        description: values
          .map(({ product, what, amount }) => `${product}: ${what} ${amount.toFixed(2)} ${unit}`)
          .join('; '),
        values,
        layer: layersOf(kinds, unit),
        height: Math.max(bars, 2) * ROW_HEIGHT,
        basis: [plan.basis],
        cautions: [plan.cautions],
      }),
    );
  });
}

function layersOf(kinds: readonly string[], unit: string): ChartLayer[] {
  const y = { field: 'product', type: 'nominal', sort: null, title: null, axis: { labelLimit: 260 } };
  return [
    {
      mark: { type: 'bar', stroke: 'white' },
      encoding: {
        y,
        x: { field: 'amount', type: 'quantitative', title: `cost, ${unit}`, stack: 'zero' },
        color: {
          field: 'what',
          type: 'nominal',
          title: 'spent on',
          scale: { domain: kinds, range: kinds.map((kind) => COLOURS.get(kind)) },
          legend: { orient: 'bottom' },
        },
      },
    },
    {
      transform: [{ aggregate: [{ op: 'sum', field: 'amount', as: 'total' }], groupby: ['product'] }],
      mark: { type: 'text', align: 'left', dx: 6 },
      encoding: {
        y,
        x: { field: 'total', type: 'quantitative' },
        text: { field: 'total', type: 'quantitative', format: '.2f' },
      },
    },
  ];
}
