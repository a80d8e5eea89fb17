import type { FeasibleDay } from '../plan/request/dayPlan';
import type { PlannedProduct } from '../plan/request/plannedProduct';
import { formatQuantity } from '../quantity/formatQuantity';
import type { Quantity } from '../quantity/types';
import { kilowattHours } from './amounts';
import { bullets, table } from './markdown';

/** What the day costs, by what the money goes into, and what a jar, an ounce and a serving of each product do. */
export function costBlock({ cost, products }: FeasibleDay): string[] {
  if (cost === undefined) return [];
  const { unit } = cost.total;
  const kinds: readonly (readonly [string, number])[] = [
    ['food used', cost.foodUsed.value],
    ['food left fresh', cost.foodLeft.value],
    ['jars over their lives, lids, bags, pantry', cost.supplies.value],
    ['energy', cost.energy.value],
    ['own hours', cost.hands.value],
  ];
  const priced = products.filter(({ cost: own }) => (own?.total.value ?? 0) > 0);
  const energy = energyOf(products);
  return [
    '## What it costs',
    table(
      ['spent on', unit],
      [...kinds.filter(([, amount]) => amount > 0), ['**in all**', cost.total.value] as const].map(([what, amount]) => [
        what,
        amount.toFixed(2),
      ]),
    ),
    ...(priced.length === 0
      ? []
      : [table(['product', `in all, ${unit}`, 'each one promised', 'by weight', 'a serving'], priced.map(rates))]),
    bullets([
      ...(energy === undefined || cost.energy.value === 0
        ? []
        : [`Energy: ${kilowattHours(energy)}; the cost is that of the likely figure.`]),
      ...(priced.some(({ cost: own }) => own?.perNet?.estimated)
        ? ['About: nobody weighed the net weight; a jar of fruit is taken at a kilogram for each liter.']
        : []),
      ...(priced.some(({ cost: own }) => own?.perServing?.customary) ? ['Servings are the customary size.'] : []),
    ]),
  ];
}

function rates({ name, units, cost }: PlannedProduct): string[] {
  if (cost === undefined) return [];
  const { total, perUnit, perNet, perServing } = cost;
  const about = perNet?.estimated ? 'about ' : '';
  const per = perNet?.per.unit === 'oz' ? 'an ounce' : '100 g';
  return [
    `${name.charAt(0).toUpperCase()}${name.slice(1)}`,
    total.value.toFixed(2),
    `${perUnit.high.value.toFixed(2)} a ${units.unit}`,
    perNet === undefined ? '' : `${about}${perNet.amount.high.value.toFixed(2)} ${per}`,
    perServing === undefined ? '' : `${perServing.amount.high.value.toFixed(2)} for ${servingText(perServing.serving)}`,
  ];
}

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
