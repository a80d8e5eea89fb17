import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, isMass, massOrVolume, number, optional, readInput, share } from '../quantity/fields';
import { byEnds, mapRange } from '../quantity/range';
import { valueIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import { type Basis, measured } from '../sources/basis';
import { caution } from '../sources/cautions';
import { boilingTemperature } from '../steam/boilingTemperature';
import { latentHeat } from '../steam/latentHeat';
import { kitchenElevation } from '../words/elevation';
import { mass } from '../words/mass';
import { power } from '../words/power';
import { efficiency } from '../words/shares';
import { temperature } from '../words/temperature';
import { time } from '../words/time';
import { drawn, type EnergyNeeded, kilowattHours } from './needed';
import { figure, figureBasis, shareBasis, shareOr } from './tables';

const unfrozen = () => temperature({ min: { value: 0, unit: 'degC' }, max: { value: 150, unit: 'degC' } });
const heatUpFields = () =>
  fields({
    /** What is heated. */
    mass: mass(),
    /** Where it starts, 0 to 150 degC. */
    startTemperature: unfrozen(),
    /** Where it ends, at least `startTemperature`, up to 150 degC; the boil at `elevation` when left out. */
    targetTemperature: optional(unfrozen()),
    /** `water`, which takes the most, when left out; or `food`: fruit, vegetables, jam, sauce. */
    substance: optional(choice('what is heated', ['water', 'food'])),
    /** Its own specific heat in place of `substance`, kJ/(kg K), 0.5 to 5; `foodProperties` estimates it. */
    specificHeat: optional(number('a specific heat in kJ/(kg K), from 0.5 to 5', { min: 0.5, max: 5 })),
  });
const holdFields = () =>
  fields({
    /** How long the covered pot is kept at the boil, above 0 to 7 days. */
    time: time({ max: { value: 7, unit: 'day' } }),
    /** The burner's rated power, above 0 to 100 kW. */
    burnerPower: power({ max: { value: 100, unit: 'kW' } }),
    /** Share of that power that holds the boil, above 0 to 100 %; 25 to 70 % (likely 40 %) when left out. */
    powerShare: optional(share({ above: 0 })),
  });
const schema = /* @__PURE__ */ fields({
  /** What is heated up, without boiling any away. */
  heatUp: optional(heatUpFields()),
  /** Water that boils away, a mass or a volume; `concentrate` and `jamBalance` answer it as `waterRemoved`. */
  boilOff: optional(massOrVolume()),
  /** A covered pot kept at the boil. */
  hold: optional(holdFields()),
  /** Share of the burner's energy that reaches the pot, 5 to 100 %; 35 to 80 % (likely 55 %) when left out. */
  efficiency: optional(efficiency({ min: 0.05, max: 1 })),
  /** Of the kitchen, above -500 m to 5,000 m; sea level when left out. */
  elevation: optional(kitchenElevation()),
});
export type StoveEnergyInput = z.input<typeof schema>;
type HeatUp = z.output<ReturnType<typeof heatUpFields>>;
type Hold = z.output<ReturnType<typeof holdFields>>;

export interface StoveEnergy extends EnergyNeeded {
  /** Of the energy, what heats up, kWh; where `heatUp` is asked for. */
  readonly heatingUp?: Range<Quantity<'energy'>>;
  /** Of the energy, what boils water away, kWh; where `boilOff` is asked for. */
  readonly boilingOff?: Range<Quantity<'energy'>>;
  /** Of the energy, what holds the boil, kWh; where `hold` is asked for. */
  readonly holding?: Range<Quantity<'energy'>>;
}

/** Where the kitchen does not say: near the sea, where the boil is hottest. */
const SEA_LEVEL: Quantity<'length'> = { value: 0, unit: 'm' };

/** kJ to heat it up, and what that rests on. */
function heatingUp(given: HeatUp, elevation: Quantity<'length'>, asked: StoveEnergyInput['heatUp']) {
  if (given.substance !== undefined && given.specificHeat !== undefined) {
    fail('CONTRADICTION', 'heatUp.specificHeat', given.specificHeat, 'either what is heated or its specific heat');
  }
  const boil = given.targetTemperature === undefined ? boilingTemperature({ elevation }) : undefined;
  const [from, to] = [
    given.startTemperature,
    given.targetTemperature ?? (boil as NonNullable<typeof boil>).temperature,
  ].map((each) => valueIn(each, 'degC')) as [number, number];
  if (to < from) {
    fail(
      'CONTRADICTION',
      given.targetTemperature === undefined ? 'heatUp.startTemperature' : 'heatUp.targetTemperature',
      given.targetTemperature === undefined ? asked?.startTemperature : asked?.targetTemperature,
      'an end at least as warm as the start',
    );
  }
  const row = given.substance === 'food' ? 'produce-heat' : 'water-heat';
  const basis: Basis[] = [
    given.specificHeat === undefined ? figureBasis(row, 'heat') : measured('heat', 'specific heat'),
    ...(boil?.basis ?? []).map((line) => ({ ...line, of: 'heat' })),
  ];
  return { kilojoules: valueIn(given.mass, 'kg') * (given.specificHeat ?? figure(row).value) * (to - from), basis };
}

/** kJ to boil it away; a liter of water counts as 1 kg. */
function boilingOff(water: Quantity<'mass'> | Quantity<'volume'>, elevation: Quantity<'length'>) {
  const boil = boilingTemperature({ elevation });
  const latent = latentHeat({ temperature: boil.temperature });
  const kilograms = isMass(water) ? valueIn(water, 'kg') : valueIn(water as Quantity<'volume'>, 'L');
  return {
    kilojoules: kilograms * valueIn(latent.energy, 'kJ'),
    basis: [...boil.basis, ...latent.basis].map((line) => ({ ...line, of: 'heat' })),
  };
}

const held = ({ time: long, burnerPower, powerShare }: Hold): Range<Quantity<'energy'>> =>
  mapRange(shareOr(powerShare, 'holding-share'), (each) =>
    kilowattHours(valueIn(burnerPower, 'kW') * each * valueIn(long, 'h')),
  );

const sum = (ranges: readonly Range<Quantity<'energy'>>[]): Range<Quantity<'energy'>> =>
  ranges.reduce((one, other) => byEnds(one, other, (a, b) => kilowattHours(a.value + b.value)));

/**
 * The energy that a pot on the stove takes: to heat up, to boil water away, to be held at the boil, or all three.
 *
 * Heating up: mass x specific heat x (target - start) / efficiency, with 4.186 kJ/(kg K) for water and 3.8 for food.
 * Boiling away: water x latent heat at the boil of the elevation / efficiency. Holding a covered pot: rated power x
 * share x time. The efficiency is 35 to 80 % (likely 55 %), from a gas flame to induction, and the share of the power
 * 25 to 70 % (likely 40 %), unless given; both are common practice. What the walls of the pot give off counts among the
 * losses.
 *
 * Source: specific heats as printed in a textbook example of drying; IAPWS SR1-86(1992); U.S. Standard Atmosphere 1976.
 *
 * @returns `energy` in kWh and its parts `heatingUp`, `boilingOff`, `holding`; `heat` in kJ, of the first two
 * @throws StillroomError MISSING with none of the three; CONTRADICTION when `targetTemperature` is below
 *   `startTemperature`, `substance` and `specificHeat` are both given, or an `efficiency` with `hold` alone, which has
 * its own share; OUT_OF_RANGE
 */
export function stoveEnergy(input: StoveEnergyInput): StoveEnergy {
  const { heatUp, boilOff, hold, efficiency: reached, elevation = SEA_LEVEL } = readInput(schema, input);
  if (heatUp === undefined && boilOff === undefined) {
    if (hold === undefined) fail('MISSING', 'heatUp', undefined, 'at least one of heatUp, boilOff and hold');
    if (reached !== undefined) {
      fail('CONTRADICTION', 'efficiency', input.efficiency, 'hold.powerShare, where the boil is only held');
    }
  }
  const up = heatUp && heatingUp(heatUp, elevation, input.heatUp);
  const off = boilOff && boilingOff(boilOff, elevation);
  const holding = hold && held(hold);
  const reaching = shareOr(reached, 'burner-share');
  const upEnergy = up && drawn(up.kilojoules, reaching);
  const offEnergy = off && drawn(off.kilojoules, reaching);
  const heats = [up, off].flatMap((part) => (part === undefined ? [] : [part.kilojoules]));
  return answer({
    energy: sum([upEnergy, offEnergy, holding].flatMap((part) => (part === undefined ? [] : [part]))),
    ...(heats.length === 0 ? {} : { heat: { value: heats.reduce((one, other) => one + other), unit: 'kJ' as const } }),
    ...(upEnergy === undefined ? {} : { heatingUp: upEnergy }),
    ...(offEnergy === undefined ? {} : { boilingOff: offEnergy }),
    ...(holding === undefined ? {} : { holding }),
    basis: [
      ...(up?.basis ?? []),
      ...(off?.basis ?? []),
      ...(up === undefined ? [] : [shareBasis(reached, 'burner-share', 'heatingUp')]),
      ...(off === undefined ? [] : [shareBasis(reached, 'burner-share', 'boilingOff')]),
      ...(hold === undefined
        ? []
        : [measured('holding', 'rated power of the burner'), shareBasis(hold.powerShare, 'holding-share', 'holding')]),
    ],
    cautions: [caution('estimate')],
  });
}
