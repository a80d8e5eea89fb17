import { dryingGuide } from '../../drying/guide/dryingGuide';
import { trayLoad } from '../../drying/guide/trayLoad';
import { stopWeight } from '../../drying/moisture/stopWeight';
import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, joinBasis, joinCautions } from '../../sources/basis';
import { planCaution } from '../cautions';
import { customary } from '../customary';
import { hoursByConstant, learnedFigure } from '../request/learned';
import type { Wanted } from '../request/planInput';
import { BAGS } from '../request/stock';
import { standsBehind } from '../standsBehind';
import { countedIn } from './counted';
import { BAG, driedRange, dryerAt, leftAt, lotsAs, perUnitKg, richest, trayEnergy } from './dryingLots';
import { dried, taking } from './energyTaken';
import { commonOf, type Day, leftOut, leftOutBy, type Made, massOf, massRange, waterOf, within } from './making';
import { nameOf } from './naming';

/** Pieces in the dryer: trays, the weight to stop at, hours and dryness test. */
export function makeDried(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { dryer } = day.request.kitchen;
  if (dryer === undefined) return leftOut(wanted, 'no-dryer', 'the kitchen has no dryer', 'can or freeze it');
  const { form = 'slices', size = BAG } = wanted;
  const guide = within(product, () => dryingGuide({ food: trade, form }));
  if (!guide.known) return leftOutBy(wanted, guide);
  const target = wanted.moisture ?? guide.targetMoisture;
  const { water, basis } = waterOf(day, trade);
  const { hours, basis: hoursBasis } = dryingHours(day, trade, form, guide.hours, water, target);
  if (dryer.hours !== undefined && valueIn(dryer.hours, 'h') < valueIn(hours.low, 'h')) {
    const written = `${tenths(hours.low.value)} to ${tenths(hours.high.value)} ${hours.low.unit}`;
    return leftOut(
      wanted,
      'dries-too-long',
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
    food: trade,
    form,
    ...countedIn('bag', `${size.value} ${size.unit}`),
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies: lots.supplies.map((supply) => taking(supply, supply.readyPerKg, { electricity: energy.perKg })),
      stockPerUnit: [{ stock: BAGS, amount: 1 }],
      ...trayEnergy(energy),
      traysPerKg: richest(lots.yields) / perTrayKg,
      trayShare: trayDays(day, hours.high),
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
          standsBehind('trays', guide.basis),
          standsBehind('trays.hours', hoursBasis),
          standsBehind('trays.perTray', tray.basis),
          standsBehind('trays.stopWeight', stop.basis),
          standsBehind('energy', energy.basis),
          standsBehind('trays.dried', basis),
          standsBehind('ready', ...lots.yields.map((given) => given.basis)),
          workBasis,
        ),
        cautions: joinCautions([planCaution('dry-the-same-day')], guide.cautions, tray.cautions, stop.cautions),
      };
    },
  };
}

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

/** Days that a loaded tray is taken: what dries longer than a day and a night leaves none for the next day. */
const trayDays = ({ request }: Day, longest: Quantity<'time'>): number =>
  Math.min(request.kitchen.hours.length, Math.ceil(valueIn(longest, 'h') / customary('day-of-drying')));
