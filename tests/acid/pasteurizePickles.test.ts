import { expect, test } from 'vitest';
import { pasteurizePickles, pickleRules } from '../../src/acid/index';

const verdict = (input: Parameters<typeof pasteurizePickles>[0]) => {
  const answer = pasteurizePickles(input);
  return 'verdict' in answer ? answer.verdict : undefined;
};

// USDA Guide 6: 30 minutes at 180 to 185 degF, never below 180
test('a record meets the treatment or not', () => {
  expect(verdict({ coldest: '180 degF', held: '30 min' })).toBe('met');
  expect(verdict({ coldest: '179.9 degF', held: '60 min' })).toBe('not met');
  expect(verdict({ coldest: '181 degF', held: '29 min' })).toBe('not met');
  expect(verdict({ coldest: '181 degF', hottest: '190 degF', held: '30 min' })).toBe('met, but hot enough to soften');
  expect(verdict({ coldest: '83 degC', hottest: '85 degC', held: '0.5 h' })).toBe('met');
  expect(verdict({ coldest: '181 degF' })).toBeUndefined();
  expect(verdict({})).toBeUndefined();
});

test.each(['reduced-sodium sliced dill pickles', 'low-salt gherkins', 'no salt pickles'])(
  '%s are refused',
  (recipe) => {
    expect(pasteurizePickles({ recipe })).toMatchObject({ tested: false });
  },
);

test('another recipe gets the treatment', () => {
  expect(pasteurizePickles({ recipe: 'quick sweet pickles' })).toMatchObject({ time: { value: 30, unit: 'min' } });
});

test('every printed rule is listed with its source', () => {
  const rules = pickleRules();
  expect(rules).toHaveLength(14);
  for (const { rule, about, unit, basis } of rules) {
    expect([rule, about, unit].every((text) => text.length > 0)).toBe(true);
    expect(basis.source).toBeTruthy();
  }
  expect(rules.find(({ rule }) => rule === 'pasteurization-start')?.range).toEqual([120, 140]);
});
