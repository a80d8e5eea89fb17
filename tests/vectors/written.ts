import type { Comparison } from './run';

/** A figure as people read it. */
export const written = (value: unknown): string => {
  if (typeof value === 'object' && value !== null && 'value' in value && 'unit' in value)
    return `${value.value} ${value.unit}`;
  return typeof value === 'string' ? value : (JSON.stringify(value) ?? 'nothing');
};

/** How far the computed figure is off, in three digits; nothing where there is no number to compare. */
export const writtenDifference = ({ difference }: Comparison): string => {
  if (difference === undefined) return '';
  return difference === 0 ? '0' : difference.toPrecision(3);
};
