import type * as z from 'zod/mini';
import type { Given } from '../../common/given';
import { fail } from '../../errors/StillroomError';
import {
  area,
  choice,
  count,
  fields,
  flag,
  kitchenElevation,
  length,
  list,
  mass,
  massOrVolume,
  money,
  name,
  number,
  optional,
  power,
  ratio,
  readInput,
  reading,
  time,
  volume,
} from '../../quantity/fields';
import { parseMoney } from '../../quantity/money';
import { parseQuantity } from '../../quantity/parseQuantity';
import { valueIn } from '../../quantity/scale';
import type { MoneyInput, Quantity, TimeInput } from '../../quantity/types';
import { learnedSchema } from './learned';

/** What a lot can become. */
export const MAKES = [
  'jars', // pieces, sauce, juice, butter ... with a tested heat process
  'jam',
  'dried',
  'freeze-dried',
  'leather',
  'frozen',
  'powder', // from trimmings
  'vinegar', // from trimmings
  'jelly stock', // from trimmings
] as const;
export type Make = (typeof MAKES)[number];
/** Made of what falls off when other products are made. */
export const OF_TRIMMINGS: readonly Make[] = ['powder', 'vinegar', 'jelly stock'];

const holds = () =>
  reading<Readonly<Record<string, number>>, Readonly<Record<string, number>>>((given) => {
    const what = 'how many jars of each size one load holds, such as { "pint": 9, "quart": 7 }';
    if (given === undefined) fail('MISSING', '', given, what);
    if (typeof given !== 'object' || given === null || Array.isArray(given)) fail('WRONG_TYPE', '', given, what);
    const entries = Object.entries(given);
    if (entries.length === 0 || entries.length > 12) fail('OUT_OF_RANGE', '', given, what);
    for (const [jar, jars] of entries) {
      if (!Number.isInteger(jars) || jars < 1 || jars > 100)
        fail('OUT_OF_RANGE', jar.slice(0, 40), jars, 'a whole number of jars from 1 to 100');
    }
    return Object.fromEntries(entries) as Readonly<Record<string, number>>;
  });

/** The most hours of one day, and of each of several, whose breaks are part of the plan. */
const LONGEST_DAY = { one: 48, several: 20 };
const MOST_DAYS = 7;

/** The hours of work: of one day, or of each of several days, the second starting 24 h after the first. */
const hoursOfWork = () =>
  reading<TimeInput | readonly TimeInput[], Quantity<'time'>[]>((given) => {
    const read = (day: unknown, path: string, most: number) => {
      const hours = parseQuantity(day, 'time', path);
      const value = valueIn(hours, 'h');
      if (!(value > 0 && value <= most)) fail('OUT_OF_RANGE', path, day, `a value above 0 h and at most ${most} h`);
      return hours;
    };
    if (!Array.isArray(given)) return [read(given, '', LONGEST_DAY.one)];
    if (given.length === 0 || given.length > MOST_DAYS)
      fail(given.length === 0 ? 'OUT_OF_RANGE' : 'TOO_MUCH', '', given, `the hours of 1 to ${MOST_DAYS} days`);
    return given.map((day, index) => read(day, `[${index}]`, LONGEST_DAY.several));
  });

/** Worth of one unit: money, or a plain number of points. */
const worth = () =>
  reading<number | MoneyInput, { value: number; currency?: string }>((given) => {
    if (typeof given === 'number') {
      if (!(given >= 0 && given <= 1e9)) fail('OUT_OF_RANGE', '', given, 'a worth of 0 to 10^9');
      return { value: given };
    }
    const { value, unit } = parseMoney(given);
    return { value, currency: unit };
  });

const lot = fields({
  name: optional(name('a name for the lot, such as "the marked-down crate"')),
  produce: name('a fruit or vegetable, such as "peach"'),
  raw: mass(),
  price: optional(money()),
  ready: optional(mass()),
  brix: optional(number('degrees Brix above 0 and below 100', { above: 0, below: 100 })),
});

/** What a recipe takes from the pantry, by weight. */
export const PANTRY = [
  'sugar',
  'brown sugar',
  'bottled lemon juice',
  'citric acid',
  'vinegar', // of 5 percent acidity
  'pectin', // powdered
  'liquid pectin',
  'starch for canning',
  'apple juice',
  'cider',
] as const;
export type PantryItem = (typeof PANTRY)[number];

/** As `applianceEnergy` takes it. */
const machinePower = () => power({ max: { value: 100, unit: 'kW' } });

const kitchen = fields({
  elevation: kitchenElevation(),
  hours: hoursOfWork(),
  hands: optional(count('pairs of hands', 1, 50)),
  burners: optional(count('burners', 1, 50)),
  burnerPower: optional(power()),
  pots: optional(
    list(
      'pots',
      fields({
        name: optional(name('a name for the pot; a canner of the same name is the same vessel')),
        volume: volume(),
        count: optional(count('pots of this size', 1, 20)),
        fill: optional(ratio({ above: 0 })),
      }),
      0,
      20,
    ),
  ),
  canners: optional(
    list(
      'canners',
      fields({
        name: optional(name('a name for the canner')),
        method: choice('a canning method', ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam']),
        holds: holds(),
        water: optional(volume()),
        count: optional(count('canners of this kind', 1, 10)),
      }),
      0,
      10,
    ),
  ),
  jars: optional(
    list(
      'jars',
      fields({
        jar: name('a jar size, such as "pint"'),
        count: count('jars in stock', 0, 5000),
        price: optional(money()),
        uses: optional(count('how often a jar is used in its life', 1, 1000)),
      }),
      0,
      20,
    ),
  ),
  lids: optional(fields({ count: count('lids in stock', 0, 5000), price: optional(money()) })),
  bags: optional(fields({ count: optional(count('bags in stock', 0, 5000)), price: optional(money()) })),
  dryer: optional(
    fields({
      trays: count('trays', 1, 500),
      trayArea: area(),
      hours: optional(time({ max: { value: 168, unit: 'h' } })),
    }),
  ),
  freezeDryer: optional(
    fields({ trays: count('trays', 1, 100), trayArea: area(), ice: mass(), loads: optional(count('loads', 1, 20)) }),
  ),
  freezer: optional(fields({ room: volume(), volume: optional(volume()) })),
  pantry: optional(
    list(
      'the pantry',
      fields({
        item: choice('an item', PANTRY),
        amount: mass(),
        price: optional(money()),
      }),
      0,
      20,
    ),
  ),
  energy: optional(
    fields({
      stove: optional(choice('what the stove burns', ['gas', 'electric'])),
      electricity: optional(money()), // a kWh
      gas: optional(money()), // a therm
      dryerPower: optional(machinePower()),
      freezeDryerPower: optional(machinePower()),
    }),
  ),
  wage: optional(money()), // an hour of one pair of hands
});

/** The pectin of a jam: a word, or whether any is added. */
const pectinWanted = () =>
  reading<boolean | PectinWord, boolean | PectinWord>((given) => {
    if (typeof given === 'boolean') return given;
    const expected = `whether pectin is added to the jam: true, false, or one of ${PECTINS.join(', ')}`;
    if (typeof given !== 'string') fail('WRONG_TYPE', '', given, expected);
    return PECTINS.find((word) => word === given.trim().toLowerCase()) ?? fail('UNKNOWN_NAME', '', given, expected);
  });
const PECTINS = ['none', 'powdered', 'liquid'] as const;
export type PectinWord = (typeof PECTINS)[number];

const product = fields({
  name: optional(name('a name for the product')),
  make: choice('what to make', MAKES),
  from: name('the fruit or vegetable it is made from'),
  form: optional(name('a form, such as "halves", "sauce" or "juice"')),
  pack: optional(choice('a pack', ['hot', 'raw'])),
  jar: optional(name('a jar size, such as "pint"')),
  method: optional(choice('a canning method', ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam'])),
  syrup: optional(choice('a syrup strength', ['very light', 'light', 'medium', 'heavy', 'very heavy'])),
  sugarToFruit: optional(number('kg of sugar for each kg of fruit, 0 to 3', { min: 0, max: 3 })),
  pectin: optional(pectinWanted()),
  pectinGrade: optional(number('grams of sugar that a gram of the pectin sets, 1 to 1,000', { min: 1, max: 1000 })),
  finishSolids: optional(ratio({ above: 0, below: 1 })),
  moisture: optional(ratio({ above: 0, below: 1 })),
  thickness: optional(length()),
  size: optional(mass()),
  serving: optional(massOrVolume()),
  least: optional(count('the least to make', 0, 5000)),
  most: optional(count('the most to make', 0, 5000)),
  smallest: optional(count('the smallest batch worth making', 1, 5000)),
  worth: optional(worth()),
  minutesPerPound: optional(number('minutes of work for each raw pound, 0 to 120', { min: 0, max: 120 })),
  minutesPerUnit: optional(number('minutes of work for each jar or pack, 0 to 120', { min: 0, max: 120 })),
  cook: optional(time({ max: { value: 24, unit: 'h' } })),
});

/** What a plan can make the most of, in a word. */
export const AIMS = ['most worth', 'least waste', 'fewest hours', 'least cost'] as const;
export type AimWord = (typeof AIMS)[number];

const weight = () => optional(number('a weight of 0 to 1,000,000', { min: 0, max: 1e6 }));
/** Or by weights: for each unit of worth and kg used, and against each unit of money and hour of hands. */
const weights = fields({ worth: weight(), waste: weight(), cost: weight(), hours: weight() });
export type AimWeights = z.output<typeof weights>;

/** A word or weights; the error tells which fields are wrong in the one that was meant. */
const aim = () =>
  reading<AimWord | z.input<typeof weights>, AimWord | AimWeights>((given) =>
    typeof given === 'object' && given !== null ? readInput(weights, given) : readWord(given),
  );
function readWord(given: unknown): AimWord {
  const expected = `an aim: ${AIMS.join(', ')}, or weights such as { worth: 1, hours: 5 }`;
  if (typeof given !== 'string') fail('WRONG_TYPE', '', given, expected);
  return AIMS.find((word) => word === given.trim().toLowerCase()) ?? fail('UNKNOWN_NAME', '', given, expected);
}

export const planSchema = fields({
  invented: optional(flag('whether the scenario is invented')),
  lots: list('the lots', lot, 1, 60),
  kitchen,
  products: list('the products', product, 1, 60),
  aim: optional(aim()),
  learned: optional(learnedSchema),
});

export type PlanDayInput = Given<z.input<typeof planSchema>>;
export type PlanRequest = z.output<typeof planSchema>;
export type Lot = PlanRequest['lots'][number];
export type Kitchen = PlanRequest['kitchen'];
export type Wanted = PlanRequest['products'][number];
