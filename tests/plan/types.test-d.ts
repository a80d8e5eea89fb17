import { expectTypeOf, test } from 'vitest';
import { type Aim, type DayPlan, type FeasibleDay, type PlanDayInput, planDay } from '../../src/plan/index';

type Lot = PlanDayInput['lots'][number];
type Kitchen = PlanDayInput['kitchen'];
type Product = NonNullable<PlanDayInput['products']>[number];

test('a quantity of the wrong kind does not compile', () => {
  expectTypeOf(planDay).returns.toEqualTypeOf<DayPlan>();
  expectTypeOf<{ food: string; raw: '30 lb'; price: '1 USD'; per: '1 lb'; keepFresh: '2 lb' }>().toExtend<Lot>();
  expectTypeOf<{ food: string; raw: '30 quarts' | '2 flats' | '40' }>().toExtend<Lot>();
  // @ts-expect-error a lot has no temperature
  const lot: Lot = { food: 'peach', raw: { value: 30, unit: 'degF' } };
  // @ts-expect-error a day has hours
  const heavy: Kitchen = { elevation: '100 m', hours: '6 lb' };
  // @ts-expect-error an elevation is a length
  const hot: Kitchen = { elevation: '100 degF', hours: '6 h' };
  // @ts-expect-error a make is a word
  const cake: Product = { make: 3, from: 'peach' };
  expectTypeOf([lot, heavy, hot, cake]).not.toBeNever();
});

test('an aim is one of four words, or weights', () => {
  type AimOf = NonNullable<PlanDayInput['aim']>;
  expectTypeOf<'most worth' | 'least waste' | 'fewest hours' | 'least cost'>().toExtend<AimOf>();
  expectTypeOf<{ worth: 1; hours: 5 }>().toExtend<AimOf>();
  expectTypeOf<FeasibleDay['aim']>().toEqualTypeOf<Aim>();
  expectTypeOf<{ make: 'dried'; from: 'peach'; smallest: 6 }>().toExtend<Product>();
  // @ts-expect-error there is no such aim
  const cheap: AimOf = 'cheapest';
  // @ts-expect-error nothing is weighed by the jar
  const jars: AimOf = { jars: 1 };
  // @ts-expect-error a weight is a number
  const text: AimOf = { money: '1 USD' };
  // @ts-expect-error a batch is counted
  const pounds: Product = { make: 'dried', from: 'peach', smallest: '6 lb' };
  expectTypeOf([cheap, jars, text, pounds]).not.toBeNever();
});
