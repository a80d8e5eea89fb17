import { expect, test } from 'vitest';
import { legalJam as ask } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

type Judged = Extract<ReturnType<typeof ask>, { meetsIn: unknown }>;
const legalJam = (input: Parameters<typeof ask>[0]): Judged => {
  const answer = ask(input);
  if ('known' in answer) throw new Error(answer.reason.text);
  return answer;
};
const batch = { ready: '45 kg', sugar: '55 kg', finishSolids: '65 %' } as const;

test('45 to 55 is enough for peach and too little for strawberry (21 CFR 150.160)', () => {
  expect(legalJam({ spread: 'jam', food: 'peaches', ...batch }).meetsIn.US).toBe(true);
  const { checks, meetsIn: meets } = legalJam({ spread: 'jam', food: 'strawberries', ...batch });
  expect(meets.US).toBe(false);
  const ratio = checks.find(({ place, quantity }) => place === 'US' && quantity === 'fruit to sweetener');
  expect(ratio).toMatchObject({ least: 47 / 55, actual: 45 / 55, meets: false });
  expect(ratio?.margin).toBeCloseTo(-2 / 55, 12);
});

test('fruit in a kilogram is checked only where the jam was weighed', () => {
  const quantities = (jam?: '90 kg') =>
    new Set(
      legalJam({ spread: 'jam', food: 'plum', ...batch, ...(jam === undefined ? {} : { jam }) }).checks.map(
        ({ quantity }) => quantity,
      ),
    );
  expect(quantities().has('fruit content')).toBe(false);
  expect(quantities('90 kg').has('fruit content')).toBe(true);
});

test('a fruit with its own rule is not under the general one', () => {
  const rules = legalJam({ spread: 'jam', food: 'quinces', ...batch, jam: '100 kg' }).checks.filter(({ place }) =>
    place.startsWith('EU'),
  );
  expect(rules.map(({ least }) => least)).toEqual([0.6, 0.25]);
});

test('rules that were recalled say so', () => {
  const { checks, cautions } = legalJam({ spread: 'jam', food: 'plum', ...batch });
  expect(checks.filter(({ recalled }) => recalled).map(({ place }) => place)).toContain('Codex');
  expect(cautions.map(({ id }) => id)).toContain('recalled');
  expect(legalJam({ spread: 'fruit curd', food: 'lemon', ...batch }).cautions.map(({ id }) => id)).not.toContain(
    'recalled',
  );
});

test('no sugar leaves the ratio of fruit to sweetener out', () => {
  const { checks } = legalJam({
    spread: 'fruit butter',
    food: 'apple',
    ready: '5 kg',
    sugar: '0 kg',
    finishSolids: 0.43,
  });
  expect(checks.map(({ quantity }) => quantity)).toEqual(['soluble solids']);
});

test('a most as well as a least: reduced-sugar jam', () => {
  const of = (finishSolids: number) =>
    legalJam({ spread: 'reduced-sugar jam', food: 'plum', ready: '1 kg', sugar: '0.3 kg', finishSolids }).meetsIn.UK;
  expect([of(0.24), of(0.25), of(0.5), of(0.51)]).toEqual([false, true, true, false]);
});

test('factors of the standard of fruit butter', () => {
  const { ready: _, ...rest } = batch;
  const butter = { spread: 'fruit butter', ...rest, fruitSolids: '2 lb' } as const;
  expect(legalJam({ food: 'plums', ...butter })).toMatchObject({ factor: 7, ready: { value: 14, unit: 'lb' } });
  expect(ask({ food: 'mango', ...butter })).toMatchObject({ known: false, reason: { code: 'no-factor' } });
  expect(errorOf(() => ask({ food: 'plum', ...butter, ready: '1 kg' }))).toBe('CONTRADICTION fruitSolids');
});

test('a kind of fruit is under the rule of its wider fruit', () => {
  const of = (food: string) => legalJam({ spread: 'extra jam', food, ...batch, jam: '100 kg' }).checks;
  const least = (food: string) =>
    of(food).filter(({ place, quantity }) => place === 'EU' && quantity === 'fruit content');
  expect(least('redcurrant').map((check) => check.least)).toEqual([0.35]);
  expect(least('strawberry').map((check) => check.least)).toEqual([0.45]);
});

test('bad input', () => {
  expect(errorOf(() => legalJam({ spread: 'sauce' as never, food: 'plum', ...batch }))).toBe('UNKNOWN_NAME spread');
  expect(errorOf(() => legalJam({ spread: 'jam', food: 'plum', ...batch, sugar: '-1 kg' }))).toBe('OUT_OF_RANGE sugar');
});
