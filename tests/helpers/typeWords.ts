/** Types of single values in words: which dimension a quantity has, which strings are a choice. */
import ts from 'typescript';
import { findUnit, UNITS } from '../../src/quantity/units';

/** A type in words. */
export type Shape =
  | { readonly kind: 'leaf'; readonly word: string }
  | { readonly kind: 'choice'; readonly words: readonly (string | number)[] }
  | { readonly kind: 'list' | 'map'; readonly of: Shape }
  /** `lacks` names the ends that need not be there. */
  | { readonly kind: 'range'; readonly of: Shape; readonly lacks: readonly string[] }
  | { readonly kind: 'object'; readonly name?: string; readonly fields: readonly Field[] }
  | { readonly kind: 'oneOf'; readonly of: readonly Shape[] };

/** One field of an argument or an answer. */
export interface Field {
  readonly name: string;
  readonly optional: boolean;
  readonly shape: Shape;
  /** Whether it may be null. */
  readonly orNull?: true;
  /** Its line of documentation; empty where it has none. */
  readonly says: string;
  /** `src/acid/brine.ts:34`; undefined where another package declares it. */
  readonly at?: string;
}

/** One of several shapes, each once, in an order that does not depend on what else was compiled. */
export function oneOf(shapes: readonly Shape[]): Shape {
  const flat = shapes.flatMap((shape) => (shape.kind === 'oneOf' ? shape.of : [shape]));
  const words = flat.flatMap((shape) => (shape.kind === 'choice' ? shape.words : []));
  const others = new Map(flat.filter(({ kind }) => kind !== 'choice').map((shape) => [keyOf(shape), shape]));
  if (others.delete('leaf true'))
    others.set(others.delete('leaf false') ? 'leaf boolean' : 'leaf true', leaf('boolean'));
  const sorted = [...others].sort(([one], [other]) => (String(one) < String(other) ? -1 : 1)).map(([, shape]) => shape);
  if (words.length > 0) sorted.push(choiceOf(words));
  return sorted.length === 1 ? (sorted[0] as Shape) : { kind: 'oneOf', of: sorted };
}

/** The literals of a union, sorted; the hundreds of spellings of units are one word. */
function choiceOf(words: readonly (string | number)[]): Shape {
  const distinct = [...new Set(words)].sort((one, other) => (one < other ? -1 : 1));
  const isUnits = distinct.length > 2 && distinct.every((word) => typeof word === 'string' && findUnit(word));
  return isUnits ? leaf('unit') : { kind: 'choice', words: distinct };
}

/** What tells two shapes apart: objects by themselves, the rest by their words. */
function keyOf(shape: Shape): unknown {
  if (shape.kind === 'object') return shape.name === undefined ? shape : `object ${shape.name}`;
  if (shape.kind === 'leaf') return `leaf ${shape.word}`;
  return shape.kind === 'list' || shape.kind === 'range' || shape.kind === 'map' ? keyOfPart(shape) : shape;
}
const keyOfPart = (shape: Extract<Shape, { kind: 'list' | 'range' | 'map' }>): unknown => {
  const inner = keyOf(shape.of);
  return typeof inner === 'string' ? `${shape.kind} of ${inner}` : shape;
};

const leaf = (word: string): Shape => ({ kind: 'leaf', word });

/** A value that is no object: text, number, share, true or false. */
export function leafOf(type: ts.Type): Shape | undefined {
  const { flags } = type;
  if (flags & ts.TypeFlags.StringLiteral) return { kind: 'choice', words: [(type as ts.StringLiteralType).value] };
  if (flags & (ts.TypeFlags.String | ts.TypeFlags.TemplateLiteral | ts.TypeFlags.StringMapping)) return leaf('text');
  if (flags & ts.TypeFlags.NumberLiteral) return { kind: 'choice', words: [(type as ts.NumberLiteralType).value] };
  if (flags & ts.TypeFlags.NumberLike) return leaf('number');
  if (flags & ts.TypeFlags.Boolean) return leaf('boolean');
  if (flags & ts.TypeFlags.BooleanLiteral) return leaf((type as { intrinsicName?: string }).intrinsicName ?? 'boolean');
  if (flags & (ts.TypeFlags.Void | ts.TypeFlags.Undefined)) return leaf('nothing');
  return undefined;
}

/** `{ value, unit }`: the dimension of its units, or money. */
export function quantityOf(type: ts.Type, checker: ts.TypeChecker): Shape | undefined {
  if (!(type.flags & ts.TypeFlags.Object)) return undefined;
  const properties = type.getProperties();
  if (properties.length !== 2 || !properties.every((each) => each.getName() === 'value' || each.getName() === 'unit'))
    return undefined;
  const unit = type.getProperty('unit');
  if (unit === undefined) return undefined;
  const units = checker.getTypeOfSymbol(unit);
  const spelled = (units.isUnion() ? units.types : [units]).flatMap((each) =>
    each.isStringLiteral() ? [each.value] : [],
  );
  // any text for a unit: money where the type says so, otherwise a quantity of a kind that is not known here
  if (spelled.length === 0) return leaf(type.symbol?.name === 'Money' ? 'money' : 'quantity');
  if (spelled.some((each) => each.startsWith('delta '))) {
    return leaf(spelled.some((each) => each === 'kg') ? 'quantity' : 'temperature difference');
  }
  const dimensions = new Set(spelled.map((each) => findUnit(each)?.dimension ?? 'unknown'));
  const all = Object.keys(UNITS).length;
  if (dimensions.size > 3) return leaf('quantity');
  return dimensions.size < all ? oneOf([...dimensions].map(leaf)) : leaf('quantity');
}

const WRITTEN_AMOUNT = /^[\d¼½¾⅓⅔]/;
const isTemplate = (type: ts.Type): type is ts.TemplateLiteralType => (type.flags & ts.TypeFlags.TemplateLiteral) !== 0;
/** `24.50 USD`: a number before a word in capitals. */
const isMoney = (type: ts.Type): boolean =>
  isTemplate(type) && type.types.some(({ flags }) => (flags & ts.TypeFlags.StringMapping) !== 0);
const isPercent = (type: ts.Type): boolean => isTemplate(type) && /^ ?%$/.test(type.texts[type.texts.length - 1] ?? '');

/** A union: the many spellings of an amount are one word, literals are one choice. */
export function collapseUnion(type: ts.UnionType, checker: ts.TypeChecker, shapeOf: (member: ts.Type) => Shape): Shape {
  const hasQuantity = type.types.some((member) => quantityOf(member, checker) !== undefined);
  const hasMoney = type.types.some(isMoney);
  const isShare = type.types.some(isPercent);
  const shapes: Shape[] = [];
  for (const member of type.types) {
    if (member.flags & (ts.TypeFlags.Undefined | ts.TypeFlags.Null)) continue;
    if (member.isStringLiteral()) {
      if (!(hasQuantity && WRITTEN_AMOUNT.test(member.value))) shapes.push(shapeOf(member));
    } else if (isTemplate(member)) {
      if (!hasQuantity && !isPercent(member)) shapes.push(leaf('text'));
    } else if (isShare && member.flags & ts.TypeFlags.Number) shapes.push(leaf('share'));
    else shapes.push(hasMoney && quantityOf(member, checker) !== undefined ? leaf('money') : shapeOf(member));
  }
  return oneOf(shapes);
}
