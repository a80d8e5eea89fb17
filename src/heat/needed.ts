import { mapRange, turnRange } from '../quantity/range';
import { quantityIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';

/** The energy that a piece of work takes. */
export interface EnergyNeeded {
  /** What the burner or machine draws, kWh; of gas, the heat of the fuel. */
  readonly energy: Range<Quantity<'energy'>>;
  /** The least heat that does it, kJ; none where only a power and a time are known. */
  readonly heat?: Quantity<'energy'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}
/** The same where the heat is known. */
export interface HeatNeeded extends EnergyNeeded {
  /** The least heat that does it, kJ. */
  readonly heat: Quantity<'energy'>;
}

export const kilowattHours = (value: number): Quantity<'energy'> => ({ value, unit: 'kWh' });

/** kWh for heat in kJ: the best share gives the low end. */
export const drawn = (kilojoules: number, share: Range<number>): Range<Quantity<'energy'>> =>
  mapRange(turnRange(share), (each) => quantityIn(kilojoules / each, 'kJ', 'kWh'));
