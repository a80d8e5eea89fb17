import { answer } from '../common/answer';
import { nameKey, nearestNames } from '../common/names';
import { fields, name, readInput } from '../quantity/fields';
import { type KnownFood, knowledgeOf, rowsOfChoice } from './food';
import { foods } from './tables';

const schema = /* @__PURE__ */ fields({ text: name('part of the name of a food') });

export interface FindFoodsInput {
  /** Part of a name or synonym. */
  readonly text: string;
}
/** A food that the process tables know. */
export interface ProcessFood {
  readonly name: string;
  readonly synonyms: readonly string[];
  /** Its forms with a process that was read in a copy; none where the tables only say why it is not canned. */
  readonly forms: readonly string[];
}
export interface FindFoods {
  readonly foods: readonly ProcessFood[];
}

function described({ entry, choices }: KnownFood): ProcessFood {
  const tested = choices.filter((choice) => rowsOfChoice(choice).some((row) => row.obtained !== 'memory'));
  return {
    name: entry.name,
    synonyms: entry.synonyms ?? [],
    forms: [...new Set(tested.map((choice) => choice.form))],
  };
}

/**
 * Searches the foods of the process tables by name and synonym: those that hold the text, or the nearest names when
 * none does.
 *
 * @param input.text - any part of a name
 * @throws StillroomError MISSING, WRONG_TYPE, UNKNOWN_NAME for an empty text
 *
 * @example
 * ```ts
 * import { findFoods } from 'stillroom/process';
 *
 * findFoods({ text: 'rhub' }).foods.map(({ name }) => name); // => ['rhubarb']
 * ```
 */
export function findFoods(input: FindFoodsInput): FindFoods {
  const { text } = readInput(schema, input);
  const key = nameKey(text);
  const words = key.split(' ');
  const holding = foods.filter((entry) =>
    [entry.name, ...(entry.synonyms ?? []), ...Object.values(entry.alone ?? {}).flat()].some((candidate) => {
      const other = nameKey(candidate);
      return words.every((word) => other.includes(word));
    }),
  );
  const near =
    holding.length > 0
      ? []
      : nearestNames(
          text,
          foods.map((entry) => entry.name),
        );
  const found = holding.length > 0 ? holding : foods.filter((entry) => near.includes(entry.name));
  return answer({ foods: found.map((entry) => described(knowledgeOf(entry))) });
}

/**
 * Every food that the process tables know, canned or refused, by its trade name.
 *
 * @example
 * ```ts
 * import { processFoods } from 'stillroom/process';
 *
 * processFoods().find(({ name }) => name === 'fig')?.forms; // => ['whole']
 * ```
 */
export function processFoods(): readonly ProcessFood[] {
  return answer(foods.map((entry) => described(knowledgeOf(entry))));
}
