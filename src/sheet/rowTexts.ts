import { afterPot, stepsOf } from '../plan/makes/work';
import type { ScheduledTask } from '../plan/request/daySchedule';
import type { PlannedProduct } from '../plan/request/plannedProduct';
import { ruleFigures } from '../process/canningRules';
import { quantityIn, valueIn } from '../quantity/scale';
import { recipeOfId } from '../recipes/rows/rows';
import { stepText } from '../recipes/step';
import { acidInJars } from './beside';
import { letter } from './clock';
import { called, depthOf, likelyOf, many, type Pen, productOf, unitsText } from './pen';
import type { HandsWork } from './stretches';
import { syrupOf } from './syrup';
import { say, type Text } from './words';

type Task = ScheduledTask;
export const minutesOf = ({ startMinute: start, endMinute: end }: Task): number => end - start;

/** Work of hands in words. */
export function handsText(pen: Pen, task: Task, part?: HandsWork['part']): string {
  const { plan } = pen;
  const { kind, what, units } = task;
  const product = productOf(plan, task);
  const name = product === undefined ? what : called(product);
  switch (kind) {
    case 'heat canner':
      return say('row.light');
    case 'prepare':
      return prepareText(pen, task, product, part);
    case 'fill':
      return fillText(pen, task, product);
    case 'blanch':
      return say('row.blanch', { what: foodOf(product, what), count: many(units?.count ?? 1, 'batch') });
    case 'cook':
      return `${say('row.stir', { what: name, minutes: about(minutesOf(task)) })}${intoPot(pen, task)}`;
    case 'pack':
      return say(product?.drying?.where === 'freeze-dryer' ? 'row.pack-freeze-dried' : 'row.pack', { what: name });
    default:
      return say('row.other', { what: name });
  }
}

/** As exact as a cook can be who stirs until it is done. */
const about = (minutes: number): number => (minutes < 20 ? minutes : 5 * Math.ceil(minutes / 5));

/** What starts and then goes on by itself: somebody puts it on or in. */
export function startText(pen: Pen, task: Task, column: 'stove' | 'trays'): string {
  const product = productOf(pen.plan, task);
  const name = product === undefined ? task.what : called(product);
  if (task.kind === 'heat water') return say('row.water', { what: foodOf(product, task.what) });
  const alone = isRaw(product) ? syrupOf(pen, task, product, 'row.syrup-on') : undefined;
  return alone ?? `${say(`row.${column}`, { what: name })}${intoPot(pen, task)}`;
}

/** The same right after the work before it. */
export function thenText(pen: Pen, task: Task, words: Text): string {
  const product = productOf(pen.plan, task);
  const alone = isRaw(product) ? syrupOf(pen, task, product, 'row.then-syrup-on') : undefined;
  return alone ?? `${say(words)}${intoPot(pen, task)}`;
}

const isRaw = (product: PlannedProduct | undefined): boolean => product?.canning?.pack === 'raw';

/** What goes into the pot besides the food: syrup for the jars of its load, acid. */
function intoPot(pen: Pen, task: Task): string {
  const product = productOf(pen.plan, task);
  if (task.kind !== 'cook') return '';
  return `${syrupOf(pen, task, product, 'row.in-syrup') ?? ''}${acidInPot(product)}`;
}

/** What is blanched is called as it was bought. */
const foodOf = (product: PlannedProduct | undefined, what: string): string =>
  product === undefined ? what : product.fromLots.map(({ lot }) => lot).join(say('and'));

const acidInPot = (product: PlannedProduct | undefined): string =>
  product?.canning?.acidToAdd === undefined || acidInJars(product)
    ? ''
    : `${say('dot')}${say('row.acid', { acid: product.canning.acidToAdd })}`;

function prepareText(
  { measure }: Pen,
  { what, raw }: Task,
  product: PlannedProduct | undefined,
  part: HandsWork['part'],
): string {
  if (raw === undefined) return say('row.prepare-all', { what });
  const lots = product?.fromLots ?? [];
  const total = lots.reduce((sum, lot) => sum + valueIn(lot.raw, 'kg'), 0);
  // a batch holds of each lot what the whole product does
  const mixed = lots.length > 1 && total > 0 && lots.map(({ lot }) => lot).join(' and ') === what;
  if (!mixed) {
    const words = { weight: measure.batch(raw), what };
    if (part === undefined) return say('row.prepare', words);
    return part.which === 'last'
      ? say('row.prepare-last', { ...words, all: measure.batch(part.all) })
      : say(part.which === 'first' ? 'row.prepare-first' : 'row.prepare-more', words);
  }
  const parts = lots.map(({ lot, raw: all }) => {
    const share = quantityIn<'mass'>((raw.value * valueIn(all, 'kg')) / total, raw.unit, raw.unit);
    return say('row.prepare-part', { weight: measure.batch(share), what: lot });
  });
  return say('row.prepare-all', { what: parts.join(say('comma')) });
}

/** Peels and cores are kept where a product of them is prepared later. */
export function trimmingsText({ plan }: Pen, task: Task): string {
  const product = productOf(plan, task);
  if (task.kind !== 'prepare' || !(product?.trimmings !== undefined && product.trimmings.high.value > 0)) return '';
  const lots = new Set(product.fromLots.map(({ lot }) => lot));
  const users = plan.products.flatMap(({ name, recipe, fromLots }, index) => {
    const later = plan.schedule.tasks.some(
      ({ kind, forProducts: names, startMinute: start }) =>
        kind === 'prepare' && names.includes(name) && start >= task.endMinute,
    );
    const uses = recipeOfId(recipe)?.madeOf === 'trimmings' && fromLots.some(({ lot }) => lots.has(lot));
    return uses && later ? [letter(index)] : [];
  });
  return users.length === 0 ? '' : say('row.keep-trimmings', { letters: users.join(say('comma')) });
}

/** How many there may be: an order only where no fewer are likely. */
export function unitsUpTo(units: NonNullable<Task['units']>, product: PlannedProduct | undefined): string {
  const most = unitsText(units, product);
  return likelyOf(units.count, product) === units.count ? most : say('count.up-to', { most });
}

/** What is done by hand between the pot and the packs or trays: `Cut off the kernels`. */
function laterText(product: PlannedProduct | undefined): string {
  const row = product === undefined ? undefined : recipeOfId(product.recipe);
  const steps = row === undefined ? [] : afterPot(stepsOf(row, 'hot'));
  return steps.map((step) => stepText(step).replace(/\.$/, '')).join(say('dot'));
}

function fillText({ measure }: Pen, { units, what }: Task, product: PlannedProduct | undefined): string {
  const unit = units === undefined ? what : unitsUpTo(units, product);
  const few = units === undefined ? undefined : likelyOf(units.count, product);
  const likely = few === undefined || few === units?.count ? '' : say('count.likely', { likely: few });
  if (product?.canning !== undefined) {
    const { headspace, acidToAdd: acid } = product.canning;
    const fill = say('row.fill-jars', { unit, likely, headspace: measure.length(headspace) });
    return acid === undefined || !acidInJars(product) ? fill : `${fill}${say('dot')}${say('row.acid', { acid })}`;
  }
  const later = laterText(product);
  const lead = later === '' ? '' : `${later}${say('dot')}`;
  if (product?.drying !== undefined) {
    const deep = depthOf(product.recipe, measure);
    // pieces are bagged when they are dry
    if (later !== '' && deep === undefined) return later;
    const depth = deep === undefined ? '' : say('row.depth', { depth: deep });
    return `${lead}${say('row.spread', { unit, likely, depth })}`;
  }
  if (product?.headspace !== undefined)
    return say('row.fill-jars', { unit, likely, headspace: measure.length(product.headspace) });
  return `${lead}${say(product?.packs === undefined ? 'row.fill' : 'row.pack-fresh', { unit, likely })}`;
}

const NO_POT = new Set(['hands', 'burners', 'dryer trays', 'freezer', 'freeze-dryer']);
export const potOf = ({ plan }: Pen, { uses }: Task): string =>
  uses.find(
    ({ resource }) => !NO_POT.has(resource) && plan.schedule.resources.some((each) => each.resource === resource),
  )?.resource ?? '';

/** Water in a canner, as hot as its jars need it. */
export function cannerText({ plan, measure }: Pen, task: Task): string {
  const jars = productOf(plan, task)?.canning;
  if (jars?.pressure !== undefined) {
    const { low, high } = ruleFigures('water');
    const water = say('range', { from: low, to: measure.length({ value: high, unit: 'in' }) });
    return say('canner.pressure', { canner: task.what, water });
  }
  const value = ruleFigures(jars?.pack === 'raw' ? 'preheat-raw' : 'preheat-hot').low;
  const half = jars?.method === 'boiling-water' ? say('canner.half') : '';
  return `${say('canner.heat-hot', { canner: task.what, temperature: measure.temperature({ value, unit: 'degF' }) })}${half}`;
}

/** What goes on by itself, in its column. */
export function cellText(pen: Pen, task: Task): string {
  const end = pen.clock.when(task.endMinute, task.startMinute);
  switch (task.kind) {
    case 'keep hot':
      return say('stove.hot', { end });
    case 'heat water':
      return say('stove.water', { pot: potOf(pen, task), minutes: minutesOf(task) });
    case 'dry':
      return dryText(pen, task);
    case 'freeze-dry':
      return say('trays.freeze-dry', { count: many(task.units?.count ?? 1, 'tray'), end });
    case 'freeze':
      return say('trays.freeze', { end });
    case 'ferment':
      return say('trays.ferment', { end });
    default:
      return say('stove.cook', { pot: potOf(pen, task), minutes: minutesOf(task) });
  }
}

function dryText({ plan, clock }: Pen, task: Task): string {
  const trays = productOf(plan, task)?.drying;
  const count = many(task.units?.count ?? 1, 'tray');
  const end = clock.when(task.endMinute, task.startMinute);
  if (trays?.hours === undefined) return say('trays.dry-plain', { count, end });
  const from = clock.when(task.startMinute + valueIn(trays.hours.low, 'min'), task.startMinute);
  return say('trays.dry', { count, from: from === end ? end : say('range', { from, to: end }) });
}
