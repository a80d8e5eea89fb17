import type { Activity, Capacity } from './activity';
import type { Bound, Program, Variable } from './solve';

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

/** Names of the bounds that a kitchen can widen; the others are arithmetic. */
export const RESOURCES = ['hands', 'burners', 'trays', 'freeze-dryer trays', 'freeze-dryer ice'] as const;
export const lotBound = (lot: number): string => `lot ${lot}`;
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
      decide(amount, aim === 'least waste' && madeOf === 'fruit' ? 1 : 0, false);
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
      { name: `least ${product}`, terms: [[promised(product), 1]], min: activity.least },
      { name: `most ${product}`, terms: [[readied(product), 1]], max: activity.most },
    );

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
