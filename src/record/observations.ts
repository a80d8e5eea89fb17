/** What one batch record shows of yields, moisture, work, jars and drying: the figures to learn from. */

import { readForm } from '../foods/fields';
import { foodsNamed } from '../foods/lookUpFood';
import { formName, nameOf } from '../foods/tables';
import { usualMinutesPerPound } from '../plan/makes/work';
import { makesOf } from '../plan/request/planFields';
import { readFood } from '../process/food';
import { type Form, formOfId } from '../produce/forms';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Makes } from '../recipes/rows/tables';
import type { Reason } from '../sources/no';
import { readJar } from '../words/jar';
import type { BatchRecord } from './batchRecord';
import { orNothing } from './foodKinds';
import { LARGEST, SMALLEST } from './statistics';

/** A figure that records can teach. */
export type LearnedFigureName = 'yield' | 'moisture' | 'minutesPerPound' | 'rawPerJar' | 'dryingHours';

/** Something a record shows that nothing was learned from. */
export interface PassedOver {
  /** The record's place in the list, from 0. */
  readonly index: number;
  /** The figure: `yield`, `moisture`, `minutesPerPound`, `rawPerJar` or `dryingHours`. */
  readonly figureName: LearnedFigureName;
  /** Why nothing was learned. */
  readonly reason: Reason;
}

/** A food in a form, by their names in the pantry; in jars of a size. */
export interface Subject {
  readonly food: string;
  readonly form?: string;
  readonly jar?: string;
}
/** A food in a form. */
type Shaped = Subject & { readonly form: string };

/** One figure of one record. */
export interface Observation extends Subject {
  readonly index: number;
  readonly figureName: LearnedFigureName;
  readonly value: number;
  /** The unit that the record itself uses. */
  readonly unit?: string;
  /** The customary figure for such work. */
  readonly customary?: number;
}

const isReason = (value: Subject | Reason): value is Reason => 'code' in value;
const reason = (code: string, text: string): Reason => ({ code, text });
const unknownFood = (text: string): Reason =>
  reason('unknown-food', `${text} is the name of no food in these tables, or of several`);
const SEVERAL = reason('several-foods', 'the record holds more than one food or form: keep a record for each');

/** The trade name of the one food that a text names. */
const tradeName = (text: string): string | undefined => {
  const [found, ...more] = foodsNamed(text);
  return found === undefined || more.length > 0 ? undefined : nameOf(found.id);
};
/** A form as the tables of yields know it, with its name. */
const formNamed = (text: string): (Form & { readonly name: string }) | undefined => {
  const id = orNothing(() => readForm(text));
  const form = id === undefined ? undefined : formOfId(id);
  return form === undefined ? undefined : { ...form, name: formName(form.as) };
};
/** The form that the name of a food says: `halves` of `peach halves`. */
const formInName = (text: string): string | undefined => {
  const [found, ...more] = foodsNamed(text);
  return found?.form === undefined || more.length > 0 ? undefined : formName(found.form);
};

/** What the process says of the jars: food by its trade name, and form. */
function processed({ food, form }: NonNullable<BatchRecord['process']>): { food?: string; form?: string } {
  const read = orNothing(() => readFood(food));
  const trade = tradeName(read?.food.name ?? food);
  const shape = form ?? (read?.form === undefined ? undefined : formName(read.form));
  return { ...(trade === undefined ? {} : { food: trade }), ...(shape === undefined ? {} : { form: shape }) };
}

/** Subject of each lot of a record, or why it has none. */
function subjectsOf({ lots, process }: BatchRecord): (Shaped | Reason)[] {
  return lots.map(({ food: text, form: own }) => {
    const food = tradeName(text);
    if (food === undefined) return unknownFood(text);
    const inJars = lots.length === 1 && process !== undefined ? processed(process).form : undefined;
    const shape = own ?? formInName(text) ?? inJars;
    if (shape === undefined) return reason('no-form', `the record names no form of ${food}`);
    const form = formNamed(shape);
    return form === undefined
      ? reason('unknown-form', `these tables hold no figures for ${food} as ${shape}`)
      : { food, form: form.name };
  });
}

/** What was made, as far as preparing it goes. */
function makesIn({ process, dryer, keptIn }: BatchRecord, form: string): readonly Makes[] | undefined {
  if (process !== undefined) return dryer === undefined ? makesOf('jars') : undefined;
  if (dryer !== undefined) return formNamed(form)?.behaves === 'puree' ? ['leather'] : ['dried'];
  return keptIn === 'freezer' ? ['frozen'] : undefined;
}

export const pounds = (raw: Quantity<'mass'>): number => valueIn(raw, 'lb');

/** The one food of a record, in any forms; or why there is none. */
function onlyFood({ lots }: BatchRecord): Subject | Reason {
  const names = [...new Set(lots.map((row) => tradeName(row.food) ?? row.food))];
  const [name] = names as [string];
  if (names.length > 1) return SEVERAL;
  return tradeName(name) === undefined ? unknownFood(name) : { food: name };
}

/** What is in the jars; or why their raw mass says nothing of it. */
function jarsOf(record: BatchRecord, process: NonNullable<BatchRecord['process']>): Subject | Reason {
  const only = onlyFood(record);
  if (isReason(only)) return only;
  if (record.dryer !== undefined) return reason('part-dried', 'a part of it was dried: keep a record for each');
  const { food } = only;
  const { food: inJars, form: shape } = processed(process);
  if (inJars !== food) return reason('other-food', `the process is for ${process.food}, and the lot is ${food}`);
  if (shape === undefined) return reason('no-form', `the process names no form of ${food}`);
  const form = formNamed(shape);
  if (form === undefined) {
    return reason('unknown-form', `these tables hold no raw mass for a jar of ${food} as ${shape}`);
  }
  const size = orNothing(() => readJar(process.jar))?.name;
  return size === undefined
    ? reason('unknown-jar', `${process.jar} is not a jar size of these tables`)
    : { food, form: form.name, jar: size };
}

/** All that one record shows, and what of it cannot be used. */
export interface Observed {
  readonly observations: readonly Observation[];
  readonly passedOver: readonly PassedOver[];
}

/** Collects the figures of one record. */
function collector(index: number) {
  const observations: Observation[] = [];
  const passedOver: PassedOver[] = [];
  const pass = (figureName: LearnedFigureName, why: Reason) => {
    passedOver.push({ index, figureName, reason: why });
  };
  const note = (
    figureName: LearnedFigureName,
    subject: Subject | Reason,
    value: number,
    more: Pick<Observation, 'unit' | 'customary'> = {},
  ) => {
    if (isReason(subject)) pass(figureName, subject);
    else if (value >= SMALLEST && value <= LARGEST)
      observations.push({ index, figureName, ...subject, value, ...more });
    else pass(figureName, reason('no-kitchen-figure', `${value} is not a figure of a kitchen`));
  };
  return { observations, passedOver, pass, note };
}

const NO_MAKE = reason(
  'nothing-made',
  'the record does not show what was made: a process, a dryer load, or kept in the freezer',
);

/** Minutes of one pair of hands for each raw pound, of each food and form. */
function observeWork(record: BatchRecord, distinct: readonly (Shaped | Reason)[], raw: number, into: Collector): void {
  const { work, process } = record;
  if (work?.preparing === undefined) return;
  const minutes = (valueIn(work.preparing, 'min') * (work.hands ?? 1)) / raw;
  for (const subject of distinct) {
    const makes = isReason(subject) ? undefined : makesIn(record, subject.form);
    if (isReason(subject)) into.pass('minutesPerPound', subject);
    else if (makes === undefined) into.pass('minutesPerPound', NO_MAKE);
    else {
      const usual = usualMinutesPerPound(
        foodsNamed(subject.food)[0]?.id ?? '',
        readForm(subject.form),
        makes,
        process?.pack,
      );
      into.note('minutesPerPound', subject, minutes, { customary: usual });
    }
  }
}
type Collector = ReturnType<typeof collector>;

/** All that one record shows. */
export function observe(record: BatchRecord, index: number): Observed {
  const into = collector(index);
  const { lots, process, jarsFilled = 0, dryer } = record;
  const subjects = subjectsOf(record);
  const distinct = [...new Map(subjects.map((each) => [JSON.stringify(each), each])).values()];
  const [first] = distinct as [Shaped | Reason];
  const raw = lots.reduce((sum, row) => sum + pounds(row.raw), 0);
  lots.forEach(({ raw: whole, ready }, place) => {
    if (ready === undefined) return;
    into.note('yield', subjects[place] as Shaped | Reason, Math.min(1, pounds(ready) / pounds(whole)));
  });
  observeWork(record, distinct, raw, into);
  if (process !== undefined && jarsFilled > 0) {
    const { unit } = (lots[0] as (typeof lots)[number]).raw;
    into.note('rawPerJar', jarsOf(record, process), raw / jarsFilled, { unit });
  }
  if (dryer !== undefined) {
    const only = distinct.length > 1 ? SEVERAL : first;
    into.note('dryingHours', only, valueIn(dryer.time, 'h'), { unit: dryer.time.unit });
    if (dryer.freshMoisture !== undefined) into.note('moisture', onlyFood(record), dryer.freshMoisture);
  }
  return into;
}
