import { expectTypeOf, test } from 'vitest';
import { freezeEnergy } from '../../src/freezing/index';
import {
  type BoilingEnergyInput,
  dryEnergy,
  type EnergyNeeded,
  energyCost,
  freezeDryEnergy,
  type HeatNeeded,
  heatUpEnergy,
} from '../../src/heat/index';
import type { canningEnergy } from '../../src/process/index';
import type { Money, Quantity, Range } from '../../src/quantity/index';

test('wrong dimensions do not compile', () => {
  // @ts-expect-error a volume where a mass belongs
  heatUpEnergy({ mass: '2 quarts', from: '10 degC', to: '90 degC' });
  // @ts-expect-error an energy where a power belongs
  freezeDryEnergy({ ice: '1 kg', machine: { power: '1 kWh', time: '1 h' } });
  // @ts-expect-error a power where an energy belongs
  energyCost({ energy: '1 kW', price: { per: 'kWh', price: '0.31 USD' } });
  // @ts-expect-error a price with no currency
  energyCost({ energy: '1 kWh', price: { per: 'kWh', price: 0.31 } });
  // @ts-expect-error the target is missing
  dryEnergy({ fresh: '1 kg', moisture: 0.8 });
  // @ts-expect-error the temperatures are missing
  freezeEnergy({ mass: '1 kg', food: 'peach' });
});

test('a pot is asked for by its burner or by its water, not by both', () => {
  expectTypeOf<{ time: '1 h'; burnerPower: '2 kW' }>().toExtend<BoilingEnergyInput>();
  expectTypeOf<{ time: '1 h'; evaporationPerHour: '1 L' }>().toExtend<BoilingEnergyInput>();
  expectTypeOf<{ time: '1 h' }>().not.toExtend<BoilingEnergyInput>();
  expectTypeOf<{ time: '1 h'; burnerPower: '2 kW'; evaporationPerHour: '1 L' }>().not.toExtend<BoilingEnergyInput>();
});

test('answers carry their dimensions, and a refusal must be looked at', () => {
  expectTypeOf(heatUpEnergy).returns.toEqualTypeOf<HeatNeeded>();
  expectTypeOf<EnergyNeeded['energy']>().toEqualTypeOf<Range<Quantity<'energy'>>>();
  expectTypeOf(energyCost).returns.toHaveProperty('cost').toEqualTypeOf<Range<Money>>();
  expectTypeOf<Extract<ReturnType<typeof canningEnergy>, { tested: false }>>().not.toHaveProperty('energy');
});
