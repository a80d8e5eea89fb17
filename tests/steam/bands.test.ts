/** The printed tables held against physics. Physics explains them; nothing here may change one. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { boilingTemperature, steamTemperature } from '../../src/steam/index';

interface Row {
  food: string;
  method: string;
  psi?: (number | null)[];
  minutes: (number | null)[];
}
const read = (name: string): { rows: Row[] } =>
  JSON.parse(readFileSync(new URL(`../../data/process/${name}.json`, import.meta.url), 'utf8'));
const processes = ['fruit', 'tomato-low-acid', 'jam', 'pickle'].flatMap((name) => read(name).rows);
const printed = JSON.parse(
  readFileSync(new URL('../../data/process/elevation-bands.json', import.meta.url), 'utf8'),
) as { rows: { method: string; upToFt: (number | null)[] }[] };
const edges = (method: string): (number | null)[] =>
  printed.rows.find((row) => row.method === method)?.upToFt as (number | null)[];

/** The open band of a weighted gauge is looked at up to here: the highest edge that any canning chart prints. */
const HIGHEST_EDGE = 10000;

interface Band {
  readonly gauge: { readonly value: number; readonly unit: 'psi' };
  readonly bottom: { readonly value: number; readonly unit: 'ft' };
  readonly top: { readonly value: number; readonly unit: 'ft' };
}
/** degF of the steam at the foot and at the top of each band, and its top against the top of the base band. */
function steamIn(bands: readonly Band[]) {
  const at = (gauge: Band['gauge'], elevation: Band['top']): number =>
    steamTemperature({ gauge, elevation }).temperature.value;
  const base = at((bands[0] as Band).gauge, (bands[0] as Band).top);
  return bands.map((band) => ({
    ...band,
    atBottom: at(band.gauge, band.bottom),
    atTop: at(band.gauge, band.top),
    againstBase: at(band.gauge, band.top) - base,
  }));
}

/** The bands of one printed row, those with a pressure. */
function bandsOf(row: Row): Band[] {
  const tops = edges(row.method);
  return (row.psi ?? []).flatMap((psi, index) => {
    if (psi === null) return [];
    const bottom = index === 0 ? 0 : (tops[index - 1] as number) + 1;
    return [
      {
        gauge: { value: psi, unit: 'psi' } as const,
        bottom: { value: bottom, unit: 'ft' } as const,
        top: { value: tops[index] ?? HIGHEST_EDGE, unit: 'ft' } as const,
      },
    ];
  });
}
const gauged = processes.filter((row) => row.psi !== undefined);
const series = [...new Map(gauged.map((row) => [`${row.method} ${row.psi?.join('/')}`, row])).entries()];

test('every printed gauge row is looked at', () => {
  expect(gauged.length).toBeGreaterThan(270);
  expect(series.map(([name]) => name).sort()).toEqual([
    'dial-gauge 11/12/13/14',
    'dial-gauge 6/7/8/9',
    'weighted-gauge 10/15',
    'weighted-gauge 15/',
    'weighted-gauge 5/10',
  ]);
});

describe.each(series)('%s', (_, row) => {
  const bands = steamIn(bandsOf(row));

  test('no band at its top is cooler than the base band at its top', () => {
    for (const band of bands) expect(band.againstBase).toBeGreaterThanOrEqual(0);
  });

  test('no band at its top is more than 2.8 degF cooler than the base band at sea level', () => {
    const seaLevel = bands[0]?.atBottom as number;
    if (bands[0]?.bottom.value !== 0) return;
    for (const band of bands) expect(seaLevel - band.atTop).toBeLessThan(2.8);
  });
});

const page = readFileSync(new URL('../../docs/heat.md', import.meta.url), 'utf8');
const tenth = (value: number): string => (Math.round(value * 10) / 10).toFixed(1);
const feet = (value: number): string => value.toLocaleString('en-US');

test.each(series)('docs/heat.md prints the temperatures of %s', (_, row) => {
  for (const band of steamIn(bandsOf(row))) {
    const against = `+${tenth(band.againstBase)}`;
    const cells = [
      `${band.gauge.value} psi`,
      `${feet(band.bottom.value)} to ${feet(band.top.value)} ft`,
      tenth(band.atBottom),
      tenth(band.atTop),
      band.againstBase === 0 ? 'base' : against,
    ];
    expect(page).toContain(`| ${cells.join(' | ')} |`);
  }
});

test('the dial tables for low-acid food keep within 0.8 degF of 240 degF at every band top', () => {
  const row = series.find(([key]) => key === 'dial-gauge 11/12/13/14')?.[1] as Row;
  for (const band of steamIn(bandsOf(row))) {
    expect(Math.abs(band.atTop - 240)).toBeLessThan(0.8);
  }
});

test('the open band of the 15 lb weight stays above the base band up to 12,300 ft and not much further', () => {
  const base = steamTemperature({ gauge: '10 psi', elevation: '1000 ft' }).temperature.value;
  expect(steamTemperature({ gauge: '15 psi', elevation: '12300 ft' }).temperature.value).toBeGreaterThan(base);
  expect(steamTemperature({ gauge: '15 psi', elevation: '12500 ft' }).temperature.value).toBeLessThan(base);
});

test('boiling-water minutes never fall from one band to the next while the boil gets cooler', () => {
  const boiled = processes.filter((row) => row.method === 'boiling-water');
  expect(boiled.length).toBeGreaterThan(100);
  for (const row of boiled) {
    const minutes = row.minutes.filter((value) => value !== null);
    expect([...minutes].sort((a, b) => a - b)).toEqual(minutes);
  }
});

test('docs/heat.md prints the boiling points at the edges of the bands', () => {
  const boilingAt = (value: number): number =>
    boilingTemperature({ elevation: { value, unit: 'ft' } }).temperature.value;
  for (const edge of [0, 1000, 3000, 6000, 8000, 10000]) {
    const drop = boilingAt(0) - boilingAt(edge);
    expect(page).toContain(`| ${feet(edge)} ft | ${tenth(boilingAt(edge))} | ${tenth(drop)} |`);
  }
});
