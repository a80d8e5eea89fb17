import { expectTypeOf, test } from 'vitest';
import type { Quantity, Range } from '../../src/quantity/index';
import {
  type BatchRecord,
  batchRecord,
  type LearnedEntry,
  type LearnedYield,
  labelFields,
  learnYield,
  netWeightCheck,
  reviewBatch,
  useBy,
} from '../../src/record/index';

test('a quantity of the wrong kind does not compile', () => {
  const base = { lot: 'A', date: '2026-08-14', product: 'x' } as const;
  // @ts-expect-error raw is a mass
  batchRecord({ ...base, produce: [{ produce: 'peach', raw: '2 quarts' }] });
  // @ts-expect-error a record has its produce
  batchRecord(base);
  // @ts-expect-error weighings are masses
  learnYield({ prior: { low: 0.7, likely: 0.8, high: 0.9 }, records: [{ raw: '2 cups', ready: '1 lb' }] });
  // @ts-expect-error a label is a mass or a volume
  netWeightCheck({ labelled: '4 in', measured: [], rule: 'US' });
  // @ts-expect-error two rules
  netWeightCheck({ labelled: '4 oz', measured: [], rule: 'UK' });
  // @ts-expect-error net contents
  labelFields({ product: 'x', net: '70 degF' });
  // @ts-expect-error a temperature
  useBy({ kind: 'jar', made: '2026-08-14', temperature: '3 lb' });
  // @ts-expect-error work is a time
  batchRecord({ ...base, produce: [{ produce: 'peach', raw: '2 lb' }], work: { prepare: '3 lb' } });
  // @ts-expect-error a time
  reviewBatch({ record: {} as BatchRecord, sinceProcessing: '3 lb' });
});

test('what comes back', () => {
  expectTypeOf<BatchRecord['version']>().toEqualTypeOf<1>();
  expectTypeOf<NonNullable<LearnedEntry['rawPerJar']>['raw']>().toEqualTypeOf<Range<Quantity<'mass'>>>();
  expectTypeOf<NonNullable<LearnedEntry['dryingHours']>>().toEqualTypeOf<Range<Quantity<'time'>>>();
  expectTypeOf<LearnedYield['yield']>().toEqualTypeOf<Range<number>>();
});
