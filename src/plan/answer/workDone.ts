import { quantityIn } from '../../quantity/scale';
import { fillOf } from '../kitchen/fillOf';
import type { Pot } from '../kitchen/kitchen';
import type { Making } from '../makes/making';
import type { Kept } from '../program/decide';
import type { DaySchedule, ScheduledTask } from '../request/daySchedule';
import type { CannerLoad, HandsMinutes, PotBatches, PotWork } from '../request/plannedProduct';
import { batchesDone } from './energyUsed';

/** What a schedule gives one product to do: its batches in each pot, its loads in each canner, minutes of hands. */
export interface WorkDone {
  readonly pots?: PotWork;
  readonly loads: readonly CannerLoad[];
  readonly hands: HandsMinutes;
}

/** How full a pot is at most with what is made, and to where that comes down. */
function filled({ volume, ...fill }: Pot['given'], { row, activity }: Making): Pick<PotBatches, 'fillTo' | 'downTo'> {
  const share = fillOf(fill, row.makes);
  const full = { value: volume.value * share, unit: volume.unit };
  const { leftOf } = activity.cook ?? {};
  return {
    fillTo: { volume: full, share },
    ...(leftOf === undefined
      ? {}
      : { downTo: { volume: { value: full.value * leftOf, unit: full.unit }, share: share * leftOf } }),
  };
}

/** Minutes of one batch of a task: a blanching holds several. */
const minutesEach = ({ kind, units, startMinute: start, endMinute: end }: ScheduledTask): number =>
  (end - start) / (kind === 'blanch' ? (units?.count ?? 1) : 1);

const handsOf = ({ uses }: ScheduledTask): number =>
  uses.reduce((sum, { resource, used: amount }) => sum + (resource === 'hands' ? amount : 0), 0);

/** Looks up what the tasks of a schedule say of one product. */
export function workDone(
  { making, decided, said }: Kept,
  { tasks }: DaySchedule,
  pots: readonly Pot[],
  canners: readonly string[],
): WorkDone {
  const own = (kind: ScheduledTask['kind']) =>
    tasks.filter((task) => task.kind === kind && task.forProducts.includes(making.label) && task.was !== 'running');
  const uses = ({ uses: used }: ScheduledTask, resource: string) => used.some((use) => use.resource === resource);
  const cooked = [...own('cook'), ...own('blanch')];
  const canned = own('can');
  const litres = decided.rawKg * (making.activity.cook?.litresPerKg ?? 0);
  const [first] = pots;
  const holds: Record<number, number> = {};
  for (const { canner, jars, holds: most = jars } of making.activity.canning?.canners ?? []) holds[canner] = most;
  const { activity } = making;
  return {
    hands: {
      prepare: activity.handsPerKg * decided.rawKg,
      fill: activity.handsPerUnit * decided.ready,
      stir: cooked.reduce((sum, task) => sum + (task.endMinute - task.startMinute) * handsOf(task), 0),
    },
    ...(cooked.length === 0 || first === undefined
      ? {}
      : {
          pots: {
            minutesEach: Math.max(...cooked.map(minutesEach)),
            leastEach: said.cookMinutes ?? 0,
            volume: quantityIn<'volume'>(litres, 'L', first.most.unit),
            batches: pots.flatMap(({ label, most, given }) => {
              const batches = batchesDone(cooked.filter((task) => uses(task, label)));
              return batches > 0 ? [{ pot: label, count: batches, mostAtOnce: most, ...filled(given, making) }] : [];
            }),
          },
        }),
    loads: canners.flatMap((canner, index) => {
      const loads = canned.filter((task) => uses(task, canner));
      const [one] = loads;
      if (one === undefined) return [];
      const others = new Set(
        loads.flatMap(({ forProducts: products }) => products).filter((name) => name !== making.label),
      );
      return [
        {
          canner,
          count: loads.length,
          jarsPerLoad: holds[index] ?? 0,
          minutesEach: one.endMinute - one.startMinute,
          sharedWith: [...others],
        },
      ];
    }),
  };
}
