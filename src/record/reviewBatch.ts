import * as z from 'zod/mini';
import { answer } from '../common/answer';
import { within } from '../errors/StillroomError';
import { checkHeadspace } from '../jars/checkHeadspace';
import type { TestedProcess } from '../process/testedProcess';
import { fields, optional, readInput, time } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { TimeInput } from '../quantity/types';
import { type Basis, type Caution, measured } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { NotTested } from '../sources/no';
import { basisOf } from '../sources/table';
import { type BatchRecord, type BatchRecordInput, readRecord } from './batchRecord';
import { behind, ofEach } from './behind';
import { recordCaution } from './cautions';
import { type Evidence, type EvidenceStatus, evidenceFindings, evidenceFor } from './evidence';
import { type Finding, note, type RuleBroken, remedyMistake } from './findings';
import { likeTheRest, notRecorded, reviewEntries, reviewSeals, reviewStore } from './reviewKeeping';
import { reviewProcess } from './reviewProcess';
import { figureOf, RECORD_RULES, rowNamed } from './tables';
import { written } from './written';

const schema = /* @__PURE__ */ fields({
  record: z.unknown(),
  sinceProcessing: optional(time({ min: { value: 0, unit: 'h' } })),
});
export interface ReviewBatchInput {
  /** From `batchRecord`, or the same fields. */
  readonly record: BatchRecord | BatchRecordInput;
  /**
   * Time since the jars came out of the canner, or since the food was made, zero or more; without it every remedy is
   * listed with its time.
   */
  readonly sinceProcessing?: TimeInput | undefined;
}

/** What a review of a record says. */
export interface BatchReview {
  /**
   * `discard`: throw it out. `act`: you can still do something, see each finding. `cannot tell`: the record leaves out
   * what decides. `watch`: safe by the record, but not as it should be. `kept`: every rule was kept, and the record
   * shows all the evidence that its food needs where it is kept.
   */
  readonly verdict: 'kept' | 'watch' | 'cannot tell' | 'act' | 'discard';
  /** What the review found, with what to do; empty where every rule was kept. */
  readonly findings: readonly Finding[];
  /** What the record of such a batch must show, and whether it does. */
  readonly evidence: readonly Evidence[];
  /** The process that the record was compared with. */
  readonly process?: TestedProcess | NotTested;
  /** Fields that commercial rules ask for and this record leaves out. */
  readonly notRecorded: readonly {
    /** The field of the record. */
    readonly field: string;
    /** What it is for. */
    readonly text: string;
  }[];
  /** Where the rules and figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** Advice for jars that were processed right; with food in doubt it would say that boiling makes it safe. */
const FOR_RIGHT_JARS: ReadonlySet<string> = new Set(['boil-before-tasting']);

const acidRule = (id: string) => rowNamed(RECORD_RULES, id);

/** Readings of pH against the limit of acid food, and how they were made. */
function reviewPh({ pHReadings = [], process }: BatchRecord, hours: number | undefined): Finding[] {
  const limit = acidRule('equilibrium-ph');
  const meter = acidRule('ph-meter');
  const acidCanned = process?.method === 'boiling-water' || process?.method === 'atmospheric-steam';
  return pHReadings.flatMap(({ pH, by }, index): Finding[] => {
    const field = `pHReadings[${index}]`;
    if (acidCanned && pH > figureOf(limit, 'figure')) {
      const basis = [basisOf(limit, 'wanted', 'highest pH of acid food')];
      const broken: RuleBroken = {
        id: 'ph-too-high',
        kind: 'untested',
        field,
        found: `pH ${pH}`,
        wanted: `pH ${limit.figure} or lower`,
        basis,
      };
      return [remedyMistake(broken, hours)];
    }
    if (pH > figureOf(meter, 'figure') && by !== 'meter') {
      const basis = [basisOf(meter, 'wanted', 'pH that needs a meter')];
      const broken: RuleBroken = {
        id: 'ph-needs-meter',
        kind: 'missing',
        field,
        found: `pH ${pH} by ${by}`,
        wanted: 'a pH meter',
        basis,
      };
      return [note(broken, meter.text)];
    }
    return [];
  });
}

function reviewHeadspaces(record: BatchRecord, tested: TestedProcess): Finding[] {
  return (record.headspaces ?? []).flatMap((measured, index): Finding[] => {
    const checked = checkHeadspace({ measured, recipeHeadspace: tested.headspace });
    if (!checked.known || checked.verdict === 'right') return [];
    const broken: RuleBroken = {
      id: checked.verdict === 'too little' ? 'headspace-too-little' : 'headspace-too-much',
      kind: 'quality',
      field: `headspaces[${index}]`,
      found: written(measured, { step: 0.01 }),
      wanted: written(tested.headspace, { fraction: 8 }),
      basis: behind('wanted', tested.basis, checked.basis),
    };
    return [
      note(
        broken,
        checked.meaning,
        'Test the seal of this jar with care and use it first; if it did not seal, do not keep it on the shelf.',
      ),
    ];
  });
}

/** The review of the process, as evidence. */
function processState({ process }: BatchRecord, findings: readonly Finding[]): EvidenceStatus {
  if (process === undefined) return 'missing';
  if (findings.some(({ kind }) => kind === 'mistake' || kind === 'untested')) return 'broken';
  return findings.some(({ kind }) => kind === 'missing') ? 'missing' : 'held';
}

function verdictOf(findings: readonly Finding[]): BatchReview['verdict'] {
  const unsafe = findings.filter(({ kind }) => kind === 'mistake' || kind === 'untested');
  if (unsafe.some(({ remedies }) => remedies.length === 1 && remedies[0] === 'discard')) return 'discard';
  if (unsafe.length > 0 || findings.some(({ kind }) => kind === 'seal')) return 'act';
  if (findings.some(({ kind }) => kind === 'missing')) return 'cannot tell';
  return findings.length > 0 ? 'watch' : 'kept';
}

/**
 * Whether a batch kept the rules, by its record, and what to do where it did not.
 *
 * The process is compared with `testedProcess` for the same food, form, pack, jar, canner and elevation: minutes,
 * pressure (the lowest, unless the whole time was started again), venting, acid, sterilized jars, steam temperature. Then
 * pH, headspace, seals, storage and freezer temperature, mass in and out, and departures left open. If the process was
 * wrong, can the batch again within 2 h, refrigerate or freeze it within 24 h, and throw it out after that; throw out
 * food canned by no tested process after the first 2 h. Jars that did not seal in a right process have 24 h.
 *
 * `kept` needs evidence, by the way the food was put up, its kind and where it is kept. Jars on a shelf: a tested process
 * for this food, run as printed, and seals counted. Dried on a shelf: fruit at most 20 % moisture, vegetables 10 %
 * (or water activity 0.60); meat at most water activity 0.85, and heated as `jerky` says wherever it is kept. In oil: a
 * shelf only for a tested recipe with oil. Refrigerator: 41 degF or below and a use-by day within 7 days. Freezer: its
 * temperature. What the record leaves out is `cannot tell`; `evidence` names the field and what it must say.
 *
 * @returns `verdict`, `findings` (rule, field, found, wanted, remedies, next, timeLeft), `evidence` (line, status, field,
 *   wanted, next), `process`, `notRecorded`
 * @throws StillroomError as `batchRecord` and `testedProcess`, with the path inside `record`
 *
 * Source: University of Nebraska-Lincoln (2 h), Iowa State (24 h) and Kansas State (untested) extension; USDA guide to home
 * canning, guide 1 (seals); 21 CFR 114.3, 114.80 and 114.100; Georgia extension handbook (dried food); USDA FSIS (jerky);
 * Penn State extension (oil); Minnesota Rules 4626.0400 (refrigerator); the process tables named in the basis.
 *
 * @example
 * ```ts
 * import { reviewBatch } from 'stillroom/record';
 *
 * const record = {
 *   date: '2026-08-14',
 *   name: 'peach halves',
 *   lots: [{ food: 'peach', raw: '18 lb', ready: '14.5 lb' }],
 *   process: { food: 'peach', form: 'halves', pack: 'hot', jar: 'quart', method: 'boiling-water', elevation: '4200 ft', minutes: 25 },
 *   jarsFilled: 7,
 *   jarsSealed: 7,
 * } as const;
 * const { verdict, findings } = reviewBatch({ record, sinceProcessing: '14 h' });
 * verdict; // => 'act'
 * findings[0].wanted; // => 'at least 35 min'
 * findings[0].remedies; // => ['refrigerate', 'freeze']
 * findings[0].timeLeft; // => { value: 10, unit: 'h' }
 *
 * const dried = { date: '2026-08-14', name: 'dried peach', lots: [{ food: 'peach', raw: '5 lb' }], dryer: { time: '9 h' } } as const;
 * reviewBatch({ record: dried }).verdict; // => 'cannot tell'
 * reviewBatch({ record: dried }).evidence[0].field; // => 'dryer.endMoisture'
 * ```
 */
export function reviewBatch(input: ReviewBatchInput): BatchReview {
  const given = readInput(schema, input);
  const record = within('record', () => readRecord(given.record));
  const hours = given.sinceProcessing === undefined ? undefined : valueIn(given.sinceProcessing, 'h');
  const { broken, tested, cautions } = reviewProcess(record);
  const seals = reviewSeals(record, hours);
  const ofProcess = [
    ...broken.map((rule) =>
      rule.kind === 'missing'
        ? note(rule, 'Fill in the record; if nobody knows, treat the batch as processed wrong.')
        : remedyMistake(rule, hours),
    ),
    ...reviewPh(record, hours),
  ];
  const lines = evidenceFor(record, processState(record, ofProcess));
  const ofEvidence = evidenceFindings(lines, record, hours);
  const findings = [
    ...ofProcess,
    ...ofEvidence,
    ...(tested?.tested === true ? reviewHeadspaces(record, tested) : []),
    ...seals.findings.map((finding) => likeTheRest(finding, [...ofProcess, ...ofEvidence])),
    ...reviewStore(record),
    ...reviewEntries(record),
  ];
  const missing = notRecorded(record);
  const verdict = verdictOf(findings);
  const unsafe = verdict === 'act' || verdict === 'discard';
  const right = verdict === 'kept' || verdict === 'watch';
  return answer({
    verdict,
    findings,
    evidence: lines.map(({ line, status, field, wanted, next }) => ({ line, status, field, wanted, next })),
    ...(tested === undefined ? {} : { process: tested }),
    notRecorded: missing.map(({ field, text }) => ({ field, text })),
    basis: [
      ...behind('process', tested?.basis ?? []),
      ...ofEach('findings', findings),
      ...ofEach('evidence', lines),
      ...ofEach(
        'notRecorded',
        missing.map(({ basis }) => ({ basis: [basis] })),
      ),
      measured('verdict', 'what the record says'),
    ],
    cautions: [
      ...(unsafe ? [recordCaution('sealed-is-not-safe'), recordCaution('when-in-doubt')] : []),
      ...(verdict === 'cannot tell' ? [recordCaution('record-needs-more'), recordCaution('when-in-doubt')] : []),
      ...seals.cautions,
      ...(right ? cautions : cautions.filter(({ id }) => !FOR_RIGHT_JARS.has(id))),
      caution('follow-local-guidance'),
    ],
  });
}
