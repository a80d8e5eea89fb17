import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, mass, optional, readInput, share } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { MassInput, Quantity, ShareInput } from '../quantity/types';
import { REFERENCE_TEMPERATURE } from '../solution/fields';
import { densityAt, densityBasis } from '../solution/sucroseDensity';
import { type Basis, type Caution, joinCautions } from '../sources/basis';
import { caution } from '../sources/cautions';
import { sugarCaution } from './cautions';
import { massBalance } from './inputs';
import { type PartsInput, partsField } from './parts';
import { type SetRoute, setRoute } from './setRoute';

export const jamFields = {
  fruitSolids: share({ below: 1 }),
  sugarToFruit: partsField(),
  finishSolids: share({ above: 0 }),
};
const schema = fields({ fruit: mass(), ...jamFields, pectin: optional(mass()), acid: optional(mass()) });

export interface JamRecipeInput {
  /** Soluble solids of the fruit (its Brix over 100). */
  readonly fruitSolids: ShareInput;
  /** Sugar to fruit by weight, 0 to 10. */
  readonly sugarToFruit: PartsInput;
  /** Soluble solids at which the cooking stops. */
  readonly finishSolids: ShareInput;
}
export interface JamBalanceInput extends JamRecipeInput {
  /** Prepared fruit. */
  readonly fruit: MassInput;
  /** Dry pectin and dry acid, where they are to count as solids of the jam. */
  readonly pectin?: MassInput;
  readonly acid?: MassInput;
}
export interface JamBalance {
  readonly sugar: Quantity<'mass'>;
  /** The finished jam. */
  readonly jam: Quantity<'mass'>;
  readonly waterRemoved: Quantity<'mass'>;
  /** Soluble solids of the mix before it is cooked. */
  readonly startSolids: number;
  /** Grams of fruit that went into a gram of jam: a label's "prepared with ... g of fruit per 100 g" is 100 times it. */
  readonly fruitPerJam: number;
  /** Whether sugar sets and keeps it, or it needs its own pectin and process: see `setRoute`. */
  readonly route: SetRoute['route'];
  /** Of the cold jam. */
  readonly volume: Quantity<'volume'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The balance of a jam: what a weight of fruit needs in sugar, what it makes, and how much water boils off.
 *
 * Formula: sugar = fruit x sugarToFruit; jam = (fruit x fruitSolids + sugar + pectin + acid) / finishSolids;
 * water removed = fruit + sugar + pectin + acid - jam. Textbook balances leave pectin and acid out of the solids;
 * give them only where they are to count. The volume takes the jam as a sugar solution of the same solids.
 *
 * @param input - `fruit`: prepared fruit; `fruitSolids` (from 0, below 1) and `finishSolids`: 0 to 1 or percent;
 * `sugarToFruit`: 0 to 10, a percentage, or parts such as `"55:45"`; `pectin`, `acid`: optional masses
 * @throws StillroomError CONTRADICTION where the mix is already above the finish before it is cooked
 *
 * @example
 * ```ts
 * import { jamBalance } from 'stillroom/sugar';
 *
 * const jam = jamBalance({ fruit: '10 kg', fruitSolids: '10 %', sugarToFruit: 1, finishSolids: '68 %', pectin: '60 g', acid: '55 g' });
 * jam.jam.value; // ≈ 16.35
 * jamBalance({ fruit: '0.4858 lb', fruitSolids: 0.15, sugarToFruit: '55:45', finishSolids: '66.67 %' }).jam.value; // ≈ 1.000
 * ```
 */
export function jamBalance(input: JamBalanceInput): JamBalance {
  const given = readInput(schema, input);
  const unit = given.fruit.unit;
  const fruit = given.fruit.value;
  const extra = [given.pectin, given.acid].reduce(
    (sum, item) => sum + (item === undefined ? 0 : valueIn(item, unit)),
    0,
  );
  const sugar = fruit * given.sugarToFruit;
  const solids = fruit * given.fruitSolids + sugar + extra;
  const before = fruit + sugar + extra;
  const { finishSolids } = given;
  if (solids > finishSolids * before * (1 + 1e-12)) {
    fail(
      'CONTRADICTION',
      'finishSolids',
      finishSolids,
      `at least ${(solids / before).toFixed(3)}, what the mix has before it is cooked; or less sugar`,
    );
  }
  if (solids === 0) fail('CONTRADICTION', 'sugarToFruit', input.sugarToFruit, 'solids in the fruit, or some sugar');
  const jam = solids / finishSolids;
  const route = setRoute({ finishSolids, sugarToFruit: given.sugarToFruit });
  const millilitres =
    valueIn({ value: jam, unit }, 'g') / (densityAt(100 * finishSolids, REFERENCE_TEMPERATURE) / 1000);
  const customary = unit === 'lb' || unit === 'oz';
  return answer({
    sugar: { value: sugar, unit },
    jam: { value: jam, unit },
    waterRemoved: { value: Math.max(0, before - jam), unit },
    startSolids: solids / before,
    fruitPerJam: fruit / jam,
    route: route.route,
    volume: quantityIn(millilitres, 'mL', customary ? 'cup' : 'L'),
    basis: [massBalance('jam and water'), ...densityBasis('volume')],
    cautions: joinCautions(route.cautions, [sugarCaution('boiling-sugar-burns'), caution('estimate')]),
  });
}
