import type { FeasibleDay } from '../plan/request/dayPlan';
import type { PlannedProduct } from '../plan/request/plannedProduct';
import { formatQuantity } from '../quantity/formatQuantity';
import type { Money, Quantity, Range } from '../quantity/types';
import { kilowattHours, price } from './amounts';
import { letter } from './clock';
import type { Section } from './sheet';
import { say, type Text } from './words';

/** What the day costs, by what the money goes into, and what a jar, an ounce and a serving of each product do. */
export function costsOf({ costs: cost, products }: FeasibleDay): Section[] {
  if (cost === undefined) return [];
  const kinds: readonly (readonly [Text, number])[] = [
    ['cost.food', cost.foodUsed.value],
    ['cost.left', cost.foodLeft.value],
    ['cost.kept', cost.foodKeptFresh.value],
    ['cost.bad', cost.foodNotSound.value],
    ['cost.supplies', cost.supplies.value],
    ['cost.energy', cost.energyCost.value],
    ['cost.hands', cost.handsCost.value],
  ];
  const parts = kinds
    .filter(([, amount]) => amount > 0)
    .map(([code, amount]) => say(code, { amount: amount.toFixed(2) }));
  const energy = energyOf(products);
  return [
    {
      title: say('back.costs'),
      lines: [
        say('cost.total', {
          total: price(cost.total),
          range: rangeOf(cost.totalRange),
          parts: parts.join(say('comma')),
        }),
        ...products.flatMap((product, index) => each(product, letter(index))),
        ...(energy === undefined || cost.energyCost.value === 0
          ? []
          : [say('cost.kwh', { energy: kilowattHours(energy) })]),
        ...(cost.notPriced.length === 0 ? [] : [say('cost.none', { names: cost.notPriced.join(say('comma')) })]),
      ],
    },
  ];
}

/** From and to, where they are not the same. */
function rangeOf({ low, high }: Range<Money>): string {
  const [from, to] = [low.value.toFixed(2), high.value.toFixed(2)];
  return from === to ? '' : say('cost.range', { low: from, high: to });
}

/** One of a product: at the likely count, and from all that may come to what you can count on. */
function each({ units, costs: cost }: PlannedProduct, of: string): string[] {
  if (cost === undefined || !(cost.total.value > 0)) return [];
  const { perUnit, perNet, perServing } = cost;
  const money = (value: number) => value.toFixed(2);
  const same = perNet !== undefined && perServing !== undefined && isSame(perNet.netMass, perServing.serving);
  const net =
    perNet === undefined || same
      ? ''
      : say('cost.net', {
          about: perNet.estimated ? say('cost.about') : '',
          amount: money(perNet.cost.likely.value),
          per: formatQuantity(perNet.netMass),
        });
  const serving =
    perServing === undefined || perServing.cost.likely.value < WORTH_SAYING
      ? ''
      : say('cost.serving', {
          amount: money(perServing.cost.likely.value),
          serving: servingText(perServing.serving),
        });
  return [
    say('cost.each', {
      letter: of,
      unit: units.unit,
      likely: money(perUnit.likely.value),
      range: rangeOf(perUnit),
      net,
      serving,
    }),
  ];
}

/** Less than this is a pinch: its cost is noise. */
const WORTH_SAYING = 0.02;
const isSame = (one: { unit: string; value: number }, other: { unit: string; value: number }): boolean =>
  one.unit === other.unit && one.value === other.value;

/** A serving as it was asked about: in kitchen fractions where it is one. */
const servingText = (serving: Quantity<'mass'> | Quantity<'volume'>): string =>
  formatQuantity(serving, Number.isInteger(8 * serving.value) ? { fraction: 8 } : { step: 0.01 });

/** What all products take together; nothing where none takes any. */
function energyOf(products: readonly PlannedProduct[]): PlannedProduct['energy'] {
  const taken = products.flatMap(({ energy }) => (energy === undefined ? [] : [energy]));
  if (taken.length === 0) return undefined;
  const sum = (end: 'low' | 'likely' | 'high'): Quantity<'energy'> => ({
    value: taken.reduce((total, range) => total + range[end].value, 0),
    unit: 'kWh',
  });
  return { low: sum('low'), likely: sum('likely'), high: sum('high') };
}
