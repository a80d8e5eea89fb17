import type * as z from 'zod/mini';
import { timeAtRatio } from '../../drying/curve/thinLayer';
import { fail, within } from '../../errors/StillroomError';
import { readFood, readForm } from '../../foods/fields';
import { formName as nameOfForm } from '../../foods/tables';
import { compositionOf } from '../../produce/composition/composition';
import { formOfId } from '../../produce/forms';
import { knownOr } from '../../produce/shape';
import {
  count,
  fields,
  list,
  mass,
  name,
  number,
  optional,
  rangeOf,
  reading,
  share,
  time,
} from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import type { Basis } from '../../sources/basis';
import { jarName } from '../../words/jar';

const perHour = () => number('a drying constant per hour, above 0 and at most 100', { above: 0, max: 100 });
const minutes = () => number('minutes for each raw pound, above 0 and at most 120', { above: 0, max: 120 });

/** Figures of the cook's own batches, as `learnFromRecords` gives them. */
export const learnedSchema = list(
  'learned figures',
  fields({
    /** The food, by any of its names. */
    food: name('the name of a food, such as "peach"'),
    /** Its form, where the figure is for one. */
    form: optional(name('a form, such as "halves"')),
    /** Ready share of the raw weight, above 0 to 1. */
    yield: optional(rangeOf(() => share({ above: 0 }))),
    /** Moisture of the food, above 0 and below 1. */
    moisture: optional(rangeOf(() => share({ above: 0, below: 1 }))),
    /** Minutes of preparing each raw pound, above 0 to 120; hours hold at its slow end. */
    minutesPerPound: optional(rangeOf(minutes)),
    /** The jar that `rawPerJar` is for. */
    jar: optional(jarName()),
    /** Raw mass that one such jar takes. */
    rawPerJar: optional(rangeOf(() => mass())),
    /** Hours in the dryer, up to 168. */
    dryingHours: optional(rangeOf(() => time({ max: { value: 168, unit: 'h' } }))),
    /** Drying constant for each hour, above 0 to 100. */
    dryingConstant: optional(rangeOf(perHour)),
    /** How many records the figures come from. */
    n: optional(count('records')),
    /** Figures that `learnFromRecords` found far from the others; not used here. */
    outliers: optional(reading<unknown, unknown>((given) => given)),
  }),
  0,
  1000,
);
type Given = z.output<typeof learnedSchema>[number];

/** A learned entry by the names of the tables, with its place in the list. */
export interface Learned extends Omit<Given, 'outliers'> {
  readonly index: number;
}
type Figure = 'yield' | 'moisture' | 'minutesPerPound' | 'rawPerJar' | 'dryingHours' | 'dryingConstant';

const inKg = (quantity: Quantity<'mass'>) => valueIn(quantity, 'kg');
const inHours = (quantity: Quantity<'time'>) => valueIn(quantity, 'h');

/** The entries by the names of the tables; refuses ranges out of order and a figure that is given twice. */
export function learnedOf(given: readonly Given[] = []): Learned[] {
  const entries = given.map(
    ({ outliers: _, ...entry }, index): Learned =>
      within(`learned[${index}]`, () => {
        const { food, form, jar, rawPerJar } = entry;
        inOrder(entry);
        if (jar === undefined && rawPerJar !== undefined)
          fail('MISSING', 'jar', jar, 'the jar that the raw mass is for');
        return {
          ...entry,
          index,
          food: knownOr(compositionOf(readFood(food, 'food').id), 'food', food).food,
          ...(form === undefined ? {} : { form: formName(form) }),
        };
      }),
  );
  const seen = new Set<string>();
  for (const { index, food, form, jar, n: _, ...figures } of entries) {
    for (const figure of Object.keys(figures)) {
      const key = [food, form, figure, jar].join('|');
      if (seen.has(key)) fail('CONTRADICTION', `learned[${index}].${figure}`, food, 'each figure of a form once');
      seen.add(key);
    }
  }
  return entries;
}

function inOrder({ yield: share, moisture, minutesPerPound, rawPerJar, dryingHours, dryingConstant }: Given): void {
  const check = <T>(path: string, range: Range<T> | undefined, of: (end: T) => number): void => {
    if (range === undefined) return;
    const [low, likely, high] = [of(range.low), of(range.likely), of(range.high)];
    if (low > likely || likely > high) fail('CONTRADICTION', path, range, 'low, likely and high in rising order');
  };
  const plain = (value: number) => value;
  check('yield', share, plain);
  check('moisture', moisture, plain);
  check('minutesPerPound', minutesPerPound, plain);
  check('rawPerJar', rawPerJar, inKg);
  check('dryingHours', dryingHours, inHours);
  check('dryingConstant', dryingConstant, plain);
}

/** What was learned of one figure, and the line of the basis that says so. */
export interface Lesson<T> {
  /** The figure itself. */
  readonly figure: T;
  /** Where it comes from. */
  readonly basis: Basis;
}

/** A learned figure of a food; of a form where one is named, because a figure of one form holds for no other. */
export function learnedFigure<F extends Figure>(
  entries: readonly Learned[],
  figure: F,
  food: string,
  form: string | undefined,
  jar?: string,
): Lesson<NonNullable<Learned[F]>> | undefined {
  const shape = form === undefined ? undefined : formName(form);
  const found = entries.find(
    (entry) =>
      entry[figure] !== undefined &&
      entry.food === food &&
      (figure === 'moisture' || entry.form === shape) &&
      (figure !== 'rawPerJar' || entry.jar === jar),
  );
  if (found === undefined) return undefined;
  const batches = found.n === undefined ? 'your own batches' : `${found.n} of your own batches`;
  const what = `${NAMES[figure]} of ${food}${found.form === undefined ? '' : ` ${found.form}`}, learned from ${batches}`;
  return { figure: found[figure] as NonNullable<Learned[F]>, basis: { of: what, kind: 'measured' } };
}

const NAMES: Readonly<Record<Figure, string>> = {
  yield: 'yield',
  moisture: 'moisture',
  minutesPerPound: 'minutes a pound',
  rawPerJar: 'raw mass a jar',
  dryingHours: 'drying hours',
  dryingConstant: 'drying constant',
};

/** The name of the form that it behaves as: rings teach of slices. */
const formName = (form: string): string => {
  const id = readForm(form, 'form');
  return nameOfForm(formOfId(id)?.as ?? id);
};

/**
 * Drying hours by a learned constant: t = ln(X0 / X) / k, X the dry-basis moisture at the start and the end and what
 * the air leaves in the food neglected; the fast end from the driest fruit and the quickest constant.
 */
export function hoursByConstant(
  { low, likely, high }: Range<number>,
  water: Range<number>,
  target: number,
): Range<Quantity<'time'>> {
  const dry = (moisture: number) => moisture / (1 - moisture);
  const hours = (k: number, moisture: number): Quantity<'time'> => {
    return { value: timeAtRatio(Math.min(1, dry(target) / dry(moisture)), k), unit: 'h' };
  };
  return { low: hours(high, water.low), likely: hours(likely, water.likely), high: hours(low, water.high) };
}
