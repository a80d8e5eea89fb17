/** Charts as a reader's program handles them: against the schema of the standard, compiled, drawn. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import Ajv from 'ajv';
import { Error as ErrorLevel, parse, View, Warn } from 'vega';
import { compile, type TopLevelSpec } from 'vega-lite';
import type { ChartSpec } from '../../src/charts/index';
import '../../examples/notebook/textWidth';

const schemaFile = createRequire(import.meta.url).resolve('vega-lite/vega-lite-schema.json');
const ajv = new Ajv({ strict: false, validateFormats: false });
const valid = ajv.compile(JSON.parse(readFileSync(schemaFile, 'utf8')));

/** What the Vega-Lite schema has against a spec; nothing for a good one. */
export function schemaErrors(spec: unknown): readonly object[] {
  return valid(spec) ? [] : (valid.errors ?? []);
}

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
