/** The printed jam recipes in plain numbers, for the plan: one batch of one fruit that is canned. */
import { foodsNamed } from '../foods/lookUpFood';
import { formName, nameOf } from '../foods/tables';
import { parseQuantity } from '../quantity/parseQuantity';
import { toDecimalIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { isVolume } from './measure';
import { pectinIn, pectinKind } from './pectin';
import { RECIPES } from './rows/rows';
import type { IngredientRow, RecipeRow } from './rows/tables';

export type Ends = readonly [least: number, most: number];

/** One batch of a printed jam. */
export interface PrintedJam {
  /** The recipe. */
  readonly row: RecipeRow;
  /** Its added pectin. */
  readonly pectin: 'none' | 'powdered' | 'liquid';
  /** Cups of prepared fruit. */
  readonly fruit: Ends;
  /** Id of the form that it is measured in. */
  readonly form: string;
  /** The form in words. */
  readonly measure: string;
  /** Cups of sugar. */
  readonly sugar: Ends;
  /** Tbsp of lemon juice; 0 where none is printed. */
  readonly lemonJuice: number;
  /** Whether it may be left out. */
  readonly lemonOptional: boolean;
  /** Cups of water. */
  readonly water?: number;
  /** What spice, and tsp of it. */
  readonly spice?: string;
  readonly spiceTsp?: number;
  /** The added pectin as printed. */
  readonly pectinAmount?: string;
  /** Powdered pectin by weight. */
  readonly pectinMass?: Quantity<'mass'>;
  /** Liquid pectin by volume. */
  readonly pectinVolume?: Quantity<'volume'>;
  /** The printed yield. */
  readonly halfPints: Ends;
}

const inUnit = (printed: string, unit: 'cup' | 'tbsp' | 'tsp'): number =>
  toDecimalIn(parseQuantity(printed, 'volume'), unit).toSignificantDigits(12).toNumber();
const cupsOf = ({ amount, most = amount }: IngredientRow): Ends => [
  inUnit(amount as string, 'cup'),
  inUnit(most as string, 'cup'),
];

function pectinOf(line: IngredientRow | undefined): Pick<PrintedJam, 'pectin' | 'pectinAmount'> & Partial<PrintedJam> {
  if (line === undefined) return { pectin: 'none' };
  const amount = pectinIn(line);
  return {
    pectin: pectinKind(line),
    ...(line.count === undefined ? {} : { pectinAmount: `${line.count} ${line.counted}` }),
    ...(amount === undefined ? {} : isVolume(amount) ? { pectinVolume: amount } : { pectinMass: amount }),
  };
}

/** A row in plain numbers; nothing where it is not a jam of one fruit, has no amounts or no yield, or is not canned. */
function jamOf(row: RecipeRow): PrintedJam | undefined {
  const lineOf = (test: (line: IngredientRow) => boolean) => row.ingredients.find(test);
  const fruit = lineOf(({ food }) => food === '@scope');
  const sugar = lineOf(({ role }) => role === 'sugar');
  const glasses = row.yields?.find(({ jar }) => jar === 'half-pint');
  const canned = row.keeps.some((keep) => 'process' in keep);
  if (row.makes !== 'jam' || row.mix === 'as printed' || !canned || glasses === undefined) return undefined;
  if (fruit?.amount === undefined || sugar?.amount === undefined || fruit.form === undefined) return undefined;
  const lemon = lineOf(({ role }) => role === 'acid');
  const water = lineOf(({ food, role }) => role === 'liquid' && food === 'water')?.amount;
  const spice = lineOf(({ role }) => role === 'spice');
  return {
    row,
    ...pectinOf(lineOf(({ role }) => role === 'pectin')),
    fruit: cupsOf(fruit),
    form: fruit.form,
    measure: formName(fruit.form),
    sugar: cupsOf(sugar),
    lemonJuice: lemon?.amount === undefined ? 0 : inUnit(lemon.amount, 'tbsp'),
    lemonOptional: lemon?.optional === true,
    ...(water === undefined ? {} : { water: inUnit(water, 'cup') }),
    ...(spice?.amount === undefined
      ? {}
      : { spice: `${spice.printed ?? ''} ${spice.item ?? ''}`.trim(), spiceTsp: inUnit(spice.amount, 'tsp') }),
    halfPints: [glasses.low, glasses.high],
  };
}
const jams = (): readonly PrintedJam[] => RECIPES.flatMap((row) => jamOf(row) ?? []);

/** The printed jams whose page names a food, in the order of the table. */
export function printedJams(food: string): readonly PrintedJam[] {
  const [found, ...others] = foodsNamed(food);
  if (found === undefined || others.length > 0) return [];
  return jams().filter(({ row }) => row.foods.includes(found.id));
}
/** The trade names of the foods that some printed jam names. */
export const foodsOfJams = (): string[] => [...new Set(jams().flatMap(({ row }) => row.foods))].map(nameOf);
