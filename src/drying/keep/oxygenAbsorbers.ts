import type * as z from 'zod/mini';
import oxygenTable from '../../../data/drying/oxygen.json';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { density, fields, mass, optional, readInput, share, volume } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution, Refusal } from '../../sources/basis';
import { asTable, basisOf } from '../../sources/table';
import { caution } from '../cautions';
import { type ItemRow, itemOf, numberOf, setting } from '../guide/settings';
import { lotsFor } from '../guide/trayLoad';

const rows = asTable<ItemRow>(oxygenTable).rows;
const AIR = itemOf(rows, 'oxygenFraction_dryAir');
const MOIST = itemOf(rows, 'moistFoodWithoutAir');
/** What extension sheets dry a vegetable to: brittle, and the most for any food kept without air. */
const MOISTEST = setting('residualMoisture_vegetable');

const schema = fields({
  container: volume(),
  moisture: share(),
  dried: optional(mass()),
  density: optional(density({ max: { value: 3, unit: 'g/mL' } })),
  absorber: optional(volume()),
});
export type OxygenAbsorbersInput = z.input<typeof schema>;

export interface OxygenAbsorbersCount {
  readonly tested: true;
  /** Oxygen in the air around the food, mL. */
  readonly oxygen: Quantity<'volume'>;
  /** Absorbers of the given capacity that take it up. */
  readonly absorbers?: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
/** The count, or a refusal for food that is too moist to keep without air. */
export type OxygenAbsorbers = OxygenAbsorbersCount | Refusal;

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
 * @param input.container - full volume of the jar, can or bag
 * @param input.moisture - of the dried food, wet basis, 0 to 1 or percent
 * @param input.dried - weight of the food, with `density`, to leave out the room it takes
 * @param input.density - of the pieces (particle density), up to 3 g/mL
 * @param input.absorber - oxygen that one absorber takes up, such as `"300 mL"`
 * @returns `oxygen` in mL and `absorbers`, rounded up; or the refusal
 * @throws StillroomError CONTRADICTION when the food does not fit into the container; MISSING for one of a pair
 *
 * @example
 * ```ts
 * import { oxygenAbsorbers } from 'stillroom/drying';
 *
 * const answer = oxygenAbsorbers({ container: '1 quart', moisture: '4 %', absorber: '100 mL' });
 * answer.tested && answer.oxygen.value; // ≈ 198.2
 * answer.tested && answer.absorbers; // => 2
 * oxygenAbsorbers({ container: '1 quart', moisture: '20 %' }).tested; // => false
 * ```
 */
export function oxygenAbsorbers(input: OxygenAbsorbersInput): OxygenAbsorbers {
  const { container, moisture, dried, density: particle, absorber } = readInput(schema, input);
  if ((dried === undefined) !== (particle === undefined)) {
    fail(
      'MISSING',
      dried === undefined ? 'dried' : 'density',
      undefined,
      'both the weight and the density of the food',
    );
  }
  const room = valueIn(container, 'mL');
  const food = dried === undefined || particle === undefined ? 0 : valueIn(dried, 'g') / valueIn(particle, 'g/mL');
  if (food > room) fail('CONTRADICTION', 'dried', input.dried, 'food that fits into the container');
  const limit = numberOf(MOISTEST) / 100;
  const limits = [
    basisOf(MOISTEST, 'most moisture for storage without air'),
    basisOf(MOIST, 'no moist food without air at room temperature'),
  ];
  const cautions = [caution('low-moisture-only-without-air'), caution('follow-local-guidance')];
  if (moisture > limit) {
    return answer({
      tested: false,
      reason: `food above ${numberOf(MOISTEST)} % moisture must not be stored without air at room temperature`,
      instead: 'dry it until it snaps, or keep it with air, in the refrigerator or the freezer',
      basis: limits,
      cautions,
    });
  }
  const oxygen = numberOf(AIR) * (room - food);
  return answer({
    tested: true,
    oxygen: { value: oxygen, unit: 'mL' },
    ...(absorber === undefined ? {} : { absorbers: lotsFor(oxygen, valueIn(absorber, 'mL')) }),
    basis: [basisOf(AIR, 'oxygen in dry air'), ...limits],
    cautions,
  });
}
