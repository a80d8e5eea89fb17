import type * as z from 'zod/mini';
import type { Given } from '../common/given';
import { handOut } from '../common/handOut';
import { fail } from '../errors/StillroomError';
import {
  choice,
  count,
  fields,
  flag,
  kitchenElevation,
  length,
  list,
  mass,
  name,
  number,
  optional,
  pressure,
  ratio,
  readInput,
  reading,
  temperature,
  time,
  volume,
} from '../quantity/fields';
import { toDecimalIn } from '../quantity/scale';
import { isoDate } from './date';

/** The newest version of the record that this release writes and reads. */
export const RECORD_VERSION = 1;
const LONGEST_TEXT = 10_000;

/** A longer text: notes. */
const prose = (what: string) =>
  reading<string, string>((given) => {
    if (typeof given !== 'string') fail(given === undefined ? 'MISSING' : 'WRONG_TYPE', '', given, what);
    if (given.length > LONGEST_TEXT) fail('TOO_MUCH', '', given, `${what}, at most ${LONGEST_TEXT} characters`);
    return given;
  });

const minutes = (what: string) => number(`${what}: minutes, 0 to 10,000`, { min: 0, max: 10_000 });
const weighed = (what: string) => fields({ what: name(what), mass: mass({ min: { value: 0, unit: 'g' } }) });

const acidAdded = /* @__PURE__ */ fields({
  bottledLemonJuice: optional(volume()),
  citricAcid: optional(volume()),
  vinegar: optional(volume()),
  asInRecipe: optional(flag('whether all the acid of the tested recipe went in')),
});

const processUsed = /* @__PURE__ */ fields({
  food: name('the food as the process table names it, such as "peach"'),
  form: optional(name('a form, such as "halves"')),
  pack: optional(choice('the pack', ['hot', 'raw', 'not stated'])),
  jar: name('a jar, such as "pint"'),
  method: choice('the canner', ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam']),
  elevation: kitchenElevation(),
  minutes: minutes('process time'),
  pressure: optional(pressure({ min: { value: 0, unit: 'psi' } })),
  lowestPressure: optional(pressure({ min: { value: 0, unit: 'psi' } })),
  interrupted: optional(flag('whether the boil stopped, or steam or pressure was lost')),
  restarted: optional(flag('whether the whole time was started again after that')),
  vented: optional(time({ min: { value: 0, unit: 'min' } })),
  sterilizedJars: optional(flag('whether the empty jars were sterilized')),
  acid: optional(acidAdded),
});

/** Time on the clock and the pairs of hands at work in it. */
const workDone = /* @__PURE__ */ fields({
  prepare: optional(time()),
  fill: optional(time()),
  hands: optional(count('pairs of hands', 1, 50)),
});

const dryerLoad = /* @__PURE__ */ fields({
  time: time(),
  temperature: optional(temperature()),
  freshMoisture: optional(ratio({ above: 0, below: 1 })),
  endMoisture: optional(ratio({ below: 1 })),
});

const KEPT = ['shelf', 'refrigerator', 'freezer'] as const;
const AT = ['fill', 'canner', 'cooling', 'store', 'freezer', 'refrigerator', 'dryer', 'other'] as const;

const schema = /* @__PURE__ */ fields({
  version: optional(count('version of the record', RECORD_VERSION, RECORD_VERSION)),
  lot: name('a lot code'),
  date: isoDate('the day of making'),
  product: name('what was made, such as "peach halves in light syrup"'),
  place: optional(name('the kitchen')),
  recordedBy: optional(name('initials of who wrote it')),
  produce: list(
    'what was put up',
    fields({
      produce: name('a fruit or vegetable'),
      form: optional(name('a form, such as "halves"')),
      raw: mass(),
      ready: optional(mass()),
      trimmings: optional(mass({ min: { value: 0, unit: 'g' } })),
    }),
    1,
    100,
  ),
  added: optional(list('what was added: sugar, water, brine', weighed('what was added'), 0, 100)),
  made: optional(list('what came out, by weight', weighed('what came out'), 0, 100)),
  work: optional(workDone),
  process: optional(processUsed),
  dryer: optional(dryerLoad),
  keptIn: optional(choice('where it is kept', KEPT)),
  temperatures: optional(
    list(
      'temperatures read',
      fields({
        of: choice('what was measured', AT),
        temperature: temperature(),
        at: optional(isoDate('when it was read')),
      }),
      0,
      1000,
    ),
  ),
  ph: optional(
    list(
      'pH readings',
      fields({
        ph: number('a pH from 0 to 14', { min: 0, max: 14 }),
        by: choice('how it was measured', ['meter', 'paper', 'other']),
        at: optional(isoDate('when it was read')),
      }),
      0,
      1000,
    ),
  ),
  headspaces: optional(
    list('headspaces measured before processing', length({ min: { value: 0, unit: 'in' } }), 0, 1000),
  ),
  jars: optional(
    fields({
      filled: count('jars filled', 0),
      sealed: optional(count('jars that sealed', 0)),
      sealsTestedAfter: optional(time({ min: { value: 0, unit: 'h' } })),
    }),
  ),
  deviations: optional(
    list(
      'what went otherwise than planned',
      fields({
        what: name('what happened'),
        action: optional(name('what was done')),
        disposition: optional(name('where the food went')),
      }),
      0,
      100,
    ),
  ),
  distribution: optional(list('where it went', name('a place or a person'), 0, 1000)),
  notes: optional(prose('notes')),
});

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
 * @param input.lot - lot code (see `lotCode`)
 * @param input.date - day of making as ISO text, with or without the time: `2026-08-14`, `2026-08-14T15:30`
 * @param input.product - what was made
 * @param input.produce - 1 to 100 of `{ produce, form?, raw, ready?, trimmings? }`, weights; `ready` no more than `raw`;
 *   `form`: halves, slices ... (left out, that of the process where the record has one produce)
 * @param input - `added`, `made`: weights of what went in besides and of what came out, `{ what, mass }`
 * @param input.work - `{ prepare?, fill?, hands? }`: time on the clock for washing, peeling, cutting, and for filling or
 *   packing, at least one of them; and the pairs of hands at work, 1 if left out
 * @param input.process - `{ food, form?, pack?, jar, method, elevation, minutes, pressure?, lowestPressure?,
 *   interrupted?, restarted?, vented?, sterilizedJars?, acid? }`; `minutes` is the last unbroken run at the boil or at
 *   the pressure; acid is what went into each jar, or `{ asInRecipe: true }`
 * @param input.dryer - `{ time, temperature?, freshMoisture?, endMoisture? }`: hours of the load, and moistures on wet
 *   basis, 0 to 1 or percent, the fresh one higher
 * @param input.keptIn - `shelf`, `refrigerator` or `freezer`
 * @param input.temperatures - `{ of, temperature, at? }`, `of` being `fill`, `canner`, `cooling`, `store`, `freezer` ...
 * @param input.ph - `{ ph, by, at? }`, `by` being `meter`, `paper` or `other`
 * @param input.headspaces - as measured before processing
 * @param input.jars - `{ filled, sealed?, sealsTestedAfter? }`
 * @param input.deviations - `{ what, action?, disposition? }`
 * @param input - `place`, `recordedBy`, `distribution`, `notes`: texts
 * @returns the record, with `version: 1`; no basis, for every figure in it is your own. `form`, `work` and `dryer` came
 *   later and are optional: records of version 1 kept before them read as they are
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
  return handOut(readRecord(input));
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
  return handOut(readRecord(value));
}
