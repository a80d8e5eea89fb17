import { freezeDryLoad } from '../../drying/freeze-dry/freezeDryLoad';
import { mapRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Range } from '../../quantity/types';
import { joinBasis, joinCautions } from '../../sources/basis';
import type { Wanted } from '../request/planInput';
import { BAGS } from '../request/stock';
import { standsBehind } from '../standsBehind';
import { countedIn } from './counted';
import { BAG, driedRange, lotsAs, perUnitKg, richest, trayEnergy } from './dryingLots';
import { freezeDried, likelyBetween, taking } from './energyTaken';
import { commonOf, type Day, leftOut, type Made, massOf, massRange, waterOf, within } from './making';
import { nameOf } from './naming';

/** Pieces in the freeze-dryer, against its trays and the ice it can hold. */
export function makeFreezeDried(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { freezeDryer } = day.request.kitchen;
  if (freezeDryer === undefined)
    return leftOut(wanted, 'no-freeze-dryer', 'the kitchen has no freeze-dryer', 'dry or freeze it');
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
    food: trade,
    form,
    ...countedIn('bag', `${size.value} ${size.unit}`),
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies: lots.supplies.map((supply) => taking(supply, supply.readyPerKg, { electricity: energy.perKg })),
      stockPerUnit: [{ stock: BAGS, amount: 1 }],
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
      basis: joinBasis(
        standsBehind('trays', load.basis),
        standsBehind('trays.dried', basis),
        standsBehind('ready', ...lots.yields.map((given) => given.basis)),
        standsBehind('energy', energy.basis),
        workBasis,
      ),
      cautions: joinCautions(load.cautions, ...lots.yields.map(({ cautions }) => cautions)),
    }),
  };
}
