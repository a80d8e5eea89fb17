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

/** A text as a page shows it and nothing more: one line, no markup, no link, no tag. */
export function escapeText(text: string): string {
  const oneLine = text.replace(/[\s\p{Cc}]+/gu, ' ').trim();
  const plain = oneLine.replace(/&(?=#?\w+;)/g, '&amp;');
  const shown = [...plain].map((sign) => SPECIAL.get(sign) ?? sign).join('');
  return shown
    .replace(/:\/\//g, ':&#47;&#47;')
    .replace(/^[-+=]/, (sign) => `\\${sign}`)
    .replace(/^(\d+)([.)])(?= )/, '$1\\$2');
}

/** The same of every text in a plan: names are the caller's own words. */
export function escapeTexts<T>(value: T): T {
  if (typeof value === 'string') return escapeText(value) as T;
  if (Array.isArray(value)) return value.map((item) => escapeTexts(item)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, escapeTexts(inner)])) as T;
}
