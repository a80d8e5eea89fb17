/** Which foods a process is for: those that its page names, and no other. All are ids of the pantry. */
import { type ProcessRow, type ScopeRow, scopeRows } from './tables';

type Line = Pick<ProcessRow, 'food' | 'form' | 'pack'>;

function findScope(row: Line): ScopeRow | undefined {
  const speaks = scopeRows.filter(
    ({ food, form, pack }) =>
      food === row.food && (form === undefined || form === row.form) && (pack === undefined || pack === row.pack),
  );
  return speaks.find(({ form }) => form !== undefined) ?? speaks[0];
}

const scopes = new WeakMap<Line, ScopeRow | undefined>();
/** The line that speaks for a row: the one for its form before that for every form. */
export function scopeOf(row: Line): ScopeRow | undefined {
  if (!scopes.has(row)) scopes.set(row, findScope(row));
  return scopes.get(row);
}

/** The foods that the page of a row names. A process without a scope line is for the food of its row only. */
export function foodsOf(row: Line): readonly string[] {
  const scope = scopeOf(row);
  return scope === undefined ? [row.food] : [...scope.foods, ...(scope.madeOf ?? [])];
}

/** Whether the page is for the food as such (a blueberry among the berries), and not for a product made of it. */
export function isItself(row: Line, food: string): boolean {
  return (scopeOf(row)?.foods ?? [row.food]).includes(food);
}
