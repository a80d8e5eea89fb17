/** Examples of the fields of an argument: what good arguments hold there. */
import type { JsonSchema } from './shapeSchema';

const MOST = 3;
type Tree = { [key: string]: unknown };
const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null && !Array.isArray(value);

/** Adds what an argument holds to the fields that hold it. */
function note(schema: Tree, value: unknown): void {
  if (isTree(value) && isTree(schema.properties)) {
    for (const [name, part] of Object.entries(schema.properties)) if (name in value) note(part as Tree, value[name]);
  } else if (Array.isArray(value) && isTree(schema.items)) {
    for (const item of value.slice(0, MOST)) note(schema.items, item);
  } else if (Array.isArray(value) && Array.isArray(schema.prefixItems)) {
    for (const [index, item] of value.entries()) note(schema.prefixItems[index] as Tree, item);
  } else if (isTree(value) && Array.isArray(schema.anyOf)) {
    const fits = (schema.anyOf as Tree[]).find(
      ({ properties }) => isTree(properties) && Object.keys(value).every((key) => key in properties),
    );
    if (fits !== undefined) note(fits, value);
  } else if ((typeof value === 'string' || typeof value === 'number') && !isChosen(schema)) {
    const known = (schema.examples ?? []) as unknown[];
    if (known.length < MOST && !known.includes(value)) schema.examples = [...known, value];
  }
}

/** Whether every value is listed anyway. */
const isChosen = (schema: Tree): boolean =>
  'enum' in schema || 'const' in schema || (Array.isArray(schema.anyOf) && schema.anyOf.some(isChosen));

/** The schema with examples in it. */
export function withExamples(schema: JsonSchema, inputs: readonly unknown[]): JsonSchema {
  const copy = structuredClone(schema) as Tree;
  for (const input of inputs) note(copy, input);
  return copy;
}
