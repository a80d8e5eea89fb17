import { seeded } from '../../../src/common/seeded';
import type { ScheduledTask, Window } from '../../../src/plan/request/daySchedule';
import type { Job, Means, Portion } from '../../../src/plan/schedule/job';

/** Invented: a kitchen and 3 to 20 jobs of every kind, on one day or two. */
export function randomJobs(seed: number): { jobs: Job[]; means: Means; windows: Window[] } {
  const random = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const means: Means = {
    start: 480,
    hands: whole(1, 3),
    burners: whole(1, 4),
    pots: Array.from({ length: whole(1, 3) }, (_, index) => ({ label: `pot ${index}`, litres: between(4, 9) })),
    canners: Array.from({ length: whole(1, 2) }, (_, index) => `canner ${index}`),
    trays: whole(4, 12),
    freezerKg: between(8, 30),
  };
  const largest = Math.max(...means.pots.map(({ litres }) => litres));
  const portion = (product: string, cooked: boolean): Portion => ({
    product,
    what: 'fruit',
    raw: { value: 5, unit: 'kg' },
    filled: { count: 7, unit: 'jar' },
    prepare: between(0, 60),
    fill: between(0, 20),
    ...(cooked ? { cook: { minutes: whole(10, 60), litres: between(1, largest), stirred: random() < 0.3 } } : {}),
    drops: [{ lot: 0, kg: between(0.2, 1) }],
  });
  const left = { dry: means.trays, freeze: means.freezerKg ?? 0, 'freeze-dry': 1 };
  const jobs = Array.from({ length: whole(3, 20) }, (_, index): Job => {
    const product = `product ${index}`;
    const kind = (['can', 'can', 'can', 'dry', 'freeze', 'freeze-dry', 'alone'] as const)[whole(0, 6)];
    // what is made of one product is made alike
    const cooked = random() < 0.6;
    const portions = Array.from({ length: kind === 'can' ? whole(1, 2) : 1 }, () => portion(product, cooked));
    if (kind === 'can') {
      return {
        portions,
        into: {
          kind: 'can',
          jars: { count: 7 * portions.length, unit: 'jar' },
          lift: 3.5,
          canners: means.canners.map((_, canner) => ({ canner, minutes: whole(40, 90), warmUp: whole(5, 50) })),
        },
        needs: [],
      };
    }
    if (kind === 'alone')
      return { portions: portions.map((each) => ({ ...each, drops: [] })), needs: [{ lot: 0, kg: 0.1 }] };
    // a plan never asks for more trays, freezer or freeze-dryer than there is
    const room = left[kind as 'dry'];
    const amount = kind === 'dry' ? Math.min(room, whole(1, 4)) : Math.min(room, between(0.5, 4));
    if (amount <= 0 || (kind === 'freeze-dry' && room < 1)) return { portions, needs: [] };
    left[kind as 'dry'] -= kind === 'freeze-dry' ? 1 : amount;
    const minutes = kind === 'dry' ? 60 * whole(4, 14) : 24 * 60;
    // every other vegetable for the freezer is blanched
    const blanch =
      kind === 'freeze' && index % 2 === 0 ? { heat: 5 * (index + 1), batches: 1 + (index % 4) } : undefined;
    return {
      portions: portions.map(({ cook, ...rest }) => ({
        ...rest,
        ...(cook === undefined
          ? {}
          : { cook: { ...cook, ...(blanch === undefined ? {} : { blanch, stirred: true }) } }),
      })),
      into: {
        kind: kind as 'dry',
        units: { count: 3, unit: 'tray' },
        amount: kind === 'freeze-dry' ? 1 : amount,
        minutes,
        pack: kind === 'freeze' ? 0 : between(0, 10),
      },
      needs: [],
    };
  });
  // something must drop trimmings before they are used
  jobs[0] = { portions: [portion('product 0', false)], needs: [] };
  const windows =
    random() < 0.4
      ? [
          { day: 0, startMinute: 0, endMinute: 60 * whole(3, 7) },
          { day: 1, startMinute: 24 * 60, endMinute: 24 * 60 + 60 * whole(4, 8) },
        ]
      : [{ day: 0, startMinute: 0, endMinute: 60 * whole(6, 14) }];
  return { jobs, means, windows };
}

/** What is wrong with an order of work, by its tasks alone: a resource used twice, or work when nobody is there. */
export function clashes(
  tasks: readonly ScheduledTask[],
  capacity: ReadonlyMap<string, number>,
  windows: readonly Window[],
): string[] {
  const wrong: string[] = [];
  for (const [resource, most] of capacity) {
    const own = tasks.flatMap(({ startMinute: start, endMinute: end, uses, kind }) =>
      uses.filter((use) => use.resource === resource).map(({ used: amount }) => ({ start, end, amount, kind })),
    );
    for (const { start } of own) {
      const busy = own
        .filter((each) => each.start <= start && start < each.end)
        .reduce((sum, { amount }) => sum + amount, 0);
      if (busy > most + 1e-6) wrong.push(`${resource}: ${busy} of ${most} at ${start}`);
    }
  }
  for (const { kind, startMinute: start, endMinute: end, uses, unattended } of tasks) {
    if (end < start) wrong.push(`${kind} ends before it starts`);
    if (uses.some(({ resource }) => !capacity.has(resource))) wrong.push(`${kind} uses what is not there`);
    if (unattended) continue;
    const last = windows[windows.length - 1] as Window;
    const inside =
      windows.some(({ startMinute: from, endMinute: to }) => from <= start && end <= to) || start >= last.startMinute;
    if (!inside) wrong.push(`${kind} at ${start} to ${end}, when nobody is there`);
  }
  return wrong;
}
