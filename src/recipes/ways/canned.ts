/** The tested processes that a recipe ends in, in a kitchen: for each pack, jar and canner. */
import { decide, packsOf, printedMethod, type Served } from '../../process/decide';
import { choiceOfProcess, type FormChoice, type KnownFood, knowledgeOf, rowsOfChoice } from '../../process/food';
import { servedAnswer, type TestedProcess } from '../../process/servedAnswer';
import { LISTED_JARS } from '../../process/tables';
import type { Quantity } from '../../quantity/types';
import type { Reason } from '../../sources/no';
import { type ReadJar, readJar } from '../../words/jar';
import type { CanningMethod } from '../../words/method';
import type { AnyPack } from '../../words/pack';

/** A tested process as a way to keep holds it. */
export type WayProcess = Pick<
  TestedProcess,
  'row' | 'pack' | 'jar' | 'method' | 'minutes' | 'pressure' | 'headspace' | 'acid' | 'sterilizeJars'
>;

/** What a kitchen has to can with; what is left out is not limited. */
export interface CanningKitchen {
  readonly elevation: Quantity<'length'>;
  readonly methods?: readonly CanningMethod[] | undefined;
  readonly jars?: readonly ReadJar[] | undefined;
}

/** What the process tables serve for a recipe here, or why they serve nothing, and which canner it would take. */
export interface Canned {
  readonly processes: readonly WayProcess[];
  readonly served: readonly TestedProcess[];
  /** Kinds of canner that would do, where the kitchen has none of them. */
  readonly otherCanners: readonly CanningMethod[];
  readonly reason?: Reason;
}

const ALL: readonly CanningMethod[] = ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam'];

/** A process as a way shows it. */
export const shown = ({
  row,
  pack,
  jar,
  method,
  minutes,
  pressure,
  headspace,
  acid,
  sterilizeJars,
}: TestedProcess): WayProcess => ({
  row,
  pack,
  jar,
  method,
  minutes,
  ...(pressure === undefined ? {} : { pressure }),
  headspace,
  ...(acid === undefined ? {} : { acid }),
  sterilizeJars,
});

interface Question {
  readonly food: KnownFood;
  readonly choice: FormChoice;
  readonly kitchen: CanningKitchen;
}

/** Everything that is served with one kind of canner, in any pack and in the jars of the kitchen. */
function withMethod({ food, choice, kitchen }: Question, method: CanningMethod): (TestedProcess | Reason)[] {
  const rows = rowsOfChoice(choice).filter((row) => row.method === printedMethod(method));
  const jars =
    kitchen.jars ??
    LISTED_JARS.filter((size) => rows.some((row) => row.jars.includes(size))).map((size) => readJar(size));
  return packsOf(rows).flatMap((pack: AnyPack) =>
    jars.map((jar) => {
      const asked = { method, pack, jar, elevation: kitchen.elevation };
      const found = decide(food, choice, asked);
      if ('code' in found) return { code: found.code, text: found.text };
      return servedAnswer(found as Served, asked, food, []);
    }),
  );
}

/** The processes of a recipe's page for a food, with what the kitchen has. */
export function cannedIn(foodId: string, process: string, packs: readonly AnyPack[], kitchen: CanningKitchen): Canned {
  // a recipe of many foods is asked for by what it makes: none of them alone makes spaghetti sauce
  const own = knowledgeOf(foodId);
  const found = choiceOfProcess(own, process);
  if (found === undefined) {
    const text = `the process tables hold no process of this page for ${own.name}`;
    return { processes: [], served: [], otherCanners: [], reason: { code: 'no process', text } };
  }
  const question = { ...found, kitchen };
  const inPack = (each: TestedProcess | Reason): boolean => !('tested' in each) || packs.includes(each.pack);
  const of = (methods: readonly CanningMethod[]) =>
    methods.flatMap((method) => withMethod(question, method)).filter(inPack);
  const here = of(kitchen.methods ?? ALL);
  const served = here.filter((each): each is TestedProcess => 'tested' in each);
  if (served.length > 0) return { processes: served.map(shown), served, otherCanners: [] };
  const others = ALL.filter((method) => of([method]).some((each) => 'tested' in each));
  const reason = here.find((each): each is Reason => !('tested' in each));
  return {
    processes: [],
    served: [],
    otherCanners: others,
    ...(reason === undefined ? {} : { reason }),
  };
}

/** The packs of a recipe in which the page names a food. */
export function packsFor(
  row: { readonly packFoods?: { readonly hot?: readonly string[]; readonly raw?: readonly string[] } },
  food: string,
): readonly AnyPack[] {
  const all: readonly AnyPack[] = ['hot', 'raw', 'not stated'];
  return all.filter((pack) => pack === 'not stated' || (row.packFoods?.[pack]?.includes(food) ?? true));
}
