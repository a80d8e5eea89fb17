/** The charts that the pages show, by the name of their image. */
import { readFileSync } from 'node:fs';
import {
  allocationChart,
  boilingSolidsChart,
  type ChartSpec,
  type DryingCurveChartInput,
  dryingCurveChart,
  isothermChart,
  learningChart,
  processTimeChart,
  timelineChart,
} from '../../src/charts/index';
import { type PlanDayInput, planDay } from '../../src/plan/index';
import { readyFromRaw } from '../../src/produce/index';
import { learnFromRecords } from '../../src/record/index';

/** A chart, where the tables hold a process for it. */
function tested(spec: ReturnType<typeof processTimeChart>): ChartSpec {
  if ('data' in spec) return spec;
  throw new Error(spec.reason.text);
}

const request = JSON.parse(readFileSync(new URL('../../examples/day.json', import.meta.url), 'utf8')) as PlanDayInput;

/** Six invented batches of peach halves, ready over raw. */
function learnedYield(): ChartSpec {
  const observed = [0.73, 0.75, 0.72, 0.74, 0.71, 0.73];
  const printed = readyFromRaw({ food: 'peaches', form: 'halves', raw: '1 kg' });
  if (!printed.known) throw new Error(printed.reason.text);
  const prior = printed.yield;
  const learned = (own: number[]) => learnFromRecords({ prior, observed: own, varies: 'share' }).figure;
  return learningChart({
    what: 'Yield of peach halves',
    before: learned([]),
    after: learned(observed),
    observed,
    invented: true,
  });
}

/** One invented tray of apple slices, as the pages and the example follow it. */
export const appleTray: DryingCurveChartInput = {
  weighings: [
    { time: '0 h', mass: '1000 g' },
    { time: '1 h', mass: '835 g' },
    { time: '2 h', mass: '695 g' },
    { time: '3 h', mass: '560 g' },
    { time: '4 h', mass: '470 g' },
    { time: '5 h', mass: '380 g' },
  ],
  stopWeight: '165 g',
  targetMoisture: '16 %',
};

export const pageCharts = (): Readonly<Record<string, ChartSpec>> => ({
  timeline: timelineChart({ plan: planDay(request) }),
  allocation: allocationChart({ plan: planDay(request) }),
  'learned-yield': learnedYield(),
  'process-time': tested(
    processTimeChart({ food: 'peaches', form: 'halves', pack: 'hot', jar: 'quart', elevation: '3400 ft' }),
  ),
  'gauge-pressure': tested(processTimeChart({ food: 'green beans', pack: 'raw', jar: 'pint', method: 'dial-gauge' })),
  'boiling-solids': boilingSolidsChart({ elevation: '3400 ft', brix: 65 }),
  'drying-curve': dryingCurveChart(appleTray),
  isotherm: isothermChart({
    food: 'kiwifruit',
    temperature: '30 degC',
    batch: { moisture: '6 %', name: 'freeze-dried kiwifruit' },
  }),
  'fruit-water-activity': isothermChart({ food: 'apple', batch: { moisture: '20 %', name: 'apple slices' } }),
});
