import { expect, test } from 'vitest';
import * as z from 'zod';
import {
  airConstant,
  airConstantRow,
  atmosphereRow,
  liquidRow,
  moistAirRow,
  saturatedRow,
  saturationRow,
} from '../../src/steam/tables';
import { checkTables, expectFolder, knownSources, readTable } from '../helpers/tables';

const rows = {
  'standard-atmosphere': atmosphereRow(),
  'if97-region4': saturationRow(),
  'liquid-water': liquidRow(),
  'saturated-water': saturatedRow(),
  'moist-air': moistAirRow(),
  'air-constants': airConstantRow(),
} as const;
const read = (name: string) => readTable('steam', name);

checkTables('steam', rows);

test('the folder holds no other table', () => {
  expectFolder('steam', Object.keys(rows));
});

test('a constant of air is asked for by an id that is there', () => {
  expect(airConstant('mass-ratio')).toBeCloseTo(18.015268 / 28.966, 5);
  expect(() => airConstant('no-such-row')).toThrow('no-such-row');
});

test('the rounded constants follow from the defining ones', () => {
  const value = (symbol: string): number =>
    read('standard-atmosphere').rows.find((row: { symbol: string }) => row.symbol === symbol).value;
  const exponent = (value('g0') * value('M0')) / 1000 / (value('Rstar') * -value('L'));
  expect(exponent).toBeCloseTo(value('exponent'), 6);
  const top = value('P0') * (1 + (value('L') * value('Htop')) / value('T0')) ** exponent;
  expect(Math.abs(top - value('Ptop'))).toBeLessThan(0.5);
});

test('cautions have an id and a text each, and known sources', () => {
  const cautions = z
    .array(
      z.strictObject({
        id: z.string().regex(/^[a-z-]+$/),
        severity: z.enum(['danger', 'quality', 'note']),
        text: z.string().min(40),
        source: z.string().optional(),
      }),
    )
    .parse(read('cautions'));
  expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
  for (const { source } of cautions) if (source !== undefined) expect(knownSources).toContain(source);
});
