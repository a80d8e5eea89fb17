import { freezingHeadspace } from '../../freezing/freezingHeadspace';
import { knownOr } from '../../produce/shape';
import { kitchenMeasure, type VolumeOfMass } from '../../produce/weights/kitchenMeasure';
import { scaleRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { joinBasis, joinCautions } from '../../sources/basis';
import { customary } from '../customary';
import type { Cook } from '../request/activity';
import type { Wanted } from '../request/planInput';
import { BAGS, FREEZER_LOAD, FREEZER_ROOM } from '../request/stock';
import { standsBehind } from '../standsBehind';
import { before, type PotBefore } from './beforeFreezer';
import { countedIn } from './counted';
import { frozen, taking } from './energyTaken';
import {
  commonOf,
  type Day,
  type LotYield,
  leftOut,
  lotsFor,
  type Made,
  supplyOf,
  waterOf,
  within,
  yieldFromLot,
} from './making';
import { nameOf } from './naming';

/** A freezer pack, where the cook names no other size. */
const PACK: Quantity<'mass'> = { value: customary('freezer-pack'), unit: 'lb' };

/** Room in the freezer: by the cut, or by the measures of the food's other cuts where that one is not weighed. */
function roomOf(food: string, form: string, mass: Quantity<'mass'>): VolumeOfMass {
  const cut = kitchenMeasure({ food, form, mass });
  return cut.known ? cut : knownOr(kitchenMeasure({ food, mass }), 'food', food);
}

/** Dry packs for the freezer: pieces without sugar or liquid, by weight. */
export function makeFrozen(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { freezer } = day.request.kitchen;
  if (freezer === undefined) return leftOut(wanted, 'no-freezer', 'the kitchen has no freezer room', 'can or dry it');
  const { form = 'slices', size = PACK } = wanted;
  const first = before(day, trade, wanted.form, wanted.cook && valueIn(wanted.cook, 'min'));
  if ('left' in first) return leftOut(wanted, first.code, first.left, first.instead);
  const sizeKg = valueIn(size, 'kg');
  const energy = frozen(waterOf(day, trade).water);
  const yields: LotYield[] = [];
  const supplies = lotsFor(day, trade).map((lot) => {
    const given = within(product, () => yieldFromLot(day, lot, form));
    yields.push(given);
    return taking(supplyOf(lot, given, scaleRange(given.ready, 1 / sizeKg)), given.ready, {
      stove: first.pot?.heat,
      electricity: energy.kWh,
    });
  });
  const room = within(product, () => roomOf(trade, form, size));
  const head = freezingHeadspace({ style: 'dry', mouth: 'wide', jar: 'pint' });
  const {
    times: _,
    workBasis,
    ...common
  } = commonOf(day, trade, wanted, product, form, 1 / (supplies[0]?.unitsPerKg.likely ?? 1));
  return {
    label: nameOf(wanted, trade),
    food: trade,
    form,
    ...countedIn('pack', `${size.value} ${size.unit}`),
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies,
      stockPerUnit: [
        { stock: BAGS, amount: 1 },
        { stock: FREEZER_ROOM, amount: valueIn(room.volumeRange.high, 'L') },
        { stock: FREEZER_LOAD, amount: sizeKg },
      ],
      ...(first.pot === undefined ? {} : { cook: cookOf(first.pot, yields) }),
    },
    describe: () => ({
      ...(first.pot === undefined ? {} : { cookMinutes: first.pot.minutes }),
      packs: {
        size,
        headspace: head.headspace,
        room: quantityIn(valueIn(room.volumeRange.high, 'L'), 'L', day.metric ? 'L' : 'quart'),
      },
      steps: [
        ...first.steps,
        'Freeze pieces loose on trays first, then pack tightly, press out the air, seal and mark with the date.',
      ],
      basis: joinBasis(
        standsBehind('packs.room', room.basis),
        standsBehind('packs.headspace', head.basis),
        first.basis,
        standsBehind('ready', ...yields.map((given) => given.basis)),
        standsBehind('energy', energy.basis),
        workBasis,
      ),
      cautions: joinCautions(head.cautions, first.cautions, ...yields.map(({ cautions }) => cautions)),
    }),
  };
}

/** The pot work for each raw kg, at the rich end of the yields. */
const cookOf = ({ litresPerKg, minutes, stirred, hold, blanch }: PotBefore, yields: readonly LotYield[]): Cook => ({
  litresPerKg: litresPerKg * Math.max(...yields.map(({ ready }) => ready.high)),
  minutes,
  stirred,
  energyPerBatch: hold,
  ...(blanch === undefined ? {} : { blanch }),
});
