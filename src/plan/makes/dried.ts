import { freezeDryLoad } from '../../drying/freeze-dry/freezeDryLoad';
import { dryingGuide } from '../../drying/guide/dryingGuide';
import { type LeatherSheets, leather } from '../../drying/guide/leather';
import { trayLoad } from '../../drying/guide/trayLoad';
import { stopWeight } from '../../drying/moisture/stopWeight';
import { formatQuantity } from '../../quantity/formatQuantity';
import { mapRange, scaleRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, joinBasis, joinCautions } from '../../sources/basis';
import type { Instead } from '../../sources/no';
import { planCaution } from '../cautions';
import type { Activity, Supply } from '../request/activity';
import type { TrayWork } from '../request/dayPlan';
import { hoursByConstant, learnedFigure } from '../request/learned';
import type { Wanted } from '../request/planInput';
import { cooked, type Drying, dried, freezeDried, likelyBetween, taking } from './energyTaken';
import {
  commonOf,
  type Day,
  type LotYield,
  leftOut,
  lotsFor,
  type Made,
  massOf,
  massRange,
  nameOf,
  supplyOf,
  volumeOf,
  waterOf,
  within,
  yieldFromLot,
} from './making';
import { kgOfMeasure } from './pantry';

/** A bag of dried food, where the cook names no other size. */
export const BAG: Quantity<'mass'> = { value: 8, unit: 'oz' };

/** Share of the ready weight that is left at a target moisture; low is the poor end, from the wettest fruit. */
const leftAt = (water: Range<number>, target: number): Range<number> => ({
  low: (1 - water.high) / (1 - target),
  likely: (1 - water.likely) / (1 - target),
  high: (1 - water.low) / (1 - target),
});

interface Lots {
  readonly supplies: readonly Supply[];
  readonly yields: readonly LotYield[];
}

/** The lots as they go into a product that keeps `left` of the ready weight, in units of so many kg. */
function lotsAs(day: Day, trade: string, form: string, left: Range<number>, unitKg: number, product: number): Lots {
  const yields: LotYield[] = [];
  const supplies = lotsFor(day, trade).map((lot) => {
    const given = within(product, () => yieldFromLot(day, lot, form));
    yields.push(given);
    const units = (ready: number, share: number) => (ready * share) / unitKg;
    return supplyOf(lot, given, {
      low: units(given.ready.low, left.low),
      likely: units(given.ready.likely, left.likely),
      high: units(given.ready.high, left.high),
    });
  });
  return { supplies, yields };
}

/** What can be done instead, in one sentence. */
const saying = (instead: readonly Instead[]): string => instead.map(({ text }) => text).join(', or ');

const richest = (yields: readonly LotYield[]): number => Math.max(...yields.map(({ ready }) => ready.high));
const perUnitKg = ({ supplies }: Lots): number => 1 / (supplies[0]?.unitsPerKg.likely ?? 1);

/** Pieces in the dryer: trays, the weight to stop at, hours and dryness test. */
export function makeDried(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { dryer } = day.request.kitchen;
  if (dryer === undefined) return leftOut(wanted, 'the kitchen has no dryer', 'can or freeze it');
  const { form = 'slices', size = BAG } = wanted;
  const guide = within(product, () => dryingGuide({ food: trade, form }));
  if (!guide.known) return leftOut(wanted, guide.reason.text, saying(guide.instead));
  const target = wanted.moisture ?? guide.targetMoisture;
  const { water, basis } = waterOf(day, trade);
  const { hours, basis: hoursBasis } = dryingHours(day, trade, form, guide.hours, water, target);
  if (dryer.hours !== undefined && valueIn(dryer.hours, 'h') < valueIn(hours.low, 'h')) {
    const written = `${tenths(hours.low.value)} to ${tenths(hours.high.value)} ${hours.low.unit}`;
    return leftOut(
      wanted,
      `it dries for ${written}, longer than the dryer may run`,
      'cut it thinner, or dry it another day',
    );
  }
  // refuses a target that is wetter than the fruit
  within(product, () => stopWeight({ fresh: { value: 1, unit: 'kg' }, moisture: water, targetMoisture: target }));
  const lots = lotsAs(day, trade, form, leftAt(water, target), valueIn(size, 'kg'), product);
  // the thin end: thin pieces fill a tray with less weight
  const thickness = wanted.thickness ?? guide.thickness?.low;
  const tray = within(product, () =>
    trayLoad({ area: dryer.trayArea, ...(thickness === undefined ? {} : { thickness }) }),
  );
  const perTrayKg = valueIn(tray.perTray.low, 'kg');
  const energy = dried(day.request.kitchen, { water, target, at: guide.temperature, hours });
  const { times: _, workBasis, ...common } = commonOf(day, trade, wanted, product, form, perUnitKg(lots));
  return {
    label: nameOf(wanted, trade),
    produce: trade,
    form,
    unit: `bag of ${size.value} ${size.unit}`,
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies: lots.supplies.map((supply) => taking(supply, supply.readyPerKg, { electricity: energy.perKg })),
      stockPerUnit: { bag: 1 },
      ...trayEnergy(energy),
      traysPerKg: richest(lots.yields) / perTrayKg,
      trayDays: trayDays(day, hours.high),
    },
    describe: ({ readyKg, trays }) => {
      const perTray = massOf(day, Math.min(perTrayKg, readyKg.high / Math.max(trays, 1)));
      const stop = stopWeight({ food: trade, fresh: perTray, moisture: water, targetMoisture: target });
      return {
        trays: {
          where: 'dryer',
          trays,
          perTray,
          stopWeight: stop.stopWeight,
          temperature: dryerAt(day, guide.temperature),
          hours,
          test: guide.drynessTest,
          dried: massRange(day, driedRange(readyKg, leftAt(water, target))),
        },
        steps: [
          ...(guide.preparation === '' ? [] : [`Prepare: ${guide.preparation}.`]),
          `Spread one layer on each tray, weigh it, and write the weight on the tray.`,
          'When dry, cool, pack loosely in jars for a week or more and shake daily; if moisture shows on the glass, dry again.',
        ],
        basis: joinBasis(
          guide.basis,
          hoursBasis,
          tray.basis,
          stop.basis,
          energy.basis,
          basis,
          ...lots.yields.map((given) => given.basis),
          workBasis,
        ),
        cautions: joinCautions([planCaution('dry-the-same-day')], guide.cautions, tray.cautions, stop.cautions),
      };
    },
  };
}

const trayEnergy = ({ perTray }: Drying): Pick<Activity, 'energyPerTray'> =>
  perTray === undefined ? {} : { energyPerTray: perTray };

const tenths = (value: number): number => Math.round(10 * value) / 10;

/** How long pieces dry: by earlier loads, by a constant learned from them, or as printed. */
function dryingHours(
  { learned }: Day,
  trade: string,
  form: string,
  printed: Range<Quantity<'time'>>,
  water: Range<number>,
  target: number,
): { readonly hours: Range<Quantity<'time'>>; readonly basis: readonly Basis[] } {
  const own = learnedFigure(learned, 'dryingHours', trade, form);
  if (own !== undefined) return { hours: own.figure, basis: [own.basis] };
  const constant = learnedFigure(learned, 'dryingConstant', trade, form);
  if (constant === undefined) return { hours: printed, basis: [] };
  return { hours: hoursByConstant(constant.figure, water, target), basis: [constant.basis] };
}

const driedRange = (ready: Range<number>, left: Range<number>): Range<number> => ({
  low: ready.low * left.low,
  likely: ready.likely * left.likely,
  high: ready.high * left.high,
});

/** Days that a loaded tray is taken: what dries longer than a day and a night leaves none for the next day. */
const trayDays = ({ request }: Day, longest: Quantity<'time'>): number =>
  Math.min(request.kitchen.hours.length, Math.ceil(valueIn(longest, 'h') / A_NIGHT));
/** Hours from the loading of one day to that of the next, some left for the work between: common practice. */
const A_NIGHT = 18;

/** Puree spread on sheets; a unit is one sheet on one tray. */
export function makeLeather(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { dryer } = day.request.kitchen;
  if (dryer === undefined) return leftOut(wanted, 'the kitchen has no dryer', 'can or freeze it');
  const form = wanted.form ?? 'puree';
  const { water, basis } = waterOf(day, trade);
  const sheet = within(product, () =>
    leather({
      area: dryer.trayArea,
      sheets: 1,
      moisture: water,
      ...(wanted.thickness === undefined ? {} : { thickness: wanted.thickness }),
      ...(wanted.moisture === undefined ? {} : { targetMoisture: wanted.moisture }),
    }),
  );
  if (!sheet.known) return leftOut(wanted, sheet.reason.text, saying(sheet.instead));
  if (sheet.hours === undefined) {
    return leftOut(wanted, 'these tables print no hours for leather that thick', 'spread it 1/4 in deep or less');
  }
  const sheetKg = valueIn(sheet.massPerSheet, 'kg');
  const lots = lotsAs(day, trade, form, { low: 1, likely: 1, high: 1 }, sheetKg, product);
  const { times, workBasis, ...common } = commonOf(day, trade, wanted, product, form, perUnitKg(lots));
  const { kitchen } = day.request;
  const cooking = within(product, () => cooked(kitchen, times.cook as number));
  const target = 1 - ((1 - water.likely) * sheetKg) / endKg(sheet);
  const hours = likelyBetween(sheet.hours);
  const energy = dried(kitchen, { water, target, at: sheet.temperature, hours });
  const lemon = kgOfMeasure('bottled lemon juice', sheet.lemonJuice);
  const most = richest(lots.yields);
  return {
    label: nameOf(wanted, trade),
    produce: trade,
    form,
    unit: 'sheet',
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies: lots.supplies.map((supply) =>
        taking(supply, supply.readyPerKg, { stove: cooking.heat, electricity: energy.perKg }),
      ),
      stockPerUnit: {},
      pantry: { 'bottled lemon juice': { perUnit: 0, perReadyKg: lemon.kg / sheetKg } },
      ...trayEnergy(energy),
      traysPerKg: most / sheetKg,
      cook: {
        litresPerKg: most,
        minutes: cooking.minutes,
        stirred: times.stir ?? false,
        energyPerBatch: cooking.hold,
      },
    },
    describe: ({ readyKg, trays }) => ({
      recipe: [
        {
          what: 'bottled lemon juice, for light fruit',
          role: 'acid',
          amount: volumeOf(day, quantityIn((sheet.lemonJuice.value * readyKg.likely) / sheetKg, 'tsp', 'tsp')),
        },
      ],
      cookMinutes: cooking.minutes,
      trays: {
        where: 'dryer',
        trays,
        perTray: massOf(day, sheetKg),
        ...(sheet.driedPerSheet === undefined ? {} : { stopWeight: massesIn(day, sheet.driedPerSheet) }),
        temperature: dryerAt(day, sheet.temperature),
        hours,
        test: sheet.drynessTest,
        dried: massRange(day, scaleRange(readyKg, endKg(sheet) / sheetKg)),
      } satisfies TrayWork,
      steps: [
        `Spread ${formatQuantity(volumeOf(day, sheet.volumePerSheet))} of puree on each lined tray, ${formatQuantity(sheet.thickness)} deep and thicker at the edges.`,
      ],
      basis: joinBasis(
        sheet.basis,
        basis,
        ...lots.yields.map((given) => given.basis),
        cooking.basis,
        energy.basis,
        lemon.basis,
        workBasis,
      ),
      cautions: joinCautions(sheet.cautions, ...lots.yields.map(({ cautions }) => cautions)),
    }),
  };
}

/** What a full sheet weighs when it is dry. */
const endKg = ({ driedPerSheet }: LeatherSheets): number =>
  valueIn((driedPerSheet as Range<Quantity<'mass'>>).likely, 'kg');

/** The dryer's temperature as printed, or in whole degrees Celsius on a metric day. */
const dryerAt = ({ metric }: Day, printed: Quantity<'temperature'>): Quantity<'temperature'> =>
  metric ? { value: Math.round(valueIn(printed, 'degC')), unit: 'degC' } : printed;

const massesIn = (day: Day, { low, likely, high }: Range<Quantity<'mass'>>): Range<Quantity<'mass'>> =>
  massRange(day, { low: valueIn(low, 'kg'), likely: valueIn(likely, 'kg'), high: valueIn(high, 'kg') });

/** Pieces in the freeze-dryer, against its trays and the ice it can hold. */
export function makeFreezeDried(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { freezeDryer } = day.request.kitchen;
  if (freezeDryer === undefined) return leftOut(wanted, 'the kitchen has no freeze-dryer', 'dry or freeze it');
  const { form = 'slices', size = BAG } = wanted;
  const { water, basis } = waterOf(day, trade);
  const trayArea = quantityIn<'area'>(
    valueIn(freezeDryer.trayArea, 'm2') * freezeDryer.trays,
    'm2',
    freezeDryer.trayArea.unit,
  );
  const load = within(product, () =>
    freezeDryLoad({
      food: trade,
      fresh: { value: 1, unit: 'kg' },
      moisture: water,
      machine: { iceCapacity: freezeDryer.ice, trayArea },
      ...(wanted.moisture === undefined ? {} : { targetMoisture: wanted.moisture }),
      ...(wanted.thickness === undefined ? {} : { thickness: wanted.thickness }),
    }),
  );
  const mostKg = valueIn(load.mostPerBatch, 'kg');
  const left: Range<number> = {
    low: load.dried.low.value,
    likely: load.dried.likely.value,
    high: load.dried.high.value,
  };
  const lots = lotsAs(day, trade, form, left, valueIn(size, 'kg'), product);
  const most = richest(lots.yields);
  const hours = likelyBetween(load.hoursPerBatch);
  const energy = freezeDried(
    day.request.kitchen,
    mapRange(load.ice, (each) => valueIn(each, 'kg')),
    hours,
  );
  const { times: _, workBasis, ...common } = commonOf(day, trade, wanted, product, form, perUnitKg(lots));
  return {
    label: nameOf(wanted, trade),
    produce: trade,
    form,
    unit: `bag of ${size.value} ${size.unit}`,
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies: lots.supplies.map((supply) => taking(supply, supply.readyPerKg, { electricity: energy.perKg })),
      stockPerUnit: { bag: 1 },
      ...trayEnergy(energy),
      freezeDry: { waterPerKg: most * load.ice.high.value, traysPerKg: (most * freezeDryer.trays) / mostKg },
    },
    describe: ({ readyKg, trays }) => ({
      trays: {
        where: 'freeze-dryer',
        trays,
        hours,
        perTray: massOf(day, mostKg / freezeDryer.trays),
        dried: massRange(day, driedRange(readyKg, left)),
      },
      steps: [
        'Spread one layer on each tray. Weigh the trays when they come out, dry them two more hours, and weigh again: go on until two weighings agree.',
      ],
      basis: joinBasis(load.basis, basis, ...lots.yields.map((given) => given.basis), energy.basis, workBasis),
      cautions: joinCautions(load.cautions, ...lots.yields.map(({ cautions }) => cautions)),
    }),
  };
}
