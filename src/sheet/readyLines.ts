import type { FeasibleDay, ToReady } from '../plan/request/dayPlan';
import type { PlannedProduct } from '../plan/request/plannedProduct';
import { boilingMinutes } from '../process/boilingMinutes';
import { ruleFigures } from '../process/canningRules';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { letter } from './clock';
import { called, counted, type Pen } from './pen';
import type { Line } from './sheet';
import { say } from './words';

/** What to buy, what to count on, what to have ready. */
export function linesOf(pen: Pen): Line[] {
  const { plan, clock, measure } = pen;
  const { products, keptFresh, notSound } = plan;
  if (products.length === 0) return [{ label: say('empty.title'), text: plan.nothingMade?.text ?? '' }];
  const busy = plan.schedule.resources.flatMap(({ resource, busyUntilMinute: busyUntil }) =>
    busyUntil === undefined ? [] : [say('busy.machine', { machine: resource, time: clock.when(busyUntil, 0) })],
  );
  const aside = [
    ...keptFresh.map(({ lot, raw }) => say('aside.fresh', { weight: measure.batch(raw, 'nearest'), lot })),
    ...notSound.map(({ lot, raw }) => say('aside.bad', { weight: measure.batch(raw, 'nearest'), lot })),
  ];
  const lines = [
    { label: say('head.buy'), text: buyText(pen) },
    {
      label: say('head.count'),
      text: products
        .map((product, index) => say('count.line', { letter: letter(index), text: countOf(product) }))
        .join(say('dot')),
    },
    { label: say('head.ready'), text: readyTexts(pen).join(say('dot')) },
    { label: say('head.busy'), text: busy.join(say('dot')) },
    { label: say('head.aside'), text: aside.join(say('dot')) },
  ];
  return lines.filter(({ text }) => text !== '');
}

function buyText({ plan, measure }: Pen): string {
  const amount = (value: ToReady['needed'], what: string) =>
    typeof value === 'number' ? counted(value, what) : `${measure.amount(value as Quantity<'mass'>, 'up')} ${what}`;
  const bought = new Map<string, string>();
  for (const { what, short } of plan.haveReady) if (short !== undefined) bought.set(what, amount(short, what));
  return bought.size === 0 ? say('head.nothing') : [...bought.values(), say('head.rest')].join(say('dot'));
}

/** What can be counted on: `5 pint jars of pear halves`, `frozen corn: 7 packs of 1 lb`. */
function countOf(product: PlannedProduct): string {
  const { promised, unit, plural } = product.units;
  const count = counted(promised, promised === 1 ? unit : plural);
  return say(product.canning === undefined ? 'count.other' : 'count.jars', { count, name: called(product) });
}

/** What is counted and laid out, how jars are cleaned, and what has to be cold. */
function readyTexts({ plan, measure }: Pen): string[] {
  const { haveReady: ready, products } = plan;
  const counts = ready.flatMap(({ what, needed: much }) => (typeof much === 'number' ? [counted(much, what)] : []));
  const jars = products.some(({ canning }) => canning !== undefined);
  const space = measure.length({ value: ruleFigures('jar-spacing').low, unit: 'in' });
  return [
    ...counts,
    ...(jars ? [say('ready.jars')] : []),
    ...sterilizing(plan),
    ...iceOf(plan, measure.massUnit).map(({ letters, weight }) =>
      say('ready.ice', { letters, weight: measure.batch(weight, 'up') }),
    ),
    ...(jars ? [say('ready.cool', { space })] : []),
  ];
}

/** Jars that are boiled empty, by whose they are, with the minutes of this elevation. */
function sterilizing({ products, elevation }: FeasibleDay): string[] {
  const of = products.flatMap(({ canning }, index) => (canning?.sterilizeJars ? [letter(index)] : []));
  if (of.length === 0) return [];
  const { minutes } = boilingMinutes({ purpose: 'empty jars', elevation });
  return [say('ready.sterilize', { letters: of.join(say('comma')), minutes })];
}

/** Ice for what is blanched: as much as the food by weight, and that is never more than it weighed as bought. */
function iceOf({ products, schedule }: FeasibleDay, unit: 'lb' | 'kg') {
  const blanched = new Set(
    schedule.tasks.filter(({ kind }) => kind === 'blanch').flatMap(({ forProducts: names }) => names),
  );
  const of = products.flatMap(({ name, raw }, index) => (blanched.has(name) ? [{ raw, letter: letter(index) }] : []));
  if (of.length === 0) return [];
  const total = of.reduce((sum, { raw }) => sum + valueIn(raw, unit), 0);
  const letters = of.map(({ letter: each }) => each).join(say('comma'));
  return [{ letters, weight: quantityIn<'mass'>(total, unit, unit) }];
}
