import { answer } from '../common/answer';
import { formName, nameOf } from '../foods/tables';
import { choice, fields, kitchenElevation, name, optional, pressure, readInput, reading } from '../quantity/fields';
import { readerOf } from '../quantity/reader';
import type { LengthInput, PressureInput } from '../quantity/types';
import type { NotTested } from '../sources/no';
import { type JarInput, jar } from '../words/jar';
import { type CanningMethod, method } from '../words/method';
import { type AnyPack, pack } from '../words/pack';
import { byRecipe } from './byRecipe';
import { decide, notCannedRow } from './decide';
import { type KnownFood, pagesWithout, readFood, readForm, refusedElse, refusedForm } from './food';
import { refuse, refuseWide } from './instead';
import type { Refused } from './refusal';
import { servedAnswer, type TestedProcess } from './servedAnswer';
import { ALTERNATIVES, type Alternative } from './tables';

export type { ProcessLine } from './cells';
export type { TestedProcess } from './servedAnswer';

/** Which of several printed lines: its letter, or as an answer names it, `b of 2`. */
function printedLine() {
  const read = readerOf(choice('which of the printed lines', ALTERNATIVES));
  return reading<Alternative, Alternative>(
    (given) => read(typeof given === 'string' ? given.replace(/ of [23]$/, '') : given),
    { kind: 'choice', choices: ALTERNATIVES, spelled: true },
  );
}

const schema = /* @__PURE__ */ fields({
  /** Any name of the food, singular or plural, with or without its form: `peach`, `green beans`, `applesauce`. */
  food: name('the name of a food, such as "peach"'),
  /** The form, such as `halves`; needed where the food is tested in several. */
  form: optional(name('a form, such as "halves"')),
  /** The printed recipe: its id or a name; in place of the form. */
  recipe: optional(name('the id or name of a recipe, such as "berry-syrup"')),
  /** `hot` or `raw`; needed where both are tested. */
  pack: optional(pack()),
  /** The jar: a size by name, a volume, or a measured jar. */
  jar: jar(),
  /** The canner. */
  method: method(),
  /** Elevation of the kitchen, above -500 m, to 5,000 m. */
  elevation: kitchenElevation(),
  /** Which of several printed lines to follow; the first one that holds when left out. */
  alternative: optional(printedLine()),
  /** Or the line of this gauge pressure. */
  pressure: optional(pressure()),
});

export interface TestedProcessInput {
  /** Any name of the food, singular or plural, with or without its form: `peach`, `green beans`, `applesauce`. */
  readonly food: string;
  /** Needed where the food is tested in several: `halves`, `sauce`, `whole kernel`. */
  readonly form?: string | undefined;
  /** The printed recipe: its id or a name; in place of the form. */
  readonly recipe?: string | undefined;
  /** Needed where both are tested. */
  readonly pack?: AnyPack | undefined;
  /** A size by name, a volume, or a measured jar. */
  readonly jar: JarInput;
  /** The canner. */
  readonly method: CanningMethod;
  /** Elevation of the kitchen, above -500 m, to 5,000 m. */
  readonly elevation: LengthInput;
  /** Which of several printed lines to follow; the first one that holds when left out. */
  readonly alternative?: Alternative | undefined;
  /** Or the line of this gauge pressure. */
  readonly pressure?: PressureInput | undefined;
}

/** How many names a reason lists before it only says that the food is not among them. */
const MANY_NAMES = 8;

/** Why a form of a food has no process here: its page names other foods, or the tables hold none. */
function unknownForm(food: KnownFood, text: string): Refused {
  const [near] = text === '' ? [] : pagesWithout(food, text);
  if (near === undefined) {
    const form = text === '' ? '' : ` as ${text}`;
    return { code: 'no process', text: `no tested process for ${food.name}${form} is in these tables` };
  }
  const names = near.names.map(nameOf);
  const listed = names.length > MANY_NAMES ? '' : ` (it names ${names.join(', ')})`;
  const page = near.food === near.form ? nameOf(near.food) : `${nameOf(near.food)}, ${formName(near.form)},`;
  return {
    code: 'not on the page',
    text: `no tested process for ${food.name} as ${text} is in these tables: the page for ${page} does not name it${listed}`,
  };
}

/**
 * The published heat process for a food, form, pack and jar in a canner at an elevation, or a refusal with its
 * reason. Nothing is interpolated, shortened or taken over from a neighboring food or jar.
 *
 * The minutes and the pressure are those printed for the elevation band the place lies in: 1,000 ft belongs to the
 * band that ends there, a fraction of a foot more to the next, and a place below sea level to the lowest. A jar
 * smaller than any the table lists takes the next larger listed size's process; a larger one is refused. A process is
 * served to the foods that its printed page names, which are in `scope`, and to no other: a wide name such as `squash`
 * is refused, and the foods it could be are offered. Where two printed copies disagree the longer time or higher
 * pressure is served, unless only an older edition or a copying fault has it; `copies` holds both. A row known only
 * from memory is refused. Acid that the process requires is in `acid` and again in the cautions.
 *
 * Where a product has several printed lines (tomatoes under pressure, jam in sterilized jars or not) the first that
 * was read and holds at the elevation is given, and all of them in `alternatives`; `alternative` or `pressure` picks
 * another. `atmospheric-steam` is for food with a boiling-water process of 45 minutes or less, at the same minutes.
 *
 * Source: USDA Complete Guide to Home Canning and the copies named in each answer's basis; jar rule NCHFP and Kansas
 * State University; steam canner rules NCHFP and University of Wisconsin.
 *
 * @returns `{ tested: true, minutes, pressure?, headspace, recipe, acid?, ... }` or
 * `{ tested: false, reason: { code, text }, instead, ... }`, where `instead` lists the questions that are answered at
 * the same place, each with its minutes, and the ways of keeping the food that are not canning
 * @throws StillroomError UNKNOWN_NAME for a name that is in no table or could be several, MISSING for a form or
 * pack that must be chosen, CONTRADICTION for a form that the food's name contradicts, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { testedProcess } from 'stillroom/process';
 *
 * const kitchen = { jar: 'quart', method: 'boiling-water', elevation: '4200 ft' } as const;
 * const peaches = testedProcess({ food: 'peaches', form: 'halves', pack: 'hot', ...kitchen });
 * peaches.tested && peaches.minutes; // => 35
 * const tomatoes = testedProcess({ food: 'crushed tomatoes', ...kitchen });
 * tomatoes.tested && tomatoes.acid?.bottledLemonJuice; // => { value: 2, unit: 'tbsp' }
 * const beans = testedProcess({ food: 'green beans', ...kitchen });
 * beans.tested === false && beans.reason.code; // => 'low in acid'
 * testedProcess({ food: 'peaches', form: 'halves', ...kitchen }); // throws StillroomError MISSING
 * ```
 */
export function testedProcess(input: TestedProcessInput): TestedProcess | NotTested {
  const asked = readInput(schema, input);
  const reading = readFood(asked.food);
  const { food } = reading;
  const held = reading.form === undefined ? undefined : formName(reading.form);
  if (asked.recipe !== undefined) return answer(byRecipe(food, asked.recipe, asked));
  const text = asked.form ?? held;
  const barred = refusedForm(food, text).find((row) => row.pack === undefined && row.jar === undefined);
  const rest = refusedElse(food);
  if (barred !== undefined) return answer(refuse(food, notCannedRow(barred), asked));
  if (rest !== undefined && text === undefined) return answer(refuse(food, notCannedRow(rest), asked));

  const form = readForm(reading, asked.form);
  if ('unknown' in form) {
    if (rest !== undefined) return answer(refuse(food, notCannedRow(rest), asked));
    const wide = refuseWide(food, form.unknown, asked);
    return answer(wide ?? refuse(food, unknownForm(food, form.unknown), asked, undefined, form.unknown));
  }
  const decided = decide(food, form.choice, asked);
  if ('code' in decided) return answer(refuse(food, decided, asked, form.choice));
  const assumed = [
    ...(form.only ? [`form: ${formName(form.choice.form)}, as none was named`] : []),
    ...(decided.onlyPack ? [`pack: ${decided.cell.row.pack}, the only one tested`] : []),
  ];
  return answer(servedAnswer(decided, asked, food, assumed));
}
