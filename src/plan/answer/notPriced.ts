import { PANTRY } from '../../recipes/pantryItems';
import { type Kept, NOISE, pantryKgOf } from '../program/decide';
import type { Prepared } from '../program/prepare';
import { gasOf, type Prices } from '../program/prices';
import type { Kitchen } from '../request/planInput';
import { amountOf, type Stock } from '../request/stock';
import type { EnergyUsed } from './energyUsed';

/** What a plan uses and the request names no price for, each once, in words. */
export function notPriced(
  { day, request: { kitchen } }: Prepared,
  { stock, pantryKg }: Prices,
  kept: readonly Kept[],
  energy: readonly EnergyUsed[],
): string[] {
  const uses = (kgOf: (each: Kept) => number) => kept.some((each) => kgOf(each) > NOISE);
  const lots = day.lots.filter(
    ({ index, price }) =>
      price === undefined &&
      uses(({ making, decided }) => (making.activity.madeOf === 'fruit' ? (decided.rawByLot.get(index) ?? 0) : 0)),
  );
  const stocks = kept
    .filter(({ decided }) => decided.ready > 0)
    .flatMap(({ making }) => making.activity.stockPerUnit)
    .filter((each) => amountOf(stock, each.stock) === undefined)
    .flatMap((each) => stockName(each.stock));
  const pantry = PANTRY.filter((item) => pantryKg[item] === undefined && uses((each) => pantryKgOf(each, item)));
  const bought = kept.flatMap(({ said }) => (said.recipe ?? []).flatMap(({ toBuy = [] }) => toBuy));
  return [
    ...new Set([
      ...lots.map(({ label }) => label),
      ...stocks,
      ...pantry,
      ...bought,
      ...energyNotPriced(kitchen, energy),
      ...(kitchen.wage === undefined && kept.length > 0 ? ['own hours'] : []),
    ]),
  ];
}

/** What a stock is called; nothing for room in the freezer, which nobody buys for the day. */
const stockName = (stock: Stock): string[] =>
  stock.of === 'jars' ? [`${stock.jar} jars`] : stock.of === 'lids' || stock.of === 'bags' ? [stock.of] : [];

/** What the stove burns and what runs on electricity, where it is used and has no price. */
function energyNotPriced({ utilities: energy = {} }: Kitchen, used: readonly EnergyUsed[]): string[] {
  const any = (of: keyof EnergyUsed) => used.some((each) => each[of].likely > 0);
  const { stove, electricity } = energy;
  const electric = stove === undefined || stove === 'electric';
  const stoveLacks = any('stove') && (electric ? electricity === undefined : gasOf(energy) === undefined);
  return [
    ...(stoveLacks ? [stove === undefined ? 'heat of the stove' : electric ? 'electricity' : stove] : []),
    ...(any('electricity') && electricity === undefined ? ['electricity'] : []),
  ];
}
