/**
 * Lists of what is not yet as it should be. A list may only shrink: nothing new goes on it, and what is mended comes
 * off. `npm run lists` takes off what is mended, and begins a list that is not there.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const root = new URL('../../', import.meta.url).pathname;
/** Set by `npm run lists`. */
const SHRINK = process.env.SHRINK_LISTS === '1';

const read = <T>(file: string): T | undefined =>
  existsSync(root + file) ? (JSON.parse(readFileSync(root + file, 'utf8')) as T) : undefined;
const write = (file: string, content: object): void => {
  const sorted = Object.entries(content).sort(([one], [other]) => (one < other ? -1 : 1));
  writeFileSync(root + file, `${JSON.stringify(Object.fromEntries(sorted), null, 2)}\n`);
};
const section = (title: string, names: readonly string[]): string =>
  names.length === 0 ? '' : `\n${title}\n${names.map((name) => `  ${name}`).join('\n')}`;

/** Names with a reason each, and what was found under them, with how to mend one. */
export interface Listed {
  /** Path of the list from the top of the repository. */
  readonly file: string;
  /** What is not yet right, each with what a reader of the failure needs to see. */
  readonly found: ReadonlyMap<string, string>;
  /** How to mend one. */
  readonly mend: string;
}

/** What is wrong with a list of names; nothing where it names just what was found. */
export function namesReport(listed: Readonly<Record<string, string>>, { file, found, mend }: Listed): string {
  const more = [...found].filter(([name]) => !Object.hasOwn(listed, name)).map(([name, seen]) => `${name}: ${seen}`);
  const mended = Object.keys(listed).filter((name) => !found.has(name));
  const bare = Object.keys(listed).filter((name) => listed[name]?.trim() === '');
  return [
    section(`NEW, and not allowed. ${mend}`, more),
    section(`MENDED: take off ${file} (npm run lists)`, mended),
    section(`WITHOUT A REASON in ${file}`, bare),
  ].join('');
}

/** Fails for a name that is not listed, and for a listed one that is right by now. */
export function expectListed(listing: Listed, reason = 'to be mended'): void {
  const { file, found } = listing;
  let listed = read<Record<string, string>>(file) ?? {};
  if (SHRINK) {
    const begun = existsSync(root + file)
      ? listed
      : Object.fromEntries([...found.keys()].map((name) => [name, reason]));
    listed = Object.fromEntries(Object.entries(begun).filter(([name]) => found.has(name)));
    write(file, listed);
  }
  const report = namesReport(listed, listing);
  if (report !== '') throw new Error(report);
}

/** Things without a name of their own, counted. */
export interface Counted {
  readonly file: string;
  readonly found: ReadonlyMap<string, readonly string[]>;
  readonly mend: string;
}

const MOST_SHOWN = 25;

/** What is wrong with a list of counts; nothing where every count is the real one. */
export function countsReport(listed: Readonly<Record<string, number>>, { file, found, mend }: Counted): string {
  return [...new Set([...found.keys(), ...Object.keys(listed)])]
    .sort()
    .map((name) => {
      const each = found.get(name) ?? [];
      const ceiling = listed[name] ?? 0;
      if (each.length === ceiling) return '';
      if (each.length < ceiling)
        return `\n${name}: ${each.length}, listed ${ceiling}. Lower it in ${file} (npm run lists)`;
      const rest = each.length > MOST_SHOWN ? [`... and ${each.length - MOST_SHOWN} more`] : [];
      return section(`${name}: ${each.length}, at most ${ceiling}. ${mend}`, [...each.slice(0, MOST_SHOWN), ...rest]);
    })
    .join('');
}

/** Fails where there are more than the list says, and where there are fewer. */
export function expectCounts(counting: Counted): void {
  const { file, found } = counting;
  let listed = read<Record<string, number>>(file);
  if (SHRINK) {
    const lower = [...found].map(([name, { length }]) => [
      name,
      Math.min(length, listed?.[name] ?? (listed ? 0 : length)),
    ]);
    listed = Object.fromEntries((lower as [string, number][]).filter(([, count]) => count > 0));
    write(file, listed);
  }
  const report = countsReport(listed ?? {}, counting);
  if (report !== '') throw new Error(report);
}
