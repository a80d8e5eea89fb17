/** What a recipe takes besides the food itself, for what a day makes of it. */
import { foodsNamed } from '../../foods/lookUpFood';
import { saidOf } from '../../foods/phrases';
import { formName, nameOf } from '../../foods/tables';
import { isMass } from '../../quantity/fields';
import { parseQuantity } from '../../quantity/parseQuantity';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { PANTRY, type PantryItem } from '../../recipes/pantryItems';
import { pectinIn } from '../../recipes/pectin';
import { mustKeepOf } from '../../recipes/rows/rows';
import type { IngredientRow, Makes, RecipeRow } from '../../recipes/rows/tables';
import { readJar } from '../../words/jar';
import { customary } from '../figures/customary';
import { fillOf } from '../kitchen/fillOf';
import type { Activity } from '../request/activity';
import type { KnownLot } from '../request/lots';
import type { Ingredient } from '../request/plannedProduct';
import { type Batch, kgOfCut } from './amounts';
import type { Product, TasteLine } from './making';
import { type Day, type Decided, massOf, volumeOf } from './making';
import { kgOfMeasure, standsFor } from './pantry';
import { printedAmount } from './printedAmount';
import { isMain, namesOf, othersOf, scopeLine } from './product';

type Amount = Quantity<'mass'> | Quantity<'volume'>;

/** One line of the list, with what its amount is for. */
export interface Part {
  readonly line: IngredientRow;
  readonly what: string;
  /** It is the food of the recipe itself, out of the lots. */
  readonly own?: true;
  readonly item?: PantryItem;
  readonly amount?: Amount;
  /** Pieces, where the page counts them. */
  readonly count?: { readonly pieces: number; readonly of: string };
  /** The amount is for one batch, or for so much raw or prepared food, or for filled jars, in kg or liters. */
  readonly per: { readonly of: 'batch' | 'raw' | 'ready' | 'jar' | 'water'; readonly much: number };
  /** Instead of what the page prints. */
  readonly note?: string;
}

const itemOf = ({ food, form, role }: IngredientRow): PantryItem | undefined =>
  role === 'starch'
    ? 'starch for canning'
    : (PANTRY.find((item) => {
        const [named] = foodsNamed(item);
        return named !== undefined && named.id === food && (named.form === undefined || named.form === form);
      }) ?? standsFor(food, form));

/** What a line is called on a sheet: by its name in the pantry, or as the page has it. */
function whatOf({ food, form, item, printed: words }: IngredientRow, held: PantryItem | undefined): string {
  if (held !== undefined) return held;
  // the recipe's own food is named by the lots it comes from
  const name = food === undefined || food === '@scope' ? (item ?? '') : nameOf(food);
  const cut = form === undefined ? '' : `, ${formName(form)}`;
  if (words === undefined) return `${name}${cut}`;
  return words.includes(' ') ? `${name}${cut}, ${words}` : `${words} ${name}${cut}`;
}

/** What a shop calls it: pieces of fruit and vegetables by the food, whatever is cut of it. */
function boughtAs({ food, form, item, role }: IngredientRow): string {
  if (food === undefined) return item as string;
  return form === undefined || isMain({ role }) ? nameOf(food) : `${nameOf(food)}, ${formName(form)}`;
}

/** Kg or liters of what an amount of a line is for: raw food by weight, prepared food by volume, a liter being a kilogram. */
function perOf({ per, keep }: IngredientRow, makes: Makes): Part['per'] | undefined {
  if (per === undefined) return { of: 'batch', much: 1 };
  // how much water is the cook's; an acid or salt that must be in it is named all the same
  if (per.of === 'water' && keep !== true) return undefined;
  const given = parseQuantity(per.amount) as Amount;
  // food that fills the pot as far as it may
  if (per.of === 'pot') return { of: 'ready', much: valueIn(given as Quantity<'volume'>, 'L') * fillOf({}, makes) };
  if (per.of === 'water') return { of: 'water', much: isMass(given) ? valueIn(given, 'kg') : valueIn(given, 'L') };
  return { of: per.of === 'raw' ? 'raw' : 'ready', much: isMass(given) ? valueIn(given, 'kg') : valueIn(given, 'L') };
}

const partOf =
  (makes: Makes) =>
  (line: IngredientRow): Part[] => {
    // the fuller end of a printed range: what is laid out is enough
    const { most, amount = most, count, counted, optional, perJar } = line;
    const pectin = pectinIn(line);
    if (optional === true || perJar !== undefined) return [];
    if (amount === undefined && count === undefined && pectin === undefined) return [];
    const per = perOf(line, makes);
    if (per === undefined) return [];
    const item = itemOf(line);
    const given = amount === undefined ? pectin : (parseQuantity(most ?? amount) as Amount);
    return [
      {
        line,
        what: whatOf(line, item),
        ...(item === undefined ? {} : { item }),
        ...(given === undefined ? { count: { pieces: count as number, of: counted ?? '' } } : { amount: given }),
        per,
      },
    ];
  };

/** One line of each choice: of the product's own food, then of a food named beside it, then the first that the page names. */
function chosen(lines: readonly IngredientRow[], { food, foods }: Product): readonly IngredientRow[] {
  const rank = (line: IngredientRow): number =>
    line.food === food.id ? 0 : line.food !== undefined && foods.includes(line.food) ? 1 : 2;
  return lines.filter((line) => {
    if (line.choose === undefined) return true;
    const choices = lines.filter(({ choose }) => choose === line.choose);
    const best = Math.min(...choices.map(rank));
    return choices.find((each) => rank(each) === best) === line;
  });
}

/** The parts of a recipe for one pack, acid first: it is what a list must not lose. */
export function partsOf(product: Product, pack: string): readonly Part[] {
  const { row, food, lots, taste = [] } = product;
  const own = new Set([food.id, ...lots.map(({ food }) => food)]);
  const isOwn = (line: IngredientRow): boolean =>
    isMain(line) && (line.food === '@scope' || (line.food !== undefined && own.has(line.food)));
  const all = chosen(
    row.ingredients.filter((line) => (line.pack ?? pack) === pack),
    product,
  );
  const parts = all.filter((line) => !isOwn(line)).flatMap(partOf(row.makes));
  // the food itself is listed where the page measures it prepared
  const measured = all.filter((line) => isOwn(line) && line.amount !== undefined && line.form !== undefined);
  const prepared = measured.filter(({ amount }) => !isMass(parseQuantity(amount) as Amount)).flatMap(partOf(row.makes));
  const named = (part: Part) => saidOf(namesOf([...own]), formName(part.line.form as string)).phrase;
  return [
    ...prepared.map((part): Part => ({ ...part, what: named(part), own: true })),
    ...parts.filter(({ line }) => line.role === 'acid'),
    ...parts.filter(({ line }) => line.role !== 'acid'),
    ...taste.map(partOfTaste),
  ];
}

const partOfTaste = ({ what, role, amount, perReadyKg, note }: TasteLine): Part => ({
  line: { food: what, role },
  what,
  ...(what === 'sugar' ? { item: what } : {}),
  amount,
  per: { of: 'ready', much: perReadyKg },
  note,
});

/** Kg of prepared food that a page prints its amounts for; nothing where it prints none. */
export function packedKg({ row, food }: Product): number | undefined {
  const line = scopeLine(row, food.id);
  if (line?.amount === undefined) return undefined;
  const amount = parseQuantity(line.amount) as Amount;
  return isMass(amount) ? valueIn(amount, 'kg') : kgOfCut(food.name, line.form, amount).kg;
}

/** How often the amount of a part is taken for each raw kg, each prepared kg and each jar. */
interface Rates {
  readonly raw: number;
  readonly ready: number;
  readonly unit: number;
}
function ratesOf({ per }: Part, batch: Batch | undefined, jarLiters: number): Rates {
  const none = { raw: 0, ready: 0, unit: 0 };
  if (per.of === 'raw') return { ...none, raw: 1 / per.much };
  if (per.of === 'ready') return { ...none, ready: 1 / per.much };
  if (per.of === 'jar') return { ...none, unit: jarLiters / per.much };
  if (batch === undefined || per.of === 'water') return none;
  // a batch readies its most jars
  // food that gives more than the page counts on takes as much more of the rest: acid is by the prepared food
  if (batch.of === 'raw') return { ...none, raw: (batch.richer ?? 1) / batch.kg };
  return { ...none, unit: 1 / batch.jars.high };
}

const weighed = (printed: string): number => valueIn(parseQuantity(printed) as Quantity<'mass'>, 'kg');

const kgOf = (part: Part): number | undefined => {
  const { item, amount, line } = part;
  if (amount === undefined || part.own === true) return undefined;
  if (line.weighs !== undefined) return weighed(line.weighs);
  if (isMass(amount)) return valueIn(amount, 'kg');
  if (item !== undefined) return kgOfMeasure(item, amount).kg;
  return line.food === undefined ? undefined : kgOfCut(nameOf(line.food), line.form, amount).kg;
};

/** A recipe's parts for jars of one size, with what they are counted by. */
export interface Parts {
  readonly parts: readonly Part[];
  readonly batch?: Batch;
  /** Of one jar. */
  readonly liters: number;
}
export const partsFor = (product: Product, pack: string, jar: string, batch: Batch | undefined): Parts => ({
  parts: partsOf(product, pack),
  ...(batch === undefined ? {} : { batch }),
  liters: valueIn(readJar(jar).volume, 'L'),
});

/** What the pantry gives for each unit and each kg, of everything the recipe takes from it. */
export function pantryOf({ parts, batch, liters }: Parts): NonNullable<Activity['pantry']> {
  const taken: Partial<Record<PantryItem, { perUnit: number; perReadyKg: number; perRawKg: number }>> = {};
  for (const part of parts) {
    const kg = kgOf(part);
    if (part.item === undefined || kg === undefined) continue;
    const { raw, ready, unit } = ratesOf(part, batch, liters);
    const before = taken[part.item] ?? { perUnit: 0, perReadyKg: 0, perRawKg: 0 };
    taken[part.item] = {
      perUnit: before.perUnit + kg * unit,
      perReadyKg: before.perReadyKg + kg * ready,
      perRawKg: before.perRawKg + kg * raw,
    };
  }
  return taken;
}

/** Liters that the parts of a recipe add to its pot, for each raw kg of the food at the rich end. */
export function litersBeside({ parts, batch, liters }: Parts, unitsPerKg: number, readyPerKg: number): number {
  return parts.reduce((sum, part) => {
    const { amount, line } = part;
    // what is drained has worked in the food before the pot
    if (amount === undefined || line.role === 'spice' || line.drained === true || part.own === true) return sum;
    const { raw, ready, unit } = ratesOf(part, batch, liters);
    const plain = isMass(amount) ? valueIn(amount, 'kg') : valueIn(amount, 'L');
    // sugar dissolves: it adds less than its heap
    const volume = line.role === 'sugar' ? (kgOf(part) ?? plain) / customary('sugar-density') : plain;
    return sum + volume * (raw + ready * readyPerKg + unit * unitsPerKg);
  }, 0);
}

/** Other lots that a recipe takes from: the onions of a salsa, where they are among what was bought. */
export function alsoFrom(day: Day, product: Product, batch: Batch | undefined): NonNullable<Activity['also']> {
  if (batch === undefined) return [];
  const own = new Set(product.lots.map(({ index }) => index));
  return chosen(othersOf(product.row, []), product).flatMap((line) => {
    if (line.food === product.food.id) return [];
    const lot = lotFor(day, line, own);
    if (lot === undefined || line.amount === undefined) return [];
    const amount = parseQuantity(line.amount) as Amount;
    const kg =
      line.weighs !== undefined
        ? weighed(line.weighs)
        : isMass(amount)
          ? valueIn(amount, 'kg')
          : kgOfCut(lot.trade, line.form, amount).kg;
    return [{ lot: lot.index, kgPerUnit: kg / batch.jars.high }];
  });
}
const lotFor = ({ lots }: Day, { food }: IngredientRow, own: ReadonlySet<number>): KnownLot | undefined =>
  lots.find((lot) => lot.food === food && !own.has(lot.index));

/** The recipe's own lines for what a day makes of it. */
export function ingredientLines(day: Day, { parts, batch, liters }: Parts, decided: Decided): Ingredient[] {
  const { rawKg, readyKg, ready } = decided;
  const held = new Set(day.lots.map(({ food }) => food));
  return parts.flatMap((part): Ingredient[] => {
    const { raw, ready: prepared, unit } = ratesOf(part, batch, liters);
    const times = raw * rawKg + prepared * readyKg.high + unit * ready;
    const { line, item, what, amount, count } = part;
    if (times === 0 && part.per.of !== 'water') return [];
    const toBuy =
      part.own !== true && item === undefined && !isWater(line) && !(line.food !== undefined && held.has(line.food));
    const common = {
      what,
      role: line.role,
      ...(toBuy ? { toBuy: boughtAs(line) } : {}),
      ...(part.note !== undefined || printedAmount(line) === '' ? {} : { printed: printedAmount(line) }),
      ...(line.keep === true ? { neverLess: true as const } : {}),
      ...(part.note === undefined ? {} : { note: part.note }),
    };
    if (part.per.of === 'water') return [common];
    if (amount === undefined) {
      return [{ ...common, pieces: Math.ceil((count?.pieces ?? 0) * times * 2 - 1e-9) / 2, counted: count?.of ?? '' }];
    }
    const kg = item === undefined ? undefined : kgOf(part);
    if (isMass(amount)) return [{ ...common, amount: massOf(day, valueIn(amount, 'kg') * times) }];
    const volume = volumeOf(day, spooned(valueIn(amount, 'cup') * times));
    // what is bought in pieces is bought by weight
    const cut = toBuy && isMain(line) && line.food !== undefined ? kgOf(part) : undefined;
    if (cut !== undefined) return [{ ...common, amount: volume, or: massOf(day, cut * times) }];
    const weighed = line.role === 'sugar' && kg !== undefined ? massOf(day, kg * times) : undefined;
    if (weighed === undefined) return [{ ...common, amount: volume }];
    return [day.metric ? { ...common, amount: weighed } : { ...common, amount: volume, or: weighed }];
  });
}

/** Water comes from the tap. */
const isWater = ({ food, item }: IngredientRow): boolean => food === WATER || item === ICE_WATER;
const WATER = 'water';
const ICE_WATER = 'ice water';

/** Cups, or spoons where it is less than a quarter of a cup. */
export const spooned = (cups: number): Quantity<'volume'> =>
  cups >= 0.25 ? { value: cups, unit: 'cup' } : quantityIn<'volume'>(cups, 'cup', cups >= 1 / 16 ? 'tbsp' : 'tsp');

/** The amount as the page prints it. */
/** What must not be changed, as its own step: it is read where the work is done. */
export const kept = (row: RecipeRow, pack: string): string[] => {
  const must = mustKeepOf(row, pack);
  return must.length === 0 ? [] : [`Change none of this: ${must.join('; ')}.`];
};
