import type { FeasibleDay } from '../plan/request/dayPlan';
import type { AimWord } from '../plan/request/planFields';
import { table } from './markdown';

/** What one more of something adds, by the aim. */
const GAINS: ReadonlyMap<string, string> = new Map<AimWord, string>([
  ['most worth', 'worth'],
  ['least waste', 'kg of food'],
  ['fewest hours', 'minutes saved'],
  ['least cost', 'money saved on each jar or pack promised'],
]);

/** What one more of something would add, where the plan was asked for it. */
export function limitsBlock({ limits = [], limitsNotComputed = [], yields = [], aim }: FeasibleDay): string[] {
  const unit = (typeof aim === 'string' ? GAINS.get(aim) : undefined) ?? 'the aim by its weights';
  const places = aim === 'fewest hours' ? 0 : 2;
  const written = (gain: number | undefined, most = gain) =>
    gain === undefined || most === undefined
      ? ''
      : `${gain.toFixed(places)}${most > gain ? ` to ${most.toFixed(places)}` : ''}`;
  const shown = yields.filter(({ poor = 0, likely = 0, rich = 0 }) => Math.max(poor, likely, rich) >= WORTH_TELLING);
  return [
    ...(limits.length === 0
      ? []
      : [
          '## What limited the day',
          table(
            ['what', 'one more', `adds to the plan (${unit})`],
            limits.map(({ what, oneMore, gain, atMost }) => [what, oneMore, written(gain, atMost)]),
          ),
        ]),
    ...(limitsNotComputed.length === 0 ? [] : [`Not worked out, too large a search: ${limitsNotComputed.join(', ')}.`]),
    ...(shown.length === 0
      ? []
      : [
          `If you weigh a first batch before you get the jars ready, knowing the yield adds (${unit}):`,
          table(
            ['of', 'if it is poor', 'likely', 'rich'],
            shown.map(({ food, poor, likely, rich, atMost }) => [
              food,
              written(poor, atMost?.poor),
              written(likely, atMost?.likely),
              written(rich, atMost?.rich),
            ]),
          ),
        ]),
  ];
}

/** Gains below this are noise of rounding. */
const WORTH_TELLING = 0.005;
