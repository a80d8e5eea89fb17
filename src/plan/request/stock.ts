/** What a kitchen has a count or a measure of and uses up: jars of a size, lids, bags, room and load of the freezer. */
export type Stock =
  | { readonly of: 'jars'; readonly jar: string }
  | { readonly of: 'lids' }
  | { readonly of: 'bags' }
  | { readonly of: 'freezer room' }
  | { readonly of: 'freezer load' };

/** How much of it: pieces, liters of room, or kg. */
export interface InStock {
  readonly stock: Stock;
  readonly amount: number;
}

export const jarsOf = (jar: string): Stock => ({ of: 'jars', jar });
export const LIDS: Stock = { of: 'lids' };
export const BAGS: Stock = { of: 'bags' };
export const FREEZER_ROOM: Stock = { of: 'freezer room' };
export const FREEZER_LOAD: Stock = { of: 'freezer load' };

const sameStock = (one: Stock, other: Stock): boolean =>
  one.of === other.of && (one.of !== 'jars' || other.of !== 'jars' || one.jar === other.jar);

/** The amount of a stock in a list; nothing where the list does not have it. */
export const amountOf = (list: readonly InStock[], stock: Stock): number | undefined =>
  list.find((each) => sameStock(each.stock, stock))?.amount;

/** Each stock once: of two entries the first. */
export const firstOfEach = (list: readonly InStock[]): InStock[] =>
  list.filter(({ stock }, index) => list.findIndex((each) => sameStock(each.stock, stock)) === index);
