import * as z from 'zod/mini';
import groverJson from '../../data/water-activity/grover.json';
import modelsJson from '../../data/water-activity/models.json';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { fail } from '../errors/StillroomError';
import { choice, fields, flag, list, mass, name, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { MassInput, Quantity, Range, TemperatureInput } from '../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { activityCaution } from './cautions';
import { REFERENCE_TEMPERATURE, rangeAround, solutionTemperature } from './fields';
import * as models from './models';
import {
  debyeHuckelOf,
  glycerol,
  glycerolBasis,
  log10Of,
  norrishOf,
  pitzerOf,
  type Solute,
  solubilityOf,
  soluteNamed,
  sucrose,
  sucroseBasis,
} from './solutes';

const MODELS = [
  'ross',
  'norrish',
  'norrish roots',
  'norrish mean k',
  'norrish log10',
  'raoult',
  'money-born',
  'grover',
  'pitzer',
  'debye-huckel',
  'wilson',
  'starzak-peacock',
  'robinson-stokes',
  'zobrist',
] as const;
export type SolutionModel = (typeof MODELS)[number];

interface ModelRow extends Sourced {
  readonly id: string;
}
const modelRows = asTable<ModelRow>(modelsJson).rows;
/** The line of an answer's basis for an equation of `data/water-activity/models.json`. */
export const equationBasis = (id: string, what = 'equation'): Basis => {
  const row = basisOf(modelRows.find((candidate) => candidate.id === id) as ModelRow, what);
  return row.kind === 'published' ? { ...row, kind: 'equation' } : row;
};

interface GroverRow extends Named, Sourced {
  readonly E: number;
}
const groverRows = asTable<GroverRow>(groverJson).rows;

const none = { min: { value: 0, unit: 'g' } } as const;
const shared = {
  water: mass(),
  temperature: optional(solutionTemperature()),
  model: optional(choice('a model', MODELS)),
  supersaturated: optional(flag('whether to answer beyond solubility')),
};
const listed = fields({
  ...shared,
  solutes: list('the solutes', fields({ solute: name('the name of a solute'), mass: mass(none) }), 1, 100),
});
const named = fields({ ...shared, solutes: z.record(z.string(), mass(none)) });

/** One solute and how much of it. */
export interface SoluteMass {
  readonly solute: string;
  readonly mass: MassInput;
}
export interface SolutionWaterActivityInput {
  /** Mass of all the water in the mixture. */
  readonly water: MassInput;
  /** The dissolved matter: `{ sucrose: '650 g' }`, or `[{ solute: 'sucrose', mass: '650 g' }]`. */
  readonly solutes: Readonly<Record<string, MassInput>> | readonly SoluteMass[];
  /** 0 to 100 degC; 25 degC when left out. */
  readonly temperature?: TemperatureInput;
  /** The equation; left out, the best one for each solute and Ross' product of them. */
  readonly model?: SolutionModel;
  /** True to be answered beyond solubility too, with the caution that goes with it. */
  readonly supersaturated?: boolean;
}

export interface SolutionWaterActivity {
  readonly waterActivity: number;
  readonly range: Range<number>;
  readonly model: SolutionModel;
  /** Each solute as if alone in all the water. */
  readonly parts: readonly { readonly solute: string; readonly molality: number; readonly waterActivity?: number }[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** A solute in the water it has. */
interface Dissolved {
  readonly solute: Solute;
  /** mol per kg water */
  readonly molality: number;
  /** g per g water */
  readonly perWater: number;
  /** Where it stands in the argument. */
  readonly path: string;
}

interface Result {
  /** The equation, where one solute alone picked it. */
  readonly model?: SolutionModel;
  readonly aw: number;
  readonly error: number;
  readonly basis: readonly Basis[];
  readonly cautions?: readonly Caution[];
}

// Errors either way, from comparing the equations with each other and with measured figures (see the tests).
const SALT_ERROR = 0.002;
const SUGAR_ERROR = 0.003;
const GLYCEROL_ERROR = 0.005;
const RAOULT_ERROR = 0.005;
/** Ross' product: usually within 1 to 2 %, the second with salt. */
const MIXTURE_ERROR = { plain: 0.01, salty: 0.02 } as const;
/** Norrish is published for activities above about this. */
const NORRISH_FLOOR = 0.8;
/** Extra error per unit of activity below that floor: sucrose is 0.03 off at 0.55 against Starzak and Peacock. */
const BELOW_FLOOR = 0.12;
/** Raoult's law is published for activities above about this. */
export const RAOULT_FLOOR = 0.95;
/** Money and Born, Grover: textbook approximations. */
const ROUGH_ERROR = 0.02;
/** Extra error of an equation for 25 degC, per degC away from it: what Starzak and Peacock give for syrup. */
const PER_DEGREE = 0.0002;

/** Extra error and caution away from the 25 degC of the constants. */
const awayFrom25 = (t: number): { error: number; cautions: Caution[] } =>
  t === REFERENCE_TEMPERATURE
    ? { error: 0, cautions: [] }
    : { error: Math.abs(t - REFERENCE_TEMPERATURE) * PER_DEGREE, cautions: [activityCaution('model-at-25-degc')] };

/** Extra error and caution where a Norrish equation is used below its published activities. */
const belowFloor = (aw: number): { error: number; cautions: Caution[] } =>
  aw >= NORRISH_FLOOR
    ? { error: 0, cautions: [] }
    : { error: (NORRISH_FLOOR - aw) * BELOW_FLOOR, cautions: [activityCaution('outside-norrish-range')] };

function norrishAlone({ solute, molality }: Dissolved): Result | undefined {
  const row = norrishOf(solute.name);
  if (row === undefined) return undefined;
  const aw = models.norrish(molality, row.K);
  const x = models.particleFraction(molality);
  const outside = belowFloor(aw);
  return {
    model: 'norrish',
    aw,
    error: SUGAR_ERROR + aw * x * x * (row.uncertainty ?? 0) + outside.error,
    basis: [equationBasis('norrish-binary'), basisOf(row, `constant of ${solute.name}`)],
    cautions: outside.cautions,
  };
}

function pitzerAlone({ solute, molality, path }: Dissolved, supersaturated: boolean): Result | undefined {
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
    error: SALT_ERROR,
    basis: [...basis, basisOf(row, `ion-interaction parameters of ${solute.name}`)],
  };
}

function debyeHuckelAlone({ solute, molality, path }: Dissolved): Result | undefined {
  const row = debyeHuckelOf(solute.name);
  if (row === undefined) return undefined;
  if (molality > row.max_m) {
    fail('OUT_OF_RANGE', path, `${molality} mol/kg`, `at most ${row.max_m} mol of ${solute.name} per kg of water`);
  }
  const aw = molality === 0 ? 1 : models.osmotic(2, molality, models.debyeHuckelCoefficient(molality, row));
  return {
    model: 'debye-huckel',
    aw,
    error: 2 * SALT_ERROR,
    basis: [equationBasis('osmotic'), basisOf(row, `constants of ${solute.name}`)],
  };
}

function glycerolAlone({ solute, molality }: Dissolved, t: number): Result | undefined {
  if (solute.name !== 'glycerol') return undefined;
  const aw = models.glycerolActivity(molality, t, glycerol);
  return { model: 'wilson', aw, error: GLYCEROL_ERROR, basis: [glycerolBasis()] };
}

function raoultAlone({ solute, molality, path }: Dissolved): Result {
  const aw = models.raoult(solute.ions * molality);
  if (aw < RAOULT_FLOOR) {
    fail(
      'OUT_OF_RANGE',
      path,
      `${molality.toFixed(2)} mol/kg`,
      `less ${solute.name}: only the ideal law is known for it, which holds to a water activity of ${RAOULT_FLOOR}`,
    );
  }
  return { model: 'raoult', aw, error: RAOULT_ERROR, basis: [equationBasis('raoult')] };
}

/** The best equation at hand for one solute alone in all the water. */
function alone(part: Dissolved, t: number, supersaturated: boolean): Result {
  const wilson = glycerolAlone(part, t);
  if (wilson !== undefined) return wilson;
  const result = norrishAlone(part) ?? pitzerAlone(part, supersaturated) ?? raoultAlone(part);
  const away = awayFrom25(t);
  return { ...result, error: result.error + away.error, cautions: [...(result.cautions ?? []), ...away.cautions] };
}

/** Sugars of one size and near-equal constants: they count as one solute, as invert sugar always has. */
const HEXOSES = new Set(['glucose', 'fructose', 'galactose']);

/** What Ross multiplies: the hexoses together, every other solute alone, each in all the water. */
function factors(parts: readonly Dissolved[], t: number, supersaturated: boolean): Result[] {
  const hexoses = parts.filter(({ solute }) => HEXOSES.has(solute.name));
  if (hexoses.length < 2) return parts.map((part) => alone(part, t, supersaturated));
  const together = norrishMixed(hexoses, 'norrish');
  const away = awayFrom25(t);
  return [
    { ...together, error: together.error + away.error, cautions: [...(together.cautions ?? []), ...away.cautions] },
    ...parts.filter((part) => !hexoses.includes(part)).map((part) => alone(part, t, supersaturated)),
  ];
}

/** Ross: the product of the activities of each solute alone in all the water. */
function ross(parts: readonly Dissolved[], t: number, supersaturated: boolean): Result {
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
    error: own + (mixed ? aw * (salty ? MIXTURE_ERROR.salty : MIXTURE_ERROR.plain) : 0),
    basis: joinBasis(mixed ? [equationBasis('ross')] : [], ...each.map(({ basis }) => basis)),
    cautions: joinCautions(
      salty ? [activityCaution('salty-mixture')] : [],
      ...each.map(({ cautions }) => cautions ?? []),
    ),
  };
}

/** Mixture forms of Norrish, by the constants of every solute. */
function norrishMixed(parts: readonly Dissolved[], form: 'norrish' | 'norrish roots' | 'norrish mean k'): Result {
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
    'norrish mean k': [models.norrishMeanK, 'norrish-mean-K'],
  } as const;
  const [rule, id] = parts.length === 1 ? ([models.norrishMixture, 'norrish-binary'] as const) : rules[form];
  const aw = mixture.every(({ molality }) => molality === 0) ? 1 : rule(mixture);
  const outside = belowFloor(aw);
  return {
    model: 'norrish',
    aw,
    error: SUGAR_ERROR + (parts.length > 1 ? aw * MIXTURE_ERROR.plain : 0) + outside.error,
    basis: [equationBasis(id), ...rows.map((row) => basisOf(row, `constant of ${row.solute}`))],
    cautions: outside.cautions,
  };
}

/** The one solute that an equation is made for. */
function only(parts: readonly Dissolved[], model: SolutionModel, solute?: string): Dissolved {
  const [first] = parts;
  if (first === undefined || parts.length > 1 || (solute !== undefined && first.solute.name !== solute)) {
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
  return { aw, error: ROUGH_ERROR, basis: [equationBasis('norrish-binary'), basisOf(row, 'constant')] };
}

const inRange = (inside: boolean, part: Dissolved, expected: string): void => {
  if (!inside) fail('OUT_OF_RANGE', part.path, `${part.molality.toFixed(3)} mol/kg`, expected);
};

/** The answer by one chosen equation, errors at 25 degC included. */
function byModel(model: Exclude<SolutionModel, 'ross' | 'grover'>, parts: readonly Dissolved[], t: number): Result {
  switch (model) {
    case 'norrish':
    case 'norrish roots':
    case 'norrish mean k':
      return norrishMixed(parts, model);
    case 'norrish log10':
      return require(logTen(only(parts, model)), only(parts, model), model);
    case 'raoult': {
      const particles = parts.reduce((sum, { solute, molality }) => sum + solute.ions * molality, 0);
      return { aw: models.raoult(particles), error: ROUGH_ERROR, basis: [equationBasis('raoult')] };
    }
    case 'money-born': {
      const moles = parts.reduce((sum, { molality }) => sum + molality, 0);
      return { aw: models.moneyBorn(moles), error: ROUGH_ERROR, basis: [equationBasis('money-born')] };
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
      return { aw, error: SUGAR_ERROR, basis: [sucroseBasis('starzak-peacock')] };
    }
    case 'robinson-stokes': {
      const part = only(parts, model, 'sucrose');
      inRange(part.molality <= 6, part, 'at most 6 mol of sucrose per kg of water');
      const aw = models.robinsonStokes(part.molality, sucrose.robinsonStokes);
      return { aw, error: SUGAR_ERROR, basis: [sucroseBasis('robinson-stokes-sucrose')] };
    }
    case 'zobrist': {
      const part = only(parts, model, 'sucrose');
      const w = part.perWater / (1 + part.perWater);
      inRange(w >= 0.4, part, 'at least 40 % sucrose: below that this equation reads too high');
      return { aw: models.zobrist(w, t, sucrose.zobrist), error: ROUGH_ERROR, basis: [sucroseBasis('zobrist')] };
    }
  }
}

/** Models that take the temperature into account. */
const WITH_TEMPERATURE = new Set<SolutionModel>(['wilson', 'starzak-peacock', 'zobrist', 'ross']);

interface Given {
  readonly text: string;
  readonly grams: number;
  readonly path: string;
}

function byGrover(given: readonly Given[], water: number): Result {
  const rows = given.map(({ text, path }) => lookUp(text, groverRows, path, 'ingredient with a Grover factor'));
  const E = rows.reduce((sum, row, i) => sum + (row.E * (given[i]?.grams ?? 0)) / water, 0);
  if (E < 1 || E > 11) {
    fail('OUT_OF_RANGE', 'solutes', E, 'sucrose equivalents from 1 to 11 times the water, the range of the equation');
  }
  const basis = [equationBasis('grover'), ...rows.map((row) => basisOf(row, `factor of ${row.name}`))];
  return { aw: models.grover(E), error: ROUGH_ERROR, basis };
}

/** Names a solute may go by that stand for more than one: invert sugar is half glucose, half fructose. */
const SPLIT = new Map([
  ['invert sugar', ['glucose', 'fructose']],
  ['invert', ['glucose', 'fructose']],
]);

/** The solutes by name, amounts of the same one added up. */
function dissolve(given: readonly Given[], water: number): Dissolved[] {
  const found = new Map<string, Dissolved>();
  for (const { text, grams, path } of given) {
    const into = SPLIT.get(text.trim().toLowerCase()) ?? [text];
    for (const one of into) {
      const solute = soluteNamed(one, path);
      const perWater = grams / into.length / water;
      const before = found.get(solute.name);
      const molality = (perWater * 1000) / solute.M_g_mol + (before?.molality ?? 0);
      found.set(solute.name, { solute, molality, perWater: perWater + (before?.perWater ?? 0), path });
    }
  }
  return [...found.values()];
}

/** A weighing of a saturated solution may be off in its last digits. */
const SLACK = 1e-9;

/** Refuses, or warns of, a solute beyond its solubility in pure water. */
function checkSolubility(parts: readonly Dissolved[], t: number, supersaturated: boolean): Caution[] {
  for (const { solute, perWater, path } of parts) {
    const limit = solubilityOf(solute.name, t);
    if (limit === undefined || perWater / (1 + perWater) <= limit.fraction + SLACK) continue;
    if (supersaturated) return [activityCaution('supersaturated')];
    const most = ((limit.fraction / (1 - limit.fraction)) * 100).toFixed(1);
    const memory = limit.basis[0]?.kind === 'recalled' ? ', a figure from memory' : '';
    fail(
      'OUT_OF_RANGE',
      path,
      `${(perWater * 100).toFixed(1)} g per 100 g of water`,
      `at most ${most} g of ${solute.name} per 100 g of water, all that dissolves at ${t} degC${memory}; or supersaturated: true`,
    );
  }
  return [];
}

/** Most solute per water, so that nothing overflows: drier than this no solution is left. */
const MOST_PER_WATER = 1000;

function readGiven(input: SolutionWaterActivityInput) {
  if (Array.isArray((input as { solutes?: unknown } | undefined)?.solutes)) {
    const { solutes, ...rest } = readInput(listed, input);
    return { ...rest, given: solutes.map(({ solute, mass: m }, i) => toGiven(solute, m, `solutes[${i}].solute`)) };
  }
  const { solutes, ...rest } = readInput(named, input);
  const entries = Object.entries(solutes);
  if (entries.length === 0) fail('OUT_OF_RANGE', 'solutes', solutes, 'at least one solute');
  if (entries.length > 100) fail('TOO_MUCH', 'solutes', solutes, 'at most 100 solutes');
  return { ...rest, given: entries.map(([text, m]) => toGiven(text, m, `solutes.${text.slice(0, 60)}`)) };
}
const toGiven = (text: string, m: Quantity<'mass'>, path: string): Given => ({ text, grams: valueIn(m, 'g'), path });

/**
 * Water activity of sugars, polyols, acids and salt dissolved in water: a syrup, a brine, the liquid of a jam.
 *
 * Left to itself it takes for each solute, as if alone in all the water, Norrish `aw = Xw exp(-K Xs^2)` for
 * sugars, polyols and acids, Pitzer for salts, a local-composition equation for glycerol and the ideal law for
 * ethanol, acetic acid and calcium chloride, and multiplies (Ross); glucose, fructose and galactose count as one
 * solute. Compared with the published figures in the
 * tests: sucrose within 0.005 to 60 % and 0.01 to saturation, salt within 0.002 to 6 mol/kg, glucose, fructose
 * and glycerol within 0.01. `range` is the stated error, wider for mixtures, below 0.8 and away from 25 degC.
 *
 * `model` picks one equation instead: `ross` (the default), `norrish` (Ferro Fontan, Chirife and Boquet for
 * mixtures), `norrish roots`, `norrish mean k`, `norrish log10`, `raoult`, `money-born` (sugars), `grover`
 * (confectionery, E from 1 to 11), and for one solute `pitzer`, `debye-huckel`, `wilson` (glycerol),
 * `starzak-peacock`, `robinson-stokes`, `zobrist` (sucrose).
 * Sources: see `basis`; the equations are in `data/water-activity/models.json`.
 *
 * @param input - `water`: mass of all the water, above zero; `solutes`: `{ sucrose: '650 g' }` or a list of
 * `{ solute, mass }` (mass of dry solute, 0 or more; `sugar`, `salt`, `dextrose`, `invert sugar` are understood);
 * `temperature`: 0 to 100 degC, 25 degC when left out; `supersaturated`: true to answer beyond solubility
 * @throws StillroomError UNKNOWN_NAME with the nearest solutes; OUT_OF_RANGE beyond solubility or an equation's
 * range; CONTRADICTION where the model is not for these solutes
 *
 * @example
 * ```ts
 * import { solutionWaterActivity } from 'stillroom/water-activity';
 *
 * const syrup = solutionWaterActivity({ water: '350 g', solutes: { sucrose: '650 g' } });
 * syrup.waterActivity; // ≈ 0.865
 * syrup.range.high; // ≈ 0.869
 * solutionWaterActivity({ water: '60 g', solutes: { sugar: '30 g', glucose: '10 g' } }).waterActivity; // ≈ 0.954
 * solutionWaterActivity({ water: '1 kg', solutes: { salt: '0.5 kg' } }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function solutionWaterActivity(input: SolutionWaterActivityInput): SolutionWaterActivity {
  const { water, temperature, model = 'ross', supersaturated = false, given } = readGiven(input);
  const t = temperature === undefined ? REFERENCE_TEMPERATURE : valueIn(temperature, 'degC');
  const grams = valueIn(water, 'g');
  const solids = given.reduce((sum, one) => sum + one.grams, 0);
  if (solids > MOST_PER_WATER * grams) {
    fail('OUT_OF_RANGE', 'water', `${grams} g`, `at least a thousandth of the ${solids} g of solutes`);
  }
  if (model === 'grover') return answer(answerBy(byGrover(given, grams), model, []));
  const parts = dissolve(given, grams);
  const crystals = checkSolubility(parts, t, supersaturated);
  if (model === 'ross') {
    const result = ross(parts, t, supersaturated);
    const list = parts.map((part) => ({
      solute: part.solute.name,
      molality: part.molality,
      waterActivity: alone(part, t, supersaturated).aw,
    }));
    return answer(answerBy(result, result.model ?? model, list, crystals));
  }
  const result = byModel(model, parts, t);
  const away = WITH_TEMPERATURE.has(model) ? { error: 0, cautions: [] } : awayFrom25(t);
  const list = parts.map(({ solute, molality }) => ({ solute: solute.name, molality }));
  return answer(
    answerBy({ ...result, error: result.error + away.error }, model, list, [...crystals, ...away.cautions]),
  );
}

function answerBy(
  { aw, error, basis, cautions = [] }: Result,
  model: SolutionModel,
  parts: SolutionWaterActivity['parts'],
  more: readonly Caution[] = [],
): SolutionWaterActivity {
  const memory = basis.some(({ kind }) => kind === 'recalled') ? [caution('recalled')] : [];
  return {
    waterActivity: aw,
    range: rangeAround(aw, error),
    model,
    parts,
    basis: joinBasis(basis),
    cautions: joinCautions([caution('estimate'), activityCaution('activity-is-not-process')], more, cautions, memory),
  };
}
