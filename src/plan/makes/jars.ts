import { fillJar } from '../../jars/fillJar';
import { canLoad } from '../../process/canLoad';
import { type TestedProcess, type TestedProcessInput, testedProcess } from '../../process/testedProcess';
import { rawForJars } from '../../produce/rawForJars';
import { byEnds, scaleRange, sureRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { sucroseDensity } from '../../solution/sucroseDensity';
import { type Basis, joinBasis, joinCautions } from '../../sources/basis';
import { jamBalance } from '../../sugar/jamBalance';
import { pectinNeeded } from '../../sugar/pectinNeeded';
import type { Canning } from '../activity';
import { planCaution } from '../cautions';
import type { Ingredient } from '../dayPlan';
import { canningEnergy } from '../energy/canningEnergy';
import { boiledOff, burnerOf, cooked, heatedUp, inKilowattHours, taking } from '../energyTaken';
import { learnedFigure } from '../learned';
import { type AcidChosen, acidChosen, kgOfMeasure } from '../pantry';
import type { Kitchen, Wanted } from '../planInput';
import { sugarCupKg, syrupForJars } from '../syrupForJars';
import {
  commonOf,
  compositionOf,
  type Day,
  headspaceText,
  type JarsDescribed,
  type LotYield,
  leftOut,
  lotsFor,
  type Made,
  massOf,
  nameOf,
  supplyOf,
  unitsFrom,
  volumeOf,
  within,
  yieldFromLot,
} from './context';

type Method = NonNullable<Wanted['method']>;

/** A process that this kitchen can run. */
interface Runnable {
  readonly basis: readonly Basis[];
  readonly process: TestedProcess;
  readonly canners: Canning['canners'];
  readonly loadMinutes: Range<number>;
}

/** Water in a canner where the kitchen names none: common practice, no source. */
const WATER: Readonly<Record<Method, Quantity<'volume'>>> = {
  'boiling-water': { value: 12, unit: 'quart' },
  'atmospheric-steam': { value: 2, unit: 'quart' },
  'dial-gauge': { value: 3, unit: 'quart' },
  'weighted-gauge': { value: 3, unit: 'quart' },
};
/** The water that hot and raw packed jars are put into, as the guides print it (see canningRules in stillroom/process). */
const PREHEATED: Readonly<Record<'hot' | 'raw', Quantity<'temperature'>>> = {
  hot: { value: 180, unit: 'degF' },
  raw: { value: 140, unit: 'degF' },
};
/** Food in a pot counts as water: close enough for how full the pot is. */
const POT_DENSITY = 1;
/** Jam foams up: it takes half as much room again as other food in a pot (common practice). */
const FOAM = 1.5;

/** Whether jars of this size are in stock; where no stock is named, it is not limited. */
const hasJars = ({ jars }: Kitchen, jar: string): boolean => jars?.some((stock) => stock.jar === jar) ?? true;

/** The stock name of a jar size. */
export const jarStock = (jar: string): string => `jar ${jar}`;

/** Finds the tested process that a canner of this kitchen can run; or the reason why there is none. */
function runnable(
  day: Day,
  wanted: Wanted,
  food: string,
  form: string | undefined,
  jar: string,
): Runnable | { reason: string; instead: string } {
  const { kitchen } = day.request;
  const canners = (kitchen.canners ?? []).flatMap((canner) => Array.from({ length: canner.count ?? 1 }, () => canner));
  const methods = [
    ...new Set<Method>(wanted.method === undefined ? canners.map(({ method }) => method) : [wanted.method]),
  ];
  if (methods.length === 0) return { reason: 'the kitchen has no canner', instead: 'freeze or dry it' };
  let refused: { reason: string; instead: string } | undefined;
  for (const method of methods) {
    const question: TestedProcessInput = { food, form, pack: wanted.pack, jar, method, elevation: kitchen.elevation };
    const process = testedProcess(question);
    if (!process.tested) {
      refused ??= { reason: process.reason, instead: process.instead };
      continue;
    }
    const able = canners.flatMap((canner, index) => {
      const jars = Object.entries(canner.holds).find(([size]) => size === jar)?.[1];
      if (canner.method !== method || jars === undefined) return [];
      const lit = {
        ...question,
        jars,
        water: canner.water ?? WATER[method],
        burnerPower: burnerOf(kitchen),
      };
      // the canner heats up while the food is prepared, and a second load starts hot
      const warm = { ...lit, waterTemperature: PREHEATED[process.pack === 'raw' ? 'raw' : 'hot'] };
      const load = canLoad(warm);
      const cold = canLoad(lit);
      const energy = { load: canningEnergy(warm), first: canningEnergy(lit) };
      if (!load.tested || !cold.tested || !energy.load.tested || !energy.first.tested) return [];
      const warmUp = cold.steps.find(({ step }) => step === 'heat the water')?.minutes.high ?? 0;
      return [
        {
          canner: index,
          jars,
          minutes: Math.ceil(load.total.high),
          warmUp: Math.ceil(warmUp),
          energyPerLoad: inKilowattHours(energy.load.energy),
          energyToWarmUp: byEnds(
            inKilowattHours(energy.first.energy),
            inKilowattHours(energy.load.energy),
            (first, load) => first - load,
          ),
          range: load.total,
          basis: energy.load.basis,
        },
      ];
    });
    const [first] = able;
    if (first !== undefined) return { process, canners: able, loadMinutes: first.range, basis: first.basis };
    refused ??= {
      reason: `no ${method} canner here holds ${jar} jars`,
      instead: 'name a canner that does, or use another jar',
    };
  }
  return refused as { reason: string; instead: string };
}

function jarsDescribed(
  day: Day,
  process: TestedProcess,
  loadMinutes: Range<number>,
  netMass?: Quantity<'mass'>,
): JarsDescribed {
  const acid = process.acid?.text;
  const fill = fillJar({ jar: process.jar, headspace: process.headspace });
  return {
    jar: process.jar,
    headspace: process.headspace,
    fillVolume: volumeOf(day, fill.fillVolume),
    ...(netMass === undefined ? {} : { netMass }),
    pack: process.pack,
    method: process.method,
    minutes: process.minutes,
    ...(process.pressure === undefined ? {} : { pressure: process.pressure }),
    ...(acid === undefined ? {} : { acid }),
    sterilizeJars: process.sterilizeJars,
    loadMinutes,
  };
}

const canningOf = ({ process, canners }: Runnable): Canning => ({
  key: [process.method, process.jar, `${process.minutes} min`, process.pressure?.value ?? ''].join(' ').trim(),
  jar: process.jar,
  canners,
});

/** Fruit or vegetables in jars: pieces, sauce, juice, butter, with a tested process. */
export function makeJars(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { jar, form } = wanted;
  if (jar === undefined) return leftOut(wanted, 'no jar size was named', 'name one, such as "pint"');
  if (!hasJars(day.request.kitchen, jar))
    return leftOut(wanted, `no ${jar} jars are in stock`, 'name the jars you have, or another size');
  const run = within(product, () => runnable(day, wanted, trade, form, jar));
  if ('reason' in run) return leftOut(wanted, run.reason, run.instead);
  const { process } = run;
  const shape = form ?? process.form;
  const need = within(product, () => rawForJars({ produce: trade, form: shape, jar, jars: 1 }));
  const learned = learnedFigure(day.learned, 'rawPerJar', trade, shape, jar);
  const perJar = (better: number, { low, likely, high } = need.raw): Range<number> => ({
    low: valueIn(low, 'kg') / better,
    likely: valueIn(likely, 'kg') / better,
    high: valueIn(high, 'kg') / better,
  });
  const { times, workBasis, ...common } = commonOf(day, trade, wanted, product, shape, valueIn(need.raw.likely, 'kg'));
  const { cook } = times;
  const cooking =
    process.pack === 'raw' || cook === undefined ? undefined : within(product, () => cooked(day.request.kitchen, cook));
  const yields = new Map<number, LotYield>();
  const supplies = lotsFor(day, trade).map((lot) => {
    const given = within(product, () => yieldFromLot(day, lot, shape));
    yields.set(lot.index, given);
    // what jars took before, unless this lot was weighed
    const own = lot.ready === undefined ? learned : undefined;
    const supply = supplyOf(
      lot,
      given,
      unitsFrom(own === undefined ? perJar(given.better) : perJar(1, own.figure.raw)),
    );
    // all but what falls off is heated, though some of it boils away
    const { low, likely, high } = given.trimmings;
    const heated = { low: 1 - high, likely: 1 - likely, high: 1 - low };
    return cooking === undefined ? supply : taking(supply, heated, { stove: cooking.heat });
  });
  const syrup = wanted.syrup === undefined ? undefined : syrupForJars(wanted.syrup, jar);
  const given = [...yields.values()];
  const dropped = Math.min(...given.map(({ trimmings }) => trimmings.low));
  const acid = acidOfJar(day, process);
  return {
    label: nameOf(wanted, trade),
    produce: trade,
    form: shape,
    unit: `${process.jar} jar`,
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies,
      stockPerUnit: { [jarStock(jar)]: 1, lid: 1 },
      pantry: {
        ...(syrup === undefined ? {} : { sugar: { perUnit: syrup.sugarKg(1), perReadyKg: 0 } }),
        ...(acid === undefined ? {} : { [acid.item]: { perUnit: acid.kg, perReadyKg: 0 } }),
      },
      ...(cooking === undefined
        ? {}
        : {
            cook: {
              litresPerKg: (1 - dropped) / POT_DENSITY,
              minutes: cooking.minutes,
              stirred: times.stir ?? false,
              energyPerBatch: cooking.hold,
            },
          }),
      canning: canningOf(run),
    },
    describe: ({ ready }) => {
      const recipe: Ingredient[] = [];
      if (syrup !== undefined) {
        recipe.push(
          {
            what: `sugar for ${wanted.syrup} syrup`,
            ...(day.metric
              ? { amount: massOf(day, syrup.sugarKg(ready)) }
              : { amount: syrup.sugar(ready), or: massOf(day, syrup.sugarKg(ready)) }),
          },
          { what: `water for ${wanted.syrup} syrup`, amount: volumeOf(day, syrup.water(ready)) },
        );
      }
      if (acid !== undefined) recipe.push(acidIngredient(day, acid, process.jar, ready));
      return {
        recipe,
        jars: jarsDescribed(day, process, run.loadMinutes),
        ...(cooking === undefined ? {} : { cookMinutes: cooking.minutes }),
        steps: jarSteps(day, process, syrup !== undefined),
        basis: joinBasis(
          need.basis,
          learned === undefined ? [] : [learned.basis],
          ...given.map(({ basis }) => basis),
          run.basis,
          cooking?.basis ?? [],
          syrup?.basis ?? [],
          acid?.basis ?? [],
          workBasis,
        ),
        cautions: joinCautions(process.cautions, need.cautions, ...given.map(({ cautions }) => cautions)),
      };
    },
  };
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
    amount: volumeOf(day, all),
    note: `enough for ${jars} ${jar} jars where no other acid is chosen`,
  };
}

/** A process holds for a full jar only. */
const PART_FILLED = 'A part-filled last jar to the fridge, not into the canner.';

function jarSteps(day: Day, process: TestedProcess, syrup: boolean): string[] {
  const hot = process.pack === 'hot';
  return [
    hot
      ? `Heat the food through${syrup ? ' in the syrup' : ''} and fill hot into hot jars.`
      : `Fill the jars raw and cover with boiling ${syrup ? 'syrup' : 'liquid'}.`,
    `Leave ${headspaceText(day, process.headspace)} of headspace; free the air bubbles and check it again; wipe the rims; put on the lids.`,
    PART_FILLED,
  ];
}

/** The solids that jam is cooked to where nothing else is asked. */
const FINISH_SOLIDS = 0.65; // 21 CFR 150.160: not less than 65 percent soluble solids
/** Kg of sugar for each kg of fruit where nothing else is asked (common practice: weight for weight). */
const SUGAR_TO_FRUIT = 1;

/** Grams of sugar that a gram of pectin sets, where nothing else is said. */
const PECTIN_GRADE = 100;

/** Kg of pectin for each kg of fruit, the full dose for its sugar. */
function pectinOf(sugarToFruit: number, grade: number) {
  const { pectin, basis } = pectinNeeded({ sugar: { value: sugarToFruit, unit: 'kg' }, grade });
  return { perKg: pectin.value, grade, basis };
}

/** Less sugar than this for each kg of fruit is a reduced-sugar spread (common practice). */
const LEAST_SUGAR = 0.5;

/** Jam: fruit and sugar cooked to a share of solids, by mass balance, with the process of jams. */
export function makeJam(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { jar = 'half-pint' } = wanted;
  if (!hasJars(day.request.kitchen, jar))
    return leftOut(wanted, `no ${jar} jars are in stock`, 'name the jars you have, or another size');
  const run = within(product, () => runnable(day, { ...wanted, pack: undefined }, `${trade} jam`, undefined, jar));
  if ('reason' in run) return leftOut(wanted, run.reason, run.instead);
  const { process } = run;
  const finishSolids = wanted.finishSolids ?? FINISH_SOLIDS;
  const sugarToFruit = wanted.sugarToFruit ?? SUGAR_TO_FRUIT;
  if (finishSolids < FINISH_SOLIDS || sugarToFruit < LEAST_SUGAR)
    return leftOut(
      wanted,
      'the process is for jam with its full sugar, cooked to 65 % solids; a reduced-sugar spread has its own tested recipe',
      'ask for the usual sugar and solids, or freeze it',
    );
  const { density } = within(product, () => sucroseDensity({ brix: 100 * finishSolids, temperature: '20 degC' }));
  const filled = fillJar({ jar: process.jar, headspace: process.headspace, density });
  const netKg = valueIn(filled.netMass as Quantity<'mass'>, 'kg');
  const printedSolids = compositionOf(trade).solubleSolids;
  const form = wanted.form ?? 'crushed';
  const pectin = wanted.pectin === true ? pectinOf(sugarToFruit, wanted.pectinGrade ?? PECTIN_GRADE) : undefined;
  const [heat, boil] = [heatedUp(day.request.kitchen), boiledOff(day.request.kitchen)];
  const yields: LotYield[] = [];
  const basis: Basis[] = [];
  const supplies = lotsFor(day, trade).flatMap((lot) => {
    const solids = lot.brix === undefined ? printedSolids : sureRange(lot.brix / 100);
    if (solids === undefined) return [];
    const given = within(product, () => yieldFromLot(day, lot, form));
    yields.push(given);
    const balance = (fruitSolids: number): { jam: number; boiledOff: number } => {
      const answer = within(product, () =>
        jamBalance({
          fruit: { value: 1, unit: 'kg' },
          fruitSolids,
          sugarToFruit,
          finishSolids,
          ...(pectin === undefined ? {} : { pectin: { value: pectin.perKg, unit: 'kg' } }),
        }),
      );
      basis.push(...answer.basis);
      return { jam: answer.jam.value, boiledOff: answer.waterRemoved.value };
    };
    const [poor, likely, rich] = [balance(solids.low), balance(solids.likely), balance(solids.high)];
    const supply = supplyOf(lot, given, {
      low: (given.ready.low * poor.jam) / netKg,
      likely: (given.ready.likely * likely.jam) / netKg,
      high: (given.ready.high * rich.jam) / netKg,
    });
    // what boils off keeps it at the boil; juicy fruit has the most of it
    const water = { low: rich.boiledOff, likely: likely.boiledOff, high: poor.boiledOff };
    const off = byEnds(water, boil.kWh, (kg, each) => kg * each);
    const stove = byEnds(scaleRange(heat.kWh, 1 + sugarToFruit), off, (one, other) => one + other);
    return [taking(supply, given.ready, { stove })];
  });
  if (supplies.length === 0)
    return leftOut(wanted, `no soluble solids are published for ${trade}`, 'measure them and give the lot its Brix');
  const { times, workBasis, ...common } = commonOf(
    day,
    trade,
    wanted,
    product,
    form,
    1 / (supplies[0]?.unitsPerKg.likely ?? 1),
  );
  const richest = Math.max(...yields.map(({ ready }) => ready.high));
  return {
    label: nameOf({ ...wanted, jar }, trade),
    produce: trade,
    form: 'jam',
    unit: `${process.jar} jar`,
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies,
      stockPerUnit: { [jarStock(jar)]: 1, lid: 1 },
      cook: {
        litresPerKg: FOAM * richest * (1 / POT_DENSITY + sugarToFruit / SUGAR_DENSITY),
        minutes: times.cook as number,
        stirred: times.stir ?? false,
      },
      pantry: {
        sugar: { perUnit: 0, perReadyKg: sugarToFruit },
        ...(pectin === undefined ? {} : { pectin: { perUnit: 0, perReadyKg: pectin.perKg } }),
      },
      canning: canningOf(run),
    },
    describe: ({ readyKg }) => ({
      recipe: [
        {
          what: 'sugar for the prepared fruit, by weight',
          amount: massOf(day, readyKg.likely * sugarToFruit),
          ...(day.metric ? {} : { or: sugarCups(readyKg.likely * sugarToFruit) }),
          note: `${sugarToFruit} of sugar to 1 of fruit: weigh the fruit when it is ready`,
        },
        ...(pectin === undefined
          ? []
          : [
              {
                what: 'pectin',
                amount: massOf(day, readyKg.likely * pectin.perKg),
                note: `of grade ${pectin.grade}, 1 of pectin to ${pectin.grade} of sugar: weigh it to the gram`,
              },
            ]),
      ],
      jars: jarsDescribed(day, process, run.loadMinutes, massOf(day, netKg)),
      cookMinutes: times.cook as number,
      steps: [
        `Cook fruit and sugar to ${Math.round(100 * finishSolids)} % solids, stirring; test for the set; skim.`,
        `Fill hot into hot jars, ${headspaceText(day, process.headspace)} of headspace; wipe the rims; put on the lids.`,
        PART_FILLED,
      ],
      basis: joinBasis(
        basis,
        ...yields.map((given) => given.basis),
        run.basis,
        pectin?.basis ?? [],
        heat.basis,
        boil.basis,
        workBasis,
      ),
      cautions: joinCautions(
        process.cautions,
        [planCaution('jam-sets-by-test')],
        ...yields.map(({ cautions }) => cautions),
      ),
    }),
  };
}

/** Kg of sugar by the cup. */
const sugarCups = (kilograms: number): Quantity<'volume'> =>
  quantityIn<'volume'>(kilograms / sugarCupKg(), 'cup', 'cup');

/** g/mL of sugar dissolved in fruit (sucrose crystal density). */
const SUGAR_DENSITY = 1.587;
