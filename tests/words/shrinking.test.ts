/** The lists that may only shrink fail both ways. */
import { expect, test } from 'vitest';
import { countsReport, namesReport } from '../helpers/shrinking';

test('a list of names holds just what is found, each with a reason', () => {
  const listing = { file: 'list.json', found: new Map([['jar', 'two kinds']]), mend: 'Rename it.' };
  expect(namesReport({ jar: 'to be renamed' }, listing)).toBe('');
  expect(namesReport({}, listing)).toMatch(/NEW[\s\S]*Rename it\.[\s\S]*jar: two kinds/);
  expect(namesReport({ jar: 'to be renamed', pot: 'to be renamed' }, listing)).toMatch(
    /MENDED[\s\S]*list\.json[\s\S]*pot/,
  );
  expect(namesReport({ jar: ' ' }, listing)).toMatch(/WITHOUT A REASON/);
});

test('a count is the real one, not more and not less', () => {
  const counting = { file: 'list.json', found: new Map([['acid', ['a', 'b']]]), mend: 'Write a line.' };
  expect(countsReport({ acid: 2 }, counting)).toBe('');
  expect(countsReport({ acid: 1 }, counting)).toMatch(/acid: 2, at most 1\. Write a line\./);
  expect(countsReport({ acid: 3 }, counting)).toMatch(/acid: 2, listed 3\. Lower it in list\.json/);
  expect(countsReport({ acid: 2, jars: 1 }, counting)).toMatch(/jars: 0, listed 1/);
  expect(countsReport({}, counting)).toMatch(/at most 0/);
});
