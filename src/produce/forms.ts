/** How the forms of the pantry behave when food is weighed and put up, and what custom takes off each food. */
import * as z from 'zod/mini';
import cutsJson from '../../data/produce/cuts.json';
import formsJson from '../../data/produce/forms.json';
import { figuresFor } from '../foods/figuresFor';
import { foodOf, formName, formOf } from '../foods/tables';
import { forReaders, id, practiceColumns, type RowOf, sourcedColumns } from '../sources/columns';
import { asTable } from '../sources/table';
import { ndb, PREPARATIONS, type Preparation } from './columns';

const BEHAVIORS = ['whole', 'cut', 'puree', 'sauce', 'juice', 'dry'] as const;
/** How a yield comes about: pieces of any cut yield the same share, and printed tables name only one of them. */
export type Behavior = (typeof BEHAVIORS)[number];

export const formRow = () =>
  z.strictObject({
    id: forReaders(id()),
    form: id(),
    as: z.exactOptional(id()),
    behaves: z.exactOptional(z.enum(BEHAVIORS)),
    preparation: z.exactOptional(z.enum(PREPARATIONS)),
    fills: z.exactOptional(z.enum(['whole pieces', 'small pieces', 'flat pieces', 'shreds', 'mash'])),
    ...practiceColumns(),
  });
export const cutRow = () =>
  z.strictObject({
    id: forReaders(id()),
    food: id(),
    cut: z.enum(['trimmed', 'cored', 'pitted', 'peeled']),
    ndb: z.array(ndb()),
    holds: z.exactOptional(z.array(id())),
    eatenWhole: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
export type FormRow = RowOf<typeof formRow>;
export type CutRow = RowOf<typeof cutRow>;

const formRows = asTable<FormRow>(formsJson).rows;
export const cutRows = asTable<CutRow>(cutsJson).rows;

/** A form as tables of weights and yields know it. */
export interface Form {
  /** Its id in the pantry. */
  readonly id: string;
  /** Id of the form that it behaves as: `slices` for rings. */
  readonly as: string;
  /** How its yield comes about. */
  readonly behaves: Behavior;
  /** What comes off, where the form itself says so. */
  readonly preparation?: Preparation;
  /** The kind of pieces; one form of a kind may stand in for another in a measure. */
  readonly fills?: string;
}

const formsById = new Map(formRows.map((row) => [row.form, row]));
const cutsByFood = new Map(cutRows.map((row) => [row.food, row]));

/** How a form of the pantry behaves: by its own row, else as the first form of its page, else as a wider form. */
export function formOfId(form: string): Form | undefined {
  const row = formsById.get(form);
  if (row?.as !== undefined) return asForm(form, row.as);
  if (row?.behaves !== undefined) {
    const { behaves, preparation, fills } = row;
    return {
      id: form,
      as: form,
      behaves,
      ...(preparation === undefined ? {} : { preparation }),
      ...(fills === undefined ? {} : { fills }),
    };
  }
  const { either = [], within = [] } = formOf(form);
  for (const near of [...either, ...within]) {
    const found = asForm(form, near);
    if (found !== undefined) return found;
  }
  return undefined;
}

function asForm(form: string, near: string): Form | undefined {
  const found = formOfId(near);
  return found === undefined ? undefined : { ...found, id: form };
}

/** The name of a form, for answers and messages. */
export const nameOfForm = (form: Form): string => formName(form.id);

/** The ids whose rows describe a food itself: its own, and those of the kinds that a wide food holds. */
export const kindsOf = (food: string): string[] => [
  food,
  ...(cutsByFood.get(food)?.holds ?? []).flatMap((kind) => kindsOf(kind)),
];

/** The food itself, the kinds it holds, then the wider foods that the pantry names for this craft, in that order. */
export const servesFor = (food: string, craft: string): string[] => [
  ...new Set([food, ...kindsOf(food).slice(1), ...figuresFor(food, craft).slice(1)]),
];

/** Food numbers of a food and the kinds it holds, the one quoted first; those of a wider food where it has none. */
export function numbersOf(food: string, craft: string): string[] {
  for (const each of figuresFor(food, craft)) {
    const numbers = kindsOf(each).flatMap((kind) => cutsByFood.get(kind)?.ndb ?? []);
    if (numbers.length > 0) return numbers;
  }
  return [];
}

/** Whether a food is a wide one, which takes the figures of its kinds. */
export const isWide = (food: string): boolean => cutsByFood.get(food)?.ndb.length === 0;

/** What custom takes off before a food is cut; that of a wider food where the table has no line for it. */
export const cutOf = (food: string): CutRow['cut'] | undefined =>
  figuresFor(food, 'yields')
    .map((each) => cutsByFood.get(each)?.cut)
    .find((cut) => cut !== undefined);

/** Whether the pantry counts a food among the vegetables. */
export const isVegetable = (food: string): boolean => foodOf(food).kind !== 'fruit';

/** The rows of a food by number, in the order of the numbers. */
export const byNumber = <Row extends { readonly ndb: string }>(
  rows: readonly Row[],
  numbers: readonly string[],
): Row[] => {
  const place = new Map(numbers.map((number, at) => [number, at]));
  return rows
    .filter((row) => place.has(row.ndb))
    .sort((a, b) => (place.get(a.ndb) as number) - (place.get(b.ndb) as number));
};
