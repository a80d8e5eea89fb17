import { expect, test } from 'vitest';
import { figure } from '../../src/produce/figures';
import { cutOf, type Form, formOfId, isVegetable } from '../../src/produce/forms';
import { foodDensity } from '../../src/produce/weights/weights';
import { guideQuart } from '../../src/produce/yields/printed';
import { yieldOf } from '../../src/produce/yields/readyFromRaw';
import { poundsInQuart } from '../../src/produce/yields/share';
import { canningRows } from '../../src/produce/yields/tables';
import { known } from '../helpers/known';

/**
 * Two roads to the raw pounds for a quart: what the canning guide prints, and the weight of a loose quart of the
 * ready produce (SR28 weights of measures) over the share that trimming leaves (SR28 refuse and its companions).
 * A loose quart always holds less than a packed jar; the reasons below say why, food by food.
 */
const REASONS = {
  packed:
    'pieces are pressed into the jar, or heated until they sink, and syrup fills what voids are left; a measuring cup is filled loosely. The printed pounds also count what is sorted out besides the refuse.',
  thin: 'thin or long pieces lie in a cup with more air than food; in the jar they are heated and pressed flat.',
  whole: 'whole fruit touches only at points, more than a third of a cup is air, and it shrinks when heated.',
  stems:
    'a cup of slip-skin grapes is weighed with half its volume air; a jar is shaken full, and stems and shrivelled grapes are sorted out.',
  wilts: 'leaves and mushrooms are wilted or boiled down before they are packed: many loose quarts go into one jar.',
  sections:
    'citrus sections are put up with syrup between them, "about 2" printed pounds a quart, while the cup of sections is weighed with its juice and no voids.',
  pressed: 'skins, seeds and pulp stay behind in the strainer: juice is two thirds of the fruit.',
  boiled: 'sauce is boiled down: a third to a half of the juice leaves as steam.',
  parts:
    'the printed pounds are of the pod, husk or stalk as bought, and field-run pods are less full than the refuse table counts; the shelled food also swells and packs tight.',
} as const;

const EXPLAINED: Readonly<Record<string, readonly [ratio: number, reason: keyof typeof REASONS]>> = {
  'apple, slices': [2.2, 'thin'],
  'apricot, slices': [1.44, 'packed'],
  'apricot, whole': [1.61, 'whole'],
  'berry, whole': [1.35, 'packed'],
  'cherry, whole': [1.77, 'whole'],
  'cherry, pitted': [1.66, 'packed'],
  'grape, juice': [1.51, 'pressed'],
  'grapefruit, slices': [0.5, 'sections'],
  'grape, whole': [2.37, 'stems'],
  'nectarine, slices': [1.8, 'packed'],
  'peach, slices': [1.56, 'packed'],
  'pear, slices': [1.58, 'packed'],
  'plum, slices': [1.29, 'packed'],
  'plum, whole': [1.35, 'whole'],
  'tomato, juice': [1.38, 'pressed'],
  'tomato, vegetable juice blend': [1.33, 'pressed'],
  'tomato, sauce': [2.11, 'boiled'],
  'tomato, thick sauce': [2.68, 'boiled'],
  'tomato, whole': [2.08, 'whole'],
  'tomatillo, whole': [1.62, 'packed'],
  'asparagus, whole': [1.57, 'parts'],
  'lima bean, whole': [1.28, 'parts'],
  'green bean, whole': [2, 'thin'],
  'beet, whole': [1.68, 'packed'],
  'carrot, whole': [1.97, 'packed'],
  'sweet corn, cream style': [1.27, 'parts'],
  'mushroom, whole': [4.58, 'wilts'],
  'okra, whole': [1.46, 'whole'],
  'green pea, whole': [1.34, 'parts'],
  'sweet potato, whole': [1.53, 'packed'],
  'potato, whole': [1.56, 'packed'],
  'pumpkin, slices': [1.54, 'packed'],
  'winter squash, slices': [1.56, 'packed'],
  'greens, whole': [8.59, 'wilts'],
};

interface Pair {
  readonly name: string;
  readonly ratio: number;
}

const form = (id: string): Form => formOfId(id) as Form;

/** The share that trimming alone leaves, for sauce and juice too: their own share comes from the printed pounds. */
function trimmedShare(food: string, id: string): number {
  const fluid = ['sauce', 'juice'].includes(form(id).behaves);
  const preparation = !fluid ? id : !isVegetable(food) && cutOf(food) === 'trimmed' ? 'whole' : 'slices';
  return known(yieldOf(food, preparation)).yield.likely;
}

const words = (id: string): string => id.replaceAll('-', ' ');
const pairs: Pair[] = canningRows.flatMap((row) =>
  row.foods.flatMap((food) => {
    const all = row.forms.map((id) => (id === 'pieces' && row.anyCut ? 'slices' : id));
    // pieces of one row differ only in the loose cup: one form a row, but for whole beside pitted or cut fruit
    const ids = isVegetable(food) ? all.slice(0, 1) : all;
    return ids.flatMap((id) => {
      const density = foodDensity(food, form(id), true);
      if (density === undefined || food === 'dry-bean') return [];
      const loose = poundsInQuart(density.gramsPerMl.likely) / trimmedShare(food, id);
      return [{ name: `${words(food)}, ${words(id)}`, ratio: guideQuart(row) / loose }];
    });
  }),
);

test('every food of the guide with a weight of a measure is compared', () => {
  expect(pairs.length).toBeGreaterThanOrEqual(35);
});

test('every disagreement over 25% is explained, with the ratio that the explanation is for', () => {
  const apart = pairs.filter(({ ratio }) => Math.abs(ratio - 1) > 0.25);
  const found = Object.fromEntries(apart.map(({ name, ratio }) => [name, Math.round(ratio * 100) / 100]));
  const known = Object.fromEntries(Object.entries(EXPLAINED).map(([name, [ratio]]) => [name, ratio]));
  expect(found).toEqual(known);
  for (const [, reason] of Object.values(EXPLAINED)) expect(REASONS[reason].length).toBeGreaterThan(40);
});

test('the packing factor is the middle four fifths of these ratios, fluids, citrus sections and what wilts left out', () => {
  const ratios = pairs
    .filter(({ name }) => !['boiled', 'pressed', 'wilts', 'sections'].includes(EXPLAINED[name]?.[1] ?? ''))
    .filter(({ name }) => !/(sauce|crushed)$/.test(name))
    .map(({ ratio }) => ratio)
    .sort((a, b) => a - b);
  const at = (share: number) => ratios[Math.round((ratios.length - 1) * share)] as number;
  expect([at(0.1), at(0.5), at(0.9)].map((ratio) => Math.round(ratio * 100) / 100)).toEqual([
    figure('packing').low,
    figure('packing').likely,
    figure('packing').high,
  ]);
});
