import { describe, expect, test } from 'vitest';
import { catalogue } from '../../src/catalogue/index';
import { thrownBy } from '../helpers/errors';

describe('catalogue', () => {
  test('lists all, one module, or one function', () => {
    const all = catalogue();
    expect(all.length).toBeGreaterThan(120);
    const jars = catalogue({ module: 'jars' });
    expect(jars).toEqual(all.filter(({ module }) => module === 'jars'));
    expect(jars.map(({ name }) => name)).toContain('fillJar');
    expect(catalogue({ name: 'fillJar' })).toEqual(all.filter(({ name }) => name === 'fillJar'));
  });

  test('says of a field its word, its unit, its bounds and examples', () => {
    const [entry] = catalogue({ name: 'testedProcess' });
    const { elevation, method, food } = (entry?.input.properties ?? {}) as Record<string, Record<string, unknown>>;
    expect(elevation?.$ref).toBe('#/$defs/LengthGiven');
    expect(elevation?.stillroom).toEqual({
      kind: 'length',
      above: { value: -500, unit: 'm' },
      max: { value: 5000, unit: 'm' },
    });
    expect(method).toMatchObject({
      title: 'method',
      anyOf: [{ enum: ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam'] }, { type: 'string' }],
    });
    expect(food?.examples).toHaveLength(3);
  });

  test('is a document by itself: every reference leads to a definition in it', () => {
    for (const { name, input, output } of catalogue())
      for (const schema of [input, output]) {
        const known = Object.keys((schema.$defs ?? {}) as object);
        const used = [...JSON.stringify(schema).matchAll(/"#\/\$defs\/(\w+)"/g)].map(([, one]) => one);
        expect([...new Set(used)].sort(), name).toEqual(known.sort());
      }
  });

  test('names the nearest of a function or module that there is not', () => {
    expect(thrownBy(() => catalogue({ name: 'filJar' }))).toMatchObject({ path: 'name', nearest: ['fillJar'] });
    expect(thrownBy(() => catalogue({ module: 'jar' }))).toMatchObject({ path: 'module', code: 'UNKNOWN_NAME' });
  });
});
