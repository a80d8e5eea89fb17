/** How much of the food one jar of a recipe takes: by the tables of jars, by the printed batch, or by the room in the jar. */

import { StillroomError } from '../../errors/StillroomError';
import { formName } from '../../foods/tables';
import { fillJar } from '../../jars/fillJar';
import type { TestedProcess } from '../../process/testedProcess';
import { kitchenMeasure } from '../../produce/weights/kitchenMeasure';
import { type RawForJars, rawForJars } from '../../produce/yields/rawForJars';
import { isMass } from '../../quantity/fields';
import { parseQuantity } from '../../quantity/parseQuantity';
import { mapRange } from '../../quantity/range';
import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { pageOf } from '../../recipes/rows/rows';
import type { RecipeRow } from '../../recipes/rows/tables';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { readJar } from '../../words/jar';
import { customary, customaryBasis, customaryRange } from '../figures/customary';
import { learnedFigure } from '../request/learned';
import type { KnownLot } from '../request/lots';
import type { Product } from './making';
import { type Day, heldOf, type LotYield, unitsFrom, yieldFromLot } from './making';
import type { PlanProcess } from './planProcess';
import { scopeLine, tasteAdds } from './product';

type Amount = Quantity<'mass'> | Quantity<'volume'>;

/** One printed batch, for jars of the size that was asked for. */
export interface Batch {
  /** Kg of the recipe's food as bought, where the page prints a weight; otherwise kg of it prepared. */
  readonly kg: number;
  readonly of: 'raw' | 'ready';
  /** Jars of one batch: the least and the most that the printed yield fills. */
  readonly jars: { readonly low: number; readonly high: number };
  /** How much more jars a kg of the best lot fills than by the page, 1 or more. */
  readonly richer?: number;
  readonly basis: readonly Basis[];
}

/** Liters of a printed yield, which may be in glasses; nothing where it is no jar. */
function litersOf(jar: string): number | undefined {
  try {
    return valueIn(readJar(jar).volume, 'L');
  } catch (error) {
    if (error instanceof StillroomError) return undefined;
    throw error;
  }
}

/** What a measure of prepared food weighs: by the tables of measures, or a kg for each liter. */
export function kgOfCut(
  food: string,
  form: string | undefined,
  volume: Quantity<'volume'>,
): { readonly kg: number; readonly basis: readonly Basis[] } {
  const found = heldOf(() => kitchenMeasure({ food, ...(form === undefined ? {} : { form: formName(form) }), volume }));
  if (found !== undefined) return { kg: valueIn(found.mass, 'kg'), basis: found.basis };
  return { kg: valueIn(volume, 'L') * customary('pot-density'), basis: [customaryBasis('pot-density', 'ingredients')] };
}

/** Whether only whole batches are made of a recipe, and whether each is cooked by itself. */
export const isWhole = ({ batch: { scale, whole } }: RecipeRow): boolean =>
  scale === 'one batch at a time' || scale === 'whole batches' || whole === true;
export const isAlone = ({ batch: { scale } }: RecipeRow): boolean => scale === 'one batch at a time';

/** The printed batch of a recipe in a jar; nothing where the page prints no amount of the food, or no yield. */
export function batchOf({ row, food }: Product, jar: string): Batch | undefined {
  const line = scopeLine(row, food.id);
  const printed = (row.yields ?? []).flatMap((each) => {
    const liters = litersOf(each.jar);
    return liters === undefined ? [] : [{ ...each, liters }];
  });
  const [filled] = printed;
  if (line?.amount === undefined || filled === undefined) return undefined;
  // the fuller end of a printed range fills the pot
  const amount = parseQuantity(line.most ?? line.amount) as Amount;
  const measured = isMass(amount) ? undefined : kgOfCut(food.name, line.form, amount);
  const times = filled.liters / valueIn(readJar(jar).volume, 'L');
  const [low, high] = [filled.low * times, filled.high * times];
  return {
    kg: measured?.kg ?? valueIn(amount as Quantity<'mass'>, 'kg'),
    // a weight on a page is of the food as it is bought, before it is cut
    of: measured === undefined ? 'raw' : 'ready',
    jars: isWhole(row) ? { low: Math.floor(low + 1e-9), high: Math.ceil(high - 1e-9) } : { low, high },
    basis: joinBasis([pageOf(row, 'ingredients', 'the printed recipe')], measured?.basis ?? []),
  };
}

/** The printed measure of a recipe that is packed by weight, as a batch of some packs. */
export function packedBatch({ row, food }: Product, packKg: number): Batch | undefined {
  const line = scopeLine(row, food.id);
  if (line?.amount === undefined) return undefined;
  const amount = parseQuantity(line.amount) as Amount;
  const measured = isMass(amount) ? undefined : kgOfCut(food.name, line.form, amount);
  const kg = measured?.kg ?? valueIn(amount as Quantity<'mass'>, 'kg');
  const packs = kg / packKg;
  return { kg, of: 'ready', jars: { low: packs, high: packs }, basis: measured?.basis ?? [] };
}

/** The lots of a product as they fill its jars. */
export interface Filling {
  /** Of each lot: jars from each kg, and its yield. */
  readonly lots: readonly { readonly lot: KnownLot; readonly units: Range<number>; readonly given: LotYield }[];
  readonly batch?: Batch;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Jars from each kg of a lot by the printed batch: fruit for whole batches at the poor end of its yield. */
export function byBatch(day: Day, product: Product, batch: Batch): Filling {
  const { jars, kg, of } = batch;
  const form = scopeLine(product.row, product.food.id)?.form;
  const yields = product.lots.map((lot) => yieldFromLot(day, lot, form === undefined ? product.form : formName(form)));
  return {
    batch: { ...batch, richer: Math.max(1, ...yields.map(({ better }) => better)) },
    basis: batch.basis,
    cautions: [],
    lots: product.lots.map((lot, at) => {
      const given = yields[at] as LotYield;
      const batches =
        of === 'raw'
          ? mapRange(BETTER, () => given.better / kg)
          : isWhole(product.row)
            ? mapRange(BETTER, () => given.ready.low / kg)
            : mapRange(given.ready, (ready) => ready / kg);
      const units = {
        low: jars.low * batches.low,
        likely: ((jars.low + jars.high) / 2) * batches.likely,
        high: jars.high * batches.high,
      };
      return { lot, given, units };
    }),
  };
}
const BETTER: Range<number> = { low: 1, likely: 1, high: 1 };

/** What the tables of jars say that one jar takes; nothing where they do not hold the food in this form. */
const tableNeed = ({ food }: Product, form: string | undefined, jar: string): RawForJars | undefined =>
  heldOf(() => rawForJars({ food: food.name, ...(form === undefined ? {} : { form }), jar, jars: 1 }));

/** A jar by the room in it, where no table and no page says what it takes. */
function byRoom(day: Day, product: Product, { jar, headspace }: Pick<TestedProcess, 'jar' | 'headspace'>): Filling {
  const liters = valueIn(fillJar({ jar, headspace }).fillVolume, 'L');
  const packed = mapRange(customaryRange('jar-packing'), (kgPerLiter) => kgPerLiter * liters);
  return {
    basis: [customaryBasis('jar-packing', 'units')],
    cautions: [],
    lots: product.lots.map((lot) => {
      const given = yieldFromLot(day, lot, product.form);
      const { ready } = given;
      const units = {
        low: ready.low / packed.high,
        likely: ready.likely / packed.likely,
        high: ready.high / packed.low,
      };
      return { lot, given, units };
    }),
  };
}

/** How the lots of a product fill jars of a size. */
export function fillingOf(
  day: Day,
  product: Product,
  process: Pick<PlanProcess, 'jar' | 'headspace' | 'form'>,
): Filling {
  const filling = plainFilling(day, product, process);
  const { liters } = tasteAdds(product);
  return { ...filling, lots: filling.lots.map((each) => ({ ...each, units: withMore(each.units, liters) })) };
}

/** Units that are filled fuller by what is added: as many are promised as without it. */
export const withMore = ({ low, likely, high }: Range<number>, more: number): Range<number> => ({
  low,
  likely: likely * (1 + more),
  high: high * (1 + more),
});

function plainFilling(
  day: Day,
  product: Product,
  process: Pick<TestedProcess, 'jar' | 'headspace'> & { readonly form?: string },
): Filling {
  const { jar } = process;
  const batch = batchOf(product, jar);
  if (batch !== undefined) return byBatch(day, product, batch);
  const need = tableNeed(product, product.form, jar) ?? tableNeed(product, process.form, jar);
  if (need === undefined) return byRoom(day, product, process);
  const form = product.form ?? process.form;
  const learned = learnedFigure(day.learned, 'rawPerJar', product.food.name, form, jar);
  return {
    basis: joinBasis(need.basis, learned === undefined ? [] : [learned.basis]),
    cautions: need.cautions,
    lots: product.lots.map((lot) => {
      const given = yieldFromLot(day, lot, form);
      // what jars took before, unless this lot was weighed
      const own = lot.readyShare === undefined ? learned : undefined;
      const each = own === undefined ? need.raw : own.figure;
      const better = own === undefined ? given.better : 1;
      return { lot, given, units: unitsFrom(mapRange(each, (mass) => valueIn(mass, 'kg') / better)) };
    }),
  };
}
