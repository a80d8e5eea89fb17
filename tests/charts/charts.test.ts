import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  allocationChart,
  boilingSolidsChart,
  type ChartSpec,
  costChart,
  dryingCurveChart,
  isothermChart,
  learningChart,
  OKABE_ITO,
  processTimeChart,
  timelineChart,
} from '../../src/charts/index';
import { planDay } from '../../src/plan/index';
import { appleTray, pageCharts } from '../docs/pageCharts';
import { oneDay, tenProducts, twoDays } from './inventedSchedule';
import { draw, schemaErrors } from './rendering';

const request = JSON.parse(readFileSync(new URL('../../examples/day.json', import.meta.url), 'utf8'));
const plan = planDay(request);

const unfinished = dryingCurveChart({ weighings: appleTray.weighings.slice(0, 3), stopWeight: '165 g' });
const finished = dryingCurveChart({ ...appleTray, stopWeight: '400 g' });

const hours = { low: 6, likely: 9, high: 12 };
const learnedYields = learningChart({
  what: 'yield of peach halves',
  before: { low: 0.76, likely: 0.85, high: 0.88 },
  after: { low: 0.69, likely: 0.75, high: 0.81 },
  observed: [0.725, 0.75, 0.733, 0.079, 0.742],
  asidePlaces: [3],
  invented: true,
});

const charts: readonly (readonly [string, ChartSpec])[] = [
  ...Object.entries(pageCharts()),
  [
    'steam canner in metres',
    processTimeChart({
      food: 'plums',
      form: 'whole',
      pack: 'hot',
      jar: 'pint',
      method: 'atmospheric-steam',
      fromElevation: '-100 m',
      toElevation: '3000 m',
      elevation: '250 m',
    }) as ChartSpec,
  ],
  ['boiling syrup in metres, no pot', boilingSolidsChart({ elevation: '800 m' })],
  ['a fruit without a batch', isothermChart({ food: 'peach' })],
  ['own constants', isothermChart({ parameters: { model: 'GAB', M0: 0.1, C: 10, K: 0.9 }, batch: { moisture: 0.1 } })],
  ['drying, nothing to tell yet', unfinished],
  ['drying, done', finished],
  ['allocation', allocationChart({ plan })],
  ['costs', costChart({ plan })],
  ['order of work of one day', timelineChart({ plan: oneDay })],
  ['order of work of two days', timelineChart({ plan: twoDays })],
  ['order of work on ten products', timelineChart({ plan: tenProducts })],
  ['learned yields, one far off', learnedYields],
  [
    'learned hours, no batch yet',
    learningChart({ what: 'drying time', unit: 'h', before: hours, after: hours, observed: [] }),
  ],
  [
    'learned hours, one set aside and near',
    learningChart({
      what: 'drying time',
      unit: 'h',
      before: hours,
      after: hours,
      observed: [9, 14, 40],
      asidePlaces: [1, 2],
    }),
  ],
];

/** Every colour that a spec names. */
const coloursOf = (spec: unknown): string[] =>
  [...JSON.stringify(spec).matchAll(/"(#[0-9A-Fa-f]{6})"/g)].map((match) => match[1] as string);
const greys = /^#(..)\1\1$/;

describe.each(charts)('%s', (_, spec) => {
  test('is valid against the schema of Vega-Lite', () => {
    expect(schemaErrors(spec)).toEqual([]);
  });

  test('is plain JSON', () => {
    expect(JSON.parse(JSON.stringify(spec))).toEqual(JSON.parse(JSON.stringify(spec)));
    expect(JSON.stringify(spec)).not.toMatch(/NaN|Infinity|null,"field"/);
    const walk = (value: unknown): void => {
      if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
      else if (typeof value === 'object' && value !== null) Object.values(value).forEach(walk);
      else expect(['string', 'boolean', 'object', 'undefined']).toContain(typeof value);
    };
    walk(spec);
  });

  test('compiles and draws without a warning', async () => {
    const { svg, warnings } = await draw(spec);
    expect(warnings).toEqual([]);
    expect(svg).toMatch(/^<svg/);
    expect(svg).toContain(spec.title.text);
    expect(svg).not.toMatch(/NaN|undefined/);
  });

  test('has a title, words for those who cannot see it, its basis, and letters of at least 12 pixels', async () => {
    expect(spec.title.text.length).toBeGreaterThan(5);
    expect(spec.description.length).toBeGreaterThan(10);
    expect(spec.usermeta.basis.length).toBeGreaterThan(0);
    const { svg } = await draw(spec);
    const sizes = [...svg.matchAll(/font-size="([\d.]+)px"/g)].map((match) => Number(match[1]));
    expect(sizes.length).toBeGreaterThan(3);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
  });

  test('names the unit on every axis of amounts', () => {
    const titles = spec.layer.flatMap(({ encoding = {} }) =>
      ['x', 'y'].flatMap((axis) => {
        const channel = encoding[axis] as { type?: string; field?: string; title?: string } | undefined;
        return channel?.type === 'quantitative' && channel.title !== undefined ? [channel.title] : [];
      }),
    );
    expect(titles.length).toBeGreaterThan(0);
    for (const title of titles) expect(title).toMatch(/, |\(.+\)/);
  });

  test('uses only colours that colour-blind readers tell apart, and greys', () => {
    const safe = new Set<string>(Object.values(OKABE_ITO));
    expect(coloursOf(spec).filter((colour) => !safe.has(colour) && !greys.test(colour))).toEqual([]);
  });

  test('is the same every time', async () => {
    expect((await draw(spec)).svg).toBe((await draw(spec)).svg);
  });
});

test('the checks themselves fail on a bad spec', async () => {
  const [, good] = charts[0] as (typeof charts)[number];
  expect(schemaErrors({ ...good, layer: [{ mark: 'no such mark' }] })).not.toEqual([]);
  expect(schemaErrors({ ...good, widht: 3 })).not.toEqual([]);
  const layer = (encoding: object) => ({ ...good, layer: [{ mark: { type: 'bar' }, encoding }] }) as ChartSpec;
  const [compiling, drawing] = await Promise.all([
    draw(layer({ x: { field: 'a', type: 'quantitative', aggregate: 'no such sum' } })),
    draw({ ...layer({ x: { field: 'a', type: 'quantitative' } }), data: { values: [] } }),
  ]);
  expect(compiling.warnings.join(' ')).toContain('no such sum');
  expect(drawing.warnings.join(' ')).toContain('Infinite extent');
  expect(coloursOf({ color: '#FF0000' })).toEqual(['#FF0000']);
});

test('the palette is the published one (Okabe and Ito 2008, in red, green and blue; from memory)', () => {
  const rgb = Object.values(OKABE_ITO).map((hex) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)));
  expect(rgb).toEqual([
    [0, 0, 0],
    [230, 159, 0],
    [86, 180, 233],
    [0, 158, 115],
    [240, 228, 66],
    [0, 114, 178],
    [213, 94, 0],
    [204, 121, 167],
  ]);
});
