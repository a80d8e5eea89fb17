/** What the process tables hold beside a process of the cook's own book. */
import { StillroomError } from '../errors/StillroomError';
import type { FoundFood } from '../foods/fields';
import { formName } from '../foods/tables';
import { testedProcess } from '../process/testedProcess';
import type { Quantity } from '../quantity/types';
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

/** What these tables serve for the same food, form, pack and jar; none for a mixture. */
export function ofTables(asked: Asked): ByTables | undefined {
  const [only, ...more] = asked.foods;
  if (only === undefined || more.length > 0) return undefined;
  const asForm = asked.form ?? only.form;
  try {
    const found = testedProcess({
      food: only.name,
      ...(asForm === undefined ? {} : { form: formName(asForm) }),
      ...(asked.pack === undefined ? {} : { pack: asked.pack }),
      jar: asked.jar.name,
      method: asked.method,
      elevation: asked.elevation,
    });
    if (!found.tested) return undefined;
    const { minutes, recipe, recipes, acid } = found;
    return { minutes, recipe, ...(acid === undefined ? {} : { acidToAdd: acid.text }), recipes };
  } catch (error) {
    // the tables need a form or a pack that the book does not say
    if (error instanceof StillroomError) return undefined;
    throw error;
  }
}
