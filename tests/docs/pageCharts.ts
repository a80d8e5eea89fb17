/** The charts that the pages show, by the name of their image. */
import {
  boilingSolidsChart,
  type ChartSpec,
  type DryingCurveChartInput,
  dryingCurveChart,
  isothermChart,
  processTimeChart,
} from '../../src/charts/index';

/** A chart, where the tables hold a process for it. */
function tested(spec: ReturnType<typeof processTimeChart>): ChartSpec {
  if ('data' in spec) return spec;
  throw new Error(spec.reason);
}

/** One invented tray of apple slices, as the pages and the example follow it. */
export const appleTray: DryingCurveChartInput = {
  weighings: [
    { time: '0 h', weight: '1000 g' },
    { time: '1 h', weight: '835 g' },
    { time: '2 h', weight: '695 g' },
    { time: '3 h', weight: '560 g' },
    { time: '4 h', weight: '470 g' },
    { time: '5 h', weight: '380 g' },
  ],
  stopWeight: '165 g',
  targetMoisture: '16 %',
};

export const pageCharts = (): Readonly<Record<string, ChartSpec>> => ({
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
  'fruit-water-activity': isothermChart({ fruit: 'apple', batch: { moisture: '20 %', name: 'apple slices' } }),
});
