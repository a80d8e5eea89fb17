import type * as z from 'zod/mini';
import type { Given } from '../../common/given';
import {
  choice,
  count,
  fields,
  flag,
  length,
  list,
  mass,
  massOrVolume,
  money,
  name,
  number,
  optional,
  share,
  time,
} from '../../quantity/fields';
import { kitchenFields } from '../../recipes/kitchen';
import { kitchenOf } from '../../recipes/kitchenOf';
import { jarName } from '../../words/jar';
import { method } from '../../words/method';
import { pack } from '../../words/pack';
import { learnedSchema } from './learned';
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

const lot = fields({
  /** What you call it; the food's name when left out. */
  name: optional(name('a name for the lot, such as "the marked-down crate"')),
  /** The food, by any name it goes by. */
  food: name('the name of a food, such as "peach"'),
  /** Weight as bought, above 0. */
  raw: mass(),
  /** Price of the whole lot. */
  price: optional(money()),
  /** Weight when prepared, as you weighed it: no more than `raw`. */
  ready: optional(mass()),
  /** Sweetness as you tasted it, degrees Brix, above 0 and below 100; no printed recipe here asks for it. */
  brix: optional(number('degrees Brix above 0 and below 100', { above: 0, below: 100 })),
});

const kitchen = kitchenOf({
  ...kitchenFields(),
  /** Hours of work: of one day, up to 48 h, or of each of up to 7 days, up to 20 h. */
  hours: hoursOfWork(),
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
  /** The jar: a size by name, a volume, or a measured jar. */
  jar: optional(jarName()),
  /** Kind of canner; any of the kitchen's when left out. */
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
  /** The smallest batch worth making, 1 to 5,000: the plan makes none, or at least this many. */
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
