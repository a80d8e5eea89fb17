import { expect, test } from 'vitest';
import { stepText } from '../../src/recipes/step';

test.each([
  [{ do: 'steam', time: { low: '1 1/2 min', high: '2 min' } }, 'Steam for 1 1/2 to 2 min.'],
  [{ do: 'steam', time: { low: '1/2 min', high: '1 min' } }, 'Steam for 1/2 to 1 min.'],
  [{ do: 'slice', size: { low: '1/16 in', high: '1/8 in' } }, 'Slice (1/16 to 1/8 in).'],
  [{ do: 'dry', temperature: '140 degF', time: { low: '6 h', high: '12 h' } }, 'Dry at 140 °F for 6 to 12 h.'],
  [{ do: 'condition', time: '7 days' }, 'Condition for 7 days.'],
] as const)('a step says its figures as printed: %o', (step, words) => {
  expect(stepText(step)).toBe(words);
});
