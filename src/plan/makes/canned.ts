import { fillJar } from '../../jars/fillJar';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { cautionsFor } from '../../recipes/cautions';
import { pageOf } from '../../recipes/rows/rows';
import type { RecipeRow } from '../../recipes/rows/tables';
import { stepText } from '../../recipes/step';
import { sucroseDensity } from '../../solution/sucroseDensity';
import { type Basis, joinBasis, joinCautions } from '../../sources/basis';
import { sugarCaution } from '../../sugar/cautions';
import { planCaution } from '../figures/cautions';
import { customary } from '../figures/customary';
import { standsBehind } from '../figures/standsBehind';
import type { Activity, Supply } from '../request/activity';
import type { Wanted } from '../request/planInput';
import type { Ingredient } from '../request/plannedProduct';
import { type Filling, fillingOf, isAlone, isWhole } from './amounts';
import { canningOf, jarAndLid, jarsDescribed, type Runnable, runnable } from './canner';
import { countedIn } from './counted';
import { taking } from './energyTaken';
import type { Product } from './making';
import {
  commonOf,
  type Day,
  headspaceText,
  type LeftOutProduct,
  leftOut,
  type Made,
  massOf,
  supplyOf,
  volumeOf,
} from './making';
import { nameOf } from './naming';
import { hasAcid, lacksAmounts, noAmounts } from './needs';
import { ownBasis, ownStep } from './ownBook';
import { type AcidChosen, acidChosen, kgOfMeasure } from './pantry';
import type { PlanProcess } from './planProcess';
import type { PotWorked } from './pots';
import { alsoFrom, ingredientLines, kept, type Parts, pantryOf, partsFor } from './recipe';
import { noPotFor, recipePot } from './recipePot';
import { type SyrupForJars, syrupForJars } from './syrupForJars';
import { within } from './within';
import { type RecipeWork, workOf } from './work';

/** All that is decided of a canned product before the program. */
interface Canned {
  readonly run: Runnable;
  readonly work: RecipeWork;
  readonly filling: Filling;
  readonly parts: Parts;
  readonly supplies: readonly Supply[];
  readonly acid?: JarAcid;
  readonly syrup?: SyrupForJars;
  readonly pot?: PotWorked;
}

/** A recipe that ends in the canner: its tested process, its jars, its loads. */
export function makeCanned(day: Day, product: Product): Made {
  const { wanted, row, food, index } = product;
  if (wanted.syrup !== undefined && !takesSyrup(row)) {
    return leftOut(wanted, {
      code: 'recipe-changed',
      text: `the page of ${row.name} prints no syrup over it, and its process holds for the liquid that is printed`,
      instead: 'leave `syrup` off',
    });
  }
  const run = within(index, () => runnable(day, product));
  if (!('process' in run)) return run;
  const { process } = run;
  const filling = within(index, () => fillingOf(day, product, process));
  const parts = partsFor(product, process.pack, process.jar, filling.batch);
  if (lacksAmounts(parts, filling.batch) || (isWhole(row) && filling.batch === undefined)) return noAmounts(product);
  const acid = acidOfJar(day, process);
  const missing =
    process.acid !== undefined && (process.acid.where === 'each jar' ? acid === undefined : !hasAcid(parts));
  if (missing) {
    return leftOut(wanted, {
      code: 'no-acid',
      text: `the process of ${row.name} holds with its acid, and these tables hold no amount of it for ${process.jar} jars`,
      instead: 'use another jar, or freeze or dry it',
    });
  }
  const work = workOf(row, process.pack);
  const noRoom = noPotFor(day, product, filling, parts) ?? noCannerFor(product, filling, run);
  if (noRoom !== undefined) return noRoom;
  const made: Canned = {
    run,
    work,
    filling,
    parts,
    supplies: [],
    ...(acid === undefined ? {} : { acid }),
    ...syrupFor(wanted, process),
  };
  const pot = within(index, () =>
    recipePot(day, product, {
      work,
      filling,
      parts,
      withFood: process.pack !== 'raw',
      ...(made.syrup === undefined ? {} : { syrup: made.syrup.liters(1) }),
    }),
  );
  const supplies = suppliesOf(made, pot);
  return canned(day, product, { ...made, supplies, ...(pot === undefined ? {} : { pot }) }, food.name);
}

/** Whether the page names a syrup of the cook's choice to cover the food with. */
const takesSyrup = ({ ingredients }: RecipeRow): boolean => ingredients.some(({ food }) => food === 'sugar-syrup');

function canned(day: Day, product: Product, made: Canned, trade: string): Made {
  const { wanted, row, index } = product;
  const { run, work, filling, parts, supplies, acid, syrup, pot } = made;
  const { process } = run;
  const rawPerUnit = 1 / (supplies[0]?.unitsPerKg.likely ?? 1);
  const { workBasis, ...common } = commonOf(day, product, work, rawPerUnit);
  const alone = isAlone(row);
  const canning = canningOf(run);
  return {
    label: nameOf(product, process.jar),
    row,
    food: trade,
    ...(product.form === undefined ? {} : { form: product.form }),
    ...countedIn('jar', process.jar),
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies,
      stockPerUnit: jarAndLid(process.jar),
      pantry: withJarItems(pantryOf(parts), acid, syrup),
      also: alsoFrom(day, product, filling.batch),
      ...(isWhole(row) && filling.batch !== undefined ? { unitsPerBatch: filling.batch.jars.low } : {}),
      ...(pot === undefined ? {} : { cook: pot.cook }),
      // a batch that is cooked by itself is filled at once, into a load for itself
      canning: alone && filling.batch !== undefined ? loadsOfBatch(canning, filling.batch.jars.high, index) : canning,
    },
    describe: (decided) => ({
      recipe: [
        ...(syrup === undefined ? [] : syrupLines(day, wanted, syrup, decided.ready)),
        ...(acid === undefined ? [] : [acidIngredient(day, acid, process.jar, decided.ready)]),
        ...ingredientLines(day, parts, decided),
      ],
      jars: jarsDescribed(day, process, run.loadMinutes, netMassOf(day, row, process)),
      ...(pot === undefined ? {} : { cookMinutes: pot.cook.minutes }),
      steps: [
        ...(process.own === undefined ? [] : [ownStep(process.own)]),
        ...work.before.map(stepText),
        ...jarSteps(day, process, row, syrup !== undefined),
        ...kept(row, process.pack),
      ],
      basis: joinBasis(
        process.own === undefined ? [pageOf(row, 'ingredients', 'the printed recipe')] : ownBasis(process.own),
        standsBehind('units', filling.basis),
        standsBehind('ingredients', syrup?.basis ?? [], acid?.basis ?? []),
        standsBehind('ready', ...filling.lots.map(({ given }) => given.basis)),
        standsBehind('canning', run.basis),
        pot?.basis ?? [],
        workBasis,
      ),
      cautions: joinCautions(
        process.cautions,
        cautionsFor(row, product.foods),
        alone ? [sugarCaution('one-batch'), planCaution('jam-sets-by-test')] : [],
        filling.cautions,
        ...filling.lots.map(({ given }) => given.cautions),
      ),
    }),
  };
}

/** The canners that hold all jars of a batch at once, each load one batch. */
const loadsOfBatch = (canning: NonNullable<Activity['canning']>, jars: number, product: number) => ({
  ...canning,
  key: `${canning.key} batch ${product}`,
  canners: canning.canners.flatMap((canner) => (canner.jars < jars ? [] : [{ ...canner, jars }])),
});

/** Why no canner here takes one whole batch at once. */
function noCannerFor(
  { wanted, row }: Product,
  { batch }: Filling,
  { process, canners }: Runnable,
): LeftOutProduct | undefined {
  if (batch !== undefined && isWhole(row) && batch.jars.low === 0) {
    const text = `one batch of ${row.name} does not surely fill a ${process.jar} jar, and it is not made in parts`;
    return leftOut(wanted, { code: 'less-than-a-jar', text, instead: 'use a smaller jar' });
  }
  if (batch === undefined || !isAlone(row)) return undefined;
  if (Math.max(0, ...canners.map(({ jars }) => jars)) >= batch.jars.high) return undefined;
  return leftOut(wanted, {
    code: 'no-canner-for-batch',
    text: `no canner here holds the ${batch.jars.high} ${process.jar} jars of one batch at once`,
    instead: 'use a canner that does, or another jar',
  });
}

/** The lots as they go into the program, each with what its kg take at the stove. */
const suppliesOf = ({ filling }: Pick<Canned, 'filling'>, pot: PotWorked | undefined): Supply[] =>
  filling.lots.map(({ lot, units, given }) => {
    const supply = supplyOf(lot, given, units);
    if (pot === undefined) return supply;
    return taking(supply, ONE, { stove: pot.heat });
  });
const ONE: Range<number> = { low: 1, likely: 1, high: 1 };

type Pantry = NonNullable<Activity['pantry']>;

/** What goes into each jar besides the recipe: acid, and the sugar of a syrup. */
function withJarItems(pantry: Pantry, acid: JarAcid | undefined, syrup: SyrupForJars | undefined): Pantry {
  const { perUnit = 0, perReadyKg = 0, perRawKg = 0 } = pantry.sugar ?? {};
  return {
    ...pantry,
    ...(syrup === undefined ? {} : { sugar: { perUnit: perUnit + syrup.sugarKg(1), perReadyKg, perRawKg } }),
    ...(acid === undefined ? {} : { [acid.item]: { perUnit: acid.kg, perReadyKg: 0 } }),
  };
}

const syrupFor = ({ syrup }: Wanted, { jar }: PlanProcess) =>
  syrup === undefined ? {} : { syrup: syrupForJars(syrup, jar) };

function syrupLines(day: Day, { syrup: strength }: Wanted, syrup: SyrupForJars, jars: number): Ingredient[] {
  return [
    {
      what: `sugar for ${strength} syrup`,
      role: 'sugar',
      forSyrup: true,
      ...(day.metric
        ? { amount: massOf(day, syrup.sugarKg(jars)) }
        : { amount: syrup.sugar(jars), or: massOf(day, syrup.sugarKg(jars)) }),
    },
    { what: `water for ${strength} syrup`, role: 'liquid', forSyrup: true, amount: volumeOf(day, syrup.water(jars)) },
  ];
}

interface JarAcid extends AcidChosen {
  /** Of one jar. */
  readonly kg: number;
  readonly basis: readonly Basis[];
}

/** The acid that goes into each jar, where the process asks for some. */
function acidOfJar(day: Day, { acid }: PlanProcess): JarAcid | undefined {
  const chosen = acid?.where === 'each jar' ? acidChosen(day, acid) : undefined;
  return chosen && { ...chosen, ...kgOfMeasure(chosen.item, chosen.perJar) };
}

function acidIngredient(day: Day, { item, perJar }: JarAcid, jar: string, jars: number): Ingredient {
  const all = quantityIn<'volume'>(valueIn(perJar, 'tbsp') * jars, 'tbsp', 'tbsp');
  return {
    what: item,
    role: 'acid',
    amount: volumeOf(day, all),
    note: `enough for ${jars} ${jar} jars where no other acid is chosen`,
  };
}

/** The net weight of a jar of jam; of other jars none is known. */
function netMassOf(day: Day, row: RecipeRow, { jar, headspace }: PlanProcess): Quantity<'mass'> | undefined {
  if (!isAlone(row)) return undefined;
  const { density } = sucroseDensity({ brix: customary('jam-brix'), temperature: '20 degC' });
  return massOf(day, valueIn(fillJar({ jar, headspace, density }).netMass as Quantity<'mass'>, 'kg'));
}

/** A process holds for a full jar only. */
const PART_FILLED = 'A part-filled last jar to the fridge, not into the canner.';

function jarSteps(day: Day, process: PlanProcess, row: RecipeRow, syrup: boolean): string[] {
  const liquid = row.steps.find((step) => step.do === 'cover' && (step.pack ?? process.pack) === process.pack)?.of;
  const covering = syrup ? 'with boiling syrup' : liquid;
  const cover = covering === undefined ? '' : ` and cover ${covering}`;
  return [
    process.pack === 'raw' ? `Fill the jars raw${cover}.` : `Fill hot into hot jars${cover}.`,
    `Leave ${headspaceText(day, process.headspace)} of headspace; free the air bubbles and check it again; wipe the rims; put on the lids.`,
    ...(isAlone(row) ? ['Cook one batch at a time, as printed: never double it, and leave nothing out.'] : []),
    PART_FILLED,
  ];
}
