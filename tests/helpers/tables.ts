import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { READERS_COLUMNS } from '../../src/sources/columns';
import { sources } from '../../src/sources/index';
import { LEFT_OUT } from '../build/shipped';

/** What every row carries besides its figures. */
export const sourced = {
  source: z.string().min(1),
  locator: z.string(),
  obtained: z.enum(['read', 'read-secondary', 'memory', 'computed', 'derived']),
  seen: z.enum(['original', 'reproduction', 'citation']).optional(),
  notes: z.string().min(1).optional(),
};

export const dataFolder = (module: string): URL => new URL(`../../data/${module}/`, import.meta.url);
// biome-ignore lint/suspicious/noExplicitAny: a table's shape is what the tests find out
export const readTable = (module: string, name: string): any =>
  JSON.parse(readFileSync(new URL(`${name}.json`, dataFolder(module)), 'utf8'));

/** The ids of the register. */
export const knownSources: ReadonlySet<string> = new Set(sources().map(({ id }) => id));

/** The paths of the columns of a row that are for readers: `seenIn`, `steps[].notes`. */
function forReadersIn(schema: z.core.$ZodType, path = ''): string[] {
  if (READERS_COLUMNS.has(schema)) return [path];
  const { shape, element, innerType, options } = (schema as { _zod: { def: unknown } })._zod.def as {
    readonly shape?: Readonly<Record<string, z.core.$ZodType>>;
    readonly element?: z.core.$ZodType;
    readonly innerType?: z.core.$ZodType;
    readonly options?: readonly z.core.$ZodType[];
  };
  const found = [
    ...Object.entries(shape ?? {}).flatMap(([name, each]) =>
      forReadersIn(each, path === '' ? name : `${path}.${name}`),
    ),
    ...(element === undefined ? [] : forReadersIn(element, `${path}[]`)),
    ...(innerType === undefined ? [] : forReadersIn(innerType, path)),
    ...(options ?? []).flatMap((each) => forReadersIn(each, path)),
  ];
  return [...new Set(found)].sort();
}

/** The built package leaves out of a table the columns that its schema has for readers, and no other. */
export function expectLeftOut(table: string, row: z.core.$ZodType): void {
  expect(LEFT_OUT[table] ?? [], 'tests/build/left-out.json').toEqual(forReadersIn(row));
}

/** Every table of a module has the shape its schema says, a registered source in each row, and explained columns. */
export function checkTables(module: string, rows: Readonly<Record<string, z.core.$ZodType>>): void {
  describe.each(Object.entries(rows))(`table ${module}/%s`, (name, row) => {
    const table = readTable(module, name);

    test('every row has its shape, and a source of the register', () => {
      z.strictObject({
        table: z.literal(name),
        title: z.string(),
        columns: z.record(z.string(), z.string()),
        notes: z.string().optional(),
        rows: z.array(row).min(1),
      }).parse(table);
      for (const { source, obtained } of table.rows) {
        if (obtained !== 'common-practice') expect(knownSources).toContain(source);
      }
    });

    test('the built package leaves out its columns for readers', () => expectLeftOut(`${module}/${name}`, row));

    test('every column is explained', () => {
      const used = new Set<string>(table.rows.flatMap((entry: object) => Object.keys(entry)));
      for (const key of [...Object.keys(sourced), ...Object.keys(practice)])
        if (!(key in table.columns)) used.delete(key);
      expect([...used].sort()).toEqual(Object.keys(table.columns).sort());
    });
  });
}

/** What a row of common practice carries: no source, and why. */
export const practice = { obtained: z.literal('common-practice'), reason: z.string().min(1) };

/** The module's folder holds these tables, its cautions, and nothing else. */
export function expectFolder(module: string, names: readonly string[]): void {
  expect(readdirSync(dataFolder(module)).sort()).toEqual([...names, 'cautions'].map((name) => `${name}.json`).sort());
}
