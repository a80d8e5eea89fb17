import { expect, test } from 'vitest';
import { byEnds, mapRange, scaleRange, sureRange, turnRange } from '../../src/quantity/range';

const range = { low: 1, likely: 2, high: 4 };

test('each figure alike', () => {
  expect(mapRange(range, (each) => `${each} kg`)).toEqual({ low: '1 kg', likely: '2 kg', high: '4 kg' });
  expect(scaleRange(range, 3)).toEqual({ low: 3, likely: 6, high: 12 });
  expect(sureRange(5)).toEqual({ low: 5, likely: 5, high: 5 });
});
test('turned round, for what falls as the range rises', () => {
  expect(mapRange(turnRange(range), (each) => 1 / each)).toEqual({ low: 0.25, likely: 0.5, high: 1 });
});
test('low with low, high with high', () => {
  expect(byEnds(range, { low: 10, likely: 20, high: 30 }, (one, other) => one * other)).toEqual({
    low: 10,
    likely: 40,
    high: 120,
  });
});
