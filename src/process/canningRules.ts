import table from '../../data/process/canning-rules.json';
import { answer } from '../common/answer';
import { choice, fields, optional, readInput } from '../quantity/fields';
import type { Basis, Caution } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { usualCautions } from './cautions';

const TOPICS = ['pressure canner', 'boiling-water canner', 'atmospheric steam canner', 'jars', 'afterwards'] as const;
export type CanningTopic = (typeof TOPICS)[number];

interface RuleRow extends Sourced {
  readonly topic: CanningTopic;
  readonly rule: string;
  readonly text: string;
  readonly low?: number;
  readonly high?: number;
  readonly unit?: string;
  readonly minutes?: number;
  readonly older?: number;
}
const rules = asTable<RuleRow>(table).rows;

/** How a canner or jar is handled: a rule with its figures, where it has any. */
export interface CanningRule {
  readonly topic: CanningTopic;
  readonly rule: string;
  readonly text: string;
  readonly low?: number;
  readonly high?: number;
  readonly unit?: string;
  readonly basis: readonly Basis[];
}

/** The row of a rule; names come from our own code, and tests call each. */
export function ruleRow(rule: string): RuleRow {
  const found = rules.find((row) => row.rule === rule);
  if (found === undefined) throw new Error(`no rule ${rule}`);
  return found;
}
export const ruleBasis = (rule: string, what: string): Basis => basisOf(ruleRow(rule), what);
/** The figures of a rule that has them. */
export function ruleFigures(rule: string): { low: number; high: number; minutes: number } {
  const { low = Number.NaN, high = low, minutes = low } = ruleRow(rule);
  return { low, high, minutes };
}

const schema = /* @__PURE__ */ fields({ topic: optional(choice('what the rules are about', TOPICS)) });
export interface CanningRulesInput {
  readonly topic?: CanningTopic | undefined;
}
export interface CanningRules {
  readonly rules: readonly CanningRule[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The rules of running a canner and handling jars, as data: water, venting, timing, what to do when the pressure
 * drops, cool-down, waiting, sterilizing, steam canners, jar sizes.
 *
 * Source: USDA Complete Guide to Home Canning, guide 1; PB724; PNW 421; NCHFP on steam canners; each rule's basis.
 *
 * @param input.topic - `pressure canner`, `boiling-water canner`, `atmospheric steam canner`, `jars` or `afterwards`;
 * all when left out
 * @throws StillroomError UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { canningRules } from 'stillroom/process';
 *
 * const { rules } = canningRules({ topic: 'pressure canner' });
 * rules.find(({ rule }) => rule === 'vent')?.low; // => 10
 * ```
 */
export function canningRules(input: CanningRulesInput = {}): CanningRules {
  const { topic } = readInput(schema, input);
  const chosen = rules.filter((row) => topic === undefined || row.topic === topic);
  const listed = chosen.map(({ topic, rule, text, low, high, unit, ...row }) => ({
    topic,
    rule,
    text,
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
    ...(unit === undefined ? {} : { unit }),
    basis: [basisOf(row, rule)],
  }));
  return answer({ rules: listed, basis: listed.flatMap(({ basis }) => basis), cautions: usualCautions() });
}
