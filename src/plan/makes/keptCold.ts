import { valueIn } from '../../quantity/scale';
import { cautionsFor } from '../../recipes/cautions';
import { pageOf } from '../../recipes/rows/rows';
import { operationOf, stepText } from '../../recipes/step';
import { joinBasis, joinCautions } from '../../sources/basis';
import { readJar } from '../../words/jar';
import { planCaution } from '../figures/cautions';
import { standsBehind } from '../figures/standsBehind';
import type { Activity } from '../request/activity';
import { jarsOf } from '../request/stock';
import { type Batch, batchOf, byBatch, type Filling, isWhole } from './amounts';
import { countedIn } from './counted';
import { taking } from './energyTaken';
import { roomInJar } from './headspace';
import type { Product } from './making';
import { commonOf, type Day, type Made, supplyOf, WHOLE_LOT } from './making';
import { nameOf } from './naming';
import { noAmounts } from './needs';
import { alsoFrom, ingredientLines, kept, pantryOf, partsFor } from './recipe';
import { noPotFor, recipePot } from './recipePot';
import { within } from './within';
import { printedMinutes, type RecipeWork, workOf } from './work';

const wholeTrimmings = (lots: Product['lots'], batch: Batch): Filling => {
  const per = (jars: number) => jars / batch.kg;
  const units = {
    low: per(batch.jars.low),
    likely: per((batch.jars.low + batch.jars.high) / 2),
    high: per(batch.jars.high),
  };
  return { batch, basis: batch.basis, cautions: [], lots: lots.map((lot) => ({ lot, given: WHOLE_LOT, units })) };
};

/** What keeps in a crock or a refrigerator and is not canned: ferments, refrigerator pickles and jam, vinegar, stock. */
export function makeKeptCold(day: Day, product: Product): Made {
  const { wanted, row, lots, index } = product;
  const work = workOf(row, 'hot');
  const jar = wanted.jar ?? row.yields?.[0]?.jar ?? 'quart';
  const batch = within(index, () => batchOf(product, jar));
  if (batch === undefined) return noAmounts(product);
  const ofTrimmings = row.madeOf === 'trimmings';
  const filling = ofTrimmings ? wholeTrimmings(lots, batch) : byBatch(day, product, batch);
  const parts = partsFor(product, 'hot', jar, batch);
  const noRoom = noPotFor(day, product, filling, parts);
  if (noRoom !== undefined) return noRoom;
  const pot = within(index, () => recipePot(day, product, { work, filling, parts, withFood: work.end !== 'ferment' }));
  const supplies = filling.lots.map(({ lot, given, units }) =>
    taking(supplyOf(lot, given, units), { low: 1, likely: 1, high: 1 }, { stove: pot?.heat }),
  );
  const { workBasis, ...common } = commonOf(day, product, work, 1 / (supplies[0]?.unitsPerKg.likely ?? 1));
  const crock = work.end === 'ferment' || ofTrimmings;
  const room = crock ? undefined : roomInJar(product, jar);
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
      ...(room === undefined ? {} : { headspace: room.headspace }),
      ...(pot === undefined ? {} : { cookMinutes: pot.cook.minutes }),
      steps: [...stepsKeptCold(work), ...kept(row, 'hot')],
      basis: joinBasis(
        [pageOf(row, 'ingredients', 'the recipe')],
        standsBehind('units', batch.basis),
        standsBehind('ready', ...filling.lots.map(({ given }) => given.basis)),
        room?.basis ?? [],
        pot?.basis ?? [],
        workBasis,
      ),
      cautions: joinCautions(
        ofTrimmings ? [planCaution('trimmings-clean')] : [],
        cautionsFor(row, product.foods),
        room?.cautions ?? [],
        ...filling.lots.map(({ given }) => given.cautions),
      ),
    }),
  };
}

/** All steps: the sheet has no canner or trays to say the last ones by. What is canned after weeks is not canned by this plan. */
function stepsKeptCold({ steps, last }: RecipeWork): string[] {
  const at = last === undefined ? steps.length : steps.lastIndexOf(last);
  const later = steps.findIndex((step, index) => index > at && step.do === 'process');
  if (later < 0) return steps.map(stepText);
  const heated = steps.findIndex((step, index) => index > at && operationOf(step).takes === 'burner');
  return [...steps.slice(0, heated < 0 ? at + 1 : heated).map(stepText), CANNED_LATER];
}
const CANNED_LATER = 'Keep it cold once it has fermented, or can it by its tested process on another day.';

/** Weeks in the crock go on by themselves. */
function afterwards({ end, last }: RecipeWork): Pick<Activity, 'after'> {
  if (end !== 'ferment' || last === undefined) return {};
  const minutes = printedMinutes(last);
  return minutes === undefined ? {} : { after: { kind: 'ferment', minutes: Math.ceil(minutes) } };
}
