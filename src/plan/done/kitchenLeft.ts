/** The kitchen of the rest of a day: what is lost gone, what was used up taken off. */
import { nameKey, nearestNames } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { valueIn } from '../../quantity/scale';
import type { PantryItem } from '../../recipes/pantryItems';
import { cannersOf, handsOf, potsOf, vesselsOf } from '../kitchen/kitchen';
import type { Kitchen, PlanRequest } from '../request/planInput';
import { amountOf, BAGS, FREEZER_ROOM, type InStock, jarsOf, LIDS } from '../request/stock';

type Lost = NonNullable<PlanRequest['lost']>;

/** Finds a name among the labels of the plan. */
export function placeOf(given: string, labels: readonly string[], path: string, what: string): number {
  const place = labels.findIndex((label) => nameKey(label) === nameKey(given));
  if (place >= 0) return place;
  return fail('UNKNOWN_NAME', path, given, what, { options: labels, nearest: nearestNames(given, labels) });
}

/** Each pot and canner by itself under the name that the plan gives it, so that names stay when one is lost. */
export function withoutLost(kitchen: Kitchen, lost: Lost = {}): Kitchen {
  const pots = potsOf(kitchen);
  const labels = pots.map(({ label }) => label);
  const canners = cannersOf(kitchen).map(({ label }) => label);
  const vessels = vesselsOf(kitchen);
  const gonePots = new Set(
    (lost.potNames ?? []).map((each, index) =>
      placeOf(each, labels, `lost.potNames[${index}]`, 'a pot of the kitchen'),
    ),
  );
  const goneCanners = new Set(
    (lost.cannerNames ?? []).map((each, index) =>
      placeOf(each, canners, `lost.cannerNames[${index}]`, 'a canner of the kitchen'),
    ),
  );
  const isGone = (canner: number) => {
    const pot = vessels[canner];
    return goneCanners.has(canner) || (pot !== undefined && gonePots.has(pot));
  };
  const goneVessels = new Set(vessels.filter((pot, canner) => pot !== undefined && isGone(canner)));
  const single = (kitchen.canners ?? []).flatMap((canner) => Array.from({ length: canner.count ?? 1 }, () => canner));
  return {
    ...kitchen,
    pots: pots.flatMap(({ given, label }, pot) =>
      gonePots.has(pot) || goneVessels.has(pot) ? [] : [{ ...given, name: label, count: 1 }],
    ),
    canners: single.flatMap((canner, index) =>
      isGone(index) ? [] : [{ ...canner, name: canners[index] as string, count: 1 }],
    ),
    jars: withoutJars(kitchen, lost),
    hands: handsLeft(kitchen, lost),
  };
}

function handsLeft(kitchen: Kitchen, { hands: gone = 0 }: Lost): NonNullable<Kitchen['hands']> {
  const { count, names } = handsOf(kitchen);
  if (gone >= count) fail('CONTRADICTION', 'lost.hands', gone, `fewer than the ${count} there were`);
  return names === undefined ? count - gone : names.slice(0, count - gone);
}

function withoutJars({ jars }: Kitchen, lost: Lost): Kitchen['jars'] {
  let left = jars;
  lost.jars?.forEach(({ jar, count }, index) => {
    const stock = (left ?? []).reduce((sum, each) => (each.jar === jar ? sum + each.count : sum), 0);
    // a stock that nobody counted is not limited
    if (left === undefined || !left.some((each) => each.jar === jar)) return;
    if (count > stock)
      fail('CONTRADICTION', `lost.jars[${index}].count`, count, `no more than the ${stock} ${jar} jars there were`);
    left = lessJars(left, jar, count);
  });
  return left;
}

function lessJars(jars: NonNullable<Kitchen['jars']>, jar: string, count: number): NonNullable<Kitchen['jars']> {
  let gone = count;
  return jars.map((each) => {
    if (each.jar !== jar) return each;
    const taken = Math.min(each.count, gone);
    gone -= taken;
    return { ...each, count: each.count - taken };
  });
}

/** Takes what finished units took off the stock of a kitchen; refuses more than there was. */
export function lessStock(kitchen: Kitchen, used: readonly InStock[], path: string, given: unknown): Kitchen {
  const { jars, lids, bags, freezer } = kitchen;
  const refuse = (what: string, there: number, taken: number) => {
    if (taken > there + 1e-6)
      fail('CONTRADICTION', path, given, `no more than the ${there} ${what} there were; they take ${taken}`);
  };
  const of = (stock: InStock['stock']) => amountOf(used, stock) ?? 0;
  let left = jars;
  for (const jar of new Set((jars ?? []).map((each) => each.jar))) {
    const there = (left ?? []).reduce((sum, each) => (each.jar === jar ? sum + each.count : sum), 0);
    refuse(`${jar} jars`, there, of(jarsOf(jar)));
    left = lessJars(left ?? [], jar, of(jarsOf(jar)));
  }
  if (lids !== undefined) refuse('lids', lids.count, of(LIDS));
  if (bags?.count !== undefined) refuse('bags', bags.count, Math.ceil(of(BAGS)));
  const room = freezer && Math.max(0, valueIn(freezer.room, 'L') - of(FREEZER_ROOM));
  return {
    ...kitchen,
    jars: left,
    ...(lids === undefined ? {} : { lids: { ...lids, count: lids.count - of(LIDS) } }),
    ...(bags?.count === undefined ? {} : { bags: { ...bags, count: bags.count - Math.ceil(of(BAGS)) } }),
    ...(freezer === undefined || room === undefined
      ? {}
      : { freezer: { ...freezer, room: { value: room, unit: 'L' as const } } }),
  };
}

/** Next to nothing: an amount of the pantry is above 0, and so keeps its price for each kg. */
const NEXT_TO_NOTHING = 1e-6;

/** Takes kg of what recipes take off the pantry; what is used up is to be bought. */
export function lessPantry(kitchen: Kitchen, taken: Readonly<Partial<Record<PantryItem, number>>>): Kitchen {
  const { pantry } = kitchen;
  if (pantry === undefined) return kitchen;
  const left = new Map(Object.entries(taken));
  return {
    ...kitchen,
    pantry: pantry.map((each) => {
      const kg = valueIn(each.amount, 'kg');
      const gone = Math.min(kg, left.get(each.item) ?? 0);
      left.set(each.item, (left.get(each.item) ?? 0) - gone);
      const share = Math.max(NEXT_TO_NOTHING, 1 - gone / kg);
      const { amount, price } = each;
      return {
        ...each,
        amount: { ...amount, value: amount.value * share },
        ...(price === undefined ? {} : { price: { ...price, value: price.value * share } }),
      };
    }),
  };
}
