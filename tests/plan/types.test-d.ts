import { expectTypeOf, test } from 'vitest';
import { type DayPlan, type PlanDayInput, planDay } from '../../src/plan/index';

type Lot = PlanDayInput['lots'][number];
type Kitchen = PlanDayInput['kitchen'];
type Product = PlanDayInput['products'][number];

test('a quantity of the wrong kind does not compile', () => {
  expectTypeOf(planDay).returns.toEqualTypeOf<DayPlan>();
  expectTypeOf<{ produce: string; raw: '30 lb' }>().toExtend<Lot>();
  // @ts-expect-error a lot is weighed, not measured
  const lot: Lot = { produce: 'peach', raw: '30 quarts' };
  // @ts-expect-error a day has hours
  const heavy: Kitchen = { elevation: '100 m', hours: '6 lb' };
  // @ts-expect-error an elevation is a length
  const hot: Kitchen = { elevation: '100 degF', hours: '6 h' };
  // @ts-expect-error there is no such make
  const cake: Product = { make: 'cake', from: 'peach' };
  expectTypeOf([lot, heavy, hot, cake]).not.toBeNever();
});
