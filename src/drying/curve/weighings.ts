/** The argument of `finishForecast` in plain numbers. */
import { fail } from '../../errors/StillroomError';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Unit } from '../../quantity/units';
import { shareLeft } from '../../solution/massBalance';
import type { Series } from './finishEstimate';

/** What the schema has read. */
export interface WeighingsGiven {
  readonly weighings: readonly { readonly time: Quantity<'time'>; readonly mass: Quantity<'mass'> }[];
  readonly stopWeight?: Quantity<'mass'> | undefined;
  readonly moisture?: number | undefined;
  readonly targetMoisture?: number | undefined;
  readonly tare?: Quantity<'mass'> | undefined;
  readonly equilibriumWeight?: Quantity<'mass'> | undefined;
  readonly scaleError?: Quantity<'mass'> | undefined;
}

/** The argument as it was typed, for the errors. */
export interface WeighingsTyped {
  readonly weighings: readonly { readonly time: unknown; readonly mass: unknown }[];
  readonly stopWeight?: unknown;
  readonly moisture?: unknown;
  readonly targetMoisture?: unknown;
  readonly tare?: unknown;
  readonly equilibriumWeight?: unknown;
}

/** The series with its units, and the error of the scale in grams. */
export interface ReadWeighings {
  readonly series: Series;
  readonly timeUnit: Unit<'time'>;
  readonly massUnit: Unit<'mass'>;
  readonly error: number | undefined;
}

/** Reads the weighings, the stop weight and the floor; `usualTarget` is the target where none is given. */
export function readWeighings(given: WeighingsGiven, usualTarget: number, input: WeighingsTyped): ReadWeighings {
  const { weighings, tare, scaleError } = given;
  const [first] = weighings as readonly [WeighingsGiven['weighings'][number]];
  const timeUnit = first.time.unit;
  const t = weighings.map((weighing) => valueIn(weighing.time, timeUnit));
  const w = weighings.map((weighing) => valueIn(weighing.mass, 'g'));
  const error = scaleError === undefined ? undefined : valueIn(scaleError, 'g');
  checkOrder(t, w, error ?? 0, input);
  const empty = tare === undefined ? 0 : valueIn(tare, 'g');
  const stop = stopGrams(given, w[0] as number, t[0] as number, empty, input);
  if (stop >= (w[0] as number))
    fail('CONTRADICTION', 'stopWeight', input.stopWeight, 'a mass below the first weighing');
  if (stop <= empty) fail('CONTRADICTION', 'stopWeight', input.stopWeight, 'a mass above the tare');
  const floor =
    given.equilibriumWeight === undefined
      ? empty + (stop - empty) * (1 - (given.targetMoisture ?? usualTarget))
      : valueIn(given.equilibriumWeight, 'g');
  if (floor >= stop) {
    fail('CONTRADICTION', 'equilibriumWeight', input.equilibriumWeight, 'a mass below the stop weight');
  }
  return { series: { t, w, stop, floor }, timeUnit, massUnit: first.mass.unit, error };
}

/** Times rise, and masses do not by more than the scale errs. */
function checkOrder(t: readonly number[], w: readonly number[], error: number, input: WeighingsTyped): void {
  for (let i = 1; i < t.length; i++) {
    if ((t[i] as number) <= (t[i - 1] as number)) {
      fail('CONTRADICTION', `weighings[${i}].time`, input.weighings[i]?.time, 'a time after the weighing before');
    }
    if ((w[i] as number) > (w[i - 1] as number) + 3 * error) {
      const most =
        error === 0
          ? 'at most that of the weighing before'
          : "above the one before by at most three of the scale's errors";
      const expected = `a mass ${most}; drying only takes away`;
      fail('CONTRADICTION', `weighings[${i}].mass`, input.weighings[i]?.mass, expected);
    }
  }
}

/** The stop weight in grams: as given, or from the moistures of what went in. */
function stopGrams(
  given: WeighingsGiven,
  first: number,
  firstTime: number,
  empty: number,
  input: WeighingsTyped,
): number {
  const { stopWeight, moisture, targetMoisture } = given;
  if (stopWeight !== undefined) {
    if (moisture !== undefined) {
      fail('CONTRADICTION', 'moisture', input.moisture, 'the stop weight or the moisture, not both');
    }
    return valueIn(stopWeight, 'g');
  }
  if (moisture === undefined || targetMoisture === undefined) {
    fail('MISSING', 'stopWeight', undefined, 'the stop weight, or both moisture and targetMoisture');
  }
  if (firstTime > 0) {
    const expected = 'a first weighing at time 0, because the moisture is what the food had when it went in';
    fail('CONTRADICTION', 'weighings[0].time', input.weighings[0]?.time, expected);
  }
  if (first <= empty) fail('CONTRADICTION', 'tare', input.tare, 'a tare below the first weighing');
  if (targetMoisture >= moisture) {
    fail('CONTRADICTION', 'targetMoisture', input.targetMoisture, `a target below the start's moisture, ${moisture}`);
  }
  return empty + (first - empty) * shareLeft(moisture, targetMoisture);
}
