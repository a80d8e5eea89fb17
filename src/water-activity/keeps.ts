import * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, flag, number, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Range, TemperatureInput } from '../quantity/types';
import { type Basis, type Caution, measured } from '../sources/basis';
import { caution } from '../sources/cautions';
import { practiceBasis } from '../sources/table';
import { pH as pHWord } from '../words/pH';
import { waterActivity as activityWord } from '../words/waterActivity';
import { assumed } from './assumptions';
import { activityCaution } from './cautions';
import { activityField, rangeAround, storageTemperature } from './fields';
import { growing, growthCautions } from './growthAt';
import { conditionsAllow, type Organism, organisms } from './growthLimits';
import { type TcsClass, tcsClass } from './tcsClass';

const conditions = {
  /** pH of the food, 0 to 14; left out, acidity stops nothing. */
  pH: optional(pHWord()),
  /** Temperature it is kept at, -40 to 100 degC; left out, cold stops nothing. */
  temperature: optional(storageTemperature()),
  /** Whether it was cooked enough to destroy vegetative cells and packaged afterward, so that none come back. */
  heatTreatedAndPackaged: optional(
    flag('whether the food was heated to destroy vegetative cells and packaged afterward'),
  ),
};
const single = fields({
  ...conditions,
  /** Water activity of the food, above 0 and below 1. */
  waterActivity: activityField(),
  /** Uncertainty of that reading either way, 0 to 0.5. */
  uncertainty: optional(number('the uncertainty either way: a number from 0 to 0.5', { min: 0, max: 0.5 })),
});
const span = fields({
  ...conditions,
  /** The range of another answer. It may reach 0 or 1; only what is expected must lie between. */
  waterActivity: fields({ low: activityWord(), likely: activityField(), high: activityWord() }),
  /** A range has its uncertainty in it. */
  uncertainty: optional(z.undefined()),
});

export interface KeepsInput {
  /** Measured, above 0 and below 1, with its `uncertainty`; or the `waterActivityRange` of another answer. */
  readonly waterActivity: number | Range<number>;
  /** Uncertainty of a reading either way, 0 to 0.5; 0.02 when left out. A good meter is within about 0.01. */
  readonly uncertainty?: number;
  /** pH of the food, 0 to 14; left out, acidity stops nothing. */
  readonly pH?: number;
  /** Temperature it is kept at, -40 to 100 degC; left out, cold stops nothing. */
  readonly temperature?: TemperatureInput;
  /**
   * Where the food is sold: whether it was cooked enough to destroy vegetative cells and packaged afterward, so that none
   * come back; with `pH`.
   */
  readonly heatTreatedAndPackaged?: boolean;
}

/** What one kind of organism can do in the food. */
export interface Standing {
  /** `none`: none grows, with the uncertainty counted; `not shown to be safe`: a limit lies within it; `may grow`. */
  readonly growth: 'none' | 'not shown to be safe' | 'may grow';
  /** Names of the organisms that may grow at the expected activity. */
  readonly mayGrow: readonly string[];
  /** Names of the organisms that only the uncertainty lets in. */
  readonly notExcluded: readonly string[];
  /** The lowest limit of those that acidity and temperature do not stop; absent if they stop every organism. */
  readonly limit?: number;
  /** That limit less the upper end of the activity; negative where safety is not shown. */
  readonly margin?: number;
  /** The expected activity that would show it, with the uncertainty as it is. */
  readonly needed?: number;
}
export interface Keeps {
  /**
   * `keeps`: nothing grows; `may spoil`: nothing that makes people ill, but yeasts or molds are not excluded; `not shown
   * to be safe`: a limit of an organism that makes people ill lies within the uncertainty; `not safe`: one may grow.
   */
  readonly verdict: 'keeps' | 'may spoil' | 'not shown to be safe' | 'not safe';
  /** The water activity with its uncertainty. */
  readonly waterActivityRange: Range<number>;
  /** What organisms that make people ill can do in it. */
  readonly pathogenGrowth: Standing;
  /** What organisms that spoil food can do in it. */
  readonly spoilerGrowth: Standing;
  /** What to do about it, in words. */
  readonly advice: string;
  /** With `heatTreatedAndPackaged`: how the FDA Food Code rules on the food where it is sold. */
  readonly tcs?: TcsClass;
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

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
 * Whether a food keeps at a water activity: what may still grow, the margin, and what reading would show it.
 *
 * The upper end of the activity, with its uncertainty, is compared with each organism's limit (see `growthAt`), so an
 * estimate within its own error of a limit is `not shown to be safe`. Organisms that make people ill and those that
 * spoil food are judged apart. Time is no limit here, and temperature only where `temperature` stops growth.
 *
 * With `heatTreatedAndPackaged` also whether the food needs time and temperature control for safety (TCS), by the two
 * tables of the FDA Food Code that compare pH with water activity: Table A for food heated and then packaged, Table B
 * for all other; of a range its upper end counts. That is a rule for those who sell food, and no recipe for canning
 * (for that see `acidClass`).
 *
 * @param input - `waterActivity`: above 0 and below 1, with `uncertainty` (0.02 when left out), or the
 * `waterActivityRange` of an answer of `solutionWaterActivity`, `fruitWaterActivity` or another; `pH`; `temperature` of
 * storage
 * @throws StillroomError OUT_OF_RANGE; CONTRADICTION where a range is not in order; MISSING for `heatTreatedAndPackaged`
 * without a pH
 *
 * @example
 * ```ts
 * import { keeps } from 'stillroom/water-activity';
 *
 * keeps({ waterActivity: 0.55, uncertainty: 0.02 }).verdict; // => 'keeps'
 * keeps({ waterActivity: 0.7, uncertainty: 0.02 }).verdict; // => 'may spoil'
 * keeps({ waterActivity: 0.82, uncertainty: 0.02 }).verdict; // => 'not shown to be safe'
 * keeps({ waterActivity: 0.82, uncertainty: 0.02 }).pathogenGrowth.notExcluded; // => ['Staphylococcus aureus']
 * keeps({ waterActivity: 0.82, uncertainty: 0.02 }).pathogenGrowth.needed; // ≈ 0.809
 * keeps({ waterActivity: 0.95 }).verdict; // => 'not safe'
 * keeps({ waterActivity: 0.94, pH: 5.0, heatTreatedAndPackaged: true }).tcs.ruledAs; // => 'non-TCS'
 * keeps({ waterActivity: 0.93, pH: 4.4, heatTreatedAndPackaged: false }).tcs.ruledAs; // => 'PA'
 * ```
 */
export function keeps(input: KeepsInput): Keeps {
  const { range, pH, temperature, usual, heatTreatedAndPackaged: heated } = readRange(input);
  if (heated !== undefined && pH === undefined) fail('MISSING', 'pH', pH, 'the pH of the food, 0 to 14');
  // a reading meets the table as it is; of a range the safe side is its upper end
  const wettest = typeof input.waterActivity === 'number' ? range.likely : range.high;
  const ruled = heated === undefined || pH === undefined ? undefined : tcsClass(wettest, pH, heated);
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
    waterActivityRange: range,
    pathogenGrowth: pathogens,
    spoilerGrowth: spoilers,
    advice: adviceFor(pathogens, spoilers),
    ...(ruled === undefined ? {} : { tcs: ruled.tcs }),
    basis: [
      usual
        ? practiceBasis('waterActivityRange', 'uncertainty of a kitchen meter')
        : measured('waterActivityRange', 'the water activity given'),
      ...[...rested, ...nearest].flatMap((organism) => organism.basis('verdict')),
      ...(ruled?.basis ?? []),
    ],
    cautions: [
      activityCaution('wettest-piece'),
      ...growthCautions(range.high, pH),
      ...(verdict === 'keeps' ? [] : [activityCaution('measure-before-shelf')]),
      ...(usual ? [caution('estimate')] : []),
      ...(ruled?.cautions ?? []),
    ],
  });
}

function readRange(input: KeepsInput) {
  const given = (input as { waterActivity?: unknown } | undefined)?.waterActivity;
  if (typeof given === 'object' && given !== null) {
    const { waterActivity: range, ...rest } = readInput(span, input);
    if (range.low > range.likely || range.likely > range.high) {
      fail('CONTRADICTION', 'waterActivity', given, 'a range with low, likely and high in that order');
    }
    return { ...rest, range, usual: false };
  }
  const { waterActivity: likely, uncertainty, ...rest } = readInput(single, input);
  const range = rangeAround(likely, uncertainty ?? assumed('meter-error'));
  return { ...rest, range, usual: uncertainty === undefined };
}
