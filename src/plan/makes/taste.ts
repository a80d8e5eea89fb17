/** Sugar and water that the cook adds by taste, where the recipe leaves them free. */
import * as z from 'zod/mini';
import freeTable from '../../../data/plan/free-taste.json';
import { foodOf } from '../../foods/tables';
import { isMass } from '../../quantity/fields';
import { formatQuantity } from '../../quantity/formatQuantity';
import { parseQuantity } from '../../quantity/parseQuantity';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { MAKES, type Makes, type Role } from '../../recipes/rows/tables';
import { toAdd } from '../../solution/massBalance';
import { forReaders, id, practiceColumns, type RowOf } from '../../sources/columns';
import { asTable } from '../../sources/table';
import { customary } from '../figures/customary';
import { roomTaken } from '../kitchen/fillOf';
import type { Wanted } from '../request/planInput';
import type { Product, TasteLine } from './making';
import { type Day, type LeftOutProduct, leftOut, yieldFromLot } from './making';
import { packOf } from './ownBook';
import { kgOfMeasure } from './pantry';
import { roomiestPot } from './pots';
import { litersBeside, packedKg, partsOf } from './recipe';
import { workOf } from './work';

type Added = 'sugar' | 'water';
type Amount = Quantity<'mass'> | Quantity<'volume'>;

export const freeTasteRow = () =>
  z.strictObject({
    id: forReaders(id()),
    makes: z.enum(MAKES),
    sugar: z.boolean(),
    water: z.boolean(),
    named: z.exactOptional(z.boolean()),
    ...practiceColumns(),
  });
type FreeRow = RowOf<typeof freeTasteRow>;
const free: ReadonlyMap<Makes, FreeRow> = new Map(asTable<FreeRow>(freeTable).rows.map((row) => [row.makes, row]));

/** Sets by it, or is thickened in proportion. */
const FIXED: ReadonlySet<Role> = new Set(['pectin', 'starch']);
const SWEET: ReadonlySet<Role> = new Set(['sugar', 'sweetener']);

/** Why a recipe does not leave sugar or water free; nothing where it does. */
function fixedBy({ wanted, row, food }: Product, what: Added): string | undefined {
  if (wanted.own !== undefined) return 'all that goes in stands in your own book';
  if (free.get(row.makes)?.[what] !== true) return `${row.name} takes its ${what} as printed`;
  if (foodOf(food.id).kind !== 'fruit') return 'only recipes of fruit leave it free';
  if (row.ingredients.some(({ role }) => FIXED.has(role))) return `${row.name} sets by its proportions`;
  if (row.ingredients.some(({ role, keep }) => role === 'acid' && keep === true))
    return `${row.name} keeps its acid in proportion to the batch`;
  if (what === 'water') return undefined;
  const sweet = row.ingredients.filter(({ role }) => SWEET.has(role));
  if (sweet.some(({ optional }) => optional !== true)) return `${row.name} prints its own sugar`;
  return free.get(row.makes)?.named === true && sweet.length === 0 ? `the page of ${row.name} names none` : undefined;
}

const INSTEAD: Readonly<Record<Added, string>> = {
  sugar: 'leave it out and make the recipe as printed, or freeze the fruit with the sugar you like',
  water: 'leave it out and make the recipe as printed',
};

const refused = (wanted: Wanted, what: Added, why: string, instead = INSTEAD[what]): LeftOutProduct =>
  leftOut(wanted, { code: `${what}-not-free`, text: `${what} cannot be added by taste: ${why}`, instead });

const kgOf = (what: Added, amount: Amount): number => {
  if (isMass(amount)) return valueIn(amount, 'kg');
  return what === 'sugar' ? kgOfMeasure('sugar', amount).kg : valueIn(amount, 'L');
};
/** Liters that it adds to a pot: sugar dissolves. */
const litersOf = (what: Added, kg: number): number => (what === 'sugar' ? kg / customary('sugar-density') : kg);

/** Kg of prepared food in the largest pot when it is as full as it may be, with some liters of other things in it. */
function readyInFullPot(day: Day, product: Product, besides: number): number {
  const { wanted, row, lots, form } = product;
  const pack = packOf(wanted) ?? 'hot';
  const room = roomiestPot(day) / roomTaken(day.request.kitchen.pots ?? [], row.makes);
  const whole = workOf(row, pack).pot?.cookedWhole === true;
  const inPot = lots.map((lot) => {
    const { ready, trimmings } = yieldFromLot(day, lot, form);
    return (whole ? 1 : 1 - trimmings.likely) / ready.likely / customary('pot-density');
  });
  // water that the page itself puts in
  const own = litersBeside({ parts: partsOf(product, pack), liters: 1 }, 0, 1);
  return (room - besides) / (Math.max(...inPot) + own);
}

const inWords = (amount: Amount): string => formatQuantity(amount as Quantity<'mass'>);

/** The lines of what is added by the amount, to each full pot or to so much prepared food. */
function byAmount(day: Day, product: Product): readonly TasteLine[] | LeftOutProduct {
  const { wanted, row } = product;
  const asked = (['sugar', 'water'] as const).flatMap((what) => {
    const given = wanted[`${what}ToAdd`];
    return given === undefined ? [] : [{ what, ...given, kg: kgOf(what, given.amount as Amount) }];
  });
  const besides = asked.reduce((sum, { what, kg, per }) => (per === undefined ? sum + litersOf(what, kg) : sum), 0);
  const lines: TasteLine[] = [];
  for (const { what, amount, per, kg } of asked) {
    const why = fixedBy(product, what);
    if (why !== undefined) return refused(wanted, what, why);
    if (per === undefined && workOf(row, packOf(wanted)).pot === undefined) {
      const instead = `say how much food it is for: \`${what}ToAdd: { amount: ..., per: "1 quart" }\``;
      return refused(wanted, what, `no pot of food is cooked for ${row.name}`, instead);
    }
    const food =
      per === undefined
        ? readyInFullPot(day, product, besides)
        : isMass(per)
          ? valueIn(per as Quantity<'mass'>, 'kg')
          : valueIn(per as Quantity<'volume'>, 'L');
    if (food <= 0) return refused(wanted, what, 'it fills the largest pot by itself', 'add less of it');
    const to = per === undefined ? 'each full pot, and as much less to one that is not full' : inWords(per as Amount);
    lines.push(lineOf(what, amount as Amount, kg / food, food, `${inWords(amount as Amount)} to ${to}, as you say`));
  }
  return lines;
}

const lineOf = (what: Added, amount: Amount, kgPerReady: number, food: number, note: string): TasteLine => ({
  what,
  role: what === 'sugar' ? 'sugar' : 'liquid',
  amount,
  perReadyKg: food,
  kg: kgPerReady,
  liters: litersOf(what, kgPerReady),
  note,
});

/** Sugar that brings the prepared food, with the water that is added to it, from the Brix of its lots to another. */
function toBrix(product: Product, added: readonly TasteLine[]): readonly TasteLine[] | LeftOutProduct {
  const { wanted, row, lots } = product;
  const { sweetenTo } = wanted;
  if (sweetenTo === undefined) return [];
  const no = (why: string, instead?: string) => refused(wanted, 'sugar', why, instead);
  const why = fixedBy(product, 'sugar');
  if (why !== undefined) return no(why);
  if (workOf(row, packOf(wanted)).pot?.boilsDown === true)
    return no(`${row.name} is boiled down`, 'weigh and taste it when it is boiled down, and ask `sweeten`');
  const tasted = lots.flatMap(({ brix, usableKg }) => (brix === undefined ? [] : [{ brix, kg: usableKg }]));
  if (tasted.length < lots.length)
    return no('a lot has no `brix`', 'taste or measure a sample, and give the lot its `brix`');
  const all = tasted.reduce((sum, { kg }) => sum + kg, 0);
  const brix = tasted.reduce((sum, each) => sum + each.brix * each.kg, 0) / all;
  const water = added.reduce((sum, { what, kg }) => (what === 'water' ? sum + kg : sum), 0);
  const inPot = brix / (1 + water);
  if (inPot > sweetenTo)
    return no(`at ${Math.round(inPot)} Brix it is sweeter than ${sweetenTo} already`, 'leave `sweetenTo` out');
  const kg = (1 + water) * toAdd(inPot, sweetenTo, 100);
  const note = `from ${Math.round(inPot * 10) / 10} to ${sweetenTo} Brix by the mass balance: add most of it, taste, then the rest`;
  return kg === 0 ? [] : [lineOf('sugar', { value: kg, unit: 'kg' }, kg, 1, note)];
}

/** The most sugar that a page prints where it leaves it to the cook, kg for each kg of prepared food. */
function mostPrinted(product: Product): number | undefined {
  const line = product.row.ingredients.find(({ role, most }) => SWEET.has(role) && most !== undefined);
  const food = packedKg(product);
  if (line?.most === undefined || food === undefined) return undefined;
  return kgOf('sugar', parseQuantity(line.most) as Amount) / food;
}

/** What the cook adds to a product by taste, for each kg of prepared food; or why the recipe does not let it be added. */
export function tasteOf(day: Day, product: Product): readonly TasteLine[] | LeftOutProduct {
  const { wanted } = product;
  if (wanted.sugarToAdd !== undefined && wanted.sweetenTo !== undefined)
    return refused(wanted, 'sugar', '`sugarToAdd` and `sweetenTo` both say how much', 'give one of the two');
  const amounts = byAmount(day, product);
  if (!('length' in amounts)) return amounts;
  const sweet = toBrix(product, amounts);
  if (!('length' in sweet)) return sweet;
  const lines = [...amounts, ...sweet];
  const most = mostPrinted(product);
  const sugar = lines.reduce((sum, { what, kg }) => (what === 'sugar' ? sum + kg : sum), 0);
  if (most !== undefined && sugar > most * NEAR)
    return refused(
      wanted,
      'sugar',
      `the page of ${product.row.name} prints no more than ${Math.round(1000 * most)} g to a kg of prepared food`,
      'add less',
    );
  return lines;
}
const NEAR = 1.001;
