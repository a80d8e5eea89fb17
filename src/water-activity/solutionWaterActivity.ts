import * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, flag, list, name, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { MassInput, Quantity, Range, TemperatureInput } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { practiceBasis } from '../sources/table';
import { mass } from '../words/mass';
import { temperature } from '../words/temperature';
import { assumed } from './assumptions';
import { activityCaution } from './cautions';
import { equationBasis, publishedEnd } from './equations';
import { REFERENCE_TEMPERATURE, rangeAround, solutionTemperature } from './fields';
import { MODELS, type SolutionModel } from './modelNames';
import { fromFreezing } from './models';
import { type SoluteForActivity, type SoluteForActivityInput, soluteForActivity } from './soluteForActivity';
import { alone, awayFrom25, type Dissolved, type Result, ross } from './soluteModels';
import { partsOf, solubilityOf } from './solutes';
import { byGrover, byModel, type Given, WITH_TEMPERATURE } from './solutionModels';

const none = { min: { value: 0, unit: 'g' } } as const;
const shared = {
  /** Mass of all the water in the mixture, above zero. */
  water: mass(),
  /** Temperature of the solution, 0 to 100 degC; 25 degC when left out. */
  temperature: optional(solutionTemperature()),
  /** The equation; left out, the best one for each solute and Ross' product of them. */
  model: optional(choice('a model', MODELS)),
  /** True to answer beyond solubility too, with a caution. */
  supersaturated: optional(flag('whether to answer beyond solubility')),
};
const listed = fields({
  ...shared,
  /** The dissolved matter, one entry for each solute. */
  solutes: list(
    'the solutes',
    fields({
      /** Name of the solute: `sucrose`, `salt`, `citric acid`. */
      solute: name('the name of a solute'),
      /** Mass of it, dry, 0 or more. */
      mass: mass(none),
    }),
    1,
    100,
  ),
});
const named = fields({
  ...shared,
  /** The dissolved matter: each solute by name, with its mass. */
  solutes: z.record(z.string(), mass(none)),
});
const freezing = fields({
  /** Temperature at which ice first forms, 0 to -40 degC. */
  freezingPoint: temperature({
    min: { value: -publishedEnd('freezing-point', 'most_below_zero_degC'), unit: 'degC' },
    max: { value: 0, unit: 'degC' },
  }),
});

/** One solute and how much of it. */
export interface SoluteMass {
  /** Name of the solute: `sucrose`, `salt`, `citric acid`. */
  readonly solute: string;
  /** Mass of it, dry, 0 or more. */
  readonly mass: MassInput;
}
/** A solution by what is in it. */
export interface SolutionByParts {
  /** Mass of all the water in the mixture, above zero. */
  readonly water: MassInput;
  /** The dissolved matter: `{ sucrose: '650 g' }`, or `[{ solute: 'sucrose', mass: '650 g' }]`. */
  readonly solutes: Readonly<Record<string, MassInput>> | readonly SoluteMass[];
  /** Temperature of the solution, 0 to 100 degC; 25 degC when left out. */
  readonly temperature?: TemperatureInput;
  /** The equation; left out, the best one for each solute and Ross' product of them. */
  readonly model?: SolutionModel;
  /** True to answer beyond solubility too, with a caution. */
  readonly supersaturated?: boolean;
}
/** A solution by the temperature at which it begins to freeze. */
export interface SolutionByFreezing {
  /** Temperature at which ice first forms, 0 to -40 degC. */
  readonly freezingPoint: TemperatureInput;
}
export type SolutionWaterActivityInput = SolutionByParts | SolutionByFreezing;

/** One solute of the solution. */
export interface SolutionPart {
  /** Name of the solute. */
  readonly solute: string;
  /** How much of it, in mol per kg of water. */
  readonly molality: number;
  /** The water activity it would have alone in all the water, 0 to 1; absent where a model does not take it alone. */
  readonly waterActivity?: number;
}
export interface SolutionWaterActivity {
  /** Water activity of the solution, 0 to 1. */
  readonly waterActivity: number;
  /** The same with its error. */
  readonly waterActivityRange: Range<number>;
  /** The equation: the one asked for, the one of a single solute, or `ross` for the product of several. */
  readonly model: SolutionModel | 'freezing point';
  /** Each solute in mol per kg of water, with the water activity it would have alone in all the water. */
  readonly parts: readonly SolutionPart[];
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The solutes by name, amounts of the same one added up. */
function dissolve(given: readonly Given[], water: number): Dissolved[] {
  const found = new Map<string, Dissolved>();
  for (const { text, grams, path } of given) {
    for (const { solute, part } of partsOf(text, path)) {
      const perWater = (grams * part) / water;
      const before = found.get(solute.id);
      const molality = (perWater * 1000) / solute.M_g_mol + (before?.molality ?? 0);
      found.set(solute.id, { solute, molality, perWater: perWater + (before?.perWater ?? 0), path });
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
    const memory = limit.basis[0]?.kind === 'recalled' ? ', a recalled figure' : '';
    fail(
      'OUT_OF_RANGE',
      path,
      `${(perWater * 100).toFixed(1)} g per 100 g of water`,
      `at most ${most} g of ${solute.name} per 100 g of water, all that dissolves at ${t} degC${memory}; or supersaturated: true`,
    );
  }
  return [];
}

function readGiven(input: SolutionByParts) {
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
 * Water activity of sugars, polyols, acids and salt dissolved in water (a syrup, a brine, the liquid of a jam), from
 * what is in it or from the temperature at which it begins to freeze.
 *
 * By default each solute is taken as if alone in all the water, by Norrish `aw = Xw exp(-K Xs^2)` for
 * sugars, polyols and acids, Pitzer for salts, a local-composition equation for glycerol and the ideal law for
 * ethanol, acetic acid and calcium chloride, and the parts are multiplied (Ross); glucose, fructose and galactose count
 * as one solute. Compared with the published figures in the tests: sucrose within 0.005 to 60 % and 0.01 to saturation, salt within 0.002 to 6 mol/kg, glucose, fructose
 * and glycerol within 0.01. `waterActivityRange` is the stated error, wider for mixtures, below 0.8 and away from 25
 * degC.
 *
 * `model` picks one equation instead: `ross` (the default), `norrish` (Ferro Fontan, Chirife and Boquet for
 * mixtures), `norrish roots`, `norrish mean k`, `norrish log10`, `raoult`, `money-born` (sugars), `grover`
 * (confectionery, E from 1 to 11), and for one solute `pitzer`, `debye-huckel`, `wilson` (glycerol),
 * `starzak-peacock`, `robinson-stokes`, `zobrist` (sucrose).
 * From a freezing point: Ferro Fontan and Chirife (1981), `-ln aw = 9.6934e-3 d + 4.761e-6 d^2`, d degC below 0.
 * Sources: see `basis`; the equations are in `data/water-activity/models.json`.
 *
 * @param input - `water`: mass of all the water, above zero; `solutes`: `{ sucrose: '650 g' }` or a list of
 * `{ solute, mass }` (mass of dry solute, 0 or more; `sugar`, `salt`, `dextrose`, `invert sugar` are understood);
 * `temperature`: 0 to 100 degC, 25 degC when left out; `supersaturated`: true to answer beyond solubility; or `freezingPoint`
 * alone: where ice first forms, 0 to -40 degC; or `water`, one `solute` and the `waterActivity` to come down to, above 0
 * and below 1
 * @throws StillroomError UNKNOWN_NAME with the nearest solutes; OUT_OF_RANGE beyond solubility or an equation's
 * range, or where even the strongest solution is wetter; CONTRADICTION where the model is not for these solutes
 *
 * @example
 * ```ts
 * import { solutionWaterActivity } from 'stillroom/water-activity';
 *
 * const syrup = solutionWaterActivity({ water: '350 g', solutes: { sucrose: '650 g' } });
 * syrup.waterActivity; // ≈ 0.865
 * syrup.waterActivityRange.high; // ≈ 0.869
 * solutionWaterActivity({ water: '60 g', solutes: { sugar: '30 g', glucose: '10 g' } }).waterActivity; // ≈ 0.954
 * solutionWaterActivity({ freezingPoint: '-4.93 degC' }).waterActivity; // ≈ 0.9532
 * solutionWaterActivity({ water: '1 kg', solutes: { salt: '0.5 kg' } }); // throws StillroomError OUT_OF_RANGE
 * solutionWaterActivity({ water: '1 kg', solute: 'sugar', waterActivity: 0.9 }).mass.value; // ≈ 1.44
 * ```
 */
export function solutionWaterActivity(input: SoluteForActivityInput): SoluteForActivity;
export function solutionWaterActivity(input: SolutionWaterActivityInput): SolutionWaterActivity;
export function solutionWaterActivity(
  input: SolutionWaterActivityInput | SoluteForActivityInput,
): SolutionWaterActivity | SoluteForActivity {
  if (typeof input !== 'object' || input === null) return byParts(input);
  if ('freezingPoint' in input) return byFreezing(input);
  return 'solute' in input ? soluteForActivity(input, byParts) : byParts(input);
}

function byParts(input: SolutionByParts): SolutionWaterActivity {
  const { water, temperature: at, model = 'ross', supersaturated = false, given } = readGiven(input);
  const t = at === undefined ? REFERENCE_TEMPERATURE : valueIn(at, 'degC');
  const grams = valueIn(water, 'g');
  const solids = given.reduce((sum, one) => sum + one.grams, 0);
  if (solids > assumed('most-per-water') * grams) {
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

/** The activity at the freezing point; at room temperature it is a little higher, which the range takes in. */
function byFreezing(input: SolutionByFreezing): SolutionWaterActivity {
  const t = valueIn(readInput(freezing, input).freezingPoint, 'degC');
  const basis = [equationBasis('freezing-point')];
  return answer(answerBy({ aw: fromFreezing(-t), error: assumed('freezing-error'), basis }, 'freezing point', []));
}

function answerBy(
  { aw, error, basis, cautions = [] }: Result,
  model: SolutionWaterActivity['model'],
  parts: SolutionWaterActivity['parts'],
  more: readonly Caution[] = [],
): SolutionWaterActivity {
  const recalled = basis.some(({ kind }) => kind === 'recalled') ? [caution('recalled')] : [];
  return {
    waterActivity: aw,
    waterActivityRange: rangeAround(aw, error),
    model,
    parts,
    basis: [
      ...basis,
      practiceBasis('waterActivityRange', 'error of the equation, from comparing it with others and with figures'),
    ],
    cautions: [caution('estimate'), activityCaution('activity-is-not-process'), ...more, ...cautions, ...recalled],
  };
}
