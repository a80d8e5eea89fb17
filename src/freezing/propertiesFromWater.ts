import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput, share } from '../quantity/fields';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { correlation } from './tables';

const schema = fields({ water: share() });
export type PropertiesFromWaterInput = z.input<typeof schema>;

export interface PropertiesFromWater {
  /** kJ/(kg K), above freezing: by Earle's and by Siebel's equation. */
  readonly specificHeatAbove: { readonly earle: number; readonly siebel: number };
  /** kJ/(kg K), frozen. */
  readonly specificHeatBelow: { readonly earle: number; readonly siebel: number };
  /** kJ/kg */
  readonly latentHeat: { readonly earle: number; readonly siebel: number };
  /** W/(m K), above freezing; Sweat's equation only from 60 % water. */
  readonly conductivityAbove: { readonly earle: number; readonly sweat?: number };
  /** W/(m K), frozen. */
  readonly conductivityBelow: { readonly earle: number };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Specific heats, latent heat and conductivity of a food from its water alone, by the quick textbook equations.
 *
 * With p the percent of water and w = p / 100. Earle: cp = 4.19 w + 0.84 (1 - w) above freezing and 2.1 w + 0.84
 * (1 - w) below; latent heat 335 w; k = 0.55 w + 0.26 (1 - w) above and 2.4 w + 0.26 (1 - w) below. Siebel (recalled):
 * cp = 0.837 + 3.349 w and 0.837 + 1.256 w, latent heat 334 w. Sweat (recalled): k = 0.148 + 0.00493 p above 60 %.
 *
 *
 * @example
 * ```ts
 * import { propertiesFromWater } from 'stillroom/freezing';
 *
 * const apple = propertiesFromWater({ water: '84 %' });
 * apple.specificHeatAbove.earle; // ≈ 3.654
 * apple.latentHeat.earle; // ≈ 281.4
 * ```
 */
export function propertiesFromWater(input: PropertiesFromWaterInput): PropertiesFromWater {
  const { water: w } = readInput(schema, input);
  const dry = 1 - w;
  const SWEAT_FROM = 0.6;
  const ids = ['earle-cp-above', 'earle-cp-below', 'earle-latent', 'earle-k-above', 'earle-k-below'];
  const compared = ['siebel-cp-above', 'siebel-cp-below', 'siebel-latent', ...(w > SWEAT_FROM ? ['sweat-k'] : [])];
  return answer({
    specificHeatAbove: { earle: 4.19 * w + 0.84 * dry, siebel: 0.837 + 3.349 * w },
    specificHeatBelow: { earle: 2.1 * w + 0.84 * dry, siebel: 0.837 + 1.256 * w },
    latentHeat: { earle: 335 * w, siebel: 334 * w },
    conductivityAbove: {
      earle: 0.55 * w + 0.26 * dry,
      ...(w > SWEAT_FROM ? { sweat: 0.148 + 0.493 * w } : {}),
    },
    conductivityBelow: { earle: 2.4 * w + 0.26 * dry },
    basis: [...ids, ...compared].map((id) => basisOf(correlation(id), id.replaceAll('-', ' '))),
    cautions: [caution('estimate')],
  });
}
