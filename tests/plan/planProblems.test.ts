import { describe, expect, test } from 'vitest';
import { planProblems } from '../../src/plan/index';
import { exampleDay } from '../helpers/plans';

describe('all mistakes of a request at once', () => {
  test('a request without a mistake has none', () => {
    expect(planProblems(exampleDay('day.json'))).toEqual([]);
  });
  test('each with its path and the nearest right word', () => {
    const wrong = {
      lots: [{ food: 'peech', raw: '10 lb' }],
      kitchen: { elevation: '500 ft', hours: '6 h', pots: [{ volum: '12 quarts' }] },
      products: [{ make: 'jarz', from: 'peach' }],
    };
    const problems = planProblems(wrong as never);
    const paths = problems.map(({ path }) => path);
    expect(paths).toContain('products[0].make');
    expect(paths.some((path) => path.startsWith('kitchen.pots[0]'))).toBe(true);
    expect(problems.find(({ path }) => path === 'products[0].make')?.nearest).toContain('jars');
  });

  test('every food that no table knows is named, not only the first', () => {
    const lots = ['peech', 'plum', 'aple'].map((food) => ({ food, raw: '10 lb' }));
    const problems = planProblems({ lots, kitchen: { elevation: '500 ft', hours: '6 h' } });
    expect(problems.map(({ path, nearest }) => [path, nearest?.[0]])).toEqual([
      ['lots[0].food', 'peach'],
      ['lots[2].food', 'apple'],
    ]);
  });
});
