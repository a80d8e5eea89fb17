import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { fields, mass, readInput, share } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { MOISTURE_BASES } from './moistureBasis';

const nowSchema = fields({ fresh: mass(), moisture: share({ below: 1 }), weight: mass() });
export type MoistureNowInput = z.input<typeof nowSchema>;

export interface MoistureNow {
  /** Wet basis, now. */
  readonly moisture: number;
  /** Water per weight of dry solids, now. */
  readonly dryBasis: number;
  readonly waterRemoved: Quantity<'mass'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const measured: Basis = { of: 'the weights', kind: 'measured' };

/**
 * The moisture a tray has come down to, from its weight now.
 *
 * solids = fresh (1 - moisture); moisture now = 1 - solids / weight.
 *
 * @param input.fresh - ready produce as it went in, without the tray
 * @param input.moisture - its moisture then, wet basis, 0 to below 1 or percent
 * @param input.weight - of the same produce now, without the tray
 * @returns `moisture` (wet basis), `dryBasis`, and `waterRemoved` in the unit of `fresh`
 * @throws StillroomError CONTRADICTION for a weight above the fresh, or below the dry solids
 *
 * @example
 * ```ts
 * import { moistureNow } from 'stillroom/drying';
 *
 * moistureNow({ fresh: '10 kg', moisture: '85 %', weight: '2.5 kg' }).moisture; // ≈ 0.4
 * ```
 */
export function moistureNow(input: MoistureNowInput): MoistureNow {
  const { fresh, moisture, weight } = readInput(nowSchema, input);
  const now = valueIn(weight, fresh.unit);
  const solids = fresh.value * (1 - moisture);
  if (now > fresh.value) fail('CONTRADICTION', 'weight', input.weight, 'a weight of at most the fresh produce');
  if (now < solids) {
    fail('CONTRADICTION', 'weight', input.weight, `a weight of at least the dry solids, ${solids} ${fresh.unit}`);
  }
  return answer({
    moisture: (now - solids) / now,
    dryBasis: (now - solids) / solids,
    waterRemoved: { value: fresh.value - now, unit: fresh.unit },
    basis: [MOISTURE_BASES, measured],
    cautions: [],
  });
}

const startSchema = fields({ fresh: mass(), dried: mass(), driedMoisture: share({ below: 1 }) });
export type StartMoistureInput = z.input<typeof startSchema>;

export interface StartMoisture {
  /** Wet basis, of the produce as it went in. */
  readonly moisture: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The moisture produce had when it went in, from what it weighs dried: your own figure for the next batch.
 *
 * moisture = 1 - dried (1 - dried moisture) / fresh, wet basis.
 *
 * @param input.fresh - ready produce as it went in
 * @param input.dried - the same produce dried
 * @param input.driedMoisture - its moisture then, wet basis, 0 to below 1 or percent
 * @returns `moisture`, wet basis
 * @throws StillroomError CONTRADICTION when the dried produce outweighs the fresh
 *
 * @example
 * ```ts
 * import { startMoisture } from 'stillroom/drying';
 *
 * startMoisture({ fresh: '100 g', dried: '28.5 g', driedMoisture: '8 %' }).moisture; // ≈ 0.7378
 * ```
 */
export function startMoisture(input: StartMoistureInput): StartMoisture {
  const { fresh, dried, driedMoisture } = readInput(startSchema, input);
  const share = valueIn(dried, fresh.unit) / fresh.value;
  if (share > 1) fail('CONTRADICTION', 'dried', input.dried, 'a weight of at most the fresh produce');
  return answer({ moisture: 1 - share * (1 - driedMoisture), basis: [MOISTURE_BASES, measured], cautions: [] });
}
