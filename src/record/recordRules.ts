import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { choice, count, fields, name, optional, readInput } from '../quantity/fields';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { dayOfYear, isoDate, monthsLater } from './date';
import { labelRuleRows, RECORD_TOPICS, recordRuleRows, ruleNamed } from './tables';

/** One rule of what a record, a code or a label holds. */
export interface RecordRule {
  readonly topic: string;
  readonly rule: string;
  readonly text: string;
  readonly figure?: number;
  readonly unit?: string;
  readonly basis: readonly Basis[];
}
export interface RecordRules {
  readonly rules: readonly RecordRule[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const topicSchema = /* @__PURE__ */ fields({
  /** `acidified food`, `filing`, `lot code`, `every record`, `hazard plan`, `batch record` or `label`;. */
  topic: optional(choice('what the rules are about', [...RECORD_TOPICS, 'label'])),
});
export type RecordRulesInput = z.input<typeof topicSchema>;

/**
 * What commercial rules want in a record, in a lot code and on a label: a pattern for a kitchen that sells, or for one
 * that wants to find its mistakes. Rules that are recalled say so in their basis.
 *
 * all when left out
 * @throws StillroomError UNKNOWN_NAME
 *
 * Source: 21 CFR 108.25, 113.60, 114.80, 114.100 and 121.305; NIST Handbook 133; each rule's basis.
 *
 * @example
 * ```ts
 * import { recordRules } from 'stillroom/record';
 *
 * recordRules({ topic: 'acidified food' }).rules.find(({ rule }) => rule === 'retention')?.figure; // => 3
 * ```
 */
export function recordRules(input: RecordRulesInput = {}): RecordRules {
  const { topic } = readInput(topicSchema, input);
  const rows = [...recordRuleRows, ...labelRuleRows.map((row) => ({ ...row, topic: 'label' as const }))];
  const rules = rows
    .filter((row) => topic === undefined || row.topic === topic)
    .map((row): RecordRule => {
      const { figure, unit } = row as { figure?: number; unit?: string };
      const measure = figure === undefined || unit === undefined ? {} : { figure, unit };
      return { topic: row.topic, rule: row.rule, text: row.text, ...measure, basis: [basisOf(row, row.rule)] };
    });
  const recalled = rules.some(({ basis }) => basis.some(({ kind }) => kind === 'recalled'));
  return answer({
    rules,
    basis: joinBasis(...rules.map(({ basis }) => basis)),
    cautions: [...(recalled ? [caution('recalled')] : []), caution('follow-local-guidance')],
  });
}

const keepSchema = /* @__PURE__ */ fields({ made: isoDate('the day of making') });
export type KeepRecordUntilInput = z.input<typeof keepSchema>;

/**
 * Until when the record of a batch is kept: 3 years from the day of making, as for acidified food that is sold.
 *
 * @throws StillroomError OUT_OF_RANGE for a day that is not in the calendar
 *
 * Source: 21 CFR 114.100(e).
 *
 * @example
 * ```ts
 * import { keepRecordUntil } from 'stillroom/record';
 *
 * keepRecordUntil({ made: '2024-02-29' }).until; // => '2027-02-28'
 * ```
 */
export function keepRecordUntil(input: KeepRecordUntilInput): {
  readonly until: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
} {
  const { made } = readInput(keepSchema, input);
  const row = ruleNamed(recordRuleRows, 'retention');
  return answer({
    until: monthsLater(made, 12 * (row.figure as number)),
    basis: [basisOf(row, 'years a record is kept')],
    cautions: [caution('follow-local-guidance')],
  });
}

const codeSchema = /* @__PURE__ */ fields({
  /** What was made; its letters and digits stand in the code. */
  product: name('what was made'),
  /** Day of making as ISO text. */
  date: isoDate('the day of making'),
  /** Number of the batch that day, 1 to 999. */
  batch: count('the number of the batch that day', 1, 999),
  /** Short name of the kitchen, put first. */
  place: optional(name('a short name of the kitchen')),
});
export type LotCodeInput = z.input<typeof codeSchema>;

/**
 * A lot code that tells kitchen, product, year, day of the year and batch: what was made under one code is one lot.
 *
 * @throws StillroomError OUT_OF_RANGE, MISSING
 *
 * Source: 21 CFR 113.60(c) (what a code tells); day of the year: common practice.
 *
 * @example
 * ```ts
 * import { lotCode } from 'stillroom/record';
 *
 * lotCode({ product: 'peach halves', date: '2026-08-14', batch: 1 }).code; // => 'PEACH-HALVES-2026-226-1'
 * ```
 */
export function lotCode(input: LotCodeInput): {
  readonly code: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
} {
  const { product, date, batch, place } = readInput(codeSchema, input);
  const { year, day } = dayOfYear(date);
  const letters = (text: string) =>
    text
      .toUpperCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '');
  const parts = [
    place === undefined ? '' : letters(place),
    letters(product),
    year,
    String(day).padStart(3, '0'),
    batch,
  ];
  const rules = recordRuleRows.filter(({ topic }) => topic === 'lot code');
  return answer({
    code: parts.filter((part) => part !== '').join('-'),
    basis: joinBasis(
      rules.map((row) => basisOf(row, row.rule)),
      [{ of: 'day of the year', kind: 'common-practice' }],
    ),
    cautions: [],
  });
}
