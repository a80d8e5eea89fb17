import { expect, test } from 'vitest';
import { RECIPES } from '../../src/recipes/rows/rows';
import { operationOf, stepText, stepTextMetric } from '../../src/recipes/step';

test.each([
  [{ do: 'steam', time: { low: '1 1/2 min', high: '2 min' } }, 'Steam for 1 1/2 to 2 min.'],
  [{ do: 'steam', time: { low: '1/2 min', high: '1 min' } }, 'Steam for 1/2 to 1 min.'],
  [{ do: 'slice', size: { low: '1/16 in', high: '1/8 in' } }, 'Slice (1/16 to 1/8 in).'],
  [{ do: 'dry', temperature: '140 degF', time: { low: '6 h', high: '12 h' } }, 'Dry at 140 °F for 6 to 12 h.'],
  [{ do: 'condition', time: '7 days' }, 'Condition for 7 days.'],
] as const)('a step says its figures as printed: %o', (step, words) => {
  expect(stepText(step)).toBe(words);
});

test.each([
  [
    {
      do: 'slip-skins',
      says: 'dip it in boiling water for {time}; slip the skins',
      time: { low: '30 s', high: '60 s' },
    },
    'Dip it in boiling water for 30 to 60 s; slip the skins.',
  ],
  [{ do: 'cut', says: 'cut in pieces of {size}', size: '1 in', optional: true }, 'If you like: cut in pieces of 1 in.'],
  [{ do: 'refrigerate', time: { low: '1 week', high: '2 weeks' } }, 'Refrigerate for 1 to 2 weeks.'],
] as const)('a step in words of its own keeps its figures: %o', (step, words) => {
  expect(stepText(step)).toBe(words);
});

const steps = RECIPES.flatMap(({ id, steps: own }) => own.map((step) => ({ id, step })));
test('words of its own have a place for each figure, and nothing beside them', () => {
  for (const { id, step } of steps) {
    const { says, of, to, moisture, times } = step;
    if (says === undefined) continue;
    expect([of, to, moisture, times], id).toEqual([undefined, undefined, undefined, undefined]);
    const places = [...says.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort();
    expect(places, id).toEqual((['size', 'temperature', 'time'] as const).filter((name) => step[name] !== undefined));
  }
});
test('no step reads as an operation with its object behind it', () => {
  const broken = steps.flatMap(({ id, step }) => {
    const text = stepText(step);
    const wrong = [
      /skins the/, // slip the skins the tomatoes
      /bones the/,
      /hot liquid with/, // cover with the hot liquid with boiling water
      /boil the .*(juice|mixture|syrup), until it boils/i,
      /until (pieces|strips|rings|portions|chunks|coarse|fine|one|rare|thick;)\b/,
      /degF/,
      /,,| ,|\{/,
    ].some((pattern) => pattern.test(text));
    return wrong ? [`${id}: ${text}`] : [];
  });
  expect(broken).toEqual([]);
  // the operations themselves are named
  expect(steps.every(({ step }) => operationOf(step).name !== '')).toBe(true);
});

test('a metric page has millimeters, and degrees that are never less hot', () => {
  expect(stepTextMetric({ do: 'slice', size: '1/8 in' })).toBe('Slice (1/8 in, 3 mm).');
  expect(stepTextMetric({ do: 'bake', temperature: '160 degF', time: '1 h' })).toBe('Bake at 160 °F, 72 °C for 1 h.');
  expect(stepTextMetric({ do: 'ferment', temperature: { low: '70 degF', high: '75 degF' } })).toBe(
    'Ferment at 70 to 75 °F, 22 to 23 °C.',
  );
  expect(stepTextMetric({ do: 'wash' })).toBe(stepText({ do: 'wash' }));
});
