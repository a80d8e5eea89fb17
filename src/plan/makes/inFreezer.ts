import { kitchenMeasure } from '../../produce/weights/kitchenMeasure';
import { scaleRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { cautionsFor } from '../../recipes/cautions';
import { pageOf } from '../../recipes/rows/rows';
import { type Basis, joinBasis, joinCautions } from '../../sources/basis';
import { customary, customaryBasis } from '../figures/customary';
import { standsBehind } from '../figures/standsBehind';
import { BAGS, FREEZER_LOAD, FREEZER_ROOM } from '../request/stock';
import { packedBatch, withMore } from './amounts';
import { countedIn } from './counted';
import { frozen, taking } from './energyTaken';
import { roomInBox } from './headspace';
import type { Product } from './making';
import { commonOf, type Day, heldOf, leftOut, type Made, supplyOf, waterOf, yieldFromLot } from './making';
import { nameOf } from './naming';
import { blanchedInPot, cookedInPot, stepsWithPot } from './pots';
import { tasteAdds } from './product';
import { ingredientLines, kept, litersBeside, pantryOf, partsOf } from './recipe';
import { within } from './within';
import { type RecipeWork, workOf } from './work';

/** A freezer pack, where the cook names no other size. */
const PACK: Quantity<'mass'> = { value: customary('freezer-pack'), unit: 'lb' };

/** Liters that a kg of ready food takes: by the cut, by the food's other cuts, or a liter for each kg. */
function roomPerKg({ food, form }: Product): { readonly liters: number; readonly basis: readonly Basis[] } {
  const mass: Quantity<'mass'> = { value: 1, unit: 'kg' };
  const ask = (named?: string) =>
    heldOf(() => kitchenMeasure({ food: food.name, mass, ...(named === undefined ? {} : { form: named }) }));
  const found = (form === undefined ? undefined : ask(form)) ?? ask();
  if (found !== undefined) return { liters: valueIn(found.volumeRange.high, 'L'), basis: found.basis };
  return { liters: 1 / customary('pot-density'), basis: [customaryBasis('pot-density', 'packs.room')] };
}

/** The pot that comes before the freezer. */
function potFor(day: Day, product: Product, work: RecipeWork, ready: number, beside: number) {
  if (work.blanch !== undefined) return blanchedInPot(day, product, work.blanch, ready);
  if (work.pot === undefined) return undefined;
  const litersPerKg = ready / customary('pot-density') + beside;
  return cookedInPot(day, product, work.pot, { litersPerKg, kgPerKg: ready + beside, boiledOffPerKg: 0 });
}

/** A recipe that ends in the freezer: packs of one weight. */
export function makeInFreezer(day: Day, product: Product): Made {
  const { wanted, row, lots, food, index } = product;
  const { kitchen } = day.request;
  if (kitchen.freezer === undefined)
    return leftOut(wanted, { code: 'no-freezer', text: 'the kitchen has no freezer room', instead: 'can or dry it' });
  const work = workOf(row, 'hot');
  const size = wanted.packSize ?? PACK;
  const sizeKg = valueIn(size, 'kg');
  const yields = lots.map((lot) => yieldFromLot(day, lot, product.form));
  const { kg: more } = tasteAdds(product);
  const ready = Math.max(...yields.map((given) => given.ready.high));
  const batch = packedBatch(product, sizeKg);
  const parts = { parts: partsOf(product, 'hot'), liters: 1, ...(batch === undefined ? {} : { batch }) };
  const beside = litersBeside(parts, ready / sizeKg, ready);
  const pot = within(index, () => potFor(day, product, work, ready, beside));
  if (pot === undefined && (work.blanch !== undefined || work.pot !== undefined))
    return leftOut(wanted, {
      code: 'no-pot',
      text: 'the kitchen has no pot to heat it in before it is frozen',
      instead: 'name a pot',
    });
  const energy = frozen(within(index, () => waterOf(day, food.name)).water);
  const supplies = lots.map((lot, at) => {
    const given = yields[at] as (typeof yields)[number];
    return taking(supplyOf(lot, given, withMore(scaleRange(given.ready, 1 / sizeKg), more)), given.ready, {
      stove: pot?.heat,
      electricity: energy.kWh,
    });
  });
  const each = roomPerKg(product);
  const room = sizeKg * (each.liters + beside / ready);
  const box = roomInBox(product, room);
  const { workBasis, ...common } = commonOf(day, product, work, 1 / (supplies[0]?.unitsPerKg.likely ?? 1));
  return {
    label: nameOf(product),
    row,
    food: food.name,
    ...(product.form === undefined ? {} : { form: product.form }),
    ...countedIn('pack', `${size.value} ${size.unit}`),
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies,
      pantry: pantryOf(parts),
      stockPerUnit: [
        { stock: BAGS, amount: 1 },
        { stock: FREEZER_ROOM, amount: room },
        { stock: FREEZER_LOAD, amount: sizeKg },
      ],
      ...(pot === undefined ? {} : { cook: pot.cook }),
      after: { kind: 'freeze', minutes: 60 * customary('freeze-through') },
    },
    describe: (decided) => ({
      recipe: ingredientLines(day, parts, decided),
      ...(pot === undefined ? {} : { cookMinutes: pot.cook.minutes }),
      packs: {
        packSize: size,
        ...(box === undefined ? {} : { headspace: box.headspace }),
        room: quantityIn(room, 'L', day.metric ? 'L' : 'quart'),
      },
      steps: [...stepsWithPot(work, pot), ...kept(row, 'hot')],
      basis: joinBasis(
        [pageOf(row, 'directions', 'the recipe')],
        standsBehind('packs.room', each.basis),
        box?.basis ?? [],
        pot?.basis ?? [],
        standsBehind('ready', ...yields.map((given) => given.basis)),
        standsBehind('energy', energy.basis),
        workBasis,
      ),
      cautions: joinCautions(
        box?.cautions ?? [],
        cautionsFor(row, product.foods),
        pot?.cautions ?? [],
        ...yields.map(({ cautions }) => cautions),
      ),
    }),
  };
}
