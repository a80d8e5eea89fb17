import { describe, expect, test } from 'vitest';
import {
  boiledOff,
  burnerOf,
  cooked,
  dried,
  frozen,
  heatedUp,
  likelyBetween,
  taking,
  waterBoiled,
} from '../../../src/plan/makes/energyTaken';
import type { Kitchen } from '../../../src/plan/request/planInput';

const kitchen = { elevation: { value: 100, unit: 'm' }, hours: [] } as unknown as Kitchen;
const range = (likely: number) => ({ low: likely / 2, likely, high: 2 * likely });

describe('at the stove', () => {
  test('a kg heated from 20 degC to the boil is more than the heat that it takes in', () => {
    // some 3.8 kJ/(kg K) over 79.7 K are 0.084 kWh, before what the stove loses
    expect(heatedUp(kitchen).kWh.low).toBeGreaterThan(0.07);
    expect(heatedUp(kitchen).kWh.high).toBeLessThan(0.4);
  });
  test('a kg boiled off takes 2257 kJ and what is lost', () => {
    expect(boiledOff(kitchen).kWh.low).toBeGreaterThan(2257 / 3600);
  });
  test('twice the water takes twice as long on one burner', () => {
    expect(waterBoiled(kitchen, 20).minutes / waterBoiled(kitchen, 10).minutes).toBeCloseTo(2, 1);
  });
  test('to hold it for longer takes more; its own burner counts', () => {
    expect(cooked(kitchen, 20).hold.likely).toBeCloseTo(2 * cooked(kitchen, 10).hold.likely, 9);
    expect(burnerOf(kitchen)).toEqual({ value: 2400, unit: 'W' });
    expect(burnerOf({ ...kitchen, burnerPower: { value: 1, unit: 'kW' } })).toEqual({ value: 1, unit: 'kW' });
  });
});
test('a wetter food takes more to freeze', () => {
  expect(frozen(range(0.45)).kWh.likely).toBeLessThan(frozen(range(0.9)).kWh.likely);
});
test('a dryer by its power: each tray its share of a full machine', () => {
  const hours = likelyBetween({ low: { value: 6, unit: 'h' }, high: { value: 12, unit: 'h' } });
  expect(hours.likely).toEqual({ value: 9, unit: 'h' });
  const own = {
    ...kitchen,
    dryer: { trays: 10 },
    utilities: { dryerPower: { value: 600, unit: 'W' } },
  } as unknown as Kitchen;
  // 0.6 kW for 9 h over 10 trays
  expect(dried(own, { water: range(0.85), target: 0.2, hours }).perTray?.likely).toBeCloseTo(0.54, 9);
  expect(dried(kitchen, { water: range(0.85), target: 0.2, hours }).perKg?.likely).toBeGreaterThan(0.5);
});
test('of a supply: each end by the kg at that end', () => {
  const supply = { lot: 0 } as never;
  const { energyPerKg } = taking(supply, range(2), { stove: range(3), electricity: undefined });
  expect(energyPerKg).toEqual({ stove: { low: 1.5, likely: 6, high: 24 } });
});
