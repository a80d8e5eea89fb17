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
  reading,
  share,
  time,
  volume,
} from '../../quantity/fields';
import { jarName, readJar } from '../../words/jar';
import { method } from '../../words/method';
import { pack } from '../../words/pack';
import { learnedSchema } from './learned';
import { PANTRY } from './pantryItems';
import { aim, hoursOfWork, pectinWanted, worth } from './planFields';

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
    const held = entries.map(([jar, jars]) => [readJar(jar, '').name, jars] as const);
    if (new Set(held.map(([jar]) => jar)).size < held.length) fail('CONTRADICTION', '', given, 'each jar size once');
    return Object.fromEntries(held);
  });

const lot = fields({
  /** What you call it; the food's name when left out. */
  name: optional(name('a name for the lot, such as "the marked-down crate"')),
  /** The food: a fruit or vegetable. */
  produce: name('a fruit or vegetable, such as "peach"'),
  /** Weight as bought, above 0. */
  raw: mass(),
  /** Price of the whole lot. */
  price: optional(money()),
  /** Weight when prepared, as you weighed it: no more than `raw`. */
  ready: optional(mass()),
  /** Sweetness as you tasted it, degrees Brix, above 0 and below 100; no printed recipe here asks for it. */
  brix: optional(number('degrees Brix above 0 and below 100', { above: 0, below: 100 })),
});

/** As the `machine` of `energyNeeded` takes it. */
const machinePower = () => power({ max: { value: 100, unit: 'kW' } });

const kitchen = fields({
  /** Above -500 m and up to 5,000 m. */
  elevation: kitchenElevation(),
  /** Hours of work: of one day, up to 48 h, or of each of up to 7 days, up to 20 h. */
  hours: hoursOfWork(),
  /** Pairs of hands, 1 to 50; 1 when left out. */
  hands: optional(count('pairs of hands', 1, 50)),
  /** Burners of the stove, 1 to 50; 4 when left out. */
  burners: optional(count('burners', 1, 50)),
  /** Rated power of a burner; 2400 W when left out. */
  burnerPower: optional(power()),
  /** Pots, up to 20 kinds. */
  pots: optional(
    list(
      'pots',
      fields({
        /** What you call it; a canner of the same name is the same vessel. */
        name: optional(name('a name for the pot; a canner of the same name is the same vessel')),
        /** What it holds to the rim. */
        volume: volume(),
        /** How many of them, 1 to 20; 1 when left out. */
        count: optional(count('pots of this size', 1, 20)),
        /** How full it may be, above 0 to 1; two thirds when left out. */
        fill: optional(share({ above: 0 })),
      }),
      0,
      20,
    ),
  ),
  /** Canners, up to 10 kinds. */
  canners: optional(
    list(
      'canners',
      fields({
        /** What you call it. */
        name: optional(name('a name for the canner')),
        method: method(),
        holds: holds(),
        /** Water in it before the jars go in. */
        water: optional(volume()),
        /** How many of them, 1 to 10; 1 when left out. */
        count: optional(count('canners of this kind', 1, 10)),
      }),
      0,
      10,
    ),
  ),
  /** Jars in stock; not limited when left out. */
  jars: optional(
    list(
      'jars',
      fields({
        jar: jarName(),
        /** How many, 0 to 5,000. */
        count: count('jars in stock', 0, 5000),
        /** Price of one. */
        price: optional(money()),
        /** How often a jar is used in its life, 1 to 1,000; 10 when left out. */
        uses: optional(count('how often a jar is used in its life', 1, 1000)),
      }),
      0,
      20,
    ),
  ),
  /** New lids in stock; not limited when left out. */
  lids: optional(
    fields({
      /** How many, 0 to 5,000. */
      count: count('lids in stock', 0, 5000),
      /** Price of one. */
      price: optional(money()),
    }),
  ),
  /** Bags or boxes in stock; not limited when left out. */
  bags: optional(
    fields({
      /** How many, 0 to 5,000; not limited when left out. */
      count: optional(count('bags in stock', 0, 5000)),
      /** Price of one. */
      price: optional(money()),
    }),
  ),
  /** The dryer. */
  dryer: optional(
    fields({
      /** Its trays, 1 to 500. */
      trays: count('trays', 1, 500),
      /** Area of one tray. */
      trayArea: area(),
      /** The longest it may run, up to 168 h. */
      hours: optional(time({ max: { value: 168, unit: 'h' } })),
    }),
  ),
  /** The freeze-dryer. */
  freezeDryer: optional(
    fields({
      /** Its trays, 1 to 100. */
      trays: count('trays', 1, 100),
      /** Area of one tray. */
      trayArea: area(),
      /** The ice it holds. */
      ice: mass(),
      /** Loads on these days, 1 to 20; 1 when left out. */
      loads: optional(count('loads', 1, 20)),
    }),
  ),
  /** The freezer. */
  freezer: optional(
    fields({
      /** Free room. */
      room: volume(),
      /** All of it, which bounds what it freezes in a day; not limited when left out. */
      volume: optional(volume()),
    }),
  ),
  /** What recipes take, by weight; what is missing is in `ready` of the plan. */
  pantry: optional(
    list(
      'the pantry',
      fields({
        /** Which item. */
        item: choice('an item', PANTRY),
        /** How much of it you have. */
        amount: mass(),
        /** Price of that amount. */
        price: optional(money()),
      }),
      0,
      20,
    ),
  ),
  /** What energy costs, and what machines draw. */
  energy: optional(
    fields({
      /** What the stove burns; never left out where gas has a price. */
      stove: optional(choice('what the stove burns', ['gas', 'electric'])),
      /** Price of a kWh of electricity. */
      electricity: optional(money()),
      /** Price of a therm of gas. */
      gas: optional(money()),
      /** What the dryer draws, up to 100 kW, in place of an estimate by the water. */
      dryerPower: optional(machinePower()),
      /** What the freeze-dryer draws, up to 100 kW, in place of an estimate by the ice. */
      freezeDryerPower: optional(machinePower()),
    }),
  ),
  /** Price of an hour of one pair of hands. */
  wage: optional(money()),
});

const product = fields({
  /** What you call it. */
  name: optional(name('a name for the product')),
  /** What to make. */
  make: choice('what to make', MAKES),
  /** The food it is made from. */
  from: name('the fruit or vegetable it is made from'),
  /** Form of the food, such as `halves`, `sauce` or `juice`. */
  form: optional(name('a form, such as "halves", "sauce" or "juice"')),
  /** How it is packed: `hot` or `raw`. */
  pack: optional(pack()),
  jar: optional(jarName()),
  method: optional(method()),
  /** Strength of the syrup on canned fruit. */
  syrup: optional(choice('a syrup strength', ['very light', 'light', 'medium', 'heavy', 'very heavy'])),
  /** Sugar for each kg of fruit, 0 to 3 kg; a jam with a share of your own has no printed recipe and is left out. */
  sugarToFruit: optional(number('kg of sugar for each kg of fruit, 0 to 3', { min: 0, max: 3 })),
  /** Pectin of a jam: `none`, `powdered` or `liquid`, or true or false. */
  pectin: optional(pectinWanted()),
  /** Grams of sugar that a gram of the pectin sets, 1 to 1,000. */
  pectinGrade: optional(number('grams of sugar that a gram of the pectin sets, 1 to 1,000', { min: 1, max: 1000 })),
  /** Soluble solids at the end of a jam, above 0 and below 1. */
  finishSolids: optional(share({ above: 0, below: 1 })),
  /** Moisture to dry to, above 0 and below 1. */
  moisture: optional(share({ above: 0, below: 1 })),
  /** Thickness of pieces, or depth of a leather. */
  thickness: optional(length()),
  /** Weight of one bag, pack or jar of powder. */
  size: optional(mass()),
  /** Serving to price: a mass or a volume. */
  serving: optional(massOrVolume()),
  /** The fewest you must be able to count on, 0 to 5,000. */
  least: optional(count('the least to make', 0, 5000)),
  /** The most to get ready for, 0 to 5,000. */
  most: optional(count('the most to make', 0, 5000)),
  /** The smallest batch worth making, 1 to 5,000: none, or at least so many. */
  smallest: optional(count('the smallest batch worth making', 1, 5000)),
  /** What one unit is worth: money, or a plain number; the kg of fruit it uses when left out. */
  worth: optional(worth()),
  /** Your own minutes of preparing each raw pound, 0 to 120. */
  minutesPerPound: optional(number('minutes of work for each raw pound, 0 to 120', { min: 0, max: 120 })),
  /** Your own minutes of filling each jar or pack, 0 to 120. */
  minutesPerUnit: optional(number('minutes of work for each jar or pack, 0 to 120', { min: 0, max: 120 })),
  /** Your own time of one batch in the pot, up to 24 h. */
  cook: optional(time({ max: { value: 24, unit: 'h' } })),
});

export const planSchema = fields({
  /** Whether the scenario is invented; repeated in the plan. */
  invented: optional(flag('whether the scenario is invented')),
  /** What you have bought or picked: 1 to 60 lots. */
  lots: list('the lots', lot, 1, 60),
  /** What you have to work with. */
  kitchen,
  /** What you would like to make: 1 to 60 products. */
  products: list('the products', product, 1, 60),
  /** What to make the most of; `most worth` when left out. */
  aim: optional(aim()),
  /** Figures of your own batches, from `learnFromRecords`; they replace the published ranges. */
  learned: optional(learnedSchema),
});

export type PlanDayInput = Given<z.input<typeof planSchema>>;
export type PlanRequest = z.output<typeof planSchema>;
export type Lot = PlanRequest['lots'][number];
export type Kitchen = PlanRequest['kitchen'];
export type Wanted = PlanRequest['products'][number];
