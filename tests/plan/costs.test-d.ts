import { expectTypeOf, test } from 'vitest';
import type { CostKind, DayCost, PlanDayInput, PlannedProduct, ProductCost } from '../../src/plan/index';
import type { Money, Quantity, Range } from '../../src/quantity/index';

type Kitchen = PlanDayInput['kitchen'];
type Product = NonNullable<PlanDayInput['products']>[number];
type Energy = NonNullable<Kitchen['utilities']>;
const kitchen = { elevation: '100 m', hours: '6 h' } as const;

test('prices are money, powers are powers, a serving is weighed or measured', () => {
  expectTypeOf<{ stove: 'gas'; gas: '1.50 USD'; dryerPower: '600 W' }>().toExtend<Energy>();
  expectTypeOf<{ price: '0.20 USD' }>().toExtend<NonNullable<Kitchen['bags']>>();
  expectTypeOf<{ make: 'jam'; from: 'plum'; pectin: true; serving: '1 tbsp' }>().toExtend<Product>();
  expectTypeOf<{ make: 'dried'; from: 'plum'; serving: '1 oz' }>().toExtend<Product>();
  // @ts-expect-error there is no such stove
  const wood: Energy = { stove: 'wood' };
  // @ts-expect-error a price has a currency
  const bare: Energy = { electricity: 0.3 };
  // @ts-expect-error a power is no energy
  const heat: Energy = { dryerPower: '3 kWh' };
  // @ts-expect-error bags are counted
  const weighed: Kitchen = { ...kitchen, bags: { count: '6 oz' } };
  // @ts-expect-error a wage is money
  const paid: Kitchen = { ...kitchen, wage: 12 };
  // @ts-expect-error pectin is a word or yes or no
  const gelled: Product = { make: 'jam', from: 'plum', pectin: 3 };
  // @ts-expect-error a serving takes no time
  const long: Product = { make: 'jam', from: 'plum', serving: '5 min' };
  // @ts-expect-error there is no such item
  const honey: NonNullable<Kitchen['pantry']>[number] = { item: 'honey', amount: '1 lb' };
  expectTypeOf([wood, bare, heat, weighed, paid, gelled, long, honey]).not.toBeNever();
});

test('what a cost answers', () => {
  expectTypeOf<PlannedProduct['energy']>().toEqualTypeOf<Range<Quantity<'energy'>> | undefined>();
  expectTypeOf<ProductCost['lines'][number]['kind']>().toEqualTypeOf<CostKind>();
  expectTypeOf<DayCost['energyCost']>().toEqualTypeOf<Money>();
  expectTypeOf<NonNullable<ProductCost['perNet']>['netMass']>().toEqualTypeOf<Quantity<'mass'>>();
  expectTypeOf<NonNullable<ProductCost['perServing']>['serving']>().toEqualTypeOf<
    Quantity<'mass'> | Quantity<'volume'>
  >();
});
