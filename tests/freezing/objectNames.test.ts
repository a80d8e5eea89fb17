import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import * as freezing from '../../src/freezing/index';

const NAMES = ['constructor', 'toString', '__proto__', 'hasOwnProperty', 'valueOf'];
type Call = (text: string) => unknown;
const CALLS: Record<string, Call> = {
  'blanching food': (food) => freezing.blanching({ food }),
  'blanching form': (form) => freezing.blanching({ food: 'carrot', form }),
  'blanching blanchIn': (blanchIn) =>
    freezing.blanching({ food: 'carrot', form: 'slices', blanchIn: blanchIn as never }),
  'freezerPack food': (food) => freezing.freezerPack({ food, style: 'dry', amount: '1 quart' }),
  'freezerPack style': (style) => freezing.freezerPack({ food: 'apple', style: style as never, amount: '1 quart' }),
  freezingHeadspace: (style) => freezing.freezingHeadspace({ style: style as never, mouth: 'wide', jar: 'pint' }),
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
