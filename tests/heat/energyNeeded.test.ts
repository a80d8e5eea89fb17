import { expect, test } from 'vitest';
import { applianceEnergy } from '../../src/heat/applianceEnergy';
import { dryEnergy } from '../../src/heat/dryEnergy';
import { freezeDryEnergy } from '../../src/heat/freezeDryEnergy';
import { energyNeeded } from '../../src/heat/index';
import { stoveEnergy } from '../../src/heat/stoveEnergy';
import { expectError } from '../helpers/errors';

test('each kind of work is answered by its own formula', () => {
  const cooking = { boilOff: '1 kg' } as const;
  const drying = { fresh: '1 kg', moisture: 0.8, targetMoisture: 0.2 } as const;
  const freezeDrying = { ice: '1 kg' } as const;
  const machine = { power: '500 W', time: '2 h' } as const;
  expect(energyNeeded({ cooking })).toEqual(stoveEnergy(cooking));
  expect(energyNeeded({ drying })).toEqual(dryEnergy(drying));
  expect(energyNeeded({ freezeDrying })).toEqual(freezeDryEnergy(freezeDrying));
  expect(energyNeeded({ machine })).toEqual(applianceEnergy(machine));
});

test('one kind of work at a time, and errors at its path', () => {
  expectError(() => energyNeeded({} as never), 'MISSING', 'cooking');
  expectError(() => energyNeeded(undefined as never), 'WRONG_TYPE', '');
  expectError(() => energyNeeded({ oven: {} } as never), 'UNKNOWN_FIELD', 'oven');
  const two = { cooking: { boilOff: '1 kg' }, machine: { power: '1 kW', time: '1 h' } };
  expectError(() => energyNeeded(two as never), 'CONTRADICTION', 'machine');
  expectError(() => energyNeeded({ cooking: {} }), 'MISSING', 'cooking.heatUp');
  expectError(() => energyNeeded({ freezeDrying: { ice: '0 kg' } }), 'OUT_OF_RANGE', 'freezeDrying.ice');
  expectError(() => energyNeeded({ drying: null as never }), 'WRONG_TYPE', 'drying');
});
