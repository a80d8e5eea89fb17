import type { Activity, Capacity } from './activity';
import type { Bound, Program, Variable } from './linearProgram';

/** What the plan is to make the most of. */
export type Aim = 'most worth' | 'least waste' | 'fewest hours';

/** Names of the program's variables. */
export const raw = (lot: number, product: number): string => `kg of lot ${lot} in product ${product}`;
export const promised = (product: number): string => `promised ${product}`;
export const readied = (product: number): string => `readied ${product}`;
export const batches = (product: number, pot: number): string => `batches ${product} pot ${pot}`;
export const trays = (product: number): string => `trays ${product}`;
export const freezeTrays = (product: number): string => `freeze-dryer trays ${product}`;
export const loads = (key: string, canner: number): string => `loads ${key} canner ${canner}`;

/** Names of the bounds that other files look for. */
export const lotBound = (lot: number): string => `lot ${lot}`;
export const leastBound = (product: number | ''): string => `least ${product}`;
export const potBound = (pot: number): string => `pot ${pot}`;
export const cannerBound = (canner: number): string => `canner ${canner}`;

type Term = readonly [string, number];

/**
 * Writes the day as a mixed integer linear program.
 *
 * Decided: how much of each lot goes into each product (continuous), and whole jars or packs promised, jars to
 * ready, batches in each pot, loads of each process in each canner, and trays. Jars are promised at the poor end of
 * the yields, while jars to ready, stock, pots, canners, trays and hours hold at the rich end.
 */
export function toProgram(activities: readonly Activity[], capacity: Capacity, aim: Aim): Program {
  const variables: Variable[] = [];
  const bounds: Bound[] = [];
  const decide = (name: string, worth = 0, integer = true) => variables.push({ name, worth, integer });
  const uses = new Map<string, Term[]>();
  const use = (resource: string, ...terms: Term[]) => uses.set(resource, [...(uses.get(resource) ?? []), ...terms]);
  const limit = (name: string, max: number) => {
    const terms = uses.get(name);
    if (terms !== undefined) bounds.push({ name, terms, max });
  };

  for (const activity of activities) {
    const { product, supplies, madeOf } = activity;
    const amounts = supplies.map(({ lot }) => raw(lot, product));
    const scaled = (scale: (supply: Activity['supplies'][number]) => number): Term[] =>
      supplies.map((supply, index) => [amounts[index] ?? '', scale(supply)]);

    for (const amount of amounts) {
      decide(amount, aim === 'least waste' ? 1 : 0, false);
    }
    decide(promised(product), aim === 'most worth' ? activity.worth : 0);
    decide(readied(product));
    bounds.push(
      {
        name: `promise ${product}`,
        terms: [[promised(product), -1], ...scaled(({ unitsPerKg }) => unitsPerKg.low)],
        min: 0,
        // fruit that no promise needs stays fresh, unless as much as can be is to be used
        ...(aim === 'least waste' ? {} : { max: 0 }),
      },
      {
        name: `ready ${product}`,
        terms: [[readied(product), 1], ...scaled(({ unitsPerKg }) => -unitsPerKg.high)],
        min: 0,
      },
      { name: leastBound(product), terms: [[promised(product), 1]], min: activity.least },
      { name: `most ${product}`, terms: [[readied(product), 1]], max: mostReadied(activity) },
      { name: `most promised ${product}`, terms: [[promised(product), 1]], max: activity.most },
    );
    if (aim === 'least waste') {
      // a part-filled last unit, but nothing that fills not even one
      bounds.push({
        name: `part-filled ${product}`,
        terms: [[promised(product), 2], ...scaled(({ unitsPerKg }) => -unitsPerKg.low)],
        min: 0,
      });
    }

    if (madeOf === 'fruit') {
      for (const { lot } of supplies) use(lotBound(lot), [raw(lot, product), 1]);
    }
    for (const [stock, perUnit] of Object.entries(activity.stockPerUnit)) use(stock, [readied(product), perUnit]);
    use('hands', ...scaled(() => activity.handsPerKg), [readied(product), activity.handsPerUnit]);

    if (activity.cook !== undefined) {
      const { litresPerKg, minutes } = activity.cook;
      const room = capacity.pots.map((litres, pot): Term => [batches(product, pot), litres]);
      for (const [name] of room) decide(name);
      bounds.push({ name: `pots ${product}`, terms: [...room, ...scaled(() => -litresPerKg)], min: 0 });
      capacity.pots.forEach((_, pot) => {
        use(potBound(pot), [batches(product, pot), minutes]);
        use('burners', [batches(product, pot), minutes]);
      });
    }
    if (activity.traysPerKg !== undefined) {
      decide(trays(product));
      bounds.push({
        name: `trays ${product}`,
        terms: [[trays(product), 1], ...scaled(() => -(activity.traysPerKg ?? 0))],
        min: 0,
      });
      use('trays', [trays(product), 1]);
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
      use('freeze-dryer ice', ...scaled(() => waterPerKg));
    }
  }

  for (const [key, group] of groupsOf(activities)) {
    const canners = group[0]?.canning?.canners ?? [];
    for (const { canner, minutes } of canners) {
      decide(loads(key, canner));
      use(cannerBound(canner), [loads(key, canner), minutes]);
      use('burners', [loads(key, canner), minutes]);
    }
    bounds.push({
      name: `loads ${key}`,
      terms: [
        ...canners.map(({ canner, jars }): Term => [loads(key, canner), jars]),
        ...group.map(({ product }): Term => [readied(product), -1]),
      ],
      min: 0,
    });
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
  for (let canner = 0; canner < capacity.canners; canner++) {
    limit(cannerBound(canner), Math.max(0, capacity.minutes - capacity.lead));
  }
  limit('trays', capacity.trays);
  if (capacity.freezeDryer !== undefined) {
    const { trays: each, iceKg, loads: runs } = capacity.freezeDryer;
    limit('freeze-dryer trays', each * runs);
    limit('freeze-dryer ice', iceKg * runs);
  }
  bounds.push(...roundingCuts(activities, capacity));
  return aim === 'fewest hours' ? preferFewHours(variables, bounds, uses.get('hands') ?? []) : { variables, bounds };
}

/** With `fewest hours` the musts are met with the least work of hands. */
function preferFewHours(variables: readonly Variable[], bounds: readonly Bound[], hands: readonly Term[]): Program {
  const minutes = new Map<string, number>();
  for (const [name, weight] of hands) minutes.set(name, (minutes.get(name) ?? 0) + weight);
  return {
    variables: variables.map((variable) => ({
      ...variable,
      worth: variable.worth - (minutes.get(variable.name) ?? 0),
    })),
    bounds,
  };
}

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
const mostReadied = ({ supplies, least, most }: Activity): number =>
  Math.max(
    most,
    Math.ceil(least * Math.max(0, ...supplies.map(({ unitsPerKg }) => unitsPerKg.high / unitsPerKg.low)) - 1e-6),
  );

/** Nothing to promise more than this of one product: its `most`, the lots and the stock. */
function mostUnits(activity: Activity, { lots, stock }: Capacity, rich: number): number {
  const { supplies, stockPerUnit } = activity;
  const fromLots = supplies.reduce((sum, { lot, unitsPerKg }) => sum + unitsPerKg.low * (lots[lot] ?? 0), 0);
  const fromStock = Object.entries(stockPerUnit).map(([name, perUnit]) => (stock[name] ?? Infinity) / perUnit / rich);
  return Math.floor(Math.min(activity.most, mostReadied(activity) / rich, fromLots, ...fromStock) + 1e-6);
}

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
