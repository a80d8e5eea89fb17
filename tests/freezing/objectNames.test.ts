import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import * as freezing from '../../src/freezing/index';

const NAMES = ['constructor', 'toString', '__proto__', 'hasOwnProperty', 'valueOf'];
type Call = (text: string) => unknown;
const CALLS: Record<string, Call> = {
  'blanching food': (food) => freezing.blanching({ food }),
  'blanching form': (form) => freezing.blanching({ food: 'carrot', form }),
  'blanching method': (method) => freezing.blanching({ food: 'carrot', form: 'slices', method: method as never }),
  'freezerPack food': (food) => freezing.freezerPack({ food, pack: 'dry', amount: '1 quart' }),
  'freezerPack pack': (pack) => freezing.freezerPack({ food: 'apple', pack: pack as never, amount: '1 quart' }),
  freezingHeadspace: (pack) => freezing.freezingHeadspace({ pack: pack as never, opening: 'wide', size: 'pint' }),
  freezingSyrup: (strength) => freezing.freezingSyrup({ strength: strength as never, volume: '1 quart' }),
  freezingTime: (shape) => freezing.freezingTime({ shape } as never),
  foodProperties: (food) => freezing.foodProperties({ food, temperature: '-10 degC' } as never),
};

describe.each(Object.entries(CALLS))('%s', (_, call) => {
  test.each(NAMES)('%s is a name like any other: refused', (text) => {
    let thrown: unknown;
    try {
      call(text);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(StillroomError);
    expect((thrown as StillroomError).message).not.toContain('native code');
  });
});
