/** What a recipe needs, and what of it a kitchen does not have. */

import * as z from 'zod/mini';
import atHandTable from '../../../data/recipes/at-hand.json';
import lacksTable from '../../../data/recipes/lacks.json';
import { figuresFor } from '../../foods/figuresFor';
import { foodsNamed } from '../../foods/lookUpFood';
import { nameOf } from '../../foods/tables';
import { id, positive, practiceColumns, type RowOf } from '../../sources/columns';
import { asTable } from '../../sources/table';
import type { CanningMethod } from '../../words/method';
import { MAIN } from '../batchesOf';
import { PANTRY } from '../pantryItems';
import type { IngredientRow, OperationRow, RecipeRow } from '../rows/tables';
import { operationOf } from '../step';
import type { WaysKitchen } from './kitchen';

const LACKS = ['pantry', 'food', 'jars', 'equipment'] as const;
export const lackRow = () => z.strictObject({ ...practiceColumns(), id: z.enum(LACKS), place: positive() });
const places = new Map(asTable<RowOf<typeof lackRow>>(lacksTable).rows.map((row) => [row.id, row.place]));

/** One thing that is lacking. */
export interface Lack {
  /** Whether it is an item of the pantry, another food, jars, or something to work with. */
  readonly kind: (typeof LACKS)[number];
  /** What it is: `canner`, `jars`, `dryer`, `freeze-dryer`, `freezer`, `burner`, a food, or an item of the pantry. */
  readonly what: string;
  /** The same in words. */
  readonly text: string;
}

const MACHINES: Readonly<
  Partial<Record<OperationRow['takes'], { has: (kitchen: WaysKitchen) => boolean; text: string }>>
> = {
  burner: { has: ({ pots }) => pots === undefined || pots.length > 0, text: 'a pot' },
  dryer: { has: ({ dryer }) => dryer !== undefined, text: 'a dryer' },
  'freeze-dryer': { has: ({ freezeDryer }) => freezeDryer !== undefined, text: 'a freeze-dryer' },
  freezer: { has: ({ freezer }) => freezer !== undefined, text: 'room in a freezer' },
};

function machinesLacking({ steps }: RecipeRow, kitchen: WaysKitchen): Lack[] {
  const takes = new Set(steps.filter(({ optional }) => optional !== true).map((step) => operationOf(step).takes));
  return [...takes].flatMap((what) => {
    const machine = MACHINES[what];
    return machine === undefined || machine.has(kitchen) ? [] : [{ kind: 'equipment', what, text: machine.text }];
  });
}

/** What the recipe is unsafe, or does not set, without; spices are not among them. */
const NEEDED = new Set(['acid', 'sugar', 'sweetener', 'salt', 'pectin', 'starch']);
function pantryLacking({ ingredients }: RecipeRow, { pantry }: WaysKitchen): Lack[] {
  if (pantry === undefined) return [];
  const idsOf = (item: string): string[] => foodsNamed(item).map(({ id }) => id);
  const held = new Set(pantry.flatMap(({ item }) => idsOf(item)));
  // salt and spices are in no question's pantry, so nothing is said of them
  const asked = new Set(PANTRY.flatMap(idsOf));
  const needed = ingredients.filter(
    ({ role, optional, food }) => optional !== true && NEEDED.has(role) && food !== undefined && asked.has(food),
  );
  return needed
    .filter((line) => {
      if (held.has(line.food as string)) return false;
      const others = needed.filter(({ choose }) => choose !== undefined && choose === line.choose);
      return !others.some(({ food }) => held.has(food as string));
    })
    .map(({ food }) => ({ kind: 'pantry', what: nameOf(food as string), text: nameOf(food as string) }));
}

export const atHandRow = () => z.strictObject({ id: id(), ...practiceColumns() });
const atHand: ReadonlySet<string> = new Set(asTable<RowOf<typeof atHandRow>>(atHandTable).rows.map((row) => row.id));

/** Whether a line is one of the foods that a cook has brought, or a wider food that one of them is. */
export const isBrought = ({ food }: IngredientRow, brought: readonly string[]): boolean =>
  food === '@scope' || (food !== undefined && brought.some((each) => figuresFor(each, 'work').includes(food)));

/** The other fruit, vegetables, meat and fish that a recipe takes and the cook has not brought. */
function foodsLacking({ ingredients }: RecipeRow, brought: readonly string[]): Lack[] {
  const lines = ingredients.filter(({ role, optional }) => optional !== true && MAIN.has(role));
  const isThere = (line: IngredientRow): boolean => isBrought(line, brought) || atHand.has(line.food ?? '');
  const names = lines
    .filter((line) => !isThere(line))
    .flatMap(({ choose, food, item }) => {
      const others = choose === undefined ? [] : lines.filter((line) => line.choose === choose);
      if (others.some(isThere)) return [];
      const choices = others.length === 0 ? [{ food, item }] : others;
      return [
        choices.map((each) => (each.food === undefined ? (each.item as string) : nameOf(each.food))).join(' or '),
      ];
    });
  return [...new Set(names)].map((name) => ({ kind: 'food', what: name, text: name }));
}

const CANNERS: Readonly<Record<CanningMethod, string>> = {
  'boiling-water': 'a boiling-water canner',
  'dial-gauge': 'a pressure canner with a dial gauge',
  'weighted-gauge': 'a pressure canner with a weighted gauge',
  'atmospheric-steam': 'an atmospheric steam canner',
};

/** The canners that would do, as one thing that is lacking. */
export const cannerLacking = (methods: readonly CanningMethod[]): Lack => ({
  kind: 'equipment',
  what: 'canner',
  text: methods.map((method) => CANNERS[method]).join(' or '),
});

/** Whether a kitchen says that it has no jars. */
export const hasNoJars = ({ jars }: WaysKitchen): boolean => jars?.every(({ count }) => count === 0) === true;

/** Everything that is lacking for a recipe, the canner apart: other food too, where it is known what food there is. */
export function lackingFor(row: RecipeRow, kitchen: WaysKitchen | undefined, brought?: readonly string[]): Lack[] {
  const foods = brought === undefined ? [] : foodsLacking(row, brought);
  if (kitchen === undefined) return foods;
  const canned = row.keeps.every((keep) => 'process' in keep);
  return [
    ...machinesLacking(row, kitchen),
    ...(canned && hasNoJars(kitchen) ? [{ kind: 'jars', what: 'jars', text: 'jars' } as const] : []),
    ...pantryLacking(row, kitchen),
    ...foods,
  ];
}

/** The place of the hardest thing that is lacking; 0 where nothing is. */
export const hardest = (lacking: readonly Lack[]): number =>
  Math.max(0, ...lacking.map(({ kind }) => places.get(kind) as number));
