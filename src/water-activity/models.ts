/**
 * The equations of water activity in solutions: pure numbers in, a number out. Sources and validity are in
 * `data/water-activity/models.json`. Internal.
 */
import { KELVIN } from './fields';

/** Molar mass of water, kg/mol. */
export const WATER = 0.01801528;

/** Mole fraction of all particles in a solution of this molality (mol of particles per kg water). */
export const particleFraction = (molality: number): number => molality / (molality + 1 / WATER);

/** Raoult: aw = Xw, with `molality` counting every ion. */
export const raoult = (molality: number): number => 1 - particleFraction(molality);

/** Norrish: aw = Xw exp(-K Xs^2). */
export function norrish(molality: number, K: number): number {
  const x = particleFraction(molality);
  return (1 - x) * Math.exp(-K * x * x);
}

export interface Part {
  /** mol per kg water */
  readonly molality: number;
  readonly K: number;
  /** g/mol */
  readonly molarMass: number;
}

const total = (parts: readonly Part[]): number => parts.reduce((sum, { molality }) => sum + molality, 0);

/**
 * Ferro Fontan, Chirife and Boquet: Norrish with Km = sum K_i C_i Mt/M_i over mass fractions C_i of the solutes,
 * Mt = 1/sum(C_i/M_i); which is the mean of K over moles.
 */
export function norrishMixture(parts: readonly Part[]): number {
  const all = total(parts);
  const K = parts.reduce((sum, { molality, K: own }) => sum + own * molality, 0) / all;
  return norrish(all, K);
}

/** Norrish's own rule: ln aw = ln Xw - (sum sqrt(K_i) X_i)^2, for K_i of at least 0. */
export function norrishRoots(parts: readonly Part[]): number {
  const x = particleFraction(total(parts));
  const roots = parts.reduce((sum, { molality, K }) => sum + (Math.sqrt(K) * x * molality) / total(parts), 0);
  return (1 - x) * Math.exp(-(roots ** 2));
}

/** ln aw = ln Xw - [sum(K_i X_i^2)/sum(X_i^2)] (1 - Xw)^2. */
export function norrishMeanK(parts: readonly Part[]): number {
  const squares = parts.reduce((sum, { molality }) => sum + molality ** 2, 0);
  const K = parts.reduce((sum, { molality, K: own }) => sum + own * molality ** 2, 0) / squares;
  return norrish(total(parts), K);
}

/** Money and Born: aw = 1/(1 + 0.27 n), n moles of sugar per 100 g water. */
export const moneyBorn = (molality: number): number => 1 / (1 + 0.27 * (molality / 10));

/** Grover: aw = 1.04 - 0.1 E + 0.0045 E^2. */
export const grover = (E: number): number => 1.04 - 0.1 * E + 0.0045 * E * E;

/** aw = exp(-ions m Mw phi), the definition of the osmotic coefficient. */
export const osmotic = (ions: number, molality: number, phi: number): number =>
  Math.exp(-ions * molality * WATER * phi);

export interface PitzerSet {
  readonly beta0: number;
  readonly beta1: number;
  readonly Cphi: number;
}
/** A_phi at 25 degC that belongs to the 1973 parameters. */
const DEBYE_HUCKEL = 0.392;

/** Pitzer: osmotic coefficient of a 1:1 salt at 25 degC. */
export function pitzerCoefficient(m: number, { beta0, beta1, Cphi }: PitzerSet): number {
  const root = Math.sqrt(m);
  return 1 - (DEBYE_HUCKEL * root) / (1 + 1.2 * root) + m * (beta0 + beta1 * Math.exp(-2 * root)) + m * m * Cphi;
}

export interface DebyeHuckelSet {
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly D: number;
  readonly E: number;
  readonly beta: number;
}

/** Tang, Munkelwitz and Wang: osmotic coefficient of a 1:1 salt at 25 degC, into supersaturation. */
export function debyeHuckelCoefficient(m: number, { A, B, C, D, E, beta }: DebyeHuckelSet): number {
  const b = 1 + B * Math.sqrt(m);
  const limiting = (A / (B ** 3 * m)) * (b - 2 * Math.log(b) - 1 / b);
  return (
    1 - Math.LN10 * (limiting - (beta * m) / 2 - (2 / 3) * C * m ** 2 - (3 / 4) * D * m ** 3 - (4 / 5) * E * m ** 4)
  );
}

export interface GlycerolSet {
  readonly a12: number;
  readonly a21: number;
  readonly b12: number;
  readonly b21: number;
  readonly v1: number;
  readonly v2: number;
}

/** Zhang, Grace and Sun: glycerol in water from 0 to 100 degC. */
export function glycerolActivity(molality: number, t: number, { a12, a21, b12, b21, v1, v2 }: GlycerolSet): number {
  if (molality === 0) return 1;
  const T = t + KELVIN;
  const r = molality * WATER; // x/y, moles of glycerol per mole of water
  const e12 = Math.exp(-(a12 + b12 / T));
  const e21 = Math.exp(-(a21 + b21 / T));
  const v = v2 / v1;
  return Math.exp(-Math.log(1 + v * r * e12) + r / (1 / v / e12 + r) - (r * v * e12) / (r + e21 / v));
}

export interface SucroseSets {
  readonly starzak: { readonly Q_J_mol: number; readonly a: number; readonly b: number; readonly R: number };
  readonly robinsonStokes: { readonly c1: number; readonly c2: number; readonly c3: number; readonly c4: number };
  readonly zobrist: Readonly<Record<'a' | 'b' | 'c' | 'd' | 'e' | 'f' | 'g', number>>;
}

/** Starzak and Peacock: ln gamma = Q/(RT) x^2 (1 + a x + b x^2), sucrose at any concentration. */
export function starzakPeacock(molality: number, t: number, { Q_J_mol, a, b, R }: SucroseSets['starzak']): number {
  const x = particleFraction(molality);
  return (1 - x) * Math.exp((Q_J_mol / (R * (t + KELVIN))) * x * x * (1 + a * x + b * x * x));
}

/** Robinson and Stokes: sucrose at 25 degC to 6 mol/kg. */
export const robinsonStokes = (m: number, { c1, c2, c3, c4 }: SucroseSets['robinsonStokes']): number =>
  osmotic(1, m, 1 + c1 * m + c2 * m ** 2 + c3 * m ** 3 + c4 * m ** 4);

/** Zobrist: sucrose by mass fraction w and temperature, for concentrated solutions. */
export function zobrist(w: number, t: number, { a, b, c, d, e, f, g }: SucroseSets['zobrist']): number {
  return (1 + a * w) / (1 + b * w + c * w * w) + (t - 25) * (d * w + e * w ** 2 + f * w ** 3 + g * w ** 4);
}

/** Ferro Fontan and Chirife: -ln aw = 9.6934e-3 d + 4.761e-6 d^2, d degC of freezing-point depression. */
export const fromFreezing = (depression: number): number =>
  Math.exp(-(9.6934e-3 * depression + 4.761e-6 * depression ** 2));
