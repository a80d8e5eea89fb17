import { MARK } from './words';

/** Characters that Markdown or HTML would read as more than themselves. */
const SPECIAL: ReadonlyMap<string, string> = new Map([
  ['\\', '\\\\'],
  ['`', '\\`'],
  ['*', '\\*'],
  ['_', '\\_'],
  ['[', '\\['],
  [']', '\\]'],
  ['#', '\\#'],
  ['~', '\\~'],
  ['|', '/'],
  ['<', '&lt;'],
  ['>', '&gt;'],
]);

/** A text on one line, without control characters, marks of direction, or the private characters that the sheet uses. */
export const oneLine = (text: string): string =>
  text
    .replace(/[\p{Co}\p{Cf}]/gu, '')
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .trim();

/** The same of every text in a plan: names are the caller's own words. */
export function oneLines<T>(value: T): T {
  if (typeof value === 'string') return oneLine(value) as T;
  if (Array.isArray(value)) return value.map((item) => oneLines(item)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, oneLines(inner)])) as T;
}

/** A text as a Markdown page shows it and nothing more: no markup, no link, no tag. */
export function escapeText(text: string): string {
  const plain = text.replace(/&(?=#?\w+;)/g, '&amp;');
  const shown = [...plain].map((sign) => SPECIAL.get(sign) ?? sign).join('');
  return shown
    .replace(/:\/\//g, ':&#47;&#47;')
    .replace(/^[-+=]/, (sign) => `\\${sign}`)
    .replace(/^(\d+)([.)])(?= )/, '$1\\$2');
}

/** A text as an HTML page shows it and nothing more. */
export const escapeHtml = (text: string): string =>
  text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;');

const drawn =
  (escaped: (text: string) => string, marks: Readonly<Record<keyof typeof MARK, string>>) =>
  (text: string): string =>
    (Object.keys(MARK) as (keyof typeof MARK)[]).reduce(
      (page, mark) => page.replaceAll(MARK[mark], marks[mark]),
      escaped(text),
    );

/** A text of the sheet in Markdown, with its boxes and blanks. */
export const inMarkdown = drawn(escapeText, {
  box: '[ ]',
  blank: '____',
  clock: '__ : __',
  bold: '**',
  plain: '**',
});

/** The same in HTML. */
export const inHtml = drawn(escapeHtml, {
  box: '<span class="box"></span>',
  blank: '<span class="blank"></span>',
  clock: '<span class="clock">:</span>',
  bold: '<b>',
  plain: '</b>',
});
