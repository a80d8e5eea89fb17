/** What a record shows besides its heat process: seals, the store, weights, deviations, and what it leaves out. */
import { frozenStorage } from '../freezing/frozenStorage';
import { checkSeal } from '../jars/checkSeal';
import { sealRows } from '../jars/tables';
import { toDecimalIn, valueIn } from '../quantity/scale';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import type { BatchRecord } from './batchRecord';
import { type Finding, note, type RuleBroken } from './findings';
import { recordRuleRows, ruleNamed } from './tables';
import { written } from './written';

/** Jars that did not seal, by the seal rules of the jars module. */
export function reviewSeals(
  { jars, process, keptIn }: BatchRecord,
  hours: number | undefined,
): { findings: Finding[]; cautions: readonly Caution[] } {
  const findings: Finding[] = [];
  if (jars === undefined || process === undefined) return { findings, cautions: [] };
  const cooled = sealRows.find(({ id }) => id === 'cool-first') as (typeof sealRows)[number];
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
  // a jar in the refrigerator or the freezer needs no seal
  if (sealed === undefined || sealed === filled || keptIn === 'refrigerator' || keptIn === 'freezer')
    return { findings, cautions: [] };
  const since = hours ?? (sealsTestedAfter === undefined ? (cooled.least as number) : valueIn(sealsTestedAfter, 'h'));
  const check = checkSeal({ sinceProcessing: { value: since, unit: 'h' }, buttonDown: false });
  const late = check.verdict === 'not sealed' && check.reprocessWithin === undefined;
  const again = sealRows.find(({ id }) => id === 'reprocess-within') as (typeof sealRows)[number];
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
export function reviewStore({ temperatures = [] }: BatchRecord): Finding[] {
  const hottest = sealRows.find(({ id }) => id === 'never-above') as (typeof sealRows)[number];
  return temperatures.flatMap(({ of, temperature }, index): Finding[] => {
    const place = { kind: 'quality' as const, field: `temperatures[${index}]`, found: written(temperature) };
    // a millionth of a degree for the conversion of units
    if (of === 'store' && valueIn(temperature, 'degF') > (hottest.most as number) + 1e-6) {
      const basis = [basisOf(hottest, 'storage temperature')];
      const wanted = `${hottest.most} degF or below`;
      return [note({ ...place, rule: 'store-too-warm', wanted, basis }, hottest.text)];
    }
    const frozen = of === 'freezer' ? frozenStorage({ temperature }) : undefined;
    if (frozen === undefined || frozen.known) return [];
    const { basis, reason, instead } = frozen;
    const advice = instead.map(({ text }) => text).join(' ');
    return [note({ ...place, rule: 'freezer-too-warm', wanted: '0 degF or below', basis }, reason.text, advice)];
  });
}

/** What is wrong with the record as a record. */
export function reviewEntries({ produce, added = [], made = [], deviations = [] }: BatchRecord): Finding[] {
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
      basis: [{ of: 'mass in and out', kind: 'equation' }],
    };
    findings.push(
      note(
        broken,
        'Weigh again, take the jars off the weight, or write down the syrup, brine, sugar or water that went in.',
      ),
    );
  }
  const departures = ruleNamed(recordRuleRows, 'departures');
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
  return findings;
}

/** The fields that commercial rules want and the record leaves out. */
export function notRecorded(record: BatchRecord): { field: string; text: string; basis: Basis }[] {
  return recordRuleRows.flatMap((row) => {
    if (row.field === undefined) return [];
    const value = row.field
      .split('.')
      .reduce<unknown>((inner, key) => (inner as Record<string, unknown> | undefined)?.[key], record);
    return value === undefined ? [{ field: row.field, text: row.text, basis: basisOf(row, `field ${row.field}`) }] : [];
  });
}

/** An unsealed jar of a wrong process can go no other way, and no longer, than the sealed ones beside it. */
export function likeTheRest(finding: Finding, ofProcess: readonly Finding[]): Finding {
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
