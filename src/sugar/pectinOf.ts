/** The tables of the pectin in fruit. Internal: `pectinNeeded` answers from them. */
import * as z from 'zod/mini';
import classesJson from '../../data/sugar/pectin-classes.json';
import contentJson from '../../data/sugar/pectin-content.json';
import type { FoundFood } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { isWithin } from '../foods/isWithin';
import { narrowerOf } from '../foods/lookUpFood';
import { nameOf } from '../foods/tables';
import { type Basis, derived } from '../sources/basis';
import { forReaders, id, type RowOf, sourcedColumns, text } from '../sources/columns';
import { type NotKnown, notKnown } from '../sources/no';
import { asTable, basisOf } from '../sources/table';

const percent = () => z.nullable(z.number().check(z.gte(0), z.lte(100)));
const linked = () => ({ id: id(), food: id(), form: z.exactOptional(id()), printed: text() });
export const pectinClassRow = () =>
  z.strictObject({
    ...linked(),
    place: forReaders(z.exactOptional(text())),
    group: z.literal([1, 2, 3]),
    secondCopyOnly: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
export const pectinContentRow = () =>
  z.strictObject({
    ...linked(),
    dryMatter: percent(),
    sugar: percent(),
    acid: percent(),
    pectin: percent(),
    pectinRange: z.exactOptional(z.tuple([z.number(), z.number()])),
    pH: z.nullable(z.number()),
    ...sourcedColumns(),
  });
type ClassRow = RowOf<typeof pectinClassRow>;
type ContentRow = RowOf<typeof pectinContentRow>;
const classes = asTable<ClassRow>(classesJson).rows;
const contents = asTable<ContentRow>(contentJson).rows;

const NEEDS = {
  1: 'neither acid nor pectin, if it is not overripe',
  2: 'perhaps added acid or added pectin',
  3: 'always added acid, added pectin or both',
} as const;
const CRAFT = 'pectin';

/** Averages of the fresh edible part: shares of its mass, 0 to 1, as far as the table has them. */
export interface FruitComposition {
  /** Pectin, as calcium pectate. */
  readonly pectinShare?: number;
  /** Citric, malic and tartaric acid together. */
  readonly acidShare?: number;
  /** Sugars. */
  readonly sugars?: number;
  /** Dry matter: all but the water. */
  readonly solids?: number;
  /** pH. */
  readonly pH?: number;
}
export type PectinGroup = 1 | 2 | 3;
/** One line of the list that groups fruit by pectin. */
export interface ListedPectin {
  /** Trade name of the food. */
  readonly food: string;
  /** The words of the list. */
  readonly printed: string;
  /** Its group. */
  readonly group: PectinGroup;
}
/** What is known of the pectin of a fruit. */
interface PectinKnown {
  readonly food: string;
  readonly group?: PectinGroup;
  readonly jellyNeeds?: (typeof NEEDS)[PectinGroup];
  readonly lines: readonly ListedPectin[];
  readonly composition: FruitComposition;
  readonly basis: readonly Basis[];
}

/** The rows of a food in a form; those of every form where the form has none. */
function inForm<Row extends { readonly form?: string }>(
  rows: readonly Row[],
  form: string | undefined,
): readonly Row[] {
  if (form === undefined) {
    // juice from a bottle says nothing of the fruit, unless there is nothing else
    const fruit = rows.filter((row) => row.form === undefined || !isWithin(row.form, 'juice'));
    return fruit.length > 0 ? fruit : rows;
  }
  const asked = rows.filter((row) => row.form !== undefined && isWithin(row.form, form));
  return asked.length > 0 ? asked : rows;
}

/** The lines of a fruit and, where the name is a wide one, of its kinds; else those of the wider fruit that lends them. */
function classRows(food: string, form: string | undefined): readonly ClassRow[] {
  const kinds = narrowerOf(food).filter((kind) => figuresFor(kind, CRAFT).includes(food));
  const own = inForm(
    classes.filter((row) => row.food === food),
    form,
  );
  const all = form === undefined ? [...own, ...classes.filter((row) => kinds.includes(row.food))] : own;
  const wanted =
    form === undefined && all.some((row) => row.form === undefined || !isWithin(row.form, 'juice'))
      ? all.filter((row) => row.form === undefined || !isWithin(row.form, 'juice'))
      : all;
  if (wanted.length > 0) return wanted;
  const [, ...wider] = figuresFor(food, CRAFT);
  return (
    wider
      .map((one) =>
        inForm(
          classes.filter((row) => row.food === one),
          form,
        ),
      )
      .find((rows) => rows.length > 0) ?? []
  );
}

/** The composition rows of a fruit or of the wider one that lends them, those with a pectin figure first. */
function contentRows(food: string): readonly ContentRow[] {
  const found =
    figuresFor(food, CRAFT)
      .map((one) => contents.filter((row) => row.food === one))
      .find((rows) => rows.length > 0) ?? [];
  return [...found.filter((row) => row.pectin !== null), ...found.filter((row) => row.pectin === null)];
}

/** What the rows of one fruit say together; where one is blank the next is asked. */
function compositionOf(rows: readonly ContentRow[]): FruitComposition {
  const share = (value: number | null): number | null =>
    value === null ? null : Number((value / 100).toPrecision(12));
  const known = [...rows].reverse().flatMap(({ pectin, acid, sugar, dryMatter, pH }) =>
    Object.entries({
      pectinShare: share(pectin),
      acidShare: share(acid),
      sugars: share(sugar),
      solids: share(dryMatter),
      pH,
    }).filter(([, value]) => value !== null),
  );
  return Object.fromEntries(known);
}

/** What is known of the pectin of a fruit; nothing where neither table names it. */
export function pectinKnown(food: FoundFood, form: string | undefined): PectinKnown | undefined {
  const rows = [...classRows(food.id, form)].sort((one, other) => other.group - one.group);
  const content = contentRows(food.id);
  const [first] = rows;
  if (first === undefined && content.length === 0) return undefined;
  const lent = (row: { readonly food: string }) => {
    const wider = row.food !== food.id && figuresFor(food.id, CRAFT).includes(row.food);
    return wider ? { food: nameOf(row.food) } : {};
  };
  return {
    food: food.name,
    ...(first === undefined ? {} : { group: first.group, jellyNeeds: NEEDS[first.group] }),
    lines: rows.map((row) => ({ food: nameOf(row.food), printed: row.printed, group: row.group })),
    composition: compositionOf(content),
    basis: [
      ...rows.map((row) => ({ ...basisOf(row, first === row ? 'group' : 'lines', row.printed), ...lent(row) })),
      ...content.map((row) => ({ ...basisOf(row, 'composition', row.printed), ...lent(row) })),
    ],
  };
}

/** No line and no analysis of a food. */
export const noPectin = (food: string): NotKnown =>
  notKnown({
    code: 'no-pectin',
    text: `These tables hold nothing of the pectin of ${food}.`,
    instead: 'Test its juice: jelly says how much sugar it can set. Or take a printed recipe with added pectin.',
    basis: [derived('reason', 'what the pectin tables hold')],
    cautions: [],
  });
