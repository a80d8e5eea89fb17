import type { ScheduledTask, TaskKind } from '../request/daySchedule';
import { type BrokenRule, by, NEAR, rule } from './brokenRule';
import { longestWait } from './waits';

/** The steps of one product in their order, each portion within its waits. */
export function stepsOf(product: string, tasks: readonly ScheduledTask[]): BrokenRule[] {
  const own = (...kinds: TaskKind[]) =>
    tasks.filter((task) => kinds.includes(task.kind) && task.forProducts.includes(product) && task.was !== 'running');
  const [cut, cooked, filled] = [own('prepare'), own('cook', 'blanch'), own('fill')];
  // of a portion that is prepared in several stretches the last one
  const prepared = cut.filter(({ goesOnMinute }) => goesOnMinute === undefined).sort(by('endMinute'));
  // what stands at the end is counted in what it was filled into; what stands before is not filled yet
  const soaked = own('stand').filter(({ units }) => units === undefined);
  const rests = own('stand').filter(({ units }) => units !== undefined);
  const quiet = [...own('dry', 'freeze', 'ferment'), ...rests].sort(by('startMinute'));
  const frozen = own('freeze-dry').sort(by('startMinute'));
  const next = [cooked, filled, quiet].find((some) => some.length > 0) ?? [];
  const [plain, kept] = apart(cooked, own('keep hot'));
  const { broken, paired } = pairing(product);
  const wait = longestWait('prepared');
  const after = [...(soaked.length > 0 ? soaked : next)].sort(by('startMinute'));
  paired(prepared, after, wait, 'prepared');
  if (soaked.length > 0) paired([...soaked].sort(by('endMinute')), [...next].sort(by('startMinute')), wait, 'soaked');
  paired(
    [...plain].sort(by('endMinute')),
    filled.filter((fill) => !fromKept(fill, kept)).sort(by('startMinute')),
    0,
    'cooked',
  );
  if (quiet.length > 0) paired([...filled].sort(by('endMinute')), quiet, longestWait('filled-tray'), 'filled');
  const loaded = [filled, cooked, soaked, prepared].find((some) => some.length > 0) ?? [];
  paired([...loaded].sort(by('endMinute')), frozen, Number.POSITIVE_INFINITY, 'ready');
  const packed = own('pack').sort(by('startMinute'));
  const early = packed.filter(
    ({ startMinute: start }, index) =>
      own('dry', 'freeze-dry').filter(({ endMinute: end }) => end <= start + NEAR).length <= index,
  );
  return [
    ...broken,
    ...putDown(product, cut, prepared, after),
    ...keptHot(product, kept, cooked, filled),
    ...[...soaked, ...rests, ...own('ferment')].flatMap((task) => longEnough(product, task)),
    ...early.map(({ startMinute: start }) => rule('order', start, `${product}: packed before it is dry`)),
  ];
}

/** What is put down is taken up again, and none of it waits too long for what the whole portion is prepared for. */
function putDown(
  product: string,
  cut: readonly ScheduledTask[],
  prepared: readonly ScheduledTask[],
  after: readonly ScheduledTask[],
): BrokenRule[] {
  const wait = longestWait('prepared');
  const next = ({ goesOnMinute, endMinute: end }: ScheduledTask): ScheduledTask | undefined =>
    goesOnMinute === undefined || goesOnMinute < end - NEAR
      ? undefined
      : cut.find(({ startMinute: start }) => Math.abs(start - goesOnMinute) <= NEAR);
  return cut.flatMap((task) => {
    if (task.goesOnMinute === undefined) return [];
    const { endMinute: end } = task;
    let last: ScheduledTask | undefined = task;
    for (let parts = 0; last?.goesOnMinute !== undefined && parts < cut.length; parts++) last = next(last);
    if (last === undefined || last.goesOnMinute !== undefined)
      return [rule('order', end, `${product}: put down half prepared, and not taken up again`)];
    const starts = after[prepared.indexOf(last)]?.startMinute ?? last.endMinute;
    return starts > end + wait + NEAR
      ? [rule('wait', end, `${product}: some of it prepared, then waits ${starts - end} min, at most ${wait}`)]
      : [];
  });
}

/** Collects what is wrong between two steps. Portions are alike, so the one that came first goes on first. */
function pairing(product: string) {
  const broken: BrokenRule[] = [];
  const paired = (before: readonly ScheduledTask[], after: readonly ScheduledTask[], wait: number, done: string) => {
    if (before.length === 0 || after.length === 0) return;
    if (before.length !== after.length)
      broken.push(
        rule(
          'order',
          (before[0] as ScheduledTask).endMinute,
          `${product}: ${done} ${before.length} times, then ${after[0]?.kind} ${after.length} times`,
        ),
      );
    after.slice(0, before.length).forEach(({ startMinute: start, kind }, index) => {
      const { endMinute: end } = before[index] as ScheduledTask;
      if (start < end - NEAR) broken.push(rule('order', start, `${product}: ${kind} before it is ${done}`));
      else if (start > end + wait + NEAR)
        broken.push(rule('wait', end, `${product}: ${done}, then waits ${start - end} min, at most ${wait}`));
    });
  };
  return { broken, paired };
}

/** What stands or ferments does so for as long as its recipe says; what stands before it is cooked not much longer. */
function longEnough(
  product: string,
  { kind, startMinute: start, endMinute: end, leastMinutes: atLeast = 0, units }: ScheduledTask,
): BrokenRule[] {
  const most = units === undefined && atLeast > 0 ? atLeast + longestWait('prepared') : Number.POSITIVE_INFINITY;
  const minutes = end - start;
  return [
    ...(minutes < atLeast - NEAR
      ? [rule('wait', end, `${product}: ${kind} for ${minutes} min, at least ${atLeast}`)]
      : []),
    ...(minutes > most + NEAR ? [rule('wait', end, `${product}: ${kind} for ${minutes} min, at most ${most}`)] : []),
  ];
}

/** The pots of a task. */
const vesselsOf = ({ uses }: ScheduledTask): string[] =>
  uses.map(({ resource }) => resource).filter((name) => name !== 'hands' && name !== 'burners');

/** The cooking after which the pot is kept hot. */
const before = (hot: ScheduledTask, cooked: readonly ScheduledTask[]): ScheduledTask | undefined =>
  cooked.find(
    (cook) =>
      Math.abs(cook.endMinute - hot.startMinute) <= NEAR &&
      vesselsOf(cook).some((vessel) => vesselsOf(hot).includes(vessel)),
  );

/** What is filled as soon as it is cooked, and the pots that are kept hot. */
function apart(
  cooked: readonly ScheduledTask[],
  kept: readonly ScheduledTask[],
): [readonly ScheduledTask[], readonly ScheduledTask[]] {
  const fed = kept.map((hot) => before(hot, cooked));
  return [cooked.filter((cook) => !fed.includes(cook)), kept];
}

/** Whether jars are filled from a pot that is kept hot: that pot is in use already. */
const fromKept = (fill: ScheduledTask, kept: readonly ScheduledTask[]): boolean =>
  vesselsOf(fill).length === 0 &&
  kept.some(
    ({ startMinute: start, endMinute: end }) => start <= fill.startMinute + NEAR && fill.endMinute <= end + NEAR,
  );

/** A pot that is kept hot was just cooked, is emptied into jars, and not kept for too long. */
function keptHot(
  product: string,
  kept: readonly ScheduledTask[],
  cooked: readonly ScheduledTask[],
  filled: readonly ScheduledTask[],
): BrokenRule[] {
  const wait = longestWait('hot-sauce');
  return kept.flatMap((hot): BrokenRule[] => {
    const { startMinute: start, endMinute: end, was } = hot;
    const since = was === 'hot' ? (hot.sinceMinute ?? start) : start;
    const from = filled.filter((fill) => fromKept(fill, [hot]));
    return [
      ...(was !== 'hot' && before(hot, cooked) === undefined
        ? [rule('order', start, `${product}: kept hot, and not cooked in that pot just before`)]
        : []),
      ...(from.length === 0 ? [rule('order', end, `${product}: kept hot, and no jar is filled from it`)] : []),
      ...(end - since > wait + NEAR
        ? [rule('wait', start, `${product}: kept hot for ${end - since} min, at most ${wait}`)]
        : []),
    ];
  });
}
