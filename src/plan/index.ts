/**
 * The whole day: lots shared out among products within the kitchen, the hours and the tested processes.
 * @module
 */

export { planDay } from './planDay';
export type { Aim } from './program/program';
export type {
  CannerLoad,
  CostKind,
  DayCost,
  DayPlan,
  FeasibleDay,
  HandsMinutes,
  InfeasibleDay,
  Ingredient,
  JarWork,
  LeftOut,
  Limit,
  LotShare,
  NotMade,
  PackWork,
  PlannedProduct,
  PotWork,
  ProductCost,
  ToReady,
  TrayWork,
  Units,
  Work,
  YieldKnown,
} from './request/dayPlan';
export type { DaySchedule, ScheduledTask, TaskKind, Use, Window } from './request/daySchedule';
export type { AimWeights, AimWord, Make, PlanDayInput } from './request/planInput';
export type { BrokenRule } from './schedule/brokenRule';
export { checkSchedule, type ScheduleChecked } from './schedule/checkSchedule';
