import { expect, it } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import * as heat from '../../src/heat/index';
import { GARBAGE } from '../helpers/garbage';

const functions = Object.entries(heat).filter(([name]) => /^energy/.test(name)) as [
  string,
  (input: unknown) => unknown,
][];
const garbageHere: readonly unknown[] = [
  ...GARBAGE,
  {
    heatUp: { mass: '1e400 kg', startTemperature: '20 degC', targetTemperature: Number.POSITIVE_INFINITY },
    efficiency: Number.NaN,
  },
  { energy: { low: {}, likely: null, high: 'much' }, price: null },
  { cooking: { heatUp: { mass: '1e400 kg', startTemperature: '20 degC' } } },
  { machine: { power: '1/0 W' } },
  { drying: null },
  { power: '1/0 W', time: [], dryer: 3, machine: 'big', ice: { value: Number.NaN, unit: 'kg' } },
];

it('the family is whole', () => expect(functions).toHaveLength(2));
it.each(functions)('%s throws the one error for what it cannot read', (_, call) => {
  for (const garbage of garbageHere) expect(() => call(garbage)).toThrow(StillroomError);
});
