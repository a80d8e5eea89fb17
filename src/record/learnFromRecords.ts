import * as z from 'zod/mini';
import { answer } from '../common/answer';
import { dryingGuide } from '../drying/guide/dryingGuide';
import { StillroomError, within } from '../errors/StillroomError';
import { readForm, readFood as readPantry } from '../foods/fields';
import { foodsNamed } from '../foods/lookUpFood';
import { formName, nameOf } from '../foods/tables';
import { WORK_BASIS, workTimes } from '../plan/makes/work';
import type { Make } from '../plan/request/planInput';
import { readFood } from '../process/food';
import { composition } from '../produce/composition/composition';
import { type Form, formOfId } from '../produce/forms';
import { knownOr } from '../produce/shape';
import { rawForJars } from '../produce/yields/rawForJars';
import { yieldOf } from '../produce/yields/readyFromRaw';
import { fields, list, readInput } from '../quantity/fields';
import { mapRange } from '../quantity/range';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import type { Unit } from '../quantity/units';
import { type Basis, type Caution, joinBasis, joinCautions } from '../sources/basis';
import { readJar } from '../words/jar';
import { type BatchRecord, type BatchRecordInput, readRecord } from './batchRecord';
import {
  cautionsOf,
  isRange,
  LARGEST,
  type Learned,
  learn,
  MODEL,
  ownRecords,
  type Scale,
  SMALLEST,
} from './learnFigure';

const MOST_RECORDS = 10_000;
const schema = /* @__PURE__ */ fields({ records: list('batch records', z.unknown(), 0, MOST_RECORDS) });
export interface LearnFromRecordsInput {
  readonly records: readonly (BatchRecord | BatchRecordInput)[];
}

/** What a record can teach. */
export type LearnedWhat = 'yield' | 'moisture' | 'minutesPerPound' | 'rawPerJar' | 'dryingHours';

/** A figure of one record that lies far from the others and counts for less. */
export interface RecordSetAside {
  /** The record's place in the list, from 0. */
  readonly index: number;
  readonly what: LearnedWhat;
  /** Ready over raw, moisture, minutes for each pound, raw pounds a jar, or hours. */
  readonly value: number;
  /** What it counts for, from 0 to 1. */
  readonly weight: number;
}

/** What the records teach of one produce in one form, or of one jar of it. Each range is that of the next batch. */
export interface LearnedEntry {
  /** The trade name: `peach`. */
  readonly produce: string;
  /** None where the form is nothing to the figure: `moisture`. */
  readonly form?: string;
  /** Ready over raw. */
  readonly yield?: Range<number>;
  /** Of the fresh produce, wet basis; in an entry of its own. */
  readonly moisture?: Range<number>;
  /** Minutes of one pair of hands to prepare each raw pound. */
  readonly minutesPerPound?: Range<number>;
  /** Stands in an entry of its own, one for each size of jar. */
  readonly rawPerJar?: { readonly jar: string; readonly raw: Range<Quantity<'mass'>> };
  readonly dryingHours?: Range<Quantity<'time'>>;
  /** How many records it rests on. */
  readonly n: number;
  readonly setAside: readonly RecordSetAside[];
}

/** Something a record tells that nothing was learned from. */
export interface PassedOver {
  /** The record's place in the list, from 0. */
  readonly index: number;
  readonly what: LearnedWhat;
  readonly reason: string;
}

export interface LearnedFromRecords {
  /** In the order in which the records first tell of them. */
  readonly learned: readonly LearnedEntry[];
  readonly passedOver: readonly PassedOver[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Produce in a form, by the names of the tables; in jars of a size. */
interface Subject {
  readonly produce: string;
  readonly form?: string;
  readonly jar?: string;
}
/** One figure that one record tells. */
interface Told extends Subject {
  readonly index: number;
  readonly what: LearnedWhat;
  readonly value: number;
  /** The unit that the record itself uses. */
  readonly unit?: string;
  /** The customary figure for such work. */
  readonly customary?: number;
}

/** The answer of other modules, or nothing where their tables hold none. */
function known<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch (error) {
    if (error instanceof StillroomError) return undefined;
    throw error;
  }
}

const tradeName = (text: string): string | undefined => {
  const [found, ...more] = foodsNamed(text);
  return found === undefined || more.length > 0 ? undefined : nameOf(found.id);
};
const unknownText = (text: string): string => `${text} is in no table, or could be several`;
/** A form as the tables of yields know it, with its name. */
const formNamed = (text: string): (Form & { readonly name: string }) | undefined => {
  const id = known(() => readForm(text));
  const form = id === undefined ? undefined : formOfId(id);
  return form === undefined ? undefined : { ...form, name: formName(form.as) };
};

/** What the process says of the jars: food by its trade name, and form. */
function processed({ food, form }: NonNullable<BatchRecord['process']>): { produce?: string; form?: string } {
  const read = known(() => readFood(food));
  const produce = tradeName(read?.food.name ?? food);
  const shape = form ?? read?.form;
  return { ...(produce === undefined ? {} : { produce }), ...(shape === undefined ? {} : { form: shape }) };
}

/** Produce in a form. */
type Shaped = Subject & { readonly form: string };

/** Subject of each produce of a record, or why it has none. */
function subjectsOf({ produce, process }: BatchRecord): (Shaped | string)[] {
  return produce.map(({ produce: text, form: own }) => {
    const name = tradeName(text);
    if (name === undefined) return unknownText(text);
    const shape = own ?? (produce.length === 1 && process !== undefined ? processed(process).form : undefined);
    if (shape === undefined) return `the record names no form of ${name}`;
    const form = formNamed(shape);
    return form === undefined
      ? `these tables hold no figures for ${name} as ${shape}`
      : { produce: name, form: form.name };
  });
}

/** What was made, as far as preparing it goes. */
function makeOf({ process, dryer, keptIn }: BatchRecord, form: string): Make | undefined {
  if (process !== undefined) return dryer === undefined ? 'jars' : undefined;
  if (dryer !== undefined) return formNamed(form)?.behaves === 'puree' ? 'leather' : 'dried';
  return keptIn === 'freezer' ? 'frozen' : undefined;
}

const pounds = (raw: Quantity<'mass'>): number => valueIn(raw, 'lb');
const SEVERAL = 'the record holds more than one produce or form: keep one for each';

/** All that one record tells, and what it tells in vain. */
function tell(record: BatchRecord, index: number): { told: Told[]; passedOver: PassedOver[] } {
  const told: Told[] = [];
  const passedOver: PassedOver[] = [];
  const pass = (what: LearnedWhat, reason: string) => {
    passedOver.push({ index, what, reason });
  };
  const note = (what: LearnedWhat, subject: Subject, value: number, more: Pick<Told, 'unit' | 'customary'> = {}) => {
    if (value >= SMALLEST && value <= LARGEST) told.push({ index, what, ...subject, value, ...more });
    else pass(what, `${value} is no figure of a kitchen`);
  };
  const { produce, process, jars, work, dryer } = record;
  const subjects = subjectsOf(record);
  const distinct = [
    ...new Map(subjects.map((each) => [typeof each === 'string' ? each : JSON.stringify(each), each])).values(),
  ];
  const [first] = distinct as [Shaped | string];
  const only = distinct.length > 1 ? SEVERAL : first;
  const raw = produce.reduce((sum, row) => sum + pounds(row.raw), 0);

  produce.forEach(({ raw: whole, ready }, place) => {
    if (ready === undefined) return;
    const subject = subjects[place] as Shaped | string;
    if (typeof subject === 'string') pass('yield', subject);
    else note('yield', subject, Math.min(1, pounds(ready) / pounds(whole)));
  });
  if (work?.prepare !== undefined) {
    const minutes = (valueIn(work.prepare, 'min') * (work.hands ?? 1)) / raw;
    for (const subject of distinct) {
      if (typeof subject === 'string') {
        pass('minutesPerPound', subject);
        continue;
      }
      const make = makeOf(record, subject.form);
      if (make === undefined) {
        pass(
          'minutesPerPound',
          'the record does not show what was made: a process, a dryer load, or kept in the freezer',
        );
      } else {
        const { perPound } = workTimes(make, subject.form, process?.pack);
        note('minutesPerPound', subject, minutes, { customary: perPound });
      }
    }
  }
  if (process !== undefined && jars !== undefined && jars.filled > 0) {
    const filling = jarsOf(record, process);
    if (typeof filling === 'string') pass('rawPerJar', filling);
    else note('rawPerJar', filling, raw / jars.filled, { unit: (produce[0] as (typeof produce)[number]).raw.unit });
  }
  if (dryer !== undefined) {
    if (typeof only === 'string') pass('dryingHours', only);
    else note('dryingHours', only, valueIn(dryer.time, 'h'), { unit: dryer.time.unit });
    if (dryer.freshMoisture !== undefined) {
      const name = onlyProduce(record);
      if ('produce' in name) note('moisture', name, dryer.freshMoisture);
      else pass('moisture', name.reason);
    }
  }
  return { told, passedOver };
}

/** The one produce of a record, in whatever forms; or why there is none. */
function onlyProduce({ produce }: BatchRecord): { readonly produce: string } | { readonly reason: string } {
  const names = [...new Set(produce.map((row) => tradeName(row.produce) ?? row.produce))];
  const [name] = names as [string];
  if (names.length > 1) return { reason: SEVERAL };
  return tradeName(name) === undefined ? { reason: unknownText(name) } : { produce: name };
}

/** What is in the jars; or why their raw weight says nothing of it. */
function jarsOf(record: BatchRecord, process: NonNullable<BatchRecord['process']>): Subject | string {
  const only = onlyProduce(record);
  if (!('produce' in only)) return only.reason;
  if (record.dryer !== undefined) return 'a part of it was dried: keep a record for each';
  const { produce: name } = only;
  const { produce: inJars, form: shape } = processed(process);
  if (inJars !== name) return `the process is for ${process.food}, the produce is ${name}`;
  if (shape === undefined) return `the process names no form of ${name}`;
  const form = formNamed(shape);
  if (form === undefined) return `these tables hold no raw weight for a jar of ${name} as ${shape}`;
  const size = known(() => readJar(process.jar))?.name;
  return size === undefined
    ? `${process.jar} is no jar size of the tables`
    : { produce: name, form: form.name, jar: size };
}

/** A range to start from. */
interface Prior {
  readonly range: Range<number>;
  readonly scale: Scale;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** How far work may be from the customary figure (a choice of this library, common practice). */
const HALF_TO_DOUBLE = { low: 0.5, high: 2 };
const HALF_TO_DOUBLE_BASIS: Basis = {
  of: 'customary minutes of work, taken as half to double (a choice of this library)',
  kind: 'common-practice',
};

/** The published range of a figure; for work the customary one. Nothing where none is published. */
function priorOf({ what, produce, form: shape, jar }: Told, told: readonly Told[]): Prior | undefined {
  if (what === 'minutesPerPound') {
    const likely = told.reduce((sum, { customary }) => sum + (customary as number), 0) / told.length;
    return {
      range: { low: likely * HALF_TO_DOUBLE.low, likely, high: likely * HALF_TO_DOUBLE.high },
      scale: 'times',
      basis: [WORK_BASIS, HALF_TO_DOUBLE_BASIS],
      cautions: [],
    };
  }
  return known((): Prior | undefined => {
    if (what === 'moisture') {
      const { water: range, basis, cautions } = knownOr(composition({ food: produce }), 'produce', produce);
      return { range, scale: 'share', basis: basis.filter(({ of: figure }) => figure === 'water'), cautions };
    }
    const form = shape as string;
    if (what === 'yield') {
      const { yield: range, basis, cautions } = knownOr(yieldOf(readPantry(produce).id, readForm(form)), 'form', form);
      return { range, scale: 'share', basis, cautions };
    }
    if (what === 'rawPerJar') {
      const need = rawForJars({ food: produce, form, jar: jar as string, jars: 1 });
      const { raw, basis, cautions } = knownOr(need, 'form', form);
      return { range: mapRange(raw, pounds), scale: 'times', basis, cautions };
    }
    const guide = dryingGuide({ food: produce, form });
    if (!guide.known) return undefined;
    const range = mapRange(guide.hours, (time) => valueIn(time, 'h'));
    return { range, scale: 'times', basis: guide.basis.filter(({ of }) => of === 'hours'), cautions: guide.cautions };
  });
}

const NAMES: Readonly<Record<LearnedWhat, string>> = {
  yield: 'yield',
  moisture: 'moisture',
  minutesPerPound: 'minutes a pound',
  rawPerJar: 'raw weight a jar',
  dryingHours: 'drying hours',
};

/** No produce is all waste or without water, and none is all water. */
const LEAST_SHARE = 0.001;
const MOST_SHARE = { yield: 1, moisture: 1 - LEAST_SHARE } as const;

/** The figure as an entry holds it, in the unit of the first record that tells it. */
function figureOf({ what, unit, jar }: Told, range: Range<number>): Partial<LearnedEntry> {
  const inUnit = <D extends 'mass' | 'time'>(from: Unit<D>): Range<Quantity<D>> =>
    mapRange(range, (value) => quantityIn<D>(value, from, unit as Unit<D>));
  if (what === 'rawPerJar') return { rawPerJar: { jar: jar as string, raw: inUnit<'mass'>('lb') } };
  if (what === 'dryingHours') return { dryingHours: inUnit<'time'>('h') };
  if (what === 'minutesPerPound') return { minutesPerPound: range };
  return { [what]: mapRange(range, (share) => Math.min(MOST_SHARE[what], Math.max(LEAST_SHARE, share))) };
}

/** One figure of one subject, with all that was told of it; not learned where no range is published. */
interface Lesson {
  readonly told: readonly [Told, ...Told[]];
  readonly prior?: Prior;
  readonly learned?: Learned;
}

function lessonOf(told: readonly [Told, ...Told[]]): Lesson {
  const [first] = told;
  const prior = priorOf(first, told);
  if (prior === undefined || !isRange(prior.range)) return { told };
  const values = told.map(({ value }) => value);
  return { told, prior, learned: learn(prior.range, values, prior.scale) };
}

function entryOf(lessons: readonly [Lesson, ...Lesson[]]): LearnedEntry {
  const { produce, form } = lessons[0].told[0];
  const figures = lessons.map(({ told, learned }) => figureOf(told[0], (learned as Learned).figure));
  return {
    produce,
    ...(form === undefined ? {} : { form }),
    ...Object.assign({}, ...figures),
    n: new Set(lessons.flatMap(({ told }) => told.map(({ index }) => index))).size,
    setAside: lessons.flatMap(({ told, learned }) =>
      (learned as Learned).setAside.map(({ index, value, weight }): RecordSetAside => {
        const { index: record, what } = told[index] as Told;
        return { index: record, what, value, weight };
      }),
    ),
  };
}

/** Items in groups of one key, in the order in which the keys first come. */
function grouped<T>(items: readonly T[], key: (item: T) => string): [T, ...T[]][] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group === undefined) groups.set(key(item), [item]);
    else group.push(item);
  }
  return [...groups.values()];
}

const subjectKey = ({ produce, form, jar }: Subject): string => JSON.stringify([produce, form, jar]);

/**
 * What your batch records teach the next plan: yields, moisture, minutes of work, raw weight a jar and drying hours,
 * for each produce and form that the records tell of. Give the list `learned` to `planDay`.
 *
 * Each figure is the 90 % interval of the next batch by the model of `learnFigure`: the published range with few
 * records, your own kitchen with many, a slip of the pen set aside. Where the records take their figures, and what they
 * start from:
 *
 * | figure | from a record | starts from |
 * | --- | --- | --- |
 * | `yield` | `ready` over `raw` of each produce | range of `readyFromRaw` |
 * | `moisture` | `dryer.freshMoisture` | water of `composition` |
 * | `minutesPerPound` | `work.prepare` x `hands`, over the raw pounds of all its produce | customary minutes of such work, half to double (common practice) |
 * | `rawPerJar` | raw weight over `jars.filled`, in the form of the process | range of `rawForJars` for one jar |
 * | `dryingHours` | `dryer.time` | range of `dryingGuide` |
 *
 * Yield is held between 0.001 and 1, moisture between 0.001 and 0.999; the others vary by a factor. A figure without a published range is
 * passed over, never guessed, and so is a jar or a dryer load of several kinds of produce, for a record does not say
 * which took what.
 *
 * @returns `learned`: entries of `produce` and `form`, with the figures, `n` records and `setAside`; `rawPerJar` in an
 *   entry of its own for each size of jar, `moisture` in one without a form; weights and times in the unit of the first record that tells them.
 *   `passedOver`: which record, what of it, and why
 * @throws StillroomError as `batchRecord`, with the record's place: `records[3].jars.sealed`; TOO_MUCH
 *
 * Source: A First Course in Bayesian Statistical Methods, section 5.3 (the model); the ranges: see the basis.
 *
 * @example
 * ```ts
 * import { learnFromRecords } from 'stillroom/record';
 *
 * const batch = { date: '2026-08-14', product: 'peach halves', work: { prepare: '45 min', hands: 2 } } as const;
 * const { learned } = learnFromRecords({
 *   records: [
 *     { ...batch, lot: 'A1', produce: [{ produce: 'peaches', form: 'halves', raw: '40 lb', ready: '29 lb' }] },
 *     { ...batch, lot: 'A2', produce: [{ produce: 'peaches', form: 'halves', raw: '22 lb', ready: '16.5 lb' }] },
 *   ],
 * });
 * learned[0].produce; // => 'peach'
 * learned[0].yield.likely; // ≈ 0.775
 * learned[0].n; // => 2
 * ```
 */
export function learnFromRecords(input: LearnFromRecordsInput): LearnedFromRecords {
  const { records } = readInput(schema, input);
  const tellings = records.map((record, index) =>
    tell(
      within(`records[${index}]`, () => readRecord(record)),
      index,
    ),
  );
  const lessons = grouped(
    tellings.flatMap(({ told }) => told),
    (one) => `${subjectKey(one)} ${one.what}`,
  ).map(lessonOf);
  const taught = lessons.filter(({ learned }) => learned !== undefined);
  const untaught = lessons
    .filter(({ learned }) => learned === undefined)
    .flatMap(({ told }) =>
      told.map(({ index, what, produce, form }): PassedOver => {
        return {
          index,
          what,
          reason: `these tables hold no range for the ${NAMES[what]} of ${produce}${form === undefined ? '' : ` as ${form}`}`,
        };
      }),
    );
  return answer({
    learned: grouped(taught, ({ told }) => subjectKey(told[0])).map(entryOf),
    passedOver: [...tellings.flatMap(({ passedOver }) => passedOver), ...untaught].sort((a, b) => a.index - b.index),
    basis: joinBasis([MODEL], ownRecords(records.length), ...taught.map(({ prior }) => (prior as Prior).basis)),
    cautions: joinCautions(
      ...taught.flatMap(({ prior, learned }) => [cautionsOf(learned as Learned), (prior as Prior).cautions]),
    ),
  });
}
