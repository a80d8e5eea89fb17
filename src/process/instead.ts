/** What a no offers: the processes that are served at the same place, and ways of keeping that are not canning. */
import { formNamed, narrowerOf } from '../foods/lookUpFood';
import { foodOf, formName, nameOf } from '../foods/tables';
import { caution } from '../sources/cautions';
import type { Instead, NotTested } from '../sources/no';
import { listedSize, readJar } from '../words/jar';
import type { CanningMethod } from '../words/method';
import { acidOf, acidRowOf } from './acid';
import { decide, packsOf, printedMethod, type Question, type Served } from './decide';
import {
  type FormChoice,
  type KnownFood,
  knowledgeOf,
  matchForm,
  pagesWithout,
  refusedForm,
  rowsOfChoice,
} from './food';
import { processRecipeOf, recipesEndingIn } from './recipesOf';
import { keepings, type Refused, refusal } from './refusal';
import { LISTED_JARS, type ListedJar, nearFormRows, PRINTED_METHODS } from './tables';

/** The name by which a choice is asked for: the food's own, or the product's where the form alone could be several. */
function nameFor(food: KnownFood, choice: FormChoice): string {
  const [first, ...others] = matchForm(food, formName(choice.form));
  return first === choice && others.length === 0 ? food.name : nameOf(choice.food);
}

/** A process that is served, as the question that asks for it, with its minutes. */
function wayOf(
  question: Pick<Instead, 'food' | 'form' | 'pack' | 'jar'> & { method: CanningMethod },
  { asked }: FormChoice,
  { cell, size }: Served,
): Instead {
  const { food, form, pack, jar, method } = question;
  const { row, minutes, psi } = cell;
  const acid = row.acid === undefined ? undefined : acidRowOf(row.acid, size);
  const packed = pack === 'not stated' ? '' : `, ${pack} pack`;
  const pressure = psi === undefined ? '' : ` at ${psi} psi`;
  return {
    text: `${food} (${form})${packed}, in ${jar} jars, ${method} canner: ${minutes} min${pressure}`,
    ...question,
    minutes,
    ...(acid === undefined ? {} : { acidToAdd: acidOf(acid).text }),
    recipes: recipesEndingIn(row.recipe, asked).map(processRecipeOf),
  };
}

/** Everything that is served of these forms at the place, in any pack and canner, in the jar or the nearest one. */
function served(food: KnownFood, choices: readonly FormChoice[], asked: Question): Instead[] {
  const methods = asked.method === 'atmospheric-steam' ? [...PRINTED_METHODS, asked.method] : PRINTED_METHODS;
  return choices.flatMap((choice) => {
    const name = nameFor(food, choice);
    return methods.flatMap((method) =>
      packsOf(rowsOfChoice(choice)).flatMap((pack): Instead[] => {
        const ask = (jar: string) =>
          decide(food, choice, { method, pack, jar: readJar(jar), elevation: asked.elevation });
        const printed = rowsOfChoice(choice).filter((row) => row.method === printedMethod(method));
        const holds = (size: ListedJar) => printed.some(({ jars }) => jars.includes(size)) && 'cell' in ask(size);
        const sizes = LISTED_JARS.filter(holds);
        const size = listedSize(asked.jar, sizes) ?? sizes[sizes.length - 1];
        if (size === undefined) return [];
        // a jar between two sizes takes the next larger one's process
        const jar = listedSize(asked.jar, sizes) === undefined ? size : asked.jar.name;
        const found = ask(size);
        if (!('cell' in found)) return [];
        return [wayOf({ food: name, form: formName(choice.form), pack, jar, method }, choice, found)];
      }),
    );
  });
}

/** The tested forms that come near one that is not, with what the cook must do to be inside their recipes. */
function nearWays(food: KnownFood, form: string | undefined, asked: Question): Instead[] {
  const id = form === undefined ? undefined : formNamed(form);
  if (id === undefined) return [];
  const { kind } = foodOf(food.id);
  return nearFormRows
    .filter((row) => row.asked.includes(id) && row.kinds.includes(kind))
    .flatMap(({ to, must }) => {
      const choices = food.choices.filter((choice) => choice.form === to);
      return served(food, choices, asked).map((way) => ({ ...way, text: `${way.text}: ${must}` }));
    });
}

/** What to do first, in words: what the table says of the food, or what helps best where something offered holds it. */
function adviceOf({ notCanned, hint }: Refused, ways: readonly Instead[]): Instead[] {
  if (notCanned !== undefined && (notCanned.cans !== true || ways.length > 0)) return [{ text: notCanned.instead }];
  if (hint !== undefined && ways.some(hint.holds)) return [{ text: hint.text }];
  return [];
}

/** The no, with what can be done instead: of the form asked for, or else of the food; the pack asked for first. */
export function refuse(
  food: KnownFood,
  refused: Refused,
  asked: Question,
  choice?: FormChoice,
  form?: string,
): NotTested {
  const same = choice === undefined ? [] : served(food, [choice], asked);
  const near = nearWays(food, form, asked);
  const isNear = (way: Instead): boolean =>
    near.some(
      (each) => each.form === way.form && each.jar === way.jar && each.method === way.method && each.pack === way.pack,
    );
  const others = same.length > 0 ? same : served(food, food.choices, asked);
  const found = [...near, ...others.filter((way) => !isNear(way))];
  const packed = found.filter(({ pack }) => pack === asked.pack);
  const ways = [...packed, ...found.filter((way) => !packed.includes(way))];
  const { hint, notCanned, cautions = [] } = refused;
  const first = hint === undefined ? [] : ways.filter(hint.holds);
  const recalled = notCanned?.obtained === 'memory' ? [caution('recalled')] : [];
  return refusal({ ...refused, cautions: [...cautions, ...recalled] }, [
    ...adviceOf(refused, ways),
    ...first,
    ...ways.filter((way) => !first.includes(way)),
    ...keepings(notCanned?.keeps),
  ]);
}

/** The kinds of a food, or the foods that its own page names, that are tested in a form; in any where none is named. */
function narrower(wide: KnownFood, text: string): readonly { food: KnownFood; choices: readonly FormChoice[] }[] {
  const own = pagesWithout(wide, text).find(({ food }) => food === wide.id);
  return (own?.names ?? narrowerOf(wide.id))
    .map(knowledgeOf)
    .map((food) => ({ food, choices: text === '' ? food.choices : matchForm(food, text) }))
    .filter(
      ({ food, choices }) => choices.length > 0 && refusedForm(food, text === '' ? undefined : text).length === 0,
    );
}

/** The no of a wide name (`berry`, `squash`) whose kinds are tested by name: each of those is offered. */
export function refuseWide(wide: KnownFood, text: string, asked: Question): NotTested | undefined {
  const could = narrower(wide, text);
  if (could.length === 0) return undefined;
  const names = could.map(({ food }) => food.name).join(', ');
  const form = text === '' ? '' : ` as ${text}`;
  return refusal(
    {
      code: 'name one food',
      text: `no tested process for ${wide.name}${form} is in these tables but for foods by name: ${names}`,
    },
    [{ text: 'name the food' }, ...could.flatMap(({ food, choices }) => served(food, choices, asked)), ...keepings()],
  );
}
