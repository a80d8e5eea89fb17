import * as z from 'zod/mini';
import remakeJson from '../../data/sugar/remake-jelly.json';
import { answer } from '../common/answer';
import { choice, fields, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { id, positive, type RowOf, sourcedColumns } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { volume } from '../words/volume';
import { sugarCaution } from './cautions';
import { juiceAtATime, potBasis, potRule } from './potRules';

export const remakeRow = () =>
  z.strictObject({
    id: id(),
    pectin: z.enum(PECTINS),
    sugar: z.number(),
    water: z.number(),
    lemonJuice: positive(),
    pectinTsp: z.exactOptional(positive()),
    pectinTbsp: z.exactOptional(positive()),
    boilSeconds: z.tuple([positive(), positive()]),
    ...sourcedColumns(),
  });
type RemakeRow = RowOf<typeof remakeRow>;
const remakes = asTable<RemakeRow>(remakeJson).rows;

const PECTINS = ['none', 'powdered', 'liquid'] as const;
const schema = fields({
  /** The soft jelly at hand, by volume. */
  softJelly: volume(),
  /** `powdered`, `liquid`, or `none` to boil it down with lemon juice. */
  pectin: choice('the pectin to remake it with', PECTINS),
});
export type RemakeJellyInput = z.input<typeof schema>;
export interface RemakeJelly {
  /** Sugar, by measure. */
  readonly sugarVolume: Quantity<'volume'>;
  /** Water. */
  readonly waterVolume: Quantity<'volume'>;
  /** Bottled lemon juice. */
  readonly lemonJuice: Quantity<'volume'>;
  /** Powdered or liquid pectin, by the spoon. */
  readonly pectinVolume?: Quantity<'volume'>;
  /** How long it boils, at a full rolling boil. */
  readonly boil: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  /** Pots of up to 8 cups, one after another. */
  readonly batches: number;
  /** Where the amounts come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** The pectin of a line, by the spoon. */
function spoons({ pectinTsp, pectinTbsp }: RemakeRow, times: number): Quantity<'volume'> | undefined {
  if (pectinTsp !== undefined) return { value: pectinTsp * times, unit: 'tsp' };
  return pectinTbsp === undefined ? undefined : { value: pectinTbsp * times, unit: 'tbsp' };
}

/**
 * What to add to a jelly that stayed soft before you boil it again: the printed quantities for 4 cups, scaled to the
 * jelly at hand. The row for liquid pectin is recalled.
 */
export function remakeJelly(input: RemakeJellyInput): RemakeJelly {
  const given = readInput(schema, input);
  const row = remakes.find(({ pectin }) => pectin === given.pectin) as RemakeRow;
  const jelly = valueIn(given.softJelly, 'cup');
  const times = jelly / potRule('remade-at-a-time').value;
  const seconds = (value: number): Quantity<'time'> => ({ value, unit: 's' });
  const cups = (value: number): Quantity<'volume'> => ({ value, unit: 'cup' });
  const pectinVolume = spoons(row, times);
  return answer({
    sugarVolume: cups(row.sugar * times),
    waterVolume: cups(row.water * times),
    lemonJuice: quantityIn(row.lemonJuice * times, 'tbsp', 'tbsp'),
    ...(pectinVolume === undefined ? {} : { pectinVolume }),
    boil: { low: seconds(row.boilSeconds[0]), high: seconds(row.boilSeconds[1]) },
    batches: Math.ceil(jelly / juiceAtATime().high - 1e-9),
    basis: [
      basisOf(row, 'lemonJuice', 'amounts for 4 cups of soft jelly'),
      potBasis('remade-at-a-time', 'lemonJuice'),
      potBasis('juice-at-a-time-high', 'batches'),
    ],
    cautions: [...(row.obtained === 'memory' ? [caution('recalled')] : []), sugarCaution('boiling-sugar-burns')],
  });
}
