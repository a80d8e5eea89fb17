import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { publicFace, root } from '../helpers/publicTypes';
import { apiPage, PAGE } from './api';

/** Lines of one text that the other lacks. */
const lacking = (text: string, other: string): string[] => {
  const known = new Set(other.split('\n'));
  return text.split('\n').filter((line) => !known.has(line));
};

test('docs/api.md shows the public face as it is (npm run api writes it)', () => {
  const page = readFileSync(root + PAGE, 'utf8');
  const now = apiPage(publicFace());
  expect({ new: lacking(now, page), gone: lacking(page, now) }).toEqual({ new: [], gone: [] });
  expect(now === page, 'the lines are the same, their order is not').toBe(true);
});

test('the page shows what matters: units, shares, choices, who answers no', () => {
  const page = apiPage(publicFace());
  expect(page).toMatch(/^airPressure\(AirPressureInput\) -> AirPressure$/m);
  expect(page).toMatch(/^type SaturationPressureInput \{ temperature: temperature \}$/m);
  expect(page).toMatch(/^testedProcess\(\w+\) -> .*\bor\b/m);
  expect(page.split('\n').length).toBeLessThan(4000);
});
