import { describe, expect, test } from 'vitest';
import { call, catalogue } from '../../src/catalogue/index';
import { thrownBy } from '../helpers/errors';
import { goodArguments } from '../helpers/inputs';
import { loadFunctions } from '../vectors/loadFunctions';

describe('call', () => {
  test('answers as the function does', async () => {
    const functions = await loadFunctions();
    const names = new Set(catalogue().map(({ name }) => name));
    const samples = [...goodArguments(2)].filter(([name]) => names.has(name));
    expect(samples.length).toBeGreaterThan(120);
    for (const [name, list] of samples)
      for (const args of list)
        expect(call(name, args.length === 1 ? args[0] : args)).toEqual(functions.get(name)?.(...structuredClone(args)));
  });

  test('calls a function that needs no argument without one', () => {
    expect(call('sources')).toEqual(call('sources', {}));
  });

  test('names the nearest of a function that there is not', () => {
    expect(thrownBy(() => call('airPresure', {}))).toMatchObject({
      code: 'UNKNOWN_NAME',
      path: 'name',
      nearest: expect.arrayContaining(['airPressure']),
    });
    for (const name of ['constructor', 'StillroomError', 'call', ''])
      expect(thrownBy(() => call(name, {})).code).toBe('UNKNOWN_NAME');
  });
});
