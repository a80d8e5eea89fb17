/** Hands and hours that a recipe takes, from what each operation takes of a kitchen. */
import { parseQuantity } from '../../quantity/parseQuantity';
import { valueIn } from '../../quantity/scale';
import type { AnyPack } from '../../words/pack';
import type { RecipeRow, StepRow } from '../rows/tables';
import { ends, operationOf } from '../step';

/** Minutes, the practiced and the slow end. */
export interface Minutes {
  readonly low: number;
  readonly high: number;
}
/** What a batch takes. */
export interface Effort {
  /** Minutes of hands. */
  readonly hands: Minutes;
  /** Minutes on the clock until it stands in jars, on trays or in the freezer; standing, drying and fermenting apart. */
  readonly clock: Minutes;
  /** Minutes that it goes on by itself after that: dries, ferments, freezes, stands. */
  readonly alone: Minutes;
}

const NONE: Minutes = { low: 0, high: 0 };
const plus = (one: Minutes, other: Minutes): Minutes => ({ low: one.low + other.low, high: one.high + other.high });
const times = (each: Minutes | undefined, by: number): Minutes =>
  each === undefined ? NONE : { low: each.low * by, high: each.high * by };

/** The places where food goes on by itself while the cook does something else, or goes to bed. */
const BY_ITSELF = new Set(['dryer', 'freeze-dryer', 'freezer', 'refrigerator', 'crock', 'nothing']);

function minutesOf(step: StepRow, kg: number, units: number): Minutes {
  if (step.time !== undefined) {
    const [low, high] = ends(step.time);
    const span = { low: valueIn(parseQuantity(low, 'time'), 'min'), high: valueIn(parseQuantity(high, 'time'), 'min') };
    return times(span, step.times ?? 1);
  }
  const { minutes = NONE, minutesPerKg, minutesEach } = operationOf(step);
  return [times(minutesPerKg, kg), times(minutesEach, units)].reduce(plus, minutes);
}

/** What a recipe takes, by the kilograms of food and the jars, trays or bags they fill. */
export function effortOf({ steps }: RecipeRow, kg: number, units: number, packs: readonly AnyPack[] = ['hot']): Effort {
  // of two packs the hot one counts: it takes longer
  const pack = packs.includes('hot') ? 'hot' : 'raw';
  let [hands, clock, alone] = [NONE, NONE, NONE];
  for (const step of steps) {
    if (step.optional === true || (step.pack ?? pack) !== pack) continue;
    const { takes, attended } = operationOf(step);
    const minutes = minutesOf(step, kg, units);
    if (attended) hands = plus(hands, minutes);
    if (BY_ITSELF.has(takes)) alone = plus(alone, minutes);
    else clock = plus(clock, minutes);
  }
  return { hands, clock, alone };
}
