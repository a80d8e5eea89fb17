import { type LeatherSheets, leather } from '../../drying/guide/leather';
import { formatQuantity } from '../../quantity/formatQuantity';
import { scaleRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { joinBasis, joinCautions } from '../../sources/basis';
import { machineLoads } from '../program/loadsOf';
import type { Wanted } from '../request/planInput';
import type { Ingredient, TrayWork } from '../request/plannedProduct';
import { standsBehind } from '../standsBehind';
import { countedIn } from './counted';
import { dryerAt, dryerBusy, lotsAs, perUnitKg, richest, trayEnergy } from './dryingLots';
import { cooked, dried, likelyBetween, taking } from './energyTaken';
import {
  commonOf,
  type Day,
  leftOut,
  leftOutBy,
  type Made,
  massOf,
  massRange,
  volumeOf,
  waterOf,
  within,
} from './making';
import { nameOf } from './naming';
import { kgOfMeasure } from './pantry';

/** Puree spread on sheets; a unit is one sheet on one tray. */
export function makeLeather(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { dryer } = day.request.kitchen;
  if (dryer === undefined) return leftOut(wanted, 'no-dryer', 'the kitchen has no dryer', 'can or freeze it');
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
  if (!sheet.known) return leftOutBy(wanted, sheet);
  if (sheet.hours === undefined) {
    return leftOut(
      wanted,
      'no-hours',
      'these tables print no hours for leather that thick',
      'spread it 1/4 in deep or less',
    );
  }
  const loads = machineLoads(day.request.kitchen, 'dryer', valueIn(sheet.hours.high, 'h'));
  if (loads === 0) return dryerBusy(wanted);
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
    food: trade,
    form,
    ...countedIn('sheet'),
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies: lots.supplies.map((supply) =>
        taking(supply, supply.readyPerKg, { stove: cooking.heat, electricity: energy.perKg }),
      ),
      stockPerUnit: [],
      pantry: { 'bottled lemon juice': { perUnit: 0, perReadyKg: lemon.kg / sheetKg } },
      ...trayEnergy(energy),
      traysPerKg: most / sheetKg,
      trayShare: 1 / loads,
      cook: {
        litresPerKg: most,
        minutes: cooking.minutes,
        stirred: times.stir ?? false,
        energyPerBatch: cooking.hold,
      },
    },
    describe: ({ readyKg, trays }) => ({
      recipe: [lemonLine(day, sheet, readyKg.likely / sheetKg)],
      cookMinutes: cooking.minutes,
      trays: sheetsOf(day, sheet, trays, { hours, readyKg }),
      steps: [
        `Spread ${formatQuantity(volumeOf(day, sheet.volumePerSheet))} of puree on each lined tray, ${formatQuantity(sheet.thickness)} deep and thicker at the edges.`,
      ],
      basis: joinBasis(
        standsBehind('trays', sheet.basis),
        standsBehind('trays.dried', basis),
        standsBehind('ready', ...lots.yields.map((given) => given.basis)),
        standsBehind('energy', cooking.basis, energy.basis),
        standsBehind('ingredients', lemon.basis),
        workBasis,
      ),
      cautions: joinCautions(sheet.cautions, ...lots.yields.map(({ cautions }) => cautions)),
    }),
  };
}

/** The lemon juice of so many sheets. */
const lemonLine = (day: Day, { lemonJuice }: LeatherSheets, sheets: number): Ingredient => ({
  what: 'bottled lemon juice, for light fruit',
  role: 'acid',
  amount: volumeOf(day, quantityIn(lemonJuice.value * sheets, 'tsp', 'tsp')),
});

/** The tray work of sheets. */
function sheetsOf(
  day: Day,
  sheet: LeatherSheets,
  trays: number,
  { hours, readyKg }: { readonly hours: Range<Quantity<'time'>>; readonly readyKg: Range<number> },
): TrayWork {
  const sheetKg = valueIn(sheet.massPerSheet, 'kg');
  return {
    where: 'dryer',
    trays,
    perTray: massOf(day, sheetKg),
    ...(sheet.driedPerSheet === undefined ? {} : { stopWeight: massesIn(day, sheet.driedPerSheet) }),
    temperature: dryerAt(day, sheet.temperature),
    hours,
    test: sheet.drynessTest,
    dried: massRange(day, scaleRange(readyKg, endKg(sheet) / sheetKg)),
  };
}

/** What a full sheet weighs when it is dry. */
const endKg = ({ driedPerSheet }: LeatherSheets): number =>
  valueIn((driedPerSheet as Range<Quantity<'mass'>>).likely, 'kg');

const massesIn = (day: Day, { low, likely, high }: Range<Quantity<'mass'>>): Range<Quantity<'mass'>> =>
  massRange(day, { low: valueIn(low, 'kg'), likely: valueIn(likely, 'kg'), high: valueIn(high, 'kg') });
