import { readFood } from '../../foods/fields';
import { formNamed } from '../../foods/lookUpFood';
import { foodOf, formName } from '../../foods/tables';
import { type BeforeFreezing, beforeFreezing, cutOf } from '../../freezing/beforeFreezing';
import { type Blanching, blanching } from '../../freezing/blanching';
import { freezerPack } from '../../freezing/freezerPack';
import { type BeforeFreezingRow, type BlanchingRow, freezingCaution, rule } from '../../freezing/tables';
import { formatQuantity } from '../../quantity/formatQuantity';
import { byEnds } from '../../quantity/range';
import { valueIn } from '../../quantity/scale';
import type { Range } from '../../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { customary, customaryBasis } from '../customary';
import { potsOf } from '../program/kitchen';
import type { BlanchWater } from '../request/activity';
import { standsBehind } from '../standsBehind';
import { cooked, waterBoiled } from './energyTaken';
import { type Day, massOf, volumeOf } from './making';

/** What a food needs before it is frozen, as the sheet says it. */
export interface Before {
  readonly steps: readonly string[];
  readonly pot?: PotBefore;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
/** What it does in a pot before. */
export interface PotBefore {
  /** Litres for each ready kg, the water with it. */
  readonly litresPerKg: number;
  /** Minutes of one batch. */
  readonly minutes: number;
  /** Whether somebody stays at the pot. */
  readonly stirred: boolean;
  /** KWh to heat a ready kg, and to hold a batch at the boil. */
  readonly heat: Range<number>;
  readonly hold: Range<number>;
  readonly blanch?: BlanchWater;
}
interface Left {
  readonly code: string;
  readonly left: string;
  readonly instead: string;
}
interface Batch {
  /** The pot. */
  readonly label: string;
  /** Kg of the vegetable at once, and litres of water with it. */
  readonly kg: number;
  readonly water: number;
}

const RAW: Before = { steps: [], basis: [], cautions: [] };
const BLANCH_IN = { water: 'boiling water', steam: 'steam' } as const;
const NO_POT: Left = {
  code: 'no-pot',
  left: 'the kitchen has no pot to heat it in before it is frozen',
  instead: 'name a pot',
};

/** What the largest pot blanches at once: the water for each pound, and the vegetable in it. */
function batchIn(day: Day, leafy: boolean): Batch | undefined {
  const pots = potsOf(day.request.kitchen).map(({ label, most }) => ({ label, litres: valueIn(most, 'L') }));
  const [largest] = pots.sort((one, other) => other.litres - one.litres);
  if (largest === undefined) return undefined;
  const { low: gallons } = rule(leafy ? 'blanch-water-per-lb-leafy' : 'blanch-water-per-lb');
  const litresPerKg = valueIn({ value: gallons, unit: 'gallon' }, 'L') / valueIn({ value: 1, unit: 'lb' }, 'kg');
  // a litre of room for each kg of the vegetable: it is about as dense as water
  const kg = largest.litres / (litresPerKg + 1);
  return { label: largest.label, kg, water: kg * litresPerKg };
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
    cut: cutOf(row),
    leafy: row.leafy === true,
    answer: blanching({
      food,
      elevation,
      ...(cutOf(row) === '' ? {} : { form: cutOf(row) }),
      ...(method === undefined ? {} : { blanchIn: method }),
    }),
  }));
  const timed = asked.flatMap(({ answer, ...row }) => (answer.known ? [{ ...row, answer }] : []));
  const [first] = timed;
  if (first === undefined) throw new Error(`no blanching time for ${food}`);
  const inWater = timed.some(({ answer }) => answer.blanchIn === 'water');
  const batch = batchIn(
    day,
    timed.some(({ leafy }) => leafy),
  );
  if (batch === undefined) return NO_POT;
  const pot = potOf(
    day,
    batch,
    Math.max(...timed.map(({ answer }) => answer.minutes.high)) + rule('blanch-return-to-boil').high,
    inWater,
  );
  const times =
    timed.length === 1
      ? `Blanch in ${BLANCH_IN[first.answer.blanchIn]} for ${span(first.answer.minutes)}`
      : `Blanch by size: ${timed
          .map(({ cut, answer }) => `${cut} ${span(answer.minutes)} in ${BLANCH_IN[answer.blanchIn]}`)
          .join('; ')}`;
  const water = blanching({ ...askFor(first.answer), ready: massOf(day, batch.kg) });
  const gallons =
    water.known && water.waterVolume !== undefined ? formatQuantity(volumeOf(day, water.waterVolume)) : undefined;
  const atOnce = `at most ${formatQuantity(massOf(day, batch.kg), { rounding: 'down' })} at a time in the ${batch.label}`;
  const cool = timed.length === 1 ? `for ${span(first.answer.coolingMinutes)}` : coolBySize(timed);
  return {
    steps: [
      inWater
        ? `${times}, counted from the return to the boil: ${atOnce}${gallons === undefined ? '' : `, with ${gallons} of water`}.`
        : `${times}, counted from the closed lid: ${atOnce}, in one layer.`,
      `Cool at once in ice water ${cool}, with as much ice as vegetables by weight, and drain well.`,
    ],
    pot,
    basis: joinBasis(
      standsBehind('steps', ...timed.map(({ answer }) => answer.basis), water.basis),
      [basisOf(rule('blanch-return-to-boil'), 'pots.minutesEach', 'return to the boil')],
      pot.basis,
    ),
    cautions: joinCautions(...timed.map(({ answer }) => answer.cautions)),
  };
}

/** Blanching as work of a pot: its water is heated once, then batch after batch goes in, with somebody beside it. */
function potOf(
  { request: { kitchen } }: Day,
  { kg, water }: Batch,
  minutes: number,
  inWater: boolean,
): PotBefore & { readonly basis: readonly Basis[] } {
  const { heat, hold, basis } = cooked(kitchen, minutes);
  const litres = inWater ? water : valueIn({ value: customary('steaming-water'), unit: 'quart' }, 'L');
  const boiled = waterBoiled(kitchen, litres);
  return {
    litresPerKg: (kg + water) / kg,
    minutes,
    stirred: true,
    heat,
    hold,
    blanch: { minutes: boiled.minutes, energy: boiled.kWh },
    basis: joinBasis(
      standsBehind('energy', basis, boiled.basis),
      inWater ? [] : [customaryBasis('steaming-water', 'energy')],
    ),
  };
}

const askFor = ({ food, form, blanchIn }: Blanching) => ({
  food,
  blanchIn,
  ...(form === undefined ? {} : { form }),
});

/** As long as each was blanched, or longer where the list says so. */
function coolBySize(timed: readonly { readonly cut: string; readonly answer: Blanching }[]): string {
  return timed.every(({ answer }) => answer.coolingMinutes.high === answer.minutes.high)
    ? 'for as long'
    : `(${timed.map(({ cut, answer }) => `${cut} ${span(answer.coolingMinutes)}`).join('; ')})`;
}

/** A fruit of the freezer packs, dry: with the ascorbic acid where its page prints it. */
function packedDry(food: string): Before {
  const pack = freezerPack({ food, style: 'dry', amount: '1 quart' });
  if (!pack.known) throw new Error(`no dry pack for ${food}`);
  const { ascorbicDose: acid, steamInstead: steam, basis, cautions } = pack;
  const water = acid?.dissolveIn === undefined ? '' : `, dissolved in ${formatQuantity(acid.dissolveIn)} of water,`;
  return {
    ...RAW,
    steps:
      acid === undefined
        ? []
        : [
            `Sprinkle ${formatQuantity(acid.perQuart)} of ascorbic acid${water} over each quart${steam === undefined ? '' : `, or steam the pieces for ${span(steam)} and cool them`}.`,
          ],
    basis: standsBehind('steps', basis),
    cautions,
  };
}

/** What is cooked until tender: in a pot with water, by the longest printed time, or by a customary one. */
function cookedTender(
  { request: { kitchen } }: Day,
  rows: readonly BeforeFreezingRow[],
  own: number | undefined,
): PotBefore & { readonly basis: readonly Basis[] } {
  const printed = rows.flatMap(({ minutes }) => minutes ?? []);
  const minutes = own ?? (printed.length > 0 ? Math.max(...printed) : customary('cook-before-freezing'));
  const { heat, hold, basis } = cooked(kitchen, minutes);
  const water = customary('water-to-cook-in');
  return {
    litresPerKg: 1 + water,
    minutes,
    stirred: false,
    heat: byEnds(heat, waterBoiled(kitchen, water).kWh, (food, more) => food + more),
    hold,
    basis: joinBasis(
      standsBehind('energy', basis),
      [customaryBasis('water-to-cook-in', 'energy')],
      own !== undefined || printed.length > 0 ? [] : [customaryBasis('cook-before-freezing', 'pots.minutesEach')],
    ),
  };
}

/** What a food needs before it is frozen; what these tables do not hold is left out, or said. */
export function before(
  day: Day,
  food: string,
  form: string | undefined,
  cookMinutes: number | undefined,
): Before | Left {
  const asked = readFood(food);
  const cut = form === undefined ? asked.form : formNamed(form);
  const found = form !== undefined && cut === undefined ? unknownCut(asked.id) : beforeFreezing(asked.id, cut);
  switch (found.does) {
    case 'pack':
      return packedDry(food);
    case 'blanch':
      return blanch(day, food, found.rows, undefined);
    case 'not printed for this cut':
      return {
        code: 'no-blanching-time-for-cut',
        left: `these tables hold no blanching time for ${food} in this cut${form === undefined ? '' : ` (${form})`}, and it is not frozen raw`,
        instead: insteadOfCut(found.printed.filter((cut) => cut !== '')),
      };
    case 'cook':
    case 'raw': {
      if (found.does === 'cook' && batchIn(day, false) === undefined) return NO_POT;
      const pot = found.does === 'cook' ? cookedTender(day, found.rows, cookMinutes) : undefined;
      const answer = blanching({ food, ...(cut === undefined ? {} : { form: formName(cut) }) });
      if (answer.known) throw new Error(`${food} is ${found.does}`);
      const { reason, instead, basis, cautions } = answer;
      return {
        steps: [[reason, ...instead].map(({ text }) => text).join(' ')],
        ...(pot === undefined ? {} : { pot }),
        basis: joinBasis(standsBehind('steps', basis), pot?.basis ?? []),
        cautions,
      };
    }
    case 'not in these tables':
      if (foodOf(asked.id).kind === 'fruit') return { ...RAW, cautions: [freezingCaution('fruit-not-in-tables')] };
      return {
        code: 'no-blanching-time',
        left: `these tables hold no blanching time for ${food}, and it is not frozen raw`,
        instead: 'can or dry it, or freeze it outside the plan by a published time',
      };
  }
}

/** A cut that the pantry does not know: a time that is printed for a cut does not hold for it. */
function unknownCut(id: string): BeforeFreezing {
  const general = beforeFreezing(id, undefined);
  return general.does === 'blanch' ? { does: 'not printed for this cut', printed: general.rows.map(cutOf) } : general;
}

const insteadOfCut = (printed: readonly string[]): string =>
  printed.length === 0
    ? 'leave the form out: one blanching time is printed for it, without a cut'
    : `freeze it in a printed cut: ${printed.join('; ')}`;
