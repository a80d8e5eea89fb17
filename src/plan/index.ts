/**
 * The whole day: lots shared out among products within the kitchen, the hours and the tested processes.
 * @module
 */

export type { Problem } from '../quantity/problems';
export type { BrokenRule } from './check/brokenRule';
export { checkSchedule, type ScheduleChecked } from './check/checkSchedule';
export { planDay } from './planDay';
export { planProblems } from './planProblems';
export type {
  DayCost,
  DayPlan,
  FeasibleDay,
  FinishedSoFar,
  InfeasibleDay,
  LeftFresh,
  LeftOut,
  Limit,
  MinutesUsed,
  MostPromised,
  NotMade,
  SetAside,
  ToReady,
  Work,
  YieldEnds,
  YieldKnown,
} from './request/dayPlan';
export type { DaySchedule, ScheduledTask, TaskKind, Use, Window } from './request/daySchedule';
export type { LotAmountInput } from './request/lots';
export type { Aim, AimWeights, AimWord } from './request/planFields';
export type { PlanDayInput } from './request/planInput';
export type {
  CannerLoad,
  CostKind,
  CostLine,
  HandsMinutes,
  Ingredient,
  JarWork,
  LotShare,
  PackWork,
  PlannedProduct,
  PotBatches,
  PotWork,
  ProductCost,
  TrayWork,
  Units,
} from './request/plannedProduct';
