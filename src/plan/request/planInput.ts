import type * as z from 'zod/mini';
import type { Given } from '../../common/given';
import { form } from '../../foods/fields';
import {
  choice,
  count,
  fields,
  flag,
  length,
  list,
  mass,
  massOrVolume,
  name,
  number,
  optional,
  share,
  time,
} from '../../quantity/fields';
import { kitchenFields } from '../../recipes/kitchen';
import { kitchenOf } from '../../recipes/kitchenOf';
import { ownFields } from '../../recipes/ownProcess';
import { recipeField } from '../../recipes/recipe';
import { jarName } from '../../words/jar';
import { method } from '../../words/method';
import { pack } from '../../words/pack';
import { doneFields } from './doneFields';
import { learnedSchema } from './learned';
import { lotFields } from './lots';
import { aim, foodNames, hoursOfWork, makeWord, pectinWanted, worth } from './planFields';

const kitchen = kitchenOf({
  ...kitchenFields(),
  /** Hours of work: of one day, up to 48 h, or of each of up to 7 days, up to 20 h. */
  hours: hoursOfWork(),
});

const byTaste = () =>
  fields({
    /** How much: a mass, or a volume by the cup. */
    amount: massOrVolume(),
    /** The prepared food that it is for, a mass or a volume; each full pot when left out, the largest that you have. */
    per: optional(massOrVolume()),
  });

const product = fields({
  /** What you call it. */
  name: optional(name('a name for the product')),
  /** The recipe, by its id or name; left out, the first that fits `make`, `form` and the kitchen. */
  recipe: optional(recipeField()),
  /** Or what to make: a word of the recipes such as `sauce`, `leather` or `frozen`, or a wider one such as `jars` or `jam`. */
  make: optional(makeWord()),
  /**
   * A tested recipe of your own book: what it prints, as `ownProcess` takes it. Its foods are those of `from`; it stands
   * for `recipe` and `make`.
   */
  own: optional(
    fields({
      ...ownFields(),
      /** A recipe of these tables whose steps and work it has, by its id or name; the first of its form when left out. */
      like: optional(recipeField()),
    }),
  ),
  /** The food it is made from, or several that go in together; every lot that the recipe is for when left out. */
  from: optional(foodNames()),
  /** Form of the food, such as `halves`, `sauce` or `juice`. */
  form: optional(form()),
  /** How it is packed: `hot` or `raw`; hot where both are printed. */
  pack: optional(pack()),
  /** The jar: a size by name, a volume, or a measured jar; one of the kitchen's that the process is for when left out. */
  jar: optional(jarName()),
  /** Kind of canner; any of the kitchen's when left out. */
  method: optional(method()),
  /** Strength of the syrup on canned fruit. */
  syrup: optional(choice('a syrup strength', ['very light', 'light', 'medium', 'heavy', 'very heavy'])),
  /** Pectin of a jam: `none`, `powdered` or `liquid`, or true or false. */
  pectin: optional(pectinWanted()),
  /** Sugar by taste, where the recipe leaves it free: fruit in jars, puree, sauce, leather, frozen. */
  sugarToAdd: optional(byTaste()),
  /** Water by taste, where the recipe leaves it free: a fruit sauce, frozen fruit. */
  waterToAdd: optional(byTaste()),
  /** Brix to sweeten to, above 0 to 65, from the `brix` of the lots; where the recipe leaves sugar free. */
  sweetenTo: optional(number('degrees Brix above 0, to 65', { above: 0, max: 65 })),
  /** Sugar for each kg of fruit, 0 to 3 kg; no printed recipe has a share of your own, so such a jam is left out. */
  sugarToFruit: optional(number('kg of sugar for each kg of fruit, 0 to 3', { min: 0, max: 3 })),
  /** Moisture to dry to, above 0 and below 1; the recipe's when left out. */
  moisture: optional(share({ above: 0, below: 1 })),
  /** Thickness of pieces, or depth of a leather; the recipe's when left out. */
  thickness: optional(length()),
  /** Weight of one bag, pack or jar of powder. */
  packSize: optional(mass()),
  /** Serving to price: a mass or a volume. */
  serving: optional(massOrVolume()),
  /** The fewest you must be able to count on, 0 to 5,000. */
  least: optional(count('the least to make', 0, 5000)),
  /** The most to get ready for, 0 to 5,000. */
  most: optional(count('the most to make', 0, 5000)),
  /** The smallest batch worth making, 1 to 5,000: the plan makes none, or at least this many. */
  smallest: optional(count('the smallest batch worth making', 1, 5000)),
  /** Never make this: a recipe or a kind that the plan must not choose by itself. */
  never: optional(flag('whether the plan must leave it out')),
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
  lots: list('the lots', fields(lotFields()), 1, 60),
  /** What you have to work with. */
  kitchen,
  /** What you would like to make: up to 60 products; with none, or only what you never want, the plan chooses. */
  products: optional(list('the products', product, 0, 60)),
  /** What to make the most of; `most worth` when left out. */
  aim: optional(aim()),
  /** Whether to work out `limits` and `yields` too, which takes longer than the plan itself; no when left out. */
  oneMore: optional(flag('whether to work out what one more of each thing would add')),
  /** Figures of your own batches, from `learnFromRecords`; they replace the published ranges. */
  learned: optional(learnedSchema),
  ...doneFields(),
});

export type PlanDayInput = Given<z.input<typeof planSchema>>;
/** The request as it was read, with the products that are to be planned: those asked for, or those the plan chose. */
export type PlanRequest = Omit<z.output<typeof planSchema>, 'products' | 'kitchen'> & {
  readonly products: readonly Wanted[];
  readonly kitchen: Kitchen;
};
export type Lot = PlanRequest['lots'][number];
export type Kitchen = z.output<typeof planSchema>['kitchen'] & {
  /** Minute from the start at which the rest of the day begins; none for a whole day. */
  readonly now?: number;
};
export type Wanted = z.output<typeof product>;
