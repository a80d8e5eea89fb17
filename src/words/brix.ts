/** The words `brix` and `targetBrix`: degrees Brix, grams of sugar in 100 g of solution, 0 to 100. */
import * as z from 'zod/mini';
import { fail } from '../errors/StillroomError';
import { number, reading } from '../quantity/fields';
import { type NumberLimits, numberEnds } from './limits';
import { word } from './word';

/** Limits of a field in degrees Brix. */
export interface BrixLimits extends NumberLimits {
  /** Whether readings above 0 and up to 1 are real here, as of a refractometer's zero; else they are questioned. */
  readonly small?: boolean;
}

/** Passes a value on, unless it looks like a share: 0.65 where 65 degrees Brix is meant. */
const notAShare = () =>
  reading<number, number>((given: unknown) => {
    if (typeof given === 'number' && given > 0 && given <= 1) {
      const asBrix = Number((given * 100).toPrecision(6));
      fail(
        'OUT_OF_RANGE',
        '',
        given,
        `degrees Brix, 0 to 100: did you mean the share ${given}, which is ${asBrix} degrees Brix?`,
      );
    }
    return given as number;
  });

const factory =
  (name: string, says: string) =>
  ({ small = false, ...limits }: BrixLimits = {}) => {
    const { low, high, above } = numberEnds(limits, 0, 100);
    const ends = `${above === true ? 'above' : 'from'} ${low} ${limits.below === undefined ? 'to' : 'and below'} ${high}`;
    const inner = number(`degrees Brix ${ends}`, { min: 0, max: 100, ...limits });
    return word(small ? inner : z.pipe(notAShare(), inner), {
      name,
      kind: 'number',
      says,
      unit: 'degrees Brix',
      ...numberEnds(limits, 0, 100),
    });
  };

/** Dissolved sugar in degrees Brix: grams in 100 g of the solution. */
export const brix = factory('brix', 'Dissolved sugar in degrees Brix: grams in 100 g of the solution.');
/** The degrees Brix to reach. */
export const targetBrix = factory('targetBrix', 'The degrees Brix to reach: grams of sugar in 100 g of the solution.');
