import { lookUp, type Named } from '../../common/names';
import type { Sourced } from '../../sources/table';
import { DRIED_FOODS } from './foodNames';

/** A food the drying tables know, with the other names it goes by. */
export interface DriedFood extends Named {
  readonly kind: 'fruit' | 'vegetable';
}

/** A table row about one food, by its name in the register. */
export interface FoodRow extends Sourced {
  readonly food: string;
  /** As the table prints it; it is found by this too, unless the line is for several foods. */
  readonly printed?: string;
}

const WHAT = 'food of the drying tables ("fruit" or "vegetable" for the general figures)';
const foods: readonly DriedFood[] = DRIED_FOODS;
const inTable = new WeakMap<readonly FoodRow[], readonly DriedFood[]>();

/** The foods that a table has rows for, found also by the names it prints. */
export function foodsIn(rows: readonly FoodRow[]): readonly DriedFood[] {
  const known = inTable.get(rows);
  if (known !== undefined) return known;
  const printedFor = (food: string): string[] =>
    rows
      .filter((row) => row.food === food)
      .map(({ printed = food }) => printed)
      .filter((printed) => rows.every((row) => row.printed !== printed || row.food === food));
  const found = foods
    .filter(({ name }) => rows.some((row) => row.food === name))
    .map((food) => ({ ...food, synonyms: [...(food.synonyms ?? []), ...printedFor(food.name)] }));
  inTable.set(rows, found);
  return found;
}

/** The food of this name and its rows; an unknown name is refused with the nearest that the table has. */
export function rowsOf<Row extends FoodRow>(text: string, rows: readonly Row[]): { food: DriedFood; rows: Row[] } {
  const food = lookUp(text, foodsIn(rows), 'food', WHAT);
  return { food, rows: rows.filter((row) => row.food === food.name) };
}

/** A food of the register, whichever table it is in. */
export const findFood = (text: string): DriedFood => lookUp(text, foods, 'food', WHAT);
