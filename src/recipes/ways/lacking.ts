/** What a recipe needs, and what of it a kitchen does not have. */

import { foodsNamed } from '../../foods/lookUpFood';
import { nameOf } from '../../foods/tables';
import type { CanningMethod } from '../../words/method';
import { PANTRY } from '../pantryItems';
import type { OperationRow, RecipeRow } from '../rows/tables';
import { operationOf } from '../step';
import type { WaysKitchen } from './kitchen';

/** One thing that is lacking. */
export interface Lack {
  /** What it is: `canner`, `jars`, `dryer`, `freeze-dryer`, `freezer`, `pot`, or an item of the pantry. */
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
    return machine === undefined || machine.has(kitchen) ? [] : [{ what, text: machine.text }];
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
    .map(({ food }) => ({ what: nameOf(food as string), text: nameOf(food as string) }));
}

const CANNERS: Readonly<Record<CanningMethod, string>> = {
  'boiling-water': 'a boiling-water canner',
  'dial-gauge': 'a pressure canner with a dial gauge',
  'weighted-gauge': 'a pressure canner with a weighted gauge',
  'atmospheric-steam': 'an atmospheric steam canner',
};

/** The canners that would do, as one thing that is lacking. */
export const cannerLacking = (methods: readonly CanningMethod[]): Lack => ({
  what: 'canner',
  text: methods.map((method) => CANNERS[method]).join(' or '),
});

/** Everything that the kitchen lacks for a recipe, the canner apart. */
export function lackingFor(row: RecipeRow, kitchen: WaysKitchen | undefined): Lack[] {
  if (kitchen === undefined) return [];
  const noJars = kitchen.jars?.every(({ count }) => count === 0) === true;
  const canned = row.keeps.some((keep) => 'process' in keep);
  return [
    ...machinesLacking(row, kitchen),
    ...(canned && noJars ? [{ what: 'jars', text: 'jars' }] : []),
    ...pantryLacking(row, kitchen),
  ];
}
