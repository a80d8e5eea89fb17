/**
 * Answers as charts: Vega-Lite specifications, an open standard, as plain JSON.
 * @module
 */
export { type AllocationChartInput, type AllocationRow, allocationChart } from './allocationChart';
export { type BoilingSolidsChartInput, type BoilingSolidsRow, boilingSolidsChart } from './boilingSolidsChart';
export { type CostChartInput, type CostRow, costChart } from './costChart';
export { type DryingCurveChartInput, type DryingCurveRow, dryingCurveChart } from './dryingCurveChart';
export { type IsothermChartInput, type IsothermRow, isothermChart } from './isothermChart';
export { type LearningChartInput, type LearningRow, learningChart } from './learningChart';
export { type ProcessTimeChartInput, type ProcessTimeRow, processTimeChart } from './processTimeChart';
export { type ChartLayer, type ChartSpec, OKABE_ITO } from './spec';
export { type ScheduledDay, type TimelineChartInput, type TimelineRow, timelineChart } from './timelineChart';
