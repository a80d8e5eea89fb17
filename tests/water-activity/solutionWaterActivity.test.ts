import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type SoluteMass,
  type SolutionWaterActivityInput,
  solutionWaterActivity,
} from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

const grams = (value: number) => ({ value, unit: 'g' }) as const;
const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);

describe('the ways to give the solutes', () => {
  test('an object and a list say the same', () => {
    const water = '60 g';
    const one = solutionWaterActivity({ water, solutes: { sucrose: '30 g', glucose: '10 g' } });
    const other = solutionWaterActivity({
      water,
      solutes: [
        { solute: 'glucose', mass: '10 g' },
        { solute: 'sucrose', mass: '30 g' },
      ],
    });
    expect(one.waterActivity).toBeCloseTo(other.waterActivity, 14);
  });

  test('kitchen names are understood, and the same solute twice is added up', () => {
    const once = solutionWaterActivity({ water: '1 lb', solutes: { sucrose: '1 lb' } });
    const twice = solutionWaterActivity({ water: '1 lb', solutes: { sugar: '8 oz', 'table sugar': '8 oz' } });
    expect(twice.waterActivity).toBeCloseTo(once.waterActivity, 12);
    expect(twice.parts).toHaveLength(1);
  });

  test('invert sugar is half glucose, half fructose', () => {
    const invert = solutionWaterActivity({ water: '35 g', solutes: { 'invert sugar': '40 g' } });
    const both = solutionWaterActivity({ water: '35 g', solutes: { glucose: '20 g', fructose: '20 g' } });
    expect(invert.waterActivity).toBeCloseTo(both.waterActivity, 14);
    expect(invert.model).toBe('norrish');
  });

  test('a solute of no weight changes nothing', () => {
    const plain = solutionWaterActivity({ water: '60 g', solutes: { sucrose: '30 g' } });
    const more = solutionWaterActivity({ water: '60 g', solutes: { sucrose: '30 g', salt: '0 g' } });
    expect(more.waterActivity).toBe(plain.waterActivity);
    expect(more.model).toBe('norrish');
    expect(solutionWaterActivity({ water: '60 g', solutes: { sucrose: '0 g' } }).waterActivity).toBe(1);
    expect(
      solutionWaterActivity({ water: '60 g', solutes: { salt: '0 g' }, model: 'debye-huckel' }).waterActivity,
    ).toBe(1);
    expect(solutionWaterActivity({ water: '60 g', solutes: { sucrose: '0 g' }, model: 'norrish' }).waterActivity).toBe(
      1,
    );
  });
});

describe('what the answer says of itself', () => {
  test('the range widens for mixtures, with salt, below 0.8 and away from 25 degC', () => {
    const width = (input: SolutionWaterActivityInput) => {
      const { low, high } = solutionWaterActivity(input).waterActivityRange;
      return high - low;
    };
    const water = '50 g';
    const alone = width({ water, solutes: { sucrose: '50 g' } });
    expect(width({ water, solutes: { sucrose: '40 g', glucose: '10 g' } })).toBeGreaterThan(alone);
    expect(width({ water, solutes: { sucrose: '40 g', salt: '5 g' } })).toBeGreaterThan(
      width({ water, solutes: { sucrose: '40 g', glucose: '10 g' } }),
    );
    expect(width({ water, solutes: { fructose: '150 g' } })).toBeGreaterThan(
      width({ water, solutes: { fructose: '50 g' } }),
    );
    expect(width({ water, solutes: { sucrose: '50 g' }, temperature: '60 degC' })).toBeGreaterThan(alone);
  });

  test('cautions name what the figure leans on', () => {
    expect(ids(solutionWaterActivity({ water: '50 g', solutes: { sucrose: '40 g', salt: '5 g' } }))).toContain(
      'salty-mixture',
    );
    expect(ids(solutionWaterActivity({ water: '50 g', solutes: { fructose: '150 g' } }))).toContain(
      'outside-norrish-range',
    );
    expect(
      ids(solutionWaterActivity({ water: '50 g', solutes: { sucrose: '40 g' }, temperature: '40 degC' })),
    ).toContain('model-at-25-degc');
    expect(ids(solutionWaterActivity({ water: '50 g', solutes: { sucrose: '40 g' } }))).toContain('recalled');
    expect(ids(solutionWaterActivity({ water: '50 g', solutes: { glycerol: '40 g' } }))).not.toContain('recalled');
  });

  test('basis gives a source for every figure', () => {
    const { basis } = solutionWaterActivity({ water: '50 g', solutes: { sucrose: '40 g', salt: '5 g' } });
    expect(basis.map(({ source }) => source)).toEqual(
      expect.arrayContaining(['ross-1975', 'baeza-2010', 'chirife-favetto-1980', 'pitzer-mayorga-1973']),
    );
  });

  test('the equation one solute picked is named', () => {
    const model = (solutes: Record<string, '1 g'>) => solutionWaterActivity({ water: '50 g', solutes }).model;
    expect(model({ sucrose: '1 g' })).toBe('norrish');
    expect(model({ salt: '1 g' })).toBe('pitzer');
    expect(model({ glycerol: '1 g' })).toBe('wilson');
    expect(model({ ethanol: '1 g' })).toBe('raoult');
    expect(model({ salt: '1 g', sucrose: '1 g' })).toBe('ross');
  });
});

describe('properties', () => {
  const names = ['sucrose', 'glucose', 'fructose', 'NaCl', 'glycerol', 'sorbitol', 'citric acid'] as const;

  test('always between 0 and 1, inside its range, and scale-free', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...names), fc.double({ min: 0, max: 30, noNaN: true })), {
          minLength: 1,
          maxLength: 5,
        }),
        (given) => {
          const at = (scale: number) => {
            const solutes: SoluteMass[] = given.map(([solute, mass]) => ({ solute, mass: grams(mass * scale) }));
            return solutionWaterActivity({ water: grams(100 * scale), solutes, supersaturated: true });
          };
          const { waterActivity, waterActivityRange: range } = at(1);
          expect(waterActivity).toBeGreaterThan(0);
          expect(waterActivity).toBeLessThanOrEqual(1);
          expect(range.low).toBeLessThanOrEqual(waterActivity);
          expect(range.high).toBeGreaterThanOrEqual(waterActivity);
          expect(range.high).toBeLessThanOrEqual(1);
          expect(at(7).waterActivity).toBeCloseTo(waterActivity, 12);
        },
      ),
    );
  });

  test('more of any solute never raises it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.double({ min: 1, max: 25, noNaN: true }), (solute, mass) => {
        const at = (value: number) =>
          solutionWaterActivity({
            water: grams(100),
            solutes: [
              { solute, mass: grams(value) },
              { solute: 'sucrose', mass: grams(20) },
            ],
          }).waterActivity;
        expect(at(mass * 1.01)).toBeLessThan(at(mass));
      }),
    );
  });
});

describe('chosen models', () => {
  const sugar = { water: '50 g', solutes: { sucrose: '50 g' } } as const;
  const brine = { water: '90 g', solutes: { salt: '10 g' } } as const;

  test.each([
    'norrish',
    'norrish roots',
    'norrish mean k',
    'norrish log10',
    'money-born',
    'starzak-peacock',
    'robinson-stokes',
    'zobrist',
    'grover',
  ] as const)('%s is near the default for a 50 %% syrup', (model) => {
    const one = solutionWaterActivity({ ...sugar, model });
    expect(one.model).toBe(model);
    expect(Math.abs(one.waterActivity - solutionWaterActivity(sugar).waterActivity)).toBeLessThan(0.011);
  });

  test.each(['pitzer', 'debye-huckel', 'raoult'] as const)('%s is near the default for a brine', (model) => {
    const one = solutionWaterActivity({ ...brine, model }).waterActivity;
    expect(Math.abs(one - solutionWaterActivity(brine).waterActivity)).toBeLessThan(0.006);
  });

  test('wilson is the default for glycerol and moves with temperature', () => {
    const at = (temperature: '20 degC' | '60 degC') =>
      solutionWaterActivity({ water: '50 g', solutes: { glycerol: '50 g' }, model: 'wilson', temperature });
    expect(at('60 degC').waterActivity).not.toBe(at('20 degC').waterActivity);
    expect(ids(at('60 degC'))).not.toContain('model-at-25-degc');
  });

  test('a model that is not for these solutes is refused', () => {
    const two = { water: '50 g', solutes: { sucrose: '5 g', salt: '5 g' } } as const;
    expect(errorOf(() => solutionWaterActivity({ ...two, model: 'pitzer' }))).toEqual(['CONTRADICTION', 'model']);
    expect(errorOf(() => solutionWaterActivity({ ...brine, model: 'zobrist' }))).toEqual(['CONTRADICTION', 'model']);
    expect(errorOf(() => solutionWaterActivity({ ...sugar, model: 'pitzer' }))).toEqual([
      'OUT_OF_RANGE',
      'solutes.sucrose',
    ]);
    expect(errorOf(() => solutionWaterActivity({ ...brine, model: 'norrish' }))).toEqual([
      'OUT_OF_RANGE',
      'solutes.salt',
    ]);
    expect(errorOf(() => solutionWaterActivity({ ...brine, model: 'norrish log10' }))).toEqual([
      'OUT_OF_RANGE',
      'solutes.salt',
    ]);
    expect(errorOf(() => solutionWaterActivity({ ...sugar, model: 'debye-huckel' }))).toEqual([
      'OUT_OF_RANGE',
      'solutes.sucrose',
    ]);
    const lactic = { water: '50 g', solutes: { 'lactic acid': '5 g' }, model: 'norrish roots' } as const;
    expect(errorOf(() => solutionWaterActivity(lactic))).toEqual(['OUT_OF_RANGE', 'solutes.lactic acid']);
    expect(errorOf(() => solutionWaterActivity({ ...sugar, model: 'guess' as never }))).toEqual([
      'UNKNOWN_NAME',
      'model',
    ]);
  });

  test('each refuses outside its range', () => {
    const strong = { water: '30 g', solutes: { sucrose: '70 g' }, supersaturated: true } as const;
    expect(errorOf(() => solutionWaterActivity({ ...strong, model: 'robinson-stokes' }))).toEqual([
      'OUT_OF_RANGE',
      'solutes.sucrose',
    ]);
    const weak = { water: '90 g', solutes: { sucrose: '10 g' } } as const;
    expect(errorOf(() => solutionWaterActivity({ ...weak, model: 'zobrist' }))).toEqual([
      'OUT_OF_RANGE',
      'solutes.sucrose',
    ]);
    expect(errorOf(() => solutionWaterActivity({ ...weak, model: 'grover' }))).toEqual(['OUT_OF_RANGE', 'solutes']);
    const dense = { water: '10 g', solutes: { sucrose: '120 g' }, model: 'grover' } as const;
    expect(errorOf(() => solutionWaterActivity(dense))).toEqual(['OUT_OF_RANGE', 'solutes']);
    expect(
      errorOf(() => solutionWaterActivity({ water: '100 g', solutes: { NaCl: '95 g' }, supersaturated: true })),
    ).toEqual(['OUT_OF_RANGE', 'solutes.NaCl']);
    expect(errorOf(() => solutionWaterActivity({ water: '100 g', solutes: { LiCl: '40 g' } }))[0]).toBe('OUT_OF_RANGE');
    expect(errorOf(() => solutionWaterActivity({ water: '100 g', solutes: { ethanol: '40 g' } }))[0]).toBe(
      'OUT_OF_RANGE',
    );
  });
});

describe('bad input', () => {
  const bad: [string, unknown, [string, string]][] = [
    ['beyond solubility', { water: '100 g', solutes: { sugar: '220 g' } }, ['OUT_OF_RANGE', 'solutes.sugar']],
    [
      'beyond solubility, in a list',
      { water: '100 g', solutes: [{ solute: 'salt', mass: '40 g' }] },
      ['OUT_OF_RANGE', 'solutes[0].solute'],
    ],
    ['no such solute', { water: '100 g', solutes: { sugr: '2 g' } }, ['UNKNOWN_NAME', 'solutes.sugr']],
    ['no water', { water: '0 g', solutes: { sugar: '2 g' } }, ['OUT_OF_RANGE', 'water']],
    ['hardly any water', { water: '1 mg', solutes: { glycerol: '2 kg' } }, ['OUT_OF_RANGE', 'water']],
    ['no solutes', { water: '1 kg', solutes: {} }, ['OUT_OF_RANGE', 'solutes']],
    ['an empty list', { water: '1 kg', solutes: [] }, ['OUT_OF_RANGE', 'solutes']],
    [
      'too many',
      { water: '1 kg', solutes: Object.fromEntries(Array.from({ length: 101 }, (_, i) => [`s${i}`, '1 g'])) },
      ['TOO_MUCH', 'solutes'],
    ],
    ['a volume', { water: '1 kg', solutes: { sugar: '2 cups' } }, ['WRONG_DIMENSION', 'solutes.sugar']],
    ['a negative mass', { water: '1 kg', solutes: { sugar: '-2 g' } }, ['OUT_OF_RANGE', 'solutes.sugar']],
    ['too hot', { water: '1 kg', solutes: { sugar: '2 g' }, temperature: '120 degC' }, ['OUT_OF_RANGE', 'temperature']],
    ['nothing', undefined, ['MISSING', '']],
    ['no fields', {}, ['MISSING', 'water']],
  ];
  test.each(bad)('%s', (_, input, expected) => {
    expect(errorOf(() => solutionWaterActivity(input as never))).toEqual(expected);
  });

  test('supersaturated answers with its caution, and says nothing where all dissolves', () => {
    const strong = solutionWaterActivity({ water: '100 g', solutes: { sugar: '220 g' }, supersaturated: true });
    expect(ids(strong)).toContain('supersaturated');
    expect(
      ids(solutionWaterActivity({ water: '100 g', solutes: { sugar: '20 g' }, supersaturated: true })),
    ).not.toContain('supersaturated');
    // warm water holds more
    expect(
      solutionWaterActivity({ water: '100 g', solutes: { sugar: '220 g' }, temperature: '60 degC' }).waterActivity,
    ).toBeLessThan(0.85);
  });

  test('the salts beyond saturation go by the equation that reaches there', () => {
    const brine = solutionWaterActivity({ water: '100 g', solutes: { salt: '45 g' }, supersaturated: true });
    expect(brine.model).toBe('debye-huckel');
    expect(brine.waterActivity).toBeLessThan(0.7523);
  });
});

test('freezing water has the activity 1, and a point above 0 degC is refused', () => {
  expect(solutionWaterActivity({ freezingPoint: '0 degC' }).waterActivity).toBe(1);
  expect(solutionWaterActivity({ freezingPoint: '23.126 degF' }).waterActivity).toBeCloseTo(0.9532, 3);
  expect(errorOf(() => solutionWaterActivity({ freezingPoint: '1 degC' }))).toEqual(['OUT_OF_RANGE', 'freezingPoint']);
  expect(errorOf(() => solutionWaterActivity({ freezingPoint: '-41 degC' }))).toEqual([
    'OUT_OF_RANGE',
    'freezingPoint',
  ]);
  const both = { freezingPoint: '-2 degC', water: '1 kg', solutes: { sugar: '1 kg' } };
  expect(errorOf(() => solutionWaterActivity(both as never))[0]).toBe('UNKNOWN_FIELD');
});

// sucrose of 10 to 45 % by Norrish and by where it freezes: apart by less than the range says
test.each([
  [10, -0.63],
  [20, -1.46],
  [30, -2.64],
  [42, -4.93],
])('sucrose of %s %% from its freezing point', (brix, degC) => {
  const { waterActivity } = solutionWaterActivity({
    water: { value: 100 - brix, unit: 'g' },
    solutes: { sucrose: { value: brix, unit: 'g' } },
  });
  const { waterActivityRange: range, model } = solutionWaterActivity({ freezingPoint: { value: degC, unit: 'degC' } });
  expect(model).toBe('freezing point');
  expect(range.low).toBeLessThanOrEqual(waterActivity);
  expect(range.high).toBeGreaterThanOrEqual(waterActivity);
});
