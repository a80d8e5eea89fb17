/** What a recipe takes from the pantry, by weight. */
export const PANTRY = [
  'sugar',
  'brown sugar',
  'bottled lemon juice',
  'citric acid',
  'vinegar', // of 5 percent acidity
  'pectin', // powdered
  'liquid pectin',
  'starch for canning',
  'apple juice',
  'cider',
] as const;

export type PantryItem = (typeof PANTRY)[number];
