import { describe, expect, test } from 'vitest';
import { checkSeal } from '../../src/jars/index';
import { codeOf, pathOf } from '../helpers/errors';

const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);
const good = { buttonDown: true, lid: 'concave', ringsWhenTapped: true, holdsByLid: true } as const;

describe('checkSeal', () => {
  test('before 12 h nothing counts, from 12 h on it does (AIB 539)', () => {
    expect(checkSeal({ sinceProcessing: '11.99 h', ...good }).verdict).toBe('too early');
    expect(checkSeal({ sinceProcessing: '12 h', ...good }).verdict).toBe('sealed');
    const early = checkSeal({ sinceProcessing: '0 h', buttonDown: false });
    expect(early.verdict).toBe('too early');
    expect(early.next[0]).toContain('12 to 24 h');
    expect(early.reprocessWithin).toBeUndefined();
  });

  test.each([
    [{ buttonDown: false }, 'springs up'],
    [{ holdsByLid: false }, 'comes off'],
  ] as const)('one failed test is enough, whatever the others say: %j', (failed, said) => {
    const answer = checkSeal({ sinceProcessing: '18 h', ...good, ...failed });
    expect(answer.verdict).toBe('not sealed');
    expect(answer.because.join()).toContain(said);
    expect(answer.because).toHaveLength(1);
    expect(answer.reprocessWithin).toEqual({ value: 6, unit: 'h' });
    expect(answer.next.join(' ')).toMatch(/full time.*refrigerator.*freezer/s);
  });

  test.each([{ lid: 'flat' }, { ringsWhenTapped: false }] as const)('%j leaves doubt', (doubt) => {
    const answer = checkSeal({ sinceProcessing: '18 h', ...good, ...doubt });
    expect(answer.verdict).toBe('doubtful');
    expect(answer.reprocessWithin).toEqual({ value: 6, unit: 'h' });
    expect(checkSeal({ sinceProcessing: '18 h', ...good, ...doubt, buttonDown: false }).verdict).toBe('not sealed');
  });

  test('after 24 h an unsealed jar is thrown out, not processed again', () => {
    expect(checkSeal({ sinceProcessing: '24 h', buttonDown: false }).reprocessWithin).toEqual({ value: 0, unit: 'h' });
    for (const time of ['24.01 h', '3 weeks'] as const) {
      const late = checkSeal({ sinceProcessing: time, buttonDown: false });
      expect(late.reprocessWithin).toBeUndefined();
      expect(late.next.join()).not.toContain('processed again for');
      expect(late.next.join()).toMatch(/throw out/i);
      expect(ids(late)).toEqual(expect.arrayContaining(['unsealed-too-long', 'spoiled-jar']));
    }
  });

  test('a stored jar in doubt is tested again, and thrown out when it fails', () => {
    const late = checkSeal({ sinceProcessing: '3 weeks', ringsWhenTapped: false });
    expect(late.verdict).toBe('doubtful');
    expect(late.next.join()).toContain('Press the middle');
    expect(late.next.join()).toMatch(/throw out/i);
    expect(late.next.join()).not.toContain('processed again for');
    expect(ids(late)).not.toContain('spoiled-jar');
  });

  test.each([{ lid: 'bulging' }, { leaking: true }, { leaking: true, lid: 'concave' }] as const)(
    '%j means spoilage: the jar is thrown out and never processed again',
    (sign) => {
      for (const sinceProcessing of ['12 h', '18 h', '3 weeks'] as const) {
        const answer = checkSeal({ sinceProcessing, ...good, ...sign });
        expect(answer.verdict).toBe('discard');
        expect(answer.reprocessWithin).toBeUndefined();
        expect(answer.next.join(' ')).toMatch(/throw the jar out without tasting/);
        expect(answer.next.join(' ')).not.toMatch(/again for the full time|refrigerator|freezer/);
        expect(ids(answer)).toContain('spoiled-jar');
        expect(answer.because).toHaveLength(1);
      }
    },
  );

  test('a jar that does not leak has shown nothing yet, and a hot lid may bulge', () => {
    expect(codeOf(() => checkSeal({ sinceProcessing: '18 h', leaking: false }))).toBe('MISSING');
    expect(checkSeal({ sinceProcessing: '18 h', leaking: false, buttonDown: true }).verdict).toBe('sealed');
    expect(checkSeal({ sinceProcessing: '1 h', lid: 'bulging' }).verdict).toBe('too early');
    expect(ids(checkSeal({ sinceProcessing: '18 h', buttonDown: false }))).not.toContain('spoiled-jar');
  });

  test('a sealed jar is stored: bands off, 50 to 70 degF, a year, never above 95 degF', () => {
    const { next, cautions } = checkSeal({ sinceProcessing: '1 day', ...good });
    expect(next.join(' ')).toMatch(/bands off.*50 degF.*70 degF.*95 degF.*12 months/s);
    expect(cautions.map(({ id }) => id)).toEqual(['no-reading-proves-a-seal', 'follow-local-guidance']);
  });

  test('holding the jar by its lid is common practice, the other tests are published', () => {
    const { basis } = checkSeal({ sinceProcessing: '1 day', ...good });
    expect(basis.slice(0, 4).map(({ kind }) => kind)).toEqual([
      'published',
      'published',
      'published',
      'common-practice',
    ]);
  });

  test.each([
    [{ sinceProcessing: '14 h' }, 'MISSING', 'buttonDown'],
    [{ buttonDown: true }, 'MISSING', 'sinceProcessing'],
    [{ sinceProcessing: '-1 h', buttonDown: true }, 'OUT_OF_RANGE', 'sinceProcessing'],
    [{ sinceProcessing: '14 h', buttonDown: 'yes' }, 'WRONG_TYPE', 'buttonDown'],
    [{ sinceProcessing: '14 h', lid: 'dented' }, 'UNKNOWN_NAME', 'lid'],
  ])('%j fails with %s at %s', (input, code, path) => {
    expect(codeOf(() => checkSeal(input as never))).toBe(code);
    expect(pathOf(() => checkSeal(input as never))).toBe(path);
  });
});
