import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { expect, test } from 'vitest';

/** The layers of the design; imports go only downwards, and inside a layer only to what stands before. */
const LAYERS: Readonly<Record<string, number>> = {
  common: 0,
  errors: 0,
  foods: 0,
  quantity: 0,
  sources: 0,
  words: 0,
  steam: 1,
  solution: 1,
  heat: 1,
  produce: 2,
  jars: 2,
  process: 2,
  sugar: 2,
  acid: 2,
  drying: 2,
  'water-activity': 2,
  freezing: 2,
  lethality: 2,
  recipes: 3,
  plan: 4,
  record: 4,
  sheet: 5,
  charts: 5,
  catalogue: 6,
};

/**
 * The rooms of `plan`, in the order in which a request goes through them: what is asked, its kitchen, what each product
 * takes, what has happened, the program that decides, its place in the hours, the answer. A room uses those before it.
 */
const ROOMS_OF_PLAN = [
  'figures',
  'request',
  'check',
  'solver',
  'schedule',
  'kitchen',
  'makes',
  'done',
  'program',
  'fit',
  'answer',
] as const;

const source = new URL('../src/', import.meta.url).pathname;
const files = readdirSync(source, { recursive: true })
  .map(String)
  .filter((file) => file.endsWith('.ts') && !file.endsWith('.d.ts'));
const imports = new Map(
  files.map((file) => {
    const text = readFileSync(source + file, 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');
    const names = [...text.matchAll(/(?:from|import)\s+'(\.[^']+)'/g)].map((match) => match[1] ?? '');
    return [
      file,
      names.filter((name) => !name.endsWith('.json')).map((name) => `${normalize(join(dirname(file), name))}.ts`),
    ];
  }),
);
const moduleOf = (file: string): string => file.split('/')[0] ?? '';

test('every module has its layer, and imports point downwards only', () => {
  const upward = [...imports].flatMap(([file, targets]) =>
    targets
      .filter((target) => {
        const from = moduleOf(file);
        const to = moduleOf(target);
        if (file === 'index.ts' || from === to) return false;
        const here = LAYERS[from];
        const there = LAYERS[to];
        return here === undefined || there === undefined || there > here;
      })
      .map((target) => `${file} -> ${target}`),
  );
  expect(upward).toEqual([]);
});

test('every room of plan has its place, and uses only those before it', () => {
  const placeOf = (file: string): number => {
    const [module, room = '', inside] = file.split('/');
    if (module !== 'plan') return -1;
    // what stands in no room is the public functions, above all rooms
    return inside === undefined ? ROOMS_OF_PLAN.length : (ROOMS_OF_PLAN as readonly string[]).indexOf(room);
  };
  const rooms = new Set(files.filter((file) => /^plan\/.*\//.test(file)).map((file) => file.split('/')[1]));
  expect([...rooms].sort()).toEqual([...ROOMS_OF_PLAN].sort());
  const upward = [...imports].flatMap(([file, targets]) =>
    file.startsWith('plan/')
      ? targets.filter((target) => placeOf(target) > placeOf(file)).map((target) => `${file} -> ${target}`)
      : [],
  );
  expect(upward).toEqual([]);
});

test('nothing imports the catalogue: a page that needs one function pays for one', () => {
  const users = [...imports].filter(([file, targets]) => {
    return moduleOf(file) !== 'catalogue' && targets.some((target) => moduleOf(target) === 'catalogue');
  });
  expect(users.map(([file]) => file)).toEqual([]);
});

test('every import names a file that is there', () => {
  const known = new Set(files);
  const lost = [...imports].flatMap(([file, targets]) =>
    targets.filter((target) => !known.has(target)).map((target) => `${file} -> ${target}`),
  );
  expect(lost).toEqual([]);
});

test('no file imports itself by way of others', () => {
  const state = new Map<string, 'open' | 'done'>();
  const cycles: string[] = [];
  const visit = (file: string, trail: readonly string[]): void => {
    if (state.get(file) === 'done') return;
    if (state.get(file) === 'open') {
      cycles.push([...trail.slice(trail.indexOf(file)), file].join(' -> '));
      return;
    }
    state.set(file, 'open');
    for (const target of imports.get(file) ?? []) visit(target, [...trail, file]);
    state.set(file, 'done');
  };
  for (const file of imports.keys()) visit(file, []);
  expect(cycles).toEqual([]);
});

test('a data table has one owner', () => {
  const owners = new Map<string, Set<string>>();
  for (const file of files) {
    const text = readFileSync(source + file, 'utf8');
    for (const match of text.matchAll(/from\s+'([^']*\/data\/[^']+\.json)'/g)) {
      const table = normalize(join(dirname(file), match[1] ?? ''));
      owners.set(table, (owners.get(table) ?? new Set()).add(moduleOf(file)));
    }
  }
  expect([...owners].filter(([, modules]) => modules.size > 1).map(([table]) => table)).toEqual([]);
});
