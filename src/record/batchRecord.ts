import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { readInput } from '../quantity/fields';
import { exactIn } from '../quantity/scale';
import { dayNumber } from './date';
import { lotCodeOf } from './lotCode';
import { RECORD_VERSION, recordSchema as schema } from './recordFields';

export type BatchRecordInput = Given<z.input<typeof schema>>;
type Read = z.output<typeof schema>;
/** A record of one batch: plain JSON, quantities as `{ value, unit }`, with its version and its lot code. */
export type BatchRecord = Given<Omit<Read, 'version' | 'lotCode' | 'batchOfDay'>> & {
  /** Version of the record. */
  readonly version: typeof RECORD_VERSION;
  /** The lot code: what was made under one code is one lot. */
  readonly lotCode: string;
};

/** No more ready than raw, and no more ready and trimmings together. */
function checkLots({ lots }: Read): void {
  lots.forEach(({ raw, ready, trimmings }, index) => {
    const whole = exactIn(raw, 'g');
    const path = `lots[${index}]`;
    const share = ready === undefined ? undefined : exactIn(ready, 'g');
    if (share?.gt(whole)) {
      fail(
        'CONTRADICTION',
        `${path}.ready`,
        ready?.value,
        'no more than the raw mass; list what you added in additions',
      );
    }
    const used = exactIn(trimmings ?? { value: 0, unit: 'g' }, 'g').plus(share ?? 0);
    // a part in a thousand for the scale
    if (used.gt(whole.times(1.001))) {
      fail('CONTRADICTION', `${path}.trimmings`, trimmings?.value, 'with the ready mass no more than the raw mass');
    }
  });
}

/** No more sealed than filled, nothing wetter for its drying, no day before the day of making. */
function checkRest({ jarsFilled, jarsSealed, process, work, dryer, date, useBy, lotCode, batchOfDay }: Read): void {
  if (lotCode !== undefined && batchOfDay !== undefined) {
    fail('CONTRADICTION', 'batchOfDay', batchOfDay, 'a lot code, or the number of the batch to make one with');
  }
  if (work !== undefined && work.preparing === undefined && work.filling === undefined) {
    fail('MISSING', 'work.preparing', undefined, 'the time you took to prepare or to fill');
  }
  if (dryer?.endMoisture !== undefined && dryer.endMoisture >= (dryer.freshMoisture ?? 1)) {
    fail('CONTRADICTION', 'dryer.endMoisture', dryer.endMoisture, 'less than the fresh moisture');
  }
  if (jarsSealed !== undefined && jarsFilled === undefined) {
    fail('MISSING', 'jarsFilled', jarsFilled, 'how many jars were filled');
  }
  if (jarsSealed !== undefined && jarsSealed > (jarsFilled ?? 0)) {
    fail('CONTRADICTION', 'jarsSealed', jarsSealed, `no more than the ${jarsFilled} jars filled`);
  }
  if (process?.restarted === true && process.interrupted !== true && process.lowestPressure === undefined) {
    fail('CONTRADICTION', 'process.restarted', true, 'interrupted: true, or the lowest pressure, together with it');
  }
  if (useBy !== undefined && dayNumber(useBy) < dayNumber(date)) {
    fail('CONTRADICTION', 'useBy', useBy, 'a day not before the day of making');
  }
}

/** Checks a record and puts its fields in their order. */
export function readRecord(input: unknown): BatchRecord {
  const given = readInput(schema, input);
  checkLots(given);
  checkRest(given);
  const { version: _, lotCode, batchOfDay, ...rest } = given;
  const code = lotCode ?? lotCodeOf({ ...rest, batchOfDay });
  // quantities and texts only: through JSON and back nothing changes but fields left undefined
  return JSON.parse(JSON.stringify({ version: RECORD_VERSION, lotCode: code, ...rest })) as BatchRecord;
}

const LONGEST_JSON = 5_000_000;

/** The value of a JSON text, which must hold a record of this version. */
function parsed(json: string): unknown {
  if (json.length > LONGEST_JSON) fail('TOO_MUCH', '', json, `at most ${LONGEST_JSON} characters`);
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    fail('WRONG_TYPE', '', json, 'a record as JSON text');
  }
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    const { version } = value as { version?: unknown };
    if (version === undefined) fail('MISSING', 'version', version, `version ${RECORD_VERSION}`);
    if (version !== RECORD_VERSION) fail('OUT_OF_RANGE', 'version', version, `version ${RECORD_VERSION}`);
  }
  return value;
}

/**
 * A record of one batch as plain, versioned JSON: what you put up, how, and what came of it. It holds what you saw and
 * judges nothing; `reviewBatch` does that. Every quantity keeps its unit, and every name stays as you wrote it. The date
 * is yours: nothing here reads a clock.
 *
 * Without a `lotCode` it gets one that shows kitchen, name, year, day of the year and batch. To keep it, write it with
 * `JSON.stringify`; the text goes back in as it is, and all of it is checked again.
 *
 * @param input - the fields of a record, a record, or its JSON text of up to 5 million characters
 * @returns the record, with `version: 2`; it has no basis, for every figure in it is your own
 * @throws StillroomError CONTRADICTION for more ready than raw, more sealed than filled or more moisture after the dryer
 *   than before it, and for any bad field; of a text WRONG_TYPE where it is not a JSON object, OUT_OF_RANGE for a version
 *   that this release does not know
 *
 * Source: the fields follow 21 CFR 114.100 and 121.305 (see `recordRules`), the lot code 21 CFR 113.60(c).
 *
 * @example
 * ```ts
 * import { batchRecord } from 'stillroom/record';
 *
 * const record = batchRecord({
 *   date: '2026-08-14',
 *   name: 'peach halves',
 *   lots: [{ food: 'peach', raw: '18 lb', ready: '14.5 lb' }],
 *   jarsFilled: 7,
 *   jarsSealed: 7,
 * });
 * record.lotCode; // => 'PEACH-HALVES-2026-226-1'
 * record.lots[0].raw; // => { value: 18, unit: 'lb' }
 * batchRecord(JSON.stringify(record)).jarsSealed; // => 7
 * batchRecord({ ...record, jarsSealed: 8 }); // throws StillroomError CONTRADICTION
 * batchRecord('{ "version": 9 }'); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function batchRecord(input: BatchRecordInput | BatchRecord | string): BatchRecord {
  return answer(readRecord(typeof input === 'string' ? parsed(input) : input));
}
