import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { CODES, MARK, say } from '../../src/sheet/words';

const folder = new URL('../../src/sheet/', import.meta.url);
const files = readdirSync(folder).filter((file) => file !== 'words.ts');
const text = files.map((file) => readFileSync(new URL(file, folder), 'utf8')).join('\n');

describe('the table of texts', () => {
  test('every code is used', () => {
    // codes that are made of a kind and a word of the plan
    const made = ['aim.', 'gain.', 'row.', 'col.', 'batch.', 'tray.'];
    const unused = CODES.filter((code) => !text.includes(`'${code}'`) && !made.some((start) => code.startsWith(start)));
    expect(unused).toEqual([]);
  });
  test('what is filled in, blanks and boxes', () => {
    expect(say('row.prepare', { weight: '3 lb', what: 'plums' })).toBe('Prepare 3 lb of plums');
    expect(say('write.each', { letter: 'A' })).toBe(`A ${MARK.blank}`);
  });
});
