/**
 * Writes docs/api.md: the public face of every module in words, so that a change of it shows in a review.
 * `npm run api` writes the page; `npm run api -- --undocumented [module]` lists the fields that have no line yet, and
 * `npm run api -- --word jar` the kinds of value that a name stands for, with the functions.
 */
import { writeFileSync } from 'node:fs';
import { type PublicFace, type PublicFunction, publicFace, root } from '../helpers/publicTypes';
import type { Field, Shape } from '../helpers/typeWords';
import { kindsByName, usesOfWords } from '../words/kinds';
import { undocumentedFields } from './fields';

export const PAGE = 'docs/api.md';
const INTRO = `# The public face

Written by \`npm run api\`; a test compares it. For each module: its functions with what they take and answer, and its
types with their fields. A quantity is named by its kind (\`mass\`: \`"62 lb"\` or \`{ value, unit }\`), \`?\` marks a field that
may be left out, \`range of mass\` is \`{ low, likely?, high }\` (an argument needs all three), \`share\` a number from 0 to 1
or text in percent, and \`Name\` a type that is written out where its module lists it.
`;

const joined = (parts: readonly string[]): string => parts.join(' or ');

/** A shape in one line, or undefined where it has fields to write below. */
function words(shape: Shape): string {
  switch (shape.kind) {
    case 'leaf':
      return shape.word;
    case 'choice':
      return `choice [${shape.words.map((word) => JSON.stringify(word)).join(', ')}]`;
    case 'oneOf':
      return joined(shape.of.map(words));
    case 'object':
      return shape.name ?? 'object';
    default:
      return `${shape.kind} of ${shape.of.kind === 'oneOf' ? `(${words(shape.of)})` : words(shape.of)}`;
  }
}

/** The objects without a name inside a shape: their fields are written below it. */
function below(shape: Shape): readonly (readonly Field[])[] {
  if (shape.kind === 'object') return shape.name === undefined ? [shape.fields] : [];
  if (shape.kind === 'oneOf') return shape.of.flatMap(below);
  return shape.kind === 'list' || shape.kind === 'range' || shape.kind === 'map' ? below(shape.of) : [];
}

const MOST_WIDE = 120;

/** A field without anything to write below, or undefined. */
const flat = ({ name, optional, shape }: Field): string | undefined =>
  below(shape).length > 0 ? undefined : `${name}${optional ? '?' : ''}: ${words(shape)}`;

/** All fields in one line, where they fit: `{ salt: volume, water: volume }`. */
function oneLine(fields: readonly Field[], room: number): string | undefined {
  const parts = fields.map(flat);
  const line = `{ ${parts.join(', ')} }`;
  return parts.includes(undefined) || line.length > room ? undefined : line;
}

/** Where an answer's figures come from, and what to mind: most answers end so. */
const isUsualEnd = (fields: readonly Field[], at: number): boolean =>
  fields[at] !== undefined &&
  fields[at + 1] !== undefined &&
  flat(fields[at] as Field) === 'basis: list of Basis' &&
  flat(fields[at + 1] as Field) === 'cautions: list of Caution';

/** A head such as `type Brine` or `topUp: object`, with its objects behind it or below it. */
function* withObjects(head: string, shape: Shape, indent: string, open: readonly unknown[]): Generator<string> {
  const objects = below(shape).filter((fields) => !open.includes(fields)); // a type may hold itself
  const [only] = objects;
  const short =
    objects.length === 1 && only !== undefined ? oneLine(only, MOST_WIDE - indent.length - head.length) : undefined;
  yield `${indent}${head}${short === undefined ? '' : ` ${short}`}`;
  if (short !== undefined) return;
  for (const [index, fields] of objects.entries()) {
    if (index > 0) yield `${indent}  or`;
    yield* fieldLines(fields, `${indent}  `, [...open, fields]);
  }
}

function* fieldLines(fields: readonly Field[], indent: string, open: readonly unknown[]): Generator<string> {
  for (let at = 0; at < fields.length; at += 1) {
    const { name, optional, shape } = fields[at] as Field;
    if (isUsualEnd(fields, at)) {
      yield `${indent}basis, cautions`;
      at += 1;
    } else yield* withObjects(`${name}${optional ? '?' : ''}: ${words(shape)}`, shape, indent, open);
  }
}

function* functionLines({ name, parameters, answer }: PublicFunction): Generator<string> {
  const taken = parameters.map((one) => {
    const shape = words(one.shape);
    return parameters.length === 1 && one.name === 'input' && one.shape.kind === 'object'
      ? shape
      : `${one.name}${one.optional ? '?' : ''}: ${shape}`;
  });
  yield `${name}(${taken.join(', ')}) -> ${words(answer)}`;
  for (const { shape } of parameters) if (below(shape).length > 0) yield* withObjects('takes', shape, '  ', []);
  if (below(answer).length > 0) yield* withObjects('answers', answer, '  ', []);
}

function* moduleLines({ functions, types, values }: PublicFace, module: string): Generator<string> {
  const own = <T extends { module: string }>(list: readonly T[]): T[] => list.filter((one) => one.module === module);
  yield `\n## ${module}\n\n\`\`\`text`;
  for (const { name } of own(values)) yield `value ${name}`;
  for (const one of own(functions)) yield* functionLines(one);
  for (const { name, shape } of own(types)) {
    // its own name is written before its fields; another name is that of the same type elsewhere
    if (shape.kind === 'object' && shape.name === name) {
      const short = oneLine(shape.fields, MOST_WIDE - name.length - 6);
      yield `type ${name}${short === undefined ? '' : ` ${short}`}`;
      if (short === undefined) yield* fieldLines(shape.fields, '  ', [shape.fields]);
    } else yield* withObjects(`type ${name} = ${words(shape)}`, shape, '', []);
  }
  yield '```';
}

/** The page as it should be. */
export function apiPage(face: PublicFace): string {
  const lines = face.modules.flatMap((module) => [...moduleLines(face, module)]);
  return `${INTRO}\n## The root exports\n\n${face.root.map((line) => `- ${line}`).join('\n')}\n${lines.join('\n')}\n`;
}

function run(options: readonly string[]): void {
  const face = publicFace();
  const [first, only] = options;
  if (first === undefined) writeFileSync(root + PAGE, apiPage(face));
  else if (first === '--undocumented') {
    for (const [module, fields] of undocumentedFields(face)) {
      if (only === undefined || only === module) for (const field of fields) console.log(`${module}  ${field}`);
    }
  } else if (first === '--word') {
    for (const [kind, where] of kindsByName(usesOfWords(face)).get(only ?? '') ?? [])
      console.log(`${kind}: ${[...where].join(', ')}`);
  } else throw new Error(`unknown option ${first}`);
}

if (process.argv[1]?.endsWith('tests/docs/api.ts')) run(process.argv.slice(2));
