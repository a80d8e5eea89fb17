import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { checkHeadspace, checkSeal, loadsFor, publishedVacuums } from '../../src/jars/index';
import {
  containerVacuumRows,
  headspaceRows,
  leastLoadRows,
  loadRows,
  sealRows,
  vacuumFactRows,
} from '../../src/jars/tables';
import { convert } from '../../src/quantity/index';

const sourced = {
  source: z.string(),
  locator: z.string().min(1),
  obtained: z.enum(['read', 'read-secondary', 'memory', 'computed', 'derived']),
  seen: z.enum(['original', 'reproduction', 'citation']).optional(),
  notes: z.string().optional(),
};
const jar = z.enum(['4 oz', 'half-pint', '12 oz', 'pint', '24 oz', '28 oz', 'quart', 'half-gallon']);
const count = z.number().int().min(1);
const rows = {
  headspace: z
    .strictObject({
      productClass: z.string(),
      printed: z.string(),
      least_in: z.number().positive().max(2),
      most_in: z.number().positive().max(2),
      ...sourced,
    })
    .refine((row) => row.least_in <= row.most_in),
  'canner-loads': z
    .strictObject({ canner: z.enum(['usual', 'small', 'large']), jar, least: count, most: count, ...sourced })
    .refine((row) => row.least <= row.most),
  canners: z.strictObject({
    name: z.string(),
    synonyms: z.array(z.string()).min(1),
    methods: z.array(z.string()),
    load: z.enum(['usual', 'small', 'large']),
    pressure: z.boolean(),
    obtained: z.literal('common-practice'),
    reason: z.string().min(1),
  }),
  'least-loads': z.strictObject({ jar, least: count, ...sourced }),
  'seal-rules': z.strictObject({
    rule: z.string().regex(/^[a-z-]+$/),
    text: z.string().min(20),
    least: z.number().optional(),
    most: z.number().optional(),
    unit: z.string().optional(),
    ...sourced,
  }),
  'vacuum-facts': z.strictObject({
    fact: z.string(),
    text: z.string().min(20),
    value: z.number().optional(),
    unit: z.string().optional(),
    ...sourced,
  }),
  'container-vacuums': z.strictObject({
    container: z.string(),
    least: z.number(),
    most: z.number(),
    unit: z.enum(['inHg', 'mmHg']),
    ...sourced,
  }),
};

const folder = new URL('../../data/jars/', import.meta.url);

describe('tables of jars', () => {
  test.each(Object.entries(rows))('%s has the shape its readers expect', (table, row) => {
    const read = JSON.parse(readFileSync(new URL(`${table}.json`, folder), 'utf8')) as { rows: unknown };
    expect(z.array(row).min(2).safeParse(read.rows).error?.issues ?? []).toEqual([]);
  });

  test('there is no table without a schema', () => {
    const files = readdirSync(folder).filter((file) => file !== 'cautions.json');
    expect(files.sort()).toEqual(
      Object.keys(rows)
        .map((table) => `${table}.json`)
        .sort(),
    );
  });
});

describe('every row is read', () => {
  test.each(headspaceRows)('headspace of $printed ($source)', (row) => {
    for (const value of [row.least_in, row.most_in]) {
      const answer = checkHeadspace({ food: row.productClass, measured: { value, unit: 'in' } });
      expect(answer.verdict).toBe('right');
      expect(answer.basis).toContainEqual(
        expect.objectContaining({
          source: row.source,
          locator: row.locator,
          of: 'least',
          note: `headspace of ${row.printed}`,
        }),
      );
    }
  });

  test('the copies that print one class agree, so that every class has a headspace that all allow', () => {
    for (const { productClass } of headspaceRows) {
      const { least, most } = checkHeadspace({ food: productClass, measured: '1 in' });
      expect(least.value).toBeLessThanOrEqual(most.value);
    }
  });

  test.each(loadRows)('a load of $jar jars in a $canner canner ($obtained, $source)', (row) => {
    const canner = { usual: 'boiling-water', small: 'small pressure', large: 'large pressure' }[row.canner];
    const { perLoad, basis } = loadsFor({ jars: row.most, jar: row.jar, canner });
    expect(perLoad).toBe(row.most);
    // a recalled row is never what an answer stands on
    expect(basis.some(({ source }) => source === row.source)).toBe(row.obtained !== 'memory');
  });

  test.each(leastLoadRows)('least pressure load of $jar jars', ({ jar: size, least }) => {
    const small = (jars: number) =>
      loadsFor({ jars, jar: size, canner: 'pressure' }).cautions.some(({ id }) => id === 'small-pressure-load');
    expect(small(least)).toBe(false);
    expect(small(least - 1)).toBe(true);
  });

  test.each(sealRows)('the rule $rule says its figures and is part of an answer', (row) => {
    const words: Record<string, string> = {
      'freeze-instead': '1 1/2',
      'check-monthly': 'once',
      'half-the-liquid': 'half the liquid',
    };
    const kitchen = words[row.rule] ?? `${row.least ?? ''}`;
    expect(row.text).toContain(kitchen);
    if (row.most !== row.least) expect(row.text).toContain(`${row.most}`);
    const answers = [
      checkSeal({ sinceProcessing: '1 h', buttonDown: true }),
      checkSeal({ sinceProcessing: '20 h', buttonDown: true }),
      checkSeal({ sinceProcessing: '20 h', buttonDown: false }),
      checkSeal({ sinceProcessing: '20 h', lid: 'flat', ringsWhenTapped: false, buttonDown: true }),
      checkSeal({ sinceProcessing: '20 h', lid: 'bulging' }),
      ...[0, 0.2, 0.6].map((liquidLost) =>
        checkHeadspace({ food: 'jam', measured: '1/4 in', when: 'after processing', sealed: true, liquidLost }),
      ),
    ];
    expect(answers.some(({ next }) => next.includes(row.text))).toBe(true);
  });

  test.each(vacuumFactRows.filter(({ value }) => value !== undefined))('$text', ({ fact, value = 0 }) => {
    // each published or recalled figure against the exact units and the customary share
    const exact: Record<string, [number, number]> = {
      'inHg-per-psi-rule': [convert('1 psi', 'inHg').value, 0.04],
      'inHg-per-psi': [convert('1 psi', 'inHg').value, 5e-6],
      'normal-atmosphere-psi': [convert('1 atm', 'psi').value, 0.05],
      'normal-atmosphere-inHg': [convert('1 atm', 'inHg').value, 0.005],
      'inspection-step': [1 / 32, 0],
      'least-share': [6, 0],
    };
    const [wanted, tolerance] = exact[fact] as [number, number];
    expect(Math.abs(value - wanted)).toBeLessThanOrEqual(tolerance);
  });

  test('what too little and too much headspace do is a published fact that the check cites', () => {
    const words = vacuumFactRows.filter(({ value }) => value === undefined).map(({ fact }) => fact);
    expect(words).toEqual(['gross-and-net', 'too-little-or-much']);
    expect(checkHeadspace({ food: 'jam', measured: '1 in' }).basis).toContainEqual(
      expect.objectContaining({ source: 'fda-lacf-guide', locator: 'headspace section' }),
    );
  });

  test.each(containerVacuumRows)('vacuum of $container', (row) => {
    const found = publishedVacuums().find(({ container }) => container === row.container);
    expect([found?.least, found?.most]).toEqual([
      { value: row.least, unit: row.unit },
      { value: row.most, unit: row.unit },
    ]);
  });
});
