import type { Activity, Canning, Capacity } from '../request/activity';
import type { AimWeights, AimWord } from '../request/planInput';
import type { Bound, Program } from '../solver/linearProgram';

/** What the plan is to make the most of: a word, or weights. */
export type Aim = AimWord | AimWeights;

/**
 * What counts towards the objective: for each unit of worth and each kg used, and against it for each unit of money
 * and each hour of hands. With `least cost` that is then divided by what is promised.
 */
const WEIGHTS: Readonly<Record<AimWord, AimWeights>> = {
  'most worth': { worth: 1 },
  'least waste': { waste: 1 },
  'fewest hours': { hours: 60 }, // told in minutes
  'least cost': { cost: 1 },
};
export const weightsOf = (aim: Aim): { worth: number; waste: number; cost: number; hours: number } => {
  const { worth = 0, waste = 0, cost = 0, hours = 0 } = typeof aim === 'string' ? WEIGHTS[aim] : aim;
  return { worth, waste, cost, hours };
};

/** Names of the program's variables. */
export const raw = (lot: number, product: number): string => `kg of lot ${lot} in product ${product}`;
export const promised = (product: number): string => `promised ${product}`;
/** 1 where any of a product with a smallest batch is promised, otherwise 0. */
export const made = (product: number): string => `made ${product}`;
export const readied = (product: number): string => `readied ${product}`;
export const batches = (product: number, pot: number): string => `batches ${product} pot ${pot}`;
/** Whole batches of a product that is made in whole batches only. */
export const wholeBatches = (product: number): string => `whole batches ${product}`;
export const trays = (product: number): string => `trays ${product}`;
export const freezeTrays = (product: number): string => `freeze-dryer trays ${product}`;
export const loads = (key: string, canner: number): string => `loads ${key} canner ${canner}`;
/** 1 where a canner's water is heated so far at all; decided only where the aim pays for it. */
export const heated = (canner: number, step: number): string => `heated canner ${canner} step ${step}`;

/** Names of the bounds that other files look for. */
const ONE_UNIT = 'one unit at least';
export const lotBound = (lot: number): string => `lot ${lot}`;
export const smallestBound = (product: number): string => `smallest ${product}`;
export const leastBound = (product: number | ''): string => `least ${product}`;
export const potBound = (pot: number): string => `pot ${pot}`;
/** A canner that is one of the pots has that pot's minutes for both. */
export const vesselBound = (pot: number): string => `vessel ${pot}`;
export const cannerBound = (canner: number): string => `canner ${canner}`;
/** The bounds that are minutes of the day. */
const MINUTE_BOUNDS = /^(hands|burners|pot \d+|canner \d+|vessel \d+)$/;
/** The program with a share of its minutes. */
export const minuteShare = (program: Program, share: number): Program => ({
  ...program,
  bounds: program.bounds.map((bound) =>
    MINUTE_BOUNDS.test(bound.name) && bound.max !== undefined ? { ...bound, max: bound.max * share } : bound,
  ),
});

type Term = readonly [string, number];

/** What must be promised: a must below the smallest batch is the smallest batch. */
export const mustOf = ({ least, smallest = 0 }: Activity): number => (least > 0 ? Math.max(least, smallest) : 0);

/**
 * Writes the day as a mixed integer linear program.
 *
 * Decided: how much of each lot goes into each product (continuous), and whole jars or packs promised, jars to
 * ready, batches in each pot, loads of each process in each canner, and trays. Jars are promised at the poor end of
 * the yields, while jars to ready, stock, pots, canners, trays and hours hold at the rich end.
 */
export function toProgram(activities: readonly Activity[], capacity: Capacity, aim: Aim): Program {
  const weights = weightsOf(aim);
  const wholes = new Map<string, boolean>();
  const bounds: Bound[] = [];
  const decide = (name: string, integer = true) => wholes.set(name, integer);
  const uses = new Map<string, Term[]>();
  const use = (resource: string, ...terms: Term[]) => uses.set(resource, [...(uses.get(resource) ?? []), ...terms]);
  const limit = (name: string, max: number) => {
    const terms = uses.get(name);
    if (terms !== undefined) bounds.push({ name, terms, max });
  };

  for (const activity of activities) {
    const { product, supplies, madeOf, least, smallest = 0, costPerUnit = 0, costPerTray = 0 } = activity;
    const amounts = supplies.map(({ lot }) => raw(lot, product));
    const scaled = (scale: (supply: Activity['supplies'][number]) => number): Term[] =>
      supplies.map((supply, index) => [amounts[index] ?? '', scale(supply)]);

    for (const amount of amounts) decide(amount, false);
    decide(promised(product));
    decide(readied(product));
    use('worth', [promised(product), activity.worth]);
    use('waste', ...scaled(() => 1));
    use('cost', ...scaled(({ costPerKg = 0 }) => costPerKg), [readied(product), costPerUnit]);
    bounds.push(
      {
        name: `promise ${product}`,
        terms: [[promised(product), -1], ...scaled(({ unitsPerKg }) => unitsPerKg.low)],
        min: 0,
        // fruit that no promise needs stays fresh, unless as much as can be is to be used
        ...(weights.waste > 0 && activity.unitsPerBatch === undefined ? {} : { max: 0 }),
      },
      {
        name: `ready ${product}`,
        terms: [[readied(product), 1], ...scaled(({ unitsPerKg }) => -unitsPerKg.high)],
        min: 0,
      },
      { name: leastBound(product), terms: [[promised(product), 1]], min: mustOf(activity) },
      { name: `most ${product}`, terms: [[readied(product), 1]], max: mostReadied(activity) },
      { name: `most promised ${product}`, terms: [[promised(product), 1]], max: activity.most },
    );
    if (activity.unitsPerBatch !== undefined) {
      decide(wholeBatches(product));
      const terms: Term[] = [
        [promised(product), 1],
        [wholeBatches(product), -activity.unitsPerBatch],
      ];
      bounds.push({ name: `whole batches ${product}`, terms, min: 0, max: 0 });
    }
    if (weights.waste > 0) {
      // a part-filled last unit, but nothing that fills not even one
      bounds.push({
        name: `part-filled ${product}`,
        terms: [[promised(product), 2], ...scaled(({ unitsPerKg }) => -unitsPerKg.low)],
        min: 0,
      });
    }

    if (smallest > 1 && least === 0) {
      const most = roomiest(activity, capacity);
      decide(made(product));
      bounds.push(
        {
          name: smallestBound(product),
          terms: [
            [promised(product), 1],
            [made(product), -smallest],
          ],
          min: 0,
        },
        {
          name: `made or not ${product}`,
          terms: [
            [promised(product), -1],
            [made(product), most],
          ],
          min: 0,
        },
        { name: `made once ${product}`, terms: [[made(product), 1]], max: 1 },
      );
    }

    if (madeOf === 'fruit') {
      for (const { lot } of supplies) use(lotBound(lot), [raw(lot, product), 1]);
    }
    for (const [stock, perUnit] of Object.entries(activity.stockPerUnit)) use(stock, [readied(product), perUnit]);
    use('hands', ...scaled(() => activity.handsPerKg), [readied(product), activity.handsPerUnit]);

    if (activity.cook !== undefined) {
      const { litresPerKg, batchLitres, minutes, stirred, costPerBatch = 0 } = activity.cook;
      // a whole batch needs a pot for itself, however large the pot
      const room = capacity.pots.map((litres, pot): Term => {
        const held = batchLitres === undefined ? litres : litres >= batchLitres ? 1 : 0;
        return [batches(product, pot), held];
      });
      const taken: Term[] = batchLitres === undefined ? scaled(() => -litresPerKg) : [[wholeBatches(product), -1]];
      for (const [name] of room) decide(name);
      bounds.push({ name: `pots ${product}`, terms: [...room, ...taken], min: 0 });
      capacity.pots.forEach((_, pot) => {
        use(potBound(pot), [batches(product, pot), minutes]);
        if (capacity.vessels?.includes(pot)) use(vesselBound(pot), [batches(product, pot), minutes]);
        use('burners', [batches(product, pot), minutes]);
        if (stirred) use('hands', [batches(product, pot), minutes]);
        use('cost', [batches(product, pot), costPerBatch]);
      });
    }
    if (activity.traysPerKg !== undefined) {
      decide(trays(product));
      bounds.push({
        name: `trays ${product}`,
        terms: [[trays(product), 1], ...scaled(() => -(activity.traysPerKg ?? 0))],
        min: 0,
      });
      use('trays', [trays(product), activity.trayDays ?? 1]);
      use('cost', [trays(product), costPerTray]);
    }
    if (activity.freezeDry !== undefined) {
      const { waterPerKg, traysPerKg } = activity.freezeDry;
      decide(freezeTrays(product));
      bounds.push({
        name: `freeze-dryer trays ${product}`,
        terms: [[freezeTrays(product), 1], ...scaled(() => -traysPerKg)],
        min: 0,
      });
      use('freeze-dryer trays', [freezeTrays(product), 1]);
      use('cost', [freezeTrays(product), costPerTray]);
      use('freeze-dryer ice', ...scaled(() => waterPerKg));
    }
  }

  for (const [key, group] of groupsOf(activities)) {
    const canners = cannersFor(group);
    for (const { canner, minutes, warmUp, costPerLoad = 0 } of canners) {
      decide(loads(key, canner));
      use(cannerBound(canner), [loads(key, canner), minutes]);
      const pot = capacity.vessels?.[canner];
      // its water is heated for each load, for it cooks between them
      if (pot !== undefined) use(vesselBound(pot), [loads(key, canner), minutes + warmUp]);
      use('burners', [loads(key, canner), minutes]);
      use('cost', [loads(key, canner), costPerLoad]);
    }
    bounds.push({
      name: `loads ${key}`,
      terms: [
        ...canners.map(({ canner, jars }): Term => [loads(key, canner), jars]),
        ...group.map((activity): Term => [readied(activity.product), -placesOf(activity, canners)]),
      ],
      min: 0,
    });
    bounds.push(...freshForEachLoad(key, group, capacity));
  }
  if (weights.cost > 0) {
    for (const { canner, step, cost, terms } of warmUpsOf(activities)) {
      const name = heated(canner, step);
      decide(name);
      use('cost', [name, cost]);
      // an hour or a load more than the day has, for what one more would give (see `limits`)
      const most = capacity.minutes + Math.max(60, ...terms.map(([, minutes]) => minutes));
      bounds.push({
        name: `heated before loads ${canner} step ${step}`,
        terms: [...terms.map(([load, minutes]): Term => [load, -minutes]), [name, most]],
        min: 0,
      });
    }
  }

  // Trimmings are counted on at the poor end of what the other products drop.
  capacity.lots.forEach((_, lot) => {
    const taken: Term[] = [];
    const dropped: Term[] = [];
    for (const { product, supplies, madeOf } of activities) {
      for (const supply of supplies) {
        if (supply.lot !== lot) continue;
        if (madeOf === 'trimmings') taken.push([raw(lot, product), -1]);
        else dropped.push([raw(lot, product), supply.trimmingsPerKg.low]);
      }
    }
    if (taken.length > 0) bounds.push({ name: `trimmings of lot ${lot}`, terms: [...taken, ...dropped], min: 0 });
  });

  for (const [lot, mass] of capacity.lots.entries()) limit(lotBound(lot), mass);
  for (const [name, amount] of Object.entries(capacity.stock)) limit(name, amount);
  limit('hands', capacity.hands * capacity.minutes);
  limit('burners', capacity.burners * capacity.minutes);
  for (let pot = 0; pot < capacity.pots.length; pot++) limit(potBound(pot), capacity.minutes);
  for (let pot = 0; pot < capacity.pots.length; pot++) limit(vesselBound(pot), capacity.minutes);
  for (let canner = 0; canner < capacity.canners; canner++) {
    limit(cannerBound(canner), Math.max(0, capacity.minutes - capacity.days * capacity.lead));
  }
  limit('trays', capacity.trays);
  if (capacity.freezeDryer !== undefined) {
    const { trays: each, iceKg, loads: runs } = capacity.freezeDryer;
    limit('freeze-dryer trays', each * runs);
    limit('freeze-dryer ice', iceKg * runs);
  }
  bounds.push(...roundingCuts(activities, capacity));
  const units = activities.map(({ product }): Term => [promised(product), 1]);
  if (aim === 'least cost') bounds.push({ name: ONE_UNIT, terms: units, min: 1 });

  const objective = new Map<string, number>();
  const count = (weight: number, terms: readonly Term[] = []) => {
    if (weight === 0) return;
    for (const [name, each] of terms) objective.set(name, (objective.get(name) ?? 0) + weight * each);
  };
  count(weights.worth, uses.get('worth'));
  count(weights.waste, uses.get('waste'));
  count(-weights.cost, uses.get('cost'));
  count(-weights.hours / 60, uses.get('hands'));
  return {
    variables: [...wholes].map(([name, integer]) => ({ name, worth: objective.get(name) ?? 0, integer })),
    bounds,
    ...(aim === 'least cost' ? { per: units } : {}),
  };
}

/**
 * Hot food is cooked for the load it goes into, never for two at a time: as many batches as loads (common practice).
 * Where raw packed jars may stand in the same loads, as many as the cooked jars alone would fill.
 */
function freshForEachLoad(key: string, group: readonly Activity[], { pots }: Capacity): Bound[] {
  const cooked = group.filter(({ cook }) => cook !== undefined);
  if (cooked.length === 0) return [];
  const canners = cannersFor(group);
  const all = cooked.length === group.length;
  const jars = all ? 1 : Math.max(0, ...canners.map((canner) => canner.jars));
  return [
    {
      name: `a batch for each load ${key}`,
      terms: [
        ...cooked.flatMap(({ product }) => pots.map((_, pot): Term => [batches(product, pot), jars])),
        ...(all
          ? canners.map(({ canner }): Term => [loads(key, canner), -1])
          : cooked.map(({ product }): Term => [readied(product), -1])),
      ],
      min: 0,
    },
  ];
}

/**
 * What it costs to heat the water of each canner once, where that is paid for, and for which loads, with their minutes:
 * a first step for all of them, and a further one for those that want hotter water, as hot packs do.
 */
function warmUpsOf(
  activities: readonly Activity[],
): { readonly canner: number; readonly step: number; readonly cost: number; readonly terms: readonly Term[] }[] {
  const heatings = [...groupsOf(activities)].flatMap(([key, [first]]) =>
    (first?.canning?.canners ?? []).map(({ canner, minutes, costToWarmUp = 0 }) => ({
      canner,
      cost: Math.round(costToWarmUp * 1e9) / 1e9, // the same water costs the same
      term: [loads(key, canner), minutes] as const,
    })),
  );
  return [...new Set(heatings.map(({ canner }) => canner))].flatMap((canner) => {
    const own = heatings.filter((each) => each.canner === canner);
    const costs = [...new Set([0, ...own.map(({ cost }) => cost)])].sort((one, other) => one - other);
    return costs.slice(1).map((cost, step) => ({
      canner,
      step,
      cost: cost - (costs[step] as number),
      terms: own.filter((each) => each.cost >= cost).map(({ term }) => term),
    }));
  });
}

/** The canners of a process, each with the most jars that any of its products may have in a load. */
export function cannersFor(group: readonly Activity[]): Canning['canners'] {
  const [first] = group;
  return (first?.canning?.canners ?? []).map((each, index) => ({
    ...each,
    jars: Math.max(...group.map(({ canning }) => canning?.canners[index]?.jars ?? 0)),
  }));
}

/** Places in a load that one jar takes: more than 1 where fewer of it than of others can be ready in time. */
const placesOf = ({ canning }: Activity, canners: Canning['canners']): number =>
  Math.max(1, ...canners.map(({ jars }, index) => jars / Math.max(1, canning?.canners[index]?.jars ?? jars)));

/** The products that may share canner loads, by their process. */
export function groupsOf(activities: readonly Activity[]): Map<string, Activity[]> {
  const groups = new Map<string, Activity[]>();
  for (const activity of activities) {
    if (activity.canning === undefined) continue;
    const { key } = activity.canning;
    groups.set(key, [...(groups.get(key) ?? []), activity]);
  }
  return groups;
}

/** Among equally good plans the one that uses the least fruit: what is left over is still fresh. */
export function leastFruit(program: Program): Map<string, number> {
  return new Map(program.variables.filter(({ integer }) => !integer).map(({ name }) => [name, -1]));
}

/** Rounding matters little, and the cuts are left out, where more units than this can be promised. */
const MOST_STEPS = 400;

/**
 * Rounding makes whole jars, trays and batches of every whole unit promised. The straight lines under these steps add
 * nothing that the program does not say already of whole numbers, but they tell the relaxation, so the search is short.
 */
function roundingCuts(activities: readonly Activity[], capacity: Capacity): Bound[] {
  return activities.flatMap((activity) => {
    const { product, supplies, cook, traysPerKg, freezeDry } = activity;
    const low = Math.max(...supplies.map(({ unitsPerKg }) => unitsPerKg.low));
    if (!(low > 0)) return [];
    const rich = Math.min(...supplies.map(({ unitsPerKg }) => unitsPerKg.high / unitsPerKg.low));
    const most = mostUnits(activity, capacity, rich);
    if (most > MOST_STEPS) return [];
    const kg = 1 / low;
    const under = (name: string, variables: readonly Term[], steps: number | ((units: number) => number)): Bound[] =>
      stepLines(typeof steps === 'number' ? (n) => Math.ceil(steps * n - 1e-6) : steps, most).map(
        ([slope, offset], index) => ({
          name: `rounded ${name} ${product} ${index}`,
          terms: [...variables, [promised(product), -slope]],
          min: offset,
        }),
      );
    const litres = Math.max(0, ...capacity.pots);
    const { canning } = activity;
    const alone =
      canning !== undefined && activities.filter((other) => other.canning?.key === canning.key).length === 1;
    const jars = Math.max(1, ...(canning?.canners ?? []).map((canner) => canner.jars));
    return [
      ...(alone
        ? under(
            'loads',
            canning.canners.map(({ canner }): Term => [loads(canning.key, canner), 1]),
            (n) => Math.ceil(Math.ceil(rich * n - 1e-6) / jars),
          )
        : []),
      ...under('ready', [[readied(product), 1]], rich),
      ...(traysPerKg === undefined ? [] : under('trays', [[trays(product), 1]], kg * traysPerKg)),
      ...(freezeDry === undefined
        ? []
        : under('freeze-dryer trays', [[freezeTrays(product), 1]], kg * freezeDry.traysPerKg)),
      ...(cook === undefined || litres === 0
        ? []
        : under(
            'batches',
            capacity.pots.map((_, pot): Term => [batches(product, pot), 1]),
            (kg * cook.litresPerKg) / litres,
          )),
    ];
  });
}

/** `most` holds for what is readied, at the rich end, except where the least to promise needs more ready than that. */
const mostReadied = ({ supplies, least, smallest = 0, most }: Activity): number =>
  Math.max(
    most,
    Math.ceil(
      Math.max(least, smallest) * Math.max(0, ...supplies.map(({ unitsPerKg }) => unitsPerKg.high / unitsPerKg.low)) -
        1e-6,
    ),
  );

/** Nothing to promise more than this of one product: its `most`, the lots and the stock. */
function mostUnits(activity: Activity, { lots, stock }: Capacity, rich: number): number {
  const { supplies, stockPerUnit } = activity;
  const fromLots = supplies.reduce((sum, { lot, unitsPerKg }) => sum + unitsPerKg.low * (lots[lot] ?? 0), 0);
  const fromStock = Object.entries(stockPerUnit).map(([name, perUnit]) => (stock[name] ?? Infinity) / perUnit / rich);
  return Math.floor(Math.min(activity.most, mostReadied(activity) / rich, fromLots, ...fromStock) + 1e-6);
}

/** The same in a kitchen with as much more of everything as `wideningsOf` asks about. */
const roomiest = (activity: Activity, { lots, stock, ...rest }: Capacity): number =>
  mostUnits(
    activity,
    {
      ...rest,
      lots: lots.map((kg) => kg + 1),
      stock: Object.fromEntries(Object.entries(stock).map(([name, amount]) => [name, amount + 12])),
    },
    Math.min(...activity.supplies.map(({ unitsPerKg }) => unitsPerKg.high / unitsPerKg.low)),
  );

/** The lines under the steps `ceil(perUnit * n)` for n from 0 to `most`: their lower convex hull, as [slope, offset]. */
export function stepLines(steps: (units: number) => number, most: number): [slope: number, offset: number][] {
  const corners: [number, number][] = [];
  for (let n = 0; n <= most; n++) {
    const point: [number, number] = [n, steps(n)];
    while (corners.length >= 2) {
      const [[x0, y0], [x1, y1]] = corners.slice(-2) as [[number, number], [number, number]];
      if ((y1 - y0) * (point[0] - x0) < (point[1] - y0) * (x1 - x0)) break;
      corners.pop();
    }
    corners.push(point);
  }
  return corners.slice(1).map(([x1, y1], index) => {
    const [x0, y0] = corners[index] as [number, number];
    const slope = (y1 - y0) / (x1 - x0);
    return [slope, y0 - slope * x0];
  });
}
