/** A printed recipe as an answer that holds process minutes names it: with its acid and its batch. */
import type { Quantity } from '../quantity/types';

/** Acid that goes into a recipe as printed, and is never left out or cut down. */
export interface RecipeAcid {
  /** What it is: `vinegar`, `bottled lemon juice`. */
  readonly what: string;
  /** How much of it for one batch. */
  readonly volume?: Quantity<'volume'>;
  /** How much of it in each jar, for each size that the page prints. */
  readonly inEachJar?: readonly {
    /** The jar size. */
    readonly jar: string;
    /** How much goes into it. */
    readonly volume: Quantity<'volume'>;
  }[];
  /** Acids of one recipe with the same word here are choices: take one of them. */
  readonly oneOf?: string;
}

/** A printed recipe that ends in the process. */
export interface ProcessRecipe {
  /** Fixed name: ask `recipe` for its ingredients and steps. */
  readonly recipe: string;
  /** What its page calls it. */
  readonly name: string;
  /** The acid of the recipe; empty where it needs none. */
  readonly acids: readonly RecipeAcid[];
  /** What must not be changed: the minutes hold only with it. */
  readonly mustKeep: readonly string[];
  /** What the page says of other sizes of the batch. */
  readonly scale: string;
}
