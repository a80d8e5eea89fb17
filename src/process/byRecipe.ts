/** A heat process asked for by its printed recipe. */
import { nameOf } from '../foods/tables';
import type { NotTested } from '../sources/no';
import { decide, type Question } from './decide';
import { choiceOfProcess, type KnownFood } from './food';
import { refuse } from './instead';
import { readProcessRecipe } from './recipesOf';
import { servedAnswer, type TestedProcess } from './servedAnswer';
import type { ProcessRecipeRow } from './tables';

const names = ({ foods }: ProcessRecipeRow): string => foods.map(nameOf).join(', ');

/** The process of a recipe for a food that its page names; or why there is none. */
export function byRecipe(food: KnownFood, given: string, asked: Question): TestedProcess | NotTested {
  const recipes = readProcessRecipe(given, 'recipe');
  const [first] = recipes as readonly [ProcessRecipeRow, ...ProcessRecipeRow[]];
  const naming = recipes.filter(({ foods, process }) => {
    const made = choiceOfProcess(food, process);
    return foods.includes(food.id) || made?.food.id === food.id;
  });
  const [one, ...more] = naming;
  const found = one === undefined ? undefined : choiceOfProcess(food, one.process);
  if (one === undefined || found === undefined) {
    const text = `no tested process for ${food.name} by this recipe is in these tables: the page of ${first.name} names ${names(first)}`;
    return refuse(food, { code: 'not on the page', text }, asked);
  }
  const decided = decide(found.food, found.choice, asked);
  if ('code' in decided) return refuse(found.food, decided, asked, found.choice);
  return servedAnswer(decided, asked, food, [], more.length === 0 ? one.id : undefined);
}
