/**
 * The whole day: lots shared out among products within the kitchen, the hours and the tested processes.
 * @module
 */
export type { Activity, Canning, Capacity, Supply } from './activity';
export type {
  CannerLoad,
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
} from './dayPlan';
export type { Bound, Program, Variable } from './linearProgram';
export { planDay, planProgram } from './planDay';
export type { Make, PlanDayInput } from './planInput';
export type { Aim } from './program';
export { type Solved, solve as solveProgram } from './solve';
