import { describe, expect, test } from 'vitest';
import { call, catalogue, check } from '../../src/catalogue/index';
import { StillroomError } from '../../src/errors/index';
import { planProblems } from '../../src/plan/index';
import { GARBAGE } from '../helpers/garbage';
import { goodArguments } from '../helpers/inputs';

const names = new Set(catalogue().map(({ name }) => name));
const samples = [...goodArguments(2)].filter(([name]) => names.has(name));
const paths = (name: string, input: unknown) => check(name, input).problems.map(({ path }) => path);

describe('check', () => {
  test.each(samples)('finds nothing wrong with what %s answers', (name, list) => {
    for (const args of list) expect(check(name, args.length === 1 ? args[0] : args)).toEqual({ problems: [] });
  });

  test.each(samples)('begins with what %s throws', (name, list) => {
    const [args = []] = list;
    for (const bad of [...GARBAGE, { ...(args[0] as object), noSuchField: 1 }]) {
      let thrown: unknown;
      try {
        call(name, bad);
      } catch (error) {
        thrown = error;
      }
      const [first] = check(name, bad).problems;
      if (thrown instanceof StillroomError)
        expect(first).toMatchObject({ code: thrown.code, path: thrown.path, message: thrown.message });
      else expect(first).toBeUndefined();
    }
  });

  test('lists all problems of the fields, with what was given and what would be right', () => {
    const { problems } = check('testedProcess', { food: 'peach', jar: 'pimt', elevatoin: '900 ft' });
    expect(problems.map(({ path, code }) => [path, code])).toEqual([
      ['jar', 'UNKNOWN_NAME'],
      ['method', 'MISSING'],
      ['elevation', 'MISSING'],
      ['elevatoin', 'UNKNOWN_FIELD'],
    ]);
    expect(problems[0]).toMatchObject({ given: 'pimt', nearest: ['pint'] });
    expect(problems[1]?.options).toContain('boiling-water');
    expect(problems[3]?.nearest?.[0]).toBe('elevation');
  });

  test('uses the schema of the way the function is asked', () => {
    expect(paths('energyNeeded', { drying: { fresh: '1 mol', moisture: 2 } })).not.toEqual([]);
    expect(paths('rawForJars', { food: 'apple', form: 'slices', raw: '1 ft', jar: 'pimt' })).toEqual(['jar', 'raw']);
  });

  test('checks a day as planProblems does, and plans nothing', () => {
    const day = { lots: [{ food: 'plum', row: '40 lb' }], kitchen: { elevation: '900 ft', hours: '6 h', burner: 4 } };
    expect(check('planDay', day).problems).toEqual(planProblems(day));
  });

  test('takes a no for an answer', () => {
    const beans = { food: 'green beans', jar: 'pint', method: 'boiling-water', elevation: '0 ft' };
    expect(check('testedProcess', beans)).toEqual({ problems: [] });
  });
});
