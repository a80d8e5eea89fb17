import { fail } from '../../errors/StillroomError';
import { readInput } from '../../quantity/fields';
import { makeDried } from '../makes/dried';
import { makeFreezeDried } from '../makes/freezeDried';
import { makeFrozen } from '../makes/frozen';
import { makeJam } from '../makes/jam';
import { makeJars } from '../makes/jars';
import { makeLeather } from '../makes/leather';
import { compositionOf, type Day, within as inProduct, isMaking, type Made, type Making } from '../makes/making';
import { nameOf } from '../makes/naming';
import { makePowder, makeSteeped } from '../makes/trimmings';
import { LIFT_A_JAR } from '../makes/work';
import type { Activity, Capacity } from '../request/activity';
import type { LeftOut } from '../request/dayPlan';
import { learnedOf } from '../request/learned';
import { readLots } from '../request/lots';
import { type Make, type PlanDayInput, type PlanRequest, planSchema, type Wanted } from '../request/planInput';
import type { Means } from '../schedule/job';
import { loadsThatFit } from '../schedule/loadsThatFit';
import { checkRequest } from './checkRequest';
import type { DayProgram } from './decisions';
import { capacityOf, meansOf } from './kitchen';
import { pricesIn, withPrices } from './prices';
import { toProgram } from './program';
import { withSpread } from './spread';
import { tellApart } from './tellApart';

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

/** A product that must be made and cannot be made here. */
export interface UnmetMust {
  readonly name: string;
  readonly least: number;
  readonly reason: string;
}

/** The day as asked, read and turned into a program. */
export interface Prepared {
  readonly request: PlanRequest;
  readonly day: Day;
  readonly makings: readonly Making[];
  readonly leftOut: readonly LeftOut[];
  /** Left out, though at least one was to be made: the day is impossible as asked. */
  readonly unmetMusts: readonly UnmetMust[];
  readonly capacity: Capacity;
  readonly means: Means;
  readonly program: DayProgram;
}

/** Ways to put a lot into a product that a plan can be found among in a few seconds. */
const MOST_PAIRS = 300;

/** Reads the request, makes each product ready for the program, and writes the program. */
export function prepare(input: PlanDayInput): Prepared {
  const request = readInput(planSchema, input);
  checkRequest(request);
  const known = readLots(request.lots, input.lots, request.kitchen);
  const { lots } = known;
  const day: Day = { request, ...known, learned: learnedOf(request.learned) };
  const trades = request.products.map(({ from }, product) => inProduct(product, () => compositionOf(from).food));
  const pairs = trades.reduce((sum, trade) => sum + lots.filter((lot) => lot.trade === trade).length, 0);
  if (pairs > MOST_PAIRS) {
    fail(
      'TOO_MUCH',
      'lots',
      pairs,
      `at most ${MOST_PAIRS} pairs of a lot and a product made of it: put lots of the same food together`,
    );
  }
  const names = tellApart(request.products, trades);
  const made = request.products.map((wanted, product): Made => {
    const trade = trades[product] as string;
    if (!lots.some((lot) => lot.trade === trade)) {
      return {
        name: nameOf(wanted, trade),
        reason: { code: 'no-lot', text: `you have no ${trade} in your lots` },
        instead: [{ text: 'add the lot, or leave the product out' }],
      };
    }
    return MAKERS[wanted.make](day, wanted, product, trade);
  });
  const named = made.map((each, product): Made => {
    const label = names[product] as string;
    return isMaking(each) ? { ...each, label } : { ...each, name: label };
  });
  const prices = pricesIn(request, lots);
  const priced = named.filter(isMaking).map((making) => ({
    ...making,
    activity: withPrices(withSpread(making.activity, lots), prices),
  }));
  const capacity = capacityOf(
    { lots, kitchen: request.kitchen },
    priced.map(({ activity }) => activity),
  );
  const means = meansOf(request.kitchen, capacity);
  const activities = loadsThatFit(
    priced.map(({ activity }) => activity),
    means,
    LIFT_A_JAR / 2,
  );
  const makings = priced.map((making, index) => ({ ...making, activity: activities[index] as Activity }));
  return {
    request,
    day,
    makings,
    leftOut: named.filter((each): each is LeftOut => !isMaking(each)),
    unmetMusts: named.flatMap((each, product) => {
      const least = request.products[product]?.least ?? 0;
      return isMaking(each) || least === 0 ? [] : [{ name: each.name, least, reason: each.reason.text }];
    }),
    capacity,
    means,
    program: toProgram(activities, capacity, request.aim ?? 'most worth'),
  };
}
