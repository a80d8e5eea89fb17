import { readFood } from '../../foods/fields';
import { fillJar } from '../../jars/fillJar';
import type { TestedProcess } from '../../process/testedProcess';
import { byEnds, sureRange } from '../../quantity/range';
import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { sucroseDensity } from '../../solution/sucroseDensity';
import { joinBasis, joinCautions } from '../../sources/basis';
import { sugarCaution } from '../../sugar/cautions';
import { planCaution } from '../cautions';
import { customary } from '../customary';
import type { Activity } from '../request/activity';
import type { Wanted } from '../request/planInput';
import { standsBehind } from '../standsBehind';
import { canningOf, hasJars, jarAndLid, jarsDescribed, runnable } from './canner';
import { countedIn } from './counted';
import { boiledOff, heatedUp, taking } from './energyTaken';
import { type Batch, batchOf, printedFor, roomFor } from './jamBatch';
import { batchLines, jamSteps } from './jamLines';
import {
  commonOf,
  type Day,
  type LotYield,
  leftOut,
  lotsFor,
  type Made,
  massOf,
  supplyOf,
  within,
  yieldFromLot,
} from './making';
import { nameOf } from './naming';
import { recipeNamed } from './recipe';

/** Jam: whole batches of a printed recipe, each cooked by itself and canned in a load for itself. */
export function makeJam(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { jar = 'half-pint' } = wanted;
  const { kitchen } = day.request;
  if (!hasJars(kitchen, jar))
    return leftOut(wanted, 'no-jars', `no ${jar} jars are in stock`, 'name the jars you have, or another size');
  const printed = printedFor(day, wanted, trade);
  if ('reason' in printed) return leftOut(wanted, printed.code, printed.reason, printed.instead);
  const run = within(product, () => runnable(day, { ...wanted, pack: undefined }, `${trade} jam`, undefined, jar));
  if ('reason' in run) return leftOut(wanted, run.code, run.reason, run.instead);
  const { process } = run;
  const batch = batchOf(printed, trade, process.jar);
  const noRoom = roomFor(day, batch, run.canners, process.jar);
  if (noRoom !== undefined) return leftOut(wanted, noRoom.code, noRoom.reason, noRoom.instead);
  const canners = run.canners.flatMap((canner) =>
    canner.jars < batch.jars.high ? [] : [{ ...canner, jars: batch.jars.high }],
  );
  const netKg = within(product, () => netKgOf(process));
  const form = wanted.form ?? 'crushed';
  const [heat, boil] = [heatedUp(kitchen), boiledOff(kitchen)];
  const yields: LotYield[] = [];
  const energy = energyOf(batch, netKg, heat.kWh, boil.kWh);
  const supplies = lotsFor(day, trade).map((lot) => {
    const given = within(product, () => yieldFromLot(day, lot, form));
    yields.push(given);
    // fruit for whole batches at the poor end of its yield; what is over then stays out of the pot
    const batches = given.ready.low / batch.fruitKg;
    const supply = supplyOf(lot, given, {
      low: batch.jars.low * batches,
      likely: ((batch.jars.low + batch.jars.high) / 2) * batches,
      high: batch.jars.high * batches,
    });
    return taking(supply, sureRange(batches), { stove: energy });
  });
  const { times, workBasis, ...common } = commonOf(day, trade, wanted, product, form, rawPerUnit(supplies));
  const poorest = Math.min(...yields.map(({ ready }) => ready.low));
  const recipe = recipeNamed(printed.row.id, readFood(trade).id);
  return {
    label: nameOf({ ...wanted, jar }, trade),
    food: trade,
    form: 'jam',
    ...countedIn('jar', process.jar),
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies,
      stockPerUnit: jarAndLid(jar),
      unitsPerBatch: batch.jars.low,
      cook: {
        litresPerKg: (batch.litres * poorest) / batch.fruitKg,
        batchLitres: batch.litres,
        minutes: times.cook as number,
        stirred: times.stir ?? false,
      },
      pantry: pantryOf(batch),
      // a batch is filled hot and does not wait for the next one: a load for itself
      canning: { ...canningOf({ ...run, canners }), key: `${canningOf(run).key} jam ${product}` },
    },
    describe: (decided) => ({
      recipe: batchLines(day, batch, decided),
      jars: jarsDescribed(day, process, run.loadMinutes, massOf(day, netKg)),
      cookMinutes: times.cook as number,
      steps: [...recipe.steps, ...jamSteps(day, batch, process.headspace)],
      basis: joinBasis(
        standsBehind('ingredients', batch.basis),
        standsBehind('steps', recipe.basis),
        standsBehind('ready', ...yields.map((given) => given.basis)),
        standsBehind('jars', run.basis),
        standsBehind('energy', heat.basis, boil.basis),
        workBasis,
      ),
      cautions: joinCautions(
        process.cautions,
        printed.lemonJuice > 0 && !printed.lemonOptional ? [sugarCaution('acid-for-set')] : [],
        [sugarCaution('one-batch'), planCaution('jam-sets-by-test')],
        ...yields.map(({ cautions }) => cautions),
      ),
    }),
  };
}

const rawPerUnit = ([first]: Activity['supplies']): number => 1 / (first?.unitsPerKg.likely ?? 1);

/** The net weight of a jar of jam. */
function netKgOf({ jar, headspace }: TestedProcess): number {
  const { density } = sucroseDensity({ brix: customary('jam-brix'), temperature: '20 degC' });
  return valueIn(fillJar({ jar, headspace, density }).netMass as Quantity<'mass'>, 'kg');
}

/** KWh of one batch: fruit and sugar heated, and the water boiled off that its yield leaves out. */
function energyOf({ fruitKg, sugarKg, jars }: Batch, netKg: number, heat: Range<number>, boil: Range<number>) {
  const inPot = fruitKg + sugarKg;
  const water = Math.max(0, inPot - ((jars.low + jars.high) / 2) * netKg);
  return byEnds(heat, boil, (perKg, perKgOff) => inPot * perKg + water * perKgOff);
}

/** Kg from the pantry for each jar readied: a batch readies its most. */
const pantryOf = ({ pantry, jars }: Batch): NonNullable<Activity['pantry']> =>
  Object.fromEntries([...pantry].map(([item, kg]) => [item, { perUnit: kg / jars.high, perReadyKg: 0 }]));
