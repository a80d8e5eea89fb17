/** Turns the types of arguments and answers, read by the compiler, into JSON Schema 2020-12. */
import { isDeepStrictEqual } from 'node:util';
import { type Dimension, UNITS } from '../../src/quantity/units';
import type { Field, Shape } from '../helpers/typeWords';

export type JsonSchema = Readonly<Record<string, unknown>>;
/** An argument may be written in more ways than an answer is: a quantity as text, a share in percent. */
export type Side = 'takes' | 'answers';

/** The schemas that others refer to, by name; those of arguments end in `Given`. */
export class Definitions {
  readonly #found = new Map<string, { readonly shape: Shape | undefined; schema: JsonSchema }>();

  /** The reference to a definition, which is made the first time. */
  refer(name: string, shape: Shape | undefined, make: () => JsonSchema): JsonSchema {
    const known = this.#found.get(name);
    if (known === undefined) {
      const entry = { shape, schema: {} as JsonSchema };
      this.#found.set(name, entry);
      entry.schema = make();
    } else if (known.shape !== shape && !isDeepStrictEqual(known.shape, shape))
      throw new Error(`two types of the name ${name}`);
    return { $ref: `#/$defs/${name}` };
  }

  /** All of them, in the order of their names. */
  all(): { name: string; schema: JsonSchema }[] {
    const sorted = [...this.#found].sort(([one], [other]) => (one < other ? -1 : 1));
    return sorted.map(([name, { schema }]) => ({ name, schema }));
  }
}

const given = (name: string, side: Side): string => (side === 'takes' ? `${name}Given` : name);
const capital = (text: string): string => text[0]?.toUpperCase() + text.slice(1);
const DIMENSIONS = Object.keys(UNITS) as Dimension[];
const unitsOf = (dimension: Dimension): string[] => Object.keys(UNITS[dimension]);

const valued = (unit: JsonSchema): JsonSchema => ({
  type: 'object',
  properties: { value: { type: 'number' }, unit },
  required: ['value', 'unit'],
  additionalProperties: false,
});

/** A quantity: of an answer in one of its units, of an argument in any spelling, also as one text. */
function quantity(title: string, units: readonly string[], side: Side): JsonSchema {
  if (side === 'answers') return { title, ...valued({ enum: units }) };
  const unit = { type: 'string', description: `A unit of ${title} in any usual spelling.`, examples: units };
  const text = { type: 'string', pattern: '[0-9¼-¾⅐-⅞]', description: 'An amount and a unit in one text.' };
  return { title, anyOf: [text, valued(unit)] };
}

/** The reference to the schema of a dimension. */
export const quantityRef = (dimension: Dimension, side: Side, definitions: Definitions): JsonSchema =>
  definitions.refer(given(capital(dimension), side), undefined, () => quantity(dimension, unitsOf(dimension), side));

/** The reference to the schema of money. */
export const moneyRef = (side: Side, definitions: Definitions): JsonSchema =>
  definitions.refer(given('Money', side), undefined, () => {
    const whole = valued({ type: 'string', description: 'A currency code of three letters.', examples: ['USD'] });
    const text = { type: 'string', description: 'An amount and a currency code in one text.', examples: ['24.50 USD'] };
    return side === 'answers' ? { title: 'money', ...whole } : { title: 'money', anyOf: [text, whole] };
  });

/** A share: 0 to 1, as an argument also text in percent. */
export function shareSchema(side: Side, limits: JsonSchema = { minimum: 0, maximum: 1 }): JsonSchema {
  const number = { type: 'number', ...limits };
  if (side === 'answers') return number;
  return { anyOf: [number, { type: 'string', pattern: '%\\s*$', description: 'The share in percent.' }] };
}

function leafSchema(word: string, side: Side, definitions: Definitions): JsonSchema {
  const dimension = word === 'temperature difference' ? 'temperatureDifference' : word;
  const known = DIMENSIONS.find((each) => each === dimension);
  if (known !== undefined) return quantityRef(known, side, definitions);
  switch (word) {
    case 'quantity':
      return definitions.refer(given('Quantity', side), undefined, () =>
        quantity('quantity', DIMENSIONS.flatMap(unitsOf), side),
      );
    case 'money':
      return moneyRef(side, definitions);
    case 'share':
      // where only the type is known, a share may be parts such as "3:4" as well
      return side === 'answers' ? shareSchema(side) : { anyOf: [{ type: 'number', minimum: 0 }, { type: 'string' }] };
    case 'unit':
      return { anyOf: [{ enum: [...new Set(DIMENSIONS.flatMap(unitsOf))] }, { type: 'string' }] };
    case 'text':
      return { type: 'string' };
    case 'number':
    case 'boolean':
      return { type: word };
    case 'true':
    case 'false':
      return { const: word === 'true' };
    case 'anything':
      return {};
    default:
      throw new Error(`no schema for ${word}`);
  }
}

/** The schema of a shape. */
export function schemaOf(shape: Shape, side: Side, definitions: Definitions): JsonSchema {
  const inner = (part: Shape): JsonSchema => schemaOf(part, side, definitions);
  switch (shape.kind) {
    case 'leaf':
      return leafSchema(shape.word, side, definitions);
    case 'choice':
      return { enum: shape.words };
    case 'list':
      return { type: 'array', items: inner(shape.of) };
    case 'map':
      return { type: 'object', additionalProperties: inner(shape.of) };
    case 'range':
      return rangeSchema(inner(shape.of), shape.lacks);
    case 'oneOf':
      return anyOf(shape.of.filter((part) => part.kind !== 'leaf' || part.word !== 'nothing').map(inner));
    default: {
      const { name, fields } = shape;
      if (name === undefined) return objectSchema(fields, inner);
      const plain = given(name.replaceAll(/\W+/g, ' ').trim().replaceAll(' ', 'Of'), side);
      return definitions.refer(plain, shape, () => ({ title: name, ...objectSchema(fields, inner) }));
    }
  }
}

/** One of several; plain when there is one. */
export const anyOf = (schemas: readonly JsonSchema[]): JsonSchema =>
  schemas.length === 1 ? (schemas[0] as JsonSchema) : { anyOf: schemas };

function rangeSchema(one: JsonSchema, lacks: readonly string[]): JsonSchema {
  const ends = ['low', 'likely', 'high'];
  return {
    type: 'object',
    properties: Object.fromEntries(ends.map((end) => [end, one])),
    required: ends.filter((end) => !lacks.includes(end)),
    additionalProperties: false,
  };
}

export const plainText = (says: string): string => says.replaceAll(/\s+/g, ' ');

function objectSchema(fields: readonly Field[], inner: (part: Shape) => JsonSchema): JsonSchema {
  const required = fields.filter(({ optional }) => !optional).map(({ name }) => name);
  return {
    type: 'object',
    properties: Object.fromEntries(
      fields.map(({ name, says, shape, orNull }) => {
        const schema = orNull === true ? { anyOf: [inner(shape), { type: 'null' }] } : inner(shape);
        return [name, { ...schema, ...(says === '' ? {} : { description: plainText(says) }) }];
      }),
    ),
    ...(required.length === 0 ? {} : { required }),
    additionalProperties: false,
  };
}
