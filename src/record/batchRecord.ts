import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { readInput } from '../quantity/fields';
import { toDecimalIn } from '../quantity/scale';
import { dayNumber } from './date';
import { RECORD_VERSION, recordSchema as schema } from './recordFields';

export type BatchRecordInput = Given<z.input<typeof schema>>;
/** A record of one batch: plain JSON, quantities as `{ value, unit }`, with its version. */
export type BatchRecord = Given<Omit<z.output<typeof schema>, 'version'>> & { readonly version: typeof RECORD_VERSION };

/** No more out of the knife than went under it, no more sealed than filled, and nothing wetter for its drying. */
function checkAmounts(record: z.output<typeof schema>): void {
  record.produce.forEach(({ raw, ready, trimmings }, index) => {
    const whole = toDecimalIn(raw, 'g');
    const path = `produce[${index}]`;
    const share = ready === undefined ? undefined : toDecimalIn(ready, 'g');
    if (share?.gt(whole)) {
      fail(
        'CONTRADICTION',
        `${path}.ready`,
        ready?.value,
        'no more than the raw weight; what was added stands under added',
      );
    }
    const used = toDecimalIn(trimmings ?? { value: 0, unit: 'g' }, 'g').plus(share ?? 0);
    // a part in a thousand for the scale
    if (used.gt(whole.times(1.001))) {
      fail('CONTRADICTION', `${path}.trimmings`, trimmings?.value, 'with the ready weight no more than the raw weight');
    }
  });
  const { jars, process, work, dryer } = record;
  if (work !== undefined && work.prepare === undefined && work.fill === undefined) {
    fail('MISSING', 'work.prepare', undefined, 'the time of preparing or of filling');
  }
  if (dryer?.endMoisture !== undefined && dryer.endMoisture >= (dryer.freshMoisture ?? 1)) {
    fail('CONTRADICTION', 'dryer.endMoisture', dryer.endMoisture, 'less than the fresh moisture');
  }
  if (jars?.sealed !== undefined && jars.sealed > jars.filled) {
    fail('CONTRADICTION', 'jars.sealed', jars.sealed, `no more than the ${jars.filled} jars filled`);
  }
  if (process?.restarted === true && process.interrupted !== true && process.lowestPressure === undefined) {
    fail('CONTRADICTION', 'process.restarted', true, 'interrupted: true, or the lowest pressure, beside it');
  }
  if (record.useBy !== undefined && dayNumber(record.useBy) < dayNumber(record.date)) {
    fail('CONTRADICTION', 'useBy', record.useBy, 'a day not before the day of making');
  }
}

/** Checks a record and puts its fields in their order. */
export function readRecord(input: unknown): BatchRecord {
  const given = readInput(schema, input);
  checkAmounts(given);
  const { version: _, ...rest } = given;
  // quantities and texts only: through JSON and back nothing changes but fields left undefined
  return JSON.parse(JSON.stringify({ version: RECORD_VERSION, ...rest })) as BatchRecord;
}

/**
 * A record of one batch as plain, versioned JSON: what was put up, how, and what came of it. It holds what you saw and
 * judges nothing; `reviewBatch` does that. Every quantity keeps its unit. The date is yours: nothing here reads a clock.
 *
 * @param input - `added`, `made`: weights of what went in besides and of what came out, `{ what, mass }`
 * @param input - `place`, `recordedBy`, `distribution`, `notes`: texts
 * @returns the record, with `version: 1`; no basis, for every figure in it is your own. `form`, `work`, `dryer`, `useBy`
 *   and `recipeFollowed` came later and are optional: older records of version 1 read as they are
 * @throws StillroomError CONTRADICTION for more ready than raw, more sealed than filled or more moisture after the dryer
 *   than before it, and for any bad field
 *
 * Source: the fields follow 21 CFR 114.100 and 121.305 (see `recordRules`).
 *
 * @example
 * ```ts
 * import { batchRecord } from 'stillroom/record';
 *
 * const record = batchRecord({
 *   lot: 'PEACH-2026-226-1',
 *   date: '2026-08-14',
 *   product: 'peach halves',
 *   produce: [{ produce: 'peach', raw: '18 lb', ready: '14.5 lb' }],
 *   jars: { filled: 7, sealed: 7 },
 * });
 * record.version; // => 1
 * record.produce[0].raw; // => { value: 18, unit: 'lb' }
 * batchRecord({ ...record, jars: { filled: 7, sealed: 8 } }); // throws StillroomError CONTRADICTION
 * ```
 */
export function batchRecord(input: BatchRecordInput): BatchRecord {
  return answer(readRecord(input));
}

const LONGEST_JSON = 5_000_000;

/**
 * A record as JSON text, to keep.
 *
 * @param record - what `batchRecord` returned, or the same fields
 * @throws StillroomError as `batchRecord`
 *
 * @example
 * ```ts
 * import { parseRecord, serializeRecord } from 'stillroom/record';
 *
 * const kept = serializeRecord({ lot: 'A1', date: '2026-08-14', product: 'jam', produce: [{ produce: 'plum', raw: '5 kg' }] });
 * parseRecord(kept).produce[0].raw; // => { value: 5, unit: 'kg' }
 * ```
 */
export function serializeRecord(record: BatchRecordInput | BatchRecord): string {
  return JSON.stringify(readRecord(record), null, 2);
}

/**
 * Reads a record back from its JSON text and checks all of it again.
 *
 * @param json - text that `serializeRecord` wrote, up to 5 million characters
 * @throws StillroomError WRONG_TYPE for text that is no JSON object, OUT_OF_RANGE for a version this release does not
 * know, and as `batchRecord`
 *
 * @example
 * ```ts
 * import { parseRecord } from 'stillroom/record';
 *
 * parseRecord('{ "version": 9 }'); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function parseRecord(json: string): BatchRecord {
  if (typeof json !== 'string') fail(json === undefined ? 'MISSING' : 'WRONG_TYPE', '', json, 'a record as JSON text');
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
  return answer(readRecord(value));
}
