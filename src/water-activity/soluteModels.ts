/** The equations for one solute alone in all the water, and the rules that put solutes together. Internal. */
import { fail } from '../errors/StillroomError';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import { assumed } from './assumptions';
import { activityCaution } from './cautions';
import { equationBasis, publishedEnd } from './equations';
import { REFERENCE_TEMPERATURE } from './fields';
import type { SolutionModel } from './modelNames';
import * as models from './models';
import { debyeHuckelOf, glycerol, glycerolBasis, norrishOf, pitzerOf, type Solute, solubilityOf } from './solutes';

/** A solute in the water it has. */
export interface Dissolved {
  readonly solute: Solute;
  /** mol per kg water */
  readonly molality: number;
  /** g per g water */
  readonly perWater: number;
  /** Its field in the argument. */
  readonly path: string;
}

export interface Result {
  /** The equation, where one solute alone picked it. */
  readonly model?: SolutionModel;
  readonly aw: number;
  readonly error: number;
  readonly basis: readonly Basis[];
  readonly cautions?: readonly Caution[];
}

/** Extra error and caution away from the 25 degC of the constants. */
export const awayFrom25 = (t: number): { error: number; cautions: Caution[] } =>
  t === REFERENCE_TEMPERATURE
    ? { error: 0, cautions: [] }
    : {
        error: Math.abs(t - REFERENCE_TEMPERATURE) * assumed('per-degree'),
        cautions: [activityCaution('model-at-25-degc')],
      };

/** Extra error and caution where a Norrish equation is used below its published activities. */
function belowFloor(aw: number): { error: number; cautions: Caution[] } {
  const floor = publishedEnd('norrish-binary', 'least_activity');
  if (aw >= floor) return { error: 0, cautions: [] };
  return { error: (floor - aw) * assumed('below-norrish'), cautions: [activityCaution('outside-norrish-range')] };
}

function norrishAlone({ solute, molality }: Dissolved): Result | undefined {
  const row = norrishOf(solute.name);
  if (row === undefined) return undefined;
  const aw = models.norrish(molality, row.K);
  const x = models.particleFraction(molality);
  const outside = belowFloor(aw);
  return {
    model: 'norrish',
    aw,
    error: assumed('sugar-error') + aw * x * x * (row.uncertainty ?? 0) + outside.error,
    basis: [equationBasis('norrish-binary'), basisOf(row, 'waterActivity', `constant of ${solute.name}`)],
    cautions: outside.cautions,
  };
}

export function pitzerAlone({ solute, molality, path }: Dissolved, supersaturated: boolean): Result | undefined {
  const row = pitzerOf(solute.name);
  if (row === undefined) return undefined;
  const basis = [equationBasis('osmotic')];
  const saturation = solubilityOf(solute.name, REFERENCE_TEMPERATURE)?.fraction;
  const mostPerWater = saturation === undefined ? 0 : saturation / (1 - saturation);
  const most = Math.max(row.max_m, (mostPerWater * 1000) / solute.M_g_mol);
  if (molality > most) {
    const further = debyeHuckelOf(solute.name);
    if (supersaturated && further !== undefined) return debyeHuckelAlone({ solute, molality, path, perWater: 0 });
    fail(
      'OUT_OF_RANGE',
      path,
      `${molality} mol/kg`,
      `at most ${most.toFixed(2)} mol of ${solute.name} per kg of water`,
    );
  }
  return {
    model: 'pitzer',
    aw: models.osmotic(2, molality, models.pitzerCoefficient(molality, row)),
    error: assumed('salt-error'),
    basis: [...basis, basisOf(row, 'waterActivity', `ion-interaction parameters of ${solute.name}`)],
  };
}

export function debyeHuckelAlone({ solute, molality, path }: Dissolved): Result | undefined {
  const row = debyeHuckelOf(solute.name);
  if (row === undefined) return undefined;
  if (molality > row.max_m) {
    fail('OUT_OF_RANGE', path, `${molality} mol/kg`, `at most ${row.max_m} mol of ${solute.name} per kg of water`);
  }
  const aw = molality === 0 ? 1 : models.osmotic(2, molality, models.debyeHuckelCoefficient(molality, row));
  return {
    model: 'debye-huckel',
    aw,
    error: 2 * assumed('salt-error'),
    basis: [equationBasis('osmotic'), basisOf(row, 'waterActivity', `constants of ${solute.name}`)],
  };
}

export function glycerolAlone({ solute, molality }: Dissolved, t: number): Result | undefined {
  if (solute.id !== 'glycerol') return undefined;
  const aw = models.glycerolActivity(molality, t, glycerol);
  return { model: 'wilson', aw, error: assumed('glycerol-error'), basis: [glycerolBasis()] };
}

function raoultAlone({ solute, molality, path }: Dissolved): Result {
  const aw = models.raoult(solute.ions * molality);
  const floor = publishedEnd('raoult', 'least_activity');
  if (aw < floor) {
    fail(
      'OUT_OF_RANGE',
      path,
      `${molality.toFixed(2)} mol/kg`,
      `less ${solute.name}: these tables have only the ideal law for it, which holds to a water activity of ${floor}`,
    );
  }
  return { model: 'raoult', aw, error: assumed('raoult-error'), basis: [equationBasis('raoult')] };
}

/** The best equation at hand for one solute alone in all the water. */
export function alone(part: Dissolved, t: number, supersaturated: boolean): Result {
  const wilson = glycerolAlone(part, t);
  if (wilson !== undefined) return wilson;
  const result = norrishAlone(part) ?? pitzerAlone(part, supersaturated) ?? raoultAlone(part);
  const away = awayFrom25(t);
  return { ...result, error: result.error + away.error, cautions: [...(result.cautions ?? []), ...away.cautions] };
}

/** What Ross multiplies: the hexoses together, every other solute alone, each in all the water. */
function factors(parts: readonly Dissolved[], t: number, supersaturated: boolean): Result[] {
  const hexoses = parts.filter(({ solute }) => solute.hexose === true);
  if (hexoses.length < 2) return parts.map((part) => alone(part, t, supersaturated));
  const together = norrishMixed(hexoses, 'norrish');
  const away = awayFrom25(t);
  return [
    { ...together, error: together.error + away.error, cautions: [...(together.cautions ?? []), ...away.cautions] },
    ...parts.filter((part) => !hexoses.includes(part)).map((part) => alone(part, t, supersaturated)),
  ];
}

/** Ross: the product of the activities of each solute alone in all the water. */
export function ross(parts: readonly Dissolved[], t: number, supersaturated: boolean): Result {
  const each = factors(
    parts.filter(({ molality }, i) => molality > 0 || i === 0),
    t,
    supersaturated,
  );
  const aw = each.reduce((product, result) => product * result.aw, 1);
  const mixed = each.length > 1;
  const salty = mixed && parts.some(({ solute, molality }) => solute.ions > 1 && molality > 0);
  const own = each.reduce((sum, { error }) => sum + error, 0);
  const [first] = each;
  return {
    ...(!mixed && first?.model !== undefined ? { model: first.model } : {}),
    aw,
    error: own + (mixed ? aw * assumed(salty ? 'salty-mixture-error' : 'mixture-error') : 0),
    basis: [...(mixed ? [equationBasis('ross')] : []), ...each.flatMap(({ basis }) => basis)],
    cautions: [...(salty ? [activityCaution('salty-mixture')] : []), ...each.flatMap(({ cautions }) => cautions ?? [])],
  };
}

/** Mixture forms of Norrish, by the constants of every solute. */
export function norrishMixed(
  parts: readonly Dissolved[],
  form: 'norrish' | 'norrish roots' | 'norrish mean k',
): Result {
  const rows = parts.map(({ solute, path }) => {
    const row = norrishOf(solute.name);
    if (row === undefined)
      fail('OUT_OF_RANGE', path, solute.name, 'a solute with a Norrish constant: a sugar, polyol or acid');
    if (form === 'norrish roots' && row.K < 0)
      fail('OUT_OF_RANGE', path, solute.name, 'a solute whose Norrish constant is not below zero');
    return row;
  });
  const mixture = parts.map(({ solute, molality }, i) => ({ molality, molarMass: solute.M_g_mol, K: rows[i]?.K ?? 0 }));
  const rules = {
    norrish: [models.norrishMixture, 'ferrofontan-chirife-boquet'],
    'norrish roots': [models.norrishRoots, 'norrish-multicomponent'],
    'norrish mean k': [models.norrishMeanK, 'norrish-mean-k'],
  } as const;
  const [rule, id] = parts.length === 1 ? ([models.norrishMixture, 'norrish-binary'] as const) : rules[form];
  const aw = mixture.every(({ molality }) => molality === 0) ? 1 : rule(mixture);
  const outside = belowFloor(aw);
  return {
    model: 'norrish',
    aw,
    error: assumed('sugar-error') + (parts.length > 1 ? aw * assumed('mixture-error') : 0) + outside.error,
    basis: [equationBasis(id), ...rows.map((row) => basisOf(row, 'waterActivity', `constant of ${row.solute}`))],
    cautions: outside.cautions,
  };
}
