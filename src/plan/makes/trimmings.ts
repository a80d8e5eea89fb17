import steepedJson from '../../../data/plan/steeped.json';
import { trayLoad } from '../../drying/guide/trayLoad';
import { powder } from '../../drying/moisture/powder';
import { mapRange, scaleRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import type { Unit } from '../../quantity/units';
import { type Basis, joinBasis } from '../../sources/basis';
import { asTable, type Practice, practiceBasis } from '../../sources/table';
import { planCaution } from '../cautions';
import { customary, customaryBasis, customaryRange } from '../customary';
import { machineLoads } from '../program/loadsOf';
import type { Wanted } from '../request/planInput';
import { standsBehind } from '../standsBehind';
import { countedIn } from './counted';
import { dryerBusy } from './dryingLots';
import { cooked, dried, taking } from './energyTaken';
import {
  commonOf,
  type Day,
  leftOut,
  lotsFor,
  type Made,
  massOf,
  massRange,
  supplyOf,
  unitsFrom,
  volumeOf,
  waterOf,
  within,
} from './making';
import { nameOf } from './naming';
import { sugarCupKg } from './syrupForJars';

/** A jar of powder, where the cook names no other size. */
export const POWDER_JAR: Quantity<'mass'> = { value: customary('powder-jar'), unit: 'oz' };
/** Hours that peels take to snap. */
const PEELS_DRY: Range<Quantity<'time'>> = mapRange(customaryRange('peels-dry'), (value) => ({ value, unit: 'h' }));
/** Trimmings go in whole: nothing is lost before. */
const WHOLE = {
  ready: { low: 1, likely: 1, high: 1 },
  trimmings: { low: 0, likely: 0, high: 0 },
  better: 1,
  basis: [],
  cautions: [],
};

/** Powder from peels and trimmings, dried until they snap. */
export function makePowder(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { dryer } = day.request.kitchen;
  if (dryer === undefined)
    return leftOut(wanted, 'no-dryer', 'the kitchen has no dryer', 'use the trimmings for stock');
  const { size = POWDER_JAR } = wanted;
  const { water, basis } = waterOf(day, trade);
  const ground = within(product, () =>
    powder({
      trimmings: { value: 1, unit: 'kg' },
      moisture: water,
      ...(wanted.moisture === undefined ? {} : { targetMoisture: wanted.moisture }),
    }),
  );
  const left: Range<number> = {
    low: ground.powder.low.value,
    likely: ground.powder.likely.value,
    high: ground.powder.high.value,
  };
  const energy = dried(day.request.kitchen, { water, target: ground.targetMoisture, hours: PEELS_DRY });
  const supplies = lotsFor(day, trade).map((lot) =>
    taking(supplyOf(lot, WHOLE, scaleRange(left, 1 / valueIn(size, 'kg'))), WHOLE.ready, { electricity: energy.perKg }),
  );
  const loads = machineLoads(day.request.kitchen, 'dryer', valueIn(PEELS_DRY.high, 'h'));
  if (loads === 0) return dryerBusy(wanted);
  const tray = trayLoad({ area: dryer.trayArea });
  const perTrayKg = valueIn(tray.perTray.low, 'kg');
  const {
    times: _,
    workBasis,
    ...common
  } = commonOf(day, trade, wanted, product, undefined, 1 / (supplies[0]?.unitsPerKg.likely ?? 1));
  return {
    label: nameOf(wanted, trade),
    food: trade,
    ...countedIn('jar-of-powder', `${size.value} ${size.unit}`),
    activity: {
      ...common,
      madeOf: 'trimmings',
      supplies,
      stockPerUnit: [],
      ...(energy.perTray === undefined ? {} : { energyPerTray: energy.perTray }),
      traysPerKg: 1 / perTrayKg,
      trayShare: 1 / loads,
    },
    describe: ({ readyKg, trays }) => ({
      trays: {
        where: 'dryer',
        trays,
        hours: PEELS_DRY,
        perTray: massOf(day, Math.min(perTrayKg, readyKg.high / Math.max(trays, 1))),
        dried: massRange(day, scaleRange(left, readyKg.likely)),
        test: 'snaps and shatters when cold',
      },
      steps: ['Dry until the peels snap when cold, grind, sift, and jar at once with as little air as you can.'],
      basis: joinBasis(
        standsBehind('trays.dried', ground.basis, basis),
        standsBehind('trays.perTray', tray.basis),
        standsBehind('energy', energy.basis),
        [customaryBasis('peels-dry', 'trays.hours')],
        workBasis,
      ),
      cautions: ground.cautions,
    }),
  };
}

/** What a quart takes of trimmings. */
interface SteepedRow extends Practice {
  readonly make: 'vinegar' | 'jelly stock';
  readonly kgLow: number;
  readonly kgLikely: number;
  readonly kgHigh: number;
  readonly water: number;
  readonly waterUnit: Unit<'volume'>;
  readonly sugar?: number;
  readonly sugarUnit?: Unit<'volume'>;
  readonly step: string;
  readonly caution: string;
}
const steeped = asTable<SteepedRow>(steepedJson).rows;

function steepedOf(make: SteepedRow['make']) {
  const row = steeped.find((each) => each.make === make);
  if (row === undefined) throw new Error(`no row for ${make}`);
  const { kgLow, kgLikely, kgHigh, water, waterUnit, sugar, sugarUnit, step, caution } = row;
  return {
    kgPerQuart: { low: kgLow, likely: kgLikely, high: kgHigh },
    water: { value: water, unit: waterUnit } as Quantity<'volume'>,
    ...(sugar === undefined ? {} : { sugar: { value: sugar, unit: sugarUnit } as Quantity<'volume'> }),
    step,
    caution,
  };
}

/** Litres in the pot for each kg of trimmings that stock is made of, the water on them included; a litre is a kg. */
const STOCK_LITRES: Range<number> = customaryRange('stock-litres');

/** Vinegar or jelly stock from peels and cores; a unit is a quart. */
export function makeSteeped(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const make = wanted.make as 'vinegar' | 'jelly stock';
  const how = steepedOf(make);
  const { times, workBasis, ...common } = commonOf(day, trade, wanted, product, undefined, how.kgPerQuart.likely);
  const cooking =
    make === 'jelly stock' ? within(product, () => cooked(day.request.kitchen, times.cook as number)) : undefined;
  const supplies = lotsFor(day, trade).map((lot) => {
    const supply = supplyOf(lot, WHOLE, unitsFrom(how.kgPerQuart));
    return cooking === undefined ? supply : taking(supply, STOCK_LITRES, { stove: cooking.heat });
  });
  const sugarKg = how.sugar === undefined ? 0 : valueIn(how.sugar, 'cup') * sugarCupKg();
  const basis: Basis[] = [
    practiceBasis('ingredients', `trimmings and water for a quart of ${make}`),
    ...standsBehind('energy', cooking?.basis ?? []),
    ...workBasis,
  ];
  const cook = cooking && {
    litresPerKg: STOCK_LITRES.likely,
    minutes: cooking.minutes,
    stirred: times.stir ?? false,
    energyPerBatch: cooking.hold,
  };
  return {
    label: nameOf(wanted, trade),
    food: trade,
    ...countedIn('quart'),
    activity: {
      ...common,
      madeOf: 'trimmings',
      supplies,
      stockPerUnit: [],
      ...(sugarKg === 0 ? {} : { pantry: { sugar: { perUnit: sugarKg, perReadyKg: 0 } } }),
      ...(cook === undefined ? {} : { cook }),
    },
    describe: ({ ready }) => ({
      recipe: [
        {
          what: 'water',
          role: 'liquid' as const,
          amount: volumeOf(day, quantityIn(how.water.value * ready, how.water.unit, how.water.unit)),
        },
        ...(how.sugar === undefined
          ? []
          : [
              {
                what: 'sugar',
                role: 'sugar' as const,
                amount: massOf(day, sugarKg * ready),
                ...(day.metric ? {} : { or: quantityIn<'volume'>(valueIn(how.sugar, 'cup') * ready, 'cup', 'cup') }),
              },
            ]),
      ],
      ...(cook === undefined ? {} : { cookMinutes: cook.minutes }),
      steps: [how.step],
      basis,
      cautions: [planCaution('trimmings-clean'), planCaution(how.caution)],
    }),
  };
}
