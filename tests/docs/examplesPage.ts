/**
 * Writes docs/examples.md: each example under its question, with what it prints against the built package.
 *
 *   npm run build:js && npx tsx tests/docs/examplesPage.ts            writes the page
 *   npm run build:js && npx tsx tests/docs/examplesPage.ts --check    fails where the page is not what the programs print
 */
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';

export const PAGE = 'docs/examples.md';
const root = new URL('../../', import.meta.url).pathname;

/** The short programs, in the order of a day; the first line of each is its question and its scenario. */
export const QUESTIONS = [
  'jars-from-a-bushel',
  'is-my-books-time-right-up-here',
  'may-this-salsa-be-canned',
  'sugar-for-a-tasted-sample',
  'how-far-to-cook-down',
  'brine-from-weights',
  'when-is-this-tray-done',
  'will-it-keep',
  'what-fits-the-freeze-dryer',
  'ice-and-time-to-blanch',
  'what-did-this-jar-cost',
  'what-went-wrong-with-this-batch',
] as const;

interface Command {
  readonly name: string;
  readonly question: string;
  /** What stands after its name, where it does not run without. */
  readonly options?: readonly string[];
}

/** The programs that read a cook's own files, in the order of a season. */
export const COMMANDS: readonly Command[] = [
  { name: 'plan-a-day', question: 'What shall I make of all this today?' },
  { name: 'record-a-batch', question: 'How do I keep a record of what I made?' },
  { name: 'print-labels', question: 'What goes on the label?' },
  { name: 'learn-from-records', question: 'What do my own weighings teach?' },
  { name: 'plan-record-learn', question: 'How does one day help to plan the next?' },
  { name: 'call', question: 'How does a program in another language ask?', options: ['--help'] },
];

/** Every program with its options. */
export const PROGRAMS: readonly (readonly [name: string, options: readonly string[]])[] = [
  ...QUESTIONS.map((name) => [name, []] as const),
  ...COMMANDS.map(({ name, options = [] }) => [name, options] as const),
];

/** More lines than these are cut. */
const MOST_LINES = 80;
const FIRST_LINE = /^\/\*\* (?<question>.*\?) Invented: (?<scenario>.*)\.? \*\/$/;

/** A program as its file has it. */
export const programOf = (name: string): string => readFileSync(`${root}examples/${name}.mjs`, 'utf8');

/** The question and the scenario in the first line of a program. */
export function headOf(name: string, program: string = programOf(name)): { question: string; scenario: string } {
  const found = FIRST_LINE.exec(program.split('\n')[0] ?? '')?.groups;
  const { question, scenario } = found ?? {};
  if (question === undefined || scenario === undefined)
    throw new Error(`${name}: write its first line as /** A question? Invented: the scenario. */`);
  return { question, scenario };
}

const fence = (language: string, text: string): string => `\`\`\`${language}\n${text.trimEnd()}\n\`\`\``;

function cut(printed: string): string {
  const lines = printed.trimEnd().split('\n');
  if (lines.length <= MOST_LINES) return lines.join('\n');
  return [...lines.slice(0, MOST_LINES), '', `(and ${lines.length - MOST_LINES} more lines)`].join('\n');
}

const anchorOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\w\- ]/g, '')
    .replace(/ /g, '-');

/** The page, from what each program prints. */
export function examplesPage(printed: ReadonlyMap<string, string>): string {
  const outputOf = (name: string): string => {
    const text = printed.get(name);
    if (text === undefined) throw new Error(`${name} was not run`);
    return text;
  };
  const line = (question: string, name: string): string => `- [${question}](#${anchorOf(question)}) \`${name}.mjs\``;
  const short = QUESTIONS.map((name) => {
    const { question } = headOf(name);
    const program = fence('javascript', programOf(name));
    const head = `### ${question}\n\n[examples/${name}.mjs](../examples/${name}.mjs)`;
    return `${head}\n\n${program}\n\nIt prints:\n\n${fence('text', outputOf(name))}`;
  });
  const long = COMMANDS.map(({ name, question, options = [] }) => {
    const head = `### ${question}\n\n[examples/${name}.mjs](../examples/${name}.mjs) reads files; \`--help\` says which.`;
    return `${head}\n\n${fence('sh', ['node', `examples/${name}.mjs`, ...options].join(' '))}\n\n${fence('text', cut(outputOf(name)))}`;
  });
  return `# Examples by question

Each program answers one question, in the order of a day. All scenarios are invented; the figures come from the tables.
Build the package once with \`npm ci && npm run build:js\`, then run a program with \`node examples/NAME.mjs\`. The short
ones import nothing but the package, so you can start your own from one.

## Index

One question, one short program:

${QUESTIONS.map((name) => line(headOf(name).question, name)).join('\n')}

With files of your own, without code:

${COMMANDS.map(({ name, question }) => line(question, name)).join('\n')}

## One question, one program

${short.join('\n\n')}

## With files of your own

${long.join('\n\n')}
`;
}

/** What every program prints against the built package. */
function printedByAll(): Map<string, string> {
  const print = (name: string, options: readonly string[]): string =>
    execFileSync('node', [`examples/${name}.mjs`, ...options], { cwd: root, encoding: 'utf8' });
  return new Map(PROGRAMS.map(([name, options]) => [name, print(name, options)]));
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  const page = examplesPage(printedByAll());
  if (!process.argv.includes('--check')) writeFileSync(root + PAGE, page);
  else if (readFileSync(root + PAGE, 'utf8') !== page) {
    console.error(`${PAGE} is not what the programs print: npx tsx tests/docs/examplesPage.ts`);
    process.exitCode = 1;
  }
}
