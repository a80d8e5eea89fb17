/** One word means one thing: the names of fields over the arguments and answers of all public functions. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { publicFace } from '../helpers/publicTypes';
import { expectListed } from '../helpers/shrinking';
import type { Shape } from '../helpers/typeWords';
import { agree, kindsByName, kindsOf, short, usesOfWords } from './kinds';

const uses = usesOfWords(publicFace());

test('a word has one kind', () => {
  const found = new Map<string, string>();
  for (const [name, kinds] of kindsByName(uses)) {
    if (agree([...kinds.keys()])) continue;
    found.set(name, [...kinds].map(([kind, where]) => `\n      ${kind}: ${short(where)}`).join(''));
  }
  expectListed(
    {
      file: 'tests/words/twoKinds.json',
      found,
      mend: 'Give the field the kind its name has elsewhere, or another name.',
    },
    'to be renamed',
  );
});

test('words that mean the same are one word', () => {
  interface Rule {
    readonly never: readonly string[];
    readonly of?: readonly string[];
    readonly unless?: string;
    readonly say: string;
  }
  const path = new URL('oneWordRules.json', import.meta.url);
  const rules = JSON.parse(readFileSync(path, 'utf8')) as readonly Rule[];
  const found = new Map<string, string>();
  for (const { name, field, by, side } of uses) {
    const kind = kindsOf(field.shape).join(' or ');
    const rule = rules.find(
      ({ never, of, unless }) => never.includes(name) && (of === undefined || of.includes(kind)) && kind !== unless,
    );
    if (rule !== undefined) found.set(`${by} ${side} ${name}`, `${kind}: ${rule.say}`);
  }
  expectListed({ file: 'tests/words/oneWord.json', found, mend: 'Use the word of the grammar.' }, 'to be renamed');
});

test('the kinds can tell things apart', () => {
  const leaf = (word: string): Shape => ({ kind: 'leaf', word });
  expect(kindsOf({ kind: 'range', of: leaf('mass'), lacks: [] })).toEqual(['mass']);
  expect(kindsOf(leaf('share'))).toEqual(kindsOf(leaf('number')));
  expect(kindsOf({ kind: 'list', of: leaf('text') })).toEqual(['list of text']);
  expect(agree(['mass', 'mass or volume', 'mass'])).toBe(true);
  expect(agree(['mass', 'mass or volume', 'volume'])).toBe(false);
  expect(agree(['text', 'list of text'])).toBe(false);
});

test('a number of things and the list that counts them are one kind, other lists are not', () => {
  const field = (name: string) => ({
    name,
    optional: false,
    says: 'A line.',
    shape: { kind: 'leaf', word: 'number' } as Shape,
  });
  const list = (...names: string[]): Shape => ({ kind: 'list', of: { kind: 'object', fields: names.map(field) } });
  expect(kindsOf(list('jar', 'count'))).toEqual(['number']);
  expect(kindsOf(list('jar', 'price'))).toEqual(['list of object']);
});

test('beside a likely figure stand the other ends of its range, and no other field', () => {
  const field = (name: string, word: string) => ({
    name,
    optional: false,
    says: 'A line.',
    shape: { kind: 'leaf', word } as Shape,
  });
  const names = (...fields: ReturnType<typeof field>[]) =>
    usesOfWords({
      modules: [],
      functions: [{ name: 'one', module: '', file: '', says: '', parameters: [], answer: { kind: 'object', fields } }],
      types: [],
      values: [],
      root: [],
    }).map(({ name }) => name);
  const [ready, unit, likely] = [field('ready', 'number'), field('unit', 'text'), field('likely', 'number')];
  expect(names(ready, likely, unit)).toEqual(['unit']);
  expect(names(ready, unit)).toEqual(['ready', 'unit']);
  expect(names(ready, field('likely', 'mass'))).toEqual(['ready']);
  expect(names(ready, likely, field('low', 'number'), field('high', 'number'))).toContain('ready');
});

test('a fixed name goes back into an argument that reads text, and nowhere else', () => {
  const use = (side: 'takes' | 'answers', by: string, shape: Shape) => ({
    name: 'jar',
    field: { name: 'jar', optional: false, says: 'A line.', shape },
    by,
    side,
  });
  const [text, choice]: Shape[] = [
    { kind: 'leaf', word: 'text' },
    { kind: 'choice', words: ['pint'] },
  ];
  const kinds = (...list: Parameters<typeof kindsByName>[0]) => [...(kindsByName(list).get('jar')?.keys() ?? [])];
  expect(kinds(use('takes', 'one', text as Shape), use('answers', 'other', choice as Shape))).toEqual(['text']);
  expect(kinds(use('takes', 'one', choice as Shape), use('answers', 'other', text as Shape))).toEqual([
    'choice',
    'text',
  ]);
  expect(kinds(use('answers', 'one', text as Shape), use('answers', 'other', choice as Shape))).toHaveLength(2);
});
