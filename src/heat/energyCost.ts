import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, money, rangeOf, readInput } from '../quantity/fields';
import { toCents, withoutNoise } from '../quantity/money';
import { exactIn } from '../quantity/scale';
import type { EnergyInput, Money, MoneyInput, Quantity, Range } from '../quantity/types';
import { type Basis, type Caution, measured } from '../sources/basis';
import { energy as energyField } from '../words/energy';
import { figureBasis } from './tables';

/** No energy at all has its price too: what is already hot. */
const amount = () => energyField({ min: { value: 0, unit: 'kWh' } });
const price = () => fields({ soldBy: choice('what the price is for', ['kWh', 'therm']), price: money() });
const schema = /* @__PURE__ */ fields({ energy: amount(), energyPrice: price() });
const rangeSchema = /* @__PURE__ */ fields({
  /** An energy from 0, or a range of them such as the answer's `energy`. */
  energy: rangeOf(amount),
  /** `soldBy` `kWh` or `therm`, and the `price`. */
  energyPrice: price(),
});

export interface EnergyCostInput {
  /** One energy from 0, or the range that the functions of this module answer. */
  readonly energy: EnergyInput | Range<EnergyInput>;
  /** What the energy is sold at: `{ soldBy: 'kWh', price: '0.31 USD' }`. */
  readonly energyPrice: {
    /** What the price is for: `kWh` or `therm`. */
    readonly soldBy: 'kWh' | 'therm';
    /** The price of one of them. */
    readonly price: MoneyInput;
  };
}

export interface EnergyCost {
  /** In whole cents: the low end down, the high end up. */
  readonly cost: Range<Money>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * What energy costs, at a price per kilowatt-hour or per therm of gas.
 *
 * cost = energy x price, in exact numbers, in whole cents. A therm is 100,000 Btu (IT), 105.505585262 MJ or 29.3071 kWh: the
 * therm (EC). The therm (U.S.) of US gas bills, 105.4804 MJ by law, is 0.024 % smaller, which is less than a cent in
 * $40. A gas burner's energy is the heat of the fuel it burns, so its efficiency is in the energy already.
 *
 * Source: NIST Special Publication 811, Appendix B.8, as transcribed in unit libraries.
 *
 * @returns `cost` as a range in the currency of the price, the low end rounded down and the high end up to the cent
 * @throws StillroomError OUT_OF_RANGE, NOT_A_QUANTITY, CONTRADICTION for a range that does not rise
 *
 * @example
 * ```ts
 * import { energyCost, energyNeeded } from 'stillroom/heat';
 *
 * const { energy } = energyNeeded({ cooking: { boilOff: '3.65 kg' } });
 * energyCost({ energy, energyPrice: { soldBy: 'kWh', price: '0.31 USD' } }).cost.high; // => { value: 2.03, unit: 'USD' }
 * energyCost({ energy: '1 therm', energyPrice: { soldBy: 'therm', price: '1.54 USD' } }).cost.likely.value; // => 1.54
 * ```
 */
export function energyCost(input: EnergyCostInput): EnergyCost {
  const { energy, energyPrice: tariff } = readCost(input);
  const { unit } = tariff.price;
  const cost = (each: Quantity<'energy'>) => withoutNoise(exactIn(each, tariff.soldBy).times(tariff.price.value));
  const money = (value: number): Money => ({ value, unit });
  return answer({
    cost: {
      low: money(toCents(cost(energy.low), 'down')),
      likely: money(toCents(cost(energy.likely))),
      high: money(toCents(cost(energy.high), 'up')),
    },
    basis: [measured('cost', 'price of energy'), ...(tariff.soldBy === 'therm' ? [figureBasis('therm', 'cost')] : [])],
    cautions: [],
  });
}

function readCost(input: EnergyCostInput) {
  const asked: unknown = (input as Partial<EnergyCostInput> | null | undefined)?.energy;
  if (typeof asked !== 'object' || asked === null || !('low' in asked)) {
    const { energy, ...rest } = readInput(schema, input);
    return { energy: { low: energy, likely: energy, high: energy }, ...rest };
  }
  const given = readInput(rangeSchema, input);
  const { low, likely, high } = given.energy;
  const joules = (each: Quantity<'energy'>) => exactIn(each, 'J');
  if (joules(low).gt(joules(likely)) || joules(likely).gt(joules(high))) {
    fail('CONTRADICTION', 'energy', input.energy, 'low, likely and high in rising order');
  }
  return given;
}
