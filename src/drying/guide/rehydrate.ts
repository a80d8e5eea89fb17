import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { type FoundFood, food, form } from '../../foods/fields';
import { fields, optional, readInput } from '../../quantity/fields';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { type NotKnown, notKnown } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { volume } from '../../words/volume';
import { basisFrom } from '../basis';
import { caution } from '../cautions';
import { dryingKind, formAsked, ofForm, rowsFor } from '../pantry';
import { endsOf, numberOf } from '../rows';
import { rehydrationItem, rehydrationRows } from './tables';

const schema = /* @__PURE__ */ fields({
  /** The dried fruit or vegetable. */
  food: food(),
  /** Its cut, as it was dried. */
  form: optional(form()),
  /** How much dried food: a volume above zero. */
  driedVolume: volume(),
});
export type RehydrateInput = z.input<typeof schema>;

/** How a dried food takes up water again. */
export interface KnownRehydration {
  /** These tables hold the food. */
  readonly known: true;
  /** Trade name of the food. */
  readonly food: string;
  /** How much water, in the unit of `driedVolume`. */
  readonly waterVolume: Quantity<'volume'>;
  /** Boiling for vegetables; warm or cold for fruit. */
  readonly waterIs: 'boiling' | 'warm or cold';
  /** The least soak. */
  readonly soakAtLeast: Quantity<'time'>;
  /** A soak longer than this belongs in the refrigerator. */
  readonly refrigerateAfter: Quantity<'time'>;
  /** About what it comes to, in the unit of `driedVolume`. */
  readonly rehydrated: Quantity<'volume'>;
  /** Quicker ways for fruit. */
  readonly quickFruit?: {
    /** Minutes in boiling water. */
    readonly boilingWater: Quantity<'time'>;
    /** Minutes of steam. */
    readonly steam: {
      /** The least. */
      readonly low: Quantity<'time'>;
      /** The most. */
      readonly high: Quantity<'time'>;
    };
  };
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}
/** How a dried food takes up water again, or that these tables do not hold it. */
export type Rehydrate = KnownRehydration | NotKnown;

const DOUBLED = rehydrationItem('rehydrated-per-dried');
const COLD = rehydrationItem('refrigerate-after');
const PLUMP = rehydrationItem('plump-fruit');
const STEAM = rehydrationItem('steam-fruit');
const START = rehydrationItem('water-to-start-vegetables');

const minutes = (value: number): Quantity<'time'> => ({ value, unit: 'min' });

function unknown({ id, name }: FoundFood): NotKnown {
  const vegetable = dryingKind(id) === 'vegetable';
  const [least, most] = endsOf(START);
  return notKnown({
    code: 'not-in-these-tables',
    text: `these tables hold no water for dried ${name}`,
    instead: vegetable
      ? `start with ${least} to ${most} cups of boiling water for each cup, and add more as it soaks in`
      : 'cover it with water, and add more as it soaks in',
    basis: vegetable ? [basisOf(START, 'instead')] : [basisOf(COLD, 'reason', 'the table of soaking')],
    cautions: [caution('soaking-food-spoils')],
  });
}

/**
 * How much water dried food takes up, and how long to soak it at least.
 *
 * water = dried volume x cups of water for a cup dried, by the food; one cup gives about two. Source: National Center
 * for Home Food Preservation, recalled.
 *
 * @returns `waterVolume` and `rehydrated` in the unit of `driedVolume`, `soakAtLeast` in h; or `known: false`
 * @throws StillroomError UNKNOWN_NAME with the nearest names
 *
 * @example
 * ```ts
 * import { rehydrate } from 'stillroom/drying';
 *
 * const soak = rehydrate({ food: 'apples', driedVolume: '2 cups' });
 * soak.known && soak.waterVolume; // => { value: 3, unit: 'cup' }
 * ```
 */
export function rehydrate(input: RehydrateInput): Rehydrate {
  const { food: asked, form: cut, driedVolume } = readInput(schema, input);
  const shape = formAsked(asked, cut, input.form);
  const { rows, lender } = rowsFor(rehydrationRows, asked.id, 'rehydration');
  // every cut of a food takes the water of the one that is printed
  const row = ofForm(rows, shape) ?? rows[0];
  if (row === undefined) return answer(unknown(asked));
  const { value, unit } = driedVolume;
  const fruit = dryingKind(asked.id) === 'fruit';
  const [steamLow, steamHigh] = endsOf(STEAM);
  return answer({
    known: true,
    food: asked.name,
    waterVolume: { value: value * row.water_cups_per_cup_dried, unit },
    waterIs: fruit ? 'warm or cold' : 'boiling',
    soakAtLeast: { value: row.soak_hours_min, unit: 'h' },
    refrigerateAfter: { value: numberOf(COLD), unit: 'h' },
    rehydrated: { value: value * numberOf(DOUBLED), unit },
    ...(fruit
      ? {
          quickFruit: {
            boilingWater: minutes(numberOf(PLUMP)),
            steam: { low: minutes(steamLow), high: minutes(steamHigh) },
          },
        }
      : {}),
    basis: [
      basisFrom(row, 'waterVolume', `printed for ${row.printed}`, lender),
      basisFrom(row, 'soakAtLeast', `printed for ${row.printed}`, lender),
      basisOf(DOUBLED, 'rehydrated', 'volume after soaking'),
      basisOf(COLD, 'refrigerateAfter', 'longest soak'),
      ...(fruit
        ? [basisOf(PLUMP, 'quickFruit.boilingWater'), basisOf(STEAM, 'quickFruit.steam')]
        : [basisOf(START, 'waterVolume', 'another sheet starts with 1 1/2 to 2 cups a cup')]),
    ],
    cautions: [caution('soaking-food-spoils'), caution('recalled')],
  });
}
