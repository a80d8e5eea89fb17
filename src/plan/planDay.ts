import { fail, within } from '../errors/StillroomError';
import { readInput } from '../quantity/fields';
import { parseMoney, toCents } from '../quantity/money';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Money, Quantity, Range } from '../quantity/types';
import { joinBasis, joinCautions } from '../sources/basis';
import { caution } from '../sources/cautions';
import { planCaution } from './cautions';
import type {
  CannerLoad,
  DayCost,
  DayPlan,
  FeasibleDay,
  InfeasibleDay,
  Ingredient,
  LeftOut,
  LotShare,
  NotMade,
  PlannedProduct,
  PotWork,
  ProductCost,
  ToReady,
} from './dayPlan';
import { cannersOf, capacityOf, potsOf } from './kitchen';
import { limitsOf, useOf, wideningsOf } from './limits';
import {
  compositionOf,
  type Day,
  type Decided,
  within as inProduct,
  isMaking,
  type KnownLot,
  type Made,
  type Making,
  massOf,
  massRange,
  nameOf,
} from './makes/context';
import { makeDried, makeFreezeDried, makeLeather } from './makes/dried';
import { makeFrozen } from './makes/frozen';
import { jarStock, makeJam, makeJars } from './makes/jars';
import { makePowder, makeSteeped } from './makes/trimmings';
import { type Make, type PlanDayInput, type PlanRequest, planSchema, pricesOf, type Wanted } from './planInput';
import { batches, freezeTrays, groupsOf, leastFruit, loads, promised, raw, readied, toProgram, trays } from './program';
import { shareMoney } from './shareMoney';
import { type Program, type Solved, solve } from './solve';

type Maker = (day: Day, wanted: Wanted, product: number, trade: string) => Made;
const MAKERS: Readonly<Record<Make, Maker>> = {
  jars: makeJars,
  jam: makeJam,
  dried: makeDried,
  'freeze-dried': makeFreezeDried,
  leather: makeLeather,
  frozen: makeFrozen,
  powder: makePowder,
  vinegar: makeSteeped,
  'jelly stock': makeSteeped,
};

/** The day as asked, read and turned into a program. */
interface Prepared {
  readonly request: PlanRequest;
  readonly day: Day;
  readonly makings: readonly Making[];
  readonly leftOut: readonly LeftOut[];
  readonly program: Program;
}

const METRIC: ReadonlySet<string> = new Set(['g', 'mg', 'kg', 'tonne']);

function prepare(input: PlanDayInput): Prepared {
  const request = readInput(planSchema, input);
  checkRequest(request, input);
  const lots: KnownLot[] = request.lots.map((lot, index) => {
    const trade = within(`lots[${index}]`, () => compositionOf(lot.produce).produce);
    return { ...lot, index, trade, label: lot.name ?? `${trade} ${request.lots.length > 1 ? index + 1 : ''}`.trim() };
  });
  const massUnit = (request.lots[0] as PlanRequest['lots'][number]).raw.unit;
  const day: Day = { request, lots, massUnit, metric: METRIC.has(massUnit) };
  const made = request.products.map((wanted, product): Made => {
    const trade = inProduct(product, () => compositionOf(wanted.from).produce);
    if (!lots.some((lot) => lot.trade === trade)) {
      return {
        product: nameOf(wanted, trade),
        reason: `no lot is ${trade}`,
        instead: 'add the lot, or take the product off',
      };
    }
    return MAKERS[wanted.make](day, wanted, product, trade);
  });
  const makings = made.filter(isMaking);
  const activities = makings.map(({ activity }) => activity);
  const program = toProgram(activities, capacityOf(request, activities), request.aim ?? 'most worth');
  return { request, day, makings, leftOut: made.filter((each): each is LeftOut => !isMaking(each)), program };
}

function checkRequest(request: PlanRequest, input: PlanDayInput): void {
  const prices = pricesOf(request);
  const [first] = prices;
  for (const { path, price } of prices) {
    if (first !== undefined && price.unit !== first.price.unit) {
      fail(
        'CONTRADICTION',
        path,
        price.unit,
        `the currency of ${first.path}, ${first.price.unit}: prices are never converted`,
      );
    }
  }
  request.products.forEach(({ least = 0, most }, index) => {
    if (most !== undefined && least > most)
      fail('CONTRADICTION', `products[${index}].least`, least, `at most ${most}, the most of the same product`);
  });
  request.lots.forEach(({ raw: mass, ready }, index) => {
    if (ready !== undefined && valueIn(ready, 'kg') > valueIn(mass, 'kg')) {
      fail('CONTRADICTION', `lots[${index}].ready`, input.lots[index]?.ready, 'no more than the raw weight of the lot');
    }
  });
  const worths = new Set(
    request.products.flatMap(({ worth }) => (worth === undefined ? [] : [worth.currency === undefined])),
  );
  if (worths.size > 1) {
    const index = request.products.findIndex(({ worth }) => worth !== undefined && worth.currency === undefined);
    fail(
      'CONTRADICTION',
      `products[${index}].worth`,
      request.products[index]?.worth?.value,
      'money like the other products, or plain numbers for all',
    );
  }
}

/** The kitchen's program, for checks against another solver: what `planDay` maximizes. */
export function planProgram(input: PlanDayInput): Program {
  return prepare(input).program;
}

/**
 * The whole day: shares out the lots among the products wanted as well as this kitchen and these hours allow.
 *
 * An integer program (see `toProgram`): how much of each lot goes into each product, whole jars and packs, batches in
 * each pot, loads of each tested process in each canner, trays. Jars are promised at the poor end of the yields; jars
 * to ready, stock, pots, canners, trays and hours hold at the rich end, so the plan stands whatever the fruit gives
 * within its published range. A product whose process is not tested is left out with the reason. Trimmings are
 * shared out too, among the products made of them.
 *
 * @param input.lots - 1 to 60: `produce`, `raw` weight, and if known `price` of the whole lot, `ready` (its weight when
 *   prepared, as weighed by you), `brix` (for jam), `name`
 * @param input.kitchen - `elevation`; `hours` of the day (up to 48); `hands` (1), `burners` (4), `burnerPower`
 *   (2400 W); `pots` with `volume`, `fill` limit (two thirds) and `count`; `canners` with `method` and what each
 *   `holds`; `jars` and `lids` in stock (not limited where none are named); `dryer`, `freezeDryer`, `freezer`; `pantry`
 * @param input.products - 1 to 60: `make` (jars, jam, dried, freeze-dried, leather, frozen, powder, vinegar, jelly
 *   stock), `from`, and what belongs to it: `form`, `pack`, `jar`, `method`, `syrup`, `sugarToFruit` (kg/kg),
 *   `finishSolids`, `moisture`, `thickness`, `size` of a pack; `least`, `most` (units), `worth` of one unit (money or a
 *   number; the kg of fruit it uses where none is given); your own `minutesPerPound`, `minutesPerUnit`, `cook`
 * @param input.aim - `most worth` (taken when nothing is said), `least waste` (the most fruit used) or `fewest hours`
 * @returns the plan, each product with its lots, recipe, jars, loads, trays, cost, cautions and basis; what is left
 *   fresh, left out and why, what to have at hand and what is short, what limited the plan and what one more of it
 *   would add; or `{ feasible: false }` with the musts that conflict
 * @throws StillroomError for a field that is wrong, naming it
 *
 * Work times that the input does not name are common practice; every other figure is in the basis of its product.
 *
 * @example
 * ```ts
 * import { planDay } from 'stillroom/plan';
 *
 * const plan = planDay({
 *   lots: [{ produce: 'peach', raw: '30 lb' }],
 *   kitchen: {
 *     elevation: '3,400 ft',
 *     hours: '6 h',
 *     hands: 2,
 *     pots: [{ volume: '12 quarts' }],
 *     canners: [{ method: 'boiling-water', holds: { pint: 9, quart: 7 } }],
 *     jars: [{ jar: 'quart', count: 12 }],
 *   },
 *   products: [{ make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart', syrup: 'light' }],
 * });
 * plan.feasible && plan.products[0].jars.minutes; // => 35
 * plan.feasible && plan.products[0].units; // => { unit: 'quart jar', promised: 8, likely: 9, ready: 12 }
 * ```
 */
export function planDay(input: PlanDayInput): DayPlan {
  const prepared = prepare(input);
  const { request, makings, leftOut, program } = prepared;
  const found = solve(program, { among: leastFruit(program) });
  if (!found.feasible) return impossible(prepared);
  const decided = makings.map((making) => decide(making, prepared, found.values));
  const kept = makings.flatMap((making, index) => {
    const each = decided[index] as Decided;
    return each.ready > 0 || each.rawKg > 1e-9 ? [{ making, decided: each }] : [];
  });
  const shares = priceShares(prepared, kept);
  const products = kept.map((each, index) => describe(prepared, each, found.values, shares[index]));
  return {
    feasible: true,
    invented: request.invented ?? false,
    aim: request.aim ?? 'most worth',
    elevation: request.kitchen.elevation,
    objective: found.worth,
    provenBest: found.optimal,
    gap: found.gap,
    products,
    leftFresh: leftFresh(prepared, kept),
    leftOut,
    notMade: notMade(prepared, decided),
    ready: toReady(prepared, products, kept),
    limits: limitsOf(program, found, wideningsFor(prepared)),
    work: workOf(prepared, found),
    ...dayCost(prepared, products, shares),
    basis: joinBasis(...products.map(({ basis }) => basis)),
    cautions: joinCautions(
      [caution('follow-local-guidance'), caution('hot-liquids-burn'), caution('estimate')],
      products.some(({ pots }) => pots !== undefined) ? [planCaution('pot-fill-limit')] : [],
    ),
  };
}

interface Kept {
  readonly making: Making;
  readonly decided: Decided;
}

/** Noise of the solver in kg and units. */
const NOISE = 1e-6;

function decide({ activity }: Making, { program }: Prepared, values: ReadonlyMap<string, number>): Decided {
  const { product, supplies } = activity;
  const kg = (lot: number) => Math.max(0, values.get(raw(lot, product)) ?? 0);
  const sum = (each: (supply: (typeof supplies)[number]) => number) =>
    supplies.reduce((total, supply) => total + kg(supply.lot) * each(supply), 0);
  const rawKg = sum(() => 1);
  const rawByLot = new Map(supplies.map(({ lot }) => [lot, kg(lot)]));
  const most = program.bounds.find(({ name }) => name === `most ${product}`)?.max ?? 0;
  return {
    rawByLot,
    rawKg,
    readyKg: {
      low: sum(({ readyPerKg }) => readyPerKg.low),
      likely: sum(({ readyPerKg }) => readyPerKg.likely),
      high: sum(({ readyPerKg }) => readyPerKg.high),
    },
    promised: Math.max(
      values.get(promised(product)) ?? 0,
      Math.min(most, Math.floor(sum(({ unitsPerKg }) => unitsPerKg.low) + NOISE)),
    ),
    likely: Math.floor(sum(({ unitsPerKg }) => unitsPerKg.likely) + NOISE),
    ready: Math.min(values.get(readied(product)) ?? 0, Math.ceil(sum(({ unitsPerKg }) => unitsPerKg.high) - NOISE)),
    trays: Math.ceil(
      Math.max(
        0,
        Math.min(
          values.get(trays(product)) ?? values.get(freezeTrays(product)) ?? 0,
          rawKg * (activity.traysPerKg ?? activity.freezeDry?.traysPerKg ?? 0),
        ) - NOISE,
      ),
    ),
  };
}

function describe(
  { day, request, makings }: Prepared,
  { making, decided }: Kept,
  values: ReadonlyMap<string, number>,
  cost: Shares | undefined,
): PlannedProduct {
  const { activity, label, produce, form, unit } = making;
  const wanted = request.products[activity.product] as Wanted;
  const said = making.describe(decided);
  const from: LotShare[] = activity.supplies.flatMap(({ lot }) => {
    const kg = values.get(raw(lot, activity.product)) ?? 0;
    const { label: name } = day.lots[lot] as KnownLot;
    return kg > NOISE ? [{ lot: name, produce, raw: massOf(day, kg) }] : [];
  });
  const trimmed = activity.supplies.reduce<Range<number>>(
    (sum, { lot, trimmingsPerKg }) => {
      const kg = values.get(raw(lot, activity.product)) ?? 0;
      return {
        low: sum.low + kg * trimmingsPerKg.low,
        likely: sum.likely + kg * trimmingsPerKg.likely,
        high: sum.high + kg * trimmingsPerKg.high,
      };
    },
    { low: 0, likely: 0, high: 0 },
  );
  const { jars, cookMinutes } = said;
  const costs = cost === undefined ? undefined : productCost(cost, Math.max(decided.promised, 1));
  return {
    name: label,
    make: wanted.make,
    produce,
    ...(form === undefined ? {} : { form }),
    from,
    raw: massOf(day, decided.rawKg),
    ready: massRange(day, decided.readyKg),
    ...(activity.madeOf === 'fruit' ? { trimmings: massRange(day, trimmed) } : {}),
    units: { unit, promised: decided.promised, likely: decided.likely, ready: decided.ready },
    recipe: said.recipe ?? [],
    ...(jars === undefined ? {} : { jars: { ...jars, loads: loadsOf({ day, request, makings }, making, values) } }),
    ...(cookMinutes === undefined ? {} : { pots: potWork(request, making, values, cookMinutes, decided.rawKg) }),
    ...(said.trays === undefined ? {} : { trays: said.trays }),
    ...(said.packs === undefined ? {} : { packs: said.packs }),
    steps: said.steps,
    ...(costs === undefined ? {} : { cost: costs }),
    basis: said.basis,
    cautions: said.cautions,
  };
}

function loadsOf(
  { request, makings }: Pick<Prepared, 'day' | 'request' | 'makings'>,
  making: Making,
  values: ReadonlyMap<string, number>,
): CannerLoad[] {
  const { canning } = making.activity;
  if (canning === undefined) return [];
  const labels = cannersOf(request.kitchen);
  const group = groupsOf(makings.map(({ activity }) => activity)).get(canning.key) ?? [];
  const sharedWith = group
    .filter(({ product }) => product !== making.activity.product && (values.get(readied(product)) ?? 0) > 0)
    .map(({ product }) => makings.find(({ activity }) => activity.product === product)?.label ?? '');
  const jars = group.reduce((sum, { product }) => sum + (values.get(readied(product)) ?? 0), 0);
  let left = jars;
  return canning.canners.flatMap(({ canner, jars: held }) => {
    const planned = values.get(loads(canning.key, canner)) ?? 0;
    const needed = Math.min(planned, Math.ceil(left / held));
    left -= needed * held;
    return needed > 0 ? [{ canner: labels[canner]?.label ?? '', loads: needed, jarsPerLoad: held, sharedWith }] : [];
  });
}

/**
 * The batches of one product: as few as can be, in the largest pots, where their time allows; the program only says
 * that some sharing out fits.
 */
function potWork(
  { kitchen }: PlanRequest,
  { activity }: Making,
  values: ReadonlyMap<string, number>,
  minutesEach: number,
  rawKg: number,
): PotWork {
  const pots = potsOf(kitchen).map((pot, index) => ({ ...pot, index, litres: valueIn(pot.most, 'L') }));
  const planned = pots.map(({ index }) => values.get(batches(activity.product, index)) ?? 0);
  const largest = pots.reduce((best, pot) => (pot.litres > best.litres ? pot : best), pots[0] as (typeof pots)[number]);
  const inLargest = Math.ceil((rawKg * (activity.cook?.litresPerKg ?? 0)) / largest.litres - NOISE);
  const counts =
    inLargest * minutesEach <= valueIn(kitchen.hours, 'min') && inLargest <= Math.max(...planned)
      ? pots.map(({ index }) => (index === largest.index ? inLargest : 0))
      : planned;
  return {
    minutesEach,
    batches: pots.flatMap(({ label, most, index }) => {
      const count = counts[index] ?? 0;
      return count > 0 ? [{ pot: label, batches: count, most }] : [];
    }),
  };
}

function leftFresh({ day }: Prepared, kept: readonly Kept[]): LotShare[] {
  return day.lots.flatMap((lot) => {
    const used = kept
      .filter(({ making }) => making.activity.madeOf === 'fruit')
      .reduce((sum, { decided }) => sum + (decided.rawByLot.get(lot.index) ?? 0), 0);
    const left = valueIn(lot.raw, 'kg') - used;
    return left > 1e-3 ? [{ lot: lot.label, produce: lot.trade, raw: massOf(day, left) }] : [];
  });
}

function notMade({ makings }: Prepared, decided: readonly Decided[]): NotMade[] {
  return makings.flatMap(({ label, activity }, index) => {
    const each = decided[index] as Decided;
    if (each.ready > 0 || each.rawKg > NOISE) return [];
    const reason =
      activity.madeOf === 'trimmings'
        ? 'too few trimmings, trays or minutes are left for one unit of it'
        : 'the fruit, jars and hours do more for the aim elsewhere';
    return [{ product: label, reason }];
  });
}

function wideningsFor({ request, day, program, makings }: Prepared) {
  const { kitchen } = request;
  const capacity = capacityOf(
    request,
    makings.map(({ activity }) => activity),
  );
  return wideningsOf(program, {
    lots: day.lots.map(({ label }) => label),
    canners: cannersOf(kitchen).map(({ label }) => label),
    hands: capacity.hands,
    burners: capacity.burners,
    minutes: capacity.minutes,
    pots: capacity.pots.length,
  });
}

function workOf({ request, makings, program }: Prepared, { values }: Solved): FeasibleDay['work'] {
  const capacity = capacityOf(
    request,
    makings.map(({ activity }) => activity),
  );
  const of = (name: string, available: number) => ({ minutes: useOf(program, values, name)?.used ?? 0, available });
  return {
    hands: of('hands', capacity.hands * capacity.minutes),
    burners: of('burners', capacity.burners * capacity.minutes),
  };
}

/** What must be at hand, and what of it the stock does not hold. */
function toReady({ request, day }: Prepared, products: readonly PlannedProduct[], kept: readonly Kept[]): ToReady[] {
  const { kitchen } = request;
  const counts = new Map<string, { label: string; need: number; have: number | undefined }>();
  for (const { making, decided } of kept) {
    for (const stock of Object.keys(making.activity.stockPerUnit)) {
      if (stock !== 'lid' && !stock.startsWith('jar ')) continue;
      const label = stock === 'lid' ? 'new lids' : `${stock.slice(4)} jars, clean and hot`;
      const have =
        stock === 'lid'
          ? kitchen.lids?.count
          : kitchen.jars?.filter(({ jar }) => jarStock(jar) === stock).reduce((sum, { count }) => sum + count, 0);
      const known = counts.get(stock) ?? { label, need: 0, have };
      counts.set(stock, { ...known, need: known.need + decided.ready });
    }
  }
  const sugarKg = kept.reduce((sum, { making, decided }) => sum + (making.describe(decided).sugarKg ?? 0), 0);
  const pantry = kitchen.pantry?.filter(({ item }) => item === 'sugar');
  const sugarHave =
    pantry === undefined || pantry.length === 0
      ? undefined
      : pantry.reduce((sum, { amount }) => sum + valueIn(amount, 'kg'), 0);
  const juice = sumOf(products, 'bottled lemon juice');
  return [
    ...[...counts.values()].map(({ label, need, have }) => ({
      what: label,
      amount: need,
      ...(have === undefined || have >= need ? {} : { short: need - have }),
    })),
    ...(sugarKg > 0
      ? [
          {
            what: 'sugar',
            amount: massOf(day, sugarKg),
            ...(sugarHave === undefined || sugarHave >= sugarKg ? {} : { short: massOf(day, sugarKg - sugarHave) }),
          },
        ]
      : []),
    ...(juice === undefined ? [] : [{ what: 'bottled lemon juice', amount: juice }]),
  ];
}

function sumOf(products: readonly PlannedProduct[], what: string): Quantity<'volume'> | undefined {
  const amounts = products.flatMap(({ recipe }) =>
    recipe.filter((line): line is Ingredient & { amount: Quantity<'volume'> } => line.what.startsWith(what)),
  );
  if (amounts.length === 0) return undefined;
  return quantityIn<'volume'>(
    amounts.reduce((sum, { amount }) => sum + valueIn(amount, 'cup'), 0),
    'cup',
    'cup',
  );
}

/** Money lines of one product. */
interface Shares {
  readonly unit: string;
  readonly lines: readonly { what: string; amount: number }[];
}

/** Shares the prices of lots, jars, lids and sugar out among the products, to the cent. */
function priceShares({ request, day }: Prepared, kept: readonly Kept[]): (Shares | undefined)[] {
  const unit = pricesOf(request).find(({ path }) => !path.endsWith('.worth'))?.price.unit;
  if (unit === undefined) return kept.map(() => undefined);
  const lines: { what: string; amount: number }[][] = kept.map(() => []);
  for (const lot of day.lots) {
    if (lot.price === undefined) continue;
    const used = kept.map(({ making, decided }) =>
      making.activity.madeOf === 'fruit' ? (decided.rawByLot.get(lot.index) ?? 0) : 0,
    );
    const left = Math.max(0, valueIn(lot.raw, 'kg') - used.reduce((sum, kg) => sum + kg, 0));
    const shares = shareMoney(lot.price.value, [...used, left > 1e-3 ? left : 0]);
    kept.forEach((_, index) => {
      if ((shares[index] ?? 0) > 0) lines[index]?.push({ what: lot.label, amount: shares[index] ?? 0 });
    });
  }
  const { jars = [], lids, pantry = [] } = request.kitchen;
  const sugar = pantry.find(({ item, price }) => item === 'sugar' && price !== undefined);
  kept.forEach(({ making, decided }, index) => {
    const own = lines[index];
    for (const stock of Object.keys(making.activity.stockPerUnit)) {
      const jar = jars.find((each) => jarStock(each.jar) === stock);
      if (jar?.price !== undefined)
        own?.push({
          what: 'jars, over their lives',
          amount: toCents((jar.price.value / (jar.uses ?? JAR_USES)) * decided.ready),
        });
      if (stock === 'lid' && lids?.price !== undefined)
        own?.push({ what: 'lids', amount: toCents(lids.price.value * decided.ready) });
    }
    const { sugarKg = 0 } = making.describe(decided);
    if (sugar?.price !== undefined && sugarKg > 0)
      own?.push({ what: 'sugar', amount: toCents((sugar.price.value * sugarKg) / valueIn(sugar.amount, 'kg')) });
  });
  return lines.map((own) => ({ unit, lines: own }));
}
/** How often a jar is used in its life, where the kitchen does not say (common practice). */
const JAR_USES = 10;

function productCost({ unit, lines }: Shares, units: number): ProductCost {
  const total = toCents(lines.reduce((sum, { amount }) => sum + amount, 0));
  const money = (value: number): Money => ({ value, unit });
  return {
    lines: lines.map(({ what, amount }) => ({ what, amount: money(amount) })),
    total: money(total),
    // up: a jar never looks cheaper than it is
    perUnit: money(Math.ceil((total / units) * 100 - 1e-6) / 100),
  };
}

function dayCost(
  { request, day }: Prepared,
  products: readonly PlannedProduct[],
  shares: readonly (Shares | undefined)[],
): { cost?: DayCost } {
  const unit = shares.find((share) => share !== undefined)?.unit;
  if (unit === undefined) return {};
  const labels = new Set(day.lots.map(({ label }) => label));
  const lines = products.flatMap(({ cost }) => cost?.lines ?? []);
  const sum = (amounts: readonly number[]) => toCents(amounts.reduce((total, amount) => total + amount, 0));
  const produceUsed = sum(lines.filter(({ what }) => labels.has(what)).map(({ amount }) => amount.value));
  const paid = sum(request.lots.map(({ price }) => price?.value ?? 0));
  const supplies = sum(lines.filter(({ what }) => !labels.has(what)).map(({ amount }) => amount.value));
  const money = (value: number): Money => parseMoney({ value, unit });
  return {
    cost: {
      produceUsed: money(produceUsed),
      produceLeft: money(toCents(paid - produceUsed)),
      supplies: money(supplies),
      total: money(toCents(paid + supplies)),
    },
  };
}

/** The smallest set of musts that cannot be met together: each is let go in turn, and kept out where it is not needed. */
function impossible({ makings, leftOut, program }: Prepared): InfeasibleDay {
  const musts = makings.filter(({ activity }) => activity.least > 0);
  const without = (dropped: ReadonlySet<number>): boolean =>
    solve({
      variables: program.variables,
      bounds: program.bounds.filter(({ name }) => ![...dropped].some((product) => name === `least ${product}`)),
    }).feasible;
  const dropped = new Set<number>();
  for (const { activity } of musts) {
    const trial = new Set([...dropped, activity.product]);
    if (!without(trial)) dropped.add(activity.product);
  }
  const conflicts = musts
    .filter(({ activity }) => !dropped.has(activity.product))
    .map(({ label, activity }) => `at least ${activity.least} of ${label}`);
  return {
    feasible: false,
    reason:
      conflicts.length === 1
        ? 'this must is more than the lots, the stock and the hours give'
        : 'these musts cannot be met together',
    conflicts,
    leftOut,
    basis: [],
    cautions: [caution('follow-local-guidance')],
  };
}
