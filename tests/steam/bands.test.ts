/** The printed tables held against physics. Physics explains them; nothing here may change one. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { boilingTemperature, gaugeBandPhysics, steamTemperature } from '../../src/steam/index';

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

/** The bands of one printed row, those with a pressure. */
function bandsOf(row: Row) {
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
    'weighted-gauge /15',
    'weighted-gauge 10/15',
    'weighted-gauge 15/',
    'weighted-gauge 5/10',
  ]);
});

describe.each(series)('%s', (_, row) => {
  const { bands, shortfall } = gaugeBandPhysics({ bands: bandsOf(row) });

  test('no band at its top is cooler than the base band at its top', () => {
    expect(shortfall.value).toBe(0);
    for (const band of bands) expect(band.againstBase.value).toBeGreaterThanOrEqual(0);
  });

  test('no band at its top is more than 2.8 degF cooler than the base band at sea level', () => {
    const seaLevel = bands[0]?.temperatureAtBottom.value as number;
    if (bands[0]?.bottom.value !== 0) return;
    for (const band of bands) expect(seaLevel - band.temperatureAtTop.value).toBeLessThan(2.8);
  });
});

// What docs/heat.md prints: the temperatures at the top of each band, degF, to 0.1
test.each([
  ['dial-gauge 11/12/13/14', [239.3, 239.3, 239.5, 239.8]],
  ['dial-gauge 6/7/8/9', [227.0, 227.1, 227.3, 227.7]],
  ['weighted-gauge 10/15', [238.2, 240.3]],
  ['weighted-gauge 5/10', [225.7, 228.2]],
])('%s at its band tops', (name, tops) => {
  const row = series.find(([key]) => key === name)?.[1] as Row;
  const { bands } = gaugeBandPhysics({ bands: bandsOf(row) });
  expect(bands.map((band) => Math.round(band.temperatureAtTop.value * 10) / 10)).toEqual(tops);
});

test('the dial tables for low-acid food keep within 0.8 degF of 240 degF at every band top', () => {
  const row = series.find(([key]) => key === 'dial-gauge 11/12/13/14')?.[1] as Row;
  for (const band of gaugeBandPhysics({ bands: bandsOf(row) }).bands) {
    expect(Math.abs(band.temperatureAtTop.value - 240)).toBeLessThan(0.8);
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
  const boil = [0, 1000, 3000, 6000, 8000].map((value) => boilingTemperature({ elevation: { value, unit: 'ft' } }));
  const drops = boil.map(({ temperature }) => (boil[0]?.temperature.value as number) - temperature.value);
  // what docs/heat.md prints
  expect(drops.map((drop) => Math.round(drop * 10) / 10)).toEqual([0, 1.8, 5.5, 11, 14.6]);
});
