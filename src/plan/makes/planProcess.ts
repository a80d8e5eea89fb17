import type { TestedProcess } from '../../process/testedProcess';
import type { OwnRecipe } from '../request/plannedProduct';

type Served =
  | 'food'
  | 'jar'
  | 'method'
  | 'minutes'
  | 'pressure'
  | 'headspace'
  | 'pack'
  | 'acid'
  | 'sterilizeJars'
  | 'basis'
  | 'cautions';

/** A process as a plan takes it: of these tables, or of the cook's own book. */
export type PlanProcess = Pick<TestedProcess, Served> &
  Partial<Pick<TestedProcess, 'form' | 'leastHeatUp'>> & { readonly own?: OwnRecipe };
