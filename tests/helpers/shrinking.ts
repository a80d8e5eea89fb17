/** Lists of what is not yet as it should be. A list may only shrink: nothing new goes on it, and what is mended comes off. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { expect } from 'vitest';

const root = new URL('../../', import.meta.url).pathname;
/** Set by `npm run lists`: what is mended is taken off the lists, and a list that is not there is begun. */
const SHRINK = process.env.SHRINK_LISTS === '1';

const read = <T>(file: string): T | undefined =>
  existsSync(root + file) ? (JSON.parse(readFileSync(root + file, 'utf8')) as T) : undefined;
const write = (file: string, content: unknown): void =>
  writeFileSync(root + file, `${JSON.stringify(content, null, 2)}\n`);
const byName = ([one]: [string, unknown], [other]: [string, unknown]): number => (one < other ? -1 : 1);
const lines = (title: string, names: readonly string[]): string =>
  names.length === 0 ? '' : `\n${title}\n${names.map((name) => `  ${name}`).join('\n')}`;

/** What a test found, against its list. */
export interface Shrinking {
  /** Path of the list from the top of the repository. */
  readonly file: string;
  /** What is not yet right, each with what a reader of the failure needs to see. */
  readonly found: ReadonlyMap<string, string>;
  /** How to mend one. */
  readonly mend: string;
}

/** The reason a list gives at its beginning. */
export const TO_MEND = 'to be mended';

/** Names with a reason each: fails for a name that is not listed, and for a listed one that is right by now. */
export function expectListed({ file, found, mend }: Shrinking, reason = TO_MEND): void {
  const known = read<Record<string, string>>(file);
  if (SHRINK) {
    const kept = known ?? Object.fromEntries([...found.keys()].map((name) => [name, reason]));
    write(
      file,
      Object.fromEntries(
        Object.entries(kept)
          .filter(([name]) => found.has(name))
          .sort(byName),
      ),
    );
  }
  const listed = SHRINK ? (read<Record<string, string>>(file) ?? {}) : (known ?? {});
  const more = [...found].filter(([name]) => !Object.hasOwn(listed, name)).map(([name, seen]) => `${name}: ${seen}`);
  const mended = Object.keys(listed).filter((name) => !found.has(name));
  const report =
    lines(`NEW, and not allowed. ${mend}`, more) + lines(`MENDED: take off ${file} (npm run lists)`, mended);
  expect(report, report).toBe('');
  expect(Object.keys(listed).filter((name) => !listed[name]?.trim())).toEqual([]);
}

/** Counts: fails where there are more than the list says, and where there are fewer. */
export function expectCounts(
  { file, found, mend }: { file: string; found: ReadonlyMap<string, readonly string[]>; mend: string },
  most = 25,
): void {
  const known = read<Record<string, number>>(file);
  const numbers = new Map([...found].map(([name, each]) => [name, each.length]));
  if (SHRINK) {
    const lower = [...numbers].map(([name, now]) => [
      name,
      Math.min(now, known === undefined ? now : (known[name] ?? 0)),
    ]);
    write(file, Object.fromEntries((lower as [string, number][]).filter(([, now]) => now > 0).sort(byName)));
  }
  const listed = SHRINK ? (read<Record<string, number>>(file) ?? {}) : (known ?? {});
  const reports = [...new Set([...numbers.keys(), ...Object.keys(listed)])].sort().flatMap((name) => {
    const now = numbers.get(name) ?? 0;
    const ceiling = listed[name] ?? 0;
    if (now === ceiling) return [];
    if (now < ceiling) return [`\n${name}: ${now}, listed ${ceiling}. Lower it in ${file} (npm run lists)`];
    const each = found.get(name) ?? [];
    const rest = each.length > most ? [`... and ${each.length - most} more`] : [];
    return [lines(`${name}: ${now}, at most ${ceiling}. ${mend}`, [...each.slice(0, most), ...rest])];
  });
  expect(reports.join(''), reports.join('')).toBe('');
}
