/** The code of a lot: what was made under one code is one lot. */
import type { Basis } from '../sources/basis';
import { basisOf, practiceBasis } from '../sources/table';
import { dayOfYear } from './date';
import { RECORD_RULES } from './tables';

/** What a lot code is made from. */
export interface Coded {
  readonly place?: string | undefined;
  readonly name: string;
  readonly date: string;
  readonly batchOfDay?: number | undefined;
}

const letters = (text: string): string =>
  text
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');

/** Kitchen, name, year, day of the year and batch, the parts that 21 CFR 113.60(c) asks of a code. */
export function lotCodeOf({ place = '', name, date, batchOfDay = 1 }: Coded): string {
  const { year, day } = dayOfYear(date);
  const parts = [letters(place), letters(name), year, String(day).padStart(3, '0'), batchOfDay];
  return parts.filter((part) => part !== '').join('-');
}

/** Where the parts of a code come from. */
export const lotCodeBasis = (of: string): Basis[] => [
  ...RECORD_RULES.filter(({ topic }) => topic === 'lot code').map((row) => basisOf(row, of, row.text)),
  practiceBasis(of, 'day of the year'),
];
