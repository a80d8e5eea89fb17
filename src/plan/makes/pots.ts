/** The pot of a recipe: how much goes in, how long it takes, and the water that vegetables are blanched in. */

import * as z from 'zod/mini';
import potFoodsTable from '../../../data/plan/pot-foods.json';
import { blanchingRows } from '../../freezing/beforeFreezing';
import { blanching } from '../../freezing/blanching';
import { rule } from '../../freezing/tables';
import { formatQuantity } from '../../quantity/formatQuantity';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Range } from '../../quantity/types';
import { stepText } from '../../recipes/step';
import { balanceBasis } from '../../solution/massBalance';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { id, positive, practiceColumns, type RowOf } from '../../sources/columns';
import { asTable, basisOf } from '../../sources/table';
import { standsBehind } from '../figures/standsBehind';
import { fillBasis } from '../kitchen/fillOf';
import { potsOf } from '../kitchen/kitchen';
import type { Cook } from '../request/activity';
import { boiledOff, burnerOf, cooked, heatedUp, waterBoiled } from './energyTaken';
import type { Product } from './making';
import { type Day, heldOf, massOf } from './making';
import type { RecipeWork } from './work';

export const potFoodRow = () => z.strictObject({ id: id(), holdsHot: positive(), ...practiceColumns() });
type PotFoodRow = RowOf<typeof potFoodRow>;
const rows: ReadonlyMap<string, PotFoodRow> = new Map(
  asTable<PotFoodRow>(potFoodsTable).rows.map((row) => [row.id, row]),
);

/** What is cooked in a pot, for each raw kg. */
export interface InPot {
  /** Liters at the rich end, room to foam included. */
  readonly litersPerKg: number;
  /** Kg of all that is in it. */
  readonly kgPerKg: number;
  /** Kg of water that is boiled off. */
  readonly boiledOffPerKg: number;
  /** Liters of a batch that is cooked by itself. */
  readonly batchLiters?: number;
}

/** Pot work as the program and the order of work take it, and what it rests on. */
export interface PotWorked {
  readonly cook: Cook;
  /** KWh for each raw kg, at the stove. */
  readonly heat: Range<number>;
  /** Lines of the sheet. */
  readonly steps: readonly string[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Food cooked in a pot: heated up by its weight, held as long as the page says, boiled down by the water it loses. */
export function cookedInPot(
  day: Day,
  { wanted, row }: Product,
  pot: NonNullable<RecipeWork['pot']>,
  inPot: InPot,
): PotWorked {
  const { kitchen } = day.request;
  const minutes = wanted.cook === undefined ? pot.minutes : Math.max(valueIn(wanted.cook, 'min'), pot.printed);
  const { hold, basis } = cooked(kitchen, Math.max(1, minutes));
  const [heat, boil] = [heatedUp(kitchen), boiledOff(kitchen)];
  const kWh = (end: 'low' | 'likely' | 'high') => inPot.kgPerKg * heat.kWh[end] + inPot.boiledOffPerKg * boil.kWh[end];
  const perKg: Range<number> = { low: kWh('low'), likely: kWh('likely'), high: kWh('high') };
  const holdsHot = rows.get(row.makes)?.holdsHot;
  const own = wanted.cook === undefined ? minutesAtFull(day, perKg.likely) : 0;
  return {
    cook: {
      litresPerKg: inPot.litersPerKg,
      ...(inPot.batchLiters === undefined ? {} : { batchLitres: inPot.batchLiters }),
      minutes: Math.ceil(minutes),
      ...(own === 0 ? {} : { minutesPerKg: own }),
      ...(holdsHot === undefined || inPot.batchLiters !== undefined ? {} : { holdsHot }),
      stirred: pot.stirred,
      energyPerBatch: hold,
      ...(inPot.boiledOffPerKg > 0 ? { leftOf: 1 - inPot.boiledOffPerKg / inPot.kgPerKg } : {}),
    },
    heat: perKg,
    steps: [],
    basis: joinBasis(
      standsBehind('energy', basis, heat.basis, inPot.boiledOffPerKg > 0 ? boil.basis : []),
      standsBehind('cooking.minutesEach', heat.basis),
      [fillBasis(row.makes, 'cooking.batches[].fillTo')],
      inPot.boiledOffPerKg > 0
        ? [balanceBasis('cooking.batches[].downTo', 'mass balance: what goes into the pot, less what fills the jars')]
        : [],
    ),
    cautions: [],
  };
}

/** Minutes of a burner at full flame that give so much heat. */
const minutesAtFull = ({ request: { kitchen } }: Day, kWh: number): number =>
  (60 * kWh) / valueIn(burnerOf(kitchen), 'kW');

/** What the largest pot blanches at once: the water for each pound, and the vegetable in it. */
function batchIn(day: Day, leafy: boolean) {
  const pots = potsOf(day.request.kitchen).map(({ label, most }) => ({ label, liters: valueIn(most, 'L') }));
  const [largest] = pots.sort((one, other) => other.liters - one.liters);
  if (largest === undefined) return undefined;
  const { low: gallons } = rule(leafy ? 'blanch-water-per-lb-leafy' : 'blanch-water-per-lb');
  const litersPerKg = valueIn({ value: gallons, unit: 'gallon' }, 'L') / valueIn({ value: 1, unit: 'lb' }, 'kg');
  // a liter of room for each kg of the vegetable: it is about as dense as water
  const kg = largest.liters / (litersPerKg + 1);
  return { label: largest.label, kg, water: kg * litersPerKg };
}

/** What the blanching tables say of a food in a form at this place; nothing where they do not hold it. */
function printedBlanching(day: Day, { food, form }: Product) {
  const { elevation } = day.request.kitchen;
  const ask = (named?: string) =>
    heldOf(() => blanching({ food: food.name, elevation, ...(named === undefined ? {} : { form: named }) }));
  return (form === undefined ? undefined : ask(form)) ?? ask();
}

/** Blanching: the water is heated once, then batch after batch goes in, with somebody beside it. */
export function blanchedInPot(day: Day, product: Product, minutes: number, readyPerKg: number): PotWorked | undefined {
  const { kitchen } = day.request;
  const printed = printedBlanching(day, product);
  const batch = batchIn(
    day,
    blanchingRows(product.food.id).some(({ leafy }) => leafy === true),
  );
  if (batch === undefined) return undefined;
  const high = rule('high-blanch-elevation');
  const extra = valueIn(kitchen.elevation, 'ft') >= high.low ? rule('high-blanch-minutes').low : 0;
  const inWater = Math.max(minutes + extra, printed?.blanchIn === 'water' ? printed.minutes.high : 0);
  const each = inWater + rule('blanch-return-to-boil').high;
  const { heat, hold, basis } = cooked(kitchen, each);
  const boiled = waterBoiled(kitchen, batch.water);
  const most = formatQuantity(massOf(day, batch.kg), { rounding: 'down' });
  // as a cook measures it, and never less for the pound than printed
  const water = formatQuantity(
    quantityIn<'volume'>(batch.water, 'L', day.metric ? 'L' : 'quart'),
    day.metric ? { step: 0.1, rounding: 'up' } : { fraction: 4, rounding: 'up' },
  );
  return {
    cook: {
      litresPerKg: ((batch.kg + batch.water) / batch.kg) * readyPerKg,
      minutes: each,
      stirred: true,
      energyPerBatch: hold,
      blanch: { minutes: boiled.minutes, energy: boiled.kWh },
    },
    heat,
    steps: [
      `Blanch for ${Number(inWater.toFixed(2))} min, counted from the return to the boil: at most ${most} at a time in the ${batch.label}, with ${water} of water.`,
      'Cool at once in ice water for as long, with as much ice as food by weight, and drain well.',
    ],
    basis: joinBasis(
      standsBehind('energy', basis, boiled.basis),
      standsBehind('directions', printed?.basis ?? []),
      [basisOf(rule('blanch-return-to-boil'), 'cooking.minutesEach', 'return to the boil')],
      [fillBasis(undefined, 'cooking.batches')],
    ),
    cautions: printed?.cautions ?? [],
  };
}

/** Liters that the largest pot may be filled with. */
export const roomiestPot = ({ request }: Day): number =>
  Math.max(0, ...potsOf(request.kitchen).map(({ most }) => valueIn(most, 'L')));

/** The steps before trays are loaded or packs are packed, with the blanching of this kitchen in the place of the printed one. */
export function stepsWithPot({ before, blanch }: RecipeWork, pot: PotWorked | undefined): readonly string[] {
  const own = pot?.steps ?? [];
  const at = before.findIndex((step) => step.do === 'blanch');
  if (blanch === undefined || own.length === 0 || at < 0) return before.map(stepText);
  const [blanching = '', cooling = ''] = own;
  const rest = before.slice(at + 1);
  const cooled = rest.findIndex((step) => step.do === 'cool');
  // the page says how long it is cooled, some foods longer than they are blanched; where it does not, as long
  const after =
    cooled < 0 ? [cooling, ...rest.filter((step) => step.do !== 'drain').map(stepText)] : rest.map(stepText);
  const iced = cooled < 0 ? after : [...after.slice(0, cooled + 1), ICE, ...after.slice(cooled + 1)];
  return [...before.slice(0, at).map(stepText), blanching, ...iced];
}
const ICE = 'Use as much ice as food by weight.';
