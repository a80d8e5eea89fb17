import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { customary } from '../customary';
import type { Activity, Supply } from '../request/activity';
import type { Wanted } from '../request/planInput';
import type { Drying } from './energyTaken';
import { type Day, type LotYield, leftOut, lotsFor, type Made, supplyOf, within, yieldFromLot } from './making';

/** A bag of dried food, where the cook names no other size. */
export const BAG: Quantity<'mass'> = { value: customary('bag'), unit: 'oz' };

/** Share of the ready weight that is left at a target moisture; low is the poor end, from the wettest fruit. */
export const leftAt = (water: Range<number>, target: number): Range<number> => ({
  low: (1 - water.high) / (1 - target),
  likely: (1 - water.likely) / (1 - target),
  high: (1 - water.low) / (1 - target),
});

export interface Lots {
  readonly supplies: readonly Supply[];
  readonly yields: readonly LotYield[];
}

/** The lots as they go into a product that keeps `left` of the ready weight, in units of so many kg. */
export function lotsAs(
  day: Day,
  trade: string,
  form: string,
  left: Range<number>,
  unitKg: number,
  product: number,
): Lots {
  const yields: LotYield[] = [];
  const supplies = lotsFor(day, trade).map((lot) => {
    const given = within(product, () => yieldFromLot(day, lot, form));
    yields.push(given);
    const units = (ready: number, share: number) => (ready * share) / unitKg;
    return supplyOf(lot, given, {
      low: units(given.ready.low, left.low),
      likely: units(given.ready.likely, left.likely),
      high: units(given.ready.high, left.high),
    });
  });
  return { supplies, yields };
}

/** Left out where another load is in the dryer for all of the hours of work. */
export const dryerBusy = (wanted: Wanted): Made =>
  leftOut(
    wanted,
    'dryer-busy',
    'the dryer is busy until the hours of work end',
    'can or freeze it, or dry it another day',
  );

export const richest = (yields: readonly LotYield[]): number => Math.max(...yields.map(({ ready }) => ready.high));

export const perUnitKg = ({ supplies }: Lots): number => 1 / (supplies[0]?.unitsPerKg.likely ?? 1);

export const trayEnergy = ({ perTray }: Drying): Pick<Activity, 'energyPerTray'> =>
  perTray === undefined ? {} : { energyPerTray: perTray };

export const driedRange = (ready: Range<number>, left: Range<number>): Range<number> => ({
  low: ready.low * left.low,
  likely: ready.likely * left.likely,
  high: ready.high * left.high,
});

/** The dryer's temperature as printed, or in whole degrees Celsius on a metric day. */
export const dryerAt = ({ metric }: Day, printed: Quantity<'temperature'>): Quantity<'temperature'> =>
  metric ? { value: Math.round(valueIn(printed, 'degC')), unit: 'degC' } : printed;
