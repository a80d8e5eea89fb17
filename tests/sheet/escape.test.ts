import { describe, expect, test } from 'vitest';
import { escapeHtml, escapeText, inHtml, inMarkdown, oneLine, oneLines } from '../../src/sheet/escape';
import { MARK, say } from '../../src/sheet/words';

describe('escapeText', () => {
  test.each([
    ['<script>alert(1)</script>', '&lt;script&gt;alert(1)&lt;/script&gt;'],
    ['[here](http://a.b)', '\\[here\\](http:&#47;&#47;a.b)'],
    ['a | b', 'a / b'],
    ['*bold* _it_ `code`', '\\*bold\\* \\_it\\_ \\`code\\`'],
    ['- item', '\\- item'],
    ['1. item', '1\\. item'],
    ['&lt; &#60; salt & pepper', '&amp;lt; &amp;\\#60; salt & pepper'],
    ['Peach halves, 1/2 in, 212 °F', 'Peach halves, 1/2 in, 212 °F'],
  ])('%s', (text, shown) => expect(escapeText(text)).toBe(shown));
});
test('a name is one line, without signs that nobody sees and without the marks of the sheet', () => {
  expect(oneLine('one\n## two\r\n- three\u0000')).toBe('one ## two - three');
  expect(oneLine(`a${MARK.bold}b${MARK.box}c\u202e`)).toBe('abc');
  expect(oneLines({ a: ['x\ny', 1, null], b: { c: true } })).toEqual({ a: ['x y', 1, null], b: { c: true } });
});
test('HTML shows a text as it is', () => {
  expect(escapeHtml(`<b class="x">'a' & b</b>`)).toBe('&lt;b class=&quot;x&quot;&gt;&#39;a&#39; &amp; b&lt;/b&gt;');
});
test('boxes and blanks are drawn in each format', () => {
  const text = `${say('box')} ${say('timer.boil', { minutes: 20, rest: 5 })} <i>`;
  expect(inMarkdown(text)).toBe(
    '[ ] boil seen __ : __ → **20 min** → off __ : __ → rest 5 min → out __ : __ &lt;i&gt;',
  );
  expect(inHtml(text)).toContain('<span class="box"></span> boil seen <span class="clock">:</span> → <b>20 min</b>');
  expect(inHtml(text)).toContain('&lt;i&gt;');
});
