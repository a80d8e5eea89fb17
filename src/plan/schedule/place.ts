import type { ScheduledTask, TaskKind, Use, Window } from '../daySchedule';
import { blocksOf, type CannerChoice, lifting, rowsOf, shared } from './blocks';
import { type Block, emptyBoard, type Row } from './board';
import type { CanStep, Job, Means, Portion, QuietStep, Trimmings } from './job';

/** Longest wait of prepared fruit before it is cooked or filled, held in an anti-darkening bath: common practice. */
const HOLD_PREPARED = 60;
/** Longest wait of a canner whose water is hot, under its lid: common practice. */
const HOLD_HOT = 60;
/** Longest wait of a filled jar, tray or bag before it goes into the canner, dryer or freezer: common practice. */
const HOLD_FILLED = 20;

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
export function newDay(means: Means, windows: readonly Window[], overtime: number, quiet: number): Day {
  const last = windows[windows.length - 1] as Window;
  const horizon = last.to + overtime + quiet;
  const open = [...windows.slice(0, -1), { from: last.from, to: last.to + overtime }];
  const rows = rowsOf(means);
  const board = emptyBoard(rows, open, horizon);
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

  /** The last way to do something that ends by a minute, not longer before it than may be waited. */
  const latestOf = (ways: readonly Block[], by: number, wait: number, from: number): Fitting | undefined => {
    let best: Fitting | undefined;
    for (const block of ways) {
      const start = board.latest(block, by, Math.max(from, by - wait - block.minutes));
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
   * Places a portion so that it is filled by a minute and not longer before it than may be waited.
   *
   * @returns nothing where it is placed; otherwise the next minute worth trying, to be asked with the job off the board
   */
  const placePortion = (portion: Portion, by: number, wait: number, from: number): Retry | undefined => {
    const ways = blocks.stoves(portion);
    const cuts = blocks.cuts(portion);
    const { drops } = portion;
    let next: Retry | undefined;
    // cooked as late as can be; earlier where it could not be prepared in time for that
    for (let latest = by; ; ) {
      const cook = latestOf(ways, latest, wait - (by - latest), from);
      if (cook === undefined) return next ?? (() => nextEnd(ways, by, from));
      const mark = placed.length;
      put({ ...cook, tasks: cookTasks(portion, cook), ...(cuts.length === 0 ? { drops } : {}) });
      if (cuts.length === 0) return undefined;
      const cut = latestOf(cuts, cook.start, HOLD_PREPARED, from);
      if (cut !== undefined) {
        const facts = { what: portion.what, products: [portion.product], raw: portion.raw };
        put({ ...cut, tasks: [task('prepare', facts, cut.start, cut.start + cut.block.minutes)], drops });
        return undefined;
      }
      const { start } = cook;
      next ??= () => nextEnd(cuts, start, from) + Math.min(...ways.map(({ minutes }) => minutes));
      const earlier = latestOf(cuts, cook.start - HOLD_PREPARED, Number.POSITIVE_INFINITY, from);
      takeBackTo(mark);
      if (earlier === undefined) return next;
      latest = Math.min(latest - 1, earlier.start + earlier.block.minutes + HOLD_PREPARED + cook.block.minutes);
    }
  };

  /** What a portion on the stove is said to be: cooked, then filled. */
  const cookTasks = ({ product, cook, filled }: Portion, { block, start }: Fitting): Placed['tasks'] => {
    const facts = { what: product, products: [product] };
    const filling = start + (cook?.minutes ?? 0);
    const end = start + block.minutes;
    return [
      ...(cook === undefined ? [] : [task('cook', facts, start, filling)]),
      ...(end > filling ? [task('fill', { ...facts, units: filled }, filling, end)] : []),
    ];
  };

  /** Minutes by the clock of a portion with all hands on it. */
  const portionMinutes = ({ prepare, cook, fill }: Portion): number =>
    shared(prepare, means.hands) + (cook?.minutes ?? 0) + shared(fill, cook?.stirred ? 1 : means.hands);

  /** Places all portions of a job so that they are filled when the next step starts; answers as `placePortion`. */
  const placePortions = (job: Job, by: number, from: number): Retry | undefined => {
    const mark = placed.length;
    let wait = HOLD_FILLED;
    // the last one first: what comes before it waits as long as it takes
    for (const portion of [...job.portions].reverse()) {
      const next = placePortion(portion, by, wait, from);
      if (next !== undefined) {
        takeBackTo(mark);
        return next;
      }
      wait += portionMinutes(portion);
    }
    return undefined;
  };

  /** When the portions could be filled at the earliest, each on its own and with every wait allowed. */
  const earliestFilled = (job: Job, from: number): number | undefined => {
    let ready = from;
    for (const portion of job.portions) {
      const cuts = blocks.cuts(portion);
      const cut = cuts.length === 0 ? from : nextEnd(cuts, from, from);
      ready = Math.max(ready, nextEnd(blocks.stoves(portion), cut, cut));
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

  /** Places a load in one canner as early as its portions can be filled in time, ending before `beat`; or nothing. */
  const placeLoad = (
    job: Job,
    step: CanStep,
    choice: CannerChoice,
    from: number,
    filled: number,
    beat: number,
  ): number | undefined => {
    const block = blocks.load(step, choice);
    const heat = blocks.heat(choice);
    const free = Math.max(0, cannerEnds[choice.canner] as number);
    const lift = lifting(step, choice.minutes);
    const facts = { ...factsOf(job), units: step.jars };
    const longest = HOLD_HOT + job.portions.reduce((sum, each) => sum + portionMinutes(each), 0);
    for (let at = Math.max(filled, free); ; ) {
      const start = board.earliest(block, at);
      const end = (start ?? 0) + choice.minutes;
      if (start === undefined || end >= beat) return undefined;
      const mark = placed.length;
      put({
        block,
        start,
        tasks: [
          task('load', facts, start, start + lift),
          task('can', facts, start, end),
          task('unload', facts, end - lift, end),
        ],
      });
      const next = placePortions(job, start, from);
      if (next === undefined && !isCold(choice, start)) return start;
      const hot = next === undefined ? latestOf([heat], start, longest, free) : undefined;
      if (hot !== undefined) {
        const canner = { what: means.canners[choice.canner] as string, products: facts.products };
        put({ ...hot, tasks: [task('heat canner', canner, hot.start, hot.start + heat.minutes)] });
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
      const start = loaded === undefined ? undefined : board.earliest(block, loaded);
      if (start !== undefined) run(start);
      return start !== undefined;
    }
    for (let at = filled; ; ) {
      const start = board.earliest(block, at);
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
    const within = windows.find((window) => from >= window.from && from < window.to);
    if (pack <= 0 || within === undefined) return;
    const block = blocks.alone(Math.ceil(pack));
    const start = board.earliest(block, from);
    if (start === undefined) return;
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
