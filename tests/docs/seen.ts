/** Writes docs/sources-seen.md: which documents the heat processes and the recipes rest on, and how each was seen. */
import { writeFileSync } from 'node:fs';
import { processRows } from '../../src/process/tables';
import { sources } from '../../src/sources/index';
import { seenByRecipe } from '../helpers/seenIn';
import { cellsOf, secondChecks } from '../process/witnessing';

export const PAGE = 'docs/sources-seen.md';
const WAYS = {
  original: "The publisher's own file or page.",
  reproduction: 'A copy by others: a scan, a text made from it, or a page that prints it again.',
  citation: 'Not the document, but a work that cites it.',
} as const;
type Way = keyof typeof WAYS;

/** What rests on a document that was seen in one way. */
export interface Resting {
  document: string;
  way: Way;
  /** Rows of the process tables that name it as their source. */
  rows: number;
  /** Process lines of the second reading. */
  second: number;
  /** Recipes that were seen in it. */
  recipes: number;
}

/** Each document and way of seeing it, with what rests on it. */
export function resting(): Resting[] {
  const found = new Map<string, Resting>();
  const add = (document: string, way: string | undefined, kind: 'rows' | 'second' | 'recipes'): void => {
    if (way === undefined || !(way in WAYS)) throw new Error(`${document}: seen ${way}`);
    const key = `${document} ${way}`;
    const entry = found.get(key) ?? { document, way: way as Way, rows: 0, second: 0, recipes: 0 };
    entry[kind] += 1;
    found.set(key, entry);
  };
  for (const { source, seen } of processRows) add(source, seen, 'rows');
  for (const seenIn of seenByRecipe.values()) for (const { document, seen } of seenIn) add(document, seen, 'recipes');
  const register = new Map(sources().map(({ id, seen }) => [id, seen]));
  for (const [row, source, recipe] of linesRead()) {
    const seen = seenByRecipe.get(recipe)?.find(({ document }) => document === source)?.seen ?? register.get(source);
    add(source, seen, 'second');
    if (row === '') throw new Error(`${recipe}: a line of no row`);
  }
  const weight = ({ rows, second, recipes }: Resting): number => rows + second + recipes;
  return [...found.values()].sort((a, b) => weight(b) - weight(a) || (a.document < b.document ? -1 : 1));
}

/** The lines of the second reading: row, document and recipe, each once. */
function linesRead(): [row: string, source: string, recipe: string][] {
  const lines = new Map<string, [string, string, string]>();
  for (const { row, source, input } of secondChecks) {
    lines.set([row, source, input.recipe].join(' '), [row, source, input.recipe]);
  }
  return [...lines.values()];
}

const cell = (count: number): string => (count === 0 ? '' : String(count));

/** The page as it should be. */
export function seenPage(all: readonly Resting[] = resting()): string {
  const works = new Map(sources().map((source) => [source.id, source]));
  const sections = (Object.keys(WAYS) as Way[]).map((way) => {
    const lines = all
      .filter((one) => one.way === way)
      .map(({ document, rows, second, recipes }) => {
        const work = works.get(document);
        if (work === undefined) throw new Error(`no source ${document}`);
        const { title, publisher, year } = work;
        const about = [publisher, year].filter((part) => part !== undefined && part !== null).join(', ');
        return `| ${title} (${about}) | ${cell(rows)} | ${cell(second)} | ${cell(recipes)} |`;
      });
    const head = '| document | process rows | lines of the second reading | recipes |\n| --- | --- | --- | --- |';
    const body = lines.length === 0 ? 'None.' : `${head}\n${lines.join('\n')}`;
    return `## Seen: ${way}\n\n${WAYS[way]}\n\n${body}`;
  });
  const cells = cellsOf(processRows).length;
  return `# What was seen, and how

Written by \`npx tsx tests/docs/seen.ts\`; a test compares it. It counts what rests on each document: rows of the process
tables that name it as their source, process lines that a second, separate reading found in it, and recipes that were seen
in it. A recipe can be seen in several documents.

There are ${processRows.length} process rows with ${cells} figures, one for each jar size and elevation band. Each figure was read twice.
The tables were made from the first reading; its vectors only show that they are served as they are. The second reader
wrote the printed lines down apart from the tables. Cranberry sauce, the rule for jam in jars that are not sterilized,
and the 2015 pages of the pickle guide were read the second time by somebody who knew the first figures.
Where the two readings differ, the longer time or higher pressure is served.

Both readings of the federal guide come from reproductions of one edition. Two readings catch a slip of a reader, not a
misprint of the guide.

${sections.join('\n\n')}
`;
}

if (process.argv[1]?.endsWith('docs/seen.ts') === true)
  writeFileSync(new URL(`../../${PAGE}`, import.meta.url), seenPage());
