import { expectTypeOf, test } from 'vitest';
import { freezeEnergy } from '../../src/freezing/index';
import { type EnergyNeeded, energyCost, energyNeeded, type HeatNeeded, type StoveEnergy } from '../../src/heat/index';
import type { loadTimeline } from '../../src/process/index';
import type { Money, Quantity, Range } from '../../src/quantity/index';

test('wrong dimensions do not compile', () => {
  const warm = { startTemperature: '10 degC', targetTemperature: '90 degC' } as const;
  // @ts-expect-error a volume where a mass belongs
  energyNeeded({ cooking: { heatUp: { mass: '2 quarts', ...warm } } });
  // @ts-expect-error an energy where a power belongs
  energyNeeded({ machine: { power: '1 kWh', time: '1 h' } });
  // @ts-expect-error a power where an energy belongs
  energyCost({ energy: '1 kW', energyPrice: { soldBy: 'kWh', price: '0.31 USD' } });
  // @ts-expect-error a price with no currency
  energyCost({ energy: '1 kWh', energyPrice: { soldBy: 'kWh', price: 0.31 } });
  // @ts-expect-error the target is missing
  energyNeeded({ drying: { fresh: '1 kg', moisture: 0.8 } });
  // @ts-expect-error the temperatures are missing
  freezeEnergy({ mass: '1 kg', food: 'peach' });
  // @ts-expect-error a burner is needed to hold a boil
  energyNeeded({ cooking: { hold: { time: '1 h' } } });
});

test('answers carry their dimensions, and a refusal must be looked at', () => {
  expectTypeOf(energyNeeded({ cooking: { boilOff: '1 kg' } })).toEqualTypeOf<StoveEnergy>();
  expectTypeOf(energyNeeded({ freezeDrying: { ice: '1 kg' } })).toEqualTypeOf<HeatNeeded>();
  expectTypeOf<EnergyNeeded['energy']>().toEqualTypeOf<Range<Quantity<'energy'>>>();
  expectTypeOf(energyCost).returns.toHaveProperty('cost').toEqualTypeOf<Range<Money>>();
  expectTypeOf<Extract<ReturnType<typeof loadTimeline>, { tested: false }>>().not.toHaveProperty('energy');
});
