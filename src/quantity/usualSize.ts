import sizesJson from '../../data/quantity/usual-sizes.json';
import type { Decimal } from '../common/decimal';
import { asTable, type Practice } from '../sources/table';
import { toDecimalIn } from './scale';
import type { Dimension } from './units';

interface SizeRow extends Practice {
  readonly dimension: Dimension;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

const rows: ReadonlyMap<Dimension, SizeRow> = new Map(
  asTable<SizeRow>(sizesJson).rows.map((row) => [row.dimension, row]),
);

/** Whether a kitchen writes down a quantity of this size; says nothing against one that is written in one way. */
export function isUsualSize(value: Decimal, unit: string, dimension: Dimension): boolean {
  const row = rows.get(dimension);
  if (row === undefined) return true;
  const size = toDecimalIn({ value: value.toNumber(), unit }, row.unit);
  return size.gte(row.low) && size.lte(row.high);
}
