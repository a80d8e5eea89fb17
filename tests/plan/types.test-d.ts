import { expectTypeOf, test } from 'vitest';
import { type DayPlan, planDay } from '../../src/plan/index';

test('a quantity of the wrong kind does not compile', () => {
  const kitchen = { elevation: '100 m', hours: '6 h' } as const;
  expectTypeOf(planDay({ lots: [{ produce: 'peach', raw: '30 lb' }], kitchen, products: [] })).toEqualTypeOf<DayPlan>();
  // @ts-expect-error a lot is weighed, not measured
  planDay({ lots: [{ produce: 'peach', raw: '30 quarts' }], kitchen, products: [] });
  // @ts-expect-error a day has hours
  planDay({ lots: [{ produce: 'peach', raw: '30 lb' }], kitchen: { elevation: '100 m', hours: '6 lb' }, products: [] });
  // @ts-expect-error an elevation is a length
  planDay({
    lots: [{ produce: 'peach', raw: '30 lb' }],
    kitchen: { elevation: '100 degF', hours: '6 h' },
    products: [],
  });
  // @ts-expect-error there is no such make
  planDay({ lots: [{ produce: 'peach', raw: '30 lb' }], kitchen, products: [{ make: 'cake', from: 'peach' }] });
});
