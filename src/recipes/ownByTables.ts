/** What the process tables hold beside a process of the cook's own book. */
import { StillroomError } from '../errors/StillroomError';
import type { FoundFood } from '../foods/fields';
import { formName } from '../foods/tables';
import { type TestedProcess, type TestedProcessInput, testedProcess } from '../process/testedProcess';
import type { Quantity } from '../quantity/types';
import type { Instead } from '../sources/no';
import type { ProcessRecipe } from '../sources/processRecipe';
import type { ReadJar } from '../words/jar';
import type { CanningMethod } from '../words/method';
import type { AnyPack } from '../words/pack';

/** The tables' process for the same food, form, pack and jar. */
export interface ByTables {
  /** Their minutes here. */
  readonly minutes: number;
  /** Fixed name of their recipe. */
  readonly recipe: string;
  /** The acid that their minutes need, in words. */
  readonly acidToAdd?: string;
  /** The printed recipes that their minutes belong to, each with its acid and its batch. */
  readonly recipes: readonly ProcessRecipe[];
}

interface Asked {
  readonly foods: readonly FoundFood[];
  readonly form?: string | undefined;
  readonly pack?: AnyPack | undefined;
  readonly jar: ReadJar;
  readonly method: CanningMethod;
  readonly elevation: Quantity<'length'>;
}

type Open = 'form' | 'pack';

/** Every process that may be meant: where the book leaves a form or a pack open, that of each that the tables hold. */
function mayBeMeant(question: TestedProcessInput, open: readonly Open[] = ['form', 'pack']): readonly TestedProcess[] {
  try {
    const found = testedProcess(question);
    return found.tested ? [found] : [];
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    const which = open.find((each) => each === error.path);
    if (which === undefined) return [];
    const rest = open.filter((each) => each !== which);
    return (error.options ?? []).flatMap((option) =>
      mayBeMeant({ ...question, [which]: option } as TestedProcessInput, rest),
    );
  }
}

/** Every process of these tables for the same food that may be meant; none for a mixture. */
function held(asked: Asked): readonly TestedProcess[] {
  const [only, ...more] = asked.foods;
  if (only === undefined || more.length > 0) return [];
  const asForm = asked.form ?? only.form;
  return mayBeMeant({
    food: only.name,
    ...(asForm === undefined ? {} : { form: formName(asForm) }),
    ...(asked.pack === undefined ? {} : { pack: asked.pack }),
    jar: asked.jar.name,
    method: asked.method,
    elevation: asked.elevation,
  });
}

const shown = ({ minutes, recipe, recipes, acid }: TestedProcess): ByTables => ({
  minutes,
  recipe,
  ...(acid === undefined ? {} : { acidToAdd: acid.text }),
  recipes,
});

/** What these tables serve for the same food, form, pack and jar, the longest that may be meant. */
export function ofTables(asked: Asked): ByTables | undefined {
  const [longest] = [...held(asked)].sort((one, other) => other.minutes - one.minutes);
  return longest === undefined ? undefined : shown(longest);
}

/** The tested process to use instead of the book's, where only one may be meant. */
export function testedInstead(asked: Asked): readonly Instead[] {
  const [first, ...more] = held(asked);
  if (first === undefined || more.length > 0) return [];
  const acid = first.acid === undefined ? '' : `. It needs acid: ${first.acid.text}`;
  return [{ text: `Use the process that was tested: ${first.minutes} min here${acid}.`, ...shown(first) }];
}
