import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { nameKey } from '../common/names';
import { atPath, fail, StillroomError } from '../errors/StillroomError';
import { composition } from '../produce/composition/composition';
import { fields, name, number, optional, readInput, share } from '../quantity/fields';
import type { Range } from '../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { activityCaution } from './cautions';
import { norrish } from './models';
import { type NorrishRow, norrishOf, type Solute, soluteNamed } from './solutes';
import { equationBasis } from './solutionWaterActivity';
import { foodActivityRows } from './typicalWaterActivity';

const schema = fields({
  fruit: optional(name('the name of a fruit')),
  composition: optional(
    fields({
      solids: share({ above: 0 }),
      sugars: share(),
      acid: optional(share()),
    }),
  ),
  moisture: share({ above: 0, below: 1 }),
  addedSugar: optional(
    number('sugar added for each unit of raw fruit, by weight: a number from 0 to 100', { min: 0, max: 100 }),
  ),
  inverted: optional(share()),
});
export type FruitWaterActivityInput = z.input<typeof schema>;
export interface FruitWaterActivity {
  readonly waterActivity: number;
  readonly range: Range<number>;
  /** The wet-basis moistures it may be asked about. */
  readonly moistureRange: readonly [number, number];
  /** Grams of dissolved sugars and acids to a gram of the water left. */
  readonly solutesPerWater: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Dried fruit goes by its own names. */
const DRIED = new Map<string, string>(
  [
    ['raisin', 'grape'],
    ['sultana', 'grape'],
    ['golden raisin', 'grape'],
    ['zante currant', 'grape'],
    ['prune', 'plum'],
  ].map(([dried = '', fresh = '']) => [nameKey(dried), fresh]),
);

/**
 * The driest published pair of moisture and water activity is at 14 %. Drier than that sugars crystallize or turn to
 * glass, and what is left binds water that no solution equation knows of.
 */
const DRIEST = 0.14;
/** Below this share of solids that dissolve, fibre and starch hold a good part of the water. */
const SYRUPY = 0.6;

// The error, as shares of the distance from 1, that takes in the published pairs (tests/water-activity): upwards all
// of them, downwards the middles of all of them.
const UPWARDS = 0.22;
const DOWNWARDS = 0.4;

/** Glucose and fructose, and the fruit acids with them, count as hexose. */
const HEXOSE = soluteNamed('glucose', 'fruit');
const SUCROSE = soluteNamed('sucrose', 'fruit');
const SUGARS = ['glucose', 'fructose'].map((sugar) => norrishOf(sugar) as NorrishRow);
/** The mean of glucose and fructose. */
const K_HEXOSE = SUGARS.reduce((sum, row) => sum + row.K / SUGARS.length, 0);
const SUCROSE_ROW = norrishOf('sucrose') as NorrishRow;
/** A gram of sucrose takes up water as it splits into glucose and fructose. */
const INVERSION = (2 * HEXOSE.M_g_mol) / SUCROSE.M_g_mol;

interface Own {
  /** Shares of the raw weight. */
  readonly solids: number;
  readonly dissolved: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** What the fruit brings: its own figures, or those of the food tables. */
function ownOf(
  fruit: string | undefined,
  given: { solids: number; sugars: number; acid?: number | undefined } | undefined,
): Own {
  if ((fruit === undefined) === (given === undefined)) {
    const code = fruit === undefined ? 'MISSING' : 'CONTRADICTION';
    fail(code, 'fruit', fruit, 'either a fruit, or its own composition');
  }
  if (given !== undefined) {
    const dissolved = given.sugars + (given.acid ?? 0);
    if (dissolved > given.solids + 1e-9) {
      fail('CONTRADICTION', 'composition', given, 'sugars and acid that are together no more than the solids');
    }
    return { solids: given.solids, dissolved, basis: [{ of: 'composition', kind: 'measured' }], cautions: [] };
  }
  const plain = nameKey(fruit as string)
    .split(' ')
    .filter((word) => word !== 'dried')
    .join(' ');
  const found = compositionOf(
    DRIED.get(plain) ?? (plain === nameKey(fruit as string) ? (fruit as string) : plain),
    fruit as string,
  );
  const { sugars, acid, water } = found;
  if (sugars === undefined)
    fail('UNKNOWN_NAME', 'fruit', fruit, 'a fruit whose sugars are in a table; or its composition');
  const solids = 1 - water.likely;
  return {
    solids,
    dissolved: Math.min(sugars.likely + (acid?.likely ?? 0), solids),
    basis: found.basis.filter(({ of: what }) => ['water', 'sugars', 'acid'].includes(what)),
    cautions: found.cautions,
  };
}

const raw = (food: string) => {
  try {
    return composition({ food });
  } catch (error) {
    throw error instanceof StillroomError ? atPath(error, 'fruit') : error;
  }
};

/** `composition`, its error put on our field. */
function compositionOf(produce: string, asked: string) {
  const found = raw(produce);
  if (!found.known)
    fail('UNKNOWN_NAME', 'fruit', asked, 'a fruit in the food tables; or its composition: { solids, sugars, acid }');
  return found;
}

/** Molality of so many grams to a gram of water. */
const molality = (perWater: number, { M_g_mol }: Solute): number => (perWater * 1000) / M_g_mol;

/**
 * The water activity of drying fruit, leather or jam from what is in it: its own sugars and acids, and any sugar
 * added, dissolved in the water that is left.
 *
 * Norrish for the hexoses (glucose, fructose and the acids with them, K 2.20) and for sucrose (K 6.47), multiplied
 * (Ross). The sugars the fruit itself has count as hexoses, since most are and drying and boiling split the rest.
 * Against every published pair of moisture and water activity at hand (dried apples, apricots, pears, figs,
 * peaches, prunes, raisins, sultanas; honeys) the middles lie within 0.08, except figs, whose printed pair gives
 * 0.11 less; `range` takes this in. It refuses below 14 % moisture, where only an isotherm can answer. A fruit with
 * much fibre or starch holds more water than its sugars do: there the answer is on the wet, safe side.
 *
 * @param input - `fruit`: a name (`peach`, `dried apples`, `raisins`), or `composition`: its own `solids`, `sugars` and
 * `acid` as shares of the raw weight; `moisture`: of the finished food, wet basis, 0.14 up to that of the raw fruit (or to 1
 * with a composition of your own); `addedSugar`: weight of sucrose to each weight of raw fruit; `inverted`: the share of that
 * sugar that a boil with acid has split, 0 to 1, taken as 0, the wetter side, when left out
 * @throws StillroomError OUT_OF_RANGE below 14 % and above the raw moisture; UNKNOWN_NAME; CONTRADICTION
 *
 * @example
 * ```ts
 * import { fruitWaterActivity, keeps } from 'stillroom/water-activity';
 *
 * const apples = fruitWaterActivity({ fruit: 'dried apples', moisture: '22 %' });
 * apples.waterActivity; // ≈ 0.71
 * keeps({ waterActivity: apples.range }).verdict; // => 'may spoil'
 * fruitWaterActivity({ fruit: 'apple', moisture: '8 %' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function fruitWaterActivity(input: FruitWaterActivityInput): FruitWaterActivity {
  const { fruit, composition: given, moisture, addedSugar = 0, inverted = 0 } = readInput(schema, input);
  if (inverted > 0 && addedSugar === 0)
    fail('CONTRADICTION', 'inverted', inverted, 'no inverted share without addedSugar');
  const own = ownOf(fruit, given);
  const wettest = 1 - own.solids;
  const most = addedSugar === 0 ? wettest : wettest / (1 + addedSugar);
  if (moisture < DRIEST) {
    fail('OUT_OF_RANGE', 'moisture', moisture, `at least ${DRIEST}: drier than that only an isotherm can answer`);
  }
  if (most < DRIEST)
    fail('OUT_OF_RANGE', 'addedSugar', addedSugar, `so little sugar that at least ${DRIEST} of the whole is water`);
  if (moisture > most + 1e-9) {
    fail(
      'OUT_OF_RANGE',
      'moisture',
      moisture,
      `at most ${most.toFixed(3)}, what there is before any water is taken out`,
    );
  }
  const split = addedSugar * inverted * INVERSION;
  const whole = addedSugar * (1 - inverted);
  const water = (moisture / (1 - moisture)) * (own.solids + split + whole);
  const hexoses = (own.dissolved + split) / water;
  const sucrose = whole / water;
  const waterActivity =
    norrish(molality(hexoses, HEXOSE), K_HEXOSE) * norrish(molality(sucrose, SUCROSE), SUCROSE_ROW.K);
  const distance = 1 - waterActivity;
  const fibrous = (own.dissolved + addedSugar) / (own.solids + addedSugar) < SYRUPY;
  return answer({
    waterActivity,
    range: {
      low: Math.max(waterActivity - DOWNWARDS * distance, 0),
      likely: waterActivity,
      high: waterActivity + UPWARDS * distance,
    },
    moistureRange: [DRIEST, most],
    solutesPerWater: hexoses + sucrose,
    basis: joinBasis(
      own.basis,
      [equationBasis('norrish-binary'), equationBasis('ross')],
      [...SUGARS, ...(addedSugar > 0 ? [SUCROSE_ROW] : [])].map((row) => basisOf(row, `constant of ${row.solute}`)),
      pairs(),
    ),
    cautions: joinCautions(
      [caution('estimate'), activityCaution('fruit-estimate'), activityCaution('wettest-piece')],
      own.cautions,
      [activityCaution('sugar-crystals'), activityCaution('measure-before-shelf'), caution('recalled')],
      fibrous ? [activityCaution('fibre-holds-water')] : [],
    ),
  });
}

/** The published pairs that the error was measured against. */
const pairs = (): Basis[] =>
  foodActivityRows
    .filter(({ moisture_pct }) => moisture_pct !== undefined)
    .map((row) => basisOf(row, 'published pairs of moisture and water activity'));
