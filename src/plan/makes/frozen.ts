import { StillroomError } from '../../errors/StillroomError';
import { blanching } from '../../freezing/blanching';
import { freezingHeadspace } from '../../freezing/freezingHeadspace';
import { volumeFromMass } from '../../produce/massFromVolume';
import { scaleRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../../sources/basis';
import { frozen, taking } from '../energyTaken';
import type { Wanted } from '../planInput';
import {
  commonOf,
  type Day,
  type LotYield,
  leftOut,
  lotsFor,
  type Made,
  nameOf,
  supplyOf,
  waterOf,
  within,
  yieldFromLot,
} from './context';

/** A freezer pack, where the cook names no other size. */
const PACK: Quantity<'mass'> = { value: 1, unit: 'lb' };

interface Blanch {
  readonly steps: readonly string[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
const BLANCH_IN = { water: 'boiling water', steam: 'steam' } as const;
const NO_BLANCH: Blanch = { steps: [], basis: [], cautions: [] };

/** What vegetables need before they are frozen; nothing for what the blanching list does not hold. */
function blanchOf(food: string, form: string | undefined): Blanch {
  try {
    const answer = blanching({ food, ...(form === undefined ? {} : { form }) });
    const { basis, cautions } = answer;
    if (!('minutes' in answer)) return { steps: [`${answer.reason} ${answer.instead}`], basis, cautions };
    const { low, high } = answer.minutes;
    const minutes = low === high ? `${low}` : `${low} to ${high}`;
    return {
      steps: [
        `Blanch in ${BLANCH_IN[answer.method]} for ${minutes} min, cool at once in ice water as long, and drain.`,
      ],
      basis,
      cautions,
    };
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    if (error.path === 'food') return NO_BLANCH;
    // the cut is not one that the list tells apart
    if (form !== undefined) return blanchOf(food, undefined);
    return { ...NO_BLANCH, steps: [`Blanch before freezing; the minutes depend on ${error.expected}.`] };
  }
}

/** Dry packs for the freezer: pieces without sugar or liquid, by weight. */
export function makeFrozen(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { freezer } = day.request.kitchen;
  if (freezer === undefined) return leftOut(wanted, 'the kitchen has no freezer room', 'can or dry it');
  const { form = 'slices', size = PACK } = wanted;
  const sizeKg = valueIn(size, 'kg');
  const energy = frozen(waterOf(day, trade).water);
  const yields: LotYield[] = [];
  const supplies = lotsFor(day, trade).map((lot) => {
    const given = within(product, () => yieldFromLot(day, lot, form));
    yields.push(given);
    return taking(supplyOf(lot, given, scaleRange(given.ready, 1 / sizeKg)), given.ready, { electricity: energy.kWh });
  });
  const room = within(product, () => volumeFromMass({ food: trade, form, mass: size }));
  const blanch = blanchOf(trade, form);
  const head = freezingHeadspace({ pack: 'dry', opening: 'wide', size: 'pint' });
  const {
    times: _,
    workBasis,
    ...common
  } = commonOf(day, trade, wanted, product, form, 1 / (supplies[0]?.unitsPerKg.likely ?? 1));
  return {
    label: nameOf(wanted, trade),
    produce: trade,
    form,
    unit: `pack of ${size.value} ${size.unit}`,
    activity: {
      ...common,
      madeOf: 'fruit',
      supplies,
      stockPerUnit: { bag: 1, 'freezer room': valueIn(room.range.high, 'L'), 'freezer load': sizeKg },
    },
    describe: () => ({
      packs: {
        size,
        headspace: head.headspace,
        room: quantityIn(valueIn(room.range.high, 'L'), 'L', day.metric ? 'L' : 'quart'),
      },
      steps: [
        ...blanch.steps,
        'Freeze pieces loose on trays first, then pack tightly, press out the air, seal and mark with the date.',
      ],
      basis: joinBasis(
        room.basis,
        head.basis,
        blanch.basis,
        ...yields.map((given) => given.basis),
        energy.basis,
        workBasis,
      ),
      cautions: joinCautions(head.cautions, blanch.cautions, ...yields.map(({ cautions }) => cautions)),
    }),
  };
}
