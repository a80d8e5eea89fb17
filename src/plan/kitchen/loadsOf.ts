/** How often a dryer or a freeze-dryer can be loaded in the hours there are. */
import { customary } from '../figures/customary';
import type { Window } from '../request/daySchedule';
import type { Kitchen } from '../request/planInput';
import { busyMinutes, windowsOf } from './hours';

/**
 * How many loads a tray takes one after the other: it is loaded while somebody is there and runs on by itself, through
 * breaks and nights. The first load of a day goes in when a stretch of work has cut it; later ones are cut while the load
 * before them still runs. What comes dry after the hours, or after the last day, counts as well.
 *
 * @param hours - of one load, at the slow end
 * @param windows - the hours of work, as `windowsOf` gives them
 * @param busyUntil - minutes from the start until which it is not free
 * @returns 0 where it is not free before the hours end
 */
export function loadsOf(hours: number, windows: readonly Window[], busyUntil = 0): number {
  const cut = customary('stretch');
  let loads = 0;
  let free = busyUntil;
  windows.forEach(({ startMinute: from, endMinute: to, day }, index) => {
    const begins = index === 0 || windows[index - 1]?.day !== day;
    // a day too short for a whole stretch of work still loads what it cuts
    const ready = begins ? Math.min(from + cut, to - 1) : from;
    for (let at = Math.max(free, ready); at < to; at = Math.max(free, ready)) {
      loads += 1;
      free = at + Math.max(1, hours * 60);
    }
  });
  return loads;
}

type Machine = 'dryer' | 'freezeDryer';

/** Loads of one tray of the kitchen's dryer or freeze-dryer; 0 without one, or where it is busy for all of the hours. */
export function machineLoads(kitchen: Kitchen, machine: Machine, hours: number): number {
  const named = kitchen[machine];
  if (named === undefined) return 0;
  const loads = loadsOf(hours, windowsOf(kitchen), busyMinutes(kitchen, named.busyUntil));
  return 'loads' in named && named.loads !== undefined && loads > 0 ? named.loads : loads;
}
