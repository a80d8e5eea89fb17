import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { count, fields, isMass, massOrVolume, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { MassInput, Quantity, VolumeInput } from '../quantity/types';
import type { Unit } from '../quantity/units';
import { REFERENCE_TEMPERATURE } from '../solution/fields';
import { densityAt } from '../solution/sucroseDensity';
import type { Basis, Caution } from '../sources/basis';
import { type JarInput, jar as jarWord, readJar } from '../words/jar';
import { oneOf } from './inputs';
import { type JamRecipeInput, jamBalance, jamFields } from './jamBalance';

/** The jar of jam where none is named. */
const USUAL_JAR = 'half-pint';

const schema = fields({
  jars: optional(count('jars', 1, 10_000)),
  jar: optional(jarWord()),
  jam: optional(massOrVolume()),
  ...jamFields,
});
export interface FruitForJamInput extends JamRecipeInput {
  /** So many jars full, */
  readonly jars?: number;
  /** of this size (`half-pint` when left out); or */
  readonly jar?: JarInput;
  /** a mass or a volume of jam. */
  readonly jam?: MassInput | VolumeInput;
}
export interface FruitForJam {
  readonly fruit: Quantity<'mass'>;
  readonly sugar: Quantity<'mass'>;
  readonly jam: Quantity<'mass'>;
  readonly volume: Quantity<'volume'>;
  readonly waterRemoved: Quantity<'mass'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How much prepared fruit a number of jars of jam takes: `jamBalance` the other way round.
 *
 * Formula: fruit = jam x finishSolids / (fruitSolids + sugarToFruit). Jars count at their nominal capacity and the
 * jam at its density when cold, so that the fruit errs on the ample side; what sticks to the pot and is skimmed off is
 * not counted.
 *
 * @param input - `jars` and `jar` (`half-pint` when left out), or `jam`, a mass or a volume; the recipe as in
 * `jamBalance`
 * @returns masses in the unit of the jam's mass; in pounds for jars or US measures, in kg for litres
 * @throws StillroomError CONTRADICTION, MISSING, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { fruitForJam } from 'stillroom/sugar';
 *
 * fruitForJam({ jam: '1 lb', fruitSolids: 0.15, sugarToFruit: '55:45', finishSolids: 2 / 3 }).fruit.value; // ≈ 0.4858
 * fruitForJam({ jars: 12, fruitSolids: '11 %', sugarToFruit: 1, finishSolids: '65 %' }).fruit.value; // ≈ 4.8
 * ```
 */
export function fruitForJam(input: FruitForJamInput): FruitForJam {
  const given = readInput(schema, input);
  oneOf(given, ['jars', 'jam']);
  if (given.jam !== undefined && given.jar !== undefined)
    fail('CONTRADICTION', 'jar', input.jar, 'a jar only with jars');
  const density = densityAt(100 * given.finishSolids, REFERENCE_TEMPERATURE) / 1000; // g/mL
  const { volume: held } = given.jar ?? readJar(USUAL_JAR);
  const wanted = given.jam ?? { value: (given.jars ?? 0) * held.value, unit: held.unit };
  const grams = isMass(wanted) ? valueIn(wanted, 'g') : valueIn(wanted as Quantity<'volume'>, 'mL') * density;
  const metric = wanted.unit === 'L' || wanted.unit === 'mL' || wanted.unit === 'dL';
  const unit: Unit<'mass'> = isMass(wanted) ? wanted.unit : metric ? 'kg' : 'lb';
  const solids = given.fruitSolids + given.sugarToFruit;
  if (solids === 0) fail('CONTRADICTION', 'sugarToFruit', input.sugarToFruit, 'solids in the fruit, or some sugar');
  const fruit = quantityIn<'mass'>((grams * given.finishSolids) / solids, 'g', unit);
  const { fruitSolids, sugarToFruit, finishSolids } = given;
  const { sugar, jam, waterRemoved, volume, basis, cautions } = jamBalance({
    fruit,
    fruitSolids,
    sugarToFruit,
    finishSolids,
  });
  return answer({ fruit, sugar, jam, volume, waterRemoved, basis, cautions });
}
