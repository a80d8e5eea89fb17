import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { findNamed, type Named } from '../common/names';
import { acidOf, acidRowOf, acidSizes, type ProcessAcid } from '../process/acid';
import { LISTED_JARS } from '../process/tables';
import { count, fields, name, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived, type Refusal } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { jar as jarWord, listedSize } from '../words/jar';
import { acidCaution } from './tables';

const schema = fields({
  food: name('a food that is acidified jar by jar: tomatoes, figs, Asian pears, crab meat'),
  jar: jarWord(),
  jars: count('how many jars', 1, 10_000),
});
export type AcidForJarsInput = z.input<typeof schema>;

export interface AcidForJars {
  readonly food: string;
  readonly jars: number;
  /** What each jar takes; any one of the agents. */
  readonly perJar: ProcessAcid;
  /** The whole batch with bottled lemon juice alone, ... */
  readonly bottledLemonJuice?: Quantity<'volume'>;
  /** ... or with citric acid alone, ... */
  readonly citricAcid?: Quantity<'volume'>;
  /** ... or with vinegar of 5 % alone. */
  readonly vinegar?: Quantity<'volume'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The foods, each with its acid in the process tables, and what their jars are called. */
const FOODS: readonly (Named & { readonly acid: string })[] = [
  {
    name: 'tomato',
    acid: 'tomato',
    synonyms: [
      'crushed tomatoes',
      'whole tomatoes',
      'halved tomatoes',
      'whole or halved tomatoes',
      'tomato juice',
      'tomato-vegetable juice',
      'tomato-vegetable juice blend',
      'tomato sauce',
      'standard tomato sauce',
      'green tomato',
      'tomatillo',
    ],
  },
  { name: 'fig', acid: 'fig' },
  { name: 'Asian pear', acid: 'asian-pear' },
  { name: 'crab', acid: 'crab', synonyms: ['crab meat', 'crabmeat'] },
];

const refuse = (reason: string, instead: string): Refusal => ({
  tested: false,
  reason,
  instead,
  basis: [derived('what the acid tables hold')],
  cautions: [acidCaution('low-acid-in-jars'), caution('tested-only'), caution('follow-local-guidance')],
});

/**
 * How much acid a batch of jars takes, where a tested process asks for acid in each jar.
 *
 * The printed amount for the jar times the jars, for each agent alone; the acid goes into the jar, not into the pot. A
 * food whose amount these tables do not hold is refused: acid by guess makes no low-acid food safe.
 *
 * @param input.food - tomatoes (juice, crushed, whole, sauce, tomatillos), figs, Asian pears, crab meat
 * @param input.jar - a size by name, a volume or a measured jar; it takes the acid of the size it is, or of the
 *   next larger of half-pint, pint, quart and half-gallon
 * @param input.jars - how many
 * @returns the totals, with `perJar`; or a refusal
 *
 * @example
 * ```ts
 * import { acidForJars } from 'stillroom/acid';
 *
 * const acid = acidForJars({ food: 'crushed tomatoes', jar: 'quart', jars: 7 });
 * 'jars' in acid && acid.bottledLemonJuice; // => { value: 14, unit: 'tbsp' }
 * 'jars' in acidForJars({ food: 'green beans', jar: 'pint', jars: 7 }); // => false
 * ```
 */
export function acidForJars(input: AcidForJarsInput): AcidForJars | Refusal {
  const { food: asked, jar, jars } = readInput(schema, input);
  const [found] = findNamed(asked, FOODS);
  if (found === undefined) {
    return answer(
      refuse(
        `These tables hold no amount of acid for each jar of ${asked}; acid by guess does not make an untested or low-acid food safe.`,
        'Ask testedProcess for the food: it gives the acid that belongs to a recipe. If it has no process, freeze or refrigerate the food.',
      ),
    );
  }
  const size = listedSize(jar, LISTED_JARS);
  const row = size === undefined ? undefined : acidRowOf(found.acid, size);
  if (row === undefined) {
    return answer(
      refuse(
        `These tables hold the acid for ${found.name} in other jar sizes, not for a ${jar.name}.`,
        `Use a jar size of the table: ${acidSizes(found.acid).join(' or ')}.`,
      ),
    );
  }
  const perJar = acidOf(row);
  const total = <K extends 'bottledLemonJuice' | 'citricAcid' | 'vinegar'>(agent: K) => {
    const each = perJar[agent];
    return (each === undefined ? {} : { [agent]: { value: each.value * jars, unit: each.unit } }) as {
      [P in K]?: Quantity<'volume'>;
    };
  };
  return answer({
    food: found.name,
    jars,
    perJar,
    ...total('bottledLemonJuice'),
    ...total('citricAcid'),
    ...total('vinegar'),
    basis: [basisOf(row, 'acid for each jar')],
    cautions: [
      acidCaution('acidify-every-jar'),
      ...(found.name === 'crab' ? [acidCaution('low-acid-in-jars')] : []),
      caution('tested-only'),
      caution('follow-local-guidance'),
    ],
  });
}
