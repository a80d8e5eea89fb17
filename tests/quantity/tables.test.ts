import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { exactIn } from '../../src/quantity/scale';
import { DIMENSIONS } from '../../src/quantity/units';
import { sizeRow } from '../../src/quantity/usualSize';
import { forReaders, id, sourcedColumns, text } from '../../src/sources/columns';
import { checkTables, readTable } from '../helpers/tables';

/** Read by the tests only: the definitions that the units are checked against. */
const factorRow = () =>
  z.strictObject({
    id: forReaders(id()),
    unit: text(),
    to: text(),
    factor: text(),
    exact: z.boolean(),
    definition: text(),
    ...sourcedColumns(),
  });

checkTables('quantity', { 'unit-factors': factorRow(), 'usual-sizes': sizeRow() });

test('the usual size of each dimension is a range in one of its units', () => {
  for (const { dimension, low, high, unit } of readTable('quantity', 'usual-sizes').rows) {
    expect(DIMENSIONS).toContain(dimension);
    expect(low).toBeLessThan(high);
    expect(exactIn({ value: 1, unit }, unit).toNumber()).toBe(1);
  }
});
