import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/StillroomError';
import { fields, readInput } from '../../src/quantity/fields';
import { HOLDS, holds, kitchenFields } from '../../src/recipes/kitchen';
import { kitchenOf } from '../../src/recipes/kitchenOf';
import { waysToKeep } from '../../src/recipes/waysToKeep';
import { thrownBy } from '../helpers/errors';

const load = (given: unknown) => readInput(fields({ holds: holds() }), { holds: given }).holds;
const kitchen = (given: object) => readInput(kitchenOf(kitchenFields()), { elevation: '900 ft', ...given });
const errorOf = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    if (error instanceof StillroomError) return `${error.code} ${error.path}`;
    throw error;
  }
  return 'no error';
};

describe('what one load holds', () => {
  test('is read by any name of the jar', () => {
    expect(load({ pints: 9, quart: 7 })).toEqual({ pint: 9, quart: 7 });
  });
  test.each([
    ['nothing', undefined, 'MISSING holds'],
    ['a number', 7, 'WRONG_TYPE holds'],
    ['a list', [7], 'WRONG_TYPE holds'],
    ['null', null, 'WRONG_TYPE holds'],
    ['no jar', {}, 'OUT_OF_RANGE holds'],
    ['no jars of a size', { pint: 0 }, 'OUT_OF_RANGE holds.pint'],
    ['half a jar', { pint: 1.5 }, 'OUT_OF_RANGE holds.pint'],
    ['too many', { pint: 101 }, 'OUT_OF_RANGE holds.pint'],
    ['one size by two names', { pint: 9, pints: 8 }, 'CONTRADICTION holds'],
  ])('is not %s', (_, given, expected) => {
    expect(errorOf(() => load(given))).toBe(expected);
  });
});

describe('a kitchen', () => {
  test('is an elevation at least', () => {
    expect(kitchen({}).elevation).toEqual({ value: 900, unit: 'ft' });
    expect(errorOf(() => readInput(fields(kitchenFields()), {}))).toBe('MISSING elevation');
  });
  test.each([
    ['no hands', { hands: 0 }, 'OUT_OF_RANGE hands'],
    ['an item that no recipe takes', { pantry: [{ item: 'gold', amount: '1 g' }] }, 'UNKNOWN_NAME pantry[0].item'],
    ['a pot filled above its rim', { pots: [{ volume: '8 quarts', fill: 1.1 }] }, 'OUT_OF_RANGE pots[0].fill'],
    ['a canner of no kind', { canners: [{ holds: { pint: 9 } }] }, 'MISSING canners[0].method'],
    ['a field of no name', { oven: true }, 'UNKNOWN_FIELD oven'],
    ['a start that may be either half of the day', { start: '8' }, 'NOT_A_QUANTITY start'],
    ['a start as a number', { start: 8 }, 'WRONG_TYPE start'],
    ['a break of no length', { breaks: [{ at: 'noon' }] }, 'MISSING breaks[0].for'],
    ['a break at no time', { breaks: [{ at: 'lunch', for: '1 h' }] }, 'NOT_A_QUANTITY breaks[0].at'],
    ['a break of a day', { breaks: [{ at: 'noon', for: '13 h' }] }, 'OUT_OF_RANGE breaks[0].for'],
    ['too many breaks', { breaks: Array(9).fill({ at: 'noon', for: '5 min' }) }, 'TOO_MUCH breaks'],
    ['half a pair of hands', { hands: 1.5 }, 'OUT_OF_RANGE hands'],
    ['a word for hands', { hands: 'two' }, 'WRONG_TYPE hands'],
    ['nobody', { hands: [] }, 'OUT_OF_RANGE hands'],
    ['a crowd', { hands: Array.from({ length: 51 }, (_, each) => `helper ${each}`) }, 'TOO_MUCH hands'],
    ['hands of no name', { hands: ['cook', ' '] }, 'UNKNOWN_NAME hands[1]'],
    ['hands numbered', { hands: [1] }, 'WRONG_TYPE hands[0]'],
    ['hands named twice', { hands: ['cook', 'helper', 'cook'] }, 'CONTRADICTION hands[2]'],
    ['a rack that holds nothing said', { pots: [{ volume: '8 quarts', rack: true }] }, 'MISSING pots[0].holds'],
    ['jars in a pot without a rack', { pots: [{ volume: '8 quarts', holds: { pint: 4 } }] }, 'MISSING pots[0].rack'],
    ['a rack in a word', { pots: [{ volume: '8 quarts', rack: 'yes' }] }, 'WRONG_TYPE pots[0].rack'],
    ['foam above the rim', { pots: [{ volume: '8 quarts', foaming: 1.2 }] }, 'OUT_OF_RANGE pots[0].foaming'],
    [
      'more foam than food at rest',
      { pots: [{ volume: '8 quarts', fill: 0.5, foaming: 0.6 }] },
      'CONTRADICTION pots[0].foaming',
    ],
    [
      'one vessel said twice',
      {
        pots: [{ name: 'Big pot', volume: '16 quarts', rack: true, holds: { pint: 9 } }],
        canners: [{ name: 'big-pot', method: 'boiling-water', holds: { pint: 9 } }],
      },
      'CONTRADICTION canners[0].name',
    ],
    [
      'a canner busy until no time',
      { canners: [{ method: 'boiling-water', holds: { pint: 9 }, busyUntil: 'later' }] },
      'NOT_A_QUANTITY canners[0].busyUntil',
    ],
    [
      'a dryer busy for weeks',
      { dryer: { trays: 3, trayArea: '1 ft2', busyUntil: '200 h' } },
      'OUT_OF_RANGE dryer.busyUntil',
    ],
    [
      'a freeze-dryer busy as a number',
      { freezeDryer: { trays: 3, trayArea: '1 ft2', ice: '2 kg', busyUntil: 6 } },
      'WRONG_TYPE freezeDryer.busyUntil',
    ],
    [
      'humidity in percent as a number',
      { dryer: { trays: 3, trayArea: '1 ft2', relativeHumidity: 85 } },
      'OUT_OF_RANGE dryer.relativeHumidity',
    ],
    ['a stove of wood', { utilities: { stove: 'wood' } }, 'UNKNOWN_NAME utilities.stove'],
    [
      'gas by the hour',
      { utilities: { stove: 'gas', gas: '1 USD', gasPer: '1 h' } },
      'WRONG_DIMENSION utilities.gasPer',
    ],
    [
      'gas by no amount',
      { utilities: { stove: 'gas', gas: '1 USD', gasPer: '0 therm' } },
      'OUT_OF_RANGE utilities.gasPer',
    ],
    [
      'gas by the pound',
      { utilities: { stove: 'gas', gas: '1 USD', gasPer: '1 lb' } },
      'WRONG_DIMENSION utilities.gasPer',
    ],
    ['an amount of gas for no price', { utilities: { stove: 'propane', gasPer: '1 lb' } }, 'MISSING utilities.gas'],
  ])('is refused with %s', (_, given, expected) => {
    expect(errorOf(() => kitchen(given))).toBe(expected);
  });
});

describe('what a kitchen says is read as', () => {
  test('minutes after midnight, names, and until when', () => {
    const read = kitchen({
      start: '7:30 am',
      breaks: [{ at: '12:30', for: '45 min' }],
      hands: [' cook ', 'helper'],
      canners: [
        { method: 'boiling-water', holds: { pint: 9 }, busyUntil: '10 am' },
        { method: 'dial-gauge', holds: { pint: 9 }, busyUntil: '90 min' },
      ],
      utilities: { stove: 'propane', gas: '3.10 USD', gasPer: '1 gallon' },
    });
    expect(read).toMatchObject({ start: 450, breaks: [{ at: 750 }], hands: ['cook', 'helper'] });
    expect(read.canners?.map(({ busyUntil }) => busyUntil)).toEqual([{ clock: 600 }, { after: 90 }]);
    expect(read.utilities?.gasPer).toEqual({ value: 1, unit: 'gallon' });
  });
  test('a metric jar by one name, however it is written', () => {
    const read = kitchen({
      jars: [{ jar: '0.5 L', count: 30 }],
      canners: [{ method: 'boiling-water', holds: { '500 mL': 7, '1 L': 5 } }],
    });
    expect(read.jars?.[0]?.jar).toBe('500 mL');
    expect(read.canners?.[0]?.holds).toEqual({ '500 mL': 7, '1 L': 5 });
    expect(errorOf(() => load({ '0.5 L': 7, '500 mL': 7 }))).toBe('CONTRADICTION holds');
  });
  test('a pot with a rack as a canner of its name, half full of water', () => {
    const pots = [{ volume: '6 quarts' }, { volume: '16 quarts', rack: true, holds: { pints: 9 }, count: 2 }];
    expect(kitchen({ pots }).canners).toEqual([
      {
        name: '16 quart pot',
        method: 'boiling-water',
        holds: { pint: 9 },
        water: { value: 8, unit: 'quart' },
        count: 2,
      },
    ]);
    expect(kitchen({ pots: [{ volume: '6 quarts', rack: false }] }).canners).toBeUndefined();
  });
  test('until when is asked for in both ways', () => {
    const canner = { method: 'boiling-water', holds: { pint: 9 }, busyUntil: '3 cups' };
    expect(thrownBy(() => kitchen({ canners: [canner] }))).toMatchObject({
      code: 'WRONG_DIMENSION',
      given: '3 cups',
      expected: 'a time of day such as "14:00", or a time from the start such as "6 h", above 0 and up to 168 h',
    });
  });
  test('a rack asks for its load in the words of a canner', () => {
    const ask = (given: object) => thrownBy(() => kitchen(given)).expected;
    expect(ask({ pots: [{ volume: '8 quarts', rack: true }] })).toBe(HOLDS);
    expect(ask({ canners: [{ method: 'boiling-water' }] })).toBe(HOLDS);
  });
});

describe('ways of a small kitchen', () => {
  const ways = (given: object) => {
    const found = waysToKeep({ food: 'cucumber', kitchen: { elevation: '900 ft', ...given } } as never);
    return 'ways' in found ? found.ways : [];
  };
  test('with one pot and no canner those come first that need none', () => {
    const found = ways({ pots: [{ volume: '8 quarts' }], canners: [], jars: [{ jar: 'pint', count: 6 }] });
    expect(found[0]?.lacking).toEqual([]);
    expect(found[0]?.processes).toEqual([]);
    expect(found.filter(({ processes }) => processes.length > 0)).toEqual([]);
  });
  test('a rack is a canner, and what it holds may be left out', () => {
    const found = ways({ pots: [{ volume: '8 quarts', rack: true }], jars: [{ jar: 'pint', count: 6 }] });
    const methods = new Set(found.flatMap(({ processes }) => processes.map(({ method }) => method)));
    expect([...methods]).toEqual(['boiling-water']);
  });
});
