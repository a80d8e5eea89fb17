/** Widths of letters for drawing without a browser; to import this file sets them. */
import * as vega from 'vega';

/** Without a browser the library takes every letter as wide as an M; these are the widths of a plain sans-serif. */
const EM = 0.58;
const NARROW = /[ilj.,:;'|()[\] ft]/g;
const textWidth = (item: { fontSize?: number; text?: unknown }, text: unknown): number => {
  const letters = String(text ?? item.text ?? '');
  const narrow = letters.match(NARROW)?.length ?? 0;
  return (item.fontSize ?? 11) * (EM * letters.length - 0.28 * narrow);
};
// exported by the library, though missing from its types
Object.assign((vega as unknown as { textMetrics: object }).textMetrics, { width: textWidth });
