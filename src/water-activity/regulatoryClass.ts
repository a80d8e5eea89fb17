import type * as z from 'zod/mini';
import { assumedReading, isAbove, isUndecided } from '../acid/phReading';
import { answer } from '../common/answer';
import { fields, flag, optional, readInput } from '../quantity/fields';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { activityCaution } from './cautions';
import { activityField } from './fields';
import { pHField } from './growthAt';
import { type LineRow, regulatoryLines } from './growthLimits';

const lineFor = (start: string): LineRow => regulatoryLines.find(({ rule }) => rule.startsWith(start)) as LineRow;
const LOW_ACID = lineFor('low-acid') as LineRow & { aw: number };
const ACIDIFIED = lineFor('acidified');
const ACID = lineFor('acid food');
const TOMATO = lineFor('tomatoes');

const schema = fields({
  pH: pHField(),
  waterActivity: activityField(),
  tomato: optional(flag('whether it is tomatoes or a tomato product')),
  acidAdded: optional(flag('whether acid or acid food was added')),
});
export type RegulatoryClassInput = z.input<typeof schema>;
export interface RegulatoryClass {
  readonly lowAcid: boolean;
  /** `low water activity` where the food is at or below 0.85, whatever its pH. */
  readonly class: 'acid' | 'acidified' | 'low-acid' | 'low water activity';
  /** Whether the line lies within a kitchen meter's error (0.1) of this pH: then the class is not known. */
  readonly undecided: boolean;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Which side of the US legal lines a food is on: low-acid has a finished equilibrium pH above 4.6 and a water
 * activity above 0.85. Tomatoes and tomato products below pH 4.7 are not low-acid. At or below 0.85 neither the
 * low-acid nor the acidified rules apply. Source: 21 CFR 114.3.
 *
 * These lines say which rules apply to a maker, not how to can at home (see `acidClass`): home-canned tomatoes get
 * added acid whatever their pH. A pH within 0.1 of the line is `undecided`: at home such food is low-acid.
 *
 * @param input - `pH`: finished equilibrium pH, 0 to 14; `waterActivity`: 0 to 1, exclusive; `tomato`; `acidAdded`
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { regulatoryClass } from 'stillroom/water-activity';
 *
 * regulatoryClass({ pH: 4.65, waterActivity: 0.98, tomato: true }).lowAcid; // => false
 * regulatoryClass({ pH: 5.4, waterActivity: 0.98 }).class; // => 'low-acid'
 * regulatoryClass({ pH: 4.6, waterActivity: 0.98 }).undecided; // => true
 * ```
 */
export function regulatoryClass(input: RegulatoryClassInput): RegulatoryClass {
  const { pH, waterActivity, tomato = false, acidAdded = false } = readInput(schema, input);
  const wet = waterActivity > LOW_ACID.aw;
  const limit = tomato ? TOMATO.pH : LOW_ACID.pH;
  const lowAcid = wet && isAbove(pH, limit, tomato);
  const reading = assumedReading();
  const undecided = wet && isUndecided(pH, reading.within, limit, tomato);
  const line = lowAcid ? LOW_ACID : tomato ? TOMATO : acidAdded ? ACIDIFIED : ACID;
  const kind = lowAcid ? 'low-acid' : !wet ? 'low water activity' : acidAdded ? 'acidified' : 'acid';
  return answer({
    lowAcid,
    class: kind,
    undecided,
    basis: joinBasis(
      [basisOf(wet ? line : LOW_ACID, 'line of pH and water activity')],
      undecided ? [basisOf(reading, 'uncertainty of the reading')] : [],
    ),
    cautions: [
      ...(undecided ? [activityCaution('near-the-legal-line')] : []),
      activityCaution('licensed-acidified'),
      activityCaution('activity-is-not-process'),
      caution('tested-only'),
    ],
  });
}
