import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { sources } from '../src/sources/index';

const data = new URL('../data/', import.meta.url).pathname;
const files = readdirSync(data, { recursive: true })
  .map(String)
  // what is written of the functions is no table of figures: tests/catalogue/functions.test.ts compares it
  .filter((file) => file.endsWith('.json') && !file.startsWith('catalogue/'))
  .sort();
const known = new Set(sources().map(({ id }) => id));
const read = (file: string): unknown => JSON.parse(readFileSync(data + file, 'utf8'));

const foods = new Set((read('foods/foods.json') as { rows: { id: string }[] }).rows.map(({ id }) => id));

const text = z.string().trim().min(1);
const seen = z.enum(['original', 'reproduction', 'citation']);
/** What the trade does and nobody published has no source, but says why. */
const rowId = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);
const practice = z.looseObject({
  id: rowId,
  obtained: z.literal('common-practice'),
  reason: text,
  source: z.undefined().optional(),
  locator: z.undefined().optional(),
});
const sourced = z.looseObject({
  id: rowId,
  source: z.string().refine((id) => known.has(id), 'in the register of sources'),
  locator: z.string(),
  obtained: z.enum(['read', 'read-secondary', 'memory', 'computed', 'derived']),
  seen: seen.optional(),
  notes: text.optional(),
});
const row = z.union([sourced, practice]);
type Row = z.infer<typeof row>;
const table = z.strictObject({
  table: text,
  title: text,
  notes: text.optional(),
  columns: z.record(text, z.string()),
  rows: z.array(row).min(1),
});
const pantry = z.strictObject({
  table: text,
  title: text,
  obtained: z.literal('common-practice'),
  reason: text,
  columns: z.record(text, z.string()),
  rows: z
    .array(z.looseObject({ id: rowId.optional(), source: z.undefined().optional(), locator: z.undefined().optional() }))
    .min(1),
});
const caution = z.strictObject({
  id: rowId,
  severity: z.enum(['danger', 'quality', 'note']),
  text: text.min(20),
  source: z
    .string()
    .refine((id) => known.has(id), 'in the register of sources')
    .optional(),
  /** Only where the product has one of these foods. */
  foods: z
    .array(rowId.refine((id) => foods.has(id), 'in the pantry'))
    .min(1)
    .optional(),
  /** Only between these elevations. */
  aboveFt: z.number().positive().optional(),
  toFt: z.number().positive().optional(),
});
const register = z.array(
  z.strictObject({
    id: z.string().regex(/^[a-zA-Z0-9]+(-[a-zA-Z0-9.]+)*$/),
    title: text,
    publisher: text,
    year: z.union([z.number().int(), text]).optional(),
    locator: text.optional(),
    url: z.url().optional(),
    seen: seen.optional(),
    note: text.optional(),
  }),
);

const isCautions = (file: string): boolean => file.endsWith('cautions.json');
/** The pantry is common practice from end to end: the table says why, once. */
const isPantry = (file: string): boolean => file.startsWith('foods/');
const tables = files.filter((file) => file !== 'sources.json' && !isCautions(file) && !isPantry(file));

/** Ids that stand for no document. */
const NO_DOCUMENT = ['recalled', 'derived', 'computed', 'identity'];

describe('the register', () => {
  const entries = register.parse(read('sources.json'));

  test('names each source once', () => {
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
  });

  test('one work is one entry', () => {
    // a title without its authors, letters and digits only; the year tells editions apart
    const plain = (title: string): string =>
      title
        .replace(/\([^)]*\)/g, '')
        .replace(/[^a-z0-9]+/gi, ' ')
        .trim()
        .toLowerCase();
    const names = entries.map(({ title, year }) => `${plain(title)} | ${year}`);
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
    const links = entries.flatMap(({ url }) => (url === undefined || new URL(url).pathname === '/' ? [] : [url]));
    expect(links.filter((link, index) => links.indexOf(link) !== index)).toEqual([]);
  });

  test('says what a work is, not where a copy of it lay', () => {
    const place =
      /\b(cop(y|ies) of|stored (cop|page|text|extract|abstract|excerpt)|page cop(y|ies)|excerpt|archived?|transcri|reproduc|visible|seen|hand-?out|homework|slides?|lecture|course (page|notes)|data ?set that cites|works? that cites?|memory|mailing list)/i;
    const site = /\b[\w-]+\.(com|ru|info|ms|io|net|org)\b|github|scribd|docslib/i;
    const program = /repositor|recipe|\bcode\b|librar(y|ies)|package|implementation|hobby/i;
    const words = ({ title, publisher, locator = '', note = '' }: (typeof entries)[number]): string =>
      [title, publisher, locator, note].join(' | ');
    const wrong = entries.filter(
      (entry) => place.test(words(entry)) || site.test(words(entry)) || program.test(entry.note ?? ''),
    );
    expect(wrong.map(words)).toEqual([]);
  });

  test('has a catalogue title for every work', () => {
    const vague =
      /^(unknown|several|various|untitled|textbook|university|problem set|teaching)\b|\b(not shown|unknown)\b/i;
    expect(
      entries.filter(
        ({ title, publisher }) => vague.test(title) || vague.test(publisher.replace(/^University of /, '')),
      ),
    ).toEqual([]);
  });

  test('links to publishers and official collections only', () => {
    const commercial = new Set([
      'hbcp.chemnetbase.com', // CRC Press
      'learncheme.com', // University of Colorado Boulder
      'medcraveonline.com', // the journal
      'seasonalandsimple.info', // University of Missouri
      'www.degruyter.com',
      'www.nature.com',
    ]);
    const hosts = entries.flatMap(({ url }) => (url === undefined ? [] : [new URL(url).hostname]));
    const wrong = hosts.filter((host) => /\.(com|info|net|io|ru|ms|me)$/.test(host) && !commercial.has(host));
    expect(wrong).toEqual([]);
    expect(hosts.filter((host) => /^(www\.)?(archive|web\.archive|glycodata|idoc|vdoc)\./.test(host))).toEqual([]);
  });

  test('an entry that stands for no document was not seen', () => {
    for (const { id, seen } of entries) if (NO_DOCUMENT.includes(id)) expect(seen, id).toBeUndefined();
  });
});

describe('tables', () => {
  test.each(tables)('%s has a source for every row', (file) => {
    const parsed = table.safeParse(read(file));
    expect(parsed.success ? [] : parsed.error.issues.slice(0, 5)).toEqual([]);
  });

  test.each(tables)('%s says what was seen of what was read', (file) => {
    const { rows } = read(file) as { rows: Row[] };
    const seenOf = (id: string) => sources().find((entry) => entry.id === id)?.seen;
    const wrong = rows.filter(({ source: id, obtained, seen: looked }) => {
      if (obtained === 'read') {
        // a work that was only cited is read-secondary; nothing recalled or derived was read
        return looked === undefined || looked === 'citation' || NO_DOCUMENT.includes(id) || seenOf(id) === undefined;
      }
      return looked !== undefined && !(obtained === 'read-secondary' && looked === 'citation');
    });
    expect(wrong).toEqual([]);
  });

  test('the register says of a work what its rows say was looked at', () => {
    const looks = new Map<string, Set<string | undefined>>();
    for (const file of tables) {
      for (const { source: id, obtained, seen: looked } of (read(file) as { rows: Row[] }).rows) {
        if (id === undefined) continue;
        const look = obtained === 'read' ? looked : obtained === 'read-secondary' ? 'citation' : undefined;
        looks.set(id, (looks.get(id) ?? new Set()).add(look));
      }
    }
    const wrong = sources().filter(({ id, seen: looked }) => looks.has(id) && !looks.get(id)?.has(looked));
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });

  /** The index of what is known is written by a program, one row a food. */
  test.each(files.filter((file) => !isCautions(file) && !['sources.json', 'foods/known.json'].includes(file)))(
    '%s has an id of its own for every row',
    (file) => {
      const { rows } = read(file) as { rows: { readonly id?: string }[] };
      expect(rows.filter(({ id }) => id === undefined)).toEqual([]);
      expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    },
  );

  test('a row without its source is refused', () => {
    const good = { id: 'a-row', source: 'usda-cghc-2015', locator: 'p. 2-6', obtained: 'read' };
    expect(row.safeParse(good).success).toBe(true);
    expect(row.safeParse({ ...good, source: 'nowhere' }).success).toBe(false);
    expect(row.safeParse({ ...good, id: undefined }).success).toBe(false);
    expect(row.safeParse({ ...good, obtained: 'guessed' }).success).toBe(false);
    expect(row.safeParse({ id: 'a-row', obtained: 'common-practice', reason: 'the jar cools' }).success).toBe(true);
    expect(row.safeParse({ id: 'a-row', obtained: 'common-practice' }).success).toBe(false);
    expect(row.safeParse({ ...good, obtained: 'common-practice', reason: 'the jar cools' }).success).toBe(false);
  });
});

test.each(files.filter(isPantry))('%s is common practice, and says why', (file) => {
  const parsed = pantry.safeParse(read(file));
  expect(parsed.success ? [] : parsed.error.issues.slice(0, 5)).toEqual([]);
});

test('cautions are whole, and an id means one text', () => {
  const texts = new Map<string, string>();
  for (const file of files.filter(isCautions)) {
    for (const entry of z.array(caution).parse(read(file))) {
      expect(texts.get(entry.id) ?? entry.text, entry.id).toBe(entry.text);
      texts.set(entry.id, entry.text);
    }
  }
  expect(texts.size).toBeGreaterThan(4);
});

test('every source of the register is used by a row or a caution, or is said in code', () => {
  const used = new Set<string>();
  for (const file of files.filter((name) => name !== 'sources.json')) {
    for (const match of readFileSync(data + file, 'utf8').matchAll(/"([a-zA-Z0-9][\w.-]*)"/g)) used.add(match[1] ?? '');
  }
  const code = ['src', 'shared']
    .flatMap((folder) => {
      const base = new URL(`../${folder}/`, import.meta.url).pathname;
      return readdirSync(base, { recursive: true })
        .map(String)
        .filter((file) => /\.(ts|json)$/.test(file))
        .map((file) => readFileSync(base + file, 'utf8'));
    })
    .join('\n');
  const unused = [...known].filter((id) => !used.has(id) && !code.includes(`'${id}'`) && !code.includes(`"${id}"`));
  expect(unused).toEqual([]);
});
