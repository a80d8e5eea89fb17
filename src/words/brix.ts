/** The words `brix` and `targetBrix`: degrees Brix, grams of sugar in 100 g of solution, 0 to 100. */
import * as z from 'zod/mini';
import { fail } from '../errors/StillroomError';
import { amountOf, numberOf } from '../quantity/amount';
import { number, reading } from '../quantity/fields';
import { type NumberLimits, numberEnds } from './limits';
import { word } from './word';

/** Degrees Brix: a number, or with the unit written out, as `"0.5 Brix"` has to be. */
export type BrixInput = number | `${number} Brix`;

const UNIT = ' Brix';

/** Reads degrees Brix. A bare number that looks like a share is asked about: 0.65 where 65 degrees Brix is meant. */
const degrees = () =>
  reading<BrixInput, number>((given: unknown) => {
    if (typeof given === 'string' && given.endsWith(UNIT)) {
      const amount = amountOf(given.slice(0, -UNIT.length));
      if (amount?.point !== undefined) return numberOf(amount.point);
    }
    if (typeof given === 'number' && given > 0 && given <= 1) {
      const asBrix = Number((given * 100).toPrecision(6));
      fail(
        'OUT_OF_RANGE',
        '',
        given,
        `degrees Brix, 0 to 100: did you mean the share ${given}, which is ${asBrix} degrees Brix? If not, write "${given}${UNIT}"`,
      );
    }
    return given as number;
  });

const factory =
  (name: string, says: string) =>
  (limits: NumberLimits = {}) => {
    const { low, high, above } = numberEnds(limits, 0, 100);
    const ends = `${above === true ? 'above' : 'from'} ${low} ${limits.below === undefined ? 'to' : 'and below'} ${high}`;
    return word(z.pipe(degrees(), number(`degrees Brix ${ends}`, { min: 0, max: 100, ...limits })), {
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
