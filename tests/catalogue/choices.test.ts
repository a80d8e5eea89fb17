import { describe, expect, test } from 'vitest';
import { call, catalogue, check, choices } from '../../src/catalogue/index';
import { StillroomError } from '../../src/errors/index';
import { recipe, waysToKeep } from '../../src/recipes/index';
import { thrownBy } from '../helpers/errors';
import { exampleDay } from '../helpers/plans';

const of = (name: string, field: string, given: unknown = {}) => choices(name, field, given).choices;
const isTree = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The fields of an argument, as deep as it goes. */
function pathsIn(input: unknown, path = ''): string[] {
  if (Array.isArray(input)) return input.slice(0, 1).flatMap((item) => pathsIn(item, `${path}[0]`));
  if (!isTree(input)) return [];
  return Object.entries(input).flatMap(([name, value]) => {
    const inner = path === '' ? name : `${path}.${name}`;
    return [inner, ...pathsIn(value, inner)];
  });
}

/** An answer, or a no with its reason, or the one error. */
function reasoned(name: string, input: unknown): boolean {
  try {
    const found = call(name, input) as Record<string, unknown> | undefined;
    const isNo = isTree(found) && (found.known === false || found.tested === false);
    return !isNo || isTree(found.reason);
  } catch (error) {
    return error instanceof StillroomError;
  }
}

describe('choices', () => {
  const entries = catalogue().filter(
    ({ name, example }) => isTree(example) && !['planDay', 'planProblems'].includes(name),
  );
  test.each(entries.map(({ name, example }) => [name, example as Record<string, unknown>] as const))(
    'of %s: each that is offered is answered, or refused with a reason',
    (name, example) => {
      for (const field of Object.keys(example)) {
        const { choices: offered, by } = choices(name, field, example);
        // the example itself is answered
        if (by === 'tried') expect(offered.length, field).toBeGreaterThan(0);
        for (const value of offered.slice(0, 40)) {
          expect(reasoned(name, { ...example, [field]: value }), `${field}: ${value}`).toBe(true);
        }
      }
    },
    60_000,
  );

  test('lead step by step from a food to a tested process', () => {
    expect(of('testedProcess', 'food')).toEqual(expect.arrayContaining(['peach', 'green bean']));
    const food = { food: 'peach' };
    const forms = of('testedProcess', 'form', food);
    expect(forms).toContain('halves');
    expect(forms).not.toContain('frozen');
    const form = { ...food, form: 'halves' };
    expect(of('testedProcess', 'pack', form)).toEqual(expect.arrayContaining(['hot', 'raw']));
    const jars = of('testedProcess', 'jar', { ...form, pack: 'hot' });
    expect(jars).toContain('quart');
    expect(jars).not.toContain('half-gallon');
    const methods = of('testedProcess', 'method', { ...form, pack: 'hot', jar: 'quart' });
    expect(methods).toContain('boiling-water');
    for (const method of methods)
      expect(call('testedProcess', { ...form, pack: 'hot', jar: 'quart', method, elevation: '900 ft' })).toMatchObject({
        tested: true,
      });
  });

  test('offer no boiling water for food low in acid', () => {
    expect(of('testedProcess', 'method', { food: 'corn', form: 'kernels', jar: 'pint' })).toEqual([
      'dial-gauge',
      'weighted-gauge',
    ]);
    expect(of('testedProcess', 'food', { method: 'boiling-water' })).not.toContain('asparagus');
    expect(choices('testedProcess', 'jar', { food: 'asparagus', method: 'boiling-water' })).toMatchObject({
      choices: [],
      by: 'tried',
    });
  });

  test('are the foods that a function has figures for', () => {
    const foods = of('blanching', 'food');
    expect(foods).toContain('broccoli');
    expect(foods).not.toContain('strawberry');
    // some ask for a form, and none is refused
    for (const food of foods) {
      const found = check('blanching', { food }).problems;
      expect(found.map(({ path }) => path).filter((path) => path !== 'form')).toEqual([]);
      if (found.length === 0) expect(call('blanching', { food })).not.toHaveProperty('known', false);
    }
  });

  test('of a unit are those of its kind', () => {
    const units = of('convert', '[1]', ['1 cup']);
    expect(units).toEqual(of('convert', 'unit', ['1 cup']));
    expect(units).toContain('mL');
    expect(units).not.toContain('kg');
  });

  test('are all that a field takes where something else is wrong', () => {
    const found = choices('testedProcess', 'method', {
      food: 'peach',
      form: 'halves',
      jar: 'pint',
      elevation: '1 mile a',
    });
    expect(found.by).toBe('listed');
    expect(found.choices).toHaveLength(4);
  });

  test('are open for a quantity, with what the field takes', () => {
    const { choices: none, by, takes } = choices('fillJar', 'headspace', { jar: 'pint' });
    expect([none, by]).toEqual([[], 'open']);
    expect(takes).toMatchObject({ $ref: '#/$defs/LengthGiven', stillroom: { kind: 'length' } });
  });

  test('name the nearest of a field that there is not', () => {
    expect(thrownBy(() => choices('fillJar', 'hedspace'))).toMatchObject({
      code: 'UNKNOWN_NAME',
      path: 'field',
      nearest: ['headspace'],
    });
    for (const field of ['', 'constructor', 'jar[', 'jar.constructor'])
      expect(thrownBy(() => choices('fillJar', field)).path, field).toBe('field');
  });
});

describe('choices of a day', () => {
  const day = exampleDay('day.json');
  const { products: _, ...open } = day;

  test('are foods that recipes name', () => {
    const foods = of('planDay', 'lots[0].food');
    expect(foods.length).toBeGreaterThan(200);
    for (const food of foods.slice(0, 40)) expect(waysToKeep({ food: String(food) })).toHaveProperty('ways');
  });

  test('are the ways that these lots have in this kitchen', () => {
    const recipes = of('planDay', 'products[0].recipe', open);
    expect(recipes.length).toBeGreaterThan(5);
    for (const id of recipes) expect(recipe({ recipe: String(id) })).toHaveProperty('name');
    expect(of('planDay', 'products[0].make', open).length).toBeGreaterThan(2);
  });

  test('are the jars and lots that the day has', () => {
    const jars = day.kitchen.jars?.map(({ jar }) => jar) ?? [];
    expect(jars).toEqual(expect.arrayContaining([...of('planDay', 'products[0].jar', open)]));
    expect(of('planDay', 'products[0].from', open).length).toBeGreaterThan(0);
  });

  test.each(pathsIn(exampleDay('day.json')).filter((path) => !path.endsWith('name')))('are found for %s', (path) => {
    const { by, choices: found } = choices('planDay', path, day);
    expect(by === 'open' ? found : ['listed or tried']).toEqual(by === 'open' ? [] : ['listed or tried']);
  });
});
