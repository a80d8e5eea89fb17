import { describe, expect, test } from 'vitest';
import * as drying from '../../src/drying/index';
import { errorOf } from './helpers';

const NAMES = ['constructor', 'toString', '__proto__', 'hasOwnProperty', 'valueOf'];
const CALLS: Record<string, (text: string) => unknown> = {
  'dryingGuide food': (food) => drying.dryingGuide({ food }),
  'dryingGuide form': (form) => drying.dryingGuide({ food: 'apple', form }),
  'freezeDryLoad food': (food) =>
    drying.freezeDryLoad({
      food,
      fresh: '1 kg',
      moisture: '80 %',
      machine: { iceCapacity: '5 kg', trayArea: '1 m2' },
    }),
  jerky: (food) => drying.jerky({ food, dryerTemperature: '140 degF' }),
  'pretreatmentDip treatment': (treatment) => drying.pretreatmentDip({ treatment }),
  'pretreatmentDip food': (food) => drying.pretreatmentDip({ treatment: 'sulfite dip by fruit', food }),
  finishDried: (food) => drying.finishDried({ food }),
  rehydrate: (food) => drying.rehydrate({ food, driedVolume: '1 cup' }),
  driedStorage: (food) => drying.driedStorage({ food, temperature: '70 degF' }),
  dryingCurve: (model) => drying.dryingCurve({ model, time: '1 h', constants: {} } as never),
  'dryingCurve food': (food) => drying.dryingCurve({ food }),
  freezeDryCollapse: (food) => drying.glassTransition({ food, iceTemperature: '-30 degC' }),
  glassTransition: (food) => drying.glassTransition({ food, moisture: 0.1 }),
};

describe.each(Object.entries(CALLS))('%s', (_, call) => {
  test.each(NAMES)('%s is a name like any other: refused', (text) => {
    const error = errorOf(() => call(text));
    expect(error.code).toBe('UNKNOWN_NAME');
    expect(error.message).not.toContain('native code');
  });
});
