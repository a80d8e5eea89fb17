import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brine, ferment } from '../../src/acid/index';
import { expectError } from '../helpers/errors';

type Salted = Extract<ReturnType<typeof brine>, { saltMass: unknown }>;
/** The answers where a refusal is not what is tested. */
const salted = (input: Parameters<typeof brine>[0]): Salted => {
  const answer = brine(input);
  if ('reason' in answer) throw new Error(answer.reason.text);
  return answer;
};
const kg = (value: number) => ({ value, unit: 'kg' as const });

test('what a percentage is of decides the salt', () => {
  const water = '1 kg' as const;
  const ready = '1 kg' as const;
  const salt = (of: 'water' | 'brine' | 'water and food' | 'food') =>
    salted({ share: '5 %', shareOf: of, water, ready }).saltMass.value;
  expect(salt('water')).toBeCloseTo(0.05, 12);
  expect(salt('brine')).toBeCloseTo(0.05 / 0.95, 12);
  expect(salt('water and food')).toBeCloseTo(0.1, 12);
  expect(salt('food')).toBeCloseTo(0.05, 12);
});

test('water by measure counts by its weight, and the salt comes in grams', () => {
  const answer = salted({ share: '5 %', shareOf: 'water', water: '1 L' });
  expect(answer.saltMass.unit).toBe('g');
  expect(answer.saltMass.value).toBeCloseTo(0.05 * 998.2071, 9);
  expect(answer.saltVolume.value).toBeCloseTo((0.05 * 998.2071) / 18, 9);
  expect(answer.basis).toContainEqual(expect.objectContaining({ source: 'crc-water-density' }));
  expect(salted({ share: '2 %', shareOf: 'food', ready: '10 lb' }).saltMass).toEqual({ value: 0.2, unit: 'lb' });
});

test('both ways, on every basis', () => {
  const amount = fc.double({ min: 0.1, max: 100, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 0.1, noNaN: true }), amount, amount, (share, water, ready) => {
      const fields = { water: kg(water), ready: kg(ready) };
      const back = (of: 'water' | 'brine' | 'water and food' | 'food') => {
        const { saltMass: salt, shares } = salted({ share, shareOf: of, ...fields, purpose: 'other' });
        expect(salted({ saltAdded: salt, ...fields, purpose: 'other' }).shares.ofWater).toBeCloseTo(
          shares.ofWater ?? 0,
          9,
        );
        return shares;
      };
      expect(back('water').ofWater).toBeCloseTo(share, 9);
      expect(back('brine').ofBrine).toBeCloseTo(share, 9);
      if (share * (water + ready) < 0.3 * water) {
        expect(back('water and food').ofWaterAndFood).toBeCloseTo(share, 9);
      }
      if (share * ready < 0.3 * water) expect(back('food').ofFood).toBeCloseTo(share, 9);
    }),
  );
});

test('spoons of fine salt are weighed', () => {
  // 1 1/2 tbsp to a quart of water, the printed top-up brine: 27 g in 945 g
  const { shares, saltMass: weighed } = salted({ saltAdded: '1 1/2 tbsp', water: '1 quart' });
  expect(weighed).toEqual({ value: 27, unit: 'g' });
  expect(shares.ofWater).toBeCloseTo(27 / (946.352946 * 0.9982071), 9);
  expect(shares.ofFood).toBeUndefined();
});

const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);
const ready = '5 lb' as const;
const water = '1 quart' as const;

test.each([0.001, 0.005, 0.01, 0.015, 0.0199])('a ferment of %d salt is refused, however it is asked', (share) => {
  for (const answer of [
    brine({ share, shareOf: 'food', ready }),
    brine({ share, shareOf: 'water', water }),
    brine({ share, shareOf: 'brine', water }),
    brine({ share, shareOf: 'water and food', water, ready }),
    brine({ share, shareOf: 'water', water, ready }),
    brine({ share, shareOf: 'food', ready, purpose: 'ferment', food: 'sauerkraut' }),
    brine({ share, shareOf: 'food', ready, food: 'kimchi' }),
    brine({ saltAdded: { value: share * 1000, unit: 'g' }, ready: '1 kg' }),
    brine({ saltAdded: { value: share * 1000, unit: 'g' }, water: '1 kg' }),
    brine({ saltAdded: { value: share * 2000, unit: 'g' }, water: '1 kg', ready: '1 kg' }),
  ]) {
    expect(answer).toMatchObject({ known: false, instead: [{ text: expect.stringContaining('at least') }, {}] });
    expect(ids(answer)).toContain('salt-guards-the-ferment');
    expect(answer).not.toHaveProperty('saltMass');
    if ('reason' in answer) expect(JSON.stringify([answer.reason, answer.instead])).not.toMatch(/publish/);
  }
});

test('the least salt is what the pages print', () => {
  // sauerkraut: 2 % of the cabbage by the standard, 3 tbsp for 5 lb by the bulletin
  expect(brine({ share: '2 %', shareOf: 'food', ready, food: 'cabbage' })).toMatchObject({
    leastSalt: { share: 0.02, shareOf: 'water and food' },
  });
  expect(ids(salted({ share: '2.3 %', shareOf: 'food', ready }))).toContain('less-salt-than-the-bulletin');
  expect(ids(salted({ saltAdded: '3 tbsp', ready }))).not.toContain('less-salt-than-the-bulletin');
  // brine to top up: 1 1/2 tbsp a quart
  expect(salted({ saltAdded: '1 1/2 tbsp', water: '1 quart' }).leastSalt?.share).toBeCloseTo(27 / 944.65, 4);
  expect(brine({ saltAdded: '1 3/8 tbsp', water: '1 quart' })).toMatchObject({ known: false });
  // dill pickles: 1/2 cup in 8 cups, for 4 lb
  const dill = { water: '8 cups', food: 'cucumbers' } as const;
  expect(brine({ saltAdded: '1/2 cup', ...dill })).toMatchObject({ leastSalt: { shareOf: 'water' } });
  expect(brine({ saltAdded: '1/2 cup', ...dill, ready: '4 lb' })).toMatchObject({
    leastSalt: { shareOf: 'water and food' },
  });
  expect(brine({ saltAdded: '7/16 cup', ...dill })).toMatchObject({ known: false });
  expect(brine({ saltAdded: '1/2 cup', ...dill, ready: '5 lb' })).toMatchObject({ known: false });
  expect(brine({ share: '5 %', shareOf: 'brine', water: '1 kg', food: 'dill pickles' })).toMatchObject({
    known: false,
  });
});

test('the salt that ferment gives is never refused, and less of it is', () => {
  for (const food of ['sauerkraut', 'dill pickles']) {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 200, noNaN: true }), (pounds) => {
        const ready = { value: pounds, unit: 'lb' as const };
        const answer = ferment({ food, ready });
        if (!('crock' in answer) || answer.salting === undefined) throw new Error('refused');
        const liquid = answer.salting.waterVolume === undefined ? {} : { water: answer.salting.waterVolume };
        const given = { ready, ...liquid, food };
        expect(salted({ saltAdded: answer.salting.mass, ...given }).leastSalt).toBeDefined();
        const half = { value: answer.salting.mass.value / 2, unit: 'g' as const };
        expect(brine({ saltAdded: half, ...given })).toMatchObject({ known: false });
      }),
    );
  }
});

test('the salt that a refusal asks for is enough', () => {
  const food = fc.constantFrom('sauerkraut', 'dill pickles', 'kimchi');
  const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(double(0.05, 50), double(0.2, 5), food, (water, times, name) => {
      const ready = kg(water * times);
      for (const crock of [{ water: kg(water) }, { ready }, { water: kg(water), ready }]) {
        const short = brine({ saltAdded: '0.1 g', ...crock, food: name });
        const asked =
          'instead' in short ? Number(/at least ([\d.]+) g/.exec(short.instead[0]?.text ?? '')?.[1]) : Number.NaN;
        expect(brine({ saltAdded: { value: asked, unit: 'g' }, ...crock, food: name })).toHaveProperty('shares');
      }
    }),
  );
});

test('an answer says what it was held to', () => {
  expect(ids(salted({ share: '5 %', shareOf: 'brine', water }))).toContain('name-the-ferment');
  expect(ids(salted({ share: '3 %', shareOf: 'food', ready, food: 'kimchi' }))).toContain('ferment-not-in-tables');
  const soak = salted({ share: '1 %', shareOf: 'water', water, purpose: 'other' });
  expect(soak).not.toHaveProperty('least');
  expect(ids(soak)).toContain('not-a-ferment');
  expect(ids(salted({ saltAdded: '10 g', water: '1 kg', purpose: 'other' }))).toContain('not-a-ferment');
});

test('bad input', () => {
  expectError(() => brine({ share: '5 %', shareOf: 'water' }), 'MISSING', 'water');
  expectError(() => brine({ share: '5 %', shareOf: 'food' }), 'MISSING', 'ready');
  expectError(() => brine({ share: '5 %', shareOf: 'water and food', water: '1 L' }), 'MISSING', 'ready');
  expectError(() => brine({ share: '27 %', shareOf: 'brine', water: '1 kg' }), 'OUT_OF_RANGE', 'share');
  expectError(() => brine({ share: 5, shareOf: 'brine', water: '1 kg' }), 'OUT_OF_RANGE', 'share');
  expectError(() => brine({ share: '5 %', shareOf: 'salt' as never, water: '1 kg' }), 'UNKNOWN_NAME', 'shareOf');
  expectError(() => brine({ share: '-1 %' as never, shareOf: 'brine', water: '1 kg' }), 'OUT_OF_RANGE', 'share');
  expectError(
    () => brine({ share: '5 %', shareOf: 'brine', water, purpose: 'soak' as never }),
    'UNKNOWN_NAME',
    'purpose',
  );
  expectError(() => brine({ saltAdded: '10 g' }), 'MISSING', 'water');
  expectError(() => brine({ saltAdded: '400 g', water: '1 kg' }), 'OUT_OF_RANGE', 'saltAdded');
  expectError(() => brine({ water: '1 kg' }), 'MISSING', 'share');
  expectError(() => brine({ share: '5 %', water: '1 kg' }), 'MISSING', 'shareOf');
  expectError(
    () => brine({ share: '5 %', shareOf: 'water', saltAdded: '10 g', water: '1 kg' }),
    'CONTRADICTION',
    'share',
  );
  expectError(() => brine({ shareOf: 'water', saltAdded: '10 g', water: '1 kg' }), 'CONTRADICTION', 'shareOf');
  expectError(() => brine({ share: '5 %', shareOf: 'water', water: '1 kg', food: 'granite' }), 'UNKNOWN_NAME', 'food');
});
