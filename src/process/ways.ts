/** What a refusal offers: the processes that are served at the same place, and ways of keeping that are not canning. */
import { caution } from '../sources/cautions';
import { listedSize, readJar } from '../words/jar';
import type { CanningMethod } from '../words/method';
import { decide, packsOf, printedMethod, type Question } from './decide';
import {
  choiceText,
  type FormChoice,
  type KnownFood,
  knowledgeOf,
  matchForm,
  refusedForm,
  rowsOfChoice,
  unnamedForms,
} from './food';
import {
  type CanningWay,
  keepText,
  type ProcessRefusal,
  type Refused,
  refusal,
  USUAL_KEEPS,
  type Way,
} from './refusal';
import { type FoodEntry, foods, LISTED_JARS, type ListedJar } from './tables';

const METHODS: readonly CanningMethod[] = ['boiling-water', 'dial-gauge', 'weighted-gauge'];

/** The name by which a choice is asked for: the food's own, or the product's where the form alone could be several. */
function nameFor(food: KnownFood, choice: FormChoice): string {
  const [first, ...others] = matchForm(food, choice.form);
  return first === choice && others.length === 0 ? food.entry.name : choice.food;
}

interface Found {
  readonly choice: FormChoice;
  readonly way: CanningWay;
  readonly sizes: readonly ListedJar[];
}

/** Everything that is served of these forms at the place, in any jar, pack and canner. */
function found(food: KnownFood, choices: readonly FormChoice[], asked: Question): Found[] {
  const methods = asked.method === 'atmospheric-steam' ? [...METHODS, asked.method] : METHODS;
  return choices.flatMap((choice) =>
    methods.flatMap((method) =>
      packsOf(rowsOfChoice(choice)).flatMap((pack) => {
        const holds = (size: ListedJar) =>
          'cell' in decide(food, choice, { method, pack, jar: readJar(size), elevation: asked.elevation });
        const printed = rowsOfChoice(choice).filter((row) => row.method === printedMethod(method));
        const sizes = LISTED_JARS.filter((size) => printed.some(({ jars }) => jars.includes(size)) && holds(size));
        if (sizes.length === 0) return [];
        // a jar between two sizes takes the next larger one's process
        const jar = listedSize(asked.jar, sizes) === undefined ? (sizes[sizes.length - 1] as string) : asked.jar.name;
        return [{ choice, way: { food: nameFor(food, choice), form: choice.form, pack, jar, method }, sizes }];
      }),
    ),
  );
}

/** What is served, in words: `halved or sliced (hot or raw pack; pint, quart; boiling-water, dial-gauge)`. */
function servedText(list: readonly Found[]): string {
  const choices = [...new Set(list.map(({ choice }) => choice))];
  return choices
    .map((choice) => {
      const of = list.filter((item) => item.choice === choice);
      const packs = [...new Set(of.map(({ way }) => way.pack))].join(' or ');
      const jars = LISTED_JARS.filter((size) => of.some(({ sizes }) => sizes.includes(size))).join(', ');
      const methods = [...new Set(of.map(({ way }) => way.method))].join(', ');
      return `${choiceText(choice)} (${packs} pack; ${jars}; ${methods})`;
    })
    .join('; ');
}

/** The words of `instead`: the hint where a way holds it, what is tested otherwise, and how else to keep the food. */
function insteadText(food: KnownFood, refused: Refused, list: readonly Found[]): string {
  const { notCanned, hint } = refused;
  if (notCanned !== undefined && (notCanned.cans !== true || list.length > 0)) return notCanned.instead;
  if (hint !== undefined && list.some(({ way }) => hint.holds(way))) return hint.text;
  if (list.length > 0) return `tested for ${food.entry.name}: ${servedText(list)}`;
  return keepText(notCanned?.keeps ?? USUAL_KEEPS);
}

/** The refusal, with what can be done instead in words and as data: of the form asked for, or else of the food. */
export function refuse(food: KnownFood, refused: Refused, asked: Question, choice?: FormChoice): ProcessRefusal {
  const same = choice === undefined ? [] : found(food, [choice], asked);
  const list = same.length > 0 ? same : found(food, food.choices, asked);
  const ways: Way[] = [
    ...list.map(({ way }) => way),
    ...(refused.notCanned?.keeps ?? USUAL_KEEPS).map((keep) => ({ keep })),
  ];
  return refusal({
    reason: refused.reason,
    instead: insteadText(food, refused, list),
    ways,
    basis: refused.basis ?? [],
    cautions: [...(refused.cautions ?? []), ...(refused.notCanned?.obtained === 'memory' ? [caution('recalled')] : [])],
  });
}

/**
 * The foods a wide name could be that are tested in a form: those that the page of the form names, or those of its kind
 * that have it.
 */
function narrower(wide: FoodEntry, text: string): readonly { food: KnownFood; choices: readonly FormChoice[] }[] {
  const [own] = unnamedForms(wide, text).filter(({ food }) => food === wide.name);
  return foods
    .filter((entry) => own !== undefined || entry.of?.includes(wide.name) === true)
    .map(knowledgeOf)
    .map((food) => ({
      food,
      choices:
        own === undefined
          ? matchForm(food, text)
          : food.choices.filter((choice) => choice.food === own.food && choice.form === own.form),
    }))
    .filter(({ food, choices }) => choices.length > 0 && refusedForm(food, text).length === 0);
}

/** The refusal of a wide name (`berry`) in a form that is tested for foods by name: each of those is a way. */
export function refuseWide(wide: FoodEntry, text: string, asked: Question): ProcessRefusal | undefined {
  const could = narrower(wide, text);
  if (wide.wide !== true || could.length === 0) return undefined;
  const names = could.map(({ food }) => food.entry.name).join(', ');
  return refusal({
    reason: `"${wide.name}" could be several foods, and ${text} is in these tables only for foods by name: ${names}`,
    instead: `name the food, or ${keepText(USUAL_KEEPS)}`,
    ways: [
      ...could.flatMap(({ food, choices }) => found(food, choices, asked).map(({ way }) => way)),
      ...USUAL_KEEPS.map((keep) => ({ keep })),
    ],
  });
}
