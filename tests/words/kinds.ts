/** Which kinds of value the name of a field stands for, over the arguments and answers of public functions. */
import type { PublicFace, PublicFunction } from '../helpers/publicTypes';
import type { Field, Shape } from '../helpers/typeWords';

/** Fields whose names are those of another standard: a chart is a Vega-Lite specification. */
const FOREIGN = 'src/charts/spec.ts:';
/** The ends of a range: what they are the ends of is the range's name. */
const ENDS = new Set(['low', 'likely', 'high']);

/** Whether each of the things listed says how many of it there are: `jars: [{ jar: 'pint', count: 7 }]`. */
const isCounted = (shape: Shape): boolean => {
  const all = shape.kind === 'oneOf' ? shape.of : [shape];
  return all.every((one) => one.kind === 'object' && one.fields.some(({ name }) => name === 'count'));
};

/**
 * What a field holds. Text in and quantity out are one, and so are a figure and its range, and a number of things and
 * the list that counts them by size.
 */
export function kindsOf(shape: Shape): string[] {
  switch (shape.kind) {
    case 'leaf':
      if (shape.word === 'anything' || shape.word === 'nothing') return [];
      return [shape.word === 'share' ? 'number' : /^(true|false)$/.test(shape.word) ? 'boolean' : shape.word];
    case 'choice':
      return [...new Set(shape.words.map((word) => (typeof word === 'number' ? 'number' : 'choice')))];
    case 'range':
      return kindsOf(shape.of);
    case 'oneOf':
      return [...new Set(shape.of.flatMap(kindsOf))].sort();
    case 'object':
      return ['object'];
    case 'list':
      return isCounted(shape.of) ? ['number'] : kindsOf(shape.of).map((kind) => `list of ${kind}`);
    default:
      return kindsOf(shape.of).map((kind) => `${shape.kind} of ${kind}`);
  }
}

/**
 * Whether a field is one end of the range that its object is: a figure of the kind of the `likely` one beside it, by
 * whatever it is good for (`promised`, `likely`, `ready`), unless `low` and `high` are its ends. The object's name says
 * what they are the ends of.
 */
const isEnd = ({ shape }: Field, beside: readonly Field[]): boolean => {
  const likely = beside.find(({ name }) => name === 'likely');
  if (['low', 'high'].every((end) => beside.some(({ name }) => name === end))) return false;
  return likely !== undefined && kindsOf(shape).join() === kindsOf(likely.shape).join();
};

/** A field as one function takes it or answers with it. */
export interface Use {
  readonly name: string;
  readonly field: Field;
  readonly by: string;
  readonly side: 'takes' | 'answers';
}

function* usesOf({ name: by, parameters, answer }: PublicFunction): Generator<Use> {
  const done = new Set<Shape>();
  function* walk(shape: Shape, side: Use['side']): Generator<Use> {
    if (done.has(shape)) return;
    done.add(shape);
    if (shape.kind === 'object') {
      for (const field of shape.fields) {
        if (!field.at?.startsWith(FOREIGN) && !isEnd(field, shape.fields)) yield { name: field.name, field, by, side };
        yield* walk(field.shape, side);
      }
    } else if (shape.kind === 'oneOf') for (const one of shape.of) yield* walk(one, side);
    else if ('of' in shape) yield* walk(shape.of, side);
  }
  for (const { shape } of parameters) yield* walk(shape, 'takes');
  yield* walk(answer, 'answers');
}

export const usesOfWords = ({ functions }: PublicFace): Use[] => functions.flatMap((one) => [...usesOf(one)]);

/** The first few of the functions. */
export const short = (names: ReadonlySet<string>): string => {
  const [...all] = names;
  return all.slice(0, 4).join(', ') + (all.length > 4 ? ` and ${all.length - 4} more` : '');
};

/**
 * The kinds of a name, each with the functions that use it so. Where an argument reads any text, the fixed names that
 * answers give back are text to it.
 */
export function kindsByName(list: readonly Use[]): Map<string, Map<string, Set<string>>> {
  const names = new Map<string, Map<string, Set<string>>>();
  const readAsText = new Set(
    list.flatMap(({ name, field, side }) => (side === 'takes' && kindsOf(field.shape).includes('text') ? [name] : [])),
  );
  for (const { name, field, by, side } of list) {
    const found = kindsOf(field.shape).join(' or ');
    const kind = found === 'choice' && side === 'answers' && readAsText.has(name) ? 'text' : found;
    if (kind === '' || ENDS.has(name)) continue;
    const kinds = names.get(name) ?? new Map<string, Set<string>>();
    names.set(name, kinds.set(kind, (kinds.get(kind) ?? new Set()).add(`${by} ${side}`)));
  }
  return names;
}

/** Whether every two uses agree: one takes all that the other holds. A jar by name or by volume is a jar by name too. */
export function agree(kinds: readonly string[]): boolean {
  const sets = kinds.map((kind) => kind.split(' or '));
  const holds = (all: readonly string[], some: readonly string[]): boolean => some.every((kind) => all.includes(kind));
  return sets.every((one) => sets.every((other) => holds(one, other) || holds(other, one)));
}
