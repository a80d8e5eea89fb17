/** The liquid that a printed recipe covers its vegetables with: vinegar, water and lemon juice that stay in the jars. */
import { parseQuantity } from '../quantity/parseQuantity';
import { valueIn } from '../quantity/scale';
import type { IngredientRow, RecipeRow } from './rows/tables';

const VINEGARS = new Set(['vinegar', 'cider-vinegar']);

/** Covering liquid of one batch, in US cups. */
export interface CoveringLiquid {
  /** Vinegar. */
  readonly vinegar: number;
  /** Its printed share of acetic acid, where the page prints one. */
  readonly acetic?: number;
  /** Water. */
  readonly water: number;
  /** Bottled lemon juice that goes in as well as the vinegar. */
  readonly lemonJuice: number;
}

const isVinegar = ({ food }: IngredientRow): boolean => food !== undefined && VINEGARS.has(food);
/** Whether a line stays in the jars; of lines that are choices, the first. */
const stays = (line: IngredientRow, all: readonly IngredientRow[]): boolean =>
  line.drained !== true &&
  line.optional !== true &&
  (line.choose === undefined || all.find(({ choose }) => choose === line.choose) === line);
const cups = ({ amount }: IngredientRow): number =>
  amount === undefined ? 0 : valueIn(parseQuantity(amount, 'volume'), 'cup');
const sum = (lines: readonly IngredientRow[]): number => lines.reduce((all, line) => all + cups(line), 0);

/** The vinegar lines of a recipe that stay in the jars. */
export const vinegarLines = ({ ingredients }: RecipeRow): IngredientRow[] =>
  ingredients.filter((line) => isVinegar(line) && line.drained !== true && line.optional !== true);

/** The covering liquid of a recipe; nothing where its page prints no amount of vinegar. */
export function coveringLiquid({ ingredients }: RecipeRow): CoveringLiquid | undefined {
  // a choice between vinegar and another acid is a choice of vinegar here
  const vinegars = ingredients.filter((line) => isVinegar(line));
  const chosen = vinegars.filter((line) => stays(line, vinegars));
  const vinegar = sum(chosen);
  if (vinegar === 0) return undefined;
  const choices = new Set(chosen.flatMap(({ choose }) => choose ?? []));
  const others = ingredients.filter(({ choose }) => choose === undefined || !choices.has(choose));
  const of = (food: string): number => sum(others.filter((line) => line.food === food && stays(line, others)));
  const [{ acetic }] = chosen as [IngredientRow];
  return {
    vinegar,
    ...(acetic === undefined ? {} : { acetic }),
    water: of('water'),
    lemonJuice: of('bottled-lemon-juice'),
  };
}
