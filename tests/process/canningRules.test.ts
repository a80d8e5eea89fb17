import { expect, test } from 'vitest';
import { ruleFigures, ruleRow } from '../../src/process/canningRules';
import { canningRules } from '../../src/process/index';
import { thrownBy as errorOf } from '../helpers/errors';

test('all rules, or those of a topic, each with its basis', () => {
  const all = canningRules();
  expect(all.basis).toHaveLength(all.rules.length);
  const steam = canningRules({ topic: 'atmospheric steam canner' });
  expect(steam.rules.every(({ topic }) => topic === 'atmospheric steam canner')).toBe(true);
  expect(steam.rules.length).toBeGreaterThan(5);
  expect(steam.rules.length).toBeLessThan(all.rules.length);
});

// USDA Complete Guide to Home Canning, guide 1, PB724 and PNW 421: the reference's pressureRules and schedules
test.each([
  ['vent', 10, 10],
  ['pressurize', 3, 5],
  ['depressurize-pints', 30, 30],
  ['depressurize-quarts', 45, 45],
  ['wait-before-opening', 10, 10],
  ['rest', 5, 5],
  ['dial-correct', 0, 2],
  ['dial-replace', 2, 2],
  ['steam-time', 45, 45],
  ['sterilize', 10, 10],
  ['preheat-raw', 140, 140],
  ['preheat-hot', 180, 180],
  ['low-temperature-pasteurization', 180, 185],
])('%s', (rule, low, high) => {
  expect(ruleFigures(rule)).toMatchObject({ low, high });
});

test('least time from steady steam to lid off for quarts of beans is 45 minutes without come-up and cooling', () => {
  // worked example of the reference: 10 of venting, 25 of process, 10 of waiting
  expect(ruleFigures('vent').low + 25 + ruleFigures('wait-before-opening').low).toBe(45);
});

test('a rule that says to drop nothing: the pressure drop restarts the time', () => {
  expect(ruleRow('restart').text).toContain('start the whole time again');
  expect(() => ruleRow('no such rule')).toThrow();
});

test('a dial gauge that is off is corrected up to 2 psi and replaced beyond', () => {
  const { rules } = canningRules({ topic: 'pressure canner' });
  const dial = rules.filter(({ id: rule }) => rule.startsWith('dial-'));
  expect(dial.map(({ id: rule }) => rule)).toEqual(['dial-check', 'dial-correct', 'dial-replace']);
  for (const { basis } of dial) {
    expect(basis).toMatchObject([{ source: 'usda-cghc-2015', locator: 'Guide 1, p. 1-20', seen: 'reproduction' }]);
  }
});

test('bad input', () => {
  expect(errorOf(() => canningRules({ topic: 'oven' as 'jars' }))).toMatchObject({
    code: 'UNKNOWN_NAME',
    path: 'topic',
  });
});

test('the rules of pickles have a source each, and the ends of a range', () => {
  const { rules } = canningRules({ topic: 'pickles' });
  expect(rules).toHaveLength(14);
  for (const { text, unit, basis } of rules) {
    expect([text, unit ?? ''].every((each) => each.length > 0)).toBe(true);
    expect(basis[0]?.source).toBeTruthy();
  }
  expect(rules.find(({ id: rule }) => rule === 'pasteurization-start')).toMatchObject({ low: 120, high: 140 });
});
