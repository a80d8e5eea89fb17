import { inMarkdown } from './escape';
import type { Card, Cell, Front, Line, Row, Section, Sheet } from './sheet';
import { say } from './words';

/** A sheet in Markdown; the table's columns are padded, so that it also reads as plain text. */
export const markdownOf = ({ front, cards, back }: Sheet): string =>
  `${[...frontLines(front), ...cards.flatMap(cardLines), ...back.flatMap(sectionLines)].join('\n').trimEnd()}\n`;

function frontLines({ head, invented, lines, rows, foot }: Front): string[] {
  return [
    `# ${inMarkdown(head.join(say('dot')))}`,
    '',
    ...(invented ? [`*${inMarkdown(say('invented'))}*`, ''] : []),
    ...lines.flatMap((line) => [labelled(line), '']),
    ...(rows.length === 0 ? [] : [table(rows), '']),
    ...foot.flatMap((line) => [labelled(line), '']),
  ];
}

const labelled = ({ label, text }: Line): string =>
  text === '' ? `**${inMarkdown(label)}**` : `**${inMarkdown(label)}** ${inMarkdown(text)}`;

/** The columns that a day has something in. */
export const columnsOf = (rows: readonly Row[]): ('stove' | 'canner' | 'trays')[] =>
  (['stove', 'canner', 'trays'] as const).filter((column) => rows.some((row) => row[column].length > 0));

/** Boxes to tick, each with what tells it apart where there are several. */
export const boxesOf = ({ kind, boxes }: Row): string[] =>
  kind === 'caution' || kind === 'day' || kind === 'break'
    ? []
    : boxes.map((text) => (text === '' ? say('box') : `${say('box')} ${text}`));

/** What goes on beside the hands, with the times it starts. */
export const cellTexts = (cells: readonly Cell[]): string[] =>
  cells.map(({ times, text }) => [times.join(say('comma')), text].filter((part) => part !== '').join(' '));

/** Lines of a timer row: one for each load, with its box and, of several, its time or day. */
export const loadsOf = (row: Row): { box: string; load: string }[] => {
  const boxes = boxesOf(row);
  return row.loads.map((load, index) => ({ box: boxes[index] ?? say('box'), load }));
};

function table(rows: readonly Row[]): string {
  const columns = columnsOf(rows);
  const head = [say('col.time'), say('col.hands'), ...columns.map((column) => say(`col.${column}`))];
  const cells = rows.map((row) => {
    if (row.kind === 'day') return [`**${inMarkdown(row.hands)}**`, '', ...columns.map(() => '')];
    if (row.kind === 'caution')
      return ['', `**${inMarkdown(`${say('alert')} ${row.hands}`)}**`, ...columns.map(() => '')];
    const hands =
      row.kind === 'timer'
        ? loadsOf(row)
            .map(({ box, load }) => [inMarkdown(box), say('timer'), inMarkdown(load)].join(' '))
            .join('<br>')
        : [...boxesOf(row), row.hands]
            .map(inMarkdown)
            .filter((part) => part !== '')
            .join(' ');
    return [
      inMarkdown([row.time, row.letters].filter((part) => part !== '').join(' ')),
      hands,
      ...columns.map((column) => cellTexts(row[column]).map(inMarkdown).join('; ')),
    ];
  });
  return tableOf(head, cells);
}

/** Widest that a column is padded to: a timer line runs on past it. */
const WIDEST = 60;

export function tableOf(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = head.map((_, column) =>
    Math.min(WIDEST, Math.max(3, ...[head, ...rows].map((row) => (row[column] ?? '').length))),
  );
  const line = (row: readonly string[]) =>
    `| ${head.map((_, column) => (row[column] ?? '').padEnd(widths[column] ?? 0)).join(' | ')} |`;
  return [line(head), `|${widths.map((width) => '-'.repeat(width + 2)).join('|')}|`, ...rows.map(line)].join('\n');
}

const cardLines = ({ letter, title, sub, big, lines }: Card): string[] => [
  `## ${inMarkdown([letter, title].join(' '))}${big.length === 0 ? '' : `: ${inMarkdown(big.join(say('dot')))}`}`,
  '',
  inMarkdown(sub),
  '',
  ...lines.flatMap((line) => wrapped(`- ${labelled(line)}`)),
  '',
];

const sectionLines = ({ title, lines }: Section): string[] => [
  `## ${inMarkdown(title)}`,
  '',
  ...lines.flatMap((text) => wrapped(`- ${inMarkdown(text)}`)),
  '',
];

/** A bulleted line, wrapped at the margin of a page on the wall. */
export function wrapped(text: string, width = 120): string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(' ')) {
    if (current !== '' && current.length + word.length + 1 > width) {
      lines.push(current);
      current = `  ${word}`;
    } else current = current === '' ? word : `${current} ${word}`;
  }
  return [...lines, current];
}
