import { describe, expect, test } from 'vitest';
import { planDay } from '../../src/plan/index';
import { escapeText } from '../../src/sheet/escape';
import { runSheet } from '../../src/sheet/index';

describe('escapeText', () => {
  test.each([
    ['<script>alert(1)</script>', '&lt;script&gt;alert(1)&lt;/script&gt;'],
    ['[here](http://a.b)', '\\[here\\](http:&#47;&#47;a.b)'],
    ['one\n## two\r\n- three', 'one \\#\\# two - three'],
    ['a | b', 'a / b'],
    ['*bold* _it_ `code`', '\\*bold\\* \\_it\\_ \\`code\\`'],
    ['- item', '\\- item'],
    ['1. item', '1\\. item'],
    ['&lt; &#60; salt & pepper', '&amp;lt; &amp;\\#60; salt & pepper'],
    ['Peach halves, 1/2 in, 212 °F', 'Peach halves, 1/2 in, 212 °F'],
  ])('%s', (text, shown) => expect(escapeText(text)).toBe(shown));
});

const evil = '</td><script>alert(1)</script> [x](https://a.b) ![y](https://c.d)\n\n# heading\n| a | b |';

test('names in a sheet stay names', () => {
  const input = {
    lots: [{ food: 'apple', raw: '20 lb', name: `lot ${evil}` }],
    kitchen: { elevation: '500 m', hours: '6 h', dryer: { trays: 6, trayArea: '200 in2' } },
    products: [{ make: 'dried', from: 'apples', size: '4 oz', name: `product ${evil}` }],
  } as const;
  const plain = runSheet(planDay({ ...input, lots: [{ food: 'apple', raw: '20 lb', name: 'lot' }] }));
  const sheet = runSheet(planDay(input));
  expect(sheet).not.toMatch(/<script|<\/td|(?<!\\)\]\(|https?:\/\/[ac]/);
  expect(sheet).toContain('&lt;script&gt;');
  const count = (text: string, sign: RegExp) => text.match(sign)?.length ?? 0;
  expect(count(sheet, /^#/gm)).toBe(count(plain, /^#/gm));
  expect(count(sheet, /^\|/gm)).toBe(count(plain, /^\|/gm));
});

test.each([undefined, null, {}, { feasible: true }, { feasible: false }, 'plan', []])('%s is no plan', (plan) => {
  expect(() => runSheet(plan as never)).toThrow(expect.objectContaining({ name: 'StillroomError', path: 'plan' }));
});
