import { describe, expect, test } from 'vitest';
import { pretreatmentDip } from '../../src/drying/index';
import { holdingRules } from '../../src/process/holdingSolutions';
import { parseQuantity } from '../../src/quantity/parseQuantity';
import { valueIn } from '../../src/quantity/scale';
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
    const { says, of, to, moisture, times, figures = [] } = step;
    const words = [of, says, to].join(' ');
    const places = [...words.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort();
    const named = figures.map((_, index) => `${index + 1}`);
    if (step.headspace !== undefined && words.includes('{')) named.push('headspace');
    if (says === undefined) {
      expect(places, id).toEqual(named);
      continue;
    }
    expect([of, to, moisture, times], id).toEqual([undefined, undefined, undefined, undefined]);
    named.push(...(['size', 'temperature', 'time'] as const).filter((name) => step[name] !== undefined));
    expect(places, id).toEqual(named);
  }
});
test('a size in the words of a step is a column, so that a metric page has it in metric units', () => {
  const us = /\d (in|inch|inches|quarts?|qt|cups?|lb|oz|tbsp|tsp|gal|gallons?|°F)\b|\d-(inch|quart|gallon)/;
  const inside = steps.flatMap(({ id, step: { of = '', says = '', to = '' } }) =>
    us.test(`${of} ${says} ${to}`) ? [id] : [],
  );
  expect(inside).toEqual([]);
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

test.each([
  [
    { do: 'boil', of: '{1} of salt in {2} of water', figures: ['1/4 cup', '2 quarts'] },
    'Boil 1/4 cup of salt in 2 quarts of water.',
    'Boil 60 mL of salt in 1.9 L of water.',
  ],
  [
    { do: 'pack', of: 'in boxes to {headspace} below the rim, or in bags', headspace: '1/2 in' },
    'Pack in boxes to 1/2 in below the rim, or in bags.',
    'Pack in boxes to 1/2 in (13 mm) below the rim, or in bags.',
  ],
  [
    { do: 'bake', to: 'it is {1} inside', figures: [{ low: '165 degF', high: '175 degF' }] },
    'Bake, until it is 165 to 175 °F inside.',
    'Bake, until it is 74 to 79 °C inside.',
  ],
  // a difference is no temperature: 9 °F more is 5 °C more
  [
    { do: 'boil-down', to: 'it is {1} above the boiling point of water', figures: ['9 delta degF'] },
    'Boil down, until it is 9 °F above the boiling point of water.',
    'Boil down, until it is 5 °C above the boiling point of water.',
  ],
  [
    { do: 'boil', of: '{1} of vinegar', figures: ['1 2/3 cups'] },
    'Boil 1 2/3 cups of vinegar.',
    'Boil 400 mL of vinegar.',
  ],
  [{ do: 'mix', of: '{1} of cabbage', figures: ['5 lb'] }, 'Mix 5 lb of cabbage.', 'Mix 2.3 kg of cabbage.'],
] as const)('what is measured besides, in the units of the page: %o', (step, us, metric) => {
  expect(stepText(step as never)).toBe(us);
  expect(stepTextMetric(step as never)).toBe(metric);
});

describe('a dip against darkening says how strong it is', () => {
  const dips = RECIPES.flatMap(({ id, ingredients, steps: own }) =>
    own.flatMap((step) => (step.do === 'dip' ? [{ id, ingredients, figures: step.figures ?? [] }] : [])),
  );
  test('each dip', () => {
    expect(dips.length).toBeGreaterThan(20);
    expect(dips.flatMap(({ id, figures }) => (figures.length === 0 ? [id] : []))).toEqual([]);
  });
  test('as its recipe lists the acids', () => {
    const same = (one: string, other: string) => parseQuantity(one).value === parseQuantity(other).value;
    for (const { id, ingredients, figures } of dips) {
      const acids = ingredients.filter(({ role, per }) => role === 'acid' && per?.of === 'water');
      const printed = acids.flatMap(({ amount, per }) => [amount as string, per?.amount as string]);
      printed.forEach((each, index) => {
        expect(same(each, figures[index] as string), `${id}: ${each}`).toBe(true);
      });
    }
  });
  const tsp = (text: unknown) => valueIn(parseQuantity(text, 'volume'), 'tsp');
  test('before drying as the drying tables have it', () => {
    const [first] = dips.filter(({ id }) => id === 'dried-apple-slices');
    const asked = ['ascorbic acid dip', 'citric acid dip', 'lemon juice dip'].flatMap((treatment, index) => {
      const water = parseQuantity(first?.figures[2 * index + 1], 'volume');
      const dip = pretreatmentDip({ treatment, waterVolume: water });
      return dip.known ? dip.ingredients.map(({ high }) => valueIn(high, 'tsp')) : [];
    });
    expect(asked.map((each) => Number(each.toFixed(6)))).toEqual(
      [0, 2, 4].map((at) => Number(tsp(first?.figures[at]).toFixed(6))),
    );
  });
  test('before canning as the canning tables do', () => {
    const powder = holdingRules().find(({ id }) => id === 'ascorbic-acid-powder');
    const pears = dips.find(({ id }) => id === 'pear-halves');
    expect(tsp(pears?.figures[0])).toBe(valueIn(powder?.amount as never, 'tsp'));
    expect(tsp(pears?.figures[1])).toBeCloseTo(valueIn(powder?.waterVolume as never, 'tsp'), 9);
  });
});

test('a metric page has millimeters, and degrees that are never less hot', () => {
  expect(stepTextMetric({ do: 'slice', size: '1/8 in' })).toBe('Slice (1/8 in, 3 mm).');
  expect(stepTextMetric({ do: 'bake', temperature: '160 degF', time: '1 h' })).toBe('Bake at 160 °F, 72 °C for 1 h.');
  expect(stepTextMetric({ do: 'ferment', temperature: { low: '70 degF', high: '75 degF' } })).toBe(
    'Ferment at 70 to 75 °F, 22 to 23 °C.',
  );
  expect(stepTextMetric({ do: 'wash' })).toBe(stepText({ do: 'wash' }));
});
