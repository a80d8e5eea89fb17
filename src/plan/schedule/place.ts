import type { Effort } from '../makes/effort';
import type { ScheduledTask, TaskKind, Use, Window } from '../request/daySchedule';
import { blocksOf, type CannerChoice, lifting, rowsOf } from './blocks';
import { type Block, emptyBoard, type Row } from './board';
import { type CanStep, heatOf, type Job, type Means, type Portion, type QuietStep, type Trimmings } from './job';
import { longestWait } from './waits';

const HOLD_PREPARED = longestWait('prepared');
const HOLD_HOT = longestWait('hot-canner');

/** A block that stands on the board, and the tasks that it is made of. */
interface Placed {
  readonly block: Block;
  readonly start: number;
  readonly tasks: readonly Omit<ScheduledTask, 'uses'>[];
  /** What has fallen off when it ends. */
  readonly drops?: readonly Trimmings[];
}
type Fitting = Pick<Placed, 'block' | 'start'>;

/** The next minute worth trying, where a job did not fit at one. */
type Retry = () => number;

/** A day being filled job by job. */
export interface Day {
  /** Places a job as early as it fits beside those that stand; false where it does not fit before the horizon. */
  readonly place: (job: Job) => boolean;
  readonly tasks: () => ScheduledTask[];
}

/** How a kind of work goes on when nobody is there. */
const QUIET: ReadonlySet<TaskKind> = new Set(['dry', 'freeze-dry', 'freeze']);

/**
 * An empty day of this kitchen.
 *
 * @param windows - the hours of work
 * @param overtime - minutes after the last of them that work may run on
 * @param quiet - minutes after that for what goes on by itself
 */
export function newDay(
  means: Means,
  windows: readonly Window[],
  overtime: number,
  quiet: number,
  effort?: Pick<Effort, 'looks'>,
): Day {
  const last = windows[windows.length - 1] as Window;
  const horizon = last.to + overtime + quiet;
  const open = [...windows.slice(0, -1), { from: last.from, to: last.to + overtime }];
  const rows = rowsOf(means);
  const board = emptyBoard(rows, open, horizon, effort);
  const blocks = blocksOf(means);
  const placed: Placed[] = [];
  /** When the last load of each canner ends. */
  const cannerEnds = means.canners.map(() => Number.NEGATIVE_INFINITY);
  const takenTrimmings = new Map<number, number>();

  const put = (entry: Placed): void => {
    board.take(entry.block, entry.start);
    placed.push(entry);
  };
  const takeBackTo = (count: number): void => {
    while (placed.length > count) {
      const { block, start } = placed.pop() as Placed;
      board.giveBack(block, start);
    }
  };
  type Facts = Pick<ScheduledTask, 'what' | 'products'> & Partial<Pick<ScheduledTask, 'raw' | 'units'>>;
  const task = (kind: TaskKind, facts: Facts, start: number, end: number): Omit<ScheduledTask, 'uses'> => ({
    kind,
    ...facts,
    start,
    end,
    unattended: QUIET.has(kind),
  });

  /** The last way to do something that ends by a minute, and starts not before another. */
  const latestOf = (ways: readonly Block[], by: number, from: (block: Block) => number): Fitting | undefined => {
    let best: Fitting | undefined;
    for (const block of ways) {
      const start = board.latest(block, by, from(block));
      if (start !== undefined && (best === undefined || start > best.start)) best = { block, start };
    }
    return best;
  };
  /** The first end after a minute of any way to do something. */
  const nextEnd = (ways: readonly Block[], after: number, from: number): number =>
    Math.min(
      ...ways.map((block) => {
        const start = board.earliest(block, Math.max(from, after - block.minutes + 1));
        return start === undefined ? Number.POSITIVE_INFINITY : start + block.minutes;
      }),
    );

  /**
   * The first start of a portion on the stove from which none of it waits too long for what begins at a minute: of jars
   * the first one that is filled, of trays and bags the last. What goes on by itself in the freezer can wait there.
   */
  const firstStart =
    ({ cook, filled }: Portion, into: Job['into'], by: number) =>
    (block: Block): number => {
      const boils = heatOf(cook) + (cook?.minutes ?? 0);
      const fills = block.minutes - boils;
      if (into === undefined || into.kind === 'freeze-dry') return Number.NEGATIVE_INFINITY;
      if (into.kind === 'can')
        return Math.ceil(by - longestWait('filled-jar') - boils - fills / Math.max(1, filled.count) - 1e-9);
      return block.minutes === 0 ? by : by - longestWait('filled-tray') - block.minutes;
    };

  /**
   * Places a portion so that it is filled by a minute and does not wait too long for it.
   *
   * @returns nothing where it is placed; otherwise the next minute worth trying, to be asked with the job off the board
   */
  const placePortion = (portion: Portion, { into }: Job, by: number, from: number): Retry | undefined => {
    const ways = blocks.stoves(portion);
    const cuts = blocks.cuts(portion);
    const { drops } = portion;
    const first = firstStart(portion, into, by);
    let next: Retry | undefined;
    // cooked as late as can be; earlier where it could not be prepared in time for that
    for (let latest = by; ; ) {
      const cook = latestOf(ways, latest, (block) => Math.max(from, first(block)));
      if (cook === undefined) return next ?? (() => nextEnd(ways, by, from));
      const mark = placed.length;
      put({ ...cook, tasks: cookTasks(portion, cook, into?.kind === 'can'), ...(cuts.length === 0 ? { drops } : {}) });
      if (cuts.length === 0) return undefined;
      // the water may heat while the vegetable is still cut
      const fed = cook.start + heatOf(portion.cook);
      const cut = latestOf(cuts, fed, ({ minutes }) => Math.max(from, fed - HOLD_PREPARED - minutes));
      if (cut !== undefined) {
        const facts = { what: portion.what, products: [portion.product], raw: portion.raw };
        put({ ...cut, tasks: [task('prepare', facts, cut.start, cut.start + cut.block.minutes)], drops });
        return undefined;
      }
      const heat = heatOf(portion.cook);
      next ??= () => nextEnd(cuts, fed, from) + Math.min(...ways.map(({ minutes }) => minutes)) - heat;
      const earlier = latestOf(cuts, fed - HOLD_PREPARED, () => from);
      takeBackTo(mark);
      if (earlier === undefined) return next;
      latest = Math.min(latest - 1, earlier.start + earlier.block.minutes + HOLD_PREPARED + cook.block.minutes - heat);
    }
  };

  /** What a portion on the stove is said to be: cooked, then filled; jars are filled even where that takes no minutes. */
  const cookTasks = (
    { product, cook, filled }: Portion,
    { block, start }: Fitting,
    inJars: boolean,
  ): Placed['tasks'] => {
    const facts = { what: product, products: [product] };
    const fed = start + heatOf(cook);
    const filling = fed + (cook?.minutes ?? 0);
    const end = start + block.minutes;
    const blanch = cook?.blanch;
    return [
      ...(cook === undefined || blanch !== undefined ? [] : [task('cook', facts, start, filling)]),
      ...(blanch === undefined
        ? []
        : [
            ...(fed > start ? [task('heat water', facts, start, fed)] : []),
            task('blanch', { ...facts, units: { count: blanch.batches, unit: 'batch' } }, fed, filling),
          ]),
      ...(end > filling || inJars ? [task('fill', { ...facts, units: filled }, filling, end)] : []),
    ];
  };

  /** Places all portions of a job so that they are filled when the next step starts; answers as `placePortion`. */
  const placePortions = (job: Job, by: number, from: number): Retry | undefined => {
    const mark = placed.length;
    for (const portion of [...job.portions].reverse()) {
      const next = placePortion(portion, job, by, from);
      if (next !== undefined) {
        takeBackTo(mark);
        return next;
      }
    }
    return undefined;
  };

  /** When the portions could be filled at the earliest, each on its own and with every wait allowed. */
  const earliestFilled = (job: Job, from: number): number | undefined => {
    let ready = from;
    for (const portion of job.portions) {
      const cuts = blocks.cuts(portion);
      const cut = cuts.length === 0 ? from : nextEnd(cuts, from, from);
      const lit = Math.max(from, cut - heatOf(portion.cook));
      ready = Math.max(ready, nextEnd(blocks.stoves(portion), cut, lit));
    }
    return Number.isFinite(ready) ? ready : undefined;
  };

  /** From when on the trimmings that a job needs have fallen off. */
  const released = (needs: readonly Trimmings[]): number | undefined => {
    let from = 0;
    for (const { lot, kg } of needs) {
      let left = kg + (takenTrimmings.get(lot) ?? 0) - 1e-6;
      const dropped = placed
        .flatMap(({ block, start, drops = [] }) =>
          drops.filter((drop) => drop.lot === lot).map((drop) => ({ at: start + block.minutes, kg: drop.kg })),
        )
        .sort((one, other) => one.at - other.at);
      for (const drop of dropped) {
        if (left <= 0) break;
        left -= drop.kg;
        from = Math.max(from, drop.at);
      }
      if (left > 0) return undefined;
    }
    return from;
  };

  const factsOf = ({ portions }: Job): Pick<ScheduledTask, 'what' | 'products'> => {
    const products = [...new Set(portions.map(({ product }) => product))];
    return { what: products.join(' and '), products };
  };

  /** A canner is cold before its first load between two breaks. */
  const isCold = ({ canner, warmUp }: CannerChoice, at: number): boolean => {
    const before = cannerEnds[canner] as number;
    return warmUp > 0 && !open.some(({ from, to }) => before > from && before <= to && at < to);
  };

  /** When the first pot for a load goes on, or its first jar is filled: of what has been placed since a mark. */
  const begun = (mark: number): number =>
    Math.min(
      ...placed
        .slice(mark)
        .flatMap(({ tasks }) => tasks)
        .filter(({ kind }) => kind === 'cook' || kind === 'fill')
        .map(({ start }) => start),
    );

  /** Places a load in one canner as early as its portions can be filled in time, ending before `beat`; or nothing. */
  const placeLoad = (
    job: Job,
    step: CanStep,
    choice: CannerChoice,
    from: number,
    filled: number,
    beat: number,
  ): number | undefined => {
    // a pot that is the canner as well cooks between its loads: it is heated for each of them, and holds nothing meanwhile
    const heated = means.vessels?.[choice.canner] === undefined ? 0 : choice.warmUp;
    const block = blocks.load(step, choice, heated);
    const heat = blocks.heat(choice);
    const free = Math.max(0, cannerEnds[choice.canner] as number);
    const lift = lifting(step, choice.minutes);
    const facts = { ...factsOf(job), units: step.jars };
    const canner = { what: means.canners[choice.canner] as string, products: facts.products };
    const heating = (at: number) => task('heat canner', canner, at, at + choice.warmUp);
    for (let at = Math.max(filled, heated === 0 ? free : heated); ; ) {
      const first = board.earliest(block, at - heated);
      const start = (first ?? 0) + heated;
      const end = start + choice.minutes;
      if (first === undefined || end >= beat) return undefined;
      const mark = placed.length;
      put({
        block,
        start: first,
        tasks: [
          ...(heated > 0 ? [heating(first)] : []),
          task('load', facts, start, start + lift),
          task('can', facts, start, end),
          task('unload', facts, end - lift, end),
        ],
      });
      const next = placePortions(job, start, from);
      if (next === undefined && (heated > 0 || !isCold(choice, start))) return start;
      const longest = HOLD_HOT + start - Math.min(start, begun(mark));
      const hot =
        next === undefined
          ? latestOf([heat], start, ({ minutes }) => Math.max(free, start - longest - minutes))
          : undefined;
      if (hot !== undefined) {
        put({ ...hot, tasks: [heating(hot.start)] });
        return start;
      }
      takeBackTo(mark);
      at = Math.max(start + 1, next === undefined ? nextEnd([heat], start, free) : next());
    }
  };

  /** Places a load in the canner that has it done first. */
  const placeCanning = (job: Job, step: CanStep, from: number, filled: number): boolean => {
    let best: { choice: CannerChoice; start: number } | undefined;
    let beat = Number.POSITIVE_INFINITY;
    for (const choice of step.canners) {
      const mark = placed.length;
      const start = placeLoad(job, step, choice, from, filled, beat);
      takeBackTo(mark);
      if (start === undefined) continue;
      best = { choice, start };
      beat = start + choice.minutes;
    }
    if (best === undefined) return false;
    const { choice, start } = best;
    placeLoad(job, step, choice, from, start, Number.POSITIVE_INFINITY);
    cannerEnds[choice.canner] = start + choice.minutes;
    return true;
  };

  /** The first start from a minute on at which somebody is there to load what goes on by itself. */
  const attendedStart = (block: Block, from: number): number | undefined => {
    for (let at = from; ; ) {
      const start = board.earliest(block, at);
      if (start === undefined || open.some((window) => window.from <= start && start <= window.to)) return start;
      const later = open.find((window) => window.from > start);
      if (later === undefined) return undefined;
      at = later.from;
    }
  };

  /** What goes on by itself starts when it is loaded; the freeze-dryer when it is free, its trays in the freezer. */
  const placeQuiet = (job: Job, step: QuietStep, from: number, filled: number): boolean => {
    const block = blocks.quiet(step);
    const facts = { ...factsOf(job), units: step.units };
    const run = (start: number): void => {
      put({ block, start, tasks: [task(step.kind, facts, start, start + step.minutes)] });
      packLater(job, step, start + step.minutes);
    };
    if (step.kind === 'freeze-dry') {
      const loaded = placeAlone(job, from, filled);
      // its trays wait in the freezer, and go in whenever it is free
      const start = loaded === undefined ? undefined : board.earliest(block, loaded);
      if (start !== undefined) run(start);
      return start !== undefined;
    }
    for (let at = filled; ; ) {
      const start = attendedStart(block, at);
      if (start === undefined) return false;
      const next = placePortions(job, start, from);
      if (next === undefined) {
        run(start);
        return true;
      }
      at = Math.max(start + 1, next());
    }
  };

  /** What comes dry while somebody is there is packed; what comes dry at night waits for the morning. */
  const packLater = (job: Job, { pack }: QuietStep, from: number): void => {
    const minutes = Math.ceil(pack);
    const block = blocks.alone(minutes);
    const start = pack <= 0 ? undefined : board.earliest(block, from);
    if (start === undefined) return;
    const within = windows.find((window) => from >= window.from && from < window.to);
    if (within === undefined || start + minutes > within.to) return;
    put({ block, start, tasks: [task('pack', factsOf(job), start, start + block.minutes)] });
  };

  /** Places portions as early as they can be filled; answers when they are. */
  const placeAlone = (job: Job, from: number, filled: number): number | undefined => {
    for (let by = filled; by <= horizon; ) {
      const next = placePortions(job, by, from);
      if (next === undefined) return by;
      by = Math.max(by + 1, next());
    }
    return undefined;
  };

  const place = (job: Job): boolean => {
    const from = released(job.needs);
    if (from === undefined) return false;
    const filled = earliestFilled(job, from);
    if (filled === undefined) return false;
    const { into } = job;
    const first = placed.length;
    const fits =
      into === undefined
        ? placeAlone(job, from, filled) !== undefined
        : into.kind === 'can'
          ? placeCanning(job, into, from, filled)
          : placeQuiet(job, into, from, filled);
    if (!fits) {
      takeBackTo(first);
      return false;
    }
    for (const { lot, kg } of job.needs) takenTrimmings.set(lot, (takenTrimmings.get(lot) ?? 0) + kg);
    return true;
  };

  const usesOf = ({ block, start }: Placed, from: number, to: number): Use[] => {
    const middle = (from + to) / 2;
    return block.parts
      .filter(({ at, minutes }) => start + at <= middle && middle < start + at + minutes)
      .map(({ row, amount }) => ({ resource: (rows[row] as Row).name, amount }));
  };
  return {
    place,
    tasks: () =>
      placed
        .flatMap((entry) =>
          entry.tasks.map(
            (each): ScheduledTask => ({
              ...each,
              uses: usesOf(entry, each.start, each.end).filter(({ resource }) => belongsTo(each.kind, resource)),
            }),
          ),
        )
        .sort((one, other) => one.start - other.start || one.end - other.end),
  };
}

/** A load keeps canner and burner busy; the hands that lift its jars in and out stand with those tasks. */
const belongsTo = (kind: TaskKind, resource: string): boolean => {
  const lifting = kind === 'load' || kind === 'unload';
  return lifting ? resource === 'hands' : kind !== 'can' || resource !== 'hands';
};
