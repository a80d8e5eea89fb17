/** The kitchens of the examples, planned, and what must hold of every one of them. */
import { expect } from 'vitest';
import {
  checkSchedule,
  type FeasibleDay,
  type LotShare,
  type PlanDayInput,
  type PlannedProduct,
} from '../../src/plan/index';
import { valueIn } from '../../src/quantity/scale';
import type { Quantity } from '../../src/quantity/types';
import { exampleDay, feasible } from '../helpers/plans';

export type Day = Exclude<PlanDayInput, undefined>;

/** A kitchen of examples/kitchens, by the name of its file. */
export const kitchenNamed = (name: string): Day => exampleDay(`kitchens/${name}.json`);

/** The same kitchen with no product named: the plan chooses. */
export const withoutProducts = ({ products: _, aim: __, ...rest }: Day): Day => rest;

const kg = (mass: Quantity<'mass'>): number => valueIn(mass, 'kg');
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const shareOf = (shares: readonly LotShare[], lot: string): number =>
  sum(shares.filter((share) => share.lot === lot).map(({ raw }) => kg(raw)));

/**
 * What must hold of any plan: no rule of the order of work is broken; each lot is used up to the gram, whatever its parts
 * become; what is promised is at most what is likely, and that at most what is got ready; all jars got ready are in a load.
 */
export function mustHold(plan: FeasibleDay, lots: Readonly<Record<string, number>>): void {
  expect(checkSchedule(plan).broken).toEqual([]);
  for (const [lot, rawKg] of Object.entries(lots)) {
    const used = sum(
      plan.products.filter((each) => !isOfTrimmings(each)).map(({ fromLots: from }) => shareOf(from, lot)),
    );
    const rest = sum([plan.leftFresh, plan.keptFresh, plan.notSound].map((shares) => shareOf(shares, lot)));
    expect(used + rest, `what becomes of ${lot}, kg`).toBeCloseTo(rawKg, 3);
  }
  for (const { name, units, canning: jars } of plan.products) {
    expect(units.promised, name).toBeLessThanOrEqual(units.likely);
    expect(units.likely, name).toBeLessThanOrEqual(units.ready);
    if (jars === undefined) continue;
    const room = sum(jars.loads.map(({ count: loads, jarsPerLoad }) => loads * jarsPerLoad));
    expect(room, `${name}: jars that its loads hold`).toBeGreaterThanOrEqual(units.ready);
  }
}

/** A product of trimmings has none itself. */
const isOfTrimmings = ({ trimmings }: PlannedProduct): boolean => trimmings === undefined;

/** The product of that name. */
export function productOf({ products }: FeasibleDay, name: string): PlannedProduct {
  const found = products.find((each) => each.name === name);
  if (found === undefined) throw new Error(`${name} is not among ${products.map((each) => each.name).join(', ')}`);
  return found;
}

/** The amount of an ingredient, in a unit. */
export function amountOf({ ingredients, name }: PlannedProduct, what: string, unit: 'kg' | 'cup' | 'tbsp'): number {
  const found = ingredients.find((each) => each.what.startsWith(what))?.amount;
  if (found === undefined) throw new Error(`no ${what} in ${name}`);
  return valueIn(found as Quantity<'mass'>, unit as 'kg');
}

/** Left of all lots, neither kept fresh nor unsound, in pounds. */
export const poundsLeft = ({ leftFresh }: FeasibleDay): number => sum(leftFresh.map(({ raw }) => valueIn(raw, 'lb')));

export { exampleDay, feasible };
