/** The fields of a batch record, each with what it takes. */
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
  reading,
  share,
  temperature,
  time,
  volume,
} from '../quantity/fields';
import { type JarInput, readJar } from '../words/jar';
import { method } from '../words/method';
import { pack } from '../words/pack';
import { isoDate } from './date';

/** The newest version of the record that this release writes and reads. */
export const RECORD_VERSION = 1;
const LONGEST_TEXT = 10_000;
const LONGEST_JAR = 120;

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
  pack: optional(pack()),
  jar: jarAsWritten(),
  method: method(),
  elevation: kitchenElevation(),
  minutes: minutes('process time'),
  pressure: optional(pressure({ min: { value: 0, unit: 'psi' } })),
  lowestPressure: optional(pressure({ min: { value: 0, unit: 'psi' } })),
  interrupted: optional(flag('whether the boil stopped, or steam or pressure was lost')),
  restarted: optional(flag('whether the whole time was started again after that')),
  vented: optional(time({ min: { value: 0, unit: 'min' } })),
  sterilizedJars: optional(flag('whether the empty jars were sterilized')),
  acid: optional(acidAdded),
  recipeFollowed: optional(flag('whether the batch was the recipe that the process is printed for')),
});

/** Time on the clock and the pairs of hands at work in it. */
const workDone = /* @__PURE__ */ fields({
  prepare: optional(time()),
  fill: optional(time()),
  hands: optional(count('pairs of hands', 1, 50)),
});

/** How meat was heated to kill its germs, before or after it dried. */
const meatHeat = /* @__PURE__ */ fields({
  heating: choice('when the meat itself was heated', ['before', 'after', 'none']),
  internalTemperature: optional(temperature()),
  oven: optional(fields({ temperature: temperature(), time: time() })),
  thickness: optional(length()),
});

const dryerLoad = /* @__PURE__ */ fields({
  time: time(),
  temperature: optional(temperature()),
  freshMoisture: optional(share({ above: 0, below: 1 })),
  endMoisture: optional(share({ below: 1 })),
  waterActivity: optional(number('a water activity from 0 to 1', { min: 0, max: 1 })),
  meat: optional(meatHeat),
});

const KEPT = ['shelf', 'refrigerator', 'freezer'] as const;
const AT = ['fill', 'canner', 'cooling', 'store', 'freezer', 'refrigerator', 'dryer', 'other'] as const;

export const recordSchema = /* @__PURE__ */ fields({
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
  useBy: optional(isoDate('the day to use it by')),
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
