/** The solutes the library knows, and the constants each equation has for them. Internal. */
import debyeHuckelJson from '../../data/water-activity/extended-debye-huckel.json';
import glycerolJson from '../../data/water-activity/glycerol.json';
import norrishJson from '../../data/water-activity/norrish.json';
import log10Json from '../../data/water-activity/norrish-log10.json';
import pitzerJson from '../../data/water-activity/pitzer.json';
import solubilityJson from '../../data/water-activity/solubility.json';
import solutesJson from '../../data/water-activity/solutes.json';
import sucroseJson from '../../data/water-activity/sucrose-equations.json';
import { lookUp, type Named } from '../common/names';
import { solubilityAt, solubilityBasis } from '../solution/sucroseSolubility';
import type { Basis } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import type { DebyeHuckelSet, GlycerolSet, PitzerSet, SucroseSets } from './models';

export interface Solute extends Named, Sourced {
  /** Particles per formula unit when fully dissociated. */
  readonly ions: number;
  readonly M_g_mol: number;
}
export interface NorrishRow extends Sourced {
  readonly solute: string;
  readonly alternative?: true;
  readonly K: number;
  readonly uncertainty: number | null;
}
interface Log10Row extends Sourced {
  readonly solute: string;
  readonly k_log10: number;
  readonly K_natural: number;
}
interface PitzerRow extends Sourced, PitzerSet {
  readonly set: string;
  readonly salt: string;
  readonly max_m: number;
}
interface DebyeHuckelRow extends Sourced, DebyeHuckelSet {
  readonly salt: string;
  readonly max_m: number;
}
interface SucroseRow extends Sourced {
  readonly id: string;
  readonly constants: Readonly<Record<string, number>>;
}
interface SolubilityRow extends Sourced {
  readonly solute: string;
  readonly t_degC: number;
  readonly mass_pct: number;
}

const solutes = asTable<Solute>(solutesJson).rows;
const dissolved = solutes.filter(({ name }) => name !== 'water');
const norrishRows = asTable<NorrishRow>(norrishJson).rows;
const log10Rows = asTable<Log10Row>(log10Json).rows;
const pitzerRows = asTable<PitzerRow>(pitzerJson).rows;
const debyeHuckelRows = asTable<DebyeHuckelRow>(debyeHuckelJson).rows;
const sucroseRows = asTable<SucroseRow>(sucroseJson).rows;
const solubilityRows = asTable<SolubilityRow>(solubilityJson).rows;

/** The solute of this name; `path` is where the name stands in the argument. */
export const soluteNamed = (name: string, path: string): Solute => lookUp(name, dissolved, path, 'solute');

/** Norrish's constant of a solute; none for salts, ethanol and acetic acid. */
export const norrishOf = (solute: string): NorrishRow | undefined =>
  norrishRows.find((row) => row.solute === solute && row.alternative === undefined);

/** The constant of the older form in common logarithms. */
export const log10Of = (solute: string): Log10Row | undefined => log10Rows.find((row) => row.solute === solute);

/** The ion-interaction parameters of a salt: the 1973 set, which has them all. */
export const pitzerOf = (salt: string): PitzerRow | undefined =>
  pitzerRows.find((row) => row.salt === salt && row.set === 'PitzerMayorga1973');

/** The extended Debye-Huckel constants of a salt. */
export const debyeHuckelOf = (salt: string): DebyeHuckelRow | undefined =>
  debyeHuckelRows.find((row) => row.salt === salt);

const glycerolRow = asTable<GlycerolSet & Sourced>(glycerolJson).rows[0] as GlycerolSet & Sourced;
export const glycerol: GlycerolSet = glycerolRow;
export const glycerolBasis = (): Basis => ({ ...basisOf(glycerolRow, 'constants for glycerol') });

const sucroseRow = (id: string): SucroseRow => sucroseRows.find((row) => row.id === id) as SucroseRow;
/** The constants of the equations made for sucrose alone. */
export const sucrose = {
  starzak: sucroseRow('starzak-peacock').constants,
  robinsonStokes: sucroseRow('robinson-stokes-sucrose').constants,
  zobrist: sucroseRow('zobrist').constants,
} as unknown as SucroseSets;
export const sucroseBasis = (id: 'starzak-peacock' | 'robinson-stokes-sucrose' | 'zobrist'): Basis =>
  basisOf(sucroseRow(id), 'equation and constants for sucrose');

export interface Solubility {
  /** Mass fraction of the solute in its saturated solution. */
  readonly fraction: number;
  readonly basis: readonly Basis[];
}

/**
 * How much of a solute dissolves in pure water: the highest figure of several, since a mixture that the mildest
 * figure allows is still answered. On the line between two printed temperatures; below the first printed one, and
 * above the last, that one stands. None where no figure is at hand (glycerol mixes in any proportion).
 */
export function solubilityOf(solute: string, t: number): Solubility | undefined {
  if (solute === 'sucrose') return { fraction: solubilityAt(t).high / 100, basis: solubilityBasis('solubility') };
  const rows = solubilityRows.filter((row) => row.solute === solute);
  const above = rows.find((row) => row.t_degC >= t) ?? rows.at(-1);
  if (above === undefined) return undefined;
  const below = rows.findLast((row) => row.t_degC <= t) ?? above;
  const share = above === below ? 0 : (t - below.t_degC) / (above.t_degC - below.t_degC);
  const percent = below.mass_pct + share * (above.mass_pct - below.mass_pct);
  return { fraction: percent / 100, basis: [basisOf(below, `solubility of ${solute}`)] };
}
