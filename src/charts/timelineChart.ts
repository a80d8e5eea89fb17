import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import type { DayPlan, FeasibleDay } from '../plan/index';
import type { DaySchedule, ScheduledTask } from '../plan/request/daySchedule';
import { withPlan } from '../plan/request/withPlan';
import { formatQuantity } from '../quantity/formatQuantity';
import { behindRows, type ChartSpec, chart, digits } from './spec';
import { axisOf, EPSILON, HOUR } from './timelineAxis';
import { barOf, lettersText, type TimelineRow } from './timelineBars';
import { lanesOf } from './timelineLanes';
import { layersOf } from './timelineLayers';

export type { TimelineRow };

/** What this chart reads of a feasible plan. */
export type ScheduledDay = Pick<FeasibleDay, 'feasible' | 'invented' | 'basis' | 'cautions'> & {
  /** What to do when. */
  readonly schedule: DaySchedule;
};

export interface TimelineChartInput {
  /** A feasible answer of `planDay`. */
  readonly plan: DayPlan | ScheduledDay;
}

const ROW_HEIGHT = 26;

function scheduledPlan(input: TimelineChartInput): ScheduledDay {
  const plan: unknown = (input as { plan?: unknown } | undefined | null)?.plan;
  if (plan === undefined) fail('MISSING', 'plan', plan, 'an answer of planDay');
  const { feasible, schedule } = (plan ?? {}) as Partial<ScheduledDay>;
  if (feasible === true && Array.isArray(schedule?.tasks)) return plan as ScheduledDay;
  fail('CONTRADICTION', 'plan', plan, 'a feasible answer of planDay, with its schedule');
}

/**
 * The order of work of a day: a row for each pair of hands, each pot and canner, and for what dries and freezes, with
 * a bar for each task in the color of its product.
 *
 * The hours run from the start. A break between two days is drawn short and shaded, and so is what goes on after the last hour of
 * work: an arrow says that it goes on past the chart. What goes on by itself is pale. A canner load of several products is
 * striped. Burners are left out.
 *
 * @returns a Vega-Lite spec
 * @throws StillroomError MISSING, CONTRADICTION where there is no feasible plan with a schedule
 *
 * @example
 * ```ts
 * import { timelineChart } from 'stillroom/charts';
 *
 * const task = { kind: 'prepare', what: 'peaches', forProducts: ['peach halves'], unattended: false } as const;
 * const schedule = {
 *   tasks: [{ ...task, startMinute: 0, endMinute: 90, uses: [{ resource: 'hands', used: 2 }] }],
 *   startClock: 480,
 *   windows: [{ day: 0, startMinute: 0, endMinute: 480 }],
 *   makespan: 90,
 *   lowerBound: 90,
 *   gap: 0,
 *   allDoneMinute: 90,
 * };
 * const chart = timelineChart({ plan: { feasible: true, invented: true, schedule, basis: [], cautions: [] } });
 * chart.data.values.map(({ resource, endHour }) => [resource, endHour]); // => [['hands 1', 1.5], ['hands 2', 1.5]]
 * ```
 */
export function timelineChart(input: TimelineChartInput): ChartSpec<TimelineRow> {
  return withPlan('plan', scheduledPlan(input), (plan) => {
    const { schedule } = plan;
    const axis = axisOf(schedule);
    const lanes = lanesOf(schedule.tasks);
    const products = [...new Set(schedule.tasks.flatMap((task) => task.forProducts))];
    const bars = lanes.flatMap((lane, row) => lane.tasks.map((task) => barOf(task, lane, row, axis, products)));
    const work = `Hands, pots and canners are done at ${hours(schedule.makespan)} h`;
    const bound =
      schedule.lowerBound <= 0
        ? ''
        : schedule.lowerBound < schedule.makespan - EPSILON
          ? `; no order of the same work ends before ${hours(schedule.lowerBound)} h`
          : '; no order of the same work ends sooner';
    const quiet = schedule.tasks.some(({ unattended }) => unattended);
    return answer(
      chart({
        title: 'The order of work',
        subtitle: [
          ...(plan.invented ? ['An invented example.'] : []),
          `${work}${bound}.`,
          ...(quiet
            ? [
                `Pale bars go on by themselves, those with an arrow past the chart; everything is done at ${hours(schedule.allDoneMinute)} h.`,
              ]
            : []),
          ...lettersText(bars),
        ],
        description: `${work}. ${schedule.tasks.slice(0, MOST_READ_OUT).map(taskText).join('; ')}${schedule.tasks.length > MOST_READ_OUT ? '; and more' : ''}.`,
        values: bars.flatMap(({ stripes }) => stripes),
        layer: layersOf(bars, lanes, axis, products),
        height: Math.max(lanes.length, 1) * ROW_HEIGHT,
        basis: [behindRows(undefined, plan.basis)],
        cautions: [plan.cautions],
      }),
    );
  });
}

/** Tasks that the chart's words read out. */
const MOST_READ_OUT = 100;
const hours = (minutes: number): string => digits(minutes / HOUR, 1);

function taskText({ kind, what, raw, units, startMinute: start, endMinute: end }: ScheduledTask): string {
  const amount = raw === undefined ? '' : ` ${formatQuantity(raw, { step: 0.1 })} of`;
  const count = units === undefined ? '' : `, ${units.count} x ${units.unit}`;
  return `${hours(start)} to ${hours(end)} h: ${kind}${amount} ${what}${count}`;
}
