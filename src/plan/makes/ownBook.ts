/** A recipe of the cook's own book in a plan: its minutes, its jar, and the work of a recipe that is like it. */
import * as z from 'zod/mini';
import stepsTable from '../../../data/plan/own-steps.json';
import { atPath, StillroomError } from '../../errors/StillroomError';
import type { FoundFood } from '../../foods/fields';
import { foodOf, formName } from '../../foods/tables';
import { ruleFigures } from '../../process/canningRules';
import { formatQuantity } from '../../quantity/formatQuantity';
import { type OwnProcess, type OwnProcessInput, ownProcess } from '../../recipes/ownProcess';
import { isFor, pageOf, RECIPES } from '../../recipes/rows/rows';
import { MAKES, type Makes, type RecipeRow, step } from '../../recipes/rows/tables';
import type { Basis } from '../../sources/basis';
import { forReaders, id, practiceColumns, type RowOf, text } from '../../sources/columns';
import { asTable } from '../../sources/table';
import type { Wanted } from '../request/planInput';
import type { OwnRecipe } from '../request/plannedProduct';
import type { Product } from './making';
import { type Day, type LeftOutProduct, leftOutBy } from './making';
import type { PlanProcess } from './planProcess';
import { hasForm } from './product';

type OwnBook = NonNullable<Wanted['own']>;

export const stepsRow = () =>
  z.strictObject({
    id: forReaders(id()),
    kind: text(),
    makes: z.enum(MAKES),
    steps: z.array(step()),
    ...practiceColumns(),
  });
type StepsRow = RowOf<typeof stepsRow>;
const plain = asTable<StepsRow>(stepsTable).rows;

const isCanned = ({ keeps }: RecipeRow): boolean => keeps.some((keep) => 'process' in keep);

/** The recipe whose steps and work are taken: the one that was named, or the first for the food in this form. */
function likeOf({ like, form }: OwnBook, food: string): RecipeRow | undefined {
  if (like !== undefined || form === undefined) return like;
  return RECIPES.find((row) => isCanned(row) && isFor(row, food) && hasForm(row, food, form));
}

/** What it is counted as: as the recipe like it, as any recipe of the form, or as the plainest of the kind of food. */
const makesOf = ({ form }: OwnBook, like: RecipeRow | undefined, usual: StepsRow): Makes =>
  (like ?? RECIPES.find((row) => form !== undefined && isCanned(row) && row.form === form))?.makes ?? usual.makes;

/** A step of a recipe for another food: what is done, and how long, but not what is said of that food. */
const bare = ({ of: _of, to: _to, notes: _notes, ...step }: RecipeRow['steps'][number]): RecipeRow['steps'][number] =>
  step;

/** The pack of the book; hot where it says none. */
export const packOf = ({ own, pack }: Wanted): 'hot' | 'raw' => ((own?.pack ?? pack) === 'raw' ? 'raw' : 'hot');

/**
 * The book's recipe as a row: its food, and the steps of a recipe that is like it. What else goes in, and how much of
 * it, stands in the book alone.
 */
export function ownRow(own: OwnBook, { id }: FoundFood): RecipeRow {
  const like = likeOf(own, id);
  const { kind } = foodOf(id);
  const usual = plain.find((row) => row.kind === kind) ?? (plain[0] as StepsRow);
  const steps = like === undefined ? usual.steps : isFor(like, id) ? like.steps : like.steps.map(bare);
  const form = own.form ?? like?.form;
  return {
    id: OWN,
    name: own.name,
    makes: makesOf(own, like, usual),
    ...(form === undefined ? {} : { form }),
    foods: [id],
    mix: 'may mix',
    ingredients: [{ food: '@scope', role: 'fruit', ...(form === undefined ? {} : { form }) }],
    steps: [...steps],
    batch: { scale: 'any size' },
    keeps: [{ place: 'shelf' }],
    // it stands in the cook's own book
    obtained: 'common-practice',
  };
}
/** What a recipe of the cook's own book is called where others have the id of their row. */
const OWN = 'own';

/** What `ownProcess` serves, its errors at the place of the field in the request. */
function atOwn(index: number, asked: OwnProcessInput): ReturnType<typeof ownProcess> {
  try {
    return ownProcess(asked);
  } catch (error) {
    throw error instanceof StillroomError ? atPath(error, `products[${index}].own.${error.path}`) : error;
  }
}

/** The book's process at this place, as `ownProcess` serves it; or why it is refused. */
export function ownProcessIn(
  day: Day,
  { wanted, lots, food, index }: Product,
  own: OwnBook,
): PlanProcess | LeftOutProduct {
  const { jar, method, minutes, headspace, acid, baseElevation } = own;
  const found = atOwn(index, {
    name: own.name,
    citation: own.citation,
    foods: [...new Set(lots.map(({ trade }) => trade))],
    ...(own.form === undefined ? {} : { form: formName(own.form) }),
    pack: packOf(wanted),
    jar: jar.name,
    method,
    minutes,
    headspace,
    ...(acid === undefined ? {} : { acid }),
    ...(baseElevation === undefined ? {} : { baseElevation }),
    elevation: day.request.kitchen.elevation,
  });
  if (!found.tested) return leftOutBy(wanted, found);
  const sterile = ruleFigures('sterilize').low;
  return {
    food: found.foods.join(' and '),
    ...(found.form === undefined ? {} : { form: found.form }),
    pack: packOf(wanted),
    jar: found.jar,
    method: found.method,
    minutes: found.minutes,
    ...(found.pressure === undefined ? {} : { pressure: found.pressure }),
    headspace: found.headspace,
    ...acidOf(own),
    sterilizeJars: found.pressure === undefined && minutes < sterile,
    basis: found.basis,
    cautions: found.cautions,
    own: markOf(found, likeOf(own, food.id)),
  };
}

function markOf(
  { name, citation, whoseMinutes, byYourBook, byTables }: OwnProcess,
  like: RecipeRow | undefined,
): OwnRecipe {
  return {
    ownBook: true,
    name,
    citation,
    whoseMinutes,
    byYourBook,
    ...(byTables === undefined ? {} : { byTables }),
    ...(like === undefined ? {} : { like: like.id }),
  };
}

/** The acid of the book in each jar: one of the two, where it names both. */
function acidOf({ acid }: OwnBook): Pick<PlanProcess, 'acid'> {
  const { bottledLemonJuice, citricAcid } = acid ?? {};
  if (bottledLemonJuice === undefined && citricAcid === undefined) return {};
  const words = [
    ...(bottledLemonJuice === undefined ? [] : [`${formatQuantity(bottledLemonJuice)} of bottled lemon juice`]),
    ...(citricAcid === undefined ? [] : [`${formatQuantity(citricAcid)} of citric acid`]),
  ];
  return {
    acid: {
      required: true,
      where: 'each jar',
      choose: 'one',
      ...(bottledLemonJuice === undefined ? {} : { bottledLemonJuice }),
      ...(citricAcid === undefined ? {} : { citricAcid }),
      text: `${words.join(', or ')} to each jar`,
    },
  };
}

/** Whose recipe it is, as the first step of the work: nobody reads the sheet without it. */
export const ownStep = ({ name, citation, whoseMinutes, byYourBook, byTables }: OwnRecipe): string =>
  `This is ${name} of your own book (${citation}): all that goes in, and how much, is in the book. ${
    whoseMinutes === 'your book'
      ? `The minutes are the book's, ${byYourBook} at this elevation; these tables did not test them.`
      : `The book's minutes are ${byYourBook} at this elevation; these tables hold ${byTables?.minutes}, and the longer time is planned.`
  }`;

/** Where a recipe of the cook's own book stands, and the work that is taken from another. */
export function ownBasis({ citation, like }: OwnRecipe): Basis[] {
  const row = RECIPES.find(({ id }) => id === like);
  return [
    { of: 'ingredients', kind: 'measured', locator: citation, note: 'your book' },
    ...(row === undefined ? [] : [pageOf(row, 'directions', `the steps of ${row.name}`)]),
  ];
}
