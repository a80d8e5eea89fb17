import { type GasPer, type GasPrice, gasPrice } from '../../heat/gasPrice';
import { valueIn } from '../../quantity/scale';
import type { Money, Range } from '../../quantity/types';
import { PANTRY, type PantryItem } from '../../recipes/pantryItems';
import { customary } from '../figures/customary';
import type { Activity, Cook, Supply } from '../request/activity';
import type { KnownLot } from '../request/lots';
import type { PlanRequest } from '../request/planInput';
import { pricesOf } from '../request/pricesOf';
import { amountOf, BAGS, firstOfEach, type InStock, jarsOf, LIDS, type Stock } from '../request/stock';

/** What one of everything costs, in the request's currency; what has no price costs nothing. */
export interface Prices {
  readonly currency: string;
  /** A kg of each lot: its price shared out by weight. */
  readonly lotKg: readonly number[];
  /** One of each stock: a jar over its life, a lid, a bag. */
  readonly stock: readonly InStock[];
  /** A kg of what the pantry holds. */
  readonly pantryKg: Readonly<Partial<Record<PantryItem, number>>>;
  /** A kWh of the stove, by what it burns, and of electricity. */
  readonly energy: { readonly stove: number; readonly electricity: number };
  /** A minute of one pair of hands. */
  readonly handsMinute: number;
}

/** What a request says of the price of gas. */
interface EnergyPriced {
  readonly stove?: 'gas' | 'propane' | 'electric' | undefined;
  readonly gas?: Money | undefined;
  readonly gasPer?: GasPer | undefined;
}

const THERM: GasPer = { value: 1, unit: 'therm' };

/** What a kWh of the stove's gas costs; nothing where it burns none, or its gas has no price. */
export function gasOf({ stove, gas, gasPer = THERM }: EnergyPriced = {}): GasPrice | undefined {
  if (gas === undefined || stove === undefined || stove === 'electric') return undefined;
  return gasPrice(gas.value, gasPer, stove, 'kitchen.utilities.gasPer');
}

const burnsGas = ({ stove }: EnergyPriced): boolean => stove === 'gas' || stove === 'propane';

/** Nothing where the request names no price. */
export function pricesIn(
  request: Pick<PlanRequest, 'lots' | 'kitchen' | 'products'>,
  lots: readonly Pick<KnownLot, 'price' | 'rawKg'>[],
): Prices | undefined {
  const currency = pricesOf(request).find(({ spent }) => spent)?.price.unit;
  if (currency === undefined) return undefined;
  const { jars = [], lids, bags, pantry = [], utilities: energy = {}, wage } = request.kitchen;
  const stock = firstOfEach([
    ...jars.flatMap(({ jar, price, lifetimeUses: uses = customary('jar-uses') }) => priced(jarsOf(jar), price, uses)),
    ...priced(LIDS, lids?.price),
    ...priced(BAGS, bags?.price),
  ]);
  const pantryKg: Partial<Record<PantryItem, number>> = {};
  for (const { item, amount, price } of pantry) {
    if (price !== undefined) pantryKg[item] ??= price.value / valueIn(amount, 'kg');
  }
  const electricity = energy.electricity?.value ?? 0;
  return {
    currency,
    lotKg: lots.map(({ price, rawKg }) => (price?.value ?? 0) / rawKg.likely),
    stock,
    pantryKg,
    energy: { stove: burnsGas(energy) ? (gasOf(energy)?.perKwh ?? 0) : electricity, electricity },
    handsMinute: (wage?.value ?? 0) / 60,
  };
}

/** What one of a stock costs, spread over its uses. */
const priced = (stock: Stock, price: Money | undefined, uses = 1): InStock[] =>
  price === undefined ? [] : [{ stock, amount: price.value / uses }];

/** Energy is paid for at its likely figure. */
const paidFor = (kWh: Range<number> | undefined, price: number): number => (kWh?.likely ?? 0) * price;

/**
 * What the plan pays for an activity, written into it: by the kg the food, the work on it, what goes in by its weight
 * and what heats, dries or freezes it; by the unit jars, lids, bags and filling; by the batch, the tray and the load the
 * energy of each. `costsOf` counts the same when the day is decided, in whole cents, and by the batches and loads of the
 * order of work, which may be more than the least that the program needs.
 */
export function withPrices(activity: Activity, prices: Prices | undefined): Activity {
  if (prices === undefined) return activity;
  const { supplies, energyPerTray, cook, canning } = activity;
  return {
    ...activity,
    supplies: supplies.map((supply) => ({ ...supply, costPerKg: costOfKg(activity, supply, prices) })),
    costPerUnit: costOfUnit(activity, prices),
    ...(energyPerTray === undefined ? {} : { costPerTray: paidFor(energyPerTray, prices.energy.electricity) }),
    ...(cook === undefined ? {} : { cook: pricedCook(cook, prices) }),
    ...(canning === undefined
      ? {}
      : {
          canning: {
            ...canning,
            canners: canning.canners.map((canner) => ({
              ...canner,
              costPerLoad: paidFor(canner.energyPerLoad, prices.energy.stove),
              costToWarmUp: paidFor(canner.energyToWarmUp, prices.energy.stove),
            })),
          },
        }),
  };
}

function costOfKg(
  { madeOf, pantry = {}, handsPerKg }: Activity,
  { lot, readyPerKg, energyPerKg }: Supply,
  { lotKg, pantryKg, energy, handsMinute }: Prices,
): number {
  const fromPantry = PANTRY.reduce((sum, item) => {
    const { perReadyKg = 0, perRawKg = 0 } = pantry[item] ?? {};
    return sum + (pantryKg[item] ?? 0) * (perReadyKg * readyPerKg.high + perRawKg);
  }, 0);
  return (
    // trimmings are paid for with the fruit they fall from
    (madeOf === 'fruit' ? (lotKg[lot] ?? 0) : 0) +
    fromPantry +
    paidFor(energyPerKg?.stove, energy.stove) +
    paidFor(energyPerKg?.electricity, energy.electricity) +
    handsPerKg * handsMinute
  );
}

function costOfUnit(
  { stockPerUnit, pantry = {}, handsPerUnit }: Activity,
  { stock, pantryKg, handsMinute }: Prices,
): number {
  const ofStock = stockPerUnit.reduce((sum, each) => sum + each.amount * (amountOf(stock, each.stock) ?? 0), 0);
  return PANTRY.reduce(
    (sum, item) => sum + (pantryKg[item] ?? 0) * (pantry[item]?.perUnit ?? 0),
    ofStock + handsPerUnit * handsMinute,
  );
}

const pricedCook = (cook: Cook, prices: Prices): Cook => ({
  ...cook,
  costPerBatch: costOfBatch(cook, prices),
  ...(cook.blanch === undefined
    ? {}
    : { blanch: { ...cook.blanch, cost: paidFor(cook.blanch.energy, prices.energy.stove) } }),
});

const costOfBatch = ({ minutes, stirred, energyPerBatch }: Cook, { energy, handsMinute }: Prices): number =>
  paidFor(energyPerBatch, energy.stove) + (stirred ? minutes * handsMinute : 0);
