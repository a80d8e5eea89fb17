import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { form as formField } from '../foods/fields';
import { foodsNamed } from '../foods/lookUpFood';
import { fields, flag, name, number, optional, readInput } from '../quantity/fields';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { NotKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { pH as pHWord } from '../words/pH';
import { waterActivity as activityWord } from '../words/waterActivity';
import { lowAcidByLaw, pHLimit } from './phLimits';
import { type ListedPh, type PhOfInput, phOf } from './phOf';
import { assumedReading, closestReading, isAbove, isUndecided } from './phReading';
import { acidCaution, printed } from './tables';

const schema = fields({
  /** The food, by name. Where no pH was measured, the highest figure of the published lists decides. */
  food: optional(name('a food, such as "peach"')),
  /** Its form in the lists, such as `canned` or `juice`; fresh when left out. */
  form: optional(formField()),
  /** One line of the lists, in their own words, for a variety of the food: `Figs, Calimyrna`. */
  listed: optional(name('a line of the lists in their own words, such as "Figs, Calimyrna"')),
  /** pH of the finished, even mixture, measured: 0 to 14. It goes before the lists. */
  pH: optional(pHWord()),
  /** Uncertainty of that reading either way, 0 to 2 pH units; a kitchen meter's 0.1, with a caution, when left out. */
  uncertainty: optional(number('the uncertainty of the reading, 0 to 2 pH units', { min: 0, max: 2 })),
  /** Water activity, above 0 and at most 1; it matters to the regulation only. Left out, the food counts as wet. */
  waterActivity: optional(activityWord({ above: 0 })),
  /** Whether it is tomatoes or a tomato product; it matters to the regulation only. True when left out for tomatoes. */
  tomato: optional(flag('whether it is tomatoes or a tomato product')),
  /** Whether acid or an acid food was added; it matters to the regulation only. */
  acidAdded: optional(flag('whether acid or acid food was added')),
});
export type AcidClassInput = z.input<typeof schema>;

/** What the published lists print of a food. */
export interface ListedFood {
  /** Trade name of the food. */
  readonly food: string;
  /** Name of the form, where one was asked for. */
  readonly form?: string;
  /** The lowest pH of the published lines; of the recalled ones where none is published. */
  readonly low: number;
  /** The highest. */
  readonly high: number;
  /** Every line behind the answer, recalled ones too. */
  readonly figures: readonly ListedPh[];
}
export interface AcidClass {
  /** What it is at home, on the safe side of the reading's uncertainty: the class to can by. */
  readonly home: 'acid' | 'low-acid';
  /**
   * What commercial regulation calls a food of exactly this pH; `low water activity` at or below its line, at any pH.
   * It says which rules a maker is under, and is never a reason to can at home.
   */
  readonly regulation: 'acid' | 'acidified' | 'low-acid' | 'low water activity';
  /** The pH that the class went by: the reading, or the highest of the lists. */
  readonly pH: number;
  /** The pH that divides acid from low-acid at home. */
  readonly homeLimit: number;
  /** The pH that divides acid from low-acid by regulation. */
  readonly regulationLimit: number;
  /** How far `pH` is below the limit at home (negative: above it). */
  readonly margin: number;
  /** Whether the reading, or the lists, cannot tell the side of the limit at home; the food then counts as low-acid. */
  readonly homeUndecided: boolean;
  /** Whether the reading, or the lists, cannot tell the side of the limit by regulation. */
  readonly regulationUndecided: boolean;
  /** The uncertainty that the answer counts with, pH units either way; absent where the lists were asked. */
  readonly uncertainty?: number;
  /** Whether that was assumed, because none was given. */
  readonly uncertaintyAssumed: boolean;
  /** With a food and no reading: what the published lists print of it. */
  readonly lists?: ListedFood;
  /** The kind of canner that the class at home calls for, once there is a tested process. */
  readonly canner: string;
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** What is known of the pH before the rules are asked. */
interface Known {
  readonly pH: number;
  readonly uncertainty?: number;
  readonly assumed: boolean;
  readonly isAcid: boolean;
  readonly undecided: (limit: number, onIsAbove?: boolean) => boolean;
  readonly lists?: ListedFood;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** A reading of a meter or paper. */
function fromReading(pH: number, given: number | undefined): Known {
  const usual = assumedReading();
  const uncertainty = given ?? usual.within;
  const limit = pHLimit('home-acid').pH;
  const undecided = (line: number, onIsAbove = false) => isUndecided(pH, uncertainty, line, onIsAbove);
  return {
    pH,
    uncertainty,
    assumed: given === undefined,
    isAcid: !isAbove(pH + uncertainty, limit),
    undecided,
    basis: [
      { of: 'pH', kind: 'measured' },
      ...(given === undefined ? [basisOf(usual, 'uncertainty', 'uncertainty of a kitchen meter')] : []),
    ],
    cautions: [
      acidCaution('ph-no-process'),
      ...(given === undefined ? [acidCaution('state-the-uncertainty')] : []),
      ...(uncertainty < closestReading().within ? [acidCaution('no-meter-so-close')] : []),
    ],
  };
}

/** The published lists: the highest figure of any of them decides. */
function fromLists(question: PhOfInput): Known | NotKnown {
  const listed = phOf(question);
  if ('known' in listed) return listed;
  const pH = Math.max(...listed.figures.map(({ high }) => high));
  const low = Math.min(...listed.figures.map((figure) => figure.low));
  const { food, form, figures } = listed;
  const limit = pHLimit('home-acid').pH;
  return {
    pH,
    assumed: false,
    lists: { food, ...(form === undefined ? {} : { form }), ...listed.pH, figures },
    isAcid: listed.acidity === 'acid',
    undecided: (line, onIsAbove = false) =>
      line === limit ? listed.crosses : isAbove(pH, line, onIsAbove) && !isAbove(low, line, onIsAbove),
    basis: listed.basis.map((line) => ({ ...line, of: 'pH', note: line.note ?? line.of })),
    cautions: listed.cautions,
  };
}

/**
 * Whether a food counts as acid or low-acid: for canning at home, and by commercial regulation.
 *
 * Acid is pH 4.6 or below. At home a reading whose uncertainty reaches above 4.6 is low-acid, and undecided; without
 * an uncertainty it is taken as a kitchen meter's, 0.1 either way. Commercial regulation calls a food low-acid above
 * 4.6 (a tomato product from 4.7) when its water activity is above 0.85; acidified where acid was added. Home guides
 * acidify every jar of tomatoes instead, so that exception never makes a home-canned food acid here. Of a `food`
 * without a reading the highest figure of the published lists decides, recalled ones included, and so does the guides' own
 * list of foods that are sometimes above the limit (tomatoes, figs); `lists` has the lines. A typical pH never shows that
 * a food needs no acid.
 *
 * Sources: USDA Complete Guide to Home Canning, Guide 1; 21 CFR 114.3.
 *
 * @param input - `pH`: of the finished, even mixture, 0 to 14; or `food`; `uncertainty` of the reading, 0 to 2;
 * `waterActivity`: above 0 and at most 1; `tomato`; `acidAdded`
 * @throws StillroomError MISSING without pH and food; UNKNOWN_NAME; OUT_OF_RANGE; CONTRADICTION for an uncertainty
 * without a reading
 *
 * @example
 * ```ts
 * import { acidClass } from 'stillroom/acid';
 *
 * acidClass({ pH: 4.2, uncertainty: 0.1 }).home; // => 'acid'
 * acidClass({ pH: 4.55, uncertainty: 0.1 }).home; // => 'low-acid'
 * acidClass({ pH: 4.6 }).homeUndecided; // => true
 * acidClass({ food: 'tomato', pH: 4.65 }).home; // => 'low-acid'
 * acidClass({ food: 'tomato', pH: 4.65 }).regulation; // => 'acid'
 * acidClass({ food: 'mango' }).home; // => 'low-acid'
 * acidClass({ food: 'apple juice' }).lists.high; // => 4
 * acidClass({ food: 'pawpaw' }).known; // => false
 * acidClass({ pH: 4.2, uncertainty: 0.1 }).margin; // ≈ 0.4
 * acidClass({ pH: 15 }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function acidClass(input: AcidClassInput): AcidClass | NotKnown {
  const given = readInput(schema, input);
  const { food, waterActivity = 1, acidAdded = false } = given;
  if (given.pH === undefined && food === undefined) fail('MISSING', 'pH', given.pH, 'a pH from 0 to 14; or a food');
  if (given.pH === undefined && given.uncertainty !== undefined) {
    fail('CONTRADICTION', 'uncertainty', given.uncertainty, 'no uncertainty without a pH that was read');
  }
  if (given.pH !== undefined && given.listed !== undefined) {
    fail('CONTRADICTION', 'listed', input.listed, 'no line of the lists where a pH was read');
  }
  const known = given.pH === undefined ? fromLists(question(input)) : fromReading(given.pH, given.uncertainty);
  if ('known' in known) return answer(known);
  const { pH, uncertainty, isAcid } = known;
  const home = pHLimit(isAcid ? 'home-acid' : 'home-low-acid');
  const law = lowAcidByLaw();
  const tomatoLine = pHLimit('law-tomato');
  const tomato = given.tomato ?? (food !== undefined && foodsNamed(food).some(({ id }) => id === tomatoLine.food));
  const line = tomato ? tomatoLine : law;
  const wet = waterActivity > law.waterActivityAbove;
  const lowAcid = wet && isAbove(pH, line.pH, tomato);
  const ruling = !wet || lowAcid ? law : tomato ? line : pHLimit(acidAdded ? 'law-acidified' : 'law-acid');
  const homeUndecided = known.undecided(home.pH);
  const regulationUndecided = wet && known.undecided(line.pH, tomato);
  return answer({
    home: isAcid ? 'acid' : 'low-acid',
    regulation: lowAcid ? 'low-acid' : !wet ? 'low water activity' : acidAdded ? 'acidified' : 'acid',
    pH,
    homeLimit: home.pH,
    regulationLimit: line.pH,
    margin: home.pH - pH,
    homeUndecided,
    regulationUndecided,
    ...(uncertainty === undefined ? {} : { uncertainty }),
    uncertaintyAssumed: known.assumed,
    ...(known.lists === undefined ? {} : { lists: known.lists }),
    canner: printed(home, 'process'),
    basis: [
      basisOf(home, 'home', 'line between acid and low-acid'),
      basisOf(ruling, 'regulation', ruling.limit),
      ...(line === ruling ? [] : [basisOf(line, 'regulationLimit', line.limit)]),
      ...known.basis,
    ],
    cautions: [
      ...known.cautions,
      ...(isAcid ? [] : [acidCaution('low-acid-in-jars')]),
      ...(homeUndecided || regulationUndecided ? [acidCaution('too-near-the-limit')] : []),
      ...(acidAdded ? [acidCaution('licensed-acidified')] : []),
      ...(wet ? [] : [caution('tested-only')]),
      caution('follow-local-guidance'),
    ],
  });
}

/** What the lists are asked. */
const question = ({ food, form, listed }: AcidClassInput): PhOfInput => ({
  food: food as string,
  ...(form === undefined ? {} : { form }),
  ...(listed === undefined ? {} : { listed }),
});
