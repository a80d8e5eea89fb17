/**
 * Writes the API pages and the guides into `docs/api/`. TypeDoc writes out every spelling of every unit wherever a quantity
 * may be given, which made one page of 34 MB: here each such list becomes the name it has in `stillroom/quantity` again.
 */
import {
  Application,
  ArrayType,
  Converter,
  DeclarationReflection,
  DocumentReflection,
  IntersectionType,
  LiteralType,
  OptionalType,
  PageEvent,
  ParameterReflection,
  type ProjectReflection,
  ReferenceType,
  type Reflection,
  ReflectionKind,
  ReflectionType,
  SignatureReflection,
  type SomeType,
  TemplateLiteralType,
  TypeOperatorType,
  UnionType,
} from 'typedoc';

/** The proof page, as `navigationLinks` names it. */
const PROOF = 'proof/index.html';
/** Lists of texts that are shorter than this stay as they are. */
const LONG = 20;

/** The name of the quantity that a `{ value, unit }` stands for, by the spellings that its unit may have. */
function nameOf(type: SomeType): string | undefined {
  if (!(type instanceof ReflectionType)) return undefined;
  const unit = type.declaration.children?.find(({ name }) => name === 'unit')?.type;
  if (!(unit instanceof ReferenceType) || unit.name !== 'UnitSpelling') return undefined;
  const [dimension] = unit.typeArguments ?? [];
  if (!(dimension instanceof LiteralType) || typeof dimension.value !== 'string') return undefined;
  return `${dimension.value.charAt(0).toUpperCase()}${dimension.value.slice(1)}Input`;
}

/** The same type with each list of spellings under its name. */
function named(
  type: SomeType,
  project: ProjectReflection,
  names: ReadonlyMap<string, DeclarationReflection>,
): SomeType {
  const again = (each: SomeType): SomeType => named(each, project, names);
  if (type instanceof ArrayType) return new ArrayType(again(type.elementType));
  if (type instanceof OptionalType) return new OptionalType(again(type.elementType) as OptionalType['elementType']);
  if (type instanceof TypeOperatorType) return new TypeOperatorType(again(type.target), type.operator);
  if (type instanceof IntersectionType) return new IntersectionType(type.types.map(again));
  if (!(type instanceof UnionType)) return type;
  const texts = type.types.filter((each) => each instanceof TemplateLiteralType || each instanceof LiteralType);
  if (texts.length < LONG || !texts.some((each) => each instanceof TemplateLiteralType)) {
    type.types = type.types.map(again);
    return type;
  }
  const found: SomeType[] = [];
  const rest: SomeType[] = [];
  for (const each of type.types) {
    const target = names.get(nameOf(each) ?? '');
    if (target !== undefined) {
      found.push(ReferenceType.createResolvedReference(target.name, target, project));
      project.removeTypeReflections(each);
    } else if (!texts.includes(each as TemplateLiteralType)) rest.push(again(each));
  }
  // a list whose quantity is not known stays whole
  if (found.length === 0) return type;
  const all = [...found, ...rest];
  return all.length === 1 ? (all[0] as SomeType) : new UnionType(all);
}

/** Names the quantities in all of the project. */
function nameQuantities(project: ProjectReflection): void {
  const names = new Map(
    project
      .getReflectionsByKind(ReflectionKind.TypeAlias)
      .filter((each) => each instanceof DeclarationReflection && each.parent?.name === 'quantity')
      .map((each) => [each.name, each as DeclarationReflection]),
  );
  for (const reflection of Object.values(project.reflections)) {
    const typed =
      reflection instanceof DeclarationReflection ||
      reflection instanceof ParameterReflection ||
      reflection instanceof SignatureReflection;
    if (typed && reflection.type !== undefined) reflection.type = named(reflection.type, project, names);
  }
}

/** Each guide goes by its first heading, and the functions that it names are links. */
function readyGuides(project: ProjectReflection): void {
  const functions = new Map(project.getReflectionsByKind(ReflectionKind.Function).map((each) => [each.name, each]));
  for (const guide of project.documents ?? []) {
    const title = /^# (.+)\n/.exec(guide.content[0]?.text ?? '')?.[1];
    if (title === undefined) throw new Error(`${guide.name} has no heading`);
    guide.name = title;
    guide.content = guide.content.map((part) => {
      const name = part.kind === 'code' ? /^`(\w+)`$/.exec(part.text)?.[1] : undefined;
      const target = functions.get(name ?? '');
      return target === undefined ? part : { kind: 'inline-tag', tag: '@linkcode', target, text: target.name };
    });
  }
}

/** The guides in the order of `projectDocuments`, before the modules. */
function orderGuides(project: ProjectReflection, guides: readonly DocumentReflection[]): void {
  const place = (each: Reflection): number =>
    each instanceof DocumentReflection ? guides.indexOf(each) : guides.length;
  const inOrder = (a: Reflection, b: Reflection): number => place(a) - place(b);
  project.documents?.sort(inOrder);
  project.childrenIncludingDocuments?.sort(inOrder);
  for (const group of project.groups ?? []) group.children.sort(inOrder);
}

const app = await Application.bootstrapWithPlugins();
let guides: DocumentReflection[] = [];
app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => {
  nameQuantities(project);
  readyGuides(project);
  guides = [...(project.documents ?? [])];
});
// TypeDoc writes the link the same on every page, whatever its folder
app.renderer.on(PageEvent.END, (page) => {
  const up = '../'.repeat(page.url.split('/').length - 1);
  page.contents = (page.contents ?? '').replaceAll(`"${PROOF}"`, `"${up}${PROOF}"`);
});
const project = await app.convert();
if (project === undefined || app.logger.hasErrors() || app.logger.hasWarnings()) process.exit(1);
orderGuides(project, guides);
app.validate(project);
await app.generateOutputs(project);
if (app.logger.hasErrors() || app.logger.hasWarnings()) process.exit(1);
