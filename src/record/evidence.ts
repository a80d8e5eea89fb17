/** What a batch must show before it counts as kept: by how it was put up, where it is kept and what food it is. */
import { jerky } from '../drying/guide/jerky';
import { foodsNamed } from '../foods/lookUpFood';
import { nameOf } from '../foods/tables';
import { readFood, readForm } from '../process/food';
import { valueIn } from '../quantity/scale';
import { type Basis, derived } from '../sources/basis';
import { basisOf, practiceBasis } from '../sources/table';
import type { BatchRecord } from './batchRecord';
import { dayNumber } from './date';
import { type Finding, note, type Remedy, type RuleBroken, remedyMistake } from './findings';
import { inOil, kindOf, orNothing } from './foodKinds';
import { sameFood } from './sameFood';
import { EVIDENCE, type EvidenceRow, STRANGE_KINDS } from './tables';

type How = EvidenceRow['how'][number];
type Where = EvidenceRow['where'][number];
/** `held`: recorded, and as it must be. `missing`: the record does not show it. `broken`: it shows the opposite. */
export type EvidenceStatus = 'held' | 'missing' | 'broken';
const WORST_FIRST: readonly EvidenceStatus[] = ['broken', 'missing', 'held'];

/** One thing that the record of such a batch must show, and whether it does. */
export interface Evidence {
  /** Name of the evidence; its finding has it as `rule`, or `<line>-not-recorded` where it is missing. */
  readonly line: string;
  /** Whether the record shows it. */
  readonly status: EvidenceStatus;
  /** The field of the record. */
  readonly field: string;
  /** What the field must say. */
  readonly wanted: string;
  /** What to do where it does not. */
  readonly next: readonly string[];
}

/** What the other checks of the review found, and the foods of one kind that a row is asked for. */
interface Shown {
  readonly record: BatchRecord;
  readonly process: EvidenceStatus;
  readonly foods: readonly string[];
}

/** A part in a million million for the conversion of units. */
const NEAR = 1e-9;
const atMost = (value: number | undefined, most: number | undefined): EvidenceStatus =>
  value === undefined ? 'missing' : value <= (most as number) + NEAR ? 'held' : 'broken';

/** The warmest reading of a place; nothing where none was made. */
function warmest({ temperatures = [] }: BatchRecord, place: Where): number | undefined {
  const read = temperatures
    .filter(({ where }) => where === place)
    .map(({ temperature }) => valueIn(temperature, 'degF'));
  return read.length === 0 ? undefined : Math.max(...read);
}

/** The strongest ways of heating meat: a dryer that suits neither made no safe jerky. */
const BEST_HEATING = [
  { heating: 'before', internalTemperature: '200 degF' },
  { heating: 'after', oven: { temperature: '300 degF', time: '1 h' }, thickness: '0.1 in' },
] as const;

/** The food whose steps count where a name could be several foods, or one without steps in these tables. */
const generalOf = (text: string): string => (kindOf(text) === 'poultry' ? 'poultry' : 'meat');

/** The state of the meat's heating: of several foods, the worst. */
const meatHeat = ({ record: { dryer }, foods }: Shown): EvidenceStatus =>
  WORST_FIRST.find((status) => foods.some((food) => heatOf(food, dryer) === status)) ?? 'missing';

function heatOf(text: string, dryer: BatchRecord['dryer']): EvidenceStatus {
  if (dryer?.temperature === undefined) return dryer?.meat?.heating === 'none' ? 'broken' : 'missing';
  const { temperature: dryerTemperature, time: dryingTime, meat } = dryer;
  const heated = (food: string) =>
    (meat === undefined ? BEST_HEATING : [meat]).map((heat) => jerky({ food, dryerTemperature, dryingTime, ...heat }));
  const [found, ...others] = foodsNamed(text);
  const own = heated(found === undefined || others.length > 0 ? generalOf(text) : nameOf(found.id));
  // sausage or ham: these tables hold no heating step for it, but what is too little for fresh meat is too little for it
  const none = own.some((each) => !each.tested && each.reason.code === 'not-meat');
  const good = (none ? heated(generalOf(text)) : own).some((each) => each.tested);
  if (!good) return 'broken';
  return none || meat === undefined ? 'missing' : 'held';
}

/** Whether the tested process is one whose printed recipe holds oil. */
function oilRecipe({ record, process: status }: Shown, { foods = [] }: EvidenceRow): EvidenceStatus {
  const { process } = record;
  if (process === undefined) return 'broken';
  const read = orNothing(() => readForm(readFood(process.food), process.form));
  if (read === undefined || 'unknown' in read) return 'broken';
  return foods.includes(read.choice.food) ? status : 'broken';
}

const SAME_FOOD = { same: 'held', open: 'missing', other: 'broken' } as const;

/** How each measure of the table is taken from a record. */
const MEASURES = {
  'tested process': ({ process }: Shown) => process,
  'same food': ({ record }: Shown) => (record.process === undefined ? 'held' : SAME_FOOD[sameFood(record)]),
  // jars that did not seal are a finding of their own, with the hours left for each jar
  seals: ({ record: { jarsFilled = 0, jarsSealed } }: Shown) =>
    jarsSealed === undefined || jarsFilled === 0 ? 'missing' : jarsSealed === jarsFilled ? 'held' : 'broken',
  moisture: ({ record }: Shown, { most }: EvidenceRow) => atMost(record.dryer?.endMoisture, most),
  'water activity': ({ record }: Shown, { most }: EvidenceRow) => atMost(record.dryer?.waterActivity, most),
  'meat heat': meatHeat,
  'oil recipe': oilRecipe,
  refrigerator: ({ record }: Shown, { most }: EvidenceRow) => atMost(warmest(record, 'refrigerator'), most),
  freezer: ({ record }: Shown, { most }: EvidenceRow) => atMost(warmest(record, 'freezer'), most),
  'use by': ({ record: { useBy, date } }: Shown, { most }: EvidenceRow) =>
    atMost(useBy === undefined ? undefined : dayNumber(useBy) - dayNumber(date) + 1, most),
} satisfies Record<EvidenceRow['measure'], (shown: Shown, row: EvidenceRow) => EvidenceStatus>;

/** Ways in which a batch was put up: a shelf is meant where jars or dried food name no place. */
function howPutUp(record: BatchRecord): readonly How[] {
  const { process, dryer, jarsFilled = 0 } = record;
  const canned = process !== undefined || (dryer === undefined && jarsFilled > 0);
  const ways: How[] = [...(canned ? ['jars' as const] : []), ...(dryer === undefined ? [] : ['dried' as const])];
  return [...(ways.length === 0 ? ['other' as const] : ways), ...(inOil(record) ? ['oil' as const] : [])];
}

/** One line: what it asks for, with the rows it rests on. */
interface Line extends Evidence {
  readonly basis: readonly Basis[];
  readonly remedies: readonly Remedy[];
  readonly hours?: number;
}

const basisOfRow = (row: EvidenceRow): Basis =>
  row.obtained === 'common-practice' ? practiceBasis('wanted', row.reason) : basisOf(row, 'wanted', row.reason);

/** Rows of one line are ways to show the same: one that holds is enough, and none may show the opposite. */
function lineOf(ways: readonly EvidenceRow[], shown: Shown): Line {
  const found = ways.map((row) => ({ row, status: MEASURES[row.measure](shown, row) }));
  const status = (['broken', 'held'] as const).find((each) => found.some((way) => way.status === each)) ?? 'missing';
  const { row } = (found.find((way) => way.status === status) ?? found[0]) as (typeof found)[number];
  return {
    line: row.line,
    status,
    field: row.field,
    wanted: status === 'missing' ? ways.map(({ wanted }) => wanted).join('; or ') : row.wanted,
    next: [row.next],
    remedies: row.remedies,
    ...(row.hours === undefined ? {} : { hours: row.hours }),
    basis: ways.map(basisOfRow),
  };
}

const NOTHING_KNOWN: Line = {
  line: 'no-evidence-known',
  status: 'missing',
  field: 'keptIn',
  wanted: 'a tested process, a dryer load whose dryness these tables know, or keptIn: refrigerator or freezer',
  next: [
    'These tables hold nothing that shows that this food keeps in this way: refrigerate it and eat it soon, or freeze it.',
  ],
  remedies: [],
  basis: [derived('wanted', 'these tables hold no evidence for this food kept in this way')],
};
const NO_PLACE: Line = {
  ...NOTHING_KNOWN,
  line: 'keeping',
  wanted: 'shelf, refrigerator or freezer',
  next: ['Write down where it is kept.'],
};

/** The worse of two findings of one line. */
const worse = (one: Line, other: Line): Line =>
  WORST_FIRST.indexOf(other.status) < WORST_FIRST.indexOf(one.status) ? other : one;

/** Whether a name or an addition means a food whose keeping is in question; it counts as a lot then. */
function needsEvidence(text: string): boolean {
  const kind = kindOf(text);
  return kind !== undefined && (STRANGE_KINDS.has(kind) || EVIDENCE.some(({ kinds }) => kinds.includes(kind)));
}

/** The lines for a place: one for each hazard, the strictest of all kinds of food in the batch. */
function linesOf(record: BatchRecord, process: EvidenceStatus, how: readonly How[], where: Where): Line[] {
  const { name, lots, additions = [] } = record;
  // a lot of a kind without evidence has none; sugar, salt or acid that went in needs none
  const more = [name, ...additions.map(({ what }) => what)].filter(needsEvidence);
  const texts = [...lots.map(({ food }) => food), ...more];
  const kinds = new Set(texts.map(kindOf));
  const lines = new Map<string, Line>();
  for (const way of how) {
    for (const kind of kinds) {
      const foods = texts.filter((text) => kindOf(text) === kind);
      const asked = EVIDENCE.filter(
        (row) =>
          row.how.includes(way) &&
          row.where.includes(where) &&
          row.kinds.some((each) => each === 'any' || each === kind),
      );
      const names = [...new Set(asked.map(({ line }) => line))];
      const shown: Line[] = names.map((each) =>
        lineOf(
          asked.filter(({ line }) => line === each),
          { record, process, foods },
        ),
      );
      for (const line of shown.length === 0 ? [NOTHING_KNOWN] : shown) {
        const before = lines.get(line.line);
        lines.set(line.line, before === undefined ? line : worse(before, line));
      }
    }
  }
  return [...lines.values()];
}

/** All that the record must show, what it shows to be wrong first. */
export function evidenceFor(record: BatchRecord, process: EvidenceStatus): readonly Line[] {
  const place = (line: Line): number => WORST_FIRST.indexOf(line.status);
  return [...linesFor(record, process)].sort((one, other) => place(one) - place(other));
}

function linesFor(record: BatchRecord, process: EvidenceStatus): readonly Line[] {
  const how = howPutUp(record);
  const where = record.keptIn ?? (how[0] === 'other' ? undefined : 'shelf');
  if (where === undefined) return [...linesOf(record, process, how.slice(1), 'shelf'), NO_PLACE];
  const onShelf = linesOf(record, process, how, 'shelf');
  // what would keep on a shelf keeps in the cold
  if (where !== 'shelf' && onShelf.every(({ status }) => status === 'held')) return onShelf;
  return where === 'shelf' ? onShelf : linesOf(record, process, how, where);
}

/** What you can still do with food whose evidence is broken, at these hours. */
function remediesNow({ remedies, hours: limit }: Line, hours: number | undefined): readonly Remedy[] {
  if (limit === undefined || hours === undefined) return remedies;
  return hours > limit ? ['discard'] : remedies.filter((remedy) => remedy !== 'discard');
}

/** Lines whose fault other findings name already, and say more: a wrong process, jars that did not seal. */
const NAMED_ELSEWHERE: ReadonlySet<string> = new Set(['process', 'seals']);

/** The findings of what the record does not show, or shows to be wrong. */
export function evidenceFindings(lines: readonly Line[], record: BatchRecord, hours: number | undefined): Finding[] {
  return lines.flatMap((line): Finding[] => {
    if (line.status === 'held') return [];
    const { line: rule, field, wanted, basis } = line;
    if (line.status === 'missing') {
      // the review of the process has said which of its figures is missing
      if (rule === 'process' && record.process !== undefined) return [];
      const missing = line === NOTHING_KNOWN ? rule : `${rule}-not-recorded`;
      return [
        note({ id: missing, kind: 'missing', field, found: 'nothing that shows it', wanted, basis }, ...line.next),
      ];
    }
    if (NAMED_ELSEWHERE.has(rule)) return [];
    const broken: RuleBroken = { id: rule, kind: 'mistake', field, found: 'the record shows otherwise', wanted, basis };
    if (rule === 'same-food') {
      return [remedyMistake({ ...broken, kind: 'untested', found: record.process?.food ?? '' }, hours)];
    }
    return [{ ...broken, remedies: remediesNow(line, hours), next: line.next, basis }];
  });
}
