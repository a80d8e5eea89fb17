import { valueIn } from '../../quantity/scale';
import { readJar } from '../../words/jar';
import { recipeCaution } from '../../recipes/cautions';
import { pageOf } from '../../recipes/rows/rows';
import { stepText } from '../../recipes/step';
import { joinBasis, joinCautions } from '../../sources/basis';
import { planCaution } from '../cautions';
import { customary } from '../customary';
import type { Activity } from '../request/activity';
import { jarsOf } from '../request/stock';
import { standsBehind } from '../standsBehind';
import { batchOf, isWhole } from './amounts';
import { countedIn } from './counted';
import { taking } from './energyTaken';
import { commonOf, type Day, type LotYield, leftOut, type Made, supplyOf, within, yieldFromLot } from './making';
import { nameOf } from './naming';
import { cookedInPot, foamOf } from './pots';
import type { Product } from './product';
import { alsoFrom, ingredientLines, kept, litersBeside, partsFor, pantryOf } from './recipe';
import { printedMinutes, type RecipeWork, workOf } from './work';

/** Trimmings go in whole. */
const WHOLE: LotYield = {
  ready: { low: 1, likely: 1, high: 1 },
  trimmings: { low: 0, likely: 0, high: 0 },
  better: 1,
  basis: [],
  cautions: [],
};

/** What keeps in a crock or a refrigerator and is not canned: ferments, refrigerator pickles and jam, vinegar, stock. */
export function makeKeptCold(day: Day, product: Product): Made {
  const { wanted, row, lots, index } = product;
  const work = workOf(row, 'hot');
  const jar = wanted.jar ?? row.yields?.[0]?.jar ?? 'quart';
  const batch = within(index, () => batchOf(product, jar));
  if (batch === undefined) {
    return leftOut(wanted, {
      code: 'no-amounts',
      text: `the page of ${row.name} prints no weight of its food, or no yield`,
      instead: 'make it by the page, outside the plan',
    });
  }
  const ofTrimmings = row.madeOf === 'trimmings';
  const yields = lots.map((lot) => (ofTrimmings ? WHOLE : yieldFromLot(day, lot, product.form)));
  const parts = partsFor(product, 'hot', jar, batch);
  const pot = potFor(day, product, work, litersBeside(parts, batch.jars.high / batch.kg, 1));
  const supplies = lots.map((lot, at) => {
    const given = yields[at] as LotYield;
    const per = (ready: number) => (batch.of === 'raw' ? given.better : ready) / batch.kg;
    const units = {
      low: batch.jars.low * per(given.ready.low),
      likely: ((batch.jars.low + batch.jars.high) / 2) * per(given.ready.likely),
      high: batch.jars.high * per(given.ready.high),
    };
    return taking(supplyOf(lot, given, units), { low: 1, likely: 1, high: 1 }, { stove: pot?.heat });
  });
  const { workBasis, ...common } = commonOf(day, product, work, 1 / (supplies[0]?.unitsPerKg.likely ?? 1));
  const crock = work.end === 'ferment' || ofTrimmings;
  return {
    label: nameOf(product, crock ? undefined : jar),
    row,
    food: product.food.name,
    ...(product.form === undefined ? {} : { form: product.form }),
    ...(crock ? countedIn('quart') : countedIn('jar', jar)),
    liters: valueIn(readJar(crock ? 'quart' : jar).volume, 'L'),
    activity: {
      ...common,
      madeOf: ofTrimmings ? 'trimmings' : 'fruit',
      supplies,
      stockPerUnit: crock ? [] : [{ stock: jarsOf(jar), amount: 1 }],
      pantry: pantryOf(parts),
      also: alsoFrom(day, product, batch),
      ...(isWhole(row) ? { unitsPerBatch: batch.jars.low } : {}),
      ...(pot === undefined ? {} : { cook: pot.cook }),
      ...afterwards(work),
    },
    describe: (decided) => ({
      recipe: ingredientLines(day, parts, decided),
      ...(pot === undefined ? {} : { cookMinutes: pot.cook.minutes }),
      steps: [
        ...work.before.map(stepText),
        ...(work.last === undefined || work.end !== 'ferment' ? [] : [stepText(work.last)]),
        ...kept(row),
      ],
      basis: joinBasis(
        [pageOf(row, 'ingredients', 'the recipe')],
        standsBehind('units', batch.basis),
        standsBehind('ready', ...yields.map((given) => given.basis)),
        pot?.basis ?? [],
        workBasis,
      ),
      cautions: joinCautions(
        ofTrimmings ? [planCaution('trimmings-clean')] : [],
        (row.cautions ?? []).map(recipeCaution),
        ...yields.map(({ cautions }) => cautions),
      ),
    }),
  };
}

function potFor(day: Day, product: Product, work: RecipeWork, beside: number) {
  if (work.pot === undefined) return undefined;
  const food = work.end === 'ferment' ? 0 : 1 / customary('pot-density');
  const litersPerKg = foamOf(product.row.makes) * (food + beside);
  return litersPerKg <= 0 ? undefined : cookedInPot(day, product, work.pot, { litersPerKg, boiledOffPerKg: 0 });
}

/** Weeks in the crock go on by themselves. */
function afterwards({ end, last }: RecipeWork): Pick<Activity, 'after'> {
  if (end !== 'ferment' || last === undefined) return {};
  const minutes = printedMinutes(last);
  return minutes === undefined ? {} : { after: { kind: 'ferment', minutes: Math.ceil(minutes) } };
}
