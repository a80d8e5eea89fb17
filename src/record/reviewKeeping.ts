/** What a record shows besides its heat process: seals, the store, masses, departures, and what it leaves out. */
import { frozenStorage } from '../freezing/frozenStorage';
import { checkSeal } from '../jars/checkSeal';
import { sealRows } from '../jars/tables';
import { exactIn, valueIn } from '../quantity/scale';
import { type Basis, type Caution, derived } from '../sources/basis';
import { basisOf } from '../sources/table';
import type { BatchRecord } from './batchRecord';
import { behind } from './behind';
import { type Finding, note, type RuleBroken } from './findings';
import { RECORD_RULES, rowNamed } from './tables';
import { written } from './written';

/** Jars that did not seal, by the seal rules of the jars module. */
export function reviewSeals(
  { jarsFilled, jarsSealed, sealsTestedAfter, process, keptIn }: BatchRecord,
  hours: number | undefined,
): { findings: Finding[]; cautions: readonly Caution[] } {
  const findings: Finding[] = [];
  if (jarsFilled === undefined || process === undefined) return { findings, cautions: [] };
  const cooled = sealRows.find(({ id }) => id === 'cool-first') as (typeof sealRows)[number];
  if (sealsTestedAfter !== undefined && valueIn(sealsTestedAfter, 'h') < (cooled.least as number)) {
    const found = written(sealsTestedAfter);
    const broken: RuleBroken = {
      id: 'seals-tested-too-early',
      kind: 'missing',
      field: 'sealsTestedAfter',
      found,
      wanted: `${cooled.least} to ${cooled.most} h`,
      basis: [basisOf(cooled, 'wanted', 'cooling before the tests')],
    };
    findings.push(note(broken, cooled.text));
  }
  // a jar in the refrigerator or the freezer needs no seal
  if (jarsSealed === undefined || jarsSealed === jarsFilled || keptIn === 'refrigerator' || keptIn === 'freezer')
    return { findings, cautions: [] };
  const since = hours ?? (sealsTestedAfter === undefined ? (cooled.least as number) : valueIn(sealsTestedAfter, 'h'));
  const check = checkSeal({ sinceProcessing: { value: since, unit: 'h' }, buttonDown: false });
  const late = check.verdict === 'not sealed' && check.reprocessWithin === undefined;
  const again = sealRows.find(({ id }) => id === 'reprocess-within') as (typeof sealRows)[number];
  const left = (again.most as number) - (hours ?? 0);
  findings.push({
    id: 'jars-not-sealed',
    kind: 'seal',
    field: 'jarsSealed',
    found: `${jarsFilled - jarsSealed} of ${jarsFilled} jars not sealed`,
    wanted: 'every jar sealed',
    remedies: late
      ? ['discard']
      : ['reprocess', 'refrigerate', 'freeze', ...(hours === undefined ? ['discard' as const] : [])],
    next: check.next,
    ...(late ? {} : { timeLeft: { value: left, unit: 'h' } }),
    basis: behind('next', check.basis),
  });
  return { findings, cautions: check.cautions };
}

/** Temperatures of the place where it is kept. */
export function reviewStore({ temperatures = [] }: BatchRecord): Finding[] {
  const hottest = sealRows.find(({ id }) => id === 'never-above') as (typeof sealRows)[number];
  return temperatures.flatMap(({ where, temperature }, index): Finding[] => {
    const place = { kind: 'quality' as const, field: `temperatures[${index}]`, found: written(temperature) };
    // a millionth of a degree for the conversion of units
    if (where === 'store' && valueIn(temperature, 'degF') > (hottest.most as number) + 1e-6) {
      const basis = [basisOf(hottest, 'wanted', 'storage temperature')];
      const wanted = `${hottest.most} degF or below`;
      return [note({ ...place, id: 'store-too-warm', wanted, basis }, hottest.text)];
    }
    const frozen = where === 'freezer' ? frozenStorage({ temperature }) : undefined;
    if (frozen === undefined || frozen.known) return [];
    const { basis, reason, instead } = frozen;
    const advice = instead.map(({ text }) => text).join(' ');
    return [
      note(
        { ...place, id: 'freezer-too-warm', wanted: '0 degF or below', basis: behind('wanted', basis) },
        reason.text,
        advice,
      ),
    ];
  });
}

/** What is wrong with the record as a record. */
export function reviewEntries({ lots, additions = [], output = [], departures = [] }: BatchRecord): Finding[] {
  const findings: Finding[] = [];
  const total = (masses: readonly { value: number; unit: string }[]) =>
    masses
      .map((mass) => exactIn(mass, 'g'))
      .reduce((sum, mass) => sum.plus(mass), exactIn({ value: 0, unit: 'g' }, 'g'));
  const into = total([...lots.map(({ raw }) => raw), ...additions.map(({ mass }) => mass)]);
  const out = total(output.map(({ mass }) => mass));
  if (out.gt(into)) {
    const kilograms = (grams: typeof out) => written({ value: grams.toNumber(), unit: 'g' }, { unit: 'kg' });
    const broken: RuleBroken = {
      id: 'more-out-than-in',
      kind: 'entry',
      field: 'output',
      found: `${kilograms(out)} out of ${kilograms(into)}`,
      wanted: 'no more out than in',
      basis: [derived('found', 'mass in and mass out')],
    };
    findings.push(
      note(broken, 'Weigh again, subtract the jars, or write down the syrup, brine, sugar or water that went in.'),
    );
  }
  const log = rowNamed(RECORD_RULES, 'departures');
  departures.forEach(({ what, whatWasDone, disposition }, index) => {
    if (whatWasDone !== undefined && disposition !== undefined) return;
    const broken: RuleBroken = {
      id: 'departure-left-open',
      kind: 'missing',
      field: `departures[${index}]`,
      found: what,
      wanted: 'what you did, and where the food went',
      basis: [basisOf(log, 'wanted', 'departures from the process')],
    };
    findings.push(note(broken, log.text));
  });
  return findings;
}

/** The fields that commercial rules ask for and the record leaves out. */
export function notRecorded(record: BatchRecord): { field: string; text: string; basis: Basis }[] {
  return RECORD_RULES.flatMap((row) => {
    if (row.field === undefined) return [];
    const value = (record as Readonly<Record<string, unknown>>)[row.field];
    return value === undefined ? [{ field: row.field, text: row.text, basis: basisOf(row, 'field') }] : [];
  });
}

/** An unsealed jar of a wrong process gets only the remedies, and the time, of the sealed jars of that batch. */
export function likeTheRest(finding: Finding, ofProcess: readonly Finding[]): Finding {
  const wrong = ofProcess.filter(({ kind }) => kind === 'mistake' || kind === 'untested');
  if (finding.kind !== 'seal' || wrong.length === 0) return finding;
  const remedies = finding.remedies.filter((remedy) => wrong.every((other) => other.remedies.includes(remedy)));
  const hours = [finding, ...wrong].map(({ timeLeft: left }) => (left === undefined ? 0 : valueIn(left, 'h')));
  const least = Math.min(...hours);
  const { timeLeft: _, ...rest } = finding;
  return {
    ...rest,
    remedies: remedies.length === 0 ? ['discard'] : remedies,
    next: [...new Set(wrong.flatMap(({ next }) => next))],
    ...(least > 0 ? { timeLeft: { value: least, unit: 'h' as const } } : {}),
  };
}
