import * as z from 'zod/mini';
import json from '../../data/sugar/sugar-stages.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { id, positive, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { elevation } from '../words/elevation';
import { temperature } from '../words/temperature';
import { sugarCaution } from './cautions';
import { potBasis, potRule } from './potRules';

export const stageRow = () =>
  z.strictObject({
    id: id(),
    stage: text(),
    /** degF */
    low: positive(),
    /** degF */
    high: positive(),
    use: z.exactOptional(text()),
    ...sourcedColumns(),
  });
const rows = asTable<RowOf<typeof stageRow>>(json).rows;

const schema = fields({
  /** Elevation of the kitchen, -500 to 5,000 m; sea level when left out. */
  elevation: optional(elevation()),
  /** The temperature in the pot, to find the stage it is in. */
  temperature: optional(temperature()),
});
export type SugarStagesInput = z.input<typeof schema>;

/** A stage of a cooked sugar syrup. */
export interface SugarStage {
  /** Its name: `soft ball`. */
  readonly stage: string;
  /** Where it begins, at this elevation. */
  readonly low: Quantity<'temperature'>;
  /** Where it ends. */
  readonly high: Quantity<'temperature'>;
  /** What it is cooked for. */
  readonly use?: string;
}
export interface SugarStages {
  /** All stages, from the coolest up. */
  readonly stages: readonly SugarStage[];
  /** With `temperature`: the stage it is in, or the last it has passed. */
  readonly now?: SugarStage;
  /** With `temperature`: whether it is inside that stage's range and not beyond it. */
  readonly inStage?: boolean;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

function stagesAt(place: Quantity<'length'> | undefined, unit: 'degF' | 'degC'): SugarStage[] {
  const off = place === undefined ? 0 : (valueIn(place, 'ft') / 1000) * potRule('stage-per-thousand-feet').value;
  return rows.map(({ stage, low, high, use }) => ({
    stage,
    low: quantityIn(low - off, 'degF', unit),
    high: quantityIn(high - off, 'degF', unit),
    ...(use === undefined ? {} : { use }),
  }));
}

/** The stage that a pot is in. */
function stageNow(stages: readonly SugarStage[], pot: Quantity<'temperature'>, unit: 'degF' | 'degC', given: unknown) {
  const value = valueIn(pot, unit);
  const now = stages.findLast(({ low }) => value >= low.value - 1e-9);
  if (now === undefined) {
    const least = stages[0]?.low.value.toFixed(0);
    return fail('OUT_OF_RANGE', 'temperature', given, `at least ${least} ${unit}, the thread stage here`);
  }
  return { now, inStage: value <= now.high.value + 1e-9 };
}

/**
 * The stages of a cooked sugar syrup, thread to caramel, with their temperatures at an elevation; and the stage that a
 * temperature is in.
 *
 * Source: McGee, On Food and Cooking (2004); 2 degF off for each 1,000 ft. `syrupBoilingTemperature` answers the same
 * from the strength of the syrup.
 *
 * @param input - `elevation`: -500 to 5,000 m, sea level when left out; `temperature` in the pot, optional
 * @returns temperatures in the unit of `temperature`; else in degC for an elevation in meters, otherwise in degF
 * @throws StillroomError OUT_OF_RANGE, also below the thread stage, where it is still a thin syrup
 *
 * @example
 * ```ts
 * import { sugarStages } from 'stillroom/sugar';
 *
 * sugarStages({ elevation: '5000 ft' }).stages[1]?.low; // => { value: 225, unit: 'degF' }
 * sugarStages({ temperature: '238 degF' }).now?.stage; // => 'soft ball'
 * ```
 */
export function sugarStages(input: SugarStagesInput = {}): SugarStages {
  const given = readInput(schema, input);
  const metric =
    given.temperature === undefined
      ? given.elevation !== undefined && given.elevation.unit !== 'ft'
      : given.temperature.unit !== 'degF';
  const unit = metric ? 'degC' : 'degF';
  const stages = stagesAt(given.elevation, unit);
  return answer({
    stages,
    ...(given.temperature === undefined ? {} : stageNow(stages, given.temperature, unit, input.temperature)),
    basis: [
      ...rows.slice(0, 1).map((row) => basisOf(row, 'stages')),
      ...(given.elevation === undefined ? [] : [potBasis('stage-per-thousand-feet', 'stages[].low')]),
    ],
    cautions: [sugarCaution('boiling-sugar-burns')],
  });
}
