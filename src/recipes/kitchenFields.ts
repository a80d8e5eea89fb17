/** Fields of a kitchen that are read in more than one way: whose hands, until when, a price for how much gas. */
import { fail, StillroomError } from '../errors/StillroomError';
import { reading, time } from '../quantity/fields';
import { parseQuantity, readQuantity } from '../quantity/parseQuantity';
import { valueIn } from '../quantity/scale';
import type { EnergyInput, MassInput, Quantity, TimeInput, VolumeInput } from '../quantity/types';
import { findUnit } from '../quantity/units';
import { isClock, readTimeOfDay, timeOfDay } from '../words/timeOfDay';

/** One rest of every day. */
export const breakFields = () => ({
  /** Time of day that it begins. */
  at: timeOfDay(),
  /** How long it is, up to 12 h. */
  for: time({ max: { value: 12, unit: 'h' } }),
});

/** Until when a machine still runs: minutes after midnight, or minutes from the start of the work. */
export type BusyUntil = { readonly clock: number } | { readonly after: number };

const LONGEST_RUN = 168;

/** A time of day, or a time from the start. */
export const busyUntil = () =>
  reading<string | TimeInput, BusyUntil>((given) => {
    const expected = `a time of day such as "14:00", or a time from the start such as "6 h", above 0 and up to ${LONGEST_RUN} h`;
    if (given === undefined) fail('MISSING', '', given, expected);
    if (typeof given === 'string' && isClock(given)) return { clock: readTimeOfDay(given) };
    if (typeof given !== 'string' && (typeof given !== 'object' || given === null))
      fail('WRONG_TYPE', '', given, expected);
    const after = hoursOf(given, expected);
    if (!(after > 0 && after <= LONGEST_RUN)) fail('OUT_OF_RANGE', '', given, expected);
    return { after: after * 60 };
  });

/** A time in hours; the error speaks of both ways to write it. */
function hoursOf(given: unknown, expected: string): number {
  try {
    return valueIn(readQuantity(given, 'time'), 'h');
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    return fail(error.code, '', given, expected);
  }
}

const MOST_HANDS = 50;
const LONGEST_NAME = 60;

/** How many pairs of hands, or whose. */
export const hands = () =>
  reading<number | readonly string[], number | readonly string[]>((given) => {
    const expected = `pairs of hands: a whole number from 1 to ${MOST_HANDS}, or a list of 1 to ${MOST_HANDS} names`;
    if (given === undefined) fail('MISSING', '', given, expected);
    if (typeof given === 'number') {
      if (!Number.isInteger(given) || given < 1 || given > MOST_HANDS) fail('OUT_OF_RANGE', '', given, expected);
      return given;
    }
    if (!Array.isArray(given)) fail('WRONG_TYPE', '', given, expected);
    if (given.length < 1) fail('OUT_OF_RANGE', '', given, expected);
    if (given.length > MOST_HANDS) fail('TOO_MUCH', '', given, expected);
    const names = given.map((each: unknown, index) => {
      const path = `[${index}]`;
      if (typeof each !== 'string') fail('WRONG_TYPE', path, each, 'a name');
      const text = each.trim();
      if (text === '' || text.length > LONGEST_NAME) fail('UNKNOWN_NAME', path, each, 'a name');
      return text;
    });
    names.forEach((each, index) => {
      if (names.indexOf(each) < index) fail('CONTRADICTION', `[${index}]`, each, 'each name once');
    });
    return names;
  });

/** What gas is sold by. */
export type GasAmount = Quantity<'energy'> | Quantity<'mass'> | Quantity<'volume'>;

/** An amount of gas: its heat, or the mass or volume of liquid propane. */
export const gasPer = () =>
  reading<EnergyInput | MassInput | VolumeInput, GasAmount>((given) => {
    const expected =
      'what the price is for: "1 therm" or "1 kWh" of gas, "1 lb", "1 kg", "1 gallon" or "1 L" of propane';
    if (given === undefined) fail('MISSING', '', given, expected);
    const amount = parseQuantity(given);
    const dimension = findUnit(amount.unit)?.dimension;
    if (dimension !== 'energy' && dimension !== 'mass' && dimension !== 'volume')
      fail('WRONG_DIMENSION', '', given, expected);
    if (!(amount.value > 0 && amount.value <= 1e6)) fail('OUT_OF_RANGE', '', given, `${expected}, above 0`);
    return amount as GasAmount;
  });

/** Whether gas is priced by its heat. */
export const isEnergy = (amount: GasAmount): amount is Quantity<'energy'> =>
  findUnit(amount.unit)?.dimension === 'energy';
