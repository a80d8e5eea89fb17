/** What a batch must show before it counts as kept: by how it was put up, where it is kept and what food it is. */
import evidenceJson from '../../data/record/evidence.json';
import { findNamed } from '../common/names';
import { jerky } from '../drying/guide/jerky';
import { readFood, readForm } from '../process/food';
import { valueIn } from '../quantity/scale';
import { type Basis, joinBasis } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import type { BatchRecord } from './batchRecord';
import { dayNumber } from './date';
import { type Finding, note, type Remedy, type RuleBroken, remedyMistake } from './findings';
import { type FoodKind, inOil, kindByName, kindOf, orNothing } from './foodKinds';
import { sameFood } from './sameFood';

type How = 'jars' | 'dried' | 'oil' | 'other';
type Where = 'shelf' | 'refrigerator' | 'freezer';
/** `held`: recorded, and as it must be. `missing`: the record does not show it. `broken`: it shows the opposite. */
export type EvidenceState = 'held' | 'missing' | 'broken';

/** One thing that the record of such a batch must show, and whether it does. */
export interface Evidence {
  /** Name of the evidence; its finding has it as `rule`, or `<line>-not-recorded` where it is missing. */
  readonly line: string;
  readonly state: EvidenceState;
  /** The field of the record. */
  readonly field: string;
  /** What must stand there. */
  readonly wanted: string;
  /** What to do where it does not. */
  readonly next: string;
}

interface EvidenceRow extends Sourced {
  readonly line: string;
  readonly how: readonly How[];
  readonly where: readonly Where[];
  readonly kinds: readonly (FoodKind | 'any')[];
  readonly measure: Measure;
  readonly most?: number;
  readonly foods?: readonly string[];
  readonly field: string;
  readonly wanted: string;
  readonly next: string;
  readonly remedies: readonly Remedy[];
  readonly hours?: number;
  readonly reason: string;
}
const { rows } = asTable<EvidenceRow>(evidenceJson);

/** What the other checks of the review found, and the kind of food a row is asked for. */
interface Shown {
  readonly record: BatchRecord;
  readonly process: EvidenceState;
  readonly kind: FoodKind | undefined;
}

/** A part in a million million for the conversion of units. */
const NEAR = 1e-9;
const atMost = (value: number | undefined, most: number | undefined): EvidenceState =>
  value === undefined ? 'missing' : value <= (most as number) + NEAR ? 'held' : 'broken';

/** The warmest reading of a place; nothing where none was made. */
function warmest({ temperatures = [] }: BatchRecord, place: Where): number | undefined {
  const read = temperatures.filter(({ of }) => of === place).map(({ temperature }) => valueIn(temperature, 'degF'));
  return read.length === 0 ? undefined : Math.max(...read);
}

/** Ways of heating meat that are as good as they come: a dryer that suits neither can have made no safe jerky. */
const BEST_HEATING = [
  { heating: 'before', internalTemperature: '200 degF' },
  { heating: 'after', oven: { temperature: '300 degF', time: '1 h' }, thickness: '0.1 in' },
] as const;

function meatHeat({ record: { dryer }, kind }: Shown): EvidenceState {
  if (dryer?.temperature === undefined) return dryer?.meat?.heating === 'none' ? 'broken' : 'missing';
  const load = { food: kind === 'poultry' ? 'poultry' : 'meat', dryerTemperature: dryer.temperature } as const;
  if (dryer.meat !== undefined) {
    return jerky({ ...load, dryingTime: dryer.time, ...dryer.meat }).tested ? 'held' : 'broken';
  }
  const possible = BEST_HEATING.some((heat) => jerky({ ...load, dryingTime: dryer.time, ...heat }).tested);
  return possible ? 'missing' : 'broken';
}

/** Whether the tested process is one whose printed recipe holds oil. */
function oilRecipe({ record: { process }, process: state }: Shown, { foods = [] }: EvidenceRow): EvidenceState {
  if (process === undefined) return 'broken';
  const read = orNothing(() => readForm(readFood(process.food), process.form));
  const used = read === undefined || 'unknown' in read ? process.food : read.choice.food;
  const named = findNamed(
    used,
    foods.map((name) => ({ name })),
  );
  return named.length > 0 ? state : 'broken';
}

const SAME_FOOD = { same: 'held', open: 'missing', other: 'broken' } as const;

/** How each measure of the table is taken from a record. */
const MEASURES = {
  'tested process': ({ process }: Shown) => process,
  'same food': ({ record }: Shown) => (record.process === undefined ? 'held' : SAME_FOOD[sameFood(record)]),
  // jars that did not seal are a finding of their own, with the hours left for each jar
  seals: ({ record: { jars } }: Shown) =>
    jars?.sealed === undefined || jars.filled === 0 ? 'missing' : jars.sealed === jars.filled ? 'held' : 'broken',
  moisture: ({ record }: Shown, { most }: EvidenceRow) => atMost(record.dryer?.endMoisture, most),
  'water activity': ({ record }: Shown, { most }: EvidenceRow) => atMost(record.dryer?.waterActivity, most),
  'meat heat': meatHeat,
  'oil recipe': oilRecipe,
  refrigerator: ({ record }: Shown, { most }: EvidenceRow) => atMost(warmest(record, 'refrigerator'), most),
  freezer: ({ record }: Shown, { most }: EvidenceRow) => atMost(warmest(record, 'freezer'), most),
  'use by': ({ record: { useBy, date } }: Shown, { most }: EvidenceRow) =>
    atMost(useBy === undefined ? undefined : dayNumber(useBy) - dayNumber(date) + 1, most),
} satisfies Record<string, (shown: Shown, row: EvidenceRow) => EvidenceState>;
type Measure = keyof typeof MEASURES;

/** Ways in which a batch was put up: a shelf is meant where jars or dried food name no place. */
function howPutUp(record: BatchRecord): readonly How[] {
  const { process, dryer, jars } = record;
  const canned = process !== undefined || (dryer === undefined && (jars?.filled ?? 0) > 0);
  const ways: How[] = [...(canned ? ['jars' as const] : []), ...(dryer === undefined ? [] : ['dried' as const])];
  return [...(ways.length === 0 ? ['other' as const] : ways), ...(inOil(record) ? ['oil' as const] : [])];
}

/** One line: what is wanted of it, with the rows it rests on. */
interface Line extends Evidence {
  readonly basis: readonly Basis[];
  readonly remedies: readonly Remedy[];
  readonly hours?: number;
}

/** A figure that no page prints for this use is common practice. */
const basisOfRow = (row: EvidenceRow): Basis =>
  row.obtained === 'derived'
    ? { of: `evidence: ${row.line}`, kind: 'common-practice' }
    : basisOf(row, `evidence: ${row.line}`);

/** Rows of one line are ways to show the same: one that holds is enough, and none may show the opposite. */
function lineOf(ways: readonly EvidenceRow[], shown: Shown): Line {
  const states = ways.map((row) => ({ row, state: MEASURES[row.measure](shown, row) }));
  const state = (['broken', 'held'] as const).find((each) => states.some((way) => way.state === each)) ?? 'missing';
  const { row } = (states.find((way) => way.state === state) ?? states[0]) as (typeof states)[number];
  return {
    line: row.line,
    state,
    field: row.field,
    wanted: state === 'missing' ? ways.map(({ wanted }) => wanted).join('; or ') : row.wanted,
    next: row.next,
    remedies: row.remedies,
    ...(row.hours === undefined ? {} : { hours: row.hours }),
    basis: ways.map(basisOfRow),
  };
}

const NOTHING_KNOWN: Line = {
  line: 'no-evidence-known',
  state: 'missing',
  field: 'keptIn',
  wanted: 'a tested process, a dryer load whose dryness these tables know, or keptIn: refrigerator or freezer',
  next: 'These tables hold nothing that shows that this food keeps in this way: refrigerate it and eat it soon, or freeze it.',
  remedies: [],
  basis: [{ of: 'evidence: none is in these tables', kind: 'derived' }],
};
const NO_PLACE: Line = {
  ...NOTHING_KNOWN,
  line: 'keeping',
  wanted: 'shelf, refrigerator or freezer',
  next: 'Write down where it is kept.',
};

/** The worst of several states of one line. */
const worse = (one: Line, other: Line): Line =>
  other.state === 'broken' || (other.state === 'missing' && one.state === 'held') ? other : one;

/** The lines of a keeping: one for each hazard, for every kind of food in the batch the strictest. */
function linesOf(record: BatchRecord, process: EvidenceState, how: readonly How[], where: Where): Line[] {
  const { product, produce, added = [] } = record;
  // a produce without a kind has no evidence; a product's name or an addition without one adds none
  const more = [kindOf(product), ...added.map(({ what }) => kindByName(what))].filter((kind) => kind !== undefined);
  const kinds = [...new Set([...produce.map((row) => kindOf(row.produce)), ...more])];
  const lines = new Map<string, Line>();
  for (const way of how) {
    for (const kind of kinds) {
      const asked = rows.filter(
        (row) =>
          row.how.includes(way) &&
          row.where.includes(where) &&
          row.kinds.some((each) => each === 'any' || each === kind),
      );
      const names = [...new Set(asked.map(({ line }) => line))];
      const shown: Line[] = names.map((name) =>
        lineOf(
          asked.filter(({ line }) => line === name),
          { record, process, kind },
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

const WORST_FIRST: readonly EvidenceState[] = ['broken', 'missing', 'held'];

/** All that the record must show, what it shows to be wrong first. */
export function evidenceFor(record: BatchRecord, process: EvidenceState): readonly Line[] {
  const place = (line: Line): number => WORST_FIRST.indexOf(line.state);
  return [...linesFor(record, process)].sort((one, other) => place(one) - place(other));
}

function linesFor(record: BatchRecord, process: EvidenceState): readonly Line[] {
  const how = howPutUp(record);
  const where = record.keptIn ?? (how[0] === 'other' ? undefined : 'shelf');
  if (where === undefined) return [...linesOf(record, process, how.slice(1), 'shelf'), NO_PLACE];
  const onShelf = linesOf(record, process, how, 'shelf');
  // what would keep on a shelf keeps in the cold
  if (where !== 'shelf' && onShelf.every(({ state }) => state === 'held')) return onShelf;
  return where === 'shelf' ? onShelf : linesOf(record, process, how, where);
}

/** What is left to do with food whose evidence is broken, and for how long. */
function remediesNow({ remedies, hours: limit }: Line, hours: number | undefined): readonly Remedy[] {
  if (limit === undefined || hours === undefined) return remedies;
  return hours > limit ? ['discard'] : remedies.filter((remedy) => remedy !== 'discard');
}

/** Lines whose fault other findings name already, with more to say: a wrong process, jars that did not seal. */
const NAMED_ELSEWHERE: ReadonlySet<string> = new Set(['process', 'seals']);

/** The findings of what the record does not show, or shows to be wrong. */
export function evidenceFindings(lines: readonly Line[], record: BatchRecord, hours: number | undefined): Finding[] {
  return lines.flatMap((line): Finding[] => {
    if (line.state === 'held') return [];
    const { line: rule, field, wanted, basis } = line;
    if (line.state === 'missing') {
      // the review of the process has said which of its figures is missing
      if (rule === 'process' && record.process !== undefined) return [];
      const missing = line === NOTHING_KNOWN ? rule : `${rule}-not-recorded`;
      return [
        note({ rule: missing, kind: 'missing', field, found: 'nothing that shows it', wanted, basis }, line.next),
      ];
    }
    if (NAMED_ELSEWHERE.has(rule)) return [];
    const broken: RuleBroken = { rule, kind: 'mistake', field, found: 'the record shows otherwise', wanted, basis };
    if (rule === 'same-food') {
      return [remedyMistake({ ...broken, kind: 'untested', found: record.process?.food ?? '' }, hours)];
    }
    return [{ ...broken, remedies: remediesNow(line, hours), next: [line.next], basis: joinBasis(basis) }];
  });
}
