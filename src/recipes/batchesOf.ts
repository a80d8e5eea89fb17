/** How many batches of a recipe an amount of its food makes. */
import type { Bought } from '../produce/weights/asBought';
import { massBought } from '../produce/weights/asBought';
import { kitchenMeasure } from '../produce/weights/kitchenMeasure';
import { readyFromRaw } from '../produce/yields/readyFromRaw';
import { isMass } from '../quantity/fields';
import { parseQuantity } from '../quantity/parseQuantity';
import { exactIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { type NotKnown, notKnown } from '../sources/no';
import { pageOf } from './rows/rows';
import type { IngredientRow, RecipeRow } from './rows/tables';

type Amount = Quantity<'mass'> | Quantity<'volume'>;

/** An amount of the recipe's food as a caller gives it: as bought, or prepared. */
export type FoodAmount = { readonly raw: Bought } | { readonly ready: Amount };

/** How many times the printed amount an amount is. */
export interface Batches {
  readonly known: true;
  readonly batches: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The roles of the foods that a recipe is made of. */
export const MAIN: ReadonlySet<string> = new Set(['fruit', 'vegetable', 'meat', 'fish']);
/** The line of the food that the recipe is for, where the page prints how much of it goes in. */
export const mainLine = ({ ingredients }: RecipeRow, food: string): IngredientRow | undefined => {
  const lines = ingredients.filter(({ amount, role }) => amount !== undefined && MAIN.has(role));
  return lines.find((line) => line.food === food) ?? lines.find((line) => line.food === '@scope');
};

/** How many times the one is the other; exactly, so that 40 lb are five times 8 lb. */
const ratio = (one: Amount, other: Amount): number => {
  const unit = isMass(one) ? 'kg' : 'L';
  return exactIn(one, unit).div(exactIn(other, unit)).toDigits(12).toNumber();
};

const noAmount = ({ name }: RecipeRow, what: string): NotKnown =>
  notKnown({
    code: 'no printed amount',
    text: `These tables do not hold ${what} for ${name}.`,
    instead: 'Give the number of batches, or measure the food as the recipe does and give it as `ready`.',
    basis: [{ of: 'reason', kind: 'derived', note: 'the printed recipe' }],
  });

interface Weighed<T extends Amount> {
  readonly known: true;
  readonly amount: T;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
const weighed = <T extends Amount>(amount: T, basis: readonly Basis[], cautions: readonly Caution[]): Weighed<T> => ({
  known: true,
  amount,
  basis,
  cautions,
});
const given = <T extends Amount>(amount: T): Weighed<T> => weighed(amount, [], []);

/** What an amount of food as bought weighs. */
function rawMass(food: string, bought: Bought): Weighed<Quantity<'mass'>> | NotKnown {
  const found = massBought(food, bought);
  return found.known ? weighed(found.raw.likely, found.basis, found.cautions) : found;
}

/** The amount in the state and kind of the printed line: raw mass, prepared mass, or prepared volume. */
function asPrinted(
  row: RecipeRow,
  food: { readonly id: string; readonly name: string },
  line: IngredientRow,
  amount: FoodAmount,
): Weighed<Amount> | NotKnown {
  const printed = parseQuantity(line.amount) as Amount;
  const form = line.form ?? row.form;
  const inForm = form === undefined ? {} : { form };
  if (isMass(printed)) {
    // a weight on a page is of the food as it is bought, before it is cut
    if ('raw' in amount) return rawMass(food.id, amount.raw);
    if (!isMass(amount.ready)) return noAmount(row, 'a volume');
    const raw = readyFromRaw({ food: food.name, ...inForm, ready: amount.ready });
    return raw.known ? weighed(raw.raw.likely, raw.basis, raw.cautions) : raw;
  }
  if ('ready' in amount && !isMass(amount.ready)) return given(amount.ready);
  const mass = readyMass(food, inForm, amount);
  if (!mass.known) return mass;
  const volume = kitchenMeasure({ food: food.name, ...inForm, mass: mass.amount });
  if (!volume.known) return volume;
  return weighed(volume.volume, [...mass.basis, ...volume.basis], [...mass.cautions, ...volume.cautions]);
}

function readyMass(
  food: { readonly id: string; readonly name: string },
  inForm: { readonly form?: string },
  amount: FoodAmount,
): Weighed<Quantity<'mass'>> | NotKnown {
  if ('ready' in amount) return given(amount.ready as Quantity<'mass'>);
  const mass = rawMass(food.id, amount.raw);
  if (!mass.known) return mass;
  const ready = readyFromRaw({ food: food.name, ...inForm, raw: mass.amount });
  if (!ready.known) return ready;
  return weighed(ready.ready.likely, [...mass.basis, ...ready.basis], [...mass.cautions, ...ready.cautions]);
}

/** How many batches an amount makes: by the printed amount of the food, or by the raw weight printed for a load. */
export function batchesOf(
  row: RecipeRow,
  food: { readonly id: string; readonly name: string },
  amount: FoodAmount,
): Batches | NotKnown {
  const line = mainLine(row, food.id);
  const [need] = row.rawNeed ?? [];
  const page = pageOf(row, 'batches', 'printed amount of the food');
  if (line === undefined) {
    if (need === undefined) return noAmount(row, 'how much of the food one batch takes');
    if (!('raw' in amount)) return noAmount(row, 'a prepared amount');
    const raw = rawMass(food.id, amount.raw);
    if (!raw.known) return raw;
    const batches = ratio(raw.amount, parseQuantity(need.raw, 'mass'));
    return { known: true, batches, basis: [page, ...raw.basis], cautions: raw.cautions };
  }
  const found = asPrinted(row, food, line, amount);
  if (!found.known) return found;
  const batches = ratio(found.amount, parseQuantity(line.amount) as Amount);
  return { known: true, batches, basis: [page, ...found.basis], cautions: found.cautions };
}
