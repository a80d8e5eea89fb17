/** The tables of docs/plan.md against the fields that `planDay` takes: none is missing, and each example is right. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { planProblems } from '../../src/plan/index';
import { publicFace } from '../helpers/publicTypes';
import type { Shape } from '../helpers/typeWords';

const lines = readFileSync(new URL('../../docs/plan.md', import.meta.url), 'utf8').split('\n');
const rows = lines
  .filter((line) => /^\| `[\w.[\]]+` \|/.test(line))
  .map((line) => {
    const [field = '', what = '', range = '', usual = '', example = ''] = line
      .split('|')
      .slice(1)
      .map((cell) => cell.trim());
    return { field: field.replaceAll('`', ''), what, range, usual, example: example.replaceAll('`', '') };
  });

/** A jar by its measures is one thing: its fields are on the page of jars. */
const WHOLE = /\.jar$/;

/** The paths of all fields of an argument; those of a list behind `[]`. */
function* pathsOf(shape: Shape, path: string): Generator<string> {
  if (shape.kind === 'object') {
    for (const field of shape.fields) {
      const own = path === '' ? field.name : `${path}.${field.name}`;
      yield own;
      if (!WHOLE.test(own)) yield* pathsOf(field.shape, own);
    }
  } else if (shape.kind === 'list') yield* pathsOf(shape.of, `${path}[]`);
  else if (shape.kind === 'oneOf') for (const one of shape.of) yield* pathsOf(one, path);
}

/** A day in which every field has a place. */
const whole = () => ({
  lots: [{ food: 'peach', raw: '40 lb', price: '1.00 USD' }],
  kitchen: {
    elevation: '900 ft',
    hours: ['10 h', '10 h'],
    breaks: [{ at: '12:00', for: '30 min' }],
    pots: [{ volume: '16 quarts', rack: true, holds: { pint: 7 } }],
    canners: [{ method: 'boiling-water', holds: { pint: 9 } }],
    jars: [{ jar: 'pint', count: 12 }],
    lids: { count: 12 },
    bags: {},
    dryer: { trays: 9, trayArea: '1 ft2' },
    freezeDryer: { trays: 4, trayArea: '150 in2', ice: '10 lb' },
    freezer: { room: '2 ft3' },
    pantry: [{ item: 'sugar', amount: '10 lb' }],
    utilities: { stove: 'propane' },
  },
  products: [
    {
      make: 'jam',
      from: 'peach',
      sugarToAdd: { amount: '1 cup', per: '1 quart' },
      waterToAdd: { amount: '1 cup', per: '1 quart' },
      own: { acid: {} },
    },
  ],
  aim: { worth: 1 },
  learned: [{ food: 'peach' }],
  now: { day: 1, at: '10:30' },
  done: [{ name: 'jam' }],
  lost: { jars: [{ jar: 'pint', count: 1 }] },
});

/** The same day with the example in the place of the field. */
function withExample(field: string, example: string): unknown {
  const day: unknown = whole();
  const keys = field.replaceAll('[]', '.0').split('.');
  const last = keys.pop() as string;
  const at = keys.reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], day);
  (at as Record<string, unknown>)[last] = JSON.parse(example);
  return day;
}

test('every field of a day has a row, and every row is a field', () => {
  const taken = publicFace().functions.find(({ name }) => name === 'planDay')?.parameters[0]?.shape as Shape;
  const fields = [...new Set(pathsOf(taken, ''))].sort();
  expect(fields.length).toBeGreaterThan(90);
  expect(rows.map(({ field }) => field).sort()).toEqual(fields);
});

test.each(rows)(
  '$field: its example is right where it stands, and it has a default',
  ({ field, what, usual, example }) => {
    expect([what, usual].every((cell) => cell.length > 0)).toBe(true);
    const place = field.replaceAll('[]', '[0]');
    const wrong = planProblems(withExample(field, example)).filter(
      // a name of the plan is the cook's own
      ({ path, code }) => path.startsWith(place) && !(code === 'UNKNOWN_NAME' && /^(done|lost|hotCanners)/.test(path)),
    );
    expect(wrong).toEqual([]);
  },
);
