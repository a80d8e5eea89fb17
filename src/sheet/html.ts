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

function frontOf({ head, invented, lines, rows, foot }: Front): string {
  const [title = '', ...rest] = head;
  return [
    `<section class="front ${sizeOf(rows)}">`,
    `<header><h1>${inHtml(title)}</h1> <span>${inHtml(rest.join(say('dot')))}</span></header>`,
    ...(invented ? [`<p class="invented">${inHtml(say('invented'))}</p>`] : []),
    ...lines.map(labelled),
    ...(rows.length === 0 ? [] : [table(rows)]),
    ...(foot.length === 0 ? [] : [`<div class="foot">${foot.map(labelled).join('')}</div>`]),
    '</section>',
  ].join('\n');
}

/** Letters of a line in a column of hands, and of one right across, at the middle size. */
const ACROSS = { hands: 42, cell: 20, all: 100 } as const;

/** The size of type that lets the rows of a front stand on one page. */
function sizeOf(rows: readonly Row[]): string {
  const lines = rows.reduce((sum, row) => {
    if (row.kind === 'timer')
      return (
        sum + loadsOf(row).reduce((all, { box, load }) => all + Math.ceil((box.length + load.length) / ACROSS.all), 0)
      );
    if (row.kind !== 'work') return sum + Math.ceil(row.hands.length / ACROSS.all);
    const hands = row.hands.length + (row.boxes.length > 1 ? 8 * row.boxes.length : 0);
    const cells = [row.stove, row.canner, row.trays].map((cell) => cellTexts(cell).join('; ').length);
    return (
      sum + Math.max(1, Math.ceil(hands / ACROSS.hands), ...cells.map((length) => Math.ceil(length / ACROSS.cell)))
    );
  }, 0);
  return lines <= 30 ? 'large' : lines <= 42 ? 'middle' : lines <= 60 ? 'small' : 'least';
}

function table(rows: readonly Row[]): string {
  const columns = columnsOf(rows);
  const span = columns.length + 1;
  const head = [say('col.time'), say('col.hands'), ...columns.map((column) => say(`col.${column}`))];
  const body = rows.map((row) => {
    if (row.kind === 'day') return `<tr class="day"><td colspan="${span + 1}">${inHtml(row.hands)}</td></tr>`;
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
    const cells = columns.map(
      (column) =>
        `<td data-label="${escapeHtml(say(`col.${column}`))}">${cellTexts(row[column]).map(inHtml).join('<br>')}</td>`,
    );
    return `<tr>${time}<td class="hands">${boxes} ${inHtml(row.hands)}</td>${cells.join('')}</tr>`;
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
