import { freezeEnergy } from '../../freezing/freezeEnergy';
import { applianceEnergy } from '../../heat/applianceEnergy';
import { dryEnergy } from '../../heat/dryEnergy';
import { freezeDryEnergy } from '../../heat/freezeDryEnergy';
import type { EnergyNeeded } from '../../heat/needed';
import { stoveEnergy } from '../../heat/stoveEnergy';
import { byEnds, mapRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, joinBasis } from '../../sources/basis';
import { practiceBasis } from '../../sources/table';
import { customary, customaryBasis } from '../figures/customary';
import type { Supply } from '../request/activity';
import type { Kitchen } from '../request/planInput';

/** Energy in kWh that a piece of work takes, by the functions of `heat/`, and what the figure rests on. */
export interface Taken {
  readonly kWh: Range<number>;
  readonly basis: readonly Basis[];
}

const taken = ({ energy, basis }: EnergyNeeded): Taken => ({ kWh: inKilowattHours(energy), basis });
export const inKilowattHours = (energy: Range<Quantity<'energy'>>): Range<number> =>
  mapRange(energy, (each) => valueIn(each, 'kWh'));

/** The power of a burner, the kitchen's own or a customary one. */
export const burnerOf = ({
  burnerPower = { value: customary('burner-power'), unit: 'W' },
}: Kitchen): Quantity<'power'> => burnerPower;

const KG: Quantity<'mass'> = { value: 1, unit: 'kg' };
/** Food as it comes to the stove or into the freezer, and as it is kept there. */
const ROOM: Quantity<'temperature'> = { value: customary('room-temperature'), unit: 'degC' };
const FREEZER: Quantity<'temperature'> = { value: customary('freezer-temperature'), unit: 'degC' };
const ROOM_BASIS: Basis = customaryBasis('room-temperature', 'energy');

/** A kg of food heated to the boil. */
export function heatedUp({ elevation }: Kitchen): Taken {
  const { kWh, basis } = taken(
    stoveEnergy({ heatUp: { mass: KG, startTemperature: ROOM, substance: 'food' }, elevation }),
  );
  return { kWh, basis: [...basis, ROOM_BASIS] };
}

export interface Cooking {
  readonly minutes: number;
  /** To heat a kg, and to hold one batch at the boil. */
  readonly heat: Range<number>;
  readonly hold: Range<number>;
  readonly basis: readonly Basis[];
}

/** Food heated to the boil and held there as long as it cooks. Syrup and brine beside it are not counted. */
export function cooked(kitchen: Kitchen, minutes: number): Cooking {
  const heat = heatedUp(kitchen);
  const hold = taken(stoveEnergy({ hold: { time: { value: minutes, unit: 'min' }, burnerPower: burnerOf(kitchen) } }));
  return { minutes, heat: heat.kWh, hold: hold.kWh, basis: joinBasis(heat.basis, hold.basis) };
}

/** Some litres of water brought to the boil, and the minutes that takes at the slow end. */
export function waterBoiled(kitchen: Kitchen, litres: number): Taken & { readonly minutes: number } {
  // a liter of cold water counts as a kilogram
  const { kWh, basis } = taken(
    stoveEnergy({
      heatUp: { mass: { value: litres, unit: 'kg' }, startTemperature: ROOM, substance: 'water' },
      elevation: kitchen.elevation,
    }),
  );
  const minutes = Math.ceil((60 * kWh.high) / valueIn(burnerOf(kitchen), 'kW'));
  return { kWh, minutes, basis: [...basis, ROOM_BASIS] };
}

/** A kg of water boiled off. */
export const boiledOff = ({ elevation }: Kitchen): Taken => taken(stoveEnergy({ boilOff: KG, elevation }));

/** A kg of food frozen. */
export function frozen(water: Range<number>): Taken {
  const { kWh, basis } = taken(
    freezeEnergy({ mass: KG, moisture: water.likely, startTemperature: ROOM, targetTemperature: FREEZER }),
  );
  return { kWh, basis: [...basis, ROOM_BASIS] };
}

/** Of a machine that dries: by the kg of food, or by the tray where its power is known. */
export interface Drying {
  readonly perKg?: Range<number>;
  readonly perTray?: Range<number>;
  readonly basis: readonly Basis[];
}

/** A kg of prepared food in the dryer; or a tray, by the power of the dryer and the hours. */
export function dried(
  { utilities: energy, dryer }: Kitchen,
  {
    water,
    target,
    at,
    hours,
  }: {
    readonly water: Range<number>;
    readonly target: number;
    readonly at?: Quantity<'temperature'>;
    readonly hours: Range<Quantity<'time'>>;
  },
): Drying {
  if (energy?.dryerPower !== undefined && dryer !== undefined) return tray(energy.dryerPower, hours, dryer.trays);
  const { kWh, basis } = taken(
    dryEnergy({
      fresh: KG,
      moisture: water.likely,
      targetMoisture: target,
      ...(at === undefined ? {} : { temperature: at }),
    }),
  );
  return { perKg: kWh, basis };
}

/** A kg of prepared food in the freeze-dryer by its ice; or a tray, by the power of the machine and the hours. */
export function freezeDried(
  { utilities: energy, freezeDryer }: Kitchen,
  ice: Range<number>,
  hours: Range<Quantity<'time'>>,
): Drying {
  if (energy?.freezeDryerPower !== undefined && freezeDryer !== undefined)
    return tray(energy.freezeDryerPower, hours, freezeDryer.trays);
  const { kWh, basis } = taken(freezeDryEnergy({ ice: KG }));
  return { perKg: byEnds(ice, kWh, (kg, each) => kg * each), basis };
}

/** A tray counts as its share of a full machine, whether the others are loaded or not. */
function tray(power: Quantity<'power'>, hours: Range<Quantity<'time'>>, trays: number): Drying {
  const kWh = mapRange(hours, (time) => taken(applianceEnergy({ power, time })).kWh.likely / trays);
  const { basis } = applianceEnergy({ power, time: hours.likely });
  return {
    perTray: kWh,
    basis: [...basis, practiceBasis('energy', 'a tray takes its share of the energy of a full machine')],
  };
}

/** Printed hours that name two ends only, with the middle as likely. */
export const likelyBetween = ({
  low,
  high,
}: {
  readonly low: Quantity<'time'>;
  readonly high: Quantity<'time'>;
}): Range<Quantity<'time'>> => ({
  low,
  likely: quantityIn((valueIn(low, 'h') + valueIn(high, 'h')) / 2, 'h', 'h'),
  high,
});

/** A supply with the energy that each raw kg takes: the kg of it that are worked on, by what each of those takes. */
export const taking = (
  supply: Supply,
  kg: Range<number>,
  {
    stove,
    electricity,
  }: { readonly stove?: Range<number> | undefined; readonly electricity?: Range<number> | undefined },
): Supply => {
  const inAll = (perKg: Range<number>) => byEnds(kg, perKg, (some, each) => some * each);
  return {
    ...supply,
    energyPerKg: {
      ...(stove === undefined ? {} : { stove: inAll(stove) }),
      ...(electricity === undefined ? {} : { electricity: inAll(electricity) }),
    },
  };
};
