import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, isMass, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { OneOf, Quantity } from '../quantity/types';
import type { Unit } from '../quantity/units';
import { REFERENCE_TEMPERATURE } from '../solution/fields';
import { balanceBasis, leftAtSolids, mixOf } from '../solution/massBalance';
import { densityAt, densityBasis } from '../solution/sucroseDensity';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { amount } from '../words/amount';
import { count } from '../words/count';
import { jar as jarWord, type ReadJar, readJar } from '../words/jar';
import { mass } from '../words/mass';
import { ready as readyWord } from '../words/ready';
import { otherShare, solids as solidsWord } from '../words/shares';
import { sugarCaution } from './cautions';
import { routeOf, type SetRoute } from './gelRoute';
import { isCustomary, oneOf } from './inputs';
import { partsField } from './parts';

const schema = fields({
  /** The fruit, by mass, ready for the pot; or */
  ready: optional(readyWord()),
  /** the jam to make, by mass or by volume; or */
  jam: optional(amount()),
  /** the jars to fill, 1 to 10,000, */
  jars: optional(count('jars', 1, 10_000)),
  /** of this size; half-pints when left out. */
  jar: optional(jarWord()),
  /** Soluble solids of the fruit (its Brix over 100): from 0 and below 1, or percent. */
  solids: solidsWord({ below: 1 }),
  /** Sugar to fruit by weight, 0 to 10: 1 is pound for pound, `"55:45"` is 55 of sugar to 45 of fruit. */
  sugarToFruit: partsField(),
  /** Soluble solids at which the cooking stops: above 0 to 1, or percent. */
  finishSolids: otherShare('finishSolids', 'Soluble solids of the finished jam.', { above: 0 }),
  /** Dry pectin by mass, where it is to count as solids of the jam. */
  dryPectin: optional(mass()),
  /** Dry acid by mass, where it is to count as solids of the jam. */
  dryAcid: optional(mass()),
});
export type JamBalanceInput = OneOf<z.input<typeof schema>, 'ready' | 'jam' | 'jars'>;
type Given = z.output<typeof schema>;

export interface JamBalance {
  /** The fruit, ready for the pot. */
  readonly ready: Quantity<'mass'>;
  /** The sugar to add. */
  readonly sugar: Quantity<'mass'>;
  /** The finished jam. */
  readonly jam: Quantity<'mass'>;
  /** The water that boils off. */
  readonly waterRemoved: Quantity<'mass'>;
  /** Soluble solids of the mix before it is cooked: a share. */
  readonly startSolids: number;
  /** Grams of fruit that went into a gram of jam: a label's "prepared with ... g of fruit per 100 g" is 100 times it. */
  readonly fruitPerJam: number;
  /** Whether sugar sets and keeps it, or it needs its own pectin and process: see `gelConditions`. */
  readonly route: SetRoute['route'];
  /** The volume of the cold jam. */
  readonly volume: Quantity<'volume'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** Density of the cold jam as a sugar solution of its solids, g/mL. */
const coldDensity = (finishSolids: number): number => densityAt(100 * finishSolids, REFERENCE_TEMPERATURE) / 1000;

/** The jam that is asked for, by mass: in its own unit, otherwise pounds for jars and US measures, kg for metric ones. */
function jamWanted({ jam, jars, jar, finishSolids }: Given): Quantity<'mass'> {
  if (jam !== undefined && isMass(jam)) return jam;
  const size: ReadJar = jar ?? readJar('half-pint');
  const filled: Quantity<'volume'> = (jam as Quantity<'volume'> | undefined) ?? {
    value: (jars ?? 0) * valueIn(size.volume, 'mL'),
    unit: 'mL',
  };
  const metric = jam !== undefined && (jam.unit === 'L' || jam.unit === 'mL' || jam.unit === 'dL');
  const unit: Unit<'mass'> = metric ? 'kg' : 'lb';
  return quantityIn<'mass'>(valueIn(filled, 'mL') * coldDensity(finishSolids), 'g', unit);
}

/** What goes into the pot: the fruit with its solids, and what is all solids. */
const potOf = (fruit: number, solids: number, dry: readonly number[]) =>
  mixOf([{ mass: fruit, solids }, ...dry.map((mass) => ({ mass, solids: 1 }))]);

/** The fruit that is given, or that the wanted jam takes. */
function fruitOf(given: Given): Quantity<'mass'> {
  if (given.ready !== undefined) return given.ready;
  if (given.dryPectin !== undefined || given.dryAcid !== undefined) {
    const path = given.dryPectin === undefined ? 'dryAcid' : 'dryPectin';
    fail('CONTRADICTION', path, given[path], 'pectin and acid only with the mass of the fruit (ready)');
  }
  const { value, unit } = jamWanted(given);
  const pot = potOf(1, given.solids, [given.sugarToFruit]);
  return { value: value / (pot.mass * leftAtSolids(pot.solids, given.finishSolids)), unit };
}

/**
 * The balance of a jam: how much sugar the fruit needs, how much jam it makes and how much water boils off; or, for
 * the jam or the jars you want, how much fruit it takes.
 *
 * Formula: sugar = fruit x sugarToFruit; jam = (fruit x solids + sugar + pectin + acid) / finishSolids;
 * water removed = fruit + sugar + pectin + acid - jam. Textbook balances leave pectin and acid out of the solids;
 * give them only where they are to count. The volume takes the jam as a sugar solution of the same solids. Jars count
 * at their nominal capacity, so that the fruit errs on the ample side; what sticks to the pot and is skimmed off is
 * not counted.
 *
 * @param input - `ready`: fruit ready for the pot, or `jam`: a mass or a volume, or `jars` with `jar`; `solids` of the
 * fruit (from 0, below 1) and `finishSolids`: 0 to 1 or percent; `sugarToFruit`: 0 to 10, a percentage, or parts such
 * as `"55:45"`; `dryPectin`, `dryAcid`: optional masses
 * @returns masses in the unit of the fruit or jam; in pounds for jars or US measures, in kg for liters
 * @throws StillroomError CONTRADICTION where the mix is already above the finish before it is cooked; MISSING
 *
 * @example
 * ```ts
 * import { jamBalance } from 'stillroom/sugar';
 *
 * const jam = jamBalance({ ready: '10 kg', solids: '10 %', sugarToFruit: 1, finishSolids: '68 %', dryPectin: '60 g', dryAcid: '55 g' });
 * jam.jam.value; // ≈ 16.35
 * jamBalance({ jars: 12, solids: '11 %', sugarToFruit: 1, finishSolids: '65 %' }).ready.value; // ≈ 4.8
 * ```
 */
export function jamBalance(input: JamBalanceInput): JamBalance {
  const given = readInput(schema, input);
  oneOf(given, ['ready', 'jam', 'jars']);
  if (given.jar !== undefined && given.jars === undefined)
    fail('CONTRADICTION', 'jar', input.jar, 'a jar only with jars');
  const { finishSolids, sugarToFruit } = given;
  if (given.solids + sugarToFruit === 0 && given.dryPectin === undefined && given.dryAcid === undefined) {
    fail('CONTRADICTION', 'sugarToFruit', input.sugarToFruit, 'solids in the fruit, or some sugar');
  }
  const { value: fruit, unit } = fruitOf(given);
  const dry = [given.dryPectin, given.dryAcid].flatMap((item) => (item === undefined ? [] : [valueIn(item, unit)]));
  const sugar = fruit * sugarToFruit;
  const pot = potOf(fruit, given.solids, [sugar, ...dry]);
  if (pot.solids > finishSolids * (1 + 1e-12)) {
    const least = pot.solids.toFixed(3);
    fail(
      'CONTRADICTION',
      'finishSolids',
      input.finishSolids,
      `at least ${least}, what the mix has before it is cooked; or less sugar`,
    );
  }
  const jam = pot.mass * leftAtSolids(pot.solids, finishSolids);
  const route = routeOf(finishSolids, sugarToFruit);
  const milliliters = valueIn({ value: jam, unit }, 'g') / coldDensity(finishSolids);
  return answer({
    ready: { value: fruit, unit },
    sugar: { value: sugar, unit },
    jam: { value: jam, unit },
    waterRemoved: { value: Math.max(0, pot.mass - jam), unit },
    startSolids: pot.solids,
    fruitPerJam: fruit / jam,
    route: route.route,
    volume: quantityIn(milliliters, 'mL', isCustomary(unit) ? 'cup' : 'L'),
    basis: [
      balanceBasis('jam'),
      ...densityBasis('volume'),
      ...(given.ready === undefined && given.jars !== undefined
        ? [derived('ready', 'jars at their nominal capacity')]
        : []),
      ...route.basis.map((line) => ({ ...line, of: 'route' })),
    ],
    cautions: [...route.cautions, sugarCaution('boiling-sugar-burns'), caution('estimate')],
  });
}
