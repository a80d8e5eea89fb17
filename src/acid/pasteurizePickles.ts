import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { findNamed } from '../common/names';
import { fail } from '../errors/StillroomError';
import { type ProcessRecipeRow, processRecipeRows, rowsOf } from '../process/tables';
import { fields, name, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotTested, notTested } from '../sources/no';
import { basisOf } from '../sources/table';
import { temperature } from '../words/temperature';
import { time } from '../words/time';
import { acidCaution, pickleRule, printed } from './tables';

const schema = fields({
  /** The pickle recipe by name; needed to judge a record. */
  recipe: optional(name('the pickle recipe')),
  /** The lowest water temperature of the hold. */
  coldest: optional(temperature()),
  /** The highest water temperature of the hold. */
  hottest: optional(temperature()),
  /** How long it was held. */
  held: optional(time()),
});
export type PasteurizePicklesInput = z.input<typeof schema>;

export interface PasteurizePickles {
  /** The recipes whose page allows the treatment: the one asked for, or all of them where none was named. */
  readonly recipeNames: readonly string[];
  /** Water that the filled jars go into. */
  readonly startTemperature: { readonly low: Quantity<'temperature'>; readonly high: Quantity<'temperature'> };
  /** Water over the jars. */
  readonly waterOverJars: Quantity<'length'>;
  /** Water during the hold: never below `low`; above `high` pickles may soften. */
  readonly holdTemperature: { readonly low: Quantity<'temperature'>; readonly high: Quantity<'temperature'> };
  /** How long to hold it there. */
  readonly time: Quantity<'time'>;
  /** With `recipe`, `coldest` and `held`: whether the record met the printed treatment. */
  readonly verdict?: 'met' | 'not met' | 'met, but hot enough to soften';
  /** Where the treatment comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const cautions = (): Caution[] => [
  acidCaution('keep-the-proportions'),
  caution('tested-only'),
  caution('follow-local-guidance'),
];

/** Whether every line of the recipe's own process allows the treatment; a variation that shares the minutes has none. */
function isAllowed({ id, process }: ProcessRecipeRow): boolean {
  const rows = id === process ? rowsOf(process) : [];
  return rows.length > 0 && rows.every((row) => row.pasteurize === true && row.obtained !== 'memory');
}
const allowed = (): ProcessRecipeRow[] => processRecipeRows.filter(isAllowed);

/** The recipe that goes by this name, or nothing where no one recipe does. */
function findRecipe(given: string): ProcessRecipeRow | undefined {
  const found = findNamed(
    given,
    processRecipeRows.map((row) => ({ name: row.name, synonyms: row.names ?? [], row })),
  );
  return found.length === 1 ? found[0]?.row : undefined;
}

function refuse(asked: string): NotTested {
  const recipes = allowed().map(({ name }) => name);
  return notTested({
    code: 'not-for-this-recipe',
    text: `These tables allow low-temperature pasteurization for ${recipes.join(', ')}; not for ${asked}.`,
    instead: [
      { text: 'Ask testedProcess for the tested process of this food.' },
      { text: 'If it has none, keep the food in the refrigerator or freezer.', keep: 'refrigerate' },
    ],
    basis: [basisOf(pickleRule('pasteurization-where'), 'reason', 'where the treatment is allowed')],
    cautions: [acidCaution('low-acid-in-jars'), ...cautions()],
  });
}

/** A doubled degree or minute must not fail a record that is on the line. */
const NOISE = 1e-9;

/**
 * Low-temperature pasteurization of pickles: the printed treatment, and whether a record met it.
 *
 * Only seven cucumber and zucchini recipes allow it on their own page. Any other recipe or food is refused at any
 * temperature: the treatment is no substitute for a process.
 *
 * @returns the treatment, with a `verdict` where `recipe`, `coldest` and `held` are given; or `tested: false`
 * @throws StillroomError MISSING for a record without its recipe, CONTRADICTION where `hottest` is below `coldest`
 *
 * @example
 * ```ts
 * import { pasteurizePickles } from 'stillroom/acid';
 *
 * const recipe = 'quick sweet pickles';
 * const check = pasteurizePickles({ recipe, coldest: '179 degF', hottest: '184 degF', held: '30 min' });
 * 'verdict' in check && check.verdict; // => 'not met'
 * 'tested' in pasteurizePickles({ recipe: 'pickled eggs' }); // => true
 * ```
 */
export function pasteurizePickles(input: PasteurizePicklesInput = {}): PasteurizePickles | NotTested {
  const { recipe, coldest, hottest, held } = readInput(schema, input);
  if (recipe === undefined && (coldest !== undefined || hottest !== undefined || held !== undefined)) {
    fail('MISSING', 'recipe', undefined, 'the recipe of the pickles: only some recipes allow this treatment');
  }
  if (coldest !== undefined && hottest !== undefined && valueIn(hottest, 'degF') < valueIn(coldest, 'degF') - NOISE) {
    fail('CONTRADICTION', 'hottest', input.hottest, 'a temperature at or above `coldest`');
  }
  const where = pickleRule('pasteurization-where');
  const row = recipe === undefined ? undefined : findRecipe(recipe);
  if (recipe !== undefined && (row === undefined || !isAllowed(row))) {
    return answer(refuse(row?.name ?? recipe));
  }
  const hold = pickleRule('pasteurization-hold');
  const start = pickleRule('pasteurization-start');
  const over = pickleRule('pasteurization-water-over-jars');
  const highest = pickleRule('pasteurization-highest');
  const [startLow, startHigh] = printed(start, 'range');
  const minutes = printed(hold, 'value');
  const low = printed(hold, 'lowest');
  const high = printed(highest, 'value');
  const met =
    coldest !== undefined &&
    held !== undefined &&
    valueIn(coldest, 'degF') >= low - NOISE &&
    valueIn(held, 'min') >= minutes - NOISE;
  const hot = hottest !== undefined && valueIn(hottest, 'degF') > high + NOISE;
  const verdict = met ? (hot ? 'met, but hot enough to soften' : 'met') : 'not met';
  return answer({
    recipeNames: (row === undefined ? allowed() : [row]).map((entry) => entry.name),
    startTemperature: { low: { value: startLow, unit: 'degF' }, high: { value: startHigh, unit: 'degF' } },
    waterOverJars: { value: printed(over, 'value'), unit: 'in' },
    holdTemperature: { low: { value: low, unit: 'degF' }, high: { value: high, unit: 'degF' } },
    time: { value: minutes, unit: 'min' },
    ...(coldest === undefined || held === undefined ? {} : { verdict }),
    basis: [
      basisOf(hold, 'time'),
      basisOf(start, 'startTemperature'),
      basisOf(over, 'waterOverJars'),
      basisOf(highest, 'holdTemperature.high'),
      basisOf(where, 'recipeNames'),
    ],
    cautions: cautions(),
  });
}
