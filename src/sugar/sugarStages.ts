import json from '../../data/sugar/sugar-stages.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { elevation, fields, optional, readInput, temperature } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { LengthInput, Quantity, TemperatureInput } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { sugarCaution } from './cautions';

interface StageRow extends Sourced {
  readonly stage: string;
  readonly low: number;
  readonly high: number;
  readonly use?: string;
}
const rows = asTable<StageRow>(json).rows;
const PER_THOUSAND_FEET = 2; // degF off for each 1,000 ft (McGee 2004)

export interface SugarStage {
  readonly stage: string;
  readonly low: Quantity<'temperature'>;
  readonly high: Quantity<'temperature'>;
  readonly use?: string;
}

const drop = (place: Quantity<'length'> | undefined): number =>
  place === undefined ? 0 : (valueIn(place, 'ft') / 1000) * PER_THOUSAND_FEET;

function stagesAt(place: Quantity<'length'> | undefined, unit: 'degF' | 'degC'): SugarStage[] {
  const off = drop(place);
  return rows.map(({ stage, low, high, use }) => ({
    stage,
    low: quantityIn(low - off, 'degF', unit),
    high: quantityIn(high - off, 'degF', unit),
    ...(use === undefined ? {} : { use }),
  }));
}

const schema = fields({ elevation: optional(elevation()) });
export interface SugarStagesInput {
  /** Sea level when left out. */
  readonly elevation?: LengthInput;
}
export interface SugarStages {
  readonly stages: readonly SugarStage[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The stages of a cooked sugar syrup, thread to caramel, with their temperatures at an elevation.
 *
 * Source: McGee, On Food and Cooking (2004); 2 degF off for each 1,000 ft. `syrupBoilingTemperature` answers the same
 * from the strength of the syrup.
 *
 * @param input - `elevation`: -500 to 5,000 m, sea level when left out
 * @returns temperatures in degC for an elevation in metres, otherwise in degF
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { sugarStages } from 'stillroom/sugar';
 *
 * sugarStages({ elevation: '5000 ft' }).stages[1]?.low; // => { value: 225, unit: 'degF' }
 * ```
 */
export function sugarStages(input: SugarStagesInput = {}): SugarStages {
  const given = readInput(schema, input);
  const metric = given.elevation !== undefined && given.elevation.unit !== 'ft';
  return answer({
    stages: stagesAt(given.elevation, metric ? 'degC' : 'degF'),
    basis: rows.slice(0, 1).map((row) => basisOf(row, 'stages')),
    cautions: [sugarCaution('boiling-sugar-burns')],
  });
}

const atSchema = fields({ temperature: temperature(), elevation: optional(elevation()) });
export interface SugarStageAtInput {
  readonly temperature: TemperatureInput;
  readonly elevation?: LengthInput;
}
export interface SugarStageAt {
  /** The stage it is in, or the last it has passed. */
  readonly stage: SugarStage;
  /** Whether it is inside that stage's range or beyond it. */
  readonly within: boolean;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The stage of a cooking syrup from its temperature: the inverse of `sugarStages`.
 *
 * @param input - `temperature` in the pot; `elevation`: sea level when left out
 * @throws StillroomError OUT_OF_RANGE below the thread stage, where it is still a thin syrup
 *
 * @example
 * ```ts
 * import { sugarStageAt } from 'stillroom/sugar';
 *
 * sugarStageAt({ temperature: '238 degF' }).stage.stage; // => 'soft ball'
 * ```
 */
export function sugarStageAt(input: SugarStageAtInput): SugarStageAt {
  const given = readInput(atSchema, input);
  const unit = given.temperature.unit === 'degF' ? 'degF' : 'degC';
  const value = valueIn(given.temperature, unit);
  const stages = stagesAt(given.elevation, unit);
  const index = stages.findLastIndex(({ low }) => value >= low.value - 1e-9);
  const [stage, row] = [stages[index], rows[index]];
  if (stage === undefined || row === undefined) {
    const first = stages[0] as SugarStage;
    fail(
      'OUT_OF_RANGE',
      'temperature',
      input.temperature,
      `at least ${first.low.value.toFixed(0)} ${unit}, the thread stage here`,
    );
  }
  return answer({
    stage,
    within: value <= stage.high.value + 1e-9,
    basis: [basisOf(row, 'stage')],
    cautions: [sugarCaution('boiling-sugar-burns')],
  });
}
