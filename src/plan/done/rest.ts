/** The rest of a day: what has happened is taken off the lots, the stock and the products, and what is in work goes on. */
import { fail } from '../../errors/StillroomError';
import { formatQuantity } from '../../quantity/formatQuantity';
import { toCents } from '../../quantity/money';
import { scaleRange } from '../../quantity/range';
import { cannersOf } from '../kitchen/kitchen';
import { type Day, isMaking, type Made, type Making, massOf } from '../makes/making';
import type { KnownLot } from '../request/lots';
import type { Kitchen, PlanDayInput, Wanted } from '../request/planInput';
import { type Entry, type Happened, happenedOf, nowOf } from './entry';
import { lessPantry, lessStock, placeOf, withoutLost } from './kitchenLeft';

const NOISE = 1e-6;

/** Food in work that does not go on, and why. */
export interface NotGoneOn {
  readonly what: Happened;
  readonly code: 'waited-too-long' | 'no-room-for-it' | 'cannot-be-made';
  /** Minutes that it had waited by now, and may at the most. */
  readonly waited: number;
  readonly most: number;
}

/** What is left of a day, planned like a whole day, and what has been done before it. */
export interface Rest {
  readonly now: number;
  /** The products of the whole day. */
  readonly made: readonly Made[];
  /** The day with what is left. */
  readonly day: Day;
  /** What is out of the cook's hands. */
  readonly finished: readonly Happened[];
  /** What is in work and goes on first. */
  readonly held: readonly Happened[];
  readonly notGoneOn: readonly NotGoneOn[];
  /** Canners whose water is hot, by their place in the kitchen of the rest. */
  readonly hotCanners: readonly number[];
}

/**
 * Turns a day and what has happened on it into the rest of that day.
 *
 * @param made - the products of the whole day, in the order of `day.request.products`
 * @param names - what the plan calls them
 * @param without - entries of `done` in work that no order of work was found for
 */
export function restOf(
  day: Day,
  made: readonly Made[],
  names: readonly string[],
  input: PlanDayInput,
  without: readonly number[] = [],
): Rest | undefined {
  const { request } = day;
  const { now: given, done = [], lost, hotCanners } = request;
  if (given === undefined) {
    if (request.done !== undefined || lost !== undefined || hotCanners !== undefined)
      fail('MISSING', 'now', undefined, 'the time now, such as "10:30", to go with what has happened');
    return undefined;
  }
  const now = nowOf(request.kitchen, given, input.now);
  let kitchen: Kitchen = { ...withoutLost(request.kitchen, lost), now };
  const happened = done.map((entry, index) => happenedOf({ day, made, names, now, input }, entry, index));
  checkLots(day, happened, done, input);
  const notGoneOn = happened.flatMap((what): NotGoneOn[] => {
    if (what.held === undefined) return [];
    const { by, since } = what.held;
    const code = now > by ? 'waited-too-long' : without.includes(what.index) ? 'no-room-for-it' : undefined;
    return code === undefined ? [] : [{ what, code, waited: now - since, most: Math.max(0, by - since) }];
  });
  const stays = new Set(notGoneOn.map(({ what }) => what));
  const held = filledTogether(happened.filter((each) => each.held !== undefined && !stays.has(each)));
  const finished = happened.filter(({ state }) => state === 'done' || state === 'running');
  for (const { index, product, units, state } of [...finished, ...stays]) {
    const { stockPerUnit } = (made[product] as Making).activity;
    // a jar that is emptied again is a jar, but its lid is used up
    const taken = stays.has(happened[index] as Happened)
      ? stockPerUnit.filter(({ stock }) => stock.of === 'lids')
      : stockPerUnit;
    if (state === 'prepared' || state === 'hot') continue;
    const used = taken.map(({ stock, amount }) => ({ stock, amount: amount * units }));
    kitchen = lessStock(kitchen, used, `done[${index}].filled`, units);
  }
  for (const each of finished) kitchen = lessPantry(kitchen, pantryOf(made[each.product] as Making, each));
  kitchen = withRunning(kitchen, happened, done);
  const used = [...finished, ...stays];
  const lots = day.lots.map((lot) => lessLot(lot, used, made));
  const products = request.products.map((wanted, product) =>
    lessWanted(wanted, made[product] as Made, finished, held, product),
  );
  const canners = cannersOf(kitchen).map(({ label }) => label);
  const hot = (hotCanners ?? []).map((name, index) =>
    placeOf(name, canners, `hotCanners[${index}]`, 'a canner of the kitchen'),
  );
  return {
    now,
    made,
    hotCanners: hot,
    day: { ...day, request: { ...request, kitchen, products }, lots },
    finished,
    held,
    notGoneOn,
  };
}

/** What something finished took from the pantry, kg at the likely yield. */
function pantryOf({ activity: { pantry = {}, supplies } }: Making, { kg, units, lot }: Happened) {
  const readyKg = kg * (supplies.find((supply) => supply.lot === lot)?.readyPerKg.likely ?? 0);
  return Object.fromEntries(
    Object.entries(pantry).map(([item, { perUnit, perReadyKg, perRawKg = 0 }]) => [
      item,
      perUnit * units + perReadyKg * readyKg + perRawKg * kg,
    ]),
  );
}

/** Jars of one product that are filled go into loads together, and wait from when the first was filled. */
function filledTogether(held: readonly Happened[]): Happened[] {
  const some: Happened[] = [];
  for (const each of held) {
    const at = some.findIndex(
      ({ product, lot, state }) => state === 'filled' && product === each.product && lot === each.lot,
    );
    const one = some[at];
    if (each.state !== 'filled' || one?.held === undefined || each.held === undefined) {
      some.push(each);
      continue;
    }
    const [first, kg] = [one.held.by <= each.held.by ? one.held : each.held, one.kg + each.kg];
    const both = { ...one, more: [...(one.more ?? []), each.index], kg, units: one.units + each.units };
    some[at] = { ...both, held: { ...first, kg } };
  }
  return some;
}

/** Refuses more of a lot than there was. */
function checkLots(day: Day, happened: readonly Happened[], done: readonly Entry[], input: PlanDayInput): void {
  const sums = new Map<number, number>();
  for (const { lot, kg, index } of happened) {
    const { usableKg, spread, label } = day.lots[lot] as KnownLot;
    const sum = (sums.get(lot) ?? 0) + kg;
    sums.set(lot, sum);
    if (sum <= usableKg * spread.high * (1 + NOISE)) continue;
    const field = done[index]?.raw === undefined ? 'filled' : 'raw';
    const given = (input.done?.[index] as Readonly<Record<string, unknown>> | undefined)?.[field];
    const [all, taken] = [usableKg * spread.high, sum].map((each) => formatQuantity(massOf(day, each), { step: 0.01 }));
    fail(
      'CONTRADICTION',
      `done[${index}].${field}`,
      given,
      `no more than the ${all} of ${label}; in all it is ${taken}`,
    );
  }
}

/** Trays of a dryer that is not free, and a freeze-dryer that runs. */
function withRunning(kitchen: Kitchen, happened: readonly Happened[], done: readonly Entry[]): Kitchen {
  let left = kitchen;
  for (const { until, canner, trays, index } of happened) {
    if (until === undefined || canner !== undefined) continue;
    const busy = { busyUntil: { after: until } };
    if (trays === undefined || left.dryer === undefined) {
      if (left.freezeDryer !== undefined) left = { ...left, freezeDryer: { ...left.freezeDryer, ...busy } };
      continue;
    }
    if (trays > left.dryer.trays) {
      const expected = `no more than the ${left.dryer.trays} trays there are`;
      fail('CONTRADICTION', `done[${index}].trays`, done[index]?.trays, expected);
    }
    // trays that are not free before the hours end are none
    left =
      trays === left.dryer.trays
        ? { ...left, dryer: { ...left.dryer, ...busy } }
        : { ...left, dryer: { ...left.dryer, trays: left.dryer.trays - trays } };
  }
  return left;
}

/** A lot less what went into something. Of a lot that was not weighed its range goes with what is left. */
function lessLot(lot: KnownLot, used: Iterable<Happened>, made: readonly Made[]): KnownLot {
  const gone = [...used].reduce((sum, each) => {
    const making = made[each.product] as Making;
    return each.lot === lot.index && making.activity.madeOf === 'fruit' ? sum + each.kg : sum;
  }, 0);
  if (gone === 0) return lot;
  const taken = Math.min(gone, lot.usableKg);
  const share = 1 - taken / lot.rawKg.likely;
  const { price } = lot;
  return {
    ...lot,
    usableKg: lot.usableKg - taken,
    rawKg: scaleRange(lot.rawKg, share),
    ...(price === undefined ? {} : { price: { ...price, value: toCents(price.value * share) } }),
  };
}

/** A product less what is done of it and what is in work: its musts and its most are those of the whole day. */
function lessWanted(
  wanted: Wanted,
  made: Made,
  finished: readonly Happened[],
  held: readonly Happened[],
  product: number,
): Wanted {
  if (!isMaking(made)) return wanted;
  const { least, most, smallest, ...others } = wanted;
  const units = finished.reduce((sum, each) => (each.product === product ? sum + each.units : sum), 0);
  const perKg = made.activity.supplies[0]?.unitsPerKg;
  const own = held.filter((each) => each.product === product);
  const hot = (end: 'low' | 'high') =>
    own.reduce((sum, { state, units: some, kg }) => sum + (state === 'filled' ? some : kg * (perKg?.[end] ?? 0)), 0);
  if (units === 0 && own.length === 0) return wanted;
  return {
    ...others,
    ...(least === undefined ? {} : { least: Math.max(0, least - units - Math.floor(hot('low'))) }),
    ...(most === undefined ? {} : { most: Math.max(0, most - units - Math.ceil(hot('high'))) }),
    // what is begun is worth going on with
    ...(smallest === undefined || units > 0 ? {} : { smallest }),
  };
}
