/** Columns that several tables of this module share. */
import * as z from 'zod/mini';
import { positive } from '../sources/columns';

/** What comes off raw food: stems and ends, the core, the pit, or the skin as well; `with-tops` counts the tops. */
export const PREPARATIONS = ['trimmed', 'cored', 'pitted', 'peeled', 'with-tops'] as const;
/** What comes off raw food; `whole` is only dirt, stems and spoiled pieces. */
export type Preparation = 'whole' | (typeof PREPARATIONS)[number];

/** A percentage of a mass. */
export const percent = () => z.number().check(z.minimum(0), z.maximum(100));
/** Least and most, above zero. */
export const pair = () =>
  z.tuple([positive(), positive()]).check(z.refine(([least, most]) => least <= most, 'least before most'));
/** A food number of the food tables. */
export const ndb = () => z.string().check(z.regex(/^\d{5}$/));
