import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput, share, temperature } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, behind, type Caution } from '../sources/basis';
import { waterDensity } from '../steam/waterDensity';
import { headspace } from '../words/headspace';
import { jar, type ReadJar } from '../words/jar';
import { type JarMouth, mouth } from '../words/mouth';
import { jarCaution } from './cautions';
import { resolveJar } from './describeJar';
import { type JarRoom, roomIn } from './fillJar';

/** Cold to hot: water that is neither ice nor hotter than any canner. */
const liquid = () => temperature({ min: { value: 0, unit: 'degC' }, max: { value: 130, unit: 'degC' } });

const schema = /* @__PURE__ */ fields({
  /** A size or a measured jar, together with `headspace`. */
  jar: optional(jar()),
  /** `regular` (the default) or `wide`, where the jar does not say. */
  mouth: optional(mouth()),
  /** The room left between the rim and the food. */
  headspace: optional(headspace()),
  /** In place of jar and headspace: the headspace as a share of the jar, 0 to 1 or percent. */
  headspaceShare: optional(share({ above: 0, below: 1 })),
  /** Temperature of the contents as you close the jar, 0 to 130 degC. */
  fillTemperature: liquid(),
  /** The hottest they become, 0 to 130 degC, not below `fillTemperature`. */
  processTemperature: liquid(),
});
export type ExpansionInJarInput = z.input<typeof schema>;

export interface ExpansionInJar {
  /** How much the contents grow, as a share of the jar's capacity. */
  readonly growthShare: number;
  /** How much of the headspace that takes; above 1 the jar overflows. */
  readonly headspaceTaken: number;
  /** Whether the contents run over. */
  readonly overflows: boolean;
  /** The growth as a volume, where a jar is given. */
  readonly growthVolume?: Quantity<'volume'>;
  /** What would run over; zero where the headspace holds the growth. */
  readonly overflow?: Quantity<'volume'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** A headspace as a share of the jar: given so, or from a jar and a depth; nothing when neither is given. */
export function shareOfHeadspace(given: {
  jar?: ReadJar | undefined;
  mouth?: JarMouth | undefined;
  headspace?: Quantity<'length'> | undefined;
  headspaceShare?: number | undefined;
}): { share: number; room?: JarRoom } | undefined {
  const { jar, mouth, headspace, headspaceShare } = given;
  if (headspaceShare !== undefined) {
    if (jar !== undefined || headspace !== undefined) {
      fail('CONTRADICTION', 'headspaceShare', headspaceShare, 'either headspaceShare, or jar and headspace');
    }
    return { share: headspaceShare };
  }
  if (jar === undefined && headspace === undefined) return undefined;
  if (jar === undefined) fail('MISSING', 'jar', jar, 'the jar that the headspace is in');
  if (headspace === undefined) fail('MISSING', 'headspace', headspace, 'the headspace in the jar');
  const room = roomIn(resolveJar(jar, mouth), headspace, headspace);
  return { share: room.empty / room.capacity, room };
}

/**
 * How much watery contents swell between filling and processing, and whether the headspace holds it.
 *
 * growthShare = contents × (density at filling / density at processing − 1), with the density of water; the glass, which
 * swells far less, is taken as rigid. Contents with much sugar swell a little more.
 *
 * Source: density of water by IAPWS SR6-08 and, above 102 degC, SR1-86.
 *
 * @throws StillroomError CONTRADICTION when the process is colder than the filling
 *
 * @example
 * ```ts
 * import { expansionInJar } from 'stillroom/jars';
 *
 * const raw = { fillTemperature: '20 degC', processTemperature: '100 degC' } as const;
 * expansionInJar({ headspaceShare: '6 %', ...raw }).headspaceTaken; // ≈ 0.65
 * expansionInJar({ jar: 'quart', headspace: '1/2 in', ...raw }).overflows; // => true
 * expansionInJar({ jar: 'quart', headspace: '1 in', ...raw }).overflows; // => false
 * ```
 */
export function expansionInJar(input: ExpansionInJarInput): ExpansionInJar {
  const given = readInput(schema, input);
  const { fillTemperature, processTemperature } = given;
  if (valueIn(processTemperature, 'K') < valueIn(fillTemperature, 'K')) {
    fail('CONTRADICTION', 'processTemperature', input.processTemperature, 'at least the temperature at filling');
  }
  const part = shareOfHeadspace(given);
  if (part === undefined) fail('MISSING', 'jar', undefined, 'jar and headspace, or headspaceShare');
  const { share, room } = part;
  const filled = waterDensity({ temperature: fillTemperature });
  const processed = waterDensity({ temperature: processTemperature });
  const growth = (1 - share) * (filled.density.value / processed.density.value - 1);
  const overflows = growth > share;
  const volume = (of: number) => room && quantityIn(of * room.capacity, 'mL', room.unit);
  return answer({
    growthShare: growth,
    headspaceTaken: growth / share,
    overflows,
    ...(room === undefined
      ? {}
      : {
          growthVolume: volume(growth) as Quantity<'volume'>,
          overflow: volume(Math.max(0, growth - share)) as Quantity<'volume'>,
        }),
    basis: [
      ...behind('growthShare', [...(room?.basis ?? []), ...filled.basis, ...processed.basis]),
      {
        of: 'growthShare',
        kind: 'equation',
        source: 'derived',
        locator: 'ratio of densities',
        note: 'contents that swell as water does, in rigid glass',
      },
    ],
    cautions: [...(room?.cautions ?? []), ...(overflows ? [jarCaution('overflow')] : [])],
  });
}
