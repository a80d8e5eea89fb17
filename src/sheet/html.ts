import { escapeHtml, inHtml } from './escape';
import { boxesOf, cellTexts, columnsOf, loadsOf } from './markdown';
import type { Card, Front, Line, Row, Section, Sheet } from './sheet';
import { STYLE } from './style';
import { say } from './words';

/** A sheet as one HTML file that needs nothing else: it prints the front on one page, four cards a page, then the back. */
export const htmlOf = ({ title, front, cards, back }: Sheet): string =>
  [
    '<!DOCTYPE html>',
    `<html lang="${say('language')}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeHtml(title)}</title>`,
    `<style>${STYLE}</style>`,
    '</head>',
    '<body>',
    frontOf(front),
    ...(cards.length === 0 ? [] : [`<section class="cards">${cards.map(cardOf).join('\n')}</section>`]),
    ...(back.length === 0 ? [] : [`<section class="back">${back.map(sectionOf).join('\n')}</section>`]),
    '</body>',
    '</html>',
    '',
  ].join('\n');

const labelled = ({ label, text }: Line): string => `<p><b class="label">${inHtml(label)}</b> ${inHtml(text)}</p>`;

function frontOf(front: Front): string {
  const { head, invented, lines, rows, foot } = front;
  const [title = '', ...rest] = head;
  const { size, turns } = layoutOf(front);
  return [
    `<section class="front ${size}">`,
    `<header><h1>${inHtml(title)}</h1> <span>${inHtml(rest.join(say('dot')))}</span></header>`,
    ...(invented ? [`<p class="invented">${inHtml(say('invented'))}</p>`] : []),
    ...lines.map(labelled),
    ...(rows.length === 0 ? [] : [table(rows, turns)]),
    ...(foot.length === 0 ? [] : [`<div class="foot">${foot.map(labelled).join('')}</div>`]),
    '</section>',
  ].join('\n');
}

/** Sizes of type of a front, in points: the page takes the first that its lines fit at. */
const SIZES = [
  ['large', 10],
  ['middle', 9],
  ['small', 8],
  ['less', 7.2],
  ['least', 6.4],
] as const;
/**
 * Points of a page of Letter or A4, whichever is less, what a wide letter takes of the size, and a line with its rule.
 * Lines are counted as if all letters were wide, so a little less than its height is counted for each.
 */
const PAGE = { height: 746, width: 555, letter: 0.55, line: 1.055, rule: 1.09 } as const;
/** Shares of the width that the time and the hands take; the other columns share the rest. */
const WIDE = { time: 0.08, hands: 0.44 } as const;

/** Below this a front of several days takes a page more, and a day begins there. */
const READABLE = 8;

/** How a front is printed: its size of type, and the rows of days that begin a page. */
interface Layout {
  readonly size: string;
  readonly turns: ReadonlySet<Row>;
}

/** The largest type at which a front stands on one page; one of several days rather takes more pages than small type. */
function layoutOf(front: Front): Layout {
  const whole = SIZES.find(([, size]) => linesAt(front, size) <= roomAt(size));
  if (whole !== undefined && whole[1] >= READABLE) return { size: whole[0], turns: new Set() };
  const byDays = SIZES.flatMap(([name, size]): (Layout & { readonly points: number })[] => {
    const turns = turnsAt(front, size);
    return turns === undefined || turns.size === 0 ? [] : [{ size: name, turns, points: size }];
  });
  // as few pages as readable type takes, and then the largest type
  const pages = Math.min(...byDays.filter(({ points }) => points >= READABLE).map(({ turns }) => turns.size));
  const best = byDays.find(({ turns }) => turns.size <= pages) ?? byDays[0];
  return best ?? { size: (whole ?? (SIZES[SIZES.length - 1] as (typeof SIZES)[number]))[0], turns: new Set() };
}

/** Lines of a page. */
const roomAt = (size: number): number => PAGE.height / (PAGE.line * size + PAGE.rule);

/** Lines of the column heads, which every page has. */
const HEADS = 3;

/** The days that begin a page, so that each page holds its days; nothing where one day alone is too long for a page. */
function turnsAt(front: Front, size: number): ReadonlySet<Row> | undefined {
  const room = roomAt(size);
  const turns = new Set<Row>();
  const days = daysOf(front.rows);
  let used = linesAt({ ...front, rows: [], foot: [] }, size);
  for (const [index, day] of days.entries()) {
    const foot = index === days.length - 1 ? front.foot : [];
    const own = linesAt({ ...front, invented: false, lines: [], rows: day, foot }, size) - HEADS;
    if (index > 0 && used + own > room) {
      turns.add(day[0] as Row);
      used = HEADS;
    }
    used += own;
    if (used > room) return undefined;
  }
  return turns;
}

/** The rows of each day; the first day may have no row that names it. */
function daysOf(rows: readonly Row[]): Row[][] {
  const days: Row[][] = [[]];
  for (const row of rows) {
    if (row.kind === 'day' && days.at(-1)?.length !== 0) days.push([]);
    days.at(-1)?.push(row);
  }
  return days;
}

/** How many lines a front takes at a size. */
function linesAt(
  { invented, lines, rows, foot }: Pick<Front, 'invented' | 'lines' | 'rows' | 'foot'>,
  size: number,
): number {
  const letters = (share: number) => (PAGE.width * share) / (PAGE.letter * size);
  const takes = (length: number, share = 1) => Math.max(1, Math.ceil(length / letters(share)));
  const texts = [...lines, ...foot].reduce((sum, { label, text }) => sum + takes(label.length + text.length), 0);
  const columns = columnsOf(rows);
  const column = (1 - WIDE.time - WIDE.hands) / Math.max(1, columns.length);
  const of = (row: Row): number => {
    if (row.kind === 'timer')
      return loadsOf(row).reduce((sum, { box, load }) => sum + takes(box.length + load.length + 8, 1 - WIDE.time), 0);
    if (row.kind !== 'work') return takes(row.hands.length, 1 - WIDE.time);
    const hands = row.hands.length + row.boxes.reduce((sum, box) => sum + box.length + 4, 0);
    const cells = [hands, ...columns.map((each) => cellTexts(row[each]).join('; ').length)];
    return cells.reduce((most, length, index) => {
      if (length === 0) return most;
      const next = cells.findIndex((other, at) => at > index && other > 0);
      const empty = (next < 0 ? cells.length : next) - index - 1;
      return Math.max(most, takes(length, (index === 0 ? WIDE.hands : column) + empty * column));
    }, 1);
  };
  return rows.reduce((sum, row) => sum + of(row), HEADS + Number(invented) + texts);
}

/** Cells of a row, each as wide as the empty ones after it: what is long takes few lines where nothing stands beside it. */
function spread(cells: readonly { readonly open: string; readonly inside: string }[]): string {
  return cells
    .map(({ open, inside }, index) => {
      if (inside === '') return '';
      const next = cells.findIndex((cell, at) => at > index && cell.inside !== '');
      const wide = (next < 0 ? cells.length : next) - index;
      return `<${open}${wide > 1 ? ` colspan="${wide}"` : ''}>${inside}</td>`;
    })
    .join('');
}

function table(rows: readonly Row[], turns: ReadonlySet<Row>): string {
  const columns = columnsOf(rows);
  const span = columns.length + 1;
  const head = [say('col.time'), say('col.hands'), ...columns.map((column) => say(`col.${column}`))];
  const body = rows.map((row) => {
    if (row.kind === 'day')
      return `<tr class="${turns.has(row) ? 'day turn' : 'day'}"><td colspan="${span + 1}">${inHtml(row.hands)}</td></tr>`;
    const time = `<td class="time">${inHtml(row.time)} <b>${inHtml(row.letters)}</b></td>`;
    if (row.kind === 'caution')
      return `<tr class="caution"><td class="time"><b>${inHtml(row.letters)}</b></td><td colspan="${span}">${inHtml(row.hands)}</td></tr>`;
    const tick = (box: string) => `<span class="tick">${inHtml(box)}</span>`;
    if (row.kind === 'timer') {
      const loads = loadsOf(row).map(({ box, load }) => `<div>${tick(box)} ${inHtml(load)}</div>`);
      return `<tr class="timer">${time}<td colspan="${span}">${loads.join('')}</td></tr>`;
    }
    const boxes = boxesOf(row).map(tick).join(' ');
    if (row.kind === 'break') return `<tr class="break">${time}<td colspan="${span}">${inHtml(row.hands)}</td></tr>`;
    const cells = columns.map((column) => ({
      open: `td data-label="${escapeHtml(say(`col.${column}`))}"`,
      inside: cellTexts(row[column]).map(inHtml).join('<br>'),
    }));
    const hands = { open: 'td class="hands"', inside: `${boxes} ${inHtml(row.hands)}` };
    return `<tr>${time}${spread([hands, ...cells])}</tr>`;
  });
  return [
    '<table>',
    `<thead><tr>${head.map((name) => `<th>${inHtml(name)}</th>`).join('')}</tr></thead>`,
    `<tbody>${body.join('\n')}</tbody>`,
    '</table>',
  ].join('\n');
}

/** Letters of a line of a card at its middle size, and the lines that it has room for at each size. */
const CARD = { line: 48, large: 16, middle: 25, small: 29, less: 36 } as const;

/** The size of type that lets a card stand on its quarter of a page. */
function sizeOfCard({ title, sub, big, lines }: Card): string {
  const texts = [title, sub, ...lines.map(({ label, text }) => `${label} ${text}`)];
  const count = texts.reduce((sum, text) => sum + Math.ceil(text.length / CARD.line), 2 * Math.min(1, big.length));
  if (count <= CARD.large) return 'large';
  if (count <= CARD.middle) return 'middle';
  return count <= CARD.small ? 'small' : count <= CARD.less ? 'less' : 'least';
}

const cardOf = (card: Card): string => {
  const { letter, title, sub, big, lines } = card;
  return [
    `<article class="card ${sizeOfCard(card)}">`,
    `<h2><span class="letter">${inHtml(letter)}</span> ${inHtml(title)}</h2>`,
    ...(big.length === 0
      ? []
      : [`<p class="big">${big.map((figure) => `<span>${inHtml(figure)}</span>`).join(' ')}</p>`]),
    `<p class="sub">${inHtml(sub)}</p>`,
    ...lines.map(labelled),
    '</article>',
  ].join('\n');
};

const sectionOf = ({ title, lines }: Section): string =>
  `<h2>${inHtml(title)}</h2>\n<ul>${lines.map((line) => `<li>${inHtml(line)}</li>`).join('\n')}</ul>`;
