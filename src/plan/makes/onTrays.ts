import { mapRange } from '../../quantity/range';
import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { cautionsFor } from '../../recipes/cautions';
import { OPERATIONS, pageOf } from '../../recipes/rows/rows';
import type { StepRow } from '../../recipes/rows/tables';
import { stepText } from '../../recipes/step';
import { joinBasis, joinCautions } from '../../sources/basis';
import { planCaution } from '../figures/cautions';
import { customary } from '../figures/customary';
import { standsBehind } from '../figures/standsBehind';
import { machineLoads } from '../kitchen/loadsOf';
import type { Activity, Supply } from '../request/activity';
import { BAGS } from '../request/stock';
import { withMore } from './amounts';
import { notAsPrinted } from './asPrinted';
import { countedIn } from './counted';
import { taking } from './energyTaken';
import type { Product } from './making';
import { commonOf, type Day, type LotYield, leftOut, type Made, supplyOf, WHOLE_LOT, yieldFromLot } from './making';
import { nameOf } from './naming';
import { blanchedInPot, cookedInPot, type PotWorked, stepsWithPot } from './pots';
import { tasteAdds } from './product';
import { ingredientLines, kept, pantryOf, partsOf } from './recipe';
import { freezeDriedLoad, guideOf, type Loaded, piecesDried, sheetsDried, traysOf } from './trays';
import { bagging, minutesOfEach, type RecipeWork, workOf } from './work';

/** A bag of dried food, and a jar of powder, where the cook names no other size. */
const BAG: Quantity<'mass'> = { value: customary('bag'), unit: 'oz' };
const POWDER_JAR: Quantity<'mass'> = { value: customary('powder-jar'), unit: 'oz' };

const loadedBy = (day: Day, product: Product, work: RecipeWork) => {
  if (work.end === 'freeze-dry') return freezeDriedLoad(day, product);
  if (work.before.concat(work.last ?? []).some((step) => step.do === 'spread') || isSpread(product))
    return sheetsDried(day, product);
  return piecesDried(day, product, work.last as StepRow);
};
const isSpread = ({ row }: Product): boolean => row.steps.some((step) => step.do === 'spread');

/** A recipe that ends on trays: in bags when it is dry, in sheets, or ground to powder. */
export function makeOnTrays(day: Day, product: Product): Made {
  const { row, wanted, lots } = product;
  const work = workOf(row, 'hot');
  const unlike = notAsPrinted(product, work.last, guideOf(product)?.targetMoisture);
  if (unlike !== undefined) return unlike;
  const loaded = loadedBy(day, product, work);
  if (!('perTrayKg' in loaded)) return loaded;
  const machine = loaded.where === 'dryer' ? 'dryer' : 'freezeDryer';
  const loads = machineLoads(day.request.kitchen, machine, valueIn(loaded.hours.high, 'h'));
  if (loads === 0) {
    const text = `the ${loaded.where} is busy until the hours of work end`;
    return leftOut(wanted, { code: 'machine-busy', text, instead: 'can or freeze it, or dry it another day' });
  }
  const spread = loaded.sheetKg !== undefined;
  const powder = row.makes === 'powder';
  const size = wanted.packSize ?? (powder ? POWDER_JAR : BAG);
  const unitKg = loaded.sheetKg ?? valueIn(size, 'kg');
  const left = spread ? { low: 1, likely: 1, high: 1 } : loaded.left;
  const ofTrimmings = row.madeOf === 'trimmings';
  const yields = lots.map((lot) => (ofTrimmings ? WHOLE_LOT : yieldFromLot(day, lot, product.form)));
  const { kg: more } = tasteAdds(product);
  const richest = Math.max(...yields.map(({ ready }) => ready.high)) * (1 + more);
  const parts = { parts: partsOf(product, 'hot'), liters: 1 };
  const pot = potFor(day, product, work, richest);
  const supplies = lots.map((lot, index) =>
    supplyFor(lot, yields[index] as LotYield, { left, unitKg, loaded, pot, more }),
  );
  const { workBasis, ...common } = commonOf(
    day,
    product,
    forTrays(work, loaded),
    1 / (supplies[0]?.unitsPerKg.likely ?? 1),
  );
  const { perTray } = loaded.energy;
  return {
    label: nameOf(product),
    row,
    food: product.food.name,
    ...(product.form === undefined ? {} : { form: product.form }),
    ...countedIn(spread ? 'sheet' : powder ? 'jar-of-powder' : 'bag', `${size.value} ${size.unit}`),
    ...(spread ? {} : { size }),
    activity: {
      ...common,
      madeOf: ofTrimmings ? 'trimmings' : 'fruit',
      supplies,
      pantry: pantryOf(parts),
      stockPerUnit: spread || powder ? [] : [{ stock: BAGS, amount: 1 }],
      ...(perTray === undefined ? {} : { energyPerTray: perTray }),
      ...(pot === undefined ? {} : { cook: pot.cook }),
      ...machineOf(loaded, richest, loads),
    },
    describe: (decided) => ({
      recipe: ingredientLines(day, parts, decided),
      ...(pot === undefined ? {} : { cookMinutes: pot.cook.minutes }),
      trays: traysOf(day, loaded, decided.readyKg, decided.trays),
      steps: [...stepsWithPot(work, pot), ...loaded.steps, ...work.after.map(stepText), ...kept(row, 'hot')],
      basis: joinBasis(
        [pageOf(row, 'directions', 'the recipe')],
        loaded.basis,
        standsBehind('ready', ...yields.map((given) => given.basis)),
        pot?.basis ?? [],
        workBasis,
      ),
      cautions: joinCautions(
        ofTrimmings ? [planCaution('trimmings-clean')] : [planCaution('dry-the-same-day')],
        cautionsFor(row, product.foods),
        loaded.cautions,
        pot?.cautions ?? [],
        ...yields.map(({ cautions }) => cautions),
      ),
    }),
  };
}

/** Blanched or cooked before it goes on trays. */
function potFor(day: Day, product: Product, work: RecipeWork, ready: number): PotWorked | undefined {
  if (work.blanch !== undefined) return blanchedInPot(day, product, work.blanch, ready);
  if (work.pot === undefined) return undefined;
  return cookedInPot(day, product, work.pot, {
    litersPerKg: ready / customary('pot-density'),
    kgPerKg: ready,
    boiledOffPerKg: 0,
  });
}

interface Into {
  readonly left: Range<number>;
  readonly unitKg: number;
  readonly loaded: Loaded;
  readonly pot: PotWorked | undefined;
  /** Kg added by taste to each kg of prepared food. */
  readonly more: number;
}
function supplyFor(
  lot: Parameters<typeof supplyOf>[0],
  given: LotYield,
  { left, unitKg, loaded, pot, more }: Into,
): Supply {
  const units = {
    low: (given.ready.low * left.low) / unitKg,
    likely: (given.ready.likely * left.likely) / unitKg,
    high: (given.ready.high * left.high) / unitKg,
  };
  return taking(supplyOf(lot, given, withMore(units, more)), given.ready, {
    stove: pot === undefined ? undefined : mapRange(pot.heat, (kWh) => kWh),
    electricity: loaded.energy.perKg,
  });
}

/** Loading trays is work by the tray, and a bag is filled even where the page does not say so. */
function forTrays(work: RecipeWork, { perTrayKg, sheetKg }: Loaded): RecipeWork {
  const trayMinutes = work.steps
    .filter((step) => step.do === 'load-trays' || step.do === 'spread')
    .reduce((sum, step) => sum + minutesOfEach(OPERATIONS.get(step.do) as Parameters<typeof minutesOfEach>[0]).each, 0);
  const packed = Math.max(0, work.handsPerUnit - trayMinutes);
  return {
    ...work,
    handsPerKg: work.handsPerKg + (sheetKg === undefined ? trayMinutes / perTrayKg : 0),
    handsPerUnit: sheetKg === undefined ? packed || bagging() : trayMinutes + packed,
  };
}

/** The machine: trays for each raw kg at the rich end, and what of a tray's days one load takes. */
function machineOf(
  loaded: Loaded,
  ready: number,
  loads: number,
): Pick<Activity, 'after' | 'traysPerKg' | 'trayShare' | 'freezeDry'> {
  const { perTrayKg, icePerKg, where } = loaded;
  const traysPerKg = ready / perTrayKg;
  const after = {
    kind: where === 'dryer' ? ('dry' as const) : ('freeze-dry' as const),
    minutes: Math.ceil(valueIn(loaded.hours.high, 'min')),
  };
  if (where === 'freeze-dryer') return { after, freezeDry: { waterPerKg: ready * (icePerKg ?? 0), traysPerKg } };
  return { after, traysPerKg, trayShare: 1 / loads };
}
