import { describe, expectTypeOf, test } from 'vitest';
import {
  elevationMinutes,
  gaugePressure,
  loadTimeline,
  type ProcessAcid,
  type TestedProcess,
  testedProcess,
} from '../../src/process/index';
import type { Quantity } from '../../src/quantity/index';
import type { NotTested } from '../../src/sources/no';

const question = { food: 'peach', jar: 'pint', method: 'boiling-water', elevation: '0 ft' } as const;

describe('a caller must look at the answer', () => {
  test('minutes are only there once tested is known', () => {
    const answer = testedProcess(question);
    expectTypeOf(answer).toEqualTypeOf<TestedProcess | NotTested>();
    // @ts-expect-error a refusal has no minutes
    answer.minutes;
    if (answer.tested) expectTypeOf(answer.minutes).toEqualTypeOf<number>();
    else expectTypeOf(answer.reason.text).toEqualTypeOf<string>();
  });

  test('acid is required wherever it is there', () => {
    expectTypeOf<ProcessAcid['required']>().toEqualTypeOf<true>();
    expectTypeOf<NonNullable<ProcessAcid['vinegar']>>().toEqualTypeOf<Quantity<'volume'>>();
  });
});

describe('wrong dimensions do not compile', () => {
  test('elevation, pressure, water, power', () => {
    // @ts-expect-error a mass is no elevation
    testedProcess({ ...question, elevation: '62 lb' });
    // @ts-expect-error a length is no pressure
    testedProcess({ ...question, pressure: '3 ft' });
    // @ts-expect-error no such canner
    testedProcess({ ...question, method: 'oven' });
    // @ts-expect-error a mass is no volume of water
    loadTimeline({ ...question, jars: 7, burnerPower: '2 kW', waterVolume: '3 lb' });
    // @ts-expect-error an energy is no power
    loadTimeline({ ...question, jars: 7, burnerPower: '2 kWh', waterVolume: '3 L' });
    // @ts-expect-error the citation is required
    elevationMinutes({ baseMinutes: 10, rule: 'bands', elevation: '0 ft' });
    // @ts-expect-error acid or low-acid
    gaugePressure({ method: 'dial-gauge', acidity: 'neutral', elevation: '0 ft' });
  });
});
