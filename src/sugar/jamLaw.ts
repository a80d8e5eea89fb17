/** The rules of composition of jams, jellies and the like. */
import * as z from 'zod/mini';
import lawJson from '../../data/sugar/composition-law.json';
import factorsJson from '../../data/sugar/fruit-factors.json';
import fruitJson from '../../data/sugar/us-jam-fruit.json';
import { figuresFor } from '../foods/figuresFor';
import type { Basis } from '../sources/basis';
import { forReaders, id, positive, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';

export const PRODUCTS = [
  'jam',
  'jelly',
  'extra jam',
  'marmalade',
  'fruit butter',
  'artificially sweetened jelly',
  'chestnut puree',
  'reduced-sugar jam',
  'fruit curd',
  'mincemeat',
] as const;
/** The products that the rules know. */
export type JamProduct = (typeof PRODUCTS)[number];

const percent = () => z.exactOptional(z.number().check(z.gte(0), z.lte(100)));
const some = () => z.exactOptional(positive());
export const lawRow = () =>
  z.strictObject({
    id: id(),
    rule: text(),
    place: text(),
    law: text(),
    products: z.array(z.enum(PRODUCTS)).check(z.minLength(1)),
    fruits: z.enum(['any', 'other', 'group-1', 'group-2', 'named']),
    foods: z.exactOptional(z.array(id()).check(z.minLength(1))),
    printed: forReaders(z.exactOptional(z.array(text()))),
    fruitParts: some(),
    sweetenerParts: some(),
    solidsLeast: percent(),
    solidsMost: percent(),
    fruitLeast: some(),
    ...sourcedColumns(),
  });
export const usFruitRow = () =>
  z.strictObject({ id: id(), food: id(), printed: forReaders(text()), group: z.literal([1, 2]), ...sourcedColumns() });
export const factorRow = () =>
  z.strictObject({ id: id(), food: id(), printed: forReaders(text()), factor: positive(), ...sourcedColumns() });
export type LawRow = RowOf<typeof lawRow>;
export type FactorRow = RowOf<typeof factorRow>;
const laws = asTable<LawRow>(lawJson).rows;
const usFruit = asTable<RowOf<typeof usFruitRow>>(fruitJson).rows;
const factors = asTable<FactorRow>(factorsJson).rows;

const leastJam = laws.find((row) => row.law === 'EU' && row.solidsLeast !== undefined) as LawRow;
/** The least soluble solids of an ordinary jam, percent. */
export const ORDINARY_SOLIDS = leastJam.solidsLeast as number;
/** The basis line of the least solids of a jam. */
export const lawBasis = (of: string, note: string): Basis => basisOf(leastJam, of, note);

/** The foods that rules may mean for a fruit: itself, and the wider ones that the pantry names. */
const meant = (food: string): readonly string[] => figuresFor(food, 'jam-law');

/** Whether a rule is about this fruit. "Other" fruits are those that no rule of the same law and product names. */
function applies(row: LawRow, product: JamProduct, food: string): boolean {
  if (!row.products.includes(product)) return false;
  const names = (law: LawRow) => law.foods?.some((named) => meant(food).includes(named)) === true;
  switch (row.fruits) {
    case 'any':
      return true;
    case 'other':
      return !laws.some((law) => law.law === row.law && law.products.includes(product) && names(law));
    case 'named':
      return names(row);
    default: {
      const [first] = meant(food).flatMap((one) => usFruit.filter((fruit) => fruit.food === one));
      return first !== undefined && row.fruits === `group-${first.group}`;
    }
  }
}

/** The rules about a product of a fruit. */
export const rulesFor = (product: JamProduct, food: string): readonly LawRow[] =>
  laws.filter((row) => applies(row, product, food));

/** The factor by which the law counts the fruit of its soluble solids. */
export const factorOf = (food: string): FactorRow | undefined =>
  meant(food)
    .map((one) => factors.find((row) => row.food === one))
    .find((row) => row !== undefined);
/** The foods that have a factor. */
export const foodsWithFactor = (): readonly string[] => factors.map(({ food }) => food);
