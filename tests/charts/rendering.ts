/** Charts as a reader's program handles them: against the schema of the standard, compiled, drawn. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import Ajv from 'ajv';
import * as vega from 'vega';
import { Error as ErrorLevel, parse, View, Warn } from 'vega';
import { compile, type TopLevelSpec } from 'vega-lite';
import type { ChartSpec } from '../../src/charts/index';

const schemaFile = createRequire(import.meta.url).resolve('vega-lite/vega-lite-schema.json');
const ajv = new Ajv({ strict: false, validateFormats: false });
const valid = ajv.compile(JSON.parse(readFileSync(schemaFile, 'utf8')));

/** What the Vega-Lite schema has against a spec; nothing for a good one. */
export function schemaErrors(spec: unknown): readonly object[] {
  return valid(spec) ? [] : (valid.errors ?? []);
}

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

/** Draws a spec without a browser: the SVG, and whatever compiler and runtime warned of. */
export async function draw(spec: ChartSpec): Promise<{ svg: string; warnings: string[] }> {
  const warnings: string[] = [];
  const note = (...parts: readonly unknown[]) => {
    warnings.push(parts.map(String).join(' '));
    return logger;
  };
  const quiet = () => logger;
  const logger = { level: () => Warn, error: note, warn: note, info: quiet, debug: quiet };
  const compiled = compile(spec as unknown as TopLevelSpec, { logger: logger as never }).spec;
  const view = new View(parse(compiled), { renderer: 'none', logLevel: ErrorLevel, logger: logger as never });
  const svg = await view.toSVG();
  view.finalize();
  return { svg, warnings };
}
