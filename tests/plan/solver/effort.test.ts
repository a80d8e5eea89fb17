import { describe, expect, test } from 'vitest';
import { checkSchedule, type PlanDayInput, planDay } from '../../../src/plan/index';
import { planOf } from '../../../src/plan/planDay';
import { prepare } from '../../../src/plan/program/prepare';
import { costOf, effortFor } from '../../../src/plan/solver/effort';
import { mostNodes } from '../../../src/plan/solver/solve';
import { codeText } from '../../helpers/errors';

const KINDS = ['peach', 'apple', 'plum', 'tomato', 'pear'] as const;
const PRODUCTS: NonNullable<PlanDayInput['products']> = [
  { make: 'jars', from: 'peach', form: 'halves', pack: 'hot', jar: 'quart', syrup: 'light' },
  { make: 'jars', from: 'peach', form: 'slices', pack: 'raw', jar: 'pint' },
  { make: 'frozen', from: 'peach' },
  { make: 'dried', from: 'peach' },
  { make: 'jars', from: 'apple', form: 'sauce', jar: 'pint' },
  { make: 'jars', from: 'apple', form: 'sauce', jar: 'quart' },
  { make: 'dried', from: 'apple', form: 'slices' },
  { make: 'frozen', from: 'apple' },
  { make: 'jars', from: 'plum', form: 'whole', pack: 'raw', jar: 'pint' },
  { make: 'jars', from: 'plum', form: 'whole', pack: 'hot', jar: 'quart' },
  { make: 'leather', from: 'plum' },
  { make: 'dried', from: 'plum' },
  { make: 'jars', from: 'tomato', form: 'crushed', jar: 'quart' },
  { make: 'jars', from: 'tomato', form: 'crushed', jar: 'pint' },
  { make: 'jars', from: 'tomato', form: 'juice', jar: 'quart' },
  { make: 'jars', from: 'pear', form: 'halves', pack: 'hot', jar: 'pint' },
  { make: 'jars', from: 'pear', form: 'halves', pack: 'hot', jar: 'quart' },
  { make: 'freeze-dried', from: 'pear', form: 'slices' },
  { make: 'dried', from: 'pear' },
];

/** Invented: 40 lots and 19 products over two days, in a kitchen that grows with the lots. */
function largeDay(size: number): PlanDayInput {
  return {
    lots: Array.from({ length: 40 }, (_, index) => ({
      food: KINDS[index % 5] as string,
      raw: { value: size * (6 + ((index * 13) % 17)), unit: 'kg' as const },
    })),
    kitchen: {
      elevation: '500 m',
      hours: size > 1 ? ['20 h', '20 h'] : ['10 h', '10 h'],
      hands: 2 + 2 * size,
      burners: 20,
      pots: [{ volume: '16 quarts', count: 2 + Math.min(6, size) }, { volume: '10 quarts' }],
      canners: [
        { method: 'boiling-water', holds: { pint: 9, quart: 7 }, count: 1 + Math.min(4, size) },
        { method: 'weighted-gauge', holds: { pint: 9, quart: 7 } },
      ],
      dryer: { trays: Math.min(500, 20 * size), trayArea: '1300 cm2' },
      freezeDryer: { trays: 5, trayArea: '1200 cm2', ice: '5 kg' },
      freezer: { room: { value: 200 * size, unit: 'L' } },
    },
    products: PRODUCTS.map((each, index) => ({ ...each, worth: 2 + ((index * 7) % 11) / 2 })),
  };
}

describe('a large day takes so much work and no more', () => {
  test.each([1, 10])('40 lots x 19 products over two days, size %i', (size) => {
    const prepared = prepare(largeDay(size));
    const effort = effortFor(prepared.program);
    const given = { ...effort };
    const plan = planOf(prepared, effort);
    if (!plan.feasible) throw new Error(plan.reason.text);
    expect(checkSchedule(plan).broken).toEqual([]);
    expect(plan.provenBest).toBe(plan.gap === 0);
    // the first search, and all others together
    expect(mostNodes(prepared.program) * costOf(prepared.program)).toBeLessThanOrEqual(8e8);
    expect(given.nodes * costOf(prepared.program)).toBeLessThanOrEqual(4e8);
    expect(effort.nodes).toBeGreaterThanOrEqual(0);
    // a first order is always finished, for each of at most nine days tried
    expect(given.looks - effort.looks).toBeLessThan(2 * given.looks);
  });
  test('and a day with more loads than that is refused, naming the limit', () => {
    const day = largeDay(10);
    const longer = {
      ...day,
      lots: day.lots.map(({ food }) => ({ food, raw: '900 kg' as const })),
      kitchen: {
        ...day.kitchen,
        hours: Array(7).fill('20 h'),
        hands: 50,
        pots: [{ volume: '16 quarts' as const, count: 20 }],
        canners: [{ method: 'boiling-water' as const, holds: { pint: 9, quart: 7 }, count: 10 }],
      },
    };
    expect(codeText(() => planDay(longer))).toBe('TOO_MUCH lots');
  });
});
