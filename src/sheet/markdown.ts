/** A Markdown table with its columns padded, so that it also reads as plain text. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const cells = [head, ...rows].map((row) => head.map((_, column) => (row[column] ?? '').replace(/\|/g, '/')));
  const widths = head.map((_, column) => Math.max(3, ...cells.map((row) => (row[column] ?? '').length)));
  const line = (row: readonly string[]) =>
    `| ${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(' | ')} |`;
  const [first = [], ...rest] = cells;
  return [line(first), `|${widths.map((width) => '-'.repeat(width + 2)).join('|')}|`, ...rest.map(line)].join('\n');
}

/** A bulleted line, wrapped at the margin of a page on the wall. */
export function bullet(text: string, width = 92): string {
  const words = text.split(' ');
  const lines: string[] = [];
  let current = '-';
  for (const word of words) {
    if (current.length + word.length + 1 > width && current.trim() !== '-') {
      lines.push(current);
      current = '  ';
    }
    current += current === '  ' ? word : ` ${word}`;
  }
  return [...lines, current].join('\n');
}

export const bullets = (texts: readonly string[]): string => texts.map((text) => bullet(text)).join('\n');
