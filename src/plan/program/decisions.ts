import type { Stock } from '../request/stock';
import type { Bound, Program, Variable } from '../solver/linearProgram';
import { decidedOf } from '../solver/relaxation';

/** What the program of a day decides: how much, or how many. */
export type Decision =
  /** Kg of a lot in a product. */
  | { readonly of: 'raw'; readonly lot: number; readonly product: number }
  /** Units of a product that are promised. */
  | { readonly of: 'units'; readonly product: number }
  /** Jars, bags or sheets to have at hand for it. */
  | { readonly of: 'readied'; readonly product: number }
  /** 1 where any of a product with a smallest batch is promised, otherwise 0. */
  | { readonly of: 'made'; readonly product: number }
  | { readonly of: 'batches'; readonly product: number; readonly pot: number }
  /** Whole batches of a product that is made in whole batches only. */
  | { readonly of: 'whole batches'; readonly product: number }
  /** 1 where the water that a product is blanched in is heated at all. */
  | { readonly of: 'water'; readonly product: number }
  | { readonly of: 'trays'; readonly product: number }
  | { readonly of: 'freeze-dryer trays'; readonly product: number }
  | { readonly of: 'loads'; readonly key: string; readonly canner: number }
  /** 1 where a canner's water is heated so far at all; decided only where the aim pays for it. */
  | { readonly of: 'heated'; readonly canner: number; readonly step: number };

export const raw = (lot: number, product: number): Decision => ({ of: 'raw', lot, product });
export const promised = (product: number): Decision => ({ of: 'units', product });
export const readied = (product: number): Decision => ({ of: 'readied', product });
export const made = (product: number): Decision => ({ of: 'made', product });
export const batches = (product: number, pot: number): Decision => ({ of: 'batches', product, pot });
export const wholeBatches = (product: number): Decision => ({ of: 'whole batches', product });
export const trays = (product: number): Decision => ({ of: 'trays', product });
export const freezeTrays = (product: number): Decision => ({ of: 'freeze-dryer trays', product });
export const loads = (key: string, canner: number): Decision => ({ of: 'loads', key, canner });

/** What the kitchen has so much of, in all its hours. */
export type Resource =
  | { readonly of: 'lot'; readonly lot: number }
  | { readonly of: 'stock'; readonly stock: Stock }
  | { readonly of: 'hands' }
  /** Hands in all of each day but its last `before` minutes. */
  | { readonly of: 'hands in time'; readonly before: number }
  | { readonly of: 'burners' }
  | { readonly of: 'all pots' }
  | { readonly of: 'pot'; readonly pot: number }
  /** A canner that is one of the pots has that pot's minutes for both. */
  | { readonly of: 'vessel'; readonly pot: number }
  | { readonly of: 'canner'; readonly canner: number }
  | { readonly of: 'dryer trays' }
  | { readonly of: 'freeze-dryer trays' }
  | { readonly of: 'freeze-dryer ice' };

/** What a bound of the program says: no more of a resource than there is, or one of these. */
export type Rule =
  | Resource
  | { readonly of: 'promise'; readonly product: number }
  | { readonly of: 'ready'; readonly product: number }
  | { readonly of: 'least'; readonly product: number }
  /** All of what is in work already. */
  | { readonly of: 'in work'; readonly product: number }
  | { readonly of: 'most'; readonly product: number }
  | { readonly of: 'most promised'; readonly product: number }
  | { readonly of: 'whole batches'; readonly product: number }
  | { readonly of: 'part-filled'; readonly product: number }
  | { readonly of: 'smallest'; readonly product: number }
  | { readonly of: 'made or not'; readonly product: number }
  | { readonly of: 'made once'; readonly product: number }
  | { readonly of: 'room in pots'; readonly product: number }
  | { readonly of: 'water before batches'; readonly product: number }
  | { readonly of: 'room on trays'; readonly product: number }
  | { readonly of: 'room in loads'; readonly key: string }
  | { readonly of: 'a batch for each load'; readonly key: string }
  | { readonly of: 'heated before loads'; readonly canner: number; readonly step: number }
  | { readonly of: 'trimmings'; readonly lot: number }
  | { readonly of: 'rounded'; readonly what: string; readonly product: number; readonly line: number }
  | { readonly of: 'one unit at least' };

/** A key for maps and for the solver: it tells one from another and is never read back. */
export const keyOf = (of: Decision | Rule): string =>
  Object.values(of)
    .map((value) => (typeof value === 'object' ? Object.values(value).join(' ') : value))
    .join('|');

export interface DayVariable extends Variable {
  readonly of: Decision;
}
export interface DayBound extends Bound {
  readonly of: Rule;
}
/** The program of a day: a program that says of each variable and bound what it is. */
export interface DayProgram extends Program {
  readonly variables: readonly DayVariable[];
  readonly bounds: readonly DayBound[];
}

/** What a plan decided. */
export const amountIn = (values: ReadonlyMap<string, number>, decision: Decision): number =>
  decidedOf(values, keyOf(decision));
