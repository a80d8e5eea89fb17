/**
 * Moisture isotherms: how much water a food holds at a water activity. Each equation gives the moisture, in g water
 * per g dry matter, and says which constants it takes. Forms, sources and ranges are in
 * `data/water-activity/isotherm-equations.json`. Internal.
 */
import { KELVIN } from './fields';
import type { IsothermModel } from './isothermModels';

export type Constants = Readonly<Record<string, number>>;

export interface IsothermEquation {
  readonly model: IsothermModel;
  /** Id of the row of the table of equations that it stands on. */
  readonly row: string;
  /** The equation it is a case of, by which a caller may also ask for it. */
  readonly family?: string;
  readonly constants: readonly string[];
  /** Whether it needs the temperature. */
  readonly withTemperature?: true;
  /** Moisture at an activity; t in degC. */
  readonly moisture: (aw: number, c: Constants, t: number) => number;
}

/** Constants are checked to be there before an equation runs. */
const of = (c: Constants, key: string): number => c[key] as number;

function gab(aw: number, M0: number, C: number, K: number): number {
  const k = K * aw;
  return (M0 * C * k) / ((1 - k) * (1 - k + C * k));
}

/** Above 1/K the GAB equation has no meaning. */
export const poleOf = (K: number): number => 1 / K;

export const isothermEquations: readonly IsothermEquation[] = [
  {
    model: 'GAB',
    row: 'gab',
    constants: ['M0', 'C', 'K'],
    moisture: (aw, c) => gab(aw, of(c, 'M0'), of(c, 'C'), of(c, 'K')),
  },
  {
    model: 'GAB, Arrhenius',
    row: 'gab-arrhenius',
    family: 'GAB',
    constants: ['m0', 'dHm_K', 'c0', 'dHc_K', 'k0', 'dHk_K'],
    withTemperature: true,
    moisture: (aw, c, t) => {
      const T = t + KELVIN;
      const at = (constant: string, energy: string) => of(c, constant) * Math.exp(of(c, energy) / T);
      return gab(aw, at('m0', 'dHm_K'), at('c0', 'dHc_K'), at('k0', 'dHk_K'));
    },
  },
  {
    model: 'BET',
    row: 'bet',
    constants: ['M0', 'C'],
    moisture: (aw, c) => gab(aw, of(c, 'M0'), of(c, 'C'), 1),
  },
  {
    model: 'Oswin',
    row: 'oswin',
    constants: ['A', 'B'],
    moisture: (aw, c) => of(c, 'A') * (aw / (1 - aw)) ** of(c, 'B'),
  },
  {
    model: 'Oswin, linear in T',
    row: 'oswin',
    family: 'Oswin',
    constants: ['k0', 'k1', 'n0', 'n1'],
    withTemperature: true,
    moisture: (aw, c, t) => (of(c, 'k0') + of(c, 'k1') * t) * (aw / (1 - aw)) ** (of(c, 'n0') + of(c, 'n1') * t),
  },
  {
    model: 'Oswin, percent and kelvin',
    row: 'oswin',
    family: 'Oswin',
    constants: ['k0', 'k1', 'n0', 'n1'],
    withTemperature: true,
    moisture: (aw, c, t) => {
      const T = t + KELVIN;
      return ((of(c, 'k0') + of(c, 'k1') * T) / 100) * (aw / (1 - aw)) ** (of(c, 'n0') + of(c, 'n1') * T);
    },
  },
  {
    model: 'Halsey',
    row: 'halsey',
    constants: ['A', 'B'],
    moisture: (aw, c) => (-of(c, 'A') / Math.log(aw)) ** (1 / of(c, 'B')),
  },
  {
    model: 'Henderson',
    row: 'henderson',
    constants: ['A', 'B'],
    moisture: (aw, c) => (-Math.log1p(-aw) / of(c, 'A')) ** (1 / of(c, 'B')),
  },
  {
    // aw = 1 - exp(-A (T - B)^C (100 X)^D), T in K
    model: 'Henderson, four constants',
    row: 'modified-henderson',
    family: 'Henderson',
    constants: ['A', 'B', 'C', 'D'],
    withTemperature: true,
    moisture: (aw, c, t) =>
      (-Math.log1p(-aw) / (of(c, 'A') * (t + KELVIN - of(c, 'B')) ** of(c, 'C'))) ** (1 / of(c, 'D')) / 100,
  },
  {
    model: 'modified Henderson',
    row: 'modified-henderson',
    constants: ['A', 'B', 'C'],
    withTemperature: true,
    moisture: (aw, c, t) => (-Math.log1p(-aw) / (of(c, 'A') * (t + of(c, 'C')))) ** (1 / of(c, 'B')),
  },
  {
    model: 'modified Halsey',
    row: 'modified-halsey',
    constants: ['A', 'B', 'C'],
    withTemperature: true,
    moisture: (aw, c, t) => (Math.exp(of(c, 'A') + of(c, 'B') * t) / -Math.log(aw)) ** (1 / of(c, 'C')),
  },
  {
    model: 'modified Oswin',
    row: 'modified-oswin',
    constants: ['A', 'B', 'C'],
    withTemperature: true,
    moisture: (aw, c, t) => (of(c, 'A') + of(c, 'B') * t) * (aw / (1 - aw)) ** (1 / of(c, 'C')),
  },
  {
    model: 'modified Chung-Pfost',
    row: 'modified-chung-pfost',
    constants: ['A', 'B', 'C'],
    withTemperature: true,
    moisture: (aw, c, t) => -Math.log((-(t + of(c, 'C')) * Math.log(aw)) / of(c, 'A')) / of(c, 'B'),
  },
  {
    model: 'modified GAB',
    row: 'modified-gab',
    constants: ['A', 'B', 'C'],
    withTemperature: true,
    moisture: (aw, c, t) => gab(aw, of(c, 'A'), of(c, 'C') / t, of(c, 'B')),
  },
  {
    model: 'Peleg',
    row: 'peleg',
    constants: ['C1', 'C2', 'C3', 'C4'],
    moisture: (aw, c) => of(c, 'C1') * aw ** of(c, 'C2') + of(c, 'C3') * aw ** of(c, 'C4'),
  },
  {
    model: 'Smith',
    row: 'smith',
    constants: ['A', 'B'],
    moisture: (aw, c) => of(c, 'A') - of(c, 'B') * Math.log1p(-aw),
  },
  {
    model: 'Adam and Shove',
    row: 'adam-shove',
    constants: ['A', 'B', 'C', 'D'],
    moisture: (aw, c) => of(c, 'A') + aw * (of(c, 'B') + aw * (of(c, 'C') + aw * of(c, 'D'))),
  },
  {
    model: 'Iglesias and Chirife',
    row: 'iglesias-chirife',
    constants: ['A', 'B', 'X05'],
    moisture: (aw, c) => {
      const s = Math.exp(of(c, 'A') * aw + of(c, 'B'));
      return (s * s - of(c, 'X05')) / (2 * s);
    },
  },
];

export const equationNamed = (model: IsothermModel): IsothermEquation =>
  isothermEquations.find((equation) => equation.model === model) as IsothermEquation;
