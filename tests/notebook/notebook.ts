/** A notebook as its file holds it (nbformat 4), what of it is committed, and where two runs of it differ. */
import { readFileSync } from 'node:fs';

type Lines = string | readonly string[];

export interface Output {
  readonly output_type: string;
  /** Of a stream: `stdout` or `stderr`. */
  readonly name?: string;
  readonly text?: Lines;
  /** Of a result: its forms by media type. */
  readonly data?: Readonly<Record<string, unknown>>;
}
export interface Cell {
  readonly cell_type: string;
  readonly id?: string;
  readonly source: Lines;
  readonly metadata: object;
  readonly execution_count?: number | null;
  readonly outputs?: readonly Output[];
}
export interface Notebook {
  readonly cells: readonly Cell[];
  readonly metadata: object;
  readonly nbformat: number;
  readonly nbformat_minor: number;
}

export const readNotebook = (file: string | URL): Notebook => JSON.parse(readFileSync(file, 'utf8')) as Notebook;

export const textOf = (lines: unknown): string => (Array.isArray(lines) ? lines.join('') : String(lines));
const linesOf = (text: string): string[] => text.split(/(?<=\n)/);

/** What was printed in several goes is one text. */
function joined(outputs: readonly Output[]): Output[] {
  const together: Output[] = [];
  for (const output of outputs) {
    const last = together[together.length - 1];
    if (output.output_type === 'stream' && last?.output_type === 'stream' && last.name === output.name) {
      together[together.length - 1] = { ...last, text: linesOf(textOf(last.text) + textOf(output.text)) };
    } else together.push(output);
  }
  return together;
}

/** The notebook as it is committed: nothing in it that another run of the same cells would change. */
export const tidied = ({ cells, nbformat }: Notebook): Notebook => ({
  cells: cells.map(({ cell_type, source, execution_count = null, outputs = [] }, index) => {
    const cell = { cell_type, id: `cell-${index + 1}`, metadata: {}, source: linesOf(textOf(source)) };
    return cell_type === 'code' ? { ...cell, execution_count, outputs: joined(outputs) } : cell;
  }),
  metadata: {
    kernelspec: { display_name: 'Deno', language: 'typescript', name: 'deno' },
    language_info: { file_extension: '.ts', mimetype: 'text/x.typescript', name: 'typescript' },
  },
  nbformat,
  nbformat_minor: 5,
});

/** What a reader sees of a cell: each form of each output by its name, as one text. */
function seen({ outputs = [] }: Cell): Map<string, string> {
  const forms = joined(outputs).flatMap((output, index) => {
    const { output_type, name, text, data, ...rest } = output;
    const named = (form: string, value: unknown) => [`output ${index + 1}, ${form}`, textOf(value)] as const;
    if (text !== undefined) return [named(name ?? output_type, text)];
    if (data !== undefined) return Object.entries(data).map(([form, value]) => named(form, value));
    return [named(output_type, JSON.stringify(rest))];
  });
  return new Map(forms);
}

/** Where a fresh run shows something else than the committed notebook: one text for each difference. */
export function differences(committed: Notebook, fresh: Notebook): string[] {
  if (committed.cells.length !== fresh.cells.length) {
    return [`${committed.cells.length} cells committed, ${fresh.cells.length} run`];
  }
  return committed.cells.flatMap((cell, index) => {
    const [was, is] = [seen(cell), seen(fresh.cells[index] as Cell)];
    return [...new Set([...was.keys(), ...is.keys()])].flatMap((form) => {
      const [old, now] = [was.get(form), is.get(form)];
      return old === now ? [] : [`cell ${index + 1}, ${form}: ${firstDifference(old, now)}`];
    });
  });
}

function firstDifference(old: string | undefined, now: string | undefined): string {
  if (old === undefined) return 'not committed';
  if (now === undefined) return 'no longer shown';
  const [oldLines, newLines] = [old.split('\n'), now.split('\n')];
  const line = oldLines.findIndex((text, index) => text !== newLines[index]);
  const at = line === -1 ? oldLines.length : line;
  return `line ${at + 1}\n  committed: ${oldLines[at] ?? '(none)'}\n  now:       ${newLines[at] ?? '(none)'}`;
}
