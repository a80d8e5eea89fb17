/** What the reader has picked to see. */
import type { Entry } from './entries';
import type { Proof } from './proof';

/** The pickers, by the id of their element. */
export const PICKERS = ['module', 'function', 'kind', 'source', 'show'] as const;
export type Picked = Readonly<Record<(typeof PICKERS)[number] | 'words', string>>;

const SHOWN: Readonly<Record<string, (entry: Entry) => boolean>> = {
  differ: ({ outcome }) => outcome?.comparisons.some(({ difference }) => (difference ?? 0) !== 0) ?? false,
  outside: ({ outcome }) => outcome?.passed === false,
  changed: (entry) => 'changed' in entry,
};

/** Whether a picker of what was computed is on: its list is whole when all is computed. */
export const waits = ({ show }: Picked): boolean => show !== '';

export function pick(entries: readonly Entry[], picked: Picked): Entry[] {
  const words = picked.words.toLowerCase().split(/\s+/).filter(Boolean);
  const shown = SHOWN[picked.show] ?? (() => true);
  return entries.filter((entry) => {
    const { check, module } = entry;
    if (picked.module !== '' && module !== picked.module) return false;
    if (picked.function !== '' && check.call !== picked.function) return false;
    if (picked.kind !== '' && check.group !== picked.kind) return false;
    if (picked.source !== '' && !check.sources.includes(picked.source)) return false;
    const text = words.length === 0 ? '' : `${check.id} ${check.call} ${check.locator ?? ''}`.toLowerCase();
    return words.every((word) => text.includes(word)) && shown(entry);
  });
}

/** The choices of a picker, each with how many checks it has. */
export function choicesOf(entries: readonly Entry[], of: (entry: Entry) => readonly string[]): [string, number][] {
  const counts = new Map<string, number>();
  for (const entry of entries) for (const name of of(entry)) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].sort(([a], [b]) => a.localeCompare(b));
}

/** What each picker but `show` picks by. */
export const pickedBy = {
  module: (entry: Entry) => [entry.module],
  function: (entry: Entry) => [entry.check.call],
  kind: (entry: Entry) => [entry.check.group],
  source: (entry: Entry) => entry.check.sources,
} as const;

export const titleOf = ({ titles }: Proof, source: string): string => titles[source] ?? source;
