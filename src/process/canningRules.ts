import * as z from 'zod/mini';
import table from '../../data/process/canning-rules.json';
import { PICKLE_RULES } from '../acid/tables';
import { answer } from '../common/answer';
import { choice, fields, optional, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { id, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { processCaution, usualCautions } from './cautions';
import { holdingRules } from './holdingSolutions';

const TOPICS = ['pressure canner', 'boiling-water canner', 'atmospheric steam canner', 'jars', 'afterwards'] as const;
const ASKED = [...TOPICS, 'pickles', 'holding cut fruit'] as const;
export type CanningTopic = (typeof ASKED)[number];

/** A rule of running a canner or handling jars. */
export const canningRuleRow = () =>
  z.strictObject({
    id: id(),
    /** `pressure canner`, `boiling-water canner`, `atmospheric steam canner`, `jars` or `afterwards`;. */
    topic: z.enum(TOPICS),
    text: text(),
    low: z.exactOptional(z.number()),
    high: z.exactOptional(z.number()),
    unit: z.exactOptional(text()),
    /** Holding time. */
    minutes: z.exactOptional(z.number()),
    /** Superseded figure. */
    older: z.exactOptional(z.number()),
    ...sourcedColumns(),
  });
type RuleRow = RowOf<typeof canningRuleRow>;
const rules = asTable<RuleRow>(table).rows;

/** How a canner or jar is handled: a rule with its figures, where it has any. */
export interface CanningRule {
  /** What it is about. */
  readonly topic: CanningTopic;
  /** Its fixed name: `vent`, `wait-before-opening`. */
  readonly id: string;
  /** What to do; of `pickles` what the figure is about, of `holding cut fruit` what is dissolved. */
  readonly text: string;
  /** The figure, or its low end, in `unit`. */
  readonly low?: number;
  /** The high end, in `unit`. */
  readonly high?: number;
  /** Unit of the figures; of `pickles`, with what they mean. */
  readonly unit?: string;
  /** Of `holding cut fruit`: how much of it. */
  readonly amount?: Quantity<'mass'> | Quantity<'volume'>;
  /** Of `holding cut fruit`: how many tablets of it. */
  readonly tablets?: number;
  /** Of `holding cut fruit`: how much cold water it goes into. */
  readonly waterVolume?: Quantity<'volume'>;
  /** Of `holding cut fruit`: ascorbic acid in it, in g. */
  readonly ascorbicAcid?: Quantity<'mass'>;
  /** Where the rule comes from. */
  readonly basis: readonly Basis[];
}

/** The row of a rule; names come from our own code, and tests call each. */
export function ruleRow(rule: string): RuleRow {
  const found = rules.find((row) => row.id === rule);
  if (found === undefined) throw new Error(`no rule ${rule}`);
  return found;
}
export const ruleBasis = (rule: string, of: string, note?: string): Basis => basisOf(ruleRow(rule), of, note);
/** The figures of a rule that has them. */
export function ruleFigures(rule: string): { low: number; high: number; minutes: number } {
  const { low = Number.NaN, high = low, minutes = low } = ruleRow(rule);
  return { low, high, minutes };
}

const schema = /* @__PURE__ */ fields({
  /** What the rules are about; all where left out. */
  topic: optional(choice('what the rules are about', ASKED)),
});
export interface CanningRulesInput {
  /** What the rules are about; all where left out. */
  readonly topic?: CanningTopic | undefined;
}
export interface CanningRules {
  /** The rules, in the order of the table. */
  readonly rules: readonly CanningRule[];
  /** Where each rule comes from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** The rules of pickles, in the shape of the others. */
const pickleRules = () =>
  PICKLE_RULES.map(({ about, value, range, ...row }) => ({
    ...row,
    topic: 'pickles' as const,
    text: about,
    ...(value === undefined && range === undefined ? {} : { low: value ?? (range as [number, number])[0] }),
    ...(range === undefined ? {} : { high: range[1] }),
  }));

const FIGURES = ['low', 'high', 'unit', 'amount', 'tablets', 'waterVolume', 'ascorbicAcid'] as const;
type Figures = Pick<CanningRule, (typeof FIGURES)[number]>;
/** The figures that a row has. */
const figuresOf = (row: Figures): Figures =>
  Object.fromEntries(FIGURES.flatMap((key) => (row[key] === undefined ? [] : [[key, row[key]]])));

/**
 * The rules of running a canner and handling jars, as data: water, venting, timing, what to do when the pressure
 * drops, cool-down, waiting, sterilizing, steam canners, jar sizes; of pickles: vinegar strength, pH limits,
 * low-temperature pasteurization, blossom end, lime soak; and the solutions that keep cut apples, apricots, nectarines,
 * peaches and pears from darkening before they are packed. Those keep color only: none replaces the acid that a process
 * requires.
 *
 * Source: USDA Complete Guide to Home Canning, guide 1; PB724; PNW 421; NCHFP on steam canners; Michigan State
 * University record 01600943 on holding fruit; each rule's basis.
 *
 * @throws StillroomError UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { canningRules } from 'stillroom/process';
 *
 * const { rules } = canningRules({ topic: 'pressure canner' });
 * rules.find(({ id }) => id === 'vent')?.low; // => 10
 * canningRules({ topic: 'pickles' }).rules.find(({ id }) => id === 'vinegar-acidity')?.low; // => 5
 * canningRules({ topic: 'holding cut fruit' }).rules[0].waterVolume; // => { value: 1, unit: 'gallon' }
 * ```
 */
export function canningRules(input: CanningRulesInput = {}): CanningRules {
  const { topic } = readInput(schema, input);
  const chosen = [...rules, ...pickleRules(), ...holdingRules()].filter(
    (row) => topic === undefined || row.topic === topic,
  );
  const listed = chosen.map((row): CanningRule => {
    const { id, topic, text } = row;
    return { topic, id, text, ...figuresOf(row), basis: [basisOf(row, 'text')] };
  });
  const holds = chosen.some((row) => row.topic === 'holding cut fruit');
  return answer({
    rules: listed,
    basis: chosen.map((row) => basisOf(row, 'rules[].text', row.id)),
    cautions: [...(holds ? [processCaution('holding-is-not-acid')] : []), ...usualCautions()],
  });
}
