import type { Named } from '../common/names';

/** Other names of the foods in the freezing tables. */
const SYNONYMS: Readonly<Record<string, readonly string[]>> = {
  'snap bean': ['green bean', 'string bean', 'wax bean', 'french bean', 'bean', 'bean, snap green'],
  'lima bean': ['butter bean', 'pinto bean', 'lima'],
  'corn on the cob': ['ear of corn', 'corn ear', 'whole corn'],
  'corn kernel': ['whole kernel corn', 'cut corn', 'cream style corn'],
  'sweet corn': ['corn', 'corn kernel', 'yellow sweet corn'],
  'edible-pod pea': ['edible pod pea', 'snow pea', 'sugar pea', 'sugar snap pea', 'pea pod'],
  'green pea': ['pea', 'english pea', 'shelled pea', 'garden pea'],
  'field pea': ['blackeye pea', 'black-eyed pea', 'cowpea', 'southern pea'],
  'sweet pepper': ['bell pepper', 'pepper', 'green pepper', 'red pepper'],
  'green sweet pepper': ['bell pepper', 'green pepper', 'sweet pepper', 'pepper'],
  'green soybean': ['edamame', 'soybean'],
  'summer squash': ['zucchini', 'courgette', 'yellow squash'],
  'winter squash': ['butternut squash', 'hubbard squash', 'acorn squash'],
  'sour cherry': ['tart cherry', 'pie cherry', 'red cherry'],
  'Jerusalem artichoke': ['sunchoke'],
  cantaloupe: ['muskmelon', 'cantaloupe melon'],
  'casaba melon': ['casaba'],
  'honeydew melon': ['honeydew'],
  'slip-skin grape': ['american grape', 'concord grape'],
  'European grape': ['table grape', 'seedless grape', 'vinifera grape', 'grape'],
  'red tomato': ['tomato', 'ripe tomato'],
  greens: ['beet greens', 'chard', 'swiss chard', 'kale', 'mustard greens', 'spinach', 'turnip greens'],
  collards: ['collard', 'collard greens'],
  beet: ['beetroot'],
  eggplant: ['aubergine'],
  rutabaga: ['swede', 'swede turnip'],
  artichoke: ['globe artichoke'],
  pineapple: ['ananas'],
  melon: ['cantaloupe', 'honeydew', 'watermelon', 'melon ball'],
  orange: ['orange section'],
  grapefruit: ['grapefruit section'],
  tangerine: ['mandarin', 'mandarin orange'],
  currant: ['red currant', 'black currant', 'white currant'],
  'black currant': ['currant'],
  applesauce: ['apple sauce'],
  plum: ['prune plum', 'fresh prune'],
  grape: ['table grape', 'seedless grape'],
};

/** The foods named in a table, each once, with the other names they go by. */
export function namedFoods(foods: readonly string[]): readonly Named[] {
  const unique = [...new Set(foods)];
  const own = new Set(unique);
  // a synonym that is a food of this table itself is that food
  return unique.map((name) => ({ name, synonyms: (SYNONYMS[name] ?? []).filter((other) => !own.has(other)) }));
}
