import { answer } from '../common/answer';
import { choice, fields, kitchenElevation, name, optional, pressure, readInput } from '../quantity/fields';
import type { LengthInput, PressureInput } from '../quantity/types';
import { type JarInput, jar } from '../words/jar';
import { type CanningMethod, method } from '../words/method';
import { type AnyPack, pack } from '../words/pack';
import { decide, notCannedRow } from './decide';
import { readFood, readForm, refusedForm, unnamedForms } from './food';
import type { ProcessRefusal, Refused } from './refusal';
import { foodsOf } from './scope';
import { servedAnswer, type TestedProcess } from './servedAnswer';
import { type FoodEntry, rowsOf } from './tables';
import { refuse, refuseWide } from './ways';

export type { ProcessLine } from './cells';
export type { TestedProcess } from './servedAnswer';

const schema = /* @__PURE__ */ fields({
  food: name('the name of a food, such as "peach"'),
  form: optional(name('a form, such as "halves"')),
  pack: optional(pack()),
  jar: jar(),
  method: method(),
  elevation: kitchenElevation(),
  alternative: optional(choice('which of the printed lines', ['a', 'b', 'c'])),
  pressure: optional(pressure()),
});

export interface TestedProcessInput {
  /** Trade name or synonym, singular or plural, with or without its form: `peach`, `green beans`, `applesauce`. */
  readonly food: string;
  /** Needed where the food is tested in several: `halves`, `sauce`, `whole kernel`. */
  readonly form?: string | undefined;
  /** Needed where both are tested. */
  readonly pack?: AnyPack | undefined;
  readonly jar: JarInput;
  readonly method: CanningMethod;
  readonly elevation: LengthInput;
  /** Which of several printed lines to follow; the first one that holds when left out. */
  readonly alternative?: 'a' | 'b' | 'c' | undefined;
  /** Or the line of this gauge pressure. */
  readonly pressure?: PressureInput | undefined;
}

/** How many names a reason lists before it only says that the food is not among them. */
const MANY_NAMES = 8;

/** Why a form of a food has no process here: its page names other foods, or the tables hold none. */
function unknownForm(entry: FoodEntry, text: string, food: string): Refused {
  const [near] = unnamedForms(entry, text);
  if (near === undefined) {
    return { reason: `no tested process for ${entry.name} as ${text === '' ? `"${food}"` : text} is in these tables` };
  }
  const names = namedOf(near);
  const listed = names.length > MANY_NAMES ? '' : ` (it names ${names.join(', ')})`;
  return { reason: `the page for ${near.food} ${near.form} does not name ${entry.name}${listed}` };
}

/** The foods that the page of a form names. */
const namedOf = ({ food, form }: { food: string; form: string }): string[] => [
  ...new Set(rowsOf(food, form).flatMap(foodsOf)),
];

/**
 * The published heat process for a food, form, pack and jar in a canner at an elevation, or a refusal with its
 * reason. Nothing is interpolated, shortened or taken over from a neighbouring food or jar.
 *
 * The minutes and the pressure are those printed for the elevation band the place lies in: 1,000 ft belongs to the
 * band that ends there, a fraction of a foot more to the next, and a place below sea level to the lowest. A jar
 * smaller than any the table lists takes the next larger listed size's process; a larger one is refused. A process is
 * served to the foods that its printed page names, which are in `scope`, and to no other. Where two
 * printed copies disagree the longer time or higher pressure is served, unless only an older edition or a copying fault has it;
 * `printed` holds both. A row known only
 * from memory is refused. Acid that the process requires is in `acid` and again in the cautions.
 *
 * Where a product has several printed lines (tomatoes under pressure, jam in sterilized jars or not) the first that
 * was read and holds at the elevation is given, and all of them in `alternatives`; `alternative` or `pressure` picks
 * another. `atmospheric-steam` is for food with a boiling-water process of 45 minutes or less, at the same minutes.
 *
 * Source: USDA Complete Guide to Home Canning and the copies named in each answer's basis; jar rule NCHFP and Kansas
 * State University; steam canner rules NCHFP and University of Wisconsin.
 *
 * @param input.food - trade name or synonym, with or without the form in it: `peach`, `green beans`, `applesauce`
 * @param input.form - needed where several forms are tested
 * @param input.pack - `hot` or `raw`; needed where both are tested
 * @param input.jar - `half-pint`, `pint`, `quart`, `half-gallon`, `12 oz` ..., or a nominal volume
 * @param input.method - `boiling-water`, `dial-gauge`, `weighted-gauge` or `atmospheric-steam`
 * @param input.elevation - above -500 m, to 5,000 m, in any unit of length
 * @param input.alternative - `a`, `b` or `c`: which of several printed lines
 * @param input.pressure - or the line of this gauge pressure
 * @returns `{ tested: true, minutes, pressure?, headspace, acid?, ... }` or
 * `{ tested: false, reason, instead, ways }`, where `ways` holds the questions that are answered at the same place and
 * the ways of keeping the food that are not canning
 * @throws StillroomError UNKNOWN_NAME for a food in no table or a name that could be several, MISSING for a form or
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
 * testedProcess({ food: 'green beans', ...kitchen }).tested; // => false
 * testedProcess({ food: 'peaches', form: 'halves', ...kitchen }); // throws StillroomError MISSING
 * ```
 */
export function testedProcess(input: TestedProcessInput): TestedProcess | ProcessRefusal {
  const asked = readInput(schema, lineAsked(input));
  const reading = readFood(asked.food, asked.form);
  const { food } = reading;
  const { entry } = food;
  const text = asked.form ?? reading.form;
  const barred = refusedForm(food, text).find((row) => row.pack === undefined && row.jar === undefined);
  const plain = food.notCanned.find((row) => row.forms.includes('plain'));
  if (barred !== undefined) return answer(refuse(food, notCannedRow(barred), asked));
  if (plain !== undefined && text === undefined) return answer(refuse(food, notCannedRow(plain), asked));

  const form = readForm(reading, asked.form);
  if ('unknown' in form) {
    if (plain !== undefined) return answer(refuse(food, notCannedRow(plain), asked));
    const wide = refuseWide(entry, form.unknown, asked);
    if (wide !== undefined) return answer(wide);
    return answer(refuse(food, unknownForm(entry, asked.form ?? '', asked.food), asked));
  }
  const decided = decide(food, form.choice, asked);
  if ('reason' in decided) return answer(refuse(food, decided, asked, form.choice));
  const assumed = [
    ...(form.only ? [`form: ${form.choice.form}, as none was named`] : []),
    ...(decided.onlyPack ? [`pack: ${decided.cell.row.pack}, the only one tested`] : []),
  ];
  return answer(servedAnswer(decided, asked, entry.name, assumed));
}

/** The line of an answer, `b of 2`, as the letter that asks for it. */
function lineAsked(input: TestedProcessInput): unknown {
  if (typeof input !== 'object' || input === null || typeof input.alternative !== 'string') return input;
  return { ...input, alternative: (input.alternative as string).replace(/ of [23]$/, '') };
}
