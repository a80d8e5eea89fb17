/** Which foods a process is for: those that its page names, and no other. */
import { type ProcessRow, type ScopeRow, scopeRows } from './tables';

/** The line that speaks for these rows: the one for their form and pack before a wider one. */
export function scopeOf(row: Pick<ProcessRow, 'food' | 'form' | 'pack'>): ScopeRow | undefined {
  const speaks = scopeRows.filter(
    ({ food, form, pack }) =>
      food === row.food && (form === undefined || form === row.form) && (pack === undefined || pack === row.pack),
  );
  return speaks.find(({ form }) => form !== undefined) ?? speaks[0];
}

/** The foods that the page of a row names. A process without a scope line is for its own food only. */
export function foodsOf(row: Pick<ProcessRow, 'food' | 'form' | 'pack'>): readonly string[] {
  const scope = scopeOf(row);
  return scope === undefined ? [row.food] : [...scope.foods, ...(scope.madeOf ?? [])];
}

/** Whether the page is for the food as such (a blueberry among the berries), and not for a product made of it. */
export function isItself(row: Pick<ProcessRow, 'food' | 'form' | 'pack'>, food: string): boolean {
  return (scopeOf(row)?.foods ?? [row.food]).includes(food);
}
