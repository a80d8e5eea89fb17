import type * as z from 'zod/mini';
import driedFromJson from '../../data/water-activity/dried-from.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { type FoundFood, food } from '../foods/fields';
import { nameOf } from '../foods/tables';
import { composition } from '../produce/composition/composition';
import { fields, number, optional, readInput } from '../quantity/fields';
import type { Range } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { asTable, basisOf, practiceBasis } from '../sources/table';
import { acidShare, moisture as moistureWord, otherShare, solids, sugars as sugarsWord } from '../words/shares';
import { assumed } from './assumptions';
import { activityCaution } from './cautions';
import { equationBasis } from './equations';
import type { Limits } from './isothermTypes';
import { norrish } from './models';
import type { TableRow } from './schemas';
import { type NorrishRow, norrishOf, type Solute, soluteOf } from './solutes';
import { foodActivityRows } from './typicalFigures';

const schema = fields({
  /** The fruit, fresh or dried, by any name: `peach`, `dried apples`, `raisins`. */
  food: optional(food()),
  /** Or what the raw fruit is made of, as shares of its mass. */
  composition: optional(
    fields({
      /** All its solids, above 0 and up to 1. */
      solids: solids({ above: 0 }),
      /** Its sugars, 0 to 1. */
      sugars: sugarsWord(),
      /** Its acids, 0 to 1; 0 when left out. */
      acidShare: optional(acidShare()),
    }),
  ),
  /** Moisture of the finished food, wet basis: 0.14 up to that of the raw fruit. */
  moisture: moistureWord({ above: 0, below: 1 }),
  /** Mass of sucrose added for each mass of raw fruit, 0 to 100; 0 when left out. */
  sugarToFruit: optional(
    number('sugar added for each unit of raw fruit, by weight: a number from 0 to 100', { min: 0, max: 100 }),
  ),
  /** The share of that sugar that a boil with acid has split, 0 to 1; 0, the wetter side, when left out. */
  inverted: optional(otherShare('inverted', 'Sucrose that has split into glucose and fructose, as a share of it.')),
});
export type FruitWaterActivityInput = z.input<typeof schema>;
export interface FruitWaterActivity {
  /** Tells the answer from one that these tables have no figure for. */
  readonly known: true;
  /** Trade name of the fruit. */
  readonly food?: string;
  /** Water activity of the food at that moisture, 0 to 1. */
  readonly waterActivity: number;
  /** The same with its error. */
  readonly waterActivityRange: Range<number>;
  /** The wet-basis moistures it may be asked about. */
  readonly moistureLimits: Limits;
  /** Grams of dissolved sugars and acids to a gram of the water left. */
  readonly solutesPerWater: number;
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The fresh fruit that a dried one of another name is made from. */
const freshOf = new Map(asTable<TableRow<'dried-from'>>(driedFromJson).rows.map((row) => [row.food, row.from]));

/** Glucose and fructose, and the fruit acids with them, count as hexose. */
const HEXOSE = soluteOf('glucose');
const SUCROSE = soluteOf('sucrose');
const SUGARS = [HEXOSE, soluteOf('fructose')].map(({ name }) => norrishOf(name) as NorrishRow);
/** The mean of glucose and fructose. */
const K_HEXOSE = SUGARS.reduce((sum, row) => sum + row.K / SUGARS.length, 0);
const SUCROSE_ROW = norrishOf(SUCROSE.name) as NorrishRow;
/** A gram of sucrose takes up water as it splits into glucose and fructose. */
const INVERSION = (2 * HEXOSE.M_g_mol) / SUCROSE.M_g_mol;

interface Own {
  /** Shares of the raw mass. */
  readonly solids: number;
  readonly dissolved: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

function ownGiven(given: { solids: number; sugars: number; acidShare?: number | undefined }): Own {
  const dissolved = given.sugars + (given.acidShare ?? 0);
  if (dissolved > given.solids + 1e-9) {
    fail('CONTRADICTION', 'composition', given, 'sugars and acid that are together no more than the solids');
  }
  const basis: Basis[] = [{ of: 'waterActivity', kind: 'measured', note: 'composition of the fruit' }];
  return { solids: given.solids, dissolved, basis, cautions: [] };
}

/** What the food tables say of the fruit; nothing where they do not have its sugars. */
function ownListed({ id, name }: FoundFood): Own | undefined {
  const fresh = freshOf.get(id);
  const found = compositionOf(fresh === undefined ? name : nameOf(fresh));
  if (found?.sugars === undefined) return undefined;
  const { sugars, acidShare: acid, moisture } = found;
  const solids = 1 - moisture.likely;
  return {
    solids,
    dissolved: Math.min(sugars.likely + (acid?.likely ?? 0), solids),
    basis: found.basis
      .filter(({ of }) => USED.has(of))
      .map(({ of, note, ...line }) => ({ ...line, of: 'waterActivity', note: `${USED.get(of)} of the fruit` })),
    cautions: found.cautions,
  };
}
/** The figures of `composition` that the answer rests on, with what people call them. */
const USED = new Map([
  ['moisture', 'water'],
  ['sugars', 'sugars'],
  ['acidShare', 'acid'],
]);

function compositionOf(name: string) {
  const found = composition({ food: name });
  return found.known ? found : undefined;
}

const noComposition = ({ name }: FoundFood): NotKnown =>
  notKnown({
    code: 'no-composition',
    text: `These tables do not have the sugars of ${name}.`,
    instead: [
      { text: 'Give its `composition`: solids, sugars and acid as shares of the raw fruit.' },
      { text: 'Measure the water activity of the finished food.' },
    ],
    basis: [derived('known', 'the tables of composition')],
    cautions: [activityCaution('measure-before-shelf')],
  });

/** Molality of this many grams to a gram of water. */
const molality = (perWater: number, { M_g_mol }: Solute): number => (perWater * 1000) / M_g_mol;

/**
 * The water activity of drying fruit, leather or jam, worked out from what is in it: its own sugars and acids, and any
 * added sugar, dissolved in the water that is left.
 *
 * Norrish for the hexoses (glucose, fructose and the acids with them, K 2.20) and for sucrose (K 6.47), multiplied
 * (Ross). The fruit's own sugars count as hexoses: most are, and drying and boiling split the rest.
 * Against every published pair of moisture and water activity at hand (dried apples, apricots, pears, figs,
 * peaches, prunes, raisins, sultanas; honeys) the middles lie within 0.08, except figs, whose printed pair gives
 * 0.11 less; `waterActivityRange` takes this in. It refuses below 14 % moisture, where only an isotherm can answer. A
 * fruit with much fiber or starch holds more water than its sugars do: there the answer is on the wet, safe side.
 *
 * @param input - `food`: a name (`peach`, `dried apples`, `raisins`), or `composition`: its own `solids`, `sugars` and
 * `acidShare` as shares of the raw mass; `moisture`: of the finished food, wet basis, 0.14 up to that of the raw fruit
 * (or to 1 with a composition of your own); `sugarToFruit`: mass of sucrose to each mass of raw fruit; `inverted`: the
 * share of that sugar that a boil with acid has split, 0 to 1, taken as 0, the wetter side, when left out
 * @returns `waterActivity` with its `waterActivityRange`; or `{ known: false }` for a food whose sugars are in none of
 * these tables
 * @throws StillroomError OUT_OF_RANGE below 14 % and above the raw moisture; UNKNOWN_NAME; CONTRADICTION
 *
 * @example
 * ```ts
 * import { fruitWaterActivity, keeps } from 'stillroom/water-activity';
 *
 * const apples = fruitWaterActivity({ food: 'dried apples', moisture: '22 %' });
 * apples.known && apples.waterActivity; // ≈ 0.71
 * apples.known && keeps({ waterActivity: apples.waterActivityRange }).verdict; // => 'may spoil'
 * fruitWaterActivity({ food: 'apple', moisture: '8 %' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function fruitWaterActivity(input: FruitWaterActivityInput): FruitWaterActivity | NotKnown {
  const { food: asked, composition: given, moisture, sugarToFruit = 0, inverted = 0 } = readInput(schema, input);
  if (inverted > 0 && sugarToFruit === 0) {
    fail('CONTRADICTION', 'inverted', inverted, 'no inverted share without sugarToFruit');
  }
  if (asked === undefined && given === undefined) {
    fail('MISSING', 'food', asked, 'either a fruit, or its own composition');
  }
  if (asked !== undefined && given !== undefined) {
    fail('CONTRADICTION', 'food', asked.name, 'either a fruit or a composition, not both');
  }
  const own = asked === undefined ? given && ownGiven(given) : ownListed(asked);
  if (own === undefined) return answer(noComposition(asked as FoundFood));
  const driest = assumed('driest-fruit');
  const wettest = 1 - own.solids;
  const most = sugarToFruit === 0 ? wettest : wettest / (1 + sugarToFruit);
  checkMoisture(moisture, most, sugarToFruit);
  const split = sugarToFruit * inverted * INVERSION;
  const whole = sugarToFruit * (1 - inverted);
  const water = (moisture / (1 - moisture)) * (own.solids + split + whole);
  const hexoses = (own.dissolved + split) / water;
  const sucrose = whole / water;
  const waterActivity =
    norrish(molality(hexoses, HEXOSE), K_HEXOSE) * norrish(molality(sucrose, SUCROSE), SUCROSE_ROW.K);
  const distance = 1 - waterActivity;
  const fibrous = (own.dissolved + sugarToFruit) / (own.solids + sugarToFruit) < assumed('syrupy-solids');
  return answer({
    known: true,
    ...(asked === undefined ? {} : { food: asked.name }),
    waterActivity,
    waterActivityRange: {
      low: Math.max(waterActivity - assumed('fruit-downwards') * distance, 0),
      likely: waterActivity,
      high: waterActivity + assumed('fruit-upwards') * distance,
    },
    moistureLimits: { low: driest, high: most },
    solutesPerWater: hexoses + sucrose,
    basis: [
      ...own.basis,
      equationBasis('norrish-binary'),
      equationBasis('ross'),
      ...[...SUGARS, ...(sugarToFruit > 0 ? [SUCROSE_ROW] : [])].map((row) =>
        basisOf(row, 'waterActivity', `constant of ${row.solute}`),
      ),
      practiceBasis('waterActivityRange', 'error that takes in the published pairs of moisture and water activity'),
      ...pairs(),
    ],
    cautions: [
      caution('estimate'),
      activityCaution('fruit-estimate'),
      activityCaution('wettest-piece'),
      ...own.cautions,
      activityCaution('sugar-crystals'),
      activityCaution('measure-before-shelf'),
      caution('recalled'),
      ...(fibrous ? [activityCaution('fiber-holds-water')] : []),
    ],
  });
}

function checkMoisture(moisture: number, most: number, sugarToFruit: number): void {
  const driest = assumed('driest-fruit');
  if (moisture < driest) {
    fail('OUT_OF_RANGE', 'moisture', moisture, `at least ${driest}: drier than that only an isotherm can answer`);
  }
  if (most < driest) {
    // salt, sugar or starch: nothing was added to it
    if (sugarToFruit === 0) fail('OUT_OF_RANGE', 'moisture', moisture, 'a food with water in it, such as a fruit');
    const expected = `little enough sugar that at least ${driest} of the whole is water`;
    fail('OUT_OF_RANGE', 'sugarToFruit', sugarToFruit, expected);
  }
  if (moisture > most + 1e-9) {
    const expected = `at most ${most.toFixed(3)}, the moisture before any water is taken out`;
    fail('OUT_OF_RANGE', 'moisture', moisture, expected);
  }
}

/** The published pairs that the error was measured against. */
const pairs = (): Basis[] =>
  foodActivityRows
    .filter(({ moisture_pct }) => moisture_pct !== undefined)
    .map((row) => basisOf(row, 'waterActivityRange', 'published pairs of moisture and water activity'));
