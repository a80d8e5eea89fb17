/** The fields of a batch record, each with what it takes. */
import { fail } from '../errors/StillroomError';
import { choice, fields, flag, kitchenElevation, list, name, optional, reading, share } from '../quantity/fields';
import { count } from '../words/count';
import { type JarInput, readJar } from '../words/jar';
import { length } from '../words/length';
import { mass } from '../words/mass';
import { method } from '../words/method';
import { minutes } from '../words/minutes';
import { pack } from '../words/pack';
import { pH } from '../words/pH';
import { pressure } from '../words/pressure';
import { raw } from '../words/raw';
import { ready } from '../words/ready';
import { temperature } from '../words/temperature';
import { time } from '../words/time';
import { trimmings } from '../words/trimmings';
import { volume } from '../words/volume';
import { waterActivity } from '../words/waterActivity';
import { isoDate } from './date';

/** The newest version of the record that this release writes and reads. */
export const RECORD_VERSION = 2;
/** The most batches of one name that a day may have. */
export const MOST_BATCHES = 999;
const LONGEST_TEXT = 10_000;
const LONGEST_JAR = 120;
const ZERO_G = { value: 0, unit: 'g' } as const;
const ZERO_PSI = { value: 0, unit: 'psi' } as const;

/** A longer text: notes. */
const prose = (what: string) =>
  reading<string, string>((given) => {
    if (typeof given !== 'string') fail(given === undefined ? 'MISSING' : 'WRONG_TYPE', '', given, what);
    if (given.length > LONGEST_TEXT) fail('TOO_MUCH', '', given, `${what}, at most ${LONGEST_TEXT} characters`);
    return given;
  });

/** The jar as it was written down: a record may name one that is in no table. */
const jarAsWritten = () =>
  reading<JarInput, JarInput>((given: unknown) => {
    if (typeof given !== 'string') readJar(given, '');
    else if (given.trim() === '' || given.length > LONGEST_JAR) readJar(given, '');
    return given as JarInput;
  });

const lot = /* @__PURE__ */ fields({
  /** The food, as you call it; reviews read it by any name of the pantry: `peach`, `peach halves`. */
  food: name('the name of a food'),
  /** Its form, as you call it: `halves`, `slices`, `sauce`. */
  form: optional(name('a form, such as "halves"')),
  /** Its mass as bought or picked, above zero. */
  raw: raw(),
  /** Its mass trimmed and cut, ready for the pot, tray or jar; no more than `raw`. */
  ready: optional(ready()),
  /** What was trimmed off; with `ready`, no more than `raw`. */
  trimmings: optional(trimmings({ min: ZERO_G })),
});

const weighed = (what: string) =>
  fields({
    /** What it is: `light syrup`, `jars`. */
    what: name(what),
    /** Its mass, zero or more. */
    mass: mass({ min: ZERO_G }),
  });

const acidAdded = /* @__PURE__ */ fields({
  /** Bottled lemon juice in each jar, above zero. */
  bottledLemonJuice: optional(volume()),
  /** Citric acid in each jar, above zero. */
  citricAcid: optional(volume()),
  /** Vinegar of 5 % acidity in each jar, above zero. */
  vinegar: optional(volume()),
  /** `true` where all the acid of the tested recipe went in. */
  asInRecipe: optional(flag('whether all the acid of the tested recipe went in')),
});

const processUsed = /* @__PURE__ */ fields({
  /** The food whose process you ran: `peach`, `applesauce`. */
  food: name('the food whose process you ran, such as "peach"'),
  /** Its form: `halves`, `sauce`. */
  form: optional(name('a form, such as "halves"')),
  /** How the jars were packed: `hot` or `raw`. */
  pack: optional(pack()),
  /** The jar: a size, a volume or a measured jar; a name that is in no table is kept as you wrote it. */
  jar: jarAsWritten(),
  /** The canner: `boiling-water`, `atmospheric-steam`, `dial-gauge`, `weighted-gauge`. */
  method: method(),
  /** Elevation of the kitchen, above -500 m and up to 5,000 m. */
  elevation: kitchenElevation(),
  /** The time you processed, 0 to 10,000 min. */
  minutes: minutes(),
  /** The pressure you held, zero or more. */
  pressure: optional(pressure({ min: ZERO_PSI })),
  /** The lowest pressure you saw, zero or more. */
  lowestPressure: optional(pressure({ min: ZERO_PSI })),
  /** `true` where the boil stopped, or steam or pressure was lost. */
  interrupted: optional(flag('whether the boil stopped, or steam or pressure was lost')),
  /** `true` where you then started the whole time again. */
  restarted: optional(flag('whether the whole time was started again after that')),
  /** How long a pressure canner vented, zero or more. */
  vented: optional(time({ min: { value: 0, unit: 'min' } })),
  /** Whether the empty jars were sterilized. */
  sterilizedJars: optional(flag('whether the empty jars were sterilized')),
  /** The acid you added. */
  acid: optional(acidAdded),
  /** `true` where the batch was the recipe that the process is printed for. */
  recipeFollowed: optional(flag('whether the batch was the recipe that the process is printed for')),
});

/** Time on the clock and the pairs of hands at work in it. */
const workDone = /* @__PURE__ */ fields({
  /** Time on the clock to wash, trim and cut. */
  preparing: optional(time()),
  /** Time on the clock to fill jars, bags or trays. */
  filling: optional(time()),
  /** Pairs of hands at work, 1 to 50; 1 if not given. */
  hands: optional(count('pairs of hands', 1, 50)),
});

/** How meat was heated to kill its germs, before or after it dried. */
const meatHeat = /* @__PURE__ */ fields({
  /** When you heated the meat itself: `before` or `after` it dried, or `none`. */
  heating: choice('when the meat itself was heated', ['before', 'after', 'none']),
  /** What the meat reached inside. */
  internalTemperature: optional(temperature()),
  /** The oven after drying. */
  oven: optional(
    fields({
      /** Of the oven. */
      temperature: temperature(),
      /** How long the meat was in it. */
      time: time(),
    }),
  ),
  /** Of the strips. */
  thickness: optional(length()),
});

const dryerLoad = /* @__PURE__ */ fields({
  /** How long it dried. */
  time: time(),
  /** Of the air in the dryer. */
  temperature: optional(temperature()),
  /** Moisture before drying, a share of the whole mass, between 0 and 1. */
  freshMoisture: optional(share({ above: 0, below: 1 })),
  /** Moisture after drying, a share of the whole mass, 0 to below 1. */
  endMoisture: optional(share({ below: 1 })),
  /** Water activity after drying, 0 to 1. */
  waterActivity: optional(waterActivity()),
  /** For meat: how it was heated. */
  meat: optional(meatHeat),
});

const KEPT = ['shelf', 'refrigerator', 'freezer'] as const;
const AT = ['fill', 'canner', 'cooling', 'store', 'freezer', 'refrigerator', 'dryer', 'other'] as const;

const temperatureRead = /* @__PURE__ */ fields({
  /** Where you read it: `fill`, `canner`, `cooling`, `store`, `freezer`, `refrigerator`, `dryer` or `other`. */
  where: choice('where it was read', AT),
  /** What you read. */
  temperature: temperature(),
  /** When you read it, as ISO text. */
  at: optional(isoDate('when it was read')),
});
const pHReading = /* @__PURE__ */ fields({
  /** What you read, 0 to 14. */
  pH: pH(),
  /** How you measured it: `meter`, `paper` or `other`. */
  by: choice('how it was measured', ['meter', 'paper', 'other']),
  /** When you read it, as ISO text. */
  at: optional(isoDate('when it was read')),
});
const departure = /* @__PURE__ */ fields({
  /** What happened. */
  what: name('what happened'),
  /** What you did about it. */
  whatWasDone: optional(name('what was done')),
  /** Where the food went. */
  disposition: optional(name('where the food went')),
});

export const recordSchema = /* @__PURE__ */ fields({
  /** Version of the record, 2; set for you. */
  version: optional(count('version of the record', RECORD_VERSION, RECORD_VERSION)),
  /** The lot code; made from kitchen, name, day and batch if not given: `PEACH-HALVES-2026-226-1`. */
  lotCode: optional(name('a lot code')),
  /** For the lot code: number of the batch of that name on that day, 1 to 999; 1 if not given. */
  batchOfDay: optional(count('the number of the batch on that day', 1, MOST_BATCHES)),
  /** Day of making as ISO text. */
  date: isoDate('the day of making'),
  /** What you made, in your words: `peach halves in light syrup`. */
  name: name('what was made, such as "peach halves in light syrup"'),
  /** The kitchen. */
  place: optional(name('the kitchen')),
  /** Initials of the person who wrote it. */
  recordedBy: optional(name('initials of who wrote it')),
  /** The foods that went in, 1 to 100. */
  lots: list('the foods that went in', lot, 1, 100),
  /** What else went in (sugar, water, syrup, brine), up to 100. */
  additions: optional(list('what else went in: sugar, water, brine', weighed('what went in'), 0, 100)),
  /** What came out, up to 100. */
  output: optional(list('what came out', weighed('what came out'), 0, 100)),
  /** The work it took. */
  work: optional(workDone),
  /** The heat process you ran. */
  process: optional(processUsed),
  /** The dryer load. */
  dryer: optional(dryerLoad),
  /** Where it is kept: `shelf`, `refrigerator` or `freezer`. */
  keptIn: optional(choice('where it is kept', KEPT)),
  /** The day to use it by, as ISO text; not before `date`. */
  useBy: optional(isoDate('the day to use it by')),
  /** Temperatures you read, up to 1,000. */
  temperatures: optional(list('temperatures read', temperatureRead, 0, 1000)),
  /** pH you measured, up to 1,000. */
  pHReadings: optional(list('pH readings', pHReading, 0, 1000)),
  /** Headspaces you measured before processing, up to 1,000, zero or more. */
  headspaces: optional(
    list('headspaces measured before processing', length({ min: { value: 0, unit: 'in' } }), 0, 1000),
  ),
  /** How many jars you filled. */
  jarsFilled: optional(count('jars filled', 0)),
  /** How many of them sealed; no more than `jarsFilled`. */
  jarsSealed: optional(count('jars that sealed', 0)),
  /** How long after processing you tested the seals, zero or more. */
  sealsTestedAfter: optional(time({ min: { value: 0, unit: 'h' } })),
  /** What went differently from the plan, up to 100. */
  departures: optional(list('what went differently from the plan', departure, 0, 100)),
  /** Where the food went: places or people, up to 1,000. */
  distribution: optional(list('where it went', name('a place or a person'), 0, 1000)),
  /** Anything else, up to 10,000 characters. */
  notes: optional(prose('notes')),
});
