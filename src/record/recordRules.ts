import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { choice, fields, optional, readInput } from '../quantity/fields';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { ofEach } from './behind';
import { isoDate, monthsLater } from './date';
import { figureOf, LABEL_RULES, RECORD_RULES, RECORD_TOPICS, rowNamed } from './tables';

const TOPICS = [...RECORD_TOPICS, 'label'] as const;
const schema = /* @__PURE__ */ fields({
  /**
   * `acidified food`, `filing`, `lot code`, `every record`, `hazard plan`, `batch record` or `label`; all of them if not
   * given.
   */
  topic: optional(choice('what the rules are about', TOPICS)),
  /** Day of making as ISO text, to learn until when to keep the record of that batch. */
  made: optional(isoDate('the day of making')),
});
export type RecordRulesInput = z.input<typeof schema>;

/** One rule of what a record, a code or a label holds. */
export interface RecordRule {
  /** What the rule is about. */
  readonly topic: (typeof TOPICS)[number];
  /** Its fixed name: `retention`, `code-day`. */
  readonly id: string;
  /** The rule in words. */
  readonly text: string;
  /** Its figure, where it has one, in `unit`. */
  readonly figure?: number;
  /** Unit of the figure: `year`, `pH`, `day`, `h` or `log`. */
  readonly unit?: string;
  /** Where the rule comes from. */
  readonly basis: readonly Basis[];
}
/** The rules, and until when to keep a record. */
export interface RecordRules {
  /** The rules of the topic. */
  readonly rules: readonly RecordRule[];
  /** With `made`: the day until which to keep the record, 3 years later, as ISO text. */
  readonly keepUntil?: string;
  /** Where the rules come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** The years that records of acidified food are kept. */
const retention = () => rowNamed(RECORD_RULES, 'retention');

/**
 * What commercial rules ask for in a record, in a lot code and on a label: a pattern for a kitchen that sells, or for
 * one that looks for its mistakes. Rules that are recalled say so in their basis. With `made`, until when to keep the
 * record: 3 years from the day of making, as for acidified food that is sold.
 *
 * @throws StillroomError UNKNOWN_NAME, OUT_OF_RANGE for a day that is not in the calendar
 *
 * Source: 21 CFR 108.25, 113.60, 114.80, 114.100 and 121.305; NIST Handbook 133; each rule's basis.
 *
 * @example
 * ```ts
 * import { recordRules } from 'stillroom/record';
 *
 * const { rules, keepUntil } = recordRules({ topic: 'acidified food', made: '2024-02-29' });
 * rules.find(({ id }) => id === 'retention')?.figure; // => 3
 * keepUntil; // => '2027-02-28'
 * ```
 */
export function recordRules(input: RecordRulesInput = {}): RecordRules {
  const { topic, made } = readInput(schema, input);
  const labels = LABEL_RULES.map(({ least_lb: _, below_lb: __, ...row }) => ({ ...row, topic: 'label' as const }));
  const rules = [...RECORD_RULES, ...labels]
    .filter((row) => topic === undefined || row.topic === topic)
    .map((row): RecordRule => {
      const { figure, unit } = row as { figure?: number; unit?: string };
      const measure = figure === undefined || unit === undefined ? {} : { figure, unit };
      return { topic: row.topic, id: row.id, text: row.text, ...measure, basis: [basisOf(row, 'text')] };
    });
  const recalled = rules.some(({ basis }) => basis.some(({ kind }) => kind === 'recalled'));
  const years = retention();
  return answer({
    rules,
    ...(made === undefined ? {} : { keepUntil: monthsLater(made, 12 * figureOf(years, 'figure')) }),
    basis: [
      ...(made === undefined ? [] : [basisOf(years, 'keepUntil', 'years that a record is kept')]),
      ...ofEach('rules', rules),
    ],
    cautions: [...(recalled ? [caution('recalled')] : []), caution('follow-local-guidance')],
  });
}
