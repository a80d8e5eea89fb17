/** The schema that a function reads its argument with, as JSON Schema; what each field means is its line in the source. */
import type * as z from 'zod/mini';
import { type Takes, takesOf } from '../../src/quantity/reader';
import { type Dimension, UNITS } from '../../src/quantity/units';
import { describe } from '../../src/words/word';
import { type Field, oneOf, type Shape } from '../helpers/typeWords';
import {
  anyOf,
  type Definitions,
  type JsonSchema,
  moneyRef,
  plainText,
  quantityRef,
  schemaOf,
  shareSchema,
} from './shapeSchema';

type Schema = z.core.$ZodType;
interface Definition {
  readonly type: string;
  readonly innerType: Schema;
  readonly element: Schema;
  readonly in: Schema;
  readonly out: Schema;
  readonly keyType: Schema;
  readonly valueType: Schema;
  readonly shape: Readonly<Record<string, Schema>>;
}
const definitionOf = (schema: Schema): Definition => schema._zod.def as unknown as Definition;
const ANYTHING: Shape = { kind: 'leaf', word: 'anything' };

/** The objects that a type may be. */
const objectsOf = (shape: Shape): readonly (readonly Field[])[] =>
  shape.kind === 'object' ? [shape.fields] : shape.kind === 'oneOf' ? shape.of.flatMap(objectsOf) : [];
/** The items of a list that a type may be. */
const itemsOf = (shape: Shape): Shape =>
  shape.kind === 'list'
    ? shape.of
    : shape.kind === 'oneOf'
      ? oneOf(shape.of.filter(({ kind }) => kind === 'list').map(itemsOf))
      : ANYTHING;

/** What the type says of a field. */
function fieldOf(shape: Shape, name: string): { readonly says: string; readonly shape: Shape } {
  if (shape.kind === 'range') return { says: '', shape: shape.of };
  const found = objectsOf(shape).flatMap((fields) => fields.filter((field) => field.name === name));
  const says = found.find((field) => field.says !== '')?.says ?? '';
  return { says, shape: found.length === 0 ? ANYTHING : oneOf(found.map((field) => field.shape)) };
}

/** The limits of a plain number, as JSON Schema has them. */
function limitsOf({ min, max, above, below }: Takes): JsonSchema {
  return {
    ...(min === undefined || above !== undefined ? {} : { minimum: min }),
    ...(above === undefined ? {} : { exclusiveMinimum: above }),
    ...(max === undefined || below !== undefined ? {} : { maximum: max }),
    ...(below === undefined ? {} : { exclusiveMaximum: below }),
  };
}

/** What JSON Schema has no word for: the word of the grammar, the kind, the ends of a quantity, the unit of a number. */
function notes(schema: Schema, takes: Takes | undefined): JsonSchema {
  const meaning = describe(schema);
  const isNumber = takes?.kind === 'number' || takes?.kind === 'share' || takes?.kind === 'list';
  const { min, max, above } = isNumber || takes === undefined ? ({} as Takes) : takes;
  const kind = meaning?.kind ?? takes?.kind;
  if (kind === undefined) return {};
  return {
    ...(meaning === undefined ? {} : { title: meaning.name }),
    stillroom: {
      ...(meaning === undefined ? {} : { word: meaning.name }),
      kind,
      ...(meaning?.unit === undefined ? {} : { unit: meaning.unit }),
      ...(above === undefined ? {} : { above }),
      ...(min === undefined || above !== undefined ? {} : { min }),
      ...(max === undefined ? {} : { max }),
    },
  };
}

function ofTakes(takes: Takes, definitions: Definitions): JsonSchema | undefined {
  const { kind, choices = [], spelled } = takes;
  if (kind in UNITS) return quantityRef(kind as Dimension, 'takes', definitions);
  switch (kind) {
    case 'number':
      return { type: takes.integer === true ? 'integer' : 'number', ...limitsOf(takes) };
    case 'share':
      return shareSchema('takes', limitsOf(takes));
    case 'choice':
      // a choice of the trade is read in other spellings too
      return spelled === true ? { anyOf: [{ enum: choices }, { type: 'string' }] } : { enum: choices };
    case 'money':
      return moneyRef('takes', definitions);
    default:
      return undefined;
  }
}

/** The reader of one value: by what it says it takes, else by its type. */
function ofReader(schema: Schema, shape: Shape, definitions: Definitions): JsonSchema {
  const takes = takesOf(schema);
  const meaning = describe(schema);
  const found = takes === undefined ? undefined : ofTakes(takes, definitions);
  if (found !== undefined) return { ...found, ...notes(schema, takes) };
  const typed = schemaOf(shape, 'takes', definitions);
  const choices = meaning?.choices === undefined ? {} : { examples: meaning.choices };
  return { ...typed, ...notes(schema, takes), ...choices };
}

/** The JSON Schema of a schema, with what the type says of it. */
export function inputSchema(schema: Schema, shape: Shape, definitions: Definitions): JsonSchema {
  const def = definitionOf(schema);
  if (takesOf(schema) !== undefined || describe(schema) !== undefined) {
    return def.type === 'optional'
      ? inputSchema(def.innerType, shape, definitions)
      : ofReader(schema, shape, definitions);
  }
  switch (def.type) {
    case 'optional':
      return inputSchema(def.innerType, shape, definitions);
    case 'array':
      return { type: 'array', items: inputSchema(def.element, itemsOf(shape), definitions) };
    case 'object':
      return ofObject(def.shape, shape, definitions);
    case 'pipe':
      return ofPipe(def, schema, shape, definitions);
    case 'record':
      return {
        type: 'object',
        additionalProperties: inputSchema(def.valueType, shape.kind === 'map' ? shape.of : ANYTHING, definitions),
      };
    default:
      return ofReader(schema, shape, definitions);
  }
}

function ofPipe({ in: first, out: then }: Definition, schema: Schema, shape: Shape, definitions: Definitions) {
  const list = takesOf(first);
  if (list?.kind === 'list') {
    return { ...inputSchema(then, shape, definitions), minItems: list.min, maxItems: list.max };
  }
  // a reader by itself is a pipe too; any other reads fields first and then checks them together
  return definitionOf(first).type === 'custom'
    ? ofReader(schema, shape, definitions)
    : inputSchema(first, shape, definitions);
}

function ofObject(parts: Readonly<Record<string, Schema>>, shape: Shape, definitions: Definitions): JsonSchema {
  const entries = Object.entries(parts);
  const required = entries.filter(([, part]) => part._zod.optin !== 'optional').map(([name]) => name);
  const properties = entries.map(([name, part]) => {
    const field = fieldOf(shape, name);
    const says = field.says === '' ? describe(part)?.says : plainText(field.says);
    const found = { title: name, ...inputSchema(part, field.shape, definitions) };
    return [name, says === undefined ? found : { ...found, description: says }];
  });
  return {
    type: 'object',
    properties: Object.fromEntries(properties),
    ...(required.length === 0 ? {} : { required }),
    additionalProperties: false,
  };
}

/** The input schema of a function that reads its argument with any of these schemas. */
export function inputSchemas(schemas: readonly Schema[], shapes: readonly Shape[], definitions: Definitions) {
  const made = schemas.map((schema) => {
    const names = Object.keys(definitionOf(schema).shape ?? {});
    const shape = nearestShape(names, shapes);
    const read = inputSchema(schema, shape, definitions);
    // a function that hands a part of its argument on has fields that this schema does not read
    const rest = shapes.length > 1 ? [] : restOf(shape, names);
    return rest.length === 0 ? read : together(read, schemaOf({ kind: 'object', fields: rest }, 'takes', definitions));
  });
  const other = shapes.flatMap((shape) =>
    shape.kind === 'oneOf' ? shape.of.filter(({ kind }) => kind === 'leaf') : [],
  );
  return anyOf([...made, ...other.map((shape) => schemaOf(shape, 'takes', definitions))]);
}

/** The fields of a type that are not among these names. */
const restOf = (shape: Shape, names: readonly string[]): readonly Field[] =>
  objectsOf(shape).flatMap((fields) => fields.filter(({ name }) => !names.includes(name)));

/** Two objects as one. */
function together(one: JsonSchema, other: JsonSchema): JsonSchema {
  const required = [one, other].flatMap((each) => (each.required ?? []) as string[]);
  return { ...one, properties: { ...(one.properties as object), ...(other.properties as object) }, required };
}

/** The type that has these fields, and few others. */
function nearestShape(names: readonly string[], shapes: readonly Shape[]): Shape {
  const unlike = (shape: Shape): number => {
    const own = new Set(objectsOf(shape).flatMap((fields) => fields.map(({ name }) => name)));
    return names.filter((name) => !own.has(name)).length * 100 + own.size;
  };
  return [...shapes].sort((one, other) => unlike(one) - unlike(other))[0] ?? ANYTHING;
}
