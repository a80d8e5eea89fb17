import { fillJar } from '../../jars/fillJar';
import type { TestedProcess } from '../../process/testedProcess';
import { massFromVolume } from '../../produce/weights/massFromVolume';
import { formatQuantity } from '../../quantity/formatQuantity';
import { byEnds, sureRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { sucroseDensity } from '../../solution/sucroseDensity';
import { type Basis, joinBasis, joinCautions } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { sugarCaution } from '../../sugar/cautions';
import { gelTemperature } from '../../sugar/gelTemperature';
import { foodsOfJams, type PrintedJam, printedJams } from '../../sugar/jamRecipe';
import { readJar } from '../../words/jar';
import { planCaution } from '../cautions';
import { potsOf } from '../program/kitchen';
import type { Activity } from '../request/activity';
import type { Ingredient } from '../request/dayPlan';
import type { PantryItem, Wanted } from '../request/planInput';
import { canningOf, hasJars, jarStock, jarsDescribed, runnable } from './canner';
import { boiledOff, heatedUp, taking } from './energyTaken';
import { PART_FILLED } from './jars';
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
  nameOf,
  supplyOf,
  volumeOf,
  within,
  yieldFromLot,
} from './making';
import { kgOfMeasure } from './pantry';
import { recipeNamed, spooned } from './recipe';
import { sugarCupKg } from './syrupForJars';

/** Jam foams up: it takes half as much room again as other food in a pot (common practice). */
const FOAM = 1.5;
/** Crushed or chopped fruit in its juice counts as water: kg of a litre (common practice). */
const CRUSHED_DENSITY = 1;
/** g/mL of sugar dissolved in fruit (sucrose crystal density). */
const SUGAR_DENSITY = 1.587;
/** Soluble solids of finished jam, for its net weight: 21 CFR 150.160 asks for no less. */
const FINISH_BRIX = 65;

/** One batch of a printed recipe in plain numbers; the fuller end where a range is printed. */
interface Batch {
  readonly printed: PrintedJam;
  readonly fruitKg: number;
  readonly sugarKg: number;
  /** In the pot, with the room it needs to foam. */
  readonly litres: number;
  /** Jars of the size asked for: the least and the most that the printed yield fills. */
  readonly jars: { readonly low: number; readonly high: number };
  /** Kg from the pantry. */
  readonly pantry: ReadonlyMap<PantryItem, number>;
  readonly basis: readonly Basis[];
}

/** Why a jam is not made, with what to do instead. */
interface NoJam {
  readonly reason: string;
  readonly instead: string;
}

/** The printed recipe that a product asks for, or the reason why none fits. */
function printedFor({ request }: Day, wanted: Wanted, trade: string): PrintedJam | NoJam {
  const all = printedJams(trade);
  if (all.length === 0) {
    return {
      reason: `these tables hold no printed recipe for ${trade} jam, and jam is canned by a printed recipe only: its acid, pectin and sugar belong to the process`,
      instead: `freeze or dry the fruit; jam recipes are held for ${foodsOfJams().join(', ')}`,
    };
  }
  const kind = typeof wanted.pectin === 'string' ? wanted.pectin : undefined;
  const fit = all.filter(({ pectin }) =>
    kind !== undefined ? pectin === kind : wanted.pectin === undefined || (pectin !== 'none') === wanted.pectin,
  );
  // where the cook leaves it open, the pectin that is in the pantry
  const atHand = new Set(request.kitchen.pantry?.map(({ item }) => item));
  const recipe = fit.find(({ pectin }) => pectin !== 'none' && atHand.has(PECTIN_ITEMS[pectin])) ?? fit[0];
  if (recipe === undefined) {
    return {
      reason: `these tables hold no printed recipe for ${trade} jam with ${pectinWords(kind ?? (wanted.pectin === true ? 'added' : 'none'))}`,
      instead: `ask for ${all.map(({ pectin }) => `pectin: "${pectin}"`).join(' or ')}`,
    };
  }
  const own = (['sugarToFruit', 'finishSolids', 'pectinGrade'] as const).filter((field) => wanted[field] !== undefined);
  if (own.length > 0) {
    return {
      reason: `\`${own.join('`, `')}\` would change the printed recipe, and the process holds for that recipe only: ${proportions(recipe)}; these tables hold no recipe for ${trade} jam with another share of sugar`,
      instead: `leave \`${own.join('`, `')}\` off for the printed recipe, or freeze or dry the fruit`,
    };
  }
  return recipe;
}

/** What the pantry calls each kind of pectin. */
const PECTIN_ITEMS = { powdered: 'pectin', liquid: 'liquid pectin' } as const satisfies Record<string, PantryItem>;
const pectinWords = (kind: string): string => (kind === 'none' ? 'no added pectin' : `${kind} pectin`);
const between = ([low, high]: readonly [number, number]): string => (low === high ? `${low}` : `${low} to ${high}`);
const proportions = ({ fruit, sugar, measure }: PrintedJam): string =>
  `${between(sugar)} cups of sugar to ${between(fruit)} cups of fruit (${measure})`;

/** A batch of a recipe for jars of a size. */
function batchOf(printed: PrintedJam, trade: string, jar: string): Batch {
  const cups = (value: number): Quantity<'volume'> => ({ value, unit: 'cup' });
  const fruitLitres = valueIn(cups(printed.fruit[1]), 'L');
  const weighed =
    printed.measuredAs === 'whole'
      ? massFromVolume({ food: trade, form: 'whole', volume: cups(printed.fruit[1]) })
      : undefined;
  const fruitKg = weighed === undefined ? fruitLitres * CRUSHED_DENSITY : valueIn(weighed.mass, 'kg');
  const sugarKg = printed.sugar[1] * sugarCupKg();
  const lemon =
    printed.lemonJuice > 0 && printed.lemonOptional !== true
      ? kgOfMeasure('bottled lemon juice', { value: printed.lemonJuice, unit: 'tbsp' })
      : undefined;
  const pantry = new Map<PantryItem, number>([['sugar', sugarKg]]);
  if (lemon !== undefined) pantry.set('bottled lemon juice', lemon.kg);
  if (printed.pectinMass !== undefined) pantry.set('pectin', valueIn(printed.pectinMass, 'kg'));
  if (printed.pectinVolume !== undefined)
    pantry.set('liquid pectin', kgOfMeasure('liquid pectin', printed.pectinVolume).kg);
  const halfPints = valueIn(readJar(jar).volume, 'pint') * 2;
  return {
    printed,
    fruitKg,
    sugarKg,
    litres:
      FOAM *
      (fruitKg / CRUSHED_DENSITY +
        sugarKg / SUGAR_DENSITY +
        valueIn(cups(printed.water ?? 0), 'L') +
        valueIn({ value: printed.lemonJuice, unit: 'tbsp' }, 'L')),
    jars: {
      low: Math.floor(printed.halfPints[0] / halfPints + 1e-9),
      high: Math.ceil(printed.halfPints[1] / halfPints - 1e-9),
    },
    pantry,
    basis: joinBasis(
      [basisOf(printed, 'recipe')],
      weighed?.basis ?? [{ of: 'a litre of crushed fruit as a kilogram', kind: 'common-practice' }],
      lemon?.basis ?? [],
    ),
  };
}

/** Jam: whole batches of a printed recipe, each cooked by itself and canned in a load for itself. */
export function makeJam(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { jar = 'half-pint' } = wanted;
  const { kitchen } = day.request;
  if (!hasJars(kitchen, jar))
    return leftOut(wanted, `no ${jar} jars are in stock`, 'name the jars you have, or another size');
  const printed = printedFor(day, wanted, trade);
  if ('reason' in printed) return leftOut(wanted, printed.reason, printed.instead);
  const run = within(product, () => runnable(day, { ...wanted, pack: undefined }, `${trade} jam`, undefined, jar));
  if ('reason' in run) return leftOut(wanted, run.reason, run.instead);
  const { process } = run;
  const batch = batchOf(printed, trade, process.jar);
  const noRoom = roomFor(day, batch, run.canners, process.jar);
  if (noRoom !== undefined) return leftOut(wanted, noRoom.reason, noRoom.instead);
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
  const recipe = recipeNamed(RECIPES[printed.pectin]);
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
        batch.basis,
        recipe.basis,
        ...yields.map((given) => given.basis),
        run.basis,
        heat.basis,
        boil.basis,
        workBasis,
      ),
      cautions: joinCautions(
        process.cautions,
        printed.lemonJuice > 0 && printed.lemonOptional !== true ? [sugarCaution('acid-for-set')] : [],
        [sugarCaution('one-batch'), planCaution('jam-sets-by-test')],
        ...yields.map(({ cautions }) => cautions),
      ),
    }),
  };
}

/** The steps that belong to each kind of pectin, by their name in the table of recipes. */
const RECIPES: Readonly<Record<PrintedJam['pectin'], string>> = {
  none: 'jam without added pectin',
  powdered: 'jam with powdered pectin',
  liquid: 'jam with liquid pectin',
};

const rawPerUnit = ([first]: Activity['supplies']): number => 1 / (first?.unitsPerKg.likely ?? 1);

/** The net weight of a jar of jam. */
function netKgOf({ jar, headspace }: TestedProcess): number {
  const { density } = sucroseDensity({ brix: FINISH_BRIX, temperature: '20 degC' });
  return valueIn(fillJar({ jar, headspace, density }).netMass as Quantity<'mass'>, 'kg');
}

/** Whether a pot and a canner here hold one whole batch, and whether it fills a jar at all. */
function roomFor(
  day: Day,
  batch: Batch,
  canners: readonly { readonly jars: number }[],
  jar: string,
): NoJam | undefined {
  const pots = potsOf(day.request.kitchen).map(({ most }) => valueIn(most, 'L'));
  if (Math.max(0, ...pots) < batch.litres) {
    const need = formatQuantity(quantityIn<'volume'>(batch.litres, 'L', day.metric ? 'L' : 'quart'), {
      rounding: 'up',
    });
    return {
      reason: `no pot here holds one batch, which needs ${need} with the room to foam, and a printed recipe is cooked whole`,
      instead: 'name a larger pot, or freeze the fruit',
    };
  }
  if (batch.jars.low === 0 || Math.max(0, ...canners.map(({ jars }) => jars)) < batch.jars.high) {
    return {
      reason: `no canner here holds the ${batch.jars.high} ${jar} jars of one batch at once`,
      instead: 'use a canner that does, or another jar',
    };
  }
  return undefined;
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

/** What goes into all batches, each line with what goes into one. */
function batchLines(day: Day, { printed, sugarKg, jars, pantry }: Batch, { ready }: Decided): Ingredient[] {
  const count = Math.max(1, Math.round(ready / jars.high));
  const cups = (value: number): Quantity<'volume'> => ({ value, unit: 'cup' });
  const each = (text: string): string =>
    count === 1 ? `in one batch: ${text}` : `in each of ${count} batches: ${text}`;
  const volume = (amount: Quantity<'volume'>) => volumeOf(day, { value: amount.value * count, unit: amount.unit });
  const [, fruit] = printed.fruit;
  const lemon: Quantity<'volume'> = { value: printed.lemonJuice, unit: 'tbsp' };
  const sugar = { mass: massOf(day, sugarKg * count), cups: cups(printed.sugar[1] * count) };
  return [
    {
      what: `prepared fruit (${printed.measure})`,
      role: 'fruit',
      amount: volume(cups(fruit)),
      note: each(`${between(printed.fruit)} cups, measured when it is ready`),
    },
    ...(pantry.has('bottled lemon juice')
      ? [
          {
            what: 'bottled lemon juice',
            role: 'acid' as const,
            amount: volume(lemon),
            note: each(`${formatQuantity(spooned(valueIn(lemon, 'cup')), { fraction: 8 })}, never less`),
          },
        ]
      : []),
    ...(printed.pectinMass === undefined
      ? []
      : [
          {
            what: 'powdered pectin',
            role: 'pectin' as const,
            amount: massOf(day, valueIn(printed.pectinMass, 'kg') * count),
            note: each(printed.pectinAmount ?? 'as printed'),
          },
        ]),
    ...(printed.pectinVolume === undefined
      ? []
      : [
          {
            what: 'liquid pectin',
            role: 'pectin' as const,
            amount: volume(printed.pectinVolume),
            note: each(printed.pectinAmount ?? 'as printed'),
          },
        ]),
    {
      what: 'sugar',
      role: 'sugar',
      ...(day.metric ? { amount: sugar.mass } : { amount: sugar.cups, or: sugar.mass }),
      note: each(`${between(printed.sugar)} cups, never less`),
    },
    ...(printed.water === undefined
      ? []
      : [
          {
            what: 'water',
            role: 'liquid' as const,
            amount: volume(cups(printed.water)),
            note: each(`${printed.water} cup`),
          },
        ]),
    ...(printed.spice === undefined || printed.spiceTsp === undefined
      ? []
      : [
          {
            what: printed.spice,
            role: 'spice' as const,
            amount: volume({ value: printed.spiceTsp, unit: 'tsp' }),
            toBuy: true as const,
          },
        ]),
  ];
}

function jamSteps(day: Day, { printed }: Batch, headspace: Quantity<'length'>): string[] {
  const { temperature } = gelTemperature({ elevation: day.request.kitchen.elevation, product: 'jam' });
  return [
    ...(printed.pectin === 'none'
      ? [`It is done at about ${formatQuantity(temperature)} here, or when a little on a cold plate does not run.`]
      : []),
    'Cook one batch at a time, as printed: never double it, and leave nothing out. Skim.',
    `Fill hot into hot jars, ${headspaceText(day, headspace)} of headspace; wipe the rims; put on the lids.`,
    PART_FILLED,
  ];
}
