import { readFood } from '../../foods/fields';
import type { TestedProcess } from '../../process/testedProcess';
import { knownOr } from '../../produce/shape';
import { rawForJars } from '../../produce/yields/rawForJars';
import { mapRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, joinBasis, joinCautions } from '../../sources/basis';
import { customary } from '../customary';
import type { Supply } from '../request/activity';
import { learnedFigure } from '../request/learned';
import type { Wanted } from '../request/planInput';
import type { Ingredient } from '../request/plannedProduct';
import { standsBehind } from '../standsBehind';
import { canningOf, hasJars, jarAndLid, jarsDescribed, runnable } from './canner';
import { countedIn } from './counted';
import { type Cooking, cooked, taking } from './energyTaken';
import {
  commonOf,
  type Day,
  type Decided,
  headspaceText,
  type LotYield,
  leftOut,
  lotsFor,
  type Made,
  massOf,
  supplyOf,
  unitsFrom,
  volumeOf,
  within,
  yieldFromLot,
} from './making';
import { nameOf } from './naming';
import { type AcidChosen, acidChosen, kgOfMeasure } from './pantry';
import { ingredientLines, type PrintedRecipe, pantryOf, recipeFor } from './recipe';
import { type SyrupForJars, syrupForJars } from './syrupForJars';

/** Fruit or vegetables in jars: pieces, sauce, juice, butter, with a tested process. */
export function makeJars(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { jar, form } = wanted;
  if (jar === undefined) return leftOut(wanted, 'no-jar-size', 'no jar size was named', 'name one, such as "pint"');
  if (!hasJars(day.request.kitchen, jar))
    return leftOut(wanted, 'no-jars', `no ${jar} jars are in stock`, 'name the jars you have, or another size');
  const run = within(product, () => runnable(day, wanted, trade, form, jar));
  if ('reason' in run) return leftOut(wanted, run.code, run.reason, run.instead);
  const { process } = run;
  const recipe = recipeFor(process, readFood(trade).id);
  const acid = acidOfJar(day, process);
  if (recipe === undefined || acidIsMissing(process, recipe, acid)) {
    return leftOut(
      wanted,
      'no-recipe',
      `these tables hold no printed recipe for ${process.food} (${process.form}): what else goes into the jars, and how they are filled, is not known`,
      'freeze or dry it, or can it in a form whose recipe these tables hold, such as pieces',
    );
  }
  const shape = form ?? process.form;
  const need = within(product, () => knownOr(rawForJars({ food: trade, form: shape, jar, jars: 1 }), 'form', shape));
  const learned = learnedFigure(day.learned, 'rawPerJar', trade, shape, jar);
  const { times, workBasis, ...common } = commonOf(day, trade, wanted, product, shape, valueIn(need.raw.likely, 'kg'));
  const { cook } = times;
  const cooking =
    process.pack === 'raw' || cook === undefined ? undefined : within(product, () => cooked(day.request.kitchen, cook));
  const { supplies, yields: given } = suppliesOf(day, trade, shape, product, need.raw, learned, cooking);
  const syrup = wanted.syrup === undefined ? undefined : syrupForJars(wanted.syrup, jar);
  const dropped = Math.min(...given.map(({ trimmings }) => trimmings.low));
  return {
    label: nameOf(wanted, trade),
    food: trade,
    form: shape,
    ...countedIn('jar', process.jar),
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies,
      stockPerUnit: jarAndLid(jar),
      pantry: {
        ...pantryOf(recipe, process.jar),
        ...(syrup === undefined ? {} : { sugar: plus(pantryOf(recipe, process.jar).sugar, syrup.sugarKg(1)) }),
        ...(acid === undefined ? {} : { [acid.item]: { perUnit: acid.kg, perReadyKg: 0 } }),
      },
      ...(cooking === undefined
        ? {}
        : {
            cook: {
              litresPerKg: (1 - dropped) / customary('pot-density'),
              minutes: cooking.minutes,
              stirred: times.stir ?? false,
              energyPerBatch: cooking.hold,
            },
          }),
      canning: canningOf(run),
    },
    describe: (decided) => ({
      recipe: [
        ...(syrup === undefined ? [] : syrupLines(day, wanted, syrup, decided)),
        ...(acid === undefined ? [] : [acidIngredient(day, acid, process.jar, decided.ready)]),
        ...ingredientLines(day, recipe, process.jar, decided),
      ],
      jars: jarsDescribed(day, process, run.loadMinutes),
      ...(cooking === undefined ? {} : { cookMinutes: cooking.minutes }),
      steps: [...recipe.steps, ...jarSteps(day, process, recipe, syrup !== undefined), ...kept(recipe)],
      basis: joinBasis(
        standsBehind('units', need.basis, learned === undefined ? [] : [learned.basis]),
        standsBehind('ingredients', recipe.basis, syrup?.basis ?? [], acid?.basis ?? []),
        standsBehind('ready', ...given.map(({ basis }) => basis)),
        standsBehind('jars', run.basis),
        standsBehind('energy', cooking?.basis ?? []),
        workBasis,
      ),
      cautions: joinCautions(process.cautions, need.cautions, ...given.map(({ cautions }) => cautions)),
    }),
  };
}

/** The lots as they go into jars that take so much of a usual lot. */
function suppliesOf(
  day: Day,
  trade: string,
  form: string,
  product: number,
  raw: Range<Quantity<'mass'>>,
  learned: { readonly figure: Range<Quantity<'mass'>> } | undefined,
  cooking: Cooking | undefined,
): { readonly supplies: readonly Supply[]; readonly yields: readonly LotYield[] } {
  const perJar = (better: number, each: Range<Quantity<'mass'>>): Range<number> =>
    mapRange(each, (mass) => valueIn(mass, 'kg') / better);
  const yields: LotYield[] = [];
  const supplies = lotsFor(day, trade).map((lot) => {
    const given = within(product, () => yieldFromLot(day, lot, form));
    yields.push(given);
    // what jars took before, unless this lot was weighed
    const own = lot.readyShare === undefined ? learned : undefined;
    const each = own === undefined ? perJar(given.better, raw) : perJar(1, own.figure);
    const supply = supplyOf(lot, given, unitsFrom(each));
    // all but what falls off is heated, though some of it boils away
    const { low, likely, high } = given.trimmings;
    const heated = { low: 1 - high, likely: 1 - likely, high: 1 - low };
    return cooking === undefined ? supply : taking(supply, heated, { stove: cooking.heat });
  });
  return { supplies, yields };
}

/** Whether the process needs an acid that neither the recipe here names nor a jar can be given. */
function acidIsMissing({ acid }: TestedProcess, { parts }: PrintedRecipe, chosen: JarAcid | undefined): boolean {
  if (acid === undefined) return false;
  if (acid.where === 'each jar') return chosen === undefined;
  return !parts.some(({ role, neverLess }) => role === 'acid' && neverLess);
}

/** As much more for each unit. */
const plus = (one: PerUnit | undefined, perUnit: number): PerUnit => ({
  perUnit: (one?.perUnit ?? 0) + perUnit,
  perReadyKg: one?.perReadyKg ?? 0,
  perRawKg: one?.perRawKg ?? 0,
});
type PerUnit = NonNullable<ReturnType<typeof pantryOf>['sugar']>;

function syrupLines(day: Day, { syrup: strength }: Wanted, syrup: SyrupForJars, { ready }: Decided): Ingredient[] {
  return [
    {
      what: `sugar for ${strength} syrup`,
      role: 'sugar',
      ...(day.metric
        ? { amount: massOf(day, syrup.sugarKg(ready)) }
        : { amount: syrup.sugar(ready), or: massOf(day, syrup.sugarKg(ready)) }),
    },
    { what: `water for ${strength} syrup`, role: 'liquid', amount: volumeOf(day, syrup.water(ready)) },
  ];
}

interface JarAcid extends AcidChosen {
  /** Of one jar. */
  readonly kg: number;
  readonly basis: readonly Basis[];
}

/** The acid that goes into each jar, where the process asks for some. */
function acidOfJar(day: Day, { acid }: TestedProcess): JarAcid | undefined {
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

/** A process holds for a full jar only. */
export const PART_FILLED = 'A part-filled last jar to the fridge, not into the canner.';

/** What must not be changed, as a step of its own: it is read where the work is done. */
const kept = ({ mustKeep }: PrintedRecipe): string[] =>
  mustKeep.length === 0 ? [] : [`Change none of this: ${mustKeep.join('; ')}.`];

function jarSteps(day: Day, process: TestedProcess, { cover: liquid }: PrintedRecipe, syrup: boolean): string[] {
  const covering = syrup ? 'boiling syrup' : liquid;
  const cover = covering === undefined ? '' : ` and cover with ${covering}`;
  return [
    process.pack === 'raw' ? `Fill the jars raw${cover}.` : `Fill hot into hot jars${cover}.`,
    `Leave ${headspaceText(day, process.headspace)} of headspace; free the air bubbles and check it again; wipe the rims; put on the lids.`,
    PART_FILLED,
  ];
}
