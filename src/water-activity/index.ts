/**
 * Water activity: solutions and mixtures, isotherms, growth limits and the tables of pH and water activity.
 * @module
 */
export {
  type SolutionModel,
  type SolutionWaterActivity,
  type SolutionWaterActivityInput,
  solutionWaterActivity,
} from './solutionWaterActivity';
