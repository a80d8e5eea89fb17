import type { Activity, Capacity } from '../request/activity';
import type { Aim, AimWeights, AimWord } from '../request/planFields';
import { type DayProgram, keyOf, promised, type Rule } from './decisions';
import { bound, type DayTerm, type Draft, emptyDraft, type Weights } from './draft';
import { canners, cannersHeld } from './resources/canners';
import { dryer, dryerHeld } from './resources/dryer';
import { freezeDryer, freezeDryerHeld } from './resources/freezeDryer';
import { hands, handsHeld, handsInTime } from './resources/hands';
import { lots, lotsHeld, trimmings } from './resources/lots';
import { burnersHeld, pots, potsHeld } from './resources/pots';
import { stock, stockHeld } from './resources/stock';
import { smallestBatch, units } from './resources/units';
import { roundingCuts } from './roundingCuts';

/**
 * What counts towards the objective: for each unit of worth and each kg used, and against it for each unit of money
 * and each hour of hands. With `least cost` that is then divided by what is promised.
 */
const WEIGHTS: Readonly<Record<AimWord, AimWeights>> = {
  'most worth': { worth: 1 },
  'least waste': { waste: 1 },
  'fewest hours': { handsHours: 60 }, // in minutes
  'least cost': { money: 1 },
};
export const weightsOf = (aim: Aim): Weights => {
  const { worth = 0, waste = 0, money = 0, handsHours = 0 } = typeof aim === 'string' ? WEIGHTS[aim] : aim;
  return { worth, waste, money, handsHours };
};

/** The bounds that are minutes of the day. */
const MINUTES: ReadonlySet<Rule['of']> = new Set([
  'hands',
  'hands in time',
  'burners',
  'pot',
  'all pots',
  'canner',
  'vessel',
]);
/** The program with a share of its minutes. */
export const minuteShare = (program: DayProgram, share: number): DayProgram => ({
  ...program,
  bounds: program.bounds.map((each) =>
    MINUTES.has(each.of.of) && each.max !== undefined ? { ...each, max: each.max * share } : each,
  ),
});

/** The largest share of its minutes that a plan takes of anything. */
export const fullest = (program: DayProgram, values: ReadonlyMap<string, number>): number =>
  Math.max(
    0,
    ...program.bounds.flatMap(({ of, max, terms }) =>
      MINUTES.has(of.of) && max !== undefined && max > 0
        ? [terms.reduce((sum, [name, weight]) => sum + weight * (values.get(name) ?? 0), 0) / max]
        : [],
    ),
  );

/**
 * Writes the day as a mixed integer linear program.
 *
 * Decided: how much of each lot goes into each product (continuous), and whole jars or packs promised, jars to
 * ready, batches in each pot, loads of each process in each canner, and trays. Jars are promised at the poor end of
 * the yields, while jars to ready, stock, pots, canners, trays and hours hold at the rich end.
 */
export function toProgram(activities: readonly Activity[], capacity: Capacity, aim: Aim): DayProgram {
  const draft = emptyDraft(activities, capacity, weightsOf(aim));
  for (const activity of activities) {
    units(draft, activity);
    smallestBatch(draft, activity);
    lots(draft, activity);
    stock(draft, activity);
    hands(draft, activity);
    pots(draft, activity);
    dryer(draft, activity);
    freezeDryer(draft, activity);
  }
  canners(draft);
  trimmings(draft);
  for (const held of [lotsHeld, stockHeld, handsHeld, burnersHeld, potsHeld, cannersHeld, dryerHeld, freezeDryerHeld])
    held(draft);
  handsInTime(draft);
  roundingCuts(draft);
  const each = activities.map(({ product }): DayTerm => [promised(product), 1]);
  if (aim === 'least cost') bound(draft, { of: 'one unit at least' }, each, { min: 1 });
  const worths = worthsOf(draft);
  return {
    variables: [...draft.variables.values()].map((variable) => ({
      ...variable,
      worth: worths.get(variable.name) ?? 0,
    })),
    bounds: draft.bounds,
    ...(aim === 'least cost' ? { per: each.map(([decision, weight]) => [keyOf(decision), weight] as const) } : {}),
  };
}

/** What each variable adds to the objective, by the weights of the aim. */
function worthsOf({ counts, uses, weights }: Draft): Map<string, number> {
  const worths = new Map<string, number>();
  const count = (weight: number, terms: readonly DayTerm[] = []) => {
    if (weight === 0) return;
    for (const [decision, each] of terms) {
      const name = keyOf(decision);
      worths.set(name, (worths.get(name) ?? 0) + weight * each);
    }
  };
  count(weights.worth, counts.worth);
  count(weights.waste, counts.waste);
  count(-weights.money, counts.cost);
  count(-weights.handsHours / 60, uses.get(keyOf({ of: 'hands' })));
  return worths;
}

/** Among equally good plans the one that uses the least fruit: what is left over is still fresh. */
export function leastFruit(program: DayProgram): Map<string, number> {
  return new Map(program.variables.filter(({ of }) => of.of === 'raw').map(({ name }) => [name, -1]));
}
