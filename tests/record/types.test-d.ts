import { expectTypeOf, test } from 'vitest';
import type { Quantity, Range } from '../../src/quantity/index';
import {
  type BatchRecord,
  batchRecord,
  type LearnedEntry,
  labelFields,
  learnFromRecords,
  netWeightCheck,
  reviewBatch,
  useBy,
} from '../../src/record/index';

test('a quantity of the wrong kind does not compile', () => {
  const base = { date: '2026-08-14', name: 'x' } as const;
  // @ts-expect-error raw is a mass
  batchRecord({ ...base, lots: [{ food: 'peach', raw: '2 quarts' }] });
  // @ts-expect-error a record has its lots
  batchRecord(base);
  // @ts-expect-error figures are numbers or shares
  learnFromRecords({ prior: { low: 0.7, likely: 0.8, high: 0.9 }, observed: ['2 cups'] });
  // @ts-expect-error a label is a mass or a volume
  netWeightCheck({ labeled: '4 in', contents: [], market: 'US' });
  // @ts-expect-error two markets
  netWeightCheck({ labeled: '4 oz', contents: [], market: 'UK' });
  // @ts-expect-error net contents
  labelFields({ name: 'x', net: '70 degF' });
  // @ts-expect-error a temperature
  useBy({ kind: 'jar', made: '2026-08-14', temperature: '3 lb' });
  // @ts-expect-error work is a time
  batchRecord({ ...base, lots: [{ food: 'peach', raw: '2 lb' }], work: { preparing: '3 lb' } });
  // @ts-expect-error a time
  reviewBatch({ record: {} as BatchRecord, sinceProcessing: '3 lb' });
});

test('what comes back', () => {
  expectTypeOf<BatchRecord['version']>().toEqualTypeOf<2>();
  expectTypeOf<NonNullable<LearnedEntry['rawPerJar']>>().toEqualTypeOf<Range<Quantity<'mass'>>>();
  expectTypeOf<NonNullable<LearnedEntry['dryingHours']>>().toEqualTypeOf<Range<Quantity<'time'>>>();
  expectTypeOf<NonNullable<LearnedEntry['yield']>>().toEqualTypeOf<Range<number>>();
});

test('a no is not read as an answer', () => {
  const day = useBy({ kind: 'jar', made: '2026-08-14', temperature: '85 degF' });
  // @ts-expect-error there is no day where these tables hold no months
  day.useBy;
  if (day.known) expectTypeOf(day.useBy).toEqualTypeOf<string>();
  else expectTypeOf(day.reason.code).toEqualTypeOf<string>();

  const { process } = reviewBatch({ record: {} as BatchRecord });
  // @ts-expect-error a record may have no process, and its process may be tested nowhere
  process.minutes;
  // @ts-expect-error its process may be tested nowhere
  process?.minutes;
  if (process?.tested === true) expectTypeOf(process.minutes).toEqualTypeOf<number>();

  const { learned } = learnFromRecords({ records: [] });
  // @ts-expect-error an entry may teach something else
  learned[0]?.yield.likely;
});
