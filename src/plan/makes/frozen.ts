import { StillroomError } from '../../errors/StillroomError';
import { beforeFreezing, cutOf } from '../../freezing/beforeFreezing';
import { type Blanching, blanching } from '../../freezing/blanching';
import { freezerPack } from '../../freezing/freezerPack';
import { freezingHeadspace } from '../../freezing/freezingHeadspace';
import { type BlanchingRow, freezingCaution, rule } from '../../freezing/tables';
import { produceNames } from '../../produce/catalogue';
import { type VolumeOfMass, volumeFromMass } from '../../produce/weights/massFromVolume';
import { formatQuantity } from '../../quantity/formatQuantity';
import { scaleRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { potsOf } from '../program/kitchen';
import type { Wanted } from '../request/planInput';
import { frozen, taking } from './energyTaken';
import {
  commonOf,
  type Day,
  type LotYield,
  leftOut,
  lotsFor,
  type Made,
  massOf,
  nameOf,
  supplyOf,
  volumeOf,
  waterOf,
  within,
  yieldFromLot,
} from './making';

/** A freezer pack, where the cook names no other size. */
const PACK: Quantity<'mass'> = { value: 1, unit: 'lb' };

/** What a food needs before it is frozen, as the sheet says it. */
interface Before {
  readonly steps: readonly string[];
  /** Minutes of hands beside the pot for each ready kg. */
  readonly minutesPerKg: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
interface Left {
  readonly left: string;
  readonly instead: string;
}
type Batch = { readonly label: string; readonly kg: number };

const RAW: Before = { steps: [], minutesPerKg: 0, basis: [], cautions: [] };
const BLANCH_IN = { water: 'boiling water', steam: 'steam' } as const;
const NO_POT: Left = { left: 'the kitchen has no pot to heat it in before it is frozen', instead: 'name a pot' };

/** What the largest pot blanches at once: the water for each pound, and the vegetable in it. */
function batchIn(day: Day, leafy: boolean): Batch | undefined {
  const pots = potsOf(day.request.kitchen).map(({ label, most }) => ({ label, litres: valueIn(most, 'L') }));
  const [largest] = pots.sort((one, other) => other.litres - one.litres);
  if (largest === undefined) return undefined;
  const { low: gallons } = rule(leafy ? 'blanch-water-per-lb-leafy' : 'blanch-water-per-lb');
  const litresPerKg = valueIn({ value: gallons, unit: 'gallon' }, 'L') / valueIn({ value: 1, unit: 'lb' }, 'kg');
  // a litre of room for each kg of the vegetable: it is about as dense as water
  return { label: largest.label, kg: largest.litres / (litresPerKg + 1) };
}

/** `3 min`, `2 to 3 min`, and by the second where the time is under a minute: `10 to 15 s`. */
function span({ low, high }: { readonly low: number; readonly high: number }): string {
  const [by, unit] = high < 1 ? [60, 's'] : [1, 'min'];
  const [least, most] = [low, high].map((minutes) => Number((minutes * by).toFixed(2)));
  return least === most ? `${least} ${unit}` : `${least} to ${most} ${unit}`;
}

/** The steps of blanching, one time for each size where the cook has not named one. */
function blanch(
  day: Day,
  food: string,
  rows: readonly BlanchingRow[],
  method: 'water' | 'steam' | undefined,
): Before | Left {
  const { elevation } = day.request.kitchen;
  const asked = rows.map((row) => ({
    cut: cutOf(row, food),
    leafy: row.leafy === true,
    answer: blanching({
      food: row.food,
      elevation,
      ...(row.form === '' ? {} : { form: row.form }),
      ...(method === undefined ? {} : { blanchIn: method }),
    }),
  }));
  const timed = asked.flatMap(({ answer, ...row }) => ('minutes' in answer ? [{ ...row, answer }] : []));
  const [first] = timed;
  if (first === undefined) throw new Error(`no blanching time for ${food}`);
  const inWater = timed.some(({ answer }) => answer.blanchIn === 'water');
  const batch = batchIn(
    day,
    timed.some(({ leafy }) => leafy),
  );
  if (batch === undefined) return NO_POT;
  const most = Math.max(...timed.map(({ answer }) => answer.minutes.high));
  const times =
    timed.length === 1
      ? `Blanch in ${BLANCH_IN[first.answer.blanchIn]} for ${span(first.answer.minutes)}`
      : `Blanch by size: ${timed
          .map(({ cut, answer }) => `${cut} ${span(answer.minutes)} in ${BLANCH_IN[answer.blanchIn]}`)
          .join('; ')}`;
  const water = blanching({ ...askFor(first.answer), mass: massOf(day, batch.kg) });
  const gallons =
    'water' in water && water.water !== undefined ? formatQuantity(volumeOf(day, water.water)) : undefined;
  const pot = `at most ${formatQuantity(massOf(day, batch.kg), { rounding: 'down' })} at a time in the ${batch.label}`;
  const cool = timed.length === 1 ? `for ${span(first.answer.coolingMinutes)}` : coolBySize(timed);
  return {
    steps: [
      inWater
        ? `${times}, counted from the return to the boil: ${pot}${gallons === undefined ? '' : `, with ${gallons} of water`}.`
        : `${times}, counted from the closed lid: ${pot}, in one layer.`,
      `Cool at once in ice water ${cool}, with as much ice as vegetables by weight, and drain well.`,
    ],
    minutesPerKg: (most + rule('blanch-return-to-boil').high) / batch.kg,
    basis: joinBasis(
      ...timed.map(({ answer }) => answer.basis),
      [basisOf(rule('blanch-return-to-boil'), 'return to the boil')],
      water.basis,
    ),
    cautions: joinCautions(...timed.map(({ answer }) => answer.cautions)),
  };
}

const askFor = ({ food, form, blanchIn }: Blanching) => ({ food, blanchIn, ...(form === '' ? {} : { form }) });

/** As long as each was blanched, or longer where the list says so. */
function coolBySize(timed: readonly { readonly cut: string; readonly answer: Blanching }[]): string {
  return timed.every(({ answer }) => answer.coolingMinutes.high === answer.minutes.high)
    ? 'for as long'
    : `(${timed.map(({ cut, answer }) => `${cut} ${span(answer.coolingMinutes)}`).join('; ')})`;
}

/** A fruit of the freezer packs, dry: with the ascorbic acid where its page prints it. */
function packedDry(food: string): Before {
  const pack = freezerPack({ food, style: 'dry', amount: '1 quart' });
  if ('tested' in pack) throw new Error(`no dry pack for ${food}`);
  const { ascorbicAcid: acid, steamInstead: steam, basis, cautions } = pack;
  const water = acid?.dissolveIn === undefined ? '' : `, dissolved in ${formatQuantity(acid.dissolveIn)} of water,`;
  return {
    ...RAW,
    steps:
      acid === undefined
        ? []
        : [
            `Sprinkle ${formatQuantity(acid.perQuart)} of ascorbic acid${water} over each quart${steam === undefined ? '' : `, or steam the pieces for ${span(steam)} and cool them`}.`,
          ],
    basis,
    cautions,
  };
}

/** What a food needs before it is frozen; what these tables do not hold is left out, or said. */
function before(day: Day, food: string, form: string | undefined): Before | Left {
  const found = beforeFreezing(food, form);
  switch (found.does) {
    case 'pack':
      return packedDry(found.food);
    case 'blanch':
      return blanch(day, found.food, found.rows, undefined);
    case 'not printed for this cut':
      return {
        left: `these tables hold no blanching time for ${food} in this cut${form === undefined ? '' : ` (${form})`}, and it is not frozen raw`,
        instead: insteadOfCut(found.printed.filter((cut) => cut !== '')),
      };
    case 'cook':
    case 'raw': {
      if (found.does === 'cook' && batchIn(day, false) === undefined) return NO_POT;
      const answer = blanching({ food: found.food, ...(form === undefined ? {} : { form }) });
      if ('minutes' in answer) throw new Error(`${found.food} is ${found.does}`);
      const { basis, cautions } = answer;
      return { ...RAW, steps: [`${answer.reason} ${answer.instead}`], basis, cautions };
    }
    case 'not in these tables':
      if (FRUITS.has(food)) return { ...RAW, cautions: [freezingCaution('fruit-not-in-tables')] };
      return {
        left: `these tables hold no blanching time for ${food}, and it is not frozen raw`,
        instead: 'can or dry it, or freeze it outside the plan by a published time',
      };
  }
}

const insteadOfCut = (printed: readonly string[]): string =>
  printed.length === 0
    ? 'leave the form out: one blanching time is printed for it, without a cut'
    : `freeze it in a printed cut: ${printed.join('; ')}`;

const FRUITS = new Set(produceNames('fruit'));

/** Room in the freezer: by the cut, or by the measures of the food's other cuts where that one is not weighed. */
function roomOf(food: string, form: string, mass: Quantity<'mass'>): VolumeOfMass {
  try {
    return volumeFromMass({ food, form, mass });
  } catch (error) {
    if (!(error instanceof StillroomError) || error.path !== 'form') throw error;
    return volumeFromMass({ food, mass });
  }
}

/** Dry packs for the freezer: pieces without sugar or liquid, by weight. */
export function makeFrozen(day: Day, wanted: Wanted, product: number, trade: string): Made {
  const { freezer } = day.request.kitchen;
  if (freezer === undefined) return leftOut(wanted, 'the kitchen has no freezer room', 'can or dry it');
  const { form = 'slices', size = PACK } = wanted;
  const first = before(day, trade, wanted.form);
  if ('left' in first) return leftOut(wanted, first.left, first.instead);
  const sizeKg = valueIn(size, 'kg');
  const energy = frozen(waterOf(day, trade).water);
  const yields: LotYield[] = [];
  const supplies = lotsFor(day, trade).map((lot) => {
    const given = within(product, () => yieldFromLot(day, lot, form));
    yields.push(given);
    return taking(supplyOf(lot, given, scaleRange(given.ready, 1 / sizeKg)), given.ready, { electricity: energy.kWh });
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
    produce: trade,
    form,
    unit: `pack of ${size.value} ${size.unit}`,
    activity: {
      ...common,
      // somebody stands by the pot while each batch blanches
      handsPerKg: common.handsPerKg + first.minutesPerKg * Math.max(...yields.map(({ ready }) => ready.high)),
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
        ...first.steps,
        'Freeze pieces loose on trays first, then pack tightly, press out the air, seal and mark with the date.',
      ],
      basis: joinBasis(
        room.basis,
        head.basis,
        first.basis,
        ...yields.map((given) => given.basis),
        energy.basis,
        workBasis,
      ),
      cautions: joinCautions(head.cautions, first.cautions, ...yields.map(({ cautions }) => cautions)),
    }),
  };
}
