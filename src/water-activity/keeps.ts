import * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, number, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Range, ShareInput, TemperatureInput } from '../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../sources/basis';
import { caution } from '../sources/cautions';
import { activityCaution } from './cautions';
import { activityField } from './fields';
import { growing, growthCautions, pHField, storageTemperature } from './growthAt';
import { conditionsAllow, type Organism, organisms } from './growthLimits';

const conditions = { pH: optional(pHField()), temperature: optional(storageTemperature()) };
const single = fields({
  ...conditions,
  waterActivity: activityField(),
  uncertainty: optional(number('the uncertainty either way: a number from 0 to 0.5', { min: 0, max: 0.5 })),
});
const span = fields({
  ...conditions,
  // a stated range may reach 0 or 1; only what is expected must lie between
  waterActivity: fields({ low: end(), likely: activityField(), high: end() }),
  uncertainty: optional(z.undefined()),
});
function end() {
  return number('an end of the range of the water activity: a number from 0 to 1', { min: 0, max: 1 });
}

export interface KeepsInput {
  /** Measured, with its `uncertainty`; or the `range` of another answer. */
  readonly waterActivity: ShareInput | Range<number>;
  /** Either way; a meter of the better sort has about 0.01. Left out, 0.02. */
  readonly uncertainty?: number;
  readonly pH?: number;
  readonly temperature?: TemperatureInput;
}

/** How the food stands against one kind of organism. */
export interface Standing {
  /** `none`: none grows, with the uncertainty counted; `not shown to be safe`: a limit lies within it; `may grow`. */
  readonly growth: 'none' | 'not shown to be safe' | 'may grow';
  /** Names of those that may grow at the expected activity. */
  readonly mayGrow: readonly string[];
  /** Names of those that the uncertainty alone lets in. */
  readonly notExcluded: readonly string[];
  /** The lowest limit of those that acidity and temperature do not stop; none where they stop all. */
  readonly limit?: number;
  /** That limit less the upper end of the activity: below zero, how far it is from being shown. */
  readonly margin?: number;
  /** The expected activity that would show it, the uncertainty being as it is. */
  readonly needed?: number;
}
export interface Keeps {
  /**
   * `keeps`: nothing grows; `may spoil`: nothing that makes ill, but yeasts or molds are not excluded; `not shown to be
   * safe`: a limit of an organism that makes ill lies within the uncertainty; `not safe`: one may grow.
   */
  readonly verdict: 'keeps' | 'may spoil' | 'not shown to be safe' | 'not safe';
  readonly range: Range<number>;
  readonly pathogens: Standing;
  readonly spoilers: Standing;
  /** What to do about it, in words. */
  readonly advice: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Taken where a reading comes without its uncertainty: common practice for a kitchen meter. */
const USUAL_UNCERTAINTY = 0.02;
/** Activities are not written finer than this. */
const STEP = 0.001;

function standing(
  all: readonly Organism[],
  range: Range<number>,
  pH: number | undefined,
  t: number | undefined,
): Standing {
  const able = all.filter((organism) => conditionsAllow(organism, pH, t));
  const likely = able.filter(({ waterActivity }) => range.likely >= waterActivity);
  const within = able.filter(({ waterActivity }) => range.high >= waterActivity && range.likely < waterActivity);
  const names = { mayGrow: likely.map(({ name }) => name), notExcluded: within.map(({ name }) => name) };
  if (able.length === 0) return { growth: 'none', ...names };
  const limit = Math.min(...able.map(({ waterActivity }) => waterActivity));
  return {
    growth: likely.length > 0 ? 'may grow' : within.length > 0 ? 'not shown to be safe' : 'none',
    ...names,
    limit,
    margin: limit - range.high,
    // rounded down, and a step below: at the limit itself growth counts as possible
    needed: Math.max(Math.floor((limit - (range.high - range.likely)) / STEP - 1e-6) * STEP, 0),
  };
}

function adviceFor(pathogens: Standing, spoilers: Standing): string {
  // rounded down: a goal must never be set wetter than needed
  const to = (value = 0): string => `a measured ${(Math.floor(value * 100 + 1e-6) / 100).toFixed(2)} or below`;
  if (pathogens.growth === 'may grow') {
    return pathogens.needed === undefined
      ? 'Keep it cold or frozen.'
      : `Dry or sweeten it further, to ${to(pathogens.needed)}, or keep it cold or frozen.`;
  }
  if (pathogens.growth === 'not shown to be safe') {
    return `Measure it more closely, or dry it to ${to(pathogens.needed)}; until then keep it cold or frozen.`;
  }
  if (spoilers.growth !== 'none') {
    return `Yeasts and molds are not stopped: keep it cold or frozen, or dry it to ${to(spoilers.needed)}.`;
  }
  return 'Pack it so that it takes up no water, and look at it again after a week.';
}

/**
 * Whether a food keeps at a water activity: what may still grow, the margin, and what would be needed.
 *
 * The uncertainty is pushed through: the upper end of the activity is held against each organism's limit (see
 * `growthAt`), so an estimate within its own error of a limit is `not shown to be safe`. Organisms that make ill and
 * those that spoil are judged apart. Time and temperature are not limits here except where `temperature` stops growth.
 *
 * @param input - `waterActivity`: 0 to 1, exclusive, with `uncertainty` (0.02 when left out), or the `range` of an
 * answer of `solutionWaterActivity`, `fruitWaterActivity` or another; `pH`; `temperature` of storage
 * @throws StillroomError OUT_OF_RANGE; CONTRADICTION where a range is not in order
 *
 * @example
 * ```ts
 * import { keeps } from 'stillroom/water-activity';
 *
 * keeps({ waterActivity: 0.55, uncertainty: 0.02 }).verdict; // => 'keeps'
 * keeps({ waterActivity: 0.7, uncertainty: 0.02 }).verdict; // => 'may spoil'
 * keeps({ waterActivity: 0.82, uncertainty: 0.02 }).verdict; // => 'not shown to be safe'
 * keeps({ waterActivity: 0.82, uncertainty: 0.02 }).pathogens.notExcluded; // => ['Staphylococcus aureus']
 * keeps({ waterActivity: 0.82, uncertainty: 0.02 }).pathogens.needed; // ≈ 0.809
 * keeps({ waterActivity: 0.95 }).verdict; // => 'not safe'
 * ```
 */
export function keeps(input: KeepsInput): Keeps {
  const { range, pH, temperature, assumed } = readRange(input);
  const t = temperature === undefined ? undefined : valueIn(temperature, 'degC');
  const pathogens = standing(
    organisms.filter(({ kind }) => kind === 'pathogen'),
    range,
    pH,
    t,
  );
  const spoilers = standing(
    organisms.filter(({ kind }) => kind !== 'pathogen'),
    range,
    pH,
    t,
  );
  const verdict =
    pathogens.growth === 'may grow'
      ? 'not safe'
      : pathogens.growth === 'not shown to be safe'
        ? 'not shown to be safe'
        : spoilers.growth === 'none'
          ? 'keeps'
          : 'may spoil';
  // where nothing grows, the limits that come nearest are what the answer rests on
  const rested = growing(range.high, pH, t);
  const nearest = organisms.filter(
    ({ waterActivity }) => waterActivity === spoilers.limit || waterActivity === pathogens.limit,
  );
  return answer({
    verdict,
    range,
    pathogens,
    spoilers,
    advice: adviceFor(pathogens, spoilers),
    basis: joinBasis(
      assumed ? [{ of: 'uncertainty of the reading, 0.02', kind: 'common-practice' }] : [],
      ...[...rested, ...nearest].map(({ basis }) => basis),
    ),
    cautions: joinCautions(
      [activityCaution('wettest-piece')],
      growthCautions(range.high, pH),
      verdict === 'keeps' ? [] : [activityCaution('measure-before-shelf')],
      assumed ? [caution('estimate')] : [],
    ),
  });
}

function readRange(input: KeepsInput) {
  const given = (input as { waterActivity?: unknown } | undefined)?.waterActivity;
  if (typeof given === 'object' && given !== null) {
    const { waterActivity: range, pH, temperature } = readInput(span, input);
    if (range.low > range.likely || range.likely > range.high) {
      fail('CONTRADICTION', 'waterActivity', given, 'a range with low, likely and high in that order');
    }
    return { range, pH, temperature, assumed: false };
  }
  const { waterActivity: likely, uncertainty, pH, temperature } = readInput(single, input);
  const error = uncertainty ?? USUAL_UNCERTAINTY;
  const range = { low: Math.max(likely - error, 0), likely, high: Math.min(likely + error, 1) };
  return { range, pH, temperature, assumed: uncertainty === undefined };
}
