import { expectTypeOf, test } from 'vitest';
import {
  boilingSolidsChart,
  type ChartSpec,
  dryingCurveChart,
  type ProcessTimeRow,
  processTimeChart,
} from '../../src/charts/index';
import type { NotTested } from '../../src/sources/index';

test('wrong dimensions do not compile', () => {
  // @ts-expect-error a weight is no elevation
  boilingSolidsChart({ elevation: '62 lb' });
  // @ts-expect-error a volume is no stop weight
  dryingCurveChart({ weighings: [], stopWeight: '3 cups' });
  // @ts-expect-error a canner that is not in the tables
  processTimeChart({ food: 'peach', jar: 'pint', method: 'oven' });
});

test('a process chart may be a refusal', () => {
  expectTypeOf(processTimeChart).returns.toEqualTypeOf<ChartSpec<ProcessTimeRow> | NotTested>();
});
