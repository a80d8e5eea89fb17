/** An amount of a recipe as its page prints it. */
import type { IngredientRow } from '../../recipes/rows/tables';

/** An amount as the page prints it, with what it is for; empty where it prints none. */
export function printedAmount(line: IngredientRow): string {
  const { amount, most, count, counted } = line;
  const measured = most === undefined ? amount : `${amount} to ${most}`;
  const much = measured ?? `${count ?? ''} ${counted ?? ''}`.trim();
  if (much === '') return '';
  if (line.per === undefined) return `${much} in one batch`;
  if (line.per.of === 'pot') return `${much} to a pot of ${line.per.amount}`;
  return `${much} to ${line.per.amount} ${OF[line.per.of]}`;
}
const OF = { raw: 'as bought', ready: 'prepared', juice: 'of juice', liquid: 'of liquid', water: 'of water' } as const;
