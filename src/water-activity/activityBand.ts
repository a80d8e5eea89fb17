import type * as z from 'zod/mini';
import bandsJson from '../../data/water-activity/activity-bands.json';
import saltJson from '../../data/water-activity/salt-bands.json';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { activityCaution } from './cautions';
import { activityField } from './fields';

interface BandRow extends Sourced {
  readonly low: number;
  readonly high: number;
  readonly inhibited_below: string;
  readonly foods: string;
}
interface SaltRow extends Sourced {
  readonly low: number;
  readonly high: number;
  readonly nacl_pct: string;
  readonly pathogens: string;
  readonly spoilage: string;
}
const bands = asTable<BandRow>(bandsJson).rows;
const saltBands = asTable<SaltRow>(saltJson).rows;

const schema = fields({ waterActivity: activityField() });
export type ActivityBandInput = z.input<typeof schema>;
export interface ActivityBand {
  readonly band: readonly [number, number];
  /** The organisms that the lower end of the band stops. */
  readonly stoppedBelow: string;
  /** Foods typically in the band. */
  readonly foods: string;
  /** Salted fish of this water activity: salt in percent, and what may still grow. */
  readonly saltedFish?: { readonly salt: string; readonly pathogens: string; readonly spoilage: string };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The classic band a water activity falls in: the foods found there, and the organisms its lower end stops. A value
 * on a border belongs to the wetter band. To judge one food use `keeps`, which goes by each organism's own limit.
 * Sources: Beuchat 1981; ICMSF 1980 for salted fish.
 *
 * @param input - `waterActivity`: 0.2 to 1, exclusive of 1
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { activityBand } from 'stillroom/water-activity';
 *
 * activityBand({ waterActivity: 0.78 }).band; // => [0.75, 0.8]
 * ```
 */
export function activityBand(input: ActivityBandInput): ActivityBand {
  const { waterActivity } = readInput(schema, input);
  // bands run from wet to dry; drier than the last printed one is as dry as it
  const row = (bands.find(({ low }) => waterActivity >= low) ?? bands.at(-1)) as BandRow;
  const salted = saltBands.find(({ low }) => waterActivity >= low);
  return answer({
    band: [row.low, row.high],
    stoppedBelow: row.inhibited_below,
    foods: row.foods,
    ...(salted === undefined
      ? {}
      : { saltedFish: { salt: salted.nacl_pct, pathogens: salted.pathogens, spoilage: salted.spoilage } }),
    basis: [
      basisOf(row, 'band of water activity'),
      ...(salted === undefined ? [] : [basisOf(salted, 'microflora of salted fish')]),
    ],
    cautions: [activityCaution('limits-are-for-good-conditions'), caution('follow-local-guidance')],
  });
}
