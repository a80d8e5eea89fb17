import loadsJson from '../../data/jars/canner-loads.json';
import cannersJson from '../../data/jars/canners.json';
import vacuumsJson from '../../data/jars/container-vacuums.json';
import headspaceJson from '../../data/jars/headspace.json';
import leastLoadsJson from '../../data/jars/least-loads.json';
import sealJson from '../../data/jars/seal-rules.json';
import vacuumFactsJson from '../../data/jars/vacuum-facts.json';
import type { Named } from '../common/names';
import { asTable, type Practice, type Sourced } from '../sources/table';

export interface HeadspaceRow extends Sourced {
  readonly productClass: string;
  readonly printed: string;
  readonly least_in: number;
  readonly most_in: number;
}
export interface CannerLoadRow extends Sourced {
  readonly canner: 'usual' | 'small' | 'large';
  readonly jar: string;
  readonly least: number;
  readonly most: number;
}
/** A kind of canner, by what one load holds. */
export interface CannerRow extends Practice, Named {
  readonly methods: readonly string[];
  readonly load: CannerLoadRow['canner'];
  readonly pressure: boolean;
}
export interface LeastLoadRow extends Sourced {
  readonly jar: string;
  readonly least: number;
}
export interface SealRuleRow extends Sourced {
  readonly rule: string;
  readonly text: string;
  readonly least?: number;
  readonly most?: number;
  readonly unit?: string;
}
export interface VacuumFactRow extends Sourced {
  readonly fact: string;
  readonly text: string;
  readonly value?: number;
  readonly unit?: string;
}
export interface ContainerVacuumRow extends Sourced {
  readonly container: string;
  readonly least: number;
  readonly most: number;
  readonly unit: 'inHg' | 'mmHg';
}

export const headspaceRows = asTable<HeadspaceRow>(headspaceJson).rows;
export const cannerRows = asTable<CannerRow>(cannersJson).rows;
export const loadRows = asTable<CannerLoadRow>(loadsJson).rows;
export const leastLoadRows = asTable<LeastLoadRow>(leastLoadsJson).rows;
export const sealRows = asTable<SealRuleRow>(sealJson).rows;
export const vacuumFactRows = asTable<VacuumFactRow>(vacuumFactsJson).rows;
export const containerVacuumRows = asTable<ContainerVacuumRow>(vacuumsJson).rows;
