/** What a question says of the kitchen, as far as it decides what can be made in it. */
import type * as z from 'zod/mini';
import { area, count, fields, kitchenElevation, list, mass, name, optional, volume } from '../../quantity/fields';
import { jar } from '../../words/jar';
import { method } from '../../words/method';

/** The kitchen of a question. What is left out is taken as there; an empty list says that there is none. */
export const kitchenSchema = () =>
  fields({
    /** Above -500 m and up to 5,000 m. */
    elevation: kitchenElevation(),
    /** Canners, up to 10 kinds. */
    canners: optional(
      list(
        'canners',
        fields({
          /** What you call it. */
          name: optional(name('a name for the canner')),
          /** Its kind. */
          method: method(),
        }),
        0,
        10,
      ),
    ),
    /** Jars, up to 20 sizes. */
    jars: optional(
      list(
        'jars',
        fields({
          /** Its size: by name, by volume, or measured. */
          jar: jar(),
          /** How many, 0 to 5,000. */
          count: optional(count('jars in stock', 0, 5000)),
        }),
        0,
        20,
      ),
    ),
    /** Pots, up to 20 kinds. */
    pots: optional(
      list(
        'pots',
        fields({
          /** What it holds to the rim. */
          volume: volume(),
        }),
        0,
        20,
      ),
    ),
    /** The dryer. */
    dryer: optional(
      fields({
        /** Its trays, 1 to 500. */
        trays: count('trays', 1, 500),
        /** Area of one tray. */
        trayArea: area(),
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
        ice: optional(mass()),
      }),
    ),
    /** The freezer. */
    freezer: optional(
      fields({
        /** Free room. */
        room: volume(),
      }),
    ),
    /** What recipes take: names of foods in the cupboard. Left out, nothing is said to be lacking. */
    pantry: optional(
      list(
        'the pantry',
        fields({
          /** Which item. */
          item: name('an item, such as "sugar"'),
          /** How much of it you have. */
          amount: optional(mass()),
        }),
        0,
        100,
      ),
    ),
  });
export type WaysKitchen = z.output<ReturnType<typeof kitchenSchema>>;
