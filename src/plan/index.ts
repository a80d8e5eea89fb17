/**
 * The whole day: lots shared out among products within the kitchen, the hours and the tested processes.
 * @module
 */

export type { Activity, Canning, Capacity, Cook, Supply } from './activity';
export { type BrokenRule, checkSchedule, type ScheduleChecked } from './checkSchedule';
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
} from './dayPlan';
export type { DaySchedule, ScheduledTask, TaskKind, Use, Window } from './daySchedule';
export { type ApplianceEnergyInput, applianceEnergy } from './energy/applianceEnergy';
export { type BoilingEnergyInput, boilingEnergy } from './energy/boilingEnergy';
export { type BoilOffEnergyInput, boilOffEnergy } from './energy/boilOffEnergy';
export { type CanningEnergy, type CanningEnergyInput, canningEnergy } from './energy/canningEnergy';
export { type DryEnergy, type DryEnergyInput, dryEnergy } from './energy/dryEnergy';
export { type EnergyCost, type EnergyCostInput, energyCost } from './energy/energyCost';
export { type FreezeDryEnergyInput, freezeDryEnergy } from './energy/freezeDryEnergy';
export { type FreezeEnergyInput, type FreezingProperties, freezeEnergy } from './energy/freezeEnergy';
export { type HeatUpEnergyInput, heatUpEnergy } from './energy/heatUpEnergy';
export type { EnergyNeeded, HeatNeeded } from './energy/needed';
export type { Bound, Program, Variable } from './linearProgram';
export { planDay, planProgram } from './planDay';
export type { AimWeights, AimWord, Make, PlanDayInput } from './planInput';
export type { Aim } from './program';
export type { Solved } from './solve';
export { solveProgram } from './solveProgram';
