/** What a dryer or a freeze-dryer does with the food of a recipe: pieces, sheets of leather, trimmings. */

import { freezeDryLoad } from '../../drying/freeze-dry/freezeDryLoad';
import { dryingGuide } from '../../drying/guide/dryingGuide';
import { leather } from '../../drying/guide/leather';
import { trayLoad } from '../../drying/guide/trayLoad';
import { powder } from '../../drying/moisture/powder';
import { stopWeight } from '../../drying/moisture/stopWeight';
import { parseQuantity } from '../../quantity/parseQuantity';
import { mapRange, scaleRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import type { StepRow } from '../../recipes/rows/tables';
import { ends } from '../../recipes/step';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { customaryBasis, customaryRange } from '../figures/customary';
import { standsBehind } from '../figures/standsBehind';
import { hoursByConstant, learnedFigure } from '../request/learned';
import type { TrayWork } from '../request/plannedProduct';
import { type DryingHours, hoursInRoom } from './dampAir';
import { type Drying, dried, freezeDried, likelyBetween } from './energyTaken';
import type { Product } from './making';
import { type Day, heldOf, type LeftOutProduct, leftOut, leftOutBy, massOf, massRange, waterOf } from './making';
import { within } from './within';

const KG: Quantity<'mass'> = { value: 1, unit: 'kg' };

/** A load of a machine: how the food lies on its trays and what comes off them. */
export interface Loaded {
  readonly where: 'dryer' | 'freeze-dryer';
  /** Kg of ready food on one tray, at the most. */
  readonly perTrayKg: number;
  /** Share of the ready weight that is left; low is the poor end, from the wettest food. */
  readonly left: Range<number>;
  readonly hours: Range<Quantity<'time'>>;
  readonly temperature?: Quantity<'temperature'>;
  readonly test?: string;
  readonly energy: Drying;
  /** Ice from each kg of ready food, kg. */
  readonly icePerKg?: number;
  /** Weight of one full sheet, where it is spread in sheets. */
  readonly sheetKg?: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
  readonly steps: readonly string[];
}

/** Share of the ready weight that is left at a target moisture. */
const leftAt = (water: Range<number>, target: number): Range<number> => ({
  low: (1 - water.high) / (1 - target),
  likely: (1 - water.likely) / (1 - target),
  high: (1 - water.low) / (1 - target),
});

/** A printed time of a step as a range, with its middle as likely. */
const hoursOf = ({ time }: StepRow): Range<Quantity<'time'>> | undefined => {
  if (time === undefined) return undefined;
  const [low, high] = ends(time).map((each) => parseQuantity(each, 'time')) as [Quantity<'time'>, Quantity<'time'>];
  return likelyBetween({
    low: quantityIn(valueIn(low, 'h'), 'h', 'h'),
    high: quantityIn(valueIn(high, 'h'), 'h', 'h'),
  });
};

/** The moisture that a step ends at, at its drier end. */
const moistureOf = ({ moisture }: StepRow): number | undefined =>
  typeof moisture === 'number' ? moisture : moisture?.low;

const temperatureOf = ({ temperature }: StepRow): Quantity<'temperature'> | undefined =>
  temperature === undefined ? undefined : parseQuantity(ends(temperature)[1], 'temperature');

const sizeOf = ({ steps }: Product['row']): Quantity<'length'> | undefined => {
  const cut = steps.find(({ size, optional }) => size !== undefined && optional !== true)?.size;
  return cut === undefined ? undefined : parseQuantity(ends(cut)[0], 'length');
};

const tenths = (value: number): number => Math.round(10 * value) / 10;

/** Pieces in the dryer; or why they are not dried here. */
export function piecesDried(day: Day, product: Product, step: StepRow): Loaded | LeftOutProduct {
  const { wanted, food, form, index, row } = product;
  const { dryer } = day.request.kitchen;
  if (dryer === undefined)
    return leftOut(wanted, { code: 'no-dryer', text: 'the kitchen has no dryer', instead: 'can or freeze it' });
  const guide = row.madeOf === 'trimmings' ? undefined : guideOf(product);
  const { water, basis } = within(index, () => waterOf(day, food.name));
  const target =
    wanted.moisture ??
    moistureOf(step) ??
    guide?.targetMoisture ??
    powder({ trimmings: KG, moisture: water }).targetMoisture;
  const printed =
    hoursOf(step) ?? guide?.hours ?? mapRange(customaryRange('peels-dry'), (value) => ({ value, unit: 'h' as const }));
  const temperature = temperatureOf(step) ?? guide?.temperature;
  const inRoom = hoursInRoom(day.request.kitchen, printed, temperature);
  const { hours, basis: hoursBasis } = dryingHours(day, food.name, form, inRoom, water, target);
  const refused = tooLong(day, product, hours);
  if (refused !== undefined) return refused;
  // refuses a target that is wetter than the food
  within(index, () => stopWeight({ fresh: KG, moisture: water, targetMoisture: target }));
  // the thin end: thin pieces fill a tray with less weight
  const thickness = wanted.thickness ?? guide?.thickness?.low ?? sizeOf(row);
  const tray = within(index, () =>
    trayLoad({ area: dryer.trayArea, ...(thickness === undefined ? {} : { thickness }) }),
  );
  const test = step.to ?? guide?.drynessTest;
  const energy = dried(day.request.kitchen, {
    water,
    target,
    hours,
    ...(temperature === undefined ? {} : { at: temperature }),
  });
  return {
    where: 'dryer',
    perTrayKg: valueIn(tray.perTray.low, 'kg'),
    left: leftAt(water, target),
    hours,
    ...(temperature === undefined ? {} : { temperature: dryerAt(day, temperature) }),
    ...(test === undefined ? {} : { test }),
    energy,
    basis: joinBasis(
      standsBehind('drying', guide?.basis ?? []),
      standsBehind(
        'drying.hours',
        hoursBasis,
        hoursOf(step) === undefined && guide === undefined ? [customaryBasis('peels-dry', 'drying.hours')] : [],
      ),
      standsBehind('drying.perTray', tray.basis),
      standsBehind('energy', energy.basis),
      standsBehind('drying.dried', basis),
    ),
    cautions: [...(guide?.cautions ?? []), ...tray.cautions],
    steps: ['Spread one layer on each tray, weigh it, and write the weight on the tray.'],
  };
}

/** What the drying guide holds of a food in this form, or in any. */
export function guideOf({ food, form }: Product) {
  const ask = (named?: string) =>
    heldOf(() => dryingGuide({ food: food.name, ...(named === undefined ? {} : { form: named }) }));
  return (form === undefined ? undefined : ask(form)) ?? ask();
}

function tooLong(day: Day, { wanted }: Product, hours: Range<Quantity<'time'>>): LeftOutProduct | undefined {
  const most = day.request.kitchen.dryer?.hours;
  if (most === undefined || valueIn(most, 'h') >= valueIn(hours.low, 'h')) return undefined;
  const written = `${tenths(hours.low.value)} to ${tenths(hours.high.value)} ${hours.low.unit}`;
  const text = `it dries for ${written}, longer than the dryer may run`;
  return leftOut(wanted, { code: 'dries-too-long', text, instead: 'cut it thinner, or dry it another day' });
}

/** How long pieces dry: by earlier loads, by a constant learned from them, or as printed. */
function dryingHours(
  { learned }: Day,
  food: string,
  form: string | undefined,
  printed: DryingHours,
  water: Range<number>,
  target: number,
): DryingHours {
  const own = learnedFigure(learned, 'dryingHours', food, form);
  if (own !== undefined) return { hours: own.figure, basis: [own.basis] };
  const constant = learnedFigure(learned, 'dryingConstant', food, form);
  if (constant === undefined) return printed;
  return { hours: hoursByConstant(constant.figure, water, target), basis: [constant.basis] };
}

/** Puree on lined trays, one sheet to a tray. */
export function sheetsDried(day: Day, product: Product): Loaded | LeftOutProduct {
  const { wanted, food, index } = product;
  const { dryer } = day.request.kitchen;
  if (dryer === undefined)
    return leftOut(wanted, { code: 'no-dryer', text: 'the kitchen has no dryer', instead: 'can or freeze it' });
  const { water, basis } = waterOf(day, food.name);
  const sheet = within(index, () =>
    leather({
      area: dryer.trayArea,
      sheets: 1,
      moisture: water,
      ...(wanted.thickness === undefined ? {} : { thickness: wanted.thickness }),
      ...(wanted.moisture === undefined ? {} : { targetMoisture: wanted.moisture }),
    }),
  );
  if (!sheet.known) return leftOutBy(wanted, sheet);
  if (sheet.hours === undefined) {
    const text = 'these tables print no hours for leather that thick';
    return leftOut(wanted, { code: 'no-hours', text, instead: 'spread it 1/4 in deep or less' });
  }
  const sheetKg = valueIn(sheet.massPerSheet, 'kg');
  const end = mapRange(sheet.driedPerSheet as Range<Quantity<'mass'>>, (mass) => valueIn(mass, 'kg'));
  const target = 1 - ((1 - water.likely) * sheetKg) / end.likely;
  const inRoom = hoursInRoom(day.request.kitchen, likelyBetween(sheet.hours), sheet.temperature);
  const { hours } = inRoom;
  const refused = tooLong(day, product, hours);
  if (refused !== undefined) return refused;
  const energy = dried(day.request.kitchen, { water, target, at: sheet.temperature, hours });
  return {
    where: 'dryer',
    perTrayKg: sheetKg,
    sheetKg,
    left: scaleRange(end, 1 / sheetKg),
    hours,
    temperature: dryerAt(day, sheet.temperature),
    test: sheet.drynessTest,
    energy,
    basis: joinBasis(
      standsBehind('drying', sheet.basis),
      inRoom.basis,
      standsBehind('drying.dried', basis),
      standsBehind('energy', energy.basis),
    ),
    cautions: sheet.cautions,
    steps: [],
  };
}

/** Pieces in the freeze-dryer, against its trays and the ice it can hold. */
export function freezeDriedLoad(day: Day, product: Product): Loaded | LeftOutProduct {
  const { wanted, food, index } = product;
  const { freezeDryer } = day.request.kitchen;
  if (freezeDryer === undefined) {
    const text = 'the kitchen has no freeze-dryer';
    return leftOut(wanted, { code: 'no-freeze-dryer', text, instead: 'dry or freeze it' });
  }
  const { water, basis } = waterOf(day, food.name);
  const { trays, trayArea, ice } = freezeDryer;
  const area = quantityIn<'area'>(valueIn(trayArea, 'm2') * trays, 'm2', trayArea.unit);
  const load = within(index, () =>
    freezeDryLoad({
      food: food.name,
      fresh: KG,
      moisture: water,
      machine: { iceCapacity: ice, trayArea: area },
      ...(wanted.moisture === undefined ? {} : { targetMoisture: wanted.moisture }),
      ...(wanted.thickness === undefined ? {} : { thickness: wanted.thickness }),
    }),
  );
  const hours = likelyBetween(load.hoursPerBatch);
  const made = mapRange(load.ice, (each) => valueIn(each, 'kg'));
  const energy = freezeDried(day.request.kitchen, made, hours);
  return {
    where: 'freeze-dryer',
    perTrayKg: valueIn(load.mostPerBatch, 'kg') / trays,
    left: mapRange(load.dried, ({ value }) => value),
    hours,
    energy,
    icePerKg: made.high,
    basis: joinBasis(
      standsBehind('drying', load.basis),
      standsBehind('drying.dried', basis),
      standsBehind('energy', energy.basis),
    ),
    cautions: load.cautions,
    steps: [
      'Spread one layer on each tray. Weigh the trays when they come out, dry them two more hours, and weigh again: go on until two weighings agree.',
    ],
  };
}

/** The dryer's temperature as printed, or in whole degrees Celsius on a metric day. */
const dryerAt = ({ metric }: Day, printed: Quantity<'temperature'>): Quantity<'temperature'> =>
  metric ? { value: Math.round(valueIn(printed, 'degC')), unit: 'degC' } : printed;

/** The tray work of what was decided. */
export function traysOf(day: Day, loaded: Loaded, readyKg: Range<number>, trays: number): TrayWork {
  const { where, perTrayKg, left, sheetKg, hours, temperature, test } = loaded;
  const each = sheetKg ?? Math.min(perTrayKg, readyKg.high / Math.max(trays, 1));
  return {
    where,
    trays,
    perTray: massOf(day, each),
    ...(where === 'dryer' ? { stopWeight: massRange(day, scaleRange(left, each)) } : {}),
    ...(temperature === undefined ? {} : { temperature }),
    hours,
    ...(test === undefined ? {} : { test }),
    dried: massRange(day, {
      low: readyKg.low * left.low,
      likely: readyKg.likely * left.likely,
      high: readyKg.high * left.high,
    }),
  };
}
