import * as z from 'zod/mini';
import { handOut } from '../common/handOut';
import { within } from '../errors/StillroomError';
import { frozenStorage } from '../freezing/frozenStorage';
import { checkHeadspace } from '../jars/checkHeadspace';
import { checkSeal } from '../jars/checkSeal';
import { sealRows } from '../jars/tables';
import type { TestedProcess } from '../process/testedProcess';
import { fields, optional, readInput, time } from '../quantity/fields';
import { toDecimalIn, valueIn } from '../quantity/scale';
import type { TimeInput } from '../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions, type Refusal } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { type BatchRecord, type BatchRecordInput, readRecord } from './batchRecord';
import { recordCaution } from './cautions';
import { type Finding, note, type RuleBroken, remedyMistake } from './findings';
import { reviewProcess } from './reviewProcess';
import { recordRuleRows, ruleNamed } from './tables';
import { written } from './written';

const schema = /* @__PURE__ */ fields({
  record: z.unknown(),
  sinceProcessing: optional(time({ min: { value: 0, unit: 'h' } })),
});
export interface ReviewBatchInput {
  readonly record: BatchRecord | BatchRecordInput;
  /** Time since the jars came out of the canner. */
  readonly sinceProcessing?: TimeInput | undefined;
}

export interface BatchReview {
  /**
   * `discard`: nothing else is left. `act`: something can still be done, see each finding. `cannot tell`: the record
   * leaves out what decides. `watch`: safe by the record, but not as it should be. `kept`: every rule checked was kept.
   */
  readonly verdict: 'kept' | 'watch' | 'cannot tell' | 'act' | 'discard';
  readonly findings: readonly Finding[];
  /** The process the record was held against. */
  readonly process?: TestedProcess | Refusal;
  /** Fields that commercial rules want in a record and this one leaves out. */
  readonly notRecorded: readonly { readonly field: string; readonly text: string }[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const acidRule = (rule: string) => ruleNamed(recordRuleRows, rule);

/** Readings of pH against the limit of acid food, and how they were made. */
function reviewPh({ ph = [], process }: BatchRecord, hours: number | undefined): Finding[] {
  const limit = acidRule('equilibrium-ph');
  const meter = acidRule('ph-meter');
  const acidCanned = process?.method === 'boiling-water' || process?.method === 'atmospheric-steam';
  return ph.flatMap((reading, index): Finding[] => {
    const field = `ph[${index}]`;
    if (acidCanned && reading.ph > (limit.figure as number)) {
      const basis = [basisOf(limit, 'highest pH of acid food')];
      const broken: RuleBroken = {
        rule: 'ph-too-high',
        kind: 'untested',
        field,
        found: `pH ${reading.ph}`,
        wanted: `pH ${limit.figure} or lower`,
        basis,
      };
      return [remedyMistake(broken, hours)];
    }
    if (reading.ph > (meter.figure as number) && reading.by !== 'meter') {
      const basis = [basisOf(meter, 'pH that needs a meter')];
      const broken: RuleBroken = {
        rule: 'ph-needs-meter',
        kind: 'missing',
        field,
        found: `pH ${reading.ph} by ${reading.by}`,
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
    const checked = checkHeadspace({ measured, printed: tested.headspace });
    if (checked.verdict === 'right') return [];
    const broken: RuleBroken = {
      rule: checked.verdict === 'too little' ? 'headspace-too-little' : 'headspace-too-much',
      kind: 'quality',
      field: `headspaces[${index}]`,
      found: written(measured, { step: 0.01 }),
      wanted: written(tested.headspace, { fraction: 8 }),
      basis: joinBasis(
        tested.basis.filter(({ what }) => what === 'headspace'),
        checked.basis,
      ),
    };
    return [
      note(
        broken,
        checked.meaning,
        'Test the seal of this jar with care and use it first; what has not sealed is not kept on the shelf.',
      ),
    ];
  });
}

/** Jars that did not seal, by the seal rules of the jars module. */
function reviewSeals(
  { jars, process, keptIn }: BatchRecord,
  hours: number | undefined,
): { findings: Finding[]; cautions: readonly Caution[] } {
  const findings: Finding[] = [];
  if (jars === undefined || process === undefined) return { findings, cautions: [] };
  const cooled = sealRows.find(({ rule }) => rule === 'cool-first') as (typeof sealRows)[number];
  const { filled, sealed, sealsTestedAfter } = jars;
  if (sealsTestedAfter !== undefined && valueIn(sealsTestedAfter, 'h') < (cooled.least as number)) {
    const found = written(sealsTestedAfter);
    const broken: RuleBroken = {
      rule: 'seals-tested-too-early',
      kind: 'missing',
      field: 'jars.sealsTestedAfter',
      found,
      wanted: `${cooled.least} to ${cooled.most} h`,
      basis: [basisOf(cooled, 'cooling before the tests')],
    };
    findings.push(note(broken, cooled.text));
  }
  if (sealed === undefined) {
    if (filled > 0 && keptIn !== 'refrigerator' && keptIn !== 'freezer') {
      const broken: RuleBroken = {
        rule: 'seals-not-recorded',
        kind: 'missing',
        field: 'jars.sealed',
        found: 'nothing',
        wanted: `how many of ${filled}`,
        basis: [basisOf(cooled, 'cooling before the tests')],
      };
      findings.push(note(broken, cooled.text));
    }
    return { findings, cautions: [] };
  }
  // a jar in the refrigerator or the freezer needs no seal
  if (sealed === filled || keptIn === 'refrigerator' || keptIn === 'freezer') return { findings, cautions: [] };
  const since = hours ?? (sealsTestedAfter === undefined ? (cooled.least as number) : valueIn(sealsTestedAfter, 'h'));
  const check = checkSeal({ sinceProcessing: { value: since, unit: 'h' }, buttonDown: false });
  const late = check.verdict === 'not sealed' && check.reprocessWithin === undefined;
  const again = sealRows.find(({ rule }) => rule === 'reprocess-within') as (typeof sealRows)[number];
  const left = (again.most as number) - (hours ?? 0);
  findings.push({
    rule: 'jars-not-sealed',
    kind: 'seal',
    field: 'jars.sealed',
    found: `${filled - sealed} of ${filled} jars not sealed`,
    wanted: 'every jar sealed',
    remedies: late
      ? ['discard']
      : ['reprocess', 'refrigerate', 'freeze', ...(hours === undefined ? ['discard' as const] : [])],
    next: check.next,
    ...(late ? {} : { within: { value: left, unit: 'h' } }),
    basis: check.basis,
  });
  return { findings, cautions: check.cautions };
}

/** Temperatures of the place where it is kept. */
function reviewStore({ temperatures = [] }: BatchRecord): Finding[] {
  const hottest = sealRows.find(({ rule }) => rule === 'never-above') as (typeof sealRows)[number];
  return temperatures.flatMap(({ of, temperature }, index): Finding[] => {
    const place = { kind: 'quality' as const, field: `temperatures[${index}]`, found: written(temperature) };
    // a millionth of a degree for the conversion of units
    if (of === 'store' && valueIn(temperature, 'degF') > (hottest.most as number) + 1e-6) {
      const basis = [basisOf(hottest, 'storage temperature')];
      const wanted = `${hottest.most} degF or below`;
      return [note({ ...place, rule: 'store-too-warm', wanted, basis }, hottest.text)];
    }
    const frozen = of === 'freezer' ? frozenStorage({ temperature }) : undefined;
    if (frozen === undefined || !('tested' in frozen)) return [];
    const { basis, reason, instead } = frozen;
    return [note({ ...place, rule: 'freezer-too-warm', wanted: '0 degF or below', basis }, reason, instead)];
  });
}

/** What is wrong with the record as a record. */
function reviewEntries({
  produce,
  added = [],
  made = [],
  deviations = [],
  process,
  jars,
  keptIn,
}: BatchRecord): Finding[] {
  const findings: Finding[] = [];
  const total = (masses: readonly { value: number; unit: string }[]) =>
    masses
      .map((mass) => toDecimalIn(mass, 'g'))
      .reduce((sum, mass) => sum.plus(mass), toDecimalIn({ value: 0, unit: 'g' }, 'g'));
  const into = total([...produce.map(({ raw }) => raw), ...added.map(({ mass }) => mass)]);
  const out = total(made.map(({ mass }) => mass));
  if (out.gt(into)) {
    const kilograms = (grams: typeof out) => written({ value: grams.toNumber(), unit: 'g' }, { unit: 'kg' });
    const broken: RuleBroken = {
      rule: 'more-out-than-in',
      kind: 'entry',
      field: 'made',
      found: `${kilograms(out)} out of ${kilograms(into)}`,
      wanted: 'no more out than in',
      basis: [{ what: 'mass in and out', kind: 'equation' }],
    };
    findings.push(
      note(
        broken,
        'Weigh again, take the jars off the weight, or write down the syrup, brine, sugar or water that went in.',
      ),
    );
  }
  const departures = acidRule('departures');
  deviations.forEach(({ what, action, disposition }, index) => {
    if (action !== undefined && disposition !== undefined) return;
    const broken: RuleBroken = {
      rule: 'deviation-left-open',
      kind: 'missing',
      field: `deviations[${index}]`,
      found: what,
      wanted: 'what was done, and where the food went',
      basis: [basisOf(departures, 'departures from the process')],
    };
    findings.push(note(broken, departures.text));
  });
  if (process === undefined && (jars?.filled ?? 0) > 0 && keptIn !== 'freezer' && keptIn !== 'refrigerator') {
    const broken: RuleBroken = {
      rule: 'process-not-recorded',
      kind: 'missing',
      field: 'process',
      found: 'nothing',
      wanted: 'the process, or keptIn: freezer or refrigerator',
      basis: [{ what: 'jars kept on a shelf are processed', kind: 'common-practice' }],
    };
    findings.push(note(broken, 'Jars that were not processed belong in the refrigerator or the freezer.'));
  }
  return findings;
}

/** The fields that commercial rules want and the record leaves out. */
function notRecorded(record: BatchRecord): { field: string; text: string; basis: Basis }[] {
  return recordRuleRows.flatMap((row) => {
    if (row.field === undefined) return [];
    const value = row.field
      .split('.')
      .reduce<unknown>((inner, key) => (inner as Record<string, unknown> | undefined)?.[key], record);
    return value === undefined ? [{ field: row.field, text: row.text, basis: basisOf(row, `field ${row.field}`) }] : [];
  });
}

/** An unsealed jar of a wrong process can go no other way, and no longer, than the sealed ones beside it. */
function likeTheRest(finding: Finding, ofProcess: readonly Finding[]): Finding {
  const wrong = ofProcess.filter(({ kind }) => kind === 'mistake' || kind === 'untested');
  if (finding.kind !== 'seal' || wrong.length === 0) return finding;
  const remedies = finding.remedies.filter((remedy) => wrong.every((other) => other.remedies.includes(remedy)));
  const hours = [finding, ...wrong].map(({ within: left }) => (left === undefined ? 0 : valueIn(left, 'h')));
  const least = Math.min(...hours);
  const { within: _, ...rest } = finding;
  return {
    ...rest,
    remedies: remedies.length === 0 ? ['discard'] : remedies,
    next: [...new Set(wrong.flatMap(({ next }) => next))],
    ...(least > 0 ? { within: { value: least, unit: 'h' as const } } : {}),
  };
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
 * The process is held against `testedProcess` for the same food, form, pack, jar, canner and elevation: minutes,
 * pressure (the lowest, unless the whole time was started again), venting, acid, sterilized jars, steam temperature. Then
 * pH, headspace, seals, storage and freezer temperature, weights in and out, and deviations left open. A batch whose
 * process was wrong is canned again within 2 h, refrigerated or frozen within 24 h, and thrown out after that; food
 * canned by no tested process is thrown out after the first 2 h. Jars that did not seal in a right process have 24 h.
 * The review clears nothing that the record leaves out: such a batch is `cannot tell`.
 *
 * @param input.record - from `batchRecord` or `parseRecord`
 * @param input.sinceProcessing - time since the jars came out; without it every remedy is listed with its time
 * @returns `verdict`, `findings` (rule, field, found, wanted, remedies, next, within), `process`, `notRecorded`
 * @throws StillroomError as `batchRecord` and `testedProcess`, with the path inside `record`
 *
 * Source: University of Nebraska-Lincoln (2 h), Iowa State (24 h) and Kansas State (untested) extension; USDA guide to home
 * canning, guide 1 (seals); 21 CFR 114.80 and 114.100; the process tables named in the basis.
 *
 * @example
 * ```ts
 * import { reviewBatch } from 'stillroom/record';
 *
 * const record = {
 *   lot: 'PEACH-2026-226-1',
 *   date: '2026-08-14',
 *   product: 'peach halves',
 *   produce: [{ produce: 'peach', raw: '18 lb', ready: '14.5 lb' }],
 *   process: { food: 'peach', form: 'halves', pack: 'hot', jar: 'quart', method: 'boiling-water', elevation: '4200 ft', minutes: 25 },
 *   jars: { filled: 7, sealed: 7 },
 * } as const;
 * const { verdict, findings } = reviewBatch({ record, sinceProcessing: '14 h' });
 * verdict; // => 'act'
 * findings[0].wanted; // => 'at least 35 min'
 * findings[0].remedies; // => ['refrigerate', 'freeze']
 * findings[0].within; // => { value: 10, unit: 'h' }
 * ```
 */
export function reviewBatch(input: ReviewBatchInput): BatchReview {
  const given = readInput(schema, input);
  const record = within('record', () => readRecord(given.record));
  const hours = given.sinceProcessing === undefined ? undefined : valueIn(given.sinceProcessing, 'h');
  const { broken, tested, basis, cautions } = reviewProcess(record);
  const seals = reviewSeals(record, hours);
  const ofProcess = [
    ...broken.map((rule) =>
      rule.kind === 'missing'
        ? note(rule, 'Fill in the record; if nobody knows, treat the batch as wrongly processed.')
        : remedyMistake(rule, hours),
    ),
    ...reviewPh(record, hours),
  ];
  const findings = [
    ...ofProcess,
    ...(tested?.tested === true ? reviewHeadspaces(record, tested) : []),
    ...seals.findings.map((finding) => likeTheRest(finding, ofProcess)),
    ...reviewStore(record),
    ...reviewEntries(record),
  ];
  const missing = notRecorded(record);
  const verdict = verdictOf(findings);
  const unsafe = verdict === 'act' || verdict === 'discard';
  return handOut({
    verdict,
    findings,
    ...(tested === undefined ? {} : { process: tested }),
    notRecorded: missing.map(({ field, text }) => ({ field, text })),
    basis: joinBasis(
      basis,
      findings.flatMap((finding) => finding.basis),
      missing.map(({ basis }) => basis),
      [{ what: 'the record', kind: 'measured' }],
    ),
    cautions: joinCautions(
      unsafe ? [recordCaution('sealed-is-not-safe'), recordCaution('when-in-doubt')] : [],
      verdict === 'cannot tell' ? [recordCaution('record-needs-more'), recordCaution('when-in-doubt')] : [],
      seals.cautions,
      cautions,
      [caution('follow-local-guidance')],
    ),
  });
}
