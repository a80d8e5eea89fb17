import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { fields, optional, readInput } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { type NotKnown, notKnown } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { density } from '../../words/density';
import { dried as driedWord } from '../../words/dried';
import { moisture as moistureWord } from '../../words/shares';
import { volume } from '../../words/volume';
import { caution } from '../cautions';
import { setting } from '../guide/tables';
import { lotsFor } from '../guide/trayLoad';
import { numberOf } from '../rows';
import { oxygenItem } from './tables';

const AIR = oxygenItem('oxygen-in-dry-air');
const MOIST = oxygenItem('moist-food-without-air');
/** What extension sheets dry a vegetable to: brittle, and the most for any food kept without air. */
const MOISTEST = setting('moisture-vegetable');

const schema = /* @__PURE__ */ fields({
  /** Full volume of the jar, can or bag: above zero. */
  containerVolume: volume(),
  /** Of the dried food, wet basis: 0 to 1, or percent. */
  moisture: moistureWord(),
  /** The dried food, to leave out the room it takes; needs `density`. */
  dried: optional(driedWord()),
  /** Of the pieces themselves, not of the heap: up to 3 g/mL; needs `dried`. */
  density: optional(density({ max: { value: 3, unit: 'g/mL' } })),
  /** Oxygen that one absorber takes up, such as `"300 mL"`. */
  absorber: optional(volume()),
});
export type OxygenAbsorbersInput = z.input<typeof schema>;

/** How much oxygen is sealed in, and how many absorbers take it up. */
export interface OxygenAbsorbersCount {
  /** The food is dry enough to be kept without air. */
  readonly known: true;
  /** Oxygen in the air around the food, mL. */
  readonly oxygen: Quantity<'volume'>;
  /** Absorbers of the given capacity that take it up. */
  readonly absorbers?: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}
/** The count, or a no for food that is too moist to keep without air. */
export type OxygenAbsorbers = OxygenAbsorbersCount | NotKnown;

/**
 * How much oxygen is sealed in with dried food, and how many absorbers take it up.
 *
 * oxygen = 0.20946 x (container - dried / particle density). Use the density of the pieces themselves, not of the
 * heap; without it the whole container counts as air, which errs on the side of more absorbers. Food moister than
 * 10 %, the figure for a dried vegetable that shatters, is refused: moist food kept without air can grow Clostridium
 * botulinum.
 *
 * Sources: Penn State, critical food safety issues, vacuum packaging (no moist food without air at room temperature);
 * National Center for Home Food Preservation, drying vegetables (10 %). The share of oxygen in air is recalled.
 *
 * @returns `oxygen` in mL and `absorbers`, rounded up; or `known: false` for food that is too moist
 * @throws StillroomError CONTRADICTION when the food does not fit into the container; MISSING for one of a pair
 *
 * @example
 * ```ts
 * import { oxygenAbsorbers } from 'stillroom/drying';
 *
 * const answer = oxygenAbsorbers({ containerVolume: '1 quart', moisture: '4 %', absorber: '100 mL' });
 * answer.known && answer.oxygen.value; // ≈ 198.2
 * answer.known && answer.absorbers; // => 2
 * oxygenAbsorbers({ containerVolume: '1 quart', moisture: '20 %' }).known; // => false
 * ```
 */
export function oxygenAbsorbers(input: OxygenAbsorbersInput): OxygenAbsorbers {
  const { containerVolume: container, moisture, dried, density: particle, absorber } = readInput(schema, input);
  if ((dried === undefined) !== (particle === undefined)) {
    const lacking = dried === undefined ? 'dried' : 'density';
    fail('MISSING', lacking, undefined, 'both the mass and the density of the food');
  }
  const room = valueIn(container, 'mL');
  const food = dried === undefined || particle === undefined ? 0 : valueIn(dried, 'g') / valueIn(particle, 'g/mL');
  if (food > room) fail('CONTRADICTION', 'dried', input.dried, 'food that fits into the container');
  const limits = (of: string): Basis[] => [
    basisOf(MOISTEST, of, 'most moisture for storage without air'),
    basisOf(MOIST, of, 'no moist food without air at room temperature'),
  ];
  const cautions = [caution('low-moisture-only-without-air'), caution('follow-local-guidance')];
  if (moisture > numberOf(MOISTEST) / 100) {
    return answer(
      notKnown({
        code: 'too-moist-without-air',
        text: `food above ${numberOf(MOISTEST)} % moisture must not be stored without air at room temperature`,
        instead: [
          { text: 'dry it until it snaps' },
          { text: 'keep it with air, in the refrigerator', keep: 'refrigerator' },
          { text: 'freeze it', keep: 'freezer' },
        ],
        basis: limits('reason'),
        cautions,
      }),
    );
  }
  const oxygen = numberOf(AIR) * (room - food);
  return answer({
    known: true,
    oxygen: { value: oxygen, unit: 'mL' },
    ...(absorber === undefined ? {} : { absorbers: lotsFor(oxygen, valueIn(absorber, 'mL')) }),
    basis: [basisOf(AIR, 'oxygen', 'oxygen in dry air'), ...limits('known')],
    cautions,
  });
}
