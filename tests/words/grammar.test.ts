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
  expect(kindsOf({ kind: 'range', of: leaf('mass') })).toEqual(['mass']);
  expect(kindsOf(leaf('share'))).toEqual(kindsOf(leaf('number')));
  expect(kindsOf({ kind: 'list', of: leaf('text') })).toEqual(['list of text']);
  expect(agree(['mass', 'mass or volume', 'mass'])).toBe(true);
  expect(agree(['mass', 'mass or volume', 'volume'])).toBe(false);
  expect(agree(['text', 'list of text'])).toBe(false);
});
