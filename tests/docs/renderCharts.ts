/**
 * Draws the charts that the pages show into docs/images:
 *
 *   npx tsx tests/docs/renderCharts.ts
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { draw } from '../charts/rendering';
import { pageCharts } from './pageCharts';

const images = new URL('../../docs/images/', import.meta.url);
mkdirSync(images, { recursive: true });
for (const [name, spec] of Object.entries(pageCharts())) {
  const { svg, warnings } = await draw(spec);
  if (warnings.length > 0) throw new Error(`${name}: ${warnings.join('; ')}`);
  writeFileSync(new URL(`${name}.svg`, images), `${svg}\n`);
}
