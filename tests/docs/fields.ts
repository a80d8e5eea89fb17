import type { PublicFace } from '../helpers/publicTypes';
import type { Field, Shape } from '../helpers/typeWords';

/** Every field that an argument, an answer or an exported type holds, each declaration once, with what it belongs to. */
export function* everyField(face: PublicFace): Generator<{ field: Field; of: string }> {
  const done = new Set<Shape>();
  function* walk(shape: Shape, of: string): Generator<{ field: Field; of: string }> {
    if (done.has(shape)) return;
    done.add(shape);
    if (shape.kind === 'object') {
      for (const field of shape.fields) {
        yield { field, of };
        yield* walk(field.shape, of);
      }
    } else if (shape.kind === 'oneOf') for (const one of shape.of) yield* walk(one, of);
    else if (shape.kind === 'list' || shape.kind === 'range' || shape.kind === 'map') yield* walk(shape.of, of);
  }
  for (const { name, shape } of face.types) yield* walk(shape, name);
  for (const { name, parameters, answer } of face.functions) {
    for (const { shape } of parameters) yield* walk(shape, name);
    yield* walk(answer, name);
  }
}

/** Fields without a line of documentation, by the module that declares them: `src/acid/brine.ts:34 water`. */
export function undocumentedFields(face: PublicFace): Map<string, string[]> {
  const lines = new Set<string>();
  const documented = new Set<string>();
  for (const { field } of everyField(face)) {
    if (field.at === undefined) continue;
    (field.says === '' ? lines : documented).add(`${field.at} ${field.name}`);
  }
  const byModule = new Map<string, string[]>();
  for (const line of [...lines].sort()) {
    const module = line.split('/')[1] ?? '';
    byModule.set(module, [...(byModule.get(module) ?? []), line]);
  }
  return byModule;
}
