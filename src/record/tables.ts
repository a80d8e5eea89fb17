import coolingJson from '../../data/record/cooling-limits.json';
import labelJson from '../../data/record/label-rules.json';
import mavJson from '../../data/record/maximum-allowable-variation.json';
import mistakesJson from '../../data/record/mistake-rules.json';
import recordRulesJson from '../../data/record/record-rules.json';
import tneJson from '../../data/record/tolerable-negative-error.json';
import vitaminJson from '../../data/record/vitamin-c-stored.json';
import { asTable, type Sourced } from '../sources/table';

export const RECORD_TOPICS = [
  'acidified food',
  'filing',
  'lot code',
  'every record',
  'hazard plan',
  'batch record',
] as const;
export type RecordTopic = (typeof RECORD_TOPICS)[number];

export interface RecordRuleRow extends Sourced {
  readonly topic: RecordTopic;
  readonly rule: string;
  readonly text: string;
  readonly figure?: number;
  readonly unit?: string;
  readonly field?: string;
}
export interface MistakeRow extends Sourced {
  readonly rule: string;
  readonly text: string;
  readonly hours?: number;
}
export interface MavRow extends Sourced {
  readonly over_g: number | null;
  readonly to_g: number;
  readonly over_lb: number | null;
  readonly to_lb: number;
  readonly mav_g: number | null;
  readonly mav_lb: number | null;
  readonly mav_oz: string | null;
  readonly mav_share?: number;
}
export interface TneRow extends Sourced {
  readonly over: number;
  readonly to: number | null;
  readonly tne_g: number | null;
  readonly tne_percent: number | null;
}
export interface LabelRuleRow extends Sourced {
  readonly rule: string;
  readonly text: string;
  readonly least_lb?: number;
  readonly below_lb?: number;
}
export interface CoolingRow extends Sourced {
  readonly rule: string;
  readonly from_degF: number | null;
  readonly to_degF: number;
  readonly max_hours: number;
}
export interface VitaminCRow extends Sourced {
  readonly place: string;
  readonly mean_degF: number;
  readonly retention_percent: number;
}

export const recordRuleRows = asTable<RecordRuleRow>(recordRulesJson).rows;
export const mistakeRows = asTable<MistakeRow>(mistakesJson).rows;
export const mavRows = asTable<MavRow>(mavJson).rows;
export const tneRows = asTable<TneRow>(tneJson).rows;
export const labelRuleRows = asTable<LabelRuleRow>(labelJson).rows;
export const coolingRows = asTable<CoolingRow>(coolingJson).rows;
export const vitaminCRows = asTable<VitaminCRow>(vitaminJson).rows;

/** The row of a rule; names come from our own code, and the tests ask for each. */
export function ruleNamed<Row extends { readonly rule: string }>(rows: readonly Row[], rule: string): Row {
  const found = rows.find((row) => row.rule === rule);
  if (found === undefined) throw new Error(`no rule ${rule}`);
  return found;
}
