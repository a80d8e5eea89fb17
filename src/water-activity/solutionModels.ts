/** The answers by one equation that a caller chose. Internal. */
import groverJson from '../../data/water-activity/grover.json';
import { lookUp } from '../common/names';
import { fail } from '../errors/StillroomError';
import { asTable, basisOf } from '../sources/table';
import { assumed } from './assumptions';
import { equationBasis, publishedEnd } from './equations';
import type { SolutionModel } from './modelNames';
import * as models from './models';
import type { TableRow } from './schemas';
import {
  type Dissolved,
  debyeHuckelAlone,
  glycerolAlone,
  norrishMixed,
  pitzerAlone,
  type Result,
} from './soluteModels';
import { log10Of, sucrose, sucroseBasis, sucroseEnd } from './solutes';

const groverRows = asTable<TableRow<'grover'>>(groverJson).rows;

/** One amount as the caller named it. */
export interface Given {
  readonly text: string;
  readonly grams: number;
  /** Its field in the argument. */
  readonly path: string;
}

/** The one solute that an equation is made for. */
function only(parts: readonly Dissolved[], model: SolutionModel, solute?: string): Dissolved {
  const [first] = parts;
  if (first === undefined || parts.length > 1 || (solute !== undefined && first.solute.id !== solute)) {
    fail(
      'CONTRADICTION',
      'model',
      model,
      `a model for these solutes; ${model} is for ${solute ?? 'one solute'} alone in water`,
    );
  }
  return first;
}

/** One solute by an equation that may not have its constants. */
function require(result: Result | undefined, part: Dissolved, model: SolutionModel): Result {
  return result ?? fail('OUT_OF_RANGE', part.path, part.solute.name, `a solute that ${model} has constants for`);
}

function logTen(part: Dissolved): Result | undefined {
  const row = log10Of(part.solute.name);
  if (row === undefined) return undefined;
  const aw = models.norrish(part.molality, row.k_log10 * Math.LN10);
  return {
    aw,
    error: assumed('rough-error'),
    basis: [equationBasis('norrish-binary'), basisOf(row, 'waterActivity', `constant of ${part.solute.name}`)],
  };
}

const inRange = (inside: boolean, part: Dissolved, expected: string): void => {
  if (!inside) fail('OUT_OF_RANGE', part.path, `${part.molality.toFixed(3)} mol/kg`, expected);
};

/** The answer by one chosen equation, errors at 25 degC included. */
export function byModel(
  model: Exclude<SolutionModel, 'ross' | 'grover'>,
  parts: readonly Dissolved[],
  t: number,
): Result {
  switch (model) {
    case 'norrish':
    case 'norrish roots':
    case 'norrish mean k':
      return norrishMixed(parts, model);
    case 'norrish log10':
      return require(logTen(only(parts, model)), only(parts, model), model);
    case 'raoult': {
      const particles = parts.reduce((sum, { solute, molality }) => sum + solute.ions * molality, 0);
      return { aw: models.raoult(particles), error: assumed('rough-error'), basis: [equationBasis('raoult')] };
    }
    case 'money-born': {
      const moles = parts.reduce((sum, { molality }) => sum + molality, 0);
      return { aw: models.moneyBorn(moles), error: assumed('rough-error'), basis: [equationBasis('money-born')] };
    }
    case 'pitzer':
      return require(pitzerAlone(only(parts, model), false), only(parts, model), model);
    case 'debye-huckel':
      return require(debyeHuckelAlone(only(parts, model)), only(parts, model), model);
    case 'wilson':
      return require(glycerolAlone(only(parts, model, 'glycerol'), t), only(parts, model), model);
    case 'starzak-peacock': {
      const { molality } = only(parts, model, 'sucrose');
      const aw = models.starzakPeacock(molality, t, sucrose.starzak);
      return { aw, error: assumed('sugar-error'), basis: [sucroseBasis('starzak-peacock')] };
    }
    case 'robinson-stokes': {
      const part = only(parts, model, 'sucrose');
      const most = sucroseEnd('robinson-stokes-sucrose', 'most_mol_kg');
      inRange(part.molality <= most, part, `at most ${most} mol of sucrose per kg of water`);
      const aw = models.robinsonStokes(part.molality, sucrose.robinsonStokes);
      return { aw, error: assumed('sugar-error'), basis: [sucroseBasis('robinson-stokes-sucrose')] };
    }
    case 'zobrist': {
      const part = only(parts, model, 'sucrose');
      const w = part.perWater / (1 + part.perWater);
      const least = sucroseEnd('zobrist', 'least_mass_fraction');
      inRange(w >= least, part, `at least ${100 * least} % sucrose: below that this equation reads too high`);
      return {
        aw: models.zobrist(w, t, sucrose.zobrist),
        error: assumed('rough-error'),
        basis: [sucroseBasis('zobrist')],
      };
    }
  }
}

/** Models that take the temperature into account. */
export const WITH_TEMPERATURE = new Set<SolutionModel>(['wilson', 'starzak-peacock', 'zobrist', 'ross']);

/** Confectionery by sucrose equivalents. */
export function byGrover(given: readonly Given[], water: number): Result {
  const rows = given.map(({ text, path }) => lookUp(text, groverRows, path, 'ingredient with a Grover factor'));
  const E = rows.reduce((sum, row, i) => sum + (row.E * (given[i]?.grams ?? 0)) / water, 0);
  const [least, most] = [publishedEnd('grover', 'least_E'), publishedEnd('grover', 'most_E')];
  if (E < least || E > most) {
    fail(
      'OUT_OF_RANGE',
      'solutes',
      E,
      `sucrose equivalents from ${least} to ${most} times the water, the range of the equation`,
    );
  }
  const basis = [equationBasis('grover'), ...rows.map((row) => basisOf(row, 'waterActivity', `factor of ${row.name}`))];
  return { aw: models.grover(E), error: assumed('rough-error'), basis };
}
