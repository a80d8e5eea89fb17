import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/StillroomError';
import * as freezing from '../../src/freezing/index';
import * as heat from '../../src/heat/index';
import * as plan from '../../src/plan/index';
import * as process from '../../src/process/index';
import * as recipes from '../../src/recipes/index';
import * as sugar from '../../src/sugar/index';
import { CANNING as canning } from '../helpers/inputs';

/** What people and programs pass by mistake. */
const GARBAGE: readonly unknown[] = [
  undefined,
  null,
  0,
  Number.NaN,
  'text',
  true,
  [],
  [1, 'two', null],
  {},
  { toString: 1 },
  JSON.parse('{"__proto__": {"food": "peach"}, "constructor": 1}'),
  Object.create(null),
  Symbol('name'),
  10n,
  () => 1,
  new Date(0),
];
/** Names that every object has. */
const NAMES = ['constructor', '__proto__', 'toString', 'hasOwnProperty', 'valueOf'];

const callable = (module: object) =>
  Object.entries(module).filter(
    (entry): entry is [string, (...given: unknown[]) => unknown] => typeof entry[1] === 'function',
  );
const functions = [...callable(plan), ...callable(sugar)];

/** What a call throws that is none of our errors. */
function foreign(call: () => unknown): string | undefined {
  try {
    call();
  } catch (error) {
    return error instanceof StillroomError ? undefined : String(error);
  }
  return undefined;
}

describe('garbage throws the one error', () => {
  test.each(functions)('%s', (_, call) => {
    for (const given of GARBAGE) expect(foreign(() => call(given))).toBeUndefined();
    expect(foreign(() => call())).toBeUndefined();
  });
});

const day = {
  lots: [{ food: 'peach', raw: '20 lb', name: 'crate' }],
  kitchen: {
    elevation: '500 ft',
    hours: '8 h',
    pots: [{ volume: '12 quarts' }],
    canners: [{ name: 'big', method: 'boiling-water', holds: { pint: 9 } }],
    jars: [{ jar: 'pint', count: 20, price: '1 USD' }],
    pantry: [{ item: 'sugar', amount: '10 lb' }],
    utilities: { stove: 'gas', gas: '1 USD' },
    dryer: { trays: 9, trayArea: '1200 cm2' },
  },
  products: [{ make: 'jars', from: 'peach', form: 'halves', pack: 'hot', jar: 'pint', syrup: 'light', name: 'jars' }],
  aim: 'most worth',
};

/** Every input with one leaf replaced. */
function* withLeaf(input: unknown, leaf: unknown): Generator<unknown> {
  if (typeof input !== 'object' || input === null) {
    yield leaf;
    return;
  }
  for (const [key, value] of Object.entries(input)) {
    for (const changed of withLeaf(value, leaf)) {
      yield Array.isArray(input)
        ? input.map((each, index) => (String(index) === key ? changed : each))
        : { ...input, [key]: changed };
    }
    yield Array.isArray(input) ? [leaf] : { ...input, [key]: leaf };
  }
}

describe('one wrong leaf is one error of ours', () => {
  const examples: readonly (readonly [string, (given: never) => unknown, unknown])[] = [
    ['planDay', plan.planDay, day],
    ['loadTimeline', process.loadTimeline, canning],
    ['energyNeeded of a machine', heat.energyNeeded, { machine: { power: '500 W', time: '2 h' } }],
    ['energyNeeded of drying', heat.energyNeeded, { drying: { fresh: '1 kg', moisture: 0.8, targetMoisture: 0.2 } }],
    ['energyCost', heat.energyCost, { energy: '1 kWh', energyPrice: { soldBy: 'kWh', price: '0.3 USD' } }],
    ['energyNeeded of freeze-drying', heat.energyNeeded, { freezeDrying: { ice: '1 kg' } }],
    ['freezeEnergy', freezing.freezeEnergy, { mass: '1 kg', moisture: 0.8, from: '20 degC', to: '-18 degC' }],
    [
      'energyNeeded of the stove',
      heat.energyNeeded,
      {
        cooking: {
          heatUp: { mass: '1 kg', from: '20 degC', to: '90 degC', what: 'food' },
          boilOff: '1 kg',
          hold: { time: '20 min', burnerPower: '2400 W' },
          elevation: '500 ft',
        },
      },
    ],
    ['recipe', recipes.recipe, { recipe: 'peach-jam-no-added-pectin' }],
    ['jamBalance', sugar.jamBalance, { ready: '1 kg', solids: 0.12, sugarToFruit: 1, finishSolids: 0.65 }],
    ['syrup', sugar.syrup, { strength: 'light', volume: '1 quart' }],
  ];
  test.each(examples)('%s', (_, call, input) => {
    expect(foreign(() => call(input as never))).toBeUndefined();
    for (const leaf of [...GARBAGE, ...NAMES]) {
      for (const given of withLeaf(input, leaf))
        expect([leaf, foreign(() => call(given as never))]).toEqual([leaf, undefined]);
    }
  });
  test.each(NAMES)('a jar size called %s in a canner', (name) => {
    const holds = JSON.parse(`{"${name}": 7, "pint": 9}`) as object;
    const canners = [{ method: 'boiling-water', holds }];
    expect(() => plan.planDay({ ...day, kitchen: { ...day.kitchen, canners } } as never)).toThrow(StillroomError);
  });
});
