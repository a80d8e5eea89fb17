import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { nameOf } from '../foods/tables';
import { fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { liquidTemperature, REFERENCE_TEMPERATURE } from '../solution/fields';
import { balanceBasis, mixOf, refuseThinner, toAdd } from '../solution/massBalance';
import { solubilityAt, solubilityBasis } from '../solution/sucroseSolubility';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import { brix as brixWord, targetBrix as targetBrixWord } from '../words/brix';
import { mass } from '../words/mass';
import { otherShare } from '../words/shares';
import { sugarCaution } from './cautions';
import { under } from './inputs';
import { sweetener, sweetenerField } from './sweeteners';
import { checkDissolves } from './syrup';

const schema = fields({
  /** What is in the pot now, by mass. */
  mass: mass(),
  /** The degrees Brix it has now, 0 to 100. */
  brix: brixWord(),
  /** The degrees Brix it is to have, 0 to 100. */
  targetBrix: targetBrixWord(),
  /** The sweetener: `sugar` when left out; `honey`, `corn syrup`, `maple syrup` ... */
  with: optional(sweetenerField()),
  /** Instead of `with`: another syrup, by its degrees Brix, above 0 to 100. */
  withBrix: optional(brixWord({ above: 0 })),
  /** The share of the mass that is free juice, where the fruit is in pieces: the sugar dissolves there first. */
  juiceShare: optional(
    otherShare('juiceShare', 'Free juice of cut fruit, as a share of the mass in the pot.', { above: 0 }),
  ),
  /** At which it must stay dissolved, 0 to 100 degC; 20 degC when left out. */
  temperature: optional(liquidTemperature()),
});
export type SweetenInput = z.input<typeof schema>;
export interface Sweetened {
  /** The sweetener to add. */
  readonly sugar: Quantity<'mass'>;
  /** What is in the pot afterward. */
  readonly mass: Quantity<'mass'>;
  /** The sweetener in cups; none for a syrup given by its Brix. */
  readonly sugarVolume?: Quantity<'volume'>;
  /** Before the fruit has taken its part. */
  readonly beforeSoaking?: {
    /** Degrees Brix of the juice. */
    readonly juiceBrix: number;
    /** Sugar that it cannot hold yet. */
    readonly undissolved: Quantity<'mass'>;
  };
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
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
 * @returns `sugar`, the sweetener to add, and `mass` afterward, in the unit of the mass given
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
  refuseThinner(brix, targetBrix, 'targetBrix');
  if (given.with !== undefined && given.withBrix !== undefined) {
    fail('CONTRADICTION', 'withBrix', input.withBrix, 'a sweetener by name or by its Brix, not both');
  }
  const row = given.withBrix === undefined ? (given.with ?? sweetener('sugar')) : undefined;
  const solids = row === undefined ? (given.withBrix as number) : row.solids;
  if (targetBrix > brix && targetBrix >= solids) {
    fail('CONTRADICTION', 'targetBrix', targetBrix, `below ${solids}, the Brix of what it is sweetened with`);
  }
  const t = given.temperature === undefined ? REFERENCE_TEMPERATURE : valueIn(given.temperature, 'degC');
  const cautions = checkDissolves(targetBrix, t, 'targetBrix');
  const unit = given.mass.unit;
  const start = given.mass.value;
  const sugar = start * toAdd(brix, targetBrix, solids);
  const added = valueIn({ value: sugar, unit }, 'g');
  return answer({
    sugar: { value: sugar, unit },
    mass: { value: start + sugar, unit },
    ...(row === undefined ? {} : { sugarVolume: { value: added / row.gramsPerCup, unit: 'cup' as const } }),
    ...(given.juiceShare === undefined
      ? {}
      : { beforeSoaking: inJuice(valueIn(given.mass, 'g') * given.juiceShare, brix, added, solids, t, unit) }),
    basis: [
      balanceBasis('sugar'),
      ...(row === undefined ? [] : [basisOf(row, 'sugarVolume', `solids and weight of a cup of ${nameOf(row.food)}`)]),
      ...under('sugar', 'solubility limit', solubilityBasis('sugar')),
    ],
    cautions: [...cautions, ...(row?.food === 'honey' ? [sugarCaution('no-honey-under-one')] : [])],
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
  const mix = mixOf([
    { mass: juice, solids: brix / 100 },
    { mass: added, solids: solids / 100 },
  ]);
  const sugars = mix.mass * mix.solids;
  const water = mix.mass - sugars;
  const held = water * toAdd(0, solubilityAt(t).likely / 100, 1);
  const undissolved = Math.max(0, sugars - held);
  const dissolved = sugars - undissolved;
  return {
    juiceBrix: (100 * dissolved) / (dissolved + water),
    undissolved: quantityIn(undissolved, 'g', unit),
  };
}
