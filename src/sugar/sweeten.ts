import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, mass, name, number, optional, readInput, share } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { MassInput, Quantity, ShareInput, TemperatureInput } from '../quantity/types';
import { liquidTemperature, REFERENCE_TEMPERATURE } from '../solution/fields';
import { solubilityAt, solubilityBasis } from '../solution/sucroseSolubility';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import { brix, targetBrix } from '../words/brix';
import { sugarCaution } from './cautions';
import { massBalance } from './inputs';
import { findSweetener } from './sweeteners';
import { checkDissolves } from './syrup';

const schema = fields({
  mass: mass(),
  brix: brix(),
  targetBrix: targetBrix(),
  with: optional(name('a sweetener such as sugar, honey, corn syrup, maple syrup')),
  withBrix: optional(
    number('the Brix of the syrup it is sweetened with: above 0 and at most 100', { above: 0, max: 100 }),
  ),
  juiceShare: optional(share({ above: 0 })),
  temperature: optional(liquidTemperature()),
});
export interface SweetenInput {
  /** What is in the pot now. */
  readonly mass: MassInput;
  readonly brix: number;
  readonly targetBrix: number;
  /** `sugar` when left out. */
  readonly with?: string;
  /** Instead of `with`: another syrup, by its Brix. */
  readonly withBrix?: number;
  /** The share of the mass that is free juice, where the fruit is in pieces: the sugar dissolves there first. */
  readonly juiceShare?: ShareInput;
  /** At which it must stay dissolved; 20 degC when left out. */
  readonly temperature?: TemperatureInput;
}
export interface Sweetened {
  /** Of the sweetener, to add. */
  readonly sugar: Quantity<'mass'>;
  /** Afterwards. */
  readonly mass: Quantity<'mass'>;
  /** The sweetener in cups; none for a syrup given by its Brix. */
  readonly sugarVolume?: Quantity<'volume'>;
  /** Before the fruit has taken its part: the Brix of the juice, and sugar that it cannot hold yet. */
  readonly beforeSoaking?: { readonly juiceBrix: number; readonly undissolved: Quantity<'mass'> };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How much sugar, honey or syrup brings fruit, juice or sauce from one Brix to another, with no boiling down.
 *
 * Formula: sweetener = mass x (target - brix) / (solids of the sweetener - target), all in percent by mass. Honey
 * and syrups count by their dissolved solids (USDA SR28: 100 less the water). Fruit in pieces: with `juiceShare`
 * the answer also says how sweet the free juice is before the fruit has drunk its part, which is what a
 * refractometer shows on the first day; sugar beyond what the juice can hold lies undissolved until then.
 *
 * @param input - see the fields; Brix 0 to 100
 * @returns `sugar`, the sweetener to add, and `mass` afterwards, in the unit of the mass given
 * @throws StillroomError CONTRADICTION for a target below the start or not below the sweetener's own Brix;
 * OUT_OF_RANGE for a target above the solubility of sugar; UNKNOWN_NAME for a sweetener in no table
 *
 * @example
 * ```ts
 * import { sweeten } from 'stillroom/sugar';
 *
 * sweeten({ mass: '10 kg', brix: 12, targetBrix: 65 }).sugar.value; // ≈ 15.143
 * sweeten({ mass: '5 lb', brix: 11, targetBrix: 18, with: 'honey' }).sugar.value; // ≈ 0.539
 * sweeten({ mass: '5 lb', brix: 18, targetBrix: 11 }); // throws StillroomError CONTRADICTION
 * ```
 */
export function sweeten(input: SweetenInput): Sweetened {
  const given = readInput(schema, input);
  const { brix, targetBrix } = given;
  if (targetBrix < brix) {
    fail('CONTRADICTION', 'targetBrix', targetBrix, `at least ${brix}, the Brix it has now; to thin it add water`);
  }
  if (given.with !== undefined && given.withBrix !== undefined) {
    fail('CONTRADICTION', 'withBrix', given.withBrix, 'a sweetener by name or by its Brix, not both');
  }
  const row = given.withBrix === undefined ? findSweetener(given.with ?? 'sugar', 'with') : undefined;
  const solids = row === undefined ? (given.withBrix as number) : row.solids;
  if (targetBrix > brix && targetBrix >= solids) {
    fail('CONTRADICTION', 'targetBrix', targetBrix, `below ${solids}, the Brix of what it is sweetened with`);
  }
  const t = given.temperature === undefined ? REFERENCE_TEMPERATURE : valueIn(given.temperature, 'degC');
  const cautions = checkDissolves(targetBrix, t, 'targetBrix');
  const unit = given.mass.unit;
  const start = given.mass.value;
  const sugar = targetBrix === brix ? 0 : (start * (targetBrix - brix)) / (solids - targetBrix);
  const added = valueIn({ value: sugar, unit }, 'g');
  return answer({
    sugar: { value: sugar, unit },
    mass: { value: start + sugar, unit },
    ...(row === undefined ? {} : { sugarVolume: { value: added / row.gramsPerCup, unit: 'cup' as const } }),
    ...(given.juiceShare === undefined
      ? {}
      : { beforeSoaking: inJuice(valueIn(given.mass, 'g') * given.juiceShare, brix, added, solids, t, unit) }),
    basis: [
      massBalance('sugar'),
      ...(row === undefined ? [] : [basisOf(row, `solids and cup weight of ${row.name}`)]),
      ...solubilityBasis('solubility limit'),
    ],
    cautions: [...cautions, ...(row?.name === 'honey' ? [sugarCaution('no-honey-under-one')] : [])],
  });
}

/** The free juice once the sweetener is in it and none of it yet in the fruit; grams. */
function inJuice(
  juice: number,
  brix: number,
  added: number,
  solids: number,
  t: number,
  unit: Quantity<'mass'>['unit'],
) {
  const sugars = (juice * brix + added * solids) / 100;
  const water = juice + added - sugars;
  const limit = solubilityAt(t).likely;
  const held = (water * limit) / (100 - limit);
  const undissolved = Math.max(0, sugars - held);
  const dissolved = sugars - undissolved;
  return {
    juiceBrix: (100 * dissolved) / (dissolved + water),
    undissolved: quantityIn(undissolved, 'g', unit),
  };
}
