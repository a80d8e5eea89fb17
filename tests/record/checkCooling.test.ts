import { describe, expect, test } from 'vitest';
import { checkCooling } from '../../src/record/index';
import { expectError } from '../helpers/errors';

describe('checkCooling', () => {
  const log = (...readings: readonly (readonly [hours: number, degF: number])[]) =>
    checkCooling({
      log: readings.map(([hours, degF]) => ({
        time: { value: hours, unit: 'h' } as const,
        temperature: { value: degF, unit: 'degF' } as const,
      })),
    });
  test('the clock runs from the last reading at 135 degF', () => {
    expect(
      log([0, 180], [1, 140], [2.9, 69], [6, 40]).stages.map(({ took }) => Number(took?.value.toFixed(3))),
    ).toEqual([1.9, 5]);
  });
  test('a log too short, or begun too late, cannot tell', () => {
    expect(log([0, 140], [1, 100]).verdict).toBe('open');
    expect(log([0, 140], [1, 69], [3, 50]).verdict).toBe('open');
    expect(log([0, 100], [1, 69], [3, 40]).verdict).toBe('open');
  });
  test('never cold in time is broken', () => {
    expect(log([0, 140], [3, 100]).verdict).toBe('broken');
    expect(log([0, 140], [1, 69], [7, 50]).verdict).toBe('broken');
  });
  test('times out of order', () => {
    expectError(() => log([0, 140], [0, 100]), 'CONTRADICTION', 'log[1].time');
  });
});
