import figures from '../../data/heat/energy-figures.json';
import { mapRange, turnRange } from '../quantity/range';
import { quantityIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';

/** The energy that a piece of work takes. */
export interface EnergyNeeded {
  /** What the burner or machine draws, kWh; of gas, the heat of the fuel. */
  readonly energy: Range<Quantity<'energy'>>;
  /** The least heat that does it, kJ; none where only a power and a time are known. */
  readonly heat?: Quantity<'energy'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
/** The same where the heat is known. */
export interface HeatNeeded extends EnergyNeeded {
  readonly heat: Quantity<'energy'>;
}

interface FigureRow extends Sourced {
  readonly id: string;
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
}

const { rows } = asTable<FigureRow>(figures);
/** A row of `data/heat/energy-figures.json`, by its id. */
export const figure = (id: string): FigureRow => rows.find((row) => row.id === id) as FigureRow;
export const figureBasis = (id: string): Basis => basisOf(figure(id), figure(id).quantity);

export const kilowattHours = (value: number): Quantity<'energy'> => ({ value, unit: 'kWh' });

/** kWh for heat in kJ: the best share gives the low end. */
export const drawn = (kilojoules: number, share: Range<number>): Range<Quantity<'energy'>> =>
  mapRange(turnRange(share), (each) => quantityIn(kilojoules / each, 'kJ', 'kWh'));
