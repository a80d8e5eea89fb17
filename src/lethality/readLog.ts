import type * as z from 'zod/mini';
import { fail, within } from '../errors/StillroomError';
import { fields, readInput } from '../quantity/fields';
import { exactIn, valueIn } from '../quantity/scale';
import { type Dimension, findUnit } from '../quantity/units';
import { time } from '../words/time';
import { foodTemperature } from './terms';

const pointSchema = /* @__PURE__ */ fields({
  /** From any start, 0 and later. */
  time: time({ min: { value: 0, unit: 'min' } }),
  /** Of the food then, -80 to 200 degC. */
  temperature: foodTemperature(),
});

/** One reading of a record: when, from any start, and how hot. */
export type LogPoint = z.input<typeof pointSchema>;

/** A record in minutes and degC. */
export interface Log {
  readonly minutes: Float64Array;
  readonly temperatures: Float64Array;
}

const PLAIN = /^(-?\d+(?:\.\d+)?) ?([^\d\s].*)$/;

/** Amount and unit of `12.5 min` or `{ value: 12.5, unit: 'min' }`; no unit for anything else. */
function split(given: unknown): [amount: number, unit: string] {
  if (typeof given === 'string') {
    const match = given.length < 40 ? PLAIN.exec(given) : null;
    return match === null ? [0, ''] : [Number(match[1]), match[2] as string];
  }
  const { value, unit } = (given ?? {}) as { value?: unknown; unit?: unknown };
  const plain = typeof value === 'number' && typeof unit === 'string' && Object.keys(given as object).length === 2;
  return plain ? [value, unit] : [0, ''];
}

/**
 * A reader of plain quantities, for records of 100,000 readings: each unit's straight line into the
 * wanted one is worked out once. Whatever is not plain, or not within the bounds, gives nothing.
 */
function plainReader(dimension: Dimension, unit: string, low: number, high: number) {
  const lines = new Map<string, { scale: number; shift: number } | undefined>();
  const lineOf = (name: string) => {
    const found = findUnit(name, dimension);
    if (found?.dimension !== dimension) return undefined;
    const shift = exactIn({ value: 0, unit: found.unit }, unit);
    const scale = exactIn({ value: 1, unit: found.unit }, unit).minus(shift);
    return { scale: scale.toNumber(), shift: shift.toNumber() };
  };
  return (given: unknown): number | undefined => {
    const [amount, name] = split(given);
    if (!lines.has(name)) lines.set(name, lineOf(name));
    const line = lines.get(name);
    if (line === undefined) return undefined;
    const value = amount * line.scale + line.shift;
    return value > low && value < high ? value : undefined;
  };
}

/** One reading as the caller wrote it. */
export const readPoint = (point: unknown) => readInput(pointSchema, point);

/**
 * Reads a temperature record and makes sure that its times rise. Plain quantities take a quick way; everything else, and
 * everything that may be wrong, goes through the schema of a reading, so that both say the same.
 */
export function readLog(points: readonly unknown[], longestGap: number | undefined): Log {
  const minutes = new Float64Array(points.length);
  const temperatures = new Float64Array(points.length);
  const readMinutes = plainReader('time', 'min', 0, 1e7);
  const readDegrees = plainReader('temperature', 'degC', -80, 200);
  points.forEach((point, index) => {
    const { time: at, temperature, ...rest } = (point ?? {}) as Record<string, unknown>;
    let minute = readMinutes(at);
    let degrees = readDegrees(temperature);
    if (minute === undefined || degrees === undefined || Object.keys(rest).length > 0) {
      const given = within(`log[${index}]`, () => readPoint(point));
      minute = valueIn(given.time, 'min');
      degrees = valueIn(given.temperature, 'degC');
    }
    minutes[index] = minute;
    temperatures[index] = degrees;
    if (index === 0) return;
    const before = minutes[index - 1] as number;
    if (minute <= before) {
      fail('CONTRADICTION', `log[${index}].time`, at, `a time after that of the reading before it (${before} min)`);
    }
    if (longestGap !== undefined && minute - before > longestGap * (1 + 1e-12)) {
      fail('OUT_OF_RANGE', `log[${index}].time`, at, `a reading at most ${longestGap} min after the one before it`);
    }
  });
  return { minutes, temperatures };
}
