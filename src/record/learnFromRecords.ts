import * as z from 'zod/mini';
import { answer } from '../common/answer';
import { within } from '../errors/StillroomError';
import { fields, list, readInput } from '../quantity/fields';
import { mapRange } from '../quantity/range';
import { quantityIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import type { Unit } from '../quantity/units';
import { type Basis, type Caution, derived } from '../sources/basis';
import { type BatchRecord, type BatchRecordInput, readRecord } from './batchRecord';
import { behind } from './behind';
import {
  cautionsOf,
  type LearnedFigure,
  type LearnFigureInput,
  learnFigure,
  modelBasis,
  ownRecords,
} from './learnFigure';
import { type LearnedFigureName, type Observation, observe, type PassedOver, type Subject } from './observations';
import { type Prior, priorOf } from './priors';
import { isRange, type Learned, learn } from './statistics';

const MOST_RECORDS = 100_000;
const schema = /* @__PURE__ */ fields({ records: list('batch records', z.unknown(), 0, MOST_RECORDS) });
export interface LearnFromRecordsInput {
  /** Batch records, up to 100,000: from `batchRecord`, or the same fields. */
  readonly records: readonly (BatchRecord | BatchRecordInput)[];
}

/** A figure of one record that lies far from the others and counts for less. */
export interface RecordOutlier {
  /** The record's place in the list, from 0. */
  readonly index: number;
  /** The figure: `yield`, `moisture`, `minutesPerPound`, `rawPerJar` or `dryingHours`. */
  readonly figureName: LearnedFigureName;
  /** Ready over raw, moisture, minutes for each pound, raw pounds a jar, or hours. */
  readonly value: number;
  /** How much of it counts, from 0 to 1. */
  readonly countsFor: number;
}

/** What the records teach of one food in one form, or of one jar of it. Each range is that of the next batch. */
export interface LearnedEntry {
  /** The trade name: `peach`. */
  readonly food: string;
  /** The form; absent where the figure is the same for every form: `moisture`. */
  readonly form?: string;
  /** The jar that `rawPerJar` is for. */
  readonly jar?: string;
  /** Ready over raw, 0.001 to 1. */
  readonly yield?: Range<number>;
  /** Water of the fresh food, a share of its whole mass, 0.001 to 0.999; in an entry without a form. */
  readonly moisture?: Range<number>;
  /** Minutes of one pair of hands to prepare each raw pound. */
  readonly minutesPerPound?: Range<number>;
  /** Raw mass that one jar takes; an entry for each size of jar. */
  readonly rawPerJar?: Range<Quantity<'mass'>>;
  /** Hours in the dryer. */
  readonly dryingHours?: Range<Quantity<'time'>>;
  /** How many records it rests on. */
  readonly n: number;
  /** Figures that lie far from the others and count for less. */
  readonly outliers: readonly RecordOutlier[];
}

/** What batch records teach. */
export interface LearnedFromRecords {
  /** In the order in which the records first show them. */
  readonly learned: readonly LearnedEntry[];
  /** What the records show that nothing was learned from. */
  readonly passedOver: readonly PassedOver[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

const NAMES: Readonly<Record<LearnedFigureName, string>> = {
  yield: 'yield',
  moisture: 'moisture',
  minutesPerPound: 'minutes a pound',
  rawPerJar: 'raw mass a jar',
  dryingHours: 'drying hours',
};

/** No food is all waste or without water, and none is all water. */
const LEAST_SHARE = 0.001;
const MOST_SHARE = { yield: 1, moisture: 1 - LEAST_SHARE } as const;

/** The figure as an entry holds it, in the unit of the first record that shows it. */
function figureOf({ figureName, unit, jar }: Observation, range: Range<number>): Partial<LearnedEntry> {
  const inUnit = <D extends 'mass' | 'time'>(from: Unit<D>): Range<Quantity<D>> =>
    mapRange(range, (value) => quantityIn<D>(value, from, unit as Unit<D>));
  if (figureName === 'rawPerJar') return { jar: jar as string, rawPerJar: inUnit<'mass'>('lb') };
  if (figureName === 'dryingHours') return { dryingHours: inUnit<'time'>('h') };
  if (figureName === 'minutesPerPound') return { minutesPerPound: range };
  return {
    [figureName]: mapRange(range, (share) => Math.min(MOST_SHARE[figureName], Math.max(LEAST_SHARE, share))),
  };
}

/** One figure of one subject, with all that the records show of it; not learned where no range is published. */
interface Lesson {
  readonly observed: readonly [Observation, ...Observation[]];
  readonly prior?: Prior;
  readonly learned?: Learned;
}
type Taught = Required<Lesson>;

function lessonOf(observed: readonly [Observation, ...Observation[]]): Lesson {
  const prior = priorOf(observed);
  if (prior === undefined || !isRange(prior.range)) return { observed };
  const values = observed.map(({ value }) => value);
  return { observed, prior, learned: learn(prior.range, values, prior.scale) };
}
const isTaught = (lesson: Lesson): lesson is Taught => lesson.learned !== undefined;

function entryOf(lessons: readonly [Taught, ...Taught[]]): LearnedEntry {
  const [{ food, form }] = lessons[0].observed;
  const figures = lessons.map(({ observed, learned }) => figureOf(observed[0], learned.figure));
  return {
    food,
    ...(form === undefined ? {} : { form }),
    ...Object.assign({}, ...figures),
    n: new Set(lessons.flatMap(({ observed }) => observed.map(({ index }) => index))).size,
    outliers: lessons.flatMap(({ observed, learned }) =>
      learned.outliers.map(({ index, value, countsFor }): RecordOutlier => {
        const { index: record, figureName } = observed[index] as Observation;
        return { index: record, figureName, value, countsFor };
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

const subjectKey = ({ food, form, jar }: Subject): string => JSON.stringify([food, form, jar]);

/** Why nothing was learned from figures that these tables hold no range for. */
const untaught = ({ observed }: Lesson): PassedOver[] =>
  observed.map(({ index, figureName, food, form }) => {
    const text = `these tables hold no range for the ${NAMES[figureName]} of ${food}${form === undefined ? '' : ` as ${form}`}`;
    return { index, figureName, reason: { code: 'no-range', text } };
  });

/** The lines behind each kind of figure that was learned; of the empty list where none was. */
function basisOfAll(taught: readonly Taught[]): Basis[] {
  if (taught.length === 0) return [derived('learned', 'the records show no figure that these tables hold a range for')];
  return taught.flatMap(({ observed, prior, learned }) => {
    const of = `learned[].${observed[0].figureName}`;
    return [modelBasis(of), ...ownRecords(of, learned.n), ...behind(of, prior.basis)];
  });
}

/**
 * What your batch records teach the next plan: yields, moisture, minutes of work, raw mass a jar and drying hours, for
 * each food and form in the records. Give the list `learned` to `planDay`. Or one figure of your own, of any kind, from a
 * `prior` range and what you `observed`.
 *
 * Model: batches are normal about your own average, average and spread both unknown (normal-inverse-gamma). The
 * published range is taken as the central 90 % of the next batch; it counts as 1 batch for the average and 4 for the
 * spread. Each figure is the 90 % interval of the next batch by Student's t: the published range with few records, your
 * own kitchen with many; `average` is that of your average. With `varies: 'times'` the logarithms are normal; with
 * `varies: 'share'` the ends stay between 0 and 1. A record farther than 2.5 robust standard deviations from the middle
 * counts for (2.5 / z)^4 and is listed in `outliers`; the middle is the median with the published figure counted twice.
 * A range that leans to one side leans less as records take over. The worth of the published range, 2.5 and the leaning
 * are choices of this library.
 *
 * Where the records take their figures, and what they
 * start from:
 *
 * | figure | from a record | starts from |
 * | --- | --- | --- |
 * | `yield` | `ready` over `raw` of each lot | range of `readyFromRaw` |
 * | `moisture` | `dryer.freshMoisture` | water of `composition` |
 * | `minutesPerPound` | `work.preparing` x `hands`, over the raw pounds of all its lots | customary minutes of such work, half to double (common practice) |
 * | `rawPerJar` | raw mass over `jarsFilled`, in the form of the process | range of `rawForJars` for one jar |
 * | `dryingHours` | `dryer.time` | range of `dryingGuide` |
 *
 * Yield stays between 0.001 and 1, moisture between 0.001 and 0.999; the others vary by a factor. A figure without a
 * published range is passed over, never guessed, and so is a jar or a dryer load of several foods, because a record does
 * not say which took what.
 *
 * @returns `learned`: entries of `food` and `form`, with the figures, `n` records and `outliers`; `rawPerJar` in an entry
 *   for each size of jar, `moisture` in one without a form; masses and times in the unit of the first record that shows
 *   them. `passedOver`: which record, which figure, and why. Of one figure `figure`, `average`, `priorCountsFor`
 *   (1 / (1 + records that count)), `n`, `outliers`
 * @throws StillroomError as `batchRecord`, with the record's place: `records[3].jarsSealed`; TOO_MUCH;
 *   CONTRADICTION for a range out of order, OUT_OF_RANGE for a figure that cannot vary in that way
 *
 * Source: A First Course in Bayesian Statistical Methods, section 5.3 (the model); the ranges: see the basis.
 *
 * @example
 * ```ts
 * import { learnFromRecords } from 'stillroom/record';
 *
 * const batch = { date: '2026-08-14', name: 'peach halves' } as const;
 * const { learned } = learnFromRecords({
 *   records: [
 *     { ...batch, lots: [{ food: 'peaches', form: 'halves', raw: '40 lb', ready: '29 lb' }] },
 *     { ...batch, lots: [{ food: 'peaches', form: 'halves', raw: '22 lb', ready: '16.5 lb' }] },
 *   ],
 * });
 * learned[0].food; // => 'peach'
 * learned[0].yield.likely; // ≈ 0.775
 * learned[0].n; // => 2
 * const book = { low: 6, likely: 9, high: 12 };
 * const hours = learnFromRecords({ prior: book, observed: [7, 7.5, 7.2, 7.4, 72] });
 * hours.figure.likely; // ≈ 7.62
 * hours.outliers[0].value; // => 72
 * const water = { low: '84 %', likely: '86 %', high: '88 %' } as const;
 * learnFromRecords({ prior: water, observed: ['83 %', '84 %', '83.5 %'], varies: 'share' }).figure.likely; // ≈ 0.841
 * ```
 */
export function learnFromRecords(input: LearnFigureInput): LearnedFigure;
export function learnFromRecords(input: LearnFromRecordsInput): LearnedFromRecords;
export function learnFromRecords(input: LearnFromRecordsInput | LearnFigureInput): LearnedFromRecords | LearnedFigure {
  const asked = input as Partial<LearnFigureInput> | null | undefined;
  return asked?.prior === undefined && asked?.observed === undefined
    ? fromRecords(input as LearnFromRecordsInput)
    : learnFigure(input as LearnFigureInput);
}

function fromRecords(input: LearnFromRecordsInput): LearnedFromRecords {
  const { records } = readInput(schema, input);
  const all = records.map((record, index) =>
    observe(
      within(`records[${index}]`, () => readRecord(record)),
      index,
    ),
  );
  const lessons = grouped(
    all.flatMap(({ observations }) => observations),
    (one) => `${subjectKey(one)} ${one.figureName}`,
  ).map(lessonOf);
  const taught = lessons.filter(isTaught);
  const passed = [
    ...all.flatMap(({ passedOver }) => passedOver),
    ...lessons.filter((each) => !isTaught(each)).flatMap(untaught),
  ];
  return answer({
    learned: grouped(taught, ({ observed }) => subjectKey(observed[0])).map(entryOf),
    passedOver: passed.sort((a, b) => a.index - b.index),
    basis: basisOfAll(taught),
    cautions: taught.flatMap(({ prior, learned }) => [...cautionsOf(learned), ...prior.cautions]),
  });
}
