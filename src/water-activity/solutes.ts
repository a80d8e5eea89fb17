/** The solutes the library knows, and the constants each equation has for them. Internal. */
import debyeHuckelJson from '../../data/water-activity/extended-debye-huckel.json';
import glycerolJson from '../../data/water-activity/glycerol.json';
import norrishJson from '../../data/water-activity/norrish.json';
import log10Json from '../../data/water-activity/norrish-log10.json';
import pitzerJson from '../../data/water-activity/pitzer.json';
import solubilityJson from '../../data/water-activity/solubility.json';
import mixturesJson from '../../data/water-activity/solute-mixtures.json';
import solutesJson from '../../data/water-activity/solutes.json';
import sucroseJson from '../../data/water-activity/sucrose-equations.json';
import { findNamed, lookUp } from '../common/names';
import { solubilityAt, solubilityBasis } from '../solution/sucroseSolubility';
import type { Basis } from '../sources/basis';
import { asTable, basisOf } from '../sources/table';
import type { GlycerolSet, SucroseSets } from './models';
import type { TableRow } from './schemas';

export type Solute = TableRow<'solutes'>;
export type NorrishRow = TableRow<'norrish'>;
type SucroseRow = TableRow<'sucrose-equations'>;

const solutes = asTable<Solute>(solutesJson).rows;
const dissolved = solutes.filter(({ id }) => id !== 'water');
const mixtures = asTable<TableRow<'solute-mixtures'>>(mixturesJson).rows;
const norrishRows = asTable<NorrishRow>(norrishJson).rows;
const log10Rows = asTable<TableRow<'norrish-log10'>>(log10Json).rows;
const pitzerRows = asTable<TableRow<'pitzer'>>(pitzerJson).rows;
const debyeHuckelRows = asTable<TableRow<'extended-debye-huckel'>>(debyeHuckelJson).rows;
const sucroseRows = asTable<SucroseRow>(sucroseJson).rows;
const solubilityRows = asTable<TableRow<'solubility'>>(solubilityJson).rows;

/** The solute of this id; the id comes from our own code and tables, so a missing one is met by every test. */
export function soluteOf(id: string): Solute {
  const found = dissolved.find((row) => row.id === id);
  if (found === undefined) throw new Error(`no solute ${id}`);
  return found;
}

/** The solutes that a name means, each with its share of the mass: invert sugar is half glucose, half fructose. */
export function partsOf(name: string, path: string): { readonly solute: Solute; readonly part: number }[] {
  const [mixture] = findNamed(name, mixtures);
  if (mixture === undefined) return [{ solute: soluteNamed(name, path), part: 1 }];
  return mixture.parts.map(({ solute, share }) => ({ solute: soluteOf(solute), part: share }));
}

/** The solute of this name; `path` is the field that holds the name. */
export const soluteNamed = (name: string, path: string): Solute => lookUp(name, dissolved, path, 'solute');

/** Norrish's constant of a solute; none for salts, ethanol and acetic acid. */
export const norrishOf = (solute: string): NorrishRow | undefined =>
  norrishRows.find((row) => row.solute === solute && row.alternative === undefined);

/** The constant of the older form in common logarithms. */
export const log10Of = (solute: string): TableRow<'norrish-log10'> | undefined =>
  log10Rows.find((row) => row.solute === solute);

/** The ion-interaction parameters of a salt: the set that has them all. */
export const pitzerOf = (salt: string): TableRow<'pitzer'> | undefined =>
  pitzerRows.find((row) => row.salt === salt && row.served === true);

/** The extended Debye-Huckel constants of a salt. */
export const debyeHuckelOf = (salt: string): TableRow<'extended-debye-huckel'> | undefined =>
  debyeHuckelRows.find((row) => row.salt === salt);

const glycerolRow = asTable<TableRow<'glycerol'>>(glycerolJson).rows[0] as TableRow<'glycerol'>;
export const glycerol: GlycerolSet = glycerolRow;
export const glycerolBasis = (): Basis => basisOf(glycerolRow, 'waterActivity', 'constants of glycerol');

const sucroseRow = (id: string): SucroseRow => sucroseRows.find((row) => row.id === id) as SucroseRow;
/** The constants of the equations made for sucrose alone. */
export const sucrose = {
  starzak: sucroseRow('starzak-peacock').constants,
  robinsonStokes: sucroseRow('robinson-stokes-sucrose').constants,
  zobrist: sucroseRow('zobrist').constants,
} as unknown as SucroseSets;
export const sucroseBasis = (id: 'starzak-peacock' | 'robinson-stokes-sucrose' | 'zobrist'): Basis =>
  basisOf(sucroseRow(id), 'waterActivity', 'equation and constants for sucrose');

/** An end of the range that an equation for sucrose is published for. */
export function sucroseEnd(id: string, end: 'most_mol_kg' | 'least_mass_fraction'): number {
  const value = sucroseRow(id)[end];
  if (value === undefined) throw new Error(`no ${end} of the equation ${id}`);
  return value;
}

export interface Solubility {
  /** Mass fraction of the solute in its saturated solution. */
  readonly fraction: number;
  readonly basis: readonly Basis[];
}

/**
 * How much of a solute dissolves in pure water: the highest figure of several, since a mixture that the mildest
 * figure allows is still answered. On the line between two printed temperatures; below the first printed one, and
 * above the last, that one is used. None where these tables have no figure (glycerol mixes in any proportion).
 */
export function solubilityOf(solute: string, t: number): Solubility | undefined {
  if (solute === 'sucrose') return { fraction: solubilityAt(t).high / 100, basis: solubilityBasis('solubility') };
  const rows = solubilityRows.filter((row) => row.solute === solute);
  const above = rows.find((row) => row.t_degC >= t) ?? rows.at(-1);
  if (above === undefined) return undefined;
  const below = rows.findLast((row) => row.t_degC <= t) ?? above;
  const share = above === below ? 0 : (t - below.t_degC) / (above.t_degC - below.t_degC);
  const percent = below.mass_pct + share * (above.mass_pct - below.mass_pct);
  return { fraction: percent / 100, basis: [basisOf(below, 'waterActivity', `solubility of ${solute}`)] };
}
