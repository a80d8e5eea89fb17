import { saidOf } from '../foods/phrases';
import type { FeasibleDay } from '../plan/request/dayPlan';
import type { ScheduledTask, Window } from '../plan/request/daySchedule';
import { canningRules } from '../process/canningRules';
import { counted, gauge, isMetric, weight } from './amounts';
import { bullets, table } from './markdown';

const DAY = 24 * 60;

/** A minute of the plan as the cook's clock shows it, from the start: `2:05`, on a later day `day 2, 0:10`. */
export function clockText(minute: number, days: number): string {
  const day = Math.floor(minute / DAY);
  const onDay = days === 1 && day === 0 ? minute : minute % DAY;
  const text = `${Math.floor(onDay / 60)}:${String(onDay % 60).padStart(2, '0')}`;
  return days === 1 && day === 0 ? text : `day ${day + 1}, ${text}`;
}

/** Kinds that share the row of the canner load they belong to. */
const WITH_LOAD: ReadonlySet<ScheduledTask['kind']> = new Set(['load', 'unload']);

/** The day by the clock: what starts when, how long, and with what. */
export function clockBlock(plan: FeasibleDay): string[] {
  const { schedule } = plan;
  const { tasks, windows, makespan, lowerBound, gap } = schedule;
  if (tasks.length === 0) return [];
  const days = windows.length;
  const at = (minute: number) => clockText(minute, days);
  const rows = tasks
    .filter(({ kind }) => !WITH_LOAD.has(kind))
    .map((task) => [at(task.start), at(task.end), sentence(plan, task), means(task)]);
  const shorter = lowerBound < makespan ? `; no other order finishes before ${at(lowerBound)}` : '';
  return [
    '## The day by the clock',
    `Hours and minutes from the start${days === 1 ? '' : ', each day from its own'}. Everything is done by ${at(makespan)}${gap > 0 ? shorter : ', and no other order finishes sooner'}; ${restOf(windows, makespan)} Times are at the slow end: if you are faster, take a break.`,
    table(['from', 'to', 'what', 'with'], rows),
    bullets(afterwards(plan)),
  ];
}

/** Hours that are left, or none. */
function restOf(windows: readonly Window[], makespan: number): string {
  const { to } = windows[windows.length - 1] as Window;
  return `the hours end at ${clockText(to, windows.length)}${makespan === to ? ', with nothing to spare' : ''}.`;
}

/** What a task is, in the words of the stove. */
function sentence({ products }: FeasibleDay, { kind, what, products: names, raw, units }: ScheduledTask): string {
  const many = units === undefined ? '' : ` (${units.count})`;
  const { jars, trays, packs, ready, food, form } = products.find(({ name }) => name === names[0]) ?? {};
  switch (kind) {
    case 'heat canner':
      return `Heat the water of the ${what}`;
    case 'prepare':
      return `Prepare ${raw === undefined ? '' : `${weight(raw, 'up')} of `}${what} for ${names.join(' and ')}`;
    case 'heat water':
      return `Heat the water to blanch ${what}`;
    case 'blanch':
      return `Blanch ${what}${units === undefined || units.count === 1 ? '' : ` (${units.count} batches)`}`;
    case 'cook':
      return `Cook the ${food === undefined ? what : saidOf(food, form).phrase}`;
    case 'fill':
      return `${trays !== undefined ? 'Spread' : packs !== undefined ? 'Pack' : 'Fill'} ${what}${many}`;
    case 'can': {
      const pressure = jars?.pressure === undefined ? '' : ` at ${gauge(jars.pressure, isMetric(ready?.low))}`;
      return `Can ${what}${many}: **process ${jars?.minutes} min${pressure}**`;
    }
    case 'dry':
      return `Dry ${what}`;
    case 'freeze-dry':
      return `Freeze-dry ${what}: ${units === undefined ? '' : counted(units.count, 'tray', 'trays')}`;
    case 'freeze':
      return `Freeze ${what}${many}`;
    default:
      return `Pack ${what}`;
  }
}

/** What a cook calls the filling of things that are no jars. */

/** Hands, and the pot, canner or trays; burners are counted, not named. */
const means = ({ uses, unattended }: ScheduledTask): string =>
  uses
    .filter(({ resource }) => resource !== 'burners')
    .map(({ resource, amount }) => {
      if (resource === 'hands') return amount === 1 ? '1 pair of hands' : `${amount} pairs of hands`;
      return resource === 'dryer trays' ? `dryer, ${counted(amount, 'tray', 'trays')}` : resource;
    })
    .join(', ') || (unattended ? 'by itself' : '');

/** What is left for later: what comes dry when nobody is there, and the jars. */
function afterwards({ schedule }: FeasibleDay): string[] {
  const { tasks, windows } = schedule;
  const at = (minute: number) => clockText(minute, windows.length);
  const packed = new Set(tasks.filter(({ kind }) => kind === 'pack').flatMap(({ products }) => products));
  const later = tasks.filter(
    ({ kind, products }) => (kind === 'dry' || kind === 'freeze-dry') && !products.every((name) => packed.has(name)),
  );
  const ends = new Map<string, number>();
  for (const { what, end } of later) ends.set(what, Math.max(end, ends.get(what) ?? 0));
  const cool = canningRules({ topic: 'afterwards' }).rules.find(({ id }) => id === 'cool-jars')?.text;
  return [
    ...[...ends]
      .sort(([, one], [, other]) => one - other)
      .map(([what, end]) => `By ${at(end)}: test ${what} for dryness, and pack what is dry.`),
    ...(cool !== undefined && tasks.some(({ kind }) => kind === 'can')
      ? [`${cool} Then test every seal: what has not sealed goes into the refrigerator.`]
      : []),
  ];
}
