import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput, share } from '../quantity/fields';
import { sureRange } from '../quantity/range';
import type { Quantity, Range } from '../quantity/types';
import { joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { appliance, applianceEnergy } from './applianceEnergy';
import { type DryingHeatInput, dryingHeat } from './dryingHeat';
import { drawn, figureBasis, type HeatNeeded } from './needed';

/**
 * Share of a dryer's energy that dries. Printed examples of dryers that burn fuel give 0.26 and 0.474; a home dryer's
 * draw on green beans comes within 5 % of the least heat. The middle is common practice; 1 wastes nothing.
 */
export const DRYER: Range<number> = { low: 0.25, likely: 0.5, high: 1 };

const schema = /* @__PURE__ */ fields({
  efficiency: optional(share({ min: 0.05, max: 1 })),
  dryer: optional(appliance()),
});
type Drawn = z.input<typeof schema>;

export interface DryEnergyInput extends DryingHeatInput {
  /** Share of the dryer's energy that dries, 5 to 100 %; 25 to 100 % when left out. */
  readonly efficiency?: Drawn['efficiency'];
  /** Or what the dryer draws and for how long, with the share of the time that its heater runs. */
  readonly dryer?: Drawn['dryer'];
}

export interface DryEnergy extends HeatNeeded {
  readonly waterRemoved: Quantity<'mass'>;
}

/**
 * The energy that drying takes.
 *
 * energy = the heat of `dryingHeat` / efficiency, where the efficiency of a dryer is 25 to 100 % (likely 50 %) unless
 * given; or, of a dryer whose power is known, power x time x duty, which the weather and the trays decide and not the
 * water.
 *
 * Source: printed examples give 26 % (a diesel tray dryer), 47 % (a gas dryer) and, for 18 lb of green beans in a home
 * dryer, 5.4 kWh, of which 95 % is the least heat; the middle of the range is common practice.
 *
 * @param input - the question of `dryingHeat`: `fresh`, `moisture`, `targetMoisture`, `start`, `temperature`, with
 * @param input.efficiency - share of the dryer's energy that dries, 0.05 to 1; or
 * @param input.dryer - its `power`, `time` and, where its heater goes on and off, `duty`
 * @returns `energy` in kWh, `heat` in kJ, `waterRemoved` in the unit of `fresh`
 * @throws StillroomError as `dryingHeat`, and CONTRADICTION with both `efficiency` and `dryer`
 *
 * @example
 * ```ts
 * import { dryEnergy } from 'stillroom/heat';
 *
 * const beans = dryEnergy({ fresh: '18 lb', moisture: '90 %', targetMoisture: '6 %' });
 * beans.energy.low.value; // ≈ 5.1
 * beans.energy.likely.value; // ≈ 10.2
 * ```
 */
export function dryEnergy(input: DryEnergyInput): DryEnergy {
  const { efficiency, dryer, ...question } = { ...input };
  const given = readInput(schema, { efficiency, dryer });
  if (given.efficiency !== undefined && given.dryer !== undefined) {
    fail('CONTRADICTION', 'dryer', dryer, 'either the efficiency or what the dryer draws, and not both');
  }
  const { heat, waterRemoved, basis } = dryingHeat(question);
  if (given.dryer !== undefined) {
    const run = applianceEnergy(given.dryer);
    return answer({ energy: run.energy, heat, waterRemoved, basis: joinBasis(basis, run.basis), cautions: [] });
  }
  return answer({
    energy: drawn(heat.value, given.efficiency === undefined ? DRYER : sureRange(given.efficiency)),
    heat,
    waterRemoved,
    basis: joinBasis(
      basis,
      given.efficiency === undefined
        ? [
            figureBasis('dryer-diesel'),
            figureBasis('dryer-gas'),
            figureBasis('dryer-beans'),
            { of: "likely share of a dryer's energy that dries", kind: 'common-practice' },
          ]
        : [{ of: "share of the dryer's energy that dries", kind: 'measured' }],
    ),
    cautions: [caution('estimate')],
  });
}
