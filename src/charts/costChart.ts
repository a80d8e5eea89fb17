import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import type { DayPlan } from '../plan/index';
import type { ProductCost } from '../plan/request/plannedProduct';
import { withPlan } from '../plan/request/withPlan';
import { feasiblePlan } from './allocationChart';
import { behindRows, type ChartLayer, type ChartSpec, capital, chart, OKABE_ITO } from './spec';

export interface CostChartInput {
  /** A feasible answer of `planDay`, made with prices. */
  readonly plan: DayPlan;
}

/** One line of one product's cost. */
export interface CostRow {
  /** Name of the product. */
  readonly name: string;
  /** `food`, the supply (`lids`, `bags`, `sugar`, `acid and pectin` ...), `energy` or `own hours`. */
  readonly what: string;
  /** Money, in the currency of the prices. */
  readonly spent: number;
}

const ROW_HEIGHT = 34;

const { black, blue, bluishGreen, orange, reddishPurple, skyBlue, vermillion, yellow } = OKABE_ITO;
/** What money goes into, each in the same color in every chart. */
const COLOURS: ReadonlyMap<string, string> = new Map([
  ['food', blue],
  ['jars, over their lives', orange],
  ['lids', bluishGreen],
  ['bags', reddishPurple],
  ['sugar', skyBlue],
  ['acid and pectin', yellow],
  ['energy', vermillion],
  ['own hours', black],
]);
/** Small amounts that share a color: eight colors can be told apart. */
const TOGETHER: ReadonlyMap<string, string> = new Map(
  ['bottled lemon juice', 'citric acid', 'pectin'].map((what) => [what, 'acid and pectin']),
);
const KINDS = [...COLOURS.keys()];

/**
 * What each product of a day's plan costs: a bar for each, stacked by what the money goes into: the food itself, jars
 * over their lives, lids, bags, what recipes take from the pantry, energy, own hours.
 *
 * @returns a Vega-Lite spec, in the currency of the prices
 * @throws StillroomError MISSING, CONTRADICTION where there is no feasible plan or it has no prices
 *
 * @example
 * ```ts
 * import { costChart } from 'stillroom/charts';
 * import { planDay } from 'stillroom/plan';
 *
 * const plan = planDay({
 *   lots: [{ food: 'apple', raw: '20 lb', price: '14.00 USD' }],
 *   kitchen: { elevation: '500 m', hours: '6 h', dryer: { trays: 6, trayArea: '200 in2' } },
 *   products: [{ make: 'dried', from: 'apples', packSize: '4 oz' }],
 * });
 * costChart({ plan }).data.values[0]?.what; // => 'food'
 * ```
 */
export function costChart(input: CostChartInput): ChartSpec<CostRow> {
  return withPlan('plan', feasiblePlan(input), (plan) => {
    const { costs: cost } = plan;
    if (cost === undefined) fail('CONTRADICTION', 'plan', input.plan, 'a plan made with prices');
    const lines = (own: ProductCost | undefined) => (own?.lines ?? []).filter(({ cost: amount }) => amount.value > 0);
    const values = plan.products.flatMap(({ name, costs: own }): CostRow[] =>
      lines(own).map(({ what, kind, cost: amount }) => ({
        name: capital(name),
        what: kind === 'food' ? kind : (TOGETHER.get(what) ?? what),
        spent: amount.value,
      })),
    );
    const unit = cost.total.unit;
    const kinds = KINDS.filter((kind) => values.some(({ what }) => what === kind));
    const bars = new Set(values.map(({ name }) => name)).size;
    return answer(
      chart({
        title: 'What the products cost',
        subtitle: [
          ...(plan.invented ? ['An invented example: the prices are made up.'] : []),
          `${cost.total.value.toFixed(2)} ${unit} in all; ${cost.foodLeft.value.toFixed(2)} ${unit} of it is food left fresh, which is not in the bars.`,
        ],
        description: values.map(({ name, what, spent }) => `${name}: ${what} ${spent.toFixed(2)} ${unit}`).join('; '),
        values,
        layer: layersOf(kinds, unit),
        height: Math.max(bars, 2) * ROW_HEIGHT,
        basis: [behindRows('spent', plan.basis)],
        cautions: [plan.cautions],
      }),
    );
  });
}

function layersOf(kinds: readonly string[], unit: string): ChartLayer[] {
  const y = { field: 'name', type: 'nominal', sort: null, title: null, axis: { labelLimit: 260 } };
  return [
    {
      mark: { type: 'bar', stroke: 'white' },
      encoding: {
        y,
        x: { field: 'spent', type: 'quantitative', title: `cost, ${unit}`, stack: 'zero' },
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
      transform: [{ aggregate: [{ op: 'sum', field: 'spent', as: 'total' }], groupby: ['name'] }],
      mark: { type: 'text', align: 'left', dx: 6 },
      encoding: {
        y,
        x: { field: 'total', type: 'quantitative' },
        text: { field: 'total', type: 'quantitative', format: '.2f' },
      },
    },
  ];
}
