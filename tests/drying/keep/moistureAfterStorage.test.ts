import { describe, expect, it } from 'vitest';
import { moistureAfterStorage } from '../../../src/drying/index';

describe('moistureAfterStorage', () => {
  it('adds what passes the bag and what the air held', () => {
    const bag = moistureAfterStorage({
      dried: '100 g',
      moisture: 0.02,
      bag: { area: '1 m2', transmission: 1, time: '10 days' },
    });
    expect(bag.gained.value).toBeCloseTo(10, 12);
    expect(bag.moisture).toBeCloseTo(12 / 110, 12);
    // saturated air at 20 degC holds 17.29 g a cubic metre (from 2.33932 kPa, IAPWS-95)
    const air = moistureAfterStorage({
      dried: '100 g',
      moisture: 0.02,
      sealedAir: { volume: '1 L', relativeHumidity: 0.5, temperature: '20 degC' },
    });
    expect(air.gained.value).toBeCloseTo(0.008645, 6);
    expect(moistureAfterStorage({ dried: '100 g', moisture: 0.02 }).moisture).toBeCloseTo(0.02, 15);
  });
});
