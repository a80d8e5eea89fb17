import { expectTypeOf, test } from 'vitest';
import { type LogPoint, lethality } from '../../src/lethality/index';

test('a reading is a time and a temperature', () => {
  expectTypeOf({ time: '5 min', temperature: '240 degF' } as const).toExtend<LogPoint>();
  // @ts-expect-error a pressure where a temperature belongs
  expectTypeOf({ time: '5 min', temperature: '11 psi' } as const).toExtend<LogPoint>();
});

test('z is a difference of temperature', () => {
  lethality({ log: [], reference: '250 degF', z: '18 degF' });
  // @ts-expect-error a time where z belongs
  expectTypeOf(lethality).toBeCallableWith({ log: [], reference: '250 degF', z: '18 min' });
  expectTypeOf(lethality({ heldAt: [], reference: '121.1 degC', z: '10 degC' }))
    .toHaveProperty('minutes')
    .toEqualTypeOf<number>();
});
