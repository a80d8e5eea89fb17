import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { lookUp } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { type FoundFood, food, form } from '../../foods/fields';
import { figuresFor } from '../../foods/figuresFor';
import { nameOf } from '../../foods/tables';
import { fields, name, optional, readInput } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { type NotKnown, notKnown } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { volume } from '../../words/volume';
import { caution } from '../cautions';
import { dryingKind, formAsked } from '../pantry';
import { type DipRow, dipRows } from './tables';

/** The first reading of each dip: the read one, and the stronger. */
const dips = dipRows.filter((row) => dipRows.find(({ name: other }) => other === row.name) === row);

const schema = /* @__PURE__ */ fields({
  /** Name of the dip: `ascorbic acid dip`, `honey dip`, `syrup blanch` ... */
  treatment: name('a dip: ascorbic acid dip, honey dip, syrup blanch ...'),
  /** What is dipped, for the dips whose soak depends on it. */
  food: optional(food()),
  /** Its cut, for the dips whose soak depends on it: `slices`, `halves`. */
  form: optional(form()),
  /** How much water to make it with; the printed amount if not given. */
  waterVolume: optional(volume()),
});
export type PretreatmentDipInput = z.input<typeof schema>;

/** One reading of a dip. */
export interface DipRecipe {
  /** What goes into the water. */
  readonly ingredients: readonly {
    /** What it is. */
    readonly name: string;
    /** The least of it, in spoons or cups. */
    readonly low: Quantity<'volume'>;
    /** The most of it, in spoons or cups. */
    readonly high: Quantity<'volume'>;
  }[];
  /** How much water. */
  readonly waterVolume?: Quantity<'volume'>;
  /** How long it simmers. */
  readonly simmer?: Quantity<'time'>;
  /** How long the food soaks; both ends the same where one figure is printed. */
  readonly soak?: {
    /** The least. */
    readonly low: Quantity<'time'>;
    /** The most. */
    readonly high: Quantity<'time'>;
  };
  /** What else is printed of it. */
  readonly note?: string;
}

/** A dip that these tables hold. */
export interface KnownDip extends DipRecipe {
  /** These tables hold the dip, and it is printed for this food. */
  readonly known: true;
  /** Name of the dip. */
  readonly treatment: string;
  /** Other readings of the same dip, for the same water: weaker, or only recalled. */
  readonly others: readonly DipRecipe[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}
/** The recipe of a dip, or why it is not for this food. */
export type PretreatmentDip = KnownDip | NotKnown;

const minutes = (value: number): Quantity<'time'> => ({ value, unit: 'min' });

/** The foods that a dip is printed for; none where it is for any fruit or vegetable. */
const foodsOf = ({ foods, soakByFood_minutes: soaks }: DipRow): readonly string[] | undefined =>
  foods ?? (soaks && Object.keys(soaks));

/** How long this food in this cut soaks: its own time where one is printed, else the printed span. */
function soakOf(row: DipRow, id: string | undefined, cut: string | undefined): DipRecipe['soak'] {
  const { soak_minutes: ends, soakByForm_minutes: byForm = {}, soakByFood_minutes: byFood = {} } = row;
  const own = [
    ...(id === undefined ? [] : figuresFor(id, 'drying').map((each) => new Map(Object.entries(byFood)).get(each))),
    cut === undefined ? undefined : new Map(Object.entries(byForm)).get(cut),
  ].find((value) => value !== undefined);
  if (own !== undefined) return { low: minutes(own), high: minutes(own) };
  return ends === null ? undefined : { low: minutes(ends[0]), high: minutes(ends[1]) };
}

/** One row for an amount of water. */
function recipe(row: DipRow, water: Quantity<'volume'> | undefined, id?: string, cut?: string): DipRecipe {
  const used = water ?? row.water ?? undefined;
  const times = used === undefined || row.water === null ? 1 : valueIn(used, row.water.unit) / row.water.value;
  const soak = soakOf(row, id, cut);
  return {
    ingredients: row.ingredients.map(({ name: what, amount: [low, high], unit }) => ({
      name: what,
      low: { value: low * times, unit },
      high: { value: high * times, unit },
    })),
    ...(used === undefined ? {} : { waterVolume: used }),
    ...(row.simmer_minutes === undefined ? {} : { simmer: minutes(row.simmer_minutes) }),
    ...(soak === undefined ? {} : { soak }),
    ...(row.notes === undefined ? {} : { note: row.notes }),
  };
}

/** Why a dip is not for a food; nothing where it is. */
function notFor(row: DipRow, { id, name: trade }: FoundFood): NotKnown | undefined {
  const foods = foodsOf(row);
  const fits =
    foods === undefined ? dryingKind(id) !== undefined : figuresFor(id, 'drying').some((each) => foods.includes(each));
  if (fits) return undefined;
  const of = foods === undefined ? 'fruit and vegetables' : foods.map(nameOf).join(', ');
  return notKnown({
    code: 'not-for-this-food',
    text: `these tables hold the ${row.name} for ${of}, and not for ${trade}`,
    instead:
      foods === undefined ? 'dry it without a dip' : 'use a dip that is for any fruit, such as the ascorbic acid dip',
    basis: [basisOf(row, 'reason', `recipe of the ${row.name}`)],
    cautions: [],
  });
}

/**
 * The printed recipe of a dip that keeps cut fruit from darkening before it dries, for an amount of water.
 *
 * Where publications differ, the one that was read and is stronger comes first, and the others are in `others`: an
 * acid dip also helps the dryer kill bacteria. Sulfites come with their caution.
 *
 * @returns `ingredients` in the printed spoons and cups, and how long the fruit soaks; or `known: false` for a food that
 *   the dip is not printed for
 * @throws StillroomError UNKNOWN_NAME with the nearest names; CONTRADICTION for water where no recipe is known
 *
 * @example
 * ```ts
 * import { pretreatmentDip } from 'stillroom/drying';
 *
 * const dip = pretreatmentDip({ treatment: 'ascorbic acid dip', waterVolume: '1 quart' });
 * dip.known && dip.ingredients[0]?.low; // => { value: 7.5, unit: 'tsp' }
 * dip.known && dip.soak?.low; // => { value: 10, unit: 'min' }
 * ```
 */
export function pretreatmentDip(input: PretreatmentDipInput): PretreatmentDip {
  const { treatment, food: dipped, form: cut, waterVolume: water } = readInput(schema, input);
  const row = lookUp(treatment, dips, 'treatment', 'pretreatment dip');
  const shape = formAsked(dipped, cut, input.form);
  if (water !== undefined && row.water === null) {
    fail(
      'CONTRADICTION',
      'waterVolume',
      input.waterVolume,
      `no amount of water, as none is printed for the ${row.name}`,
    );
  }
  const unfit = dipped && notFor(row, dipped);
  if (unfit !== undefined) return answer(unfit);
  const others = dipRows.filter((other) => other.name === row.name && other !== row);
  const first = recipe(row, water, dipped?.id, shape);
  return answer({
    known: true,
    treatment: row.name,
    ...first,
    others: others.map((other) => recipe(other, first.waterVolume, dipped?.id, shape)),
    basis: [
      basisOf(row, 'ingredients', `recipe of the ${row.name}`),
      ...(first.soak === undefined ? [] : [basisOf(row, 'soak')]),
      ...others.map((other) => basisOf(other, 'others[]', `another reading of the ${row.name}`)),
    ],
    cautions: [
      ...(row.sulfite ? [caution('sulfite-sensitive')] : []),
      ...(row.obtained === 'memory' ? [caution('recalled')] : []),
    ],
  });
}
