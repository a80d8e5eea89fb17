/** The kitchen of a question: what there is to work with. */
import * as z from 'zod/mini';
import { fail } from '../errors/StillroomError';
import {
  area,
  choice,
  count,
  fields,
  flag,
  kitchenElevation,
  list,
  mass,
  money,
  name,
  optional,
  power,
  reading,
  share,
  time,
  volume,
} from '../quantity/fields';
import { jarName, readJarName } from '../words/jar';
import { method } from '../words/method';
import { relativeHumidity } from '../words/shares';
import { timeOfDay } from '../words/timeOfDay';
import { breakFields, busyUntil, gasPer, hands } from './kitchenFields';
import { PANTRY } from './pantryItems';

/** What is asked for where the jars of one load are not said. */
export const HOLDS = 'how many jars of each size one load holds, such as { "pint": 9, "quart": 7 }';
/** How many jars of each size one canner load holds. */
export const holds = () =>
  reading<Readonly<Record<string, number>>, Readonly<Record<string, number>>>((given) => {
    if (given === undefined) fail('MISSING', '', given, HOLDS);
    if (typeof given !== 'object' || given === null || Array.isArray(given)) fail('WRONG_TYPE', '', given, HOLDS);
    const entries = Object.entries(given);
    if (entries.length === 0 || entries.length > 12) fail('OUT_OF_RANGE', '', given, HOLDS);
    for (const [jar, jars] of entries) {
      if (!Number.isInteger(jars) || jars < 1 || jars > 100)
        fail('OUT_OF_RANGE', jar.slice(0, 40), jars, 'a whole number of jars from 1 to 100');
    }
    const held = entries.map(([jar, jars]) => [readJarName(jar, ''), jars] as const);
    if (new Set(held.map(([jar]) => jar)).size < held.length) fail('CONTRADICTION', '', given, 'each jar size once');
    return Object.fromEntries(held);
  });

/** As the `machine` of `energyNeeded` takes it. */
const machinePower = () => power({ max: { value: 100, unit: 'kW' } });

/** One kind of canner. */
export const cannerFields = () => ({
  /** What you call it. */
  name: optional(name('a name for the canner')),
  /** Kind of canner. */
  method: method(),
  /** Jars of each size that one load holds, such as `{ pint: 9, quart: 7 }`. */
  holds: holds(),
  /** Water in it before the jars go in. */
  waterVolume: optional(volume()),
  /** How many of them, 1 to 10; 1 when left out. */
  count: optional(count('canners of this kind', 1, 10)),
  /** When it is free on the first day: a time of day, or a time from the start such as `6 h`; at the start when left out. */
  busyUntil: optional(busyUntil()),
});

/** One size of pot. */
const potFields = () => ({
  /** What you call it; a canner of the same name is the same vessel. */
  name: optional(name('a name for the pot; a canner of the same name is the same vessel')),
  /** What it holds to the rim. */
  volume: volume(),
  /** How many of them, 1 to 20; 1 when left out. */
  count: optional(count('pots of this size', 1, 20)),
  /** How full it may be with food that does not foam, above 0 to 1; by what is made when left out, mostly two thirds. */
  fill: optional(share({ above: 0 })),
  /** How full it may be with food that foams, such as jam, above 0 to 1; by what is made when left out. */
  foaming: optional(share({ above: 0 })),
  /** Whether it has a rack that jars stand on: then it is a boiling-water canner as well. */
  rack: optional(flag('whether the pot has a rack that jars stand on')),
  /** With a rack: jars of each size that one load holds, such as `{ pint: 7 }`. */
  holds: optional(holds()),
});

/** One size of pot, whose rack and load go together; `loads` says whether the load of a rack must be known. */
function pot(loads: boolean) {
  const schema = fields(potFields());
  type Pot = z.output<typeof schema>;
  const whole = reading<Pot, Pot>((given) => {
    const { rack = false, holds: load, fill, foaming } = given as Pot;
    if (rack && load === undefined && loads) fail('MISSING', 'holds', load, HOLDS);
    if (!rack && load !== undefined)
      fail('MISSING', 'rack', (given as Pot).rack, '`rack: true` to go with it: jars stand on a rack in the pot');
    if (fill !== undefined && foaming !== undefined && foaming > fill)
      fail('CONTRADICTION', 'foaming', foaming, `at most ${fill}, as full as with food that does not foam`);
    return given as Pot;
  });
  return z.pipe(schema, whole);
}

/** Jars of one size. */
export const jarStockFields = () => ({
  /** The jar: a size by name, a volume, or a measured jar. */
  jar: jarName(),
  /** How many, 0 to 5,000. */
  count: count('jars in stock', 0, 5000),
  /** Price of one. */
  price: optional(money()),
  /** How often a jar is used in its life, 1 to 1,000; 10 when left out. */
  lifetimeUses: optional(count('how often a jar is used in its life', 1, 1000)),
});

const machineFields = () => ({
  /** The dryer. */
  dryer: optional(
    fields({
      /** Its trays, 1 to 500. */
      trays: count('trays', 1, 500),
      /** Area of one tray. */
      trayArea: area(),
      /** The longest it may run, up to 168 h. */
      hours: optional(time({ max: { value: 168, unit: 'h' } })),
      /** When its trays are free: a time of day, or a time from the start such as `6 h`; at the start when left out. */
      busyUntil: optional(busyUntil()),
      /** Relative humidity of the air in the room, 0 and below 1. */
      relativeHumidity: optional(relativeHumidity({ below: 1 })),
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
      /** The most loads on these days, 1 to 20; as many as their hours leave time for when left out. */
      loads: optional(count('loads', 1, 20)),
      /** When it is free: a time of day, or a time from the start such as `6 h`; at the start when left out. */
      busyUntil: optional(busyUntil()),
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
});

const costFields = () => ({
  /** What energy costs, and what machines draw. */
  utilities: optional(
    fields({
      /** What the stove burns; never left out where gas has a price. */
      stove: optional(choice('what the stove burns', ['gas', 'propane', 'electric'])),
      /** Price of a kWh of electricity. */
      electricity: optional(money()),
      /** Price of as much gas or propane as `gasPer` says. */
      gas: optional(money()),
      /** What that price is for; 1 therm when left out. Propane may be by the pound, kg, gallon or liter. */
      gasPer: optional(gasPer()),
      /** What the dryer draws, up to 100 kW, in place of an estimate by the water. */
      dryerPower: optional(machinePower()),
      /** What the freeze-dryer draws, up to 100 kW, in place of an estimate by the ice. */
      freezeDryerPower: optional(machinePower()),
    }),
  ),
  /** Price of an hour of one pair of hands. */
  wage: optional(money()),
});

/**
 * What a kitchen has, for every question that asks for one; the hours of work apart. `loads` says whether what a pot with a
 * rack holds must be known.
 */
export const kitchenFields = (loads = true) => ({
  /** Above -500 m and up to 5,000 m. */
  elevation: kitchenElevation(),
  /** Time of day that the work begins; 8:00 when left out. */
  start: optional(timeOfDay()),
  /** Rests on every day, up to 8: when, and for how long. */
  breaks: optional(list('breaks', fields(breakFields()), 0, 8)),
  /** Pairs of hands, 1 to 50, or the name of each person; 1 when left out. */
  hands: optional(hands()),
  /** Burners of the stove, 1 to 50; 4 when left out. */
  burners: optional(count('burners', 1, 50)),
  /** Rated power of a burner; 2400 W when left out. */
  burnerPower: optional(power()),
  /** Pots, up to 20 kinds. */
  pots: optional(list('pots', pot(loads), 0, 20)),
  /** Canners, up to 10 kinds. */
  canners: optional(list('canners', fields(cannerFields()), 0, 10)),
  /** Jars in stock; not limited when left out. */
  jars: optional(list('jars', fields(jarStockFields()), 0, 20)),
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
  ...machineFields(),
  /** What recipes take, by weight; what you lack is in `haveReady` of the plan. */
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
  ...costFields(),
});
