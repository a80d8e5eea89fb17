import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { food as foodField } from '../foods/fields';
import { formName } from '../foods/tables';
import { acidOf, acidRowOf, acidSizes, type ProcessAcid } from '../process/acid';
import { LISTED_JARS } from '../process/tables';
import { fields, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NoDetails, type NotTested, notTested } from '../sources/no';
import { basisOf } from '../sources/table';
import { count } from '../words/count';
import { jar as jarWord, listedSize } from '../words/jar';
import { acidCaution, JAR_ACIDS } from './tables';

const schema = fields({
  /** A food that is acidified jar by jar: tomatoes, figs, Asian pears, crab meat. */
  food: foodField(),
  /** A size by name, a volume or a measured jar. */
  jar: jarWord(),
  /** How many jars, 1 to 10,000. */
  jars: count('how many jars', 1, 10_000),
});
export type AcidForJarsInput = z.input<typeof schema>;

export interface AcidForJars {
  /** Trade name of the food. */
  readonly food: string;
  /** How many jars. */
  readonly jars: number;
  /** What each jar takes; any one of the agents. */
  readonly perJar: ProcessAcid;
  /** For all jars, with bottled lemon juice alone, ... */
  readonly bottledLemonJuice?: Quantity<'volume'>;
  /** ... or with citric acid alone, ... */
  readonly citricAcid?: Quantity<'volume'>;
  /** ... or with vinegar of 5 % alone. */
  readonly vinegar?: Quantity<'volume'>;
  /** Where the amounts come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const refuse = (details: Pick<NoDetails, 'code' | 'text' | 'instead'>): NotTested =>
  notTested({
    ...details,
    basis: [derived('reason', 'what the acid tables hold')],
    cautions: [acidCaution('low-acid-in-jars'), caution('tested-only'), caution('follow-local-guidance')],
  });

/**
 * How much acid a batch of jars needs, where a tested process requires acid in each jar.
 *
 * The printed amount for the jar times the jars, for each agent alone; the acid goes into the jar, not into the pot. A
 * food whose amount these tables do not hold is refused: guessing at acid does not make low-acid food safe.
 *
 * @returns the totals, with `perJar`; or `tested: false`
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
export function acidForJars(input: AcidForJarsInput): AcidForJars | NotTested {
  const { food, jar, jars } = readInput(schema, input);
  const found = JAR_ACIDS.find(
    ({ foods, forms }) => foods.includes(food.id) && (food.form === undefined || forms.includes(food.form)),
  );
  if (found === undefined) {
    const asked = food.form === undefined ? food.name : `${food.name} (${formName(food.form)})`;
    return answer(
      refuse({
        code: 'no-acid-for-each-jar',
        text: `These tables hold no amount of acid for each jar of ${asked}; acid by guess does not make an untested or low-acid food safe.`,
        instead:
          'Ask testedProcess for the food: it gives the acid that belongs to a recipe. If it has no process, freeze or refrigerate the food.',
      }),
    );
  }
  const size = listedSize(jar, LISTED_JARS);
  const row = size === undefined ? undefined : acidRowOf(found.acid, size);
  if (row === undefined) {
    return answer(
      refuse({
        code: 'no-acid-for-this-jar',
        text: `These tables hold the acid for ${food.name} in other jar sizes, not for a ${jar.name}.`,
        instead: acidSizes(found.acid).map((other) => ({ text: `Use ${other} jars.`, food: food.name, jar: other })),
      }),
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
    food: food.name,
    jars,
    perJar,
    ...total('bottledLemonJuice'),
    ...total('citricAcid'),
    ...total('vinegar'),
    basis: [basisOf(row, 'perJar')],
    cautions: [
      acidCaution('acidify-every-jar'),
      ...(found.lowAcid === true ? [acidCaution('low-acid-in-jars')] : []),
      caution('tested-only'),
      caution('follow-local-guidance'),
    ],
  });
}
