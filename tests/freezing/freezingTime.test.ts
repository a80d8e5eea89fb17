import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FreezingTimeInput, freezingTime } from '../../src/freezing/index';
import { expectError } from '../helpers/errors';

const slab: FreezingTimeInput = {
  shape: 'slab',
  thickness: '10 cm',
  density: '1090 kg/m3',
  latentHeat: 256,
  conductivity: 1.6,
  surfaceCoefficient: 600,
  freezingPoint: '-2 degC',
  medium: '-34 degC',
};
const hours = (input: FreezingTimeInput) => freezingTime(input).time.value;

// Earle, example 6.7: 4.2 h with cardboard (its 1/h rounded to 0.019), 2.1 h without
test('a slab of meat in a plate freezer', () => {
  expect(hours(slab)).toBeCloseTo(2.09, 2);
  const wrapped = freezingTime({ ...slab, wrap: { thickness: '1 mm', conductivity: 0.06 } });
  expect(wrapped.time.value).toBeCloseTo(4.11, 2);
  expect(wrapped.effectiveCoefficient).toBeCloseTo(54.5, 1);
});

test('heat above and below freezing stretches the time', () => {
  const sensible = {
    startTemperature: '10 degC',
    specificHeatAbove: 3.22,
    targetTemperature: '-18 degC',
    specificHeatBelow: 1.67,
  } as const;
  const { heatPerKilogram: heat, timeWithSensible, time } = freezingTime({ ...slab, sensible });
  expect(heat?.above).toBeCloseTo(38.64, 6);
  expect(heat?.below).toBeCloseTo(26.72, 6);
  expect(heat?.sum).toBeCloseTo(321.36, 6);
  expect(timeWithSensible?.value).toBeCloseTo((time.value * 321.36) / 256, 9);
  expectError(
    () => freezingTime({ ...slab, sensible: { ...sensible, startTemperature: '-5 degC' } }),
    'CONTRADICTION',
    'sensible.startTemperature',
  );
  expectError(
    () => freezingTime({ ...slab, sensible: { ...sensible, targetTemperature: '0 degC' } }),
    'CONTRADICTION',
    'sensible.targetTemperature',
  );
});

test('a slab frozen through one face is half a slab of twice the thickness', () => {
  expect(hours({ ...slab, thickness: '5 cm', faces: 1 })).toBeCloseTo(hours(slab), 12);
});

test('a ball freezes sooner than a rod, a rod sooner than a slab of the same measure', () => {
  const { thickness: _, ...rest } = slab;
  const sphere = hours({ ...rest, shape: 'sphere', diameter: '10 cm' });
  expect(hours(slab) / sphere).toBeCloseTo(3, 9);
  expect(hours(slab) / hours({ ...rest, shape: 'cylinder', diameter: '10 cm' })).toBeCloseTo(2, 9);
  expect(hours({ ...rest, shape: 'cube', edge: '10 cm' })).toBe(sphere);
});

test('thicker, better wrapped or less cold never freezes sooner', () => {
  const size = fc.double({ min: 0.1, max: 50, noNaN: true });
  fc.assert(
    fc.property(size, size, fc.double({ min: -60, max: -3, noNaN: true }), (one, other, medium) => {
      const at = (cm: number, degC: number) =>
        hours({ ...slab, thickness: { value: cm, unit: 'cm' }, medium: { value: degC, unit: 'degC' } });
      expect(at(Math.max(one, other), medium)).toBeGreaterThanOrEqual(at(Math.min(one, other), medium));
      expect(at(one, medium)).toBeGreaterThanOrEqual(at(one, medium - 5));
      expect(at(one, medium)).toBeGreaterThan(0);
    }),
  );
});

test.each([
  [{ medium: '-2 degC' }, 'CONTRADICTION', 'medium'],
  [{ thickness: undefined }, 'MISSING', 'thickness'],
  [{ diameter: '5 cm' }, 'CONTRADICTION', 'diameter'],
  [{ shape: 'sphere' }, 'CONTRADICTION', 'thickness'],
  [{ shape: 'brick' }, 'UNKNOWN_NAME', 'shape'],
  [{ faces: 3 }, 'OUT_OF_RANGE', 'faces'],
  [{ density: '1 kg' }, 'WRONG_DIMENSION', 'density'],
  [{ conductivity: 0 }, 'OUT_OF_RANGE', 'conductivity'],
  [{ latentHeat: 256000 }, 'OUT_OF_RANGE', 'latentHeat'],
  [{ wrap: { thickness: '0 mm', conductivity: 0.06 } }, 'OUT_OF_RANGE', 'wrap.thickness'],
] as const)('bad input %j', (change, code, path) => {
  expectError(() => freezingTime({ ...slab, ...change } as never), code, path);
});

test('faces belong to a slab', () => {
  const { thickness: _, ...rest } = slab;
  expectError(() => freezingTime({ ...rest, shape: 'sphere', diameter: '5 cm', faces: 2 }), 'CONTRADICTION', 'faces');
});
