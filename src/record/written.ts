import { type FormatOptions, formatQuantity } from '../quantity/formatQuantity';
import type { Quantity } from '../quantity/types';

/** A quantity of any one dimension, written for a finding or a label. */
export const written = (quantity: { readonly value: number; readonly unit: string }, options?: FormatOptions): string =>
  formatQuantity(quantity as Quantity, options);
