import { exact } from '../../common/exact';
import { parseMoney, toCents, withoutNoise } from '../../quantity/money';
import { mapRange } from '../../quantity/range';
import { valueIn } from '../../quantity/scale';
import type { Money, Quantity, Range } from '../../quantity/types';
import { PANTRY } from '../../recipes/pantryItems';
import type { Basis } from '../../sources/basis';
import { practiceBasis } from '../../sources/table';
import { customaryBasis } from '../figures/customary';
import { type Kept, pantryKgOf } from '../program/decide';
import type { Prepared } from '../program/prepare';
import { gasOf, type Prices, pricesIn } from '../program/prices';
import type { DayCost } from '../request/dayPlan';
import type { Kitchen, Wanted } from '../request/planInput';
import type { CostKind, ProductCost } from '../request/plannedProduct';
import { amountOf } from '../request/stock';
import type { EnergyUsed } from './energyUsed';
import { kgInto } from './lotShares';
import { notPriced } from './notPriced';
import { shareMoney } from './shareMoney';
import { customaryServing, servingsIn, unitSize } from './unitSize';
import type { WorkDone } from './workDone';

/** One line of what a product costs. */
interface Line {
  readonly what: string;
  readonly kind: CostKind;
  readonly amount: number;
}

/** Less than a gram left of a lot is none. */
const NOTHING_LEFT = 1e-3;

export interface Costs {
  readonly products: readonly ProductCost[];
  readonly day: DayCost;
}

/**
 * What each product and the day cost. The price of a lot is shared out to the cent among the products made of it and
 * what is left, kept fresh or not sound; products of trimmings take no share. Jars over their lives, lids, bags, sugar
 * and acid count as they are used, at the rich end; energy at its likely figure; hands by their minutes. Each of these
 * is summed up over the day and rounded once, and the cents are shared out among the products, so that all lines add up
 * to the day.
 *
 * @returns nothing where the request names no price
 */
export function costsOf(
  prepared: Prepared,
  kept: readonly Kept[],
  work: readonly WorkDone[],
  energy: readonly EnergyUsed[],
): Costs | undefined {
  const prices = pricesIn(prepared.request, prepared.day.lots);
  if (prices === undefined) return undefined;
  const money = (value: number): Money => parseMoney({ value, unit: prices.currency });
  const food = foodShares(prepared, kept);
  const byKind = [
    food.lines,
    toWholeCents(kept.map((each) => suppliesOf(prices, each))),
    toWholeCents(energy.map((used) => [energyLine(prices, used)])),
    toWholeCents(work.map((done) => [handsLine(prices, done)])),
  ];
  const lines = kept.map((_, index) => byKind.flatMap((kind) => kind[index] ?? []));
  const sum = (own: readonly Pick<Line, 'amount'>[]) => toCents(own.reduce((total, { amount }) => total + amount, 0));
  const of = (kind: CostKind) => sum(lines.flat().filter((line) => line.kind === kind));
  const paid = toCents(prepared.day.lots.reduce((total, { price }) => total + toCents(price?.value ?? 0), 0));
  const day = { supplies: of('supplies'), energy: of('energy'), hands: of('hands') };
  return {
    products: kept.map((each, index) => {
      const own = lines[index] ?? [];
      const total = sum(own);
      return {
        lines: own.map(({ what, kind, amount }) => ({ what, kind, cost: money(amount) })),
        total: money(total),
        ...ratesOf(prepared, each, (parts) =>
          mapRange(countsOf(each), (units) => money(upToCents(total, Math.max(units, 1) * parts))),
        ),
      };
    }),
    day: {
      foodUsed: money(of('food')),
      foodLeft: money(toCents(Math.max(0, food.left))),
      foodKeptFresh: money(toCents(food.keptFresh)),
      foodNotSound: money(toCents(food.notSound)),
      supplies: money(day.supplies),
      energyCost: money(day.energy),
      handsCost: money(day.hands),
      total: money(toCents(paid + day.supplies + day.energy + day.hands)),
      totalRange: mapRange(dayEnds(prices, kept, energy), (some) => money(toCents(paid + day.hands + some, 'up'))),
      notPriced: notPriced(prepared, prices, kept, energy),
    },
  };
}

/** The units that the money may be spread over, the dearest at the high end. */
const countsOf = ({ decided: { promised, likely, ready } }: Kept): Range<number> => ({
  low: ready,
  likely,
  high: promised,
});

/** Up to the cent: a jar never looks cheaper than it is. */
const upToCents = (total: number, parts: number): number => toCents(exact(total).div(parts), 'up');

const OUNCE: Quantity<'mass'> = { value: 1, unit: 'oz' };
const HUNDRED_GRAMS: Quantity<'mass'> = { value: 100, unit: 'g' };

/** What one unit costs, an ounce or 100 g of it, and a serving; `each` prices one part of a unit. */
function ratesOf(
  { day, request }: Prepared,
  kept: Kept,
  each: (parts: number) => Range<Money>,
): Omit<ProductCost, 'lines' | 'total'> {
  const { making } = kept;
  const wanted = request.products[making.activity.product] as Wanted;
  const size = unitSize(kept);
  const per = day.metric ? HUNDRED_GRAMS : OUNCE;
  const serving = wanted.serving ?? customaryServing(making.row.makes, day.metric);
  const servings = serving && servingsIn(size, serving);
  return {
    perUnit: each(1),
    ...(size.net === undefined
      ? {}
      : {
          perNet: {
            cost: each(size.net.kg / valueIn(per, 'kg')),
            netMass: per,
            ...(size.net.estimated ? { estimated: true as const } : {}),
          },
        }),
    ...(serving === undefined || servings === undefined
      ? {}
      : {
          perServing: {
            cost: each(servings),
            serving,
            ...(wanted.serving === undefined ? { customary: true as const } : {}),
          },
        }),
  };
}

/** What the rates of a cost rest on. */
export function costBasis({ lines, perNet, perServing }: ProductCost, { utilities: energy }: Kitchen): Basis[] {
  return [
    { of: 'costs', kind: 'measured', note: 'prices' },
    ...(lines.some(({ what }) => what === JARS) ? [customaryBasis('jar-uses', 'costs.lines')] : []),
    ...(lines.some(({ kind }) => kind === 'energy') ? (gasOf(energy)?.basis ?? []) : []),
    ...(perNet?.estimated ? [customaryBasis('jar-density', 'costs.perNet')] : []),
    ...(perServing?.customary ? [practiceBasis('costs.perServing', 'customary serving')] : []),
  ];
}

/** The money of all lots: in the products, and in what goes into none. */
interface FoodShares {
  readonly lines: Line[][];
  readonly left: number;
  readonly keptFresh: number;
  readonly notSound: number;
}

/** The price of each lot shared out by the weight that goes into each product, and by what goes into none. */
function foodShares({ day }: Prepared, kept: readonly Kept[]): FoodShares {
  const lines: Line[][] = kept.map(() => []);
  const rest = { left: 0, keptFresh: 0, notSound: 0 };
  for (const { price, index, label, usableKg, keepFreshKg, notSoundKg } of day.lots) {
    if (price === undefined) continue;
    const used = kept.map((each) => kgInto(each, index));
    const left = usableKg - used.reduce((sum, kg) => sum + kg, 0);
    const shares = shareMoney(price.value, [...used, left > NOTHING_LEFT ? left : 0, keepFreshKg, notSoundKg]);
    lines.forEach((own, product) => {
      const amount = shares[product] ?? 0;
      if (amount > 0) own.push({ what: label, kind: 'food', amount });
    });
    const [, keptFresh = 0, notSound = 0] = shares.slice(used.length);
    rest.keptFresh += keptFresh;
    rest.notSound += notSound;
    // all that is in nothing else, also of a lot too small to share out
    const inProducts = shares.slice(0, used.length).reduce((sum, share) => sum + share, 0);
    rest.left += toCents(price.value) - inProducts - keptFresh - notSound;
  }
  return { lines, ...rest };
}

const JARS = 'jars, over their lives';

/** What a product uses up, not yet in whole cents. */
function suppliesOf({ stock, pantryKg }: Prices, kept: Kept): Line[] {
  const { making, decided } = kept;
  return [
    ...making.activity.stockPerUnit.map(
      ({ stock: kind, amount }): Line => ({
        what: kind.of === 'jars' ? JARS : kind.of,
        kind: 'supplies',
        amount: amount * (amountOf(stock, kind) ?? 0) * decided.ready,
      }),
    ),
    ...PANTRY.map(
      (item): Line => ({ what: item, kind: 'supplies', amount: (pantryKg[item] ?? 0) * pantryKgOf(kept, item) }),
    ),
  ];
}

/** Supplies and energy of the day: at the poor end of what the food gives, at the likely counts, and at the rich end. */
function dayEnds(prices: Prices, kept: readonly Kept[], energy: readonly EnergyUsed[]): Range<number> {
  const at = (end: keyof Range<number>): number => {
    const supplies = kept.flatMap((each) => {
      const { decided } = each;
      const ready = { low: decided.promised, likely: decided.likely, high: decided.ready }[end];
      const high = decided.readyKg[end];
      return suppliesOf(prices, { ...each, decided: { ...decided, ready, readyKg: { ...decided.readyKg, high } } });
    });
    const burnt = energy.map(
      ({ stove, electricity }) => prices.energy.stove * stove[end] + prices.energy.electricity * electricity[end],
    );
    return [...supplies.map(({ amount }) => amount), ...burnt].reduce((sum, amount) => sum + amount, 0);
  };
  return { low: at('low'), likely: at('likely'), high: at('high') };
}

const energyLine = ({ energy }: Prices, { stove, electricity }: EnergyUsed): Line => ({
  what: 'energy',
  kind: 'energy',
  amount: energy.stove * stove.likely + energy.electricity * electricity.likely,
});

const handsLine = ({ handsMinute }: Prices, { hands: { prepare, fill, stir } }: WorkDone): Line => ({
  what: 'own hours',
  kind: 'hands',
  amount: handsMinute * (prepare + fill + stir),
});

/** Each kind of line summed up over the products, rounded to the cent and shared out again; lines of nothing fall away. */
function toWholeCents(products: readonly (readonly Line[])[]): Line[][] {
  const shared: Line[][] = products.map(() => []);
  const kinds = new Map(products.flat().map((line) => [line.what, line]));
  for (const [what, { kind }] of kinds) {
    const amounts = products.map((own) => own.reduce((sum, line) => sum + (line.what === what ? line.amount : 0), 0));
    const all = amounts.reduce((sum, each) => sum + each, 0);
    shareMoney(withoutNoise(all).toNumber(), amounts).forEach((amount, index) => {
      if (amount > 0) shared[index]?.push({ what, kind, amount });
    });
  }
  return shared;
}
