import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brine, brineStrength, fermentSalt } from '../../src/acid/index';
import { expectError } from '../helpers/errors';

type Salted = Extract<ReturnType<typeof brine>, { salt: unknown }>;
type Strength = Extract<ReturnType<typeof brineStrength>, { ratios: unknown }>;
/** The answers where a refusal is not what is tested. */
const salted = (input: Parameters<typeof brine>[0]): Salted => {
  const answer = brine(input);
  if ('reason' in answer) throw new Error(answer.reason);
  return answer;
};
const strengthOf = (input: Parameters<typeof brineStrength>[0]): Strength => {
  const answer = brineStrength(input);
  if ('reason' in answer) throw new Error(answer.reason);
  return answer;
};

const kg = (value: number) => ({ value, unit: 'kg' as const });

test('what a percentage is of decides the salt', () => {
  const water = '1 kg' as const;
  const produce = '1 kg' as const;
  const salt = (basis: 'water' | 'brine' | 'water + produce' | 'produce') =>
    salted({ percent: '5 %', basis, water, produce }).salt.value;
  expect(salt('water')).toBeCloseTo(0.05, 12);
  expect(salt('brine')).toBeCloseTo(0.05 / 0.95, 12);
  expect(salt('water + produce')).toBeCloseTo(0.1, 12);
  expect(salt('produce')).toBeCloseTo(0.05, 12);
});

test('water by measure counts by its weight, and the salt comes in grams', () => {
  const answer = salted({ percent: '5 %', basis: 'water', water: '1 L' });
  expect(answer.salt.unit).toBe('g');
  expect(answer.salt.value).toBeCloseTo(0.05 * 998.2071, 9);
  expect(answer.fineSalt.value).toBeCloseTo((0.05 * 998.2071) / 18, 9);
  expect(answer.basis).toContainEqual(expect.objectContaining({ source: 'crc-water-density' }));
  expect(salted({ percent: '2 %', basis: 'produce', produce: '10 lb' }).salt).toEqual({ value: 0.2, unit: 'lb' });
});

test('both ways, on every basis', () => {
  const amount = fc.double({ min: 0.1, max: 100, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 0.1, noNaN: true }), amount, amount, (percent, water, produce) => {
      const fields = { water: kg(water), produce: kg(produce) };
      const back = (basis: 'water' | 'brine' | 'water + produce' | 'produce') => {
        const { salt, ratios } = salted({ percent, basis, ...fields, purpose: 'other' });
        expect(strengthOf({ salt, ...fields, purpose: 'other' }).ratios.toWater).toBeCloseTo(ratios.toWater ?? 0, 9);
        return ratios;
      };
      expect(back('water').toWater).toBeCloseTo(percent, 9);
      expect(back('brine').ofBrine).toBeCloseTo(percent, 9);
      if (percent * (water + produce) < 0.3 * water) {
        expect(back('water + produce').toWaterAndProduce).toBeCloseTo(percent, 9);
      }
      if (percent * produce < 0.3 * water) expect(back('produce').toProduce).toBeCloseTo(percent, 9);
    }),
  );
});

test('spoons of fine salt are weighed', () => {
  // 1 1/2 tbsp to a quart of water, the printed top-up brine: 27 g in 945 g
  const { ratios, saltMass } = strengthOf({ salt: '1 1/2 tbsp', water: '1 quart' });
  expect(saltMass).toEqual({ value: 27, unit: 'g' });
  expect(ratios.toWater).toBeCloseTo(27 / (946.352946 * 0.9982071), 9);
  expect(ratios.toProduce).toBeUndefined();
});

const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);
const produce = '5 lb' as const;
const water = '1 quart' as const;

test.each([0.001, 0.005, 0.01, 0.015, 0.0199])('a ferment of %d salt is refused, however it is asked', (percent) => {
  for (const answer of [
    brine({ percent, basis: 'produce', produce }),
    brine({ percent, basis: 'water', water }),
    brine({ percent, basis: 'brine', water }),
    brine({ percent, basis: 'water + produce', water, produce }),
    brine({ percent, basis: 'water', water, produce }),
    brine({ percent, basis: 'produce', produce, purpose: 'ferment', food: 'sauerkraut' }),
    brine({ percent, basis: 'produce', produce, food: 'kimchi' }),
    brineStrength({ salt: { value: percent * 1000, unit: 'g' }, produce: '1 kg' }),
    brineStrength({ salt: { value: percent * 1000, unit: 'g' }, water: '1 kg' }),
    brineStrength({ salt: { value: percent * 2000, unit: 'g' }, water: '1 kg', produce: '1 kg' }),
  ]) {
    expect(answer).toMatchObject({ tested: false, instead: expect.stringContaining('at least') });
    expect(ids(answer)).toContain('salt-guards-the-ferment');
    expect(answer).not.toHaveProperty('salt');
    if ('reason' in answer) expect(`${answer.reason} ${answer.instead}`).not.toMatch(/publish/);
  }
});

test('the least salt is what the pages print', () => {
  // sauerkraut: 2 % of the cabbage by the standard, 3 tbsp for 5 lb by the bulletin
  expect(brine({ percent: '2 %', basis: 'produce', produce, food: 'cabbage' })).toMatchObject({
    least: { share: 0.02, of: 'water and produce' },
  });
  expect(ids(salted({ percent: '2.3 %', basis: 'produce', produce }))).toContain('less-salt-than-the-bulletin');
  expect(ids(strengthOf({ salt: '3 tbsp', produce }))).not.toContain('less-salt-than-the-bulletin');
  // brine to top up: 1 1/2 tbsp a quart
  expect(strengthOf({ salt: '1 1/2 tbsp', water: '1 quart' }).least?.share).toBeCloseTo(27 / 944.65, 4);
  expect(brineStrength({ salt: '1 3/8 tbsp', water: '1 quart' })).toMatchObject({ tested: false });
  // dill pickles: 1/2 cup in 8 cups, for 4 lb
  const dill = { water: '8 cups', food: 'cucumbers' } as const;
  expect(brineStrength({ salt: '1/2 cup', ...dill })).toMatchObject({ least: { of: 'water' } });
  expect(brineStrength({ salt: '1/2 cup', ...dill, produce: '4 lb' })).toMatchObject({
    least: { of: 'water and produce' },
  });
  expect(brineStrength({ salt: '7/16 cup', ...dill })).toMatchObject({ tested: false });
  expect(brineStrength({ salt: '1/2 cup', ...dill, produce: '5 lb' })).toMatchObject({ tested: false });
  expect(brine({ percent: '5 %', basis: 'brine', water: '1 kg', food: 'dill pickles' })).toMatchObject({
    tested: false,
  });
});

test('the salt that fermentSalt gives is never refused, and less of it is', () => {
  for (const food of ['sauerkraut', 'dill pickles']) {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 200, noNaN: true }), (pounds) => {
        const weighed = { value: pounds, unit: 'lb' as const };
        const answer = fermentSalt({ food, produce: weighed });
        if (!('salt' in answer)) throw new Error('refused');
        const liquid = answer.water === undefined ? {} : { water: answer.water };
        const given = { produce: weighed, ...liquid, food };
        expect(strengthOf({ salt: answer.saltMass, ...given }).least).toBeDefined();
        const half = { value: answer.saltMass.value / 2, unit: 'g' as const };
        expect(brineStrength({ salt: half, ...given })).toMatchObject({ tested: false });
      }),
    );
  }
});

test('the salt that a refusal asks for is enough', () => {
  const food = fc.constantFrom('sauerkraut', 'dill pickles', 'kimchi');
  const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(double(0.05, 50), double(0.2, 5), food, (water, times, name) => {
      const produce = kg(water * times);
      for (const crock of [{ water: kg(water) }, { produce }, { water: kg(water), produce }]) {
        const short = brineStrength({ salt: '0.1 g', ...crock, food: name });
        const asked = 'instead' in short ? Number(/at least ([\d.]+) g/.exec(short.instead)?.[1]) : Number.NaN;
        expect(brineStrength({ salt: { value: asked, unit: 'g' }, ...crock, food: name })).toHaveProperty('ratios');
      }
    }),
  );
});

test('an answer says what it was held to', () => {
  expect(ids(salted({ percent: '5 %', basis: 'brine', water }))).toContain('name-the-ferment');
  expect(ids(salted({ percent: '3 %', basis: 'produce', produce, food: 'kimchi' }))).toContain('ferment-not-in-tables');
  const soak = salted({ percent: '1 %', basis: 'water', water, purpose: 'other' });
  expect(soak).not.toHaveProperty('least');
  expect(ids(soak)).toContain('not-a-ferment');
  expect(ids(strengthOf({ salt: '10 g', water: '1 kg', purpose: 'other' }))).toContain('not-a-ferment');
});

test('bad input', () => {
  expectError(() => brine({ percent: '5 %', basis: 'water' }), 'MISSING', 'water');
  expectError(() => brine({ percent: '5 %', basis: 'produce' }), 'MISSING', 'produce');
  expectError(() => brine({ percent: '5 %', basis: 'water + produce', water: '1 L' }), 'MISSING', 'produce');
  expectError(() => brine({ percent: '27 %', basis: 'brine', water: '1 kg' }), 'OUT_OF_RANGE', 'percent');
  expectError(() => brine({ percent: 5, basis: 'brine', water: '1 kg' }), 'OUT_OF_RANGE', 'percent');
  expectError(() => brine({ percent: '5 %', basis: 'salt' as never, water: '1 kg' }), 'UNKNOWN_NAME', 'basis');
  expectError(() => brine({ percent: '-1 %' as never, basis: 'brine', water: '1 kg' }), 'OUT_OF_RANGE', 'percent');
  expectError(
    () => brine({ percent: '5 %', basis: 'brine', water, purpose: 'soak' as never }),
    'UNKNOWN_NAME',
    'purpose',
  );
  expectError(() => brineStrength({ salt: '10 g' }), 'MISSING', 'water');
  expectError(() => brineStrength({ salt: '400 g', water: '1 kg' }), 'OUT_OF_RANGE', 'salt');
});
