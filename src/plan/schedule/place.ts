import type { ScheduledTask, TaskKind, Use, Window } from '../daySchedule';
import { type Block, type Board, emptyBoard, type Part, type Row } from './board';
import type { CanStep, Job, Means, Portion, QuietStep, Trimmings } from './job';

/** Longest wait of prepared fruit before it is cooked or filled, held in an anti-darkening bath: common practice. */
export const HOLD_PREPARED = 60;
/** Longest wait of a canner whose water is hot, under its lid: common practice. */
const HOLD_HOT = 60;
/** Longest wait of a filled jar, tray or bag before it goes into the canner, dryer or freezer: common practice. */
export const HOLD_FILLED = 20;

/** A block that stands on the board, and the tasks that it is made of. */
interface Placed {
  readonly block: Block;
  readonly start: number;
  readonly tasks: readonly Omit<ScheduledTask, 'uses'>[];
}

/** The next minute worth trying, where a job did not fit at one. */
type Retry = () => number;

/** A day being filled job by job. */
export interface Day {
  /** Places a job as early as it fits beside those that stand; false where it does not fit before the horizon. */
  readonly place: (job: Job) => boolean;
  readonly tasks: () => ScheduledTask[];
}

/** The rows of the board, by where they stand: hands, burners, dryer trays, freeze-dryer, freezer, pots, canners. */
const HANDS = 0;
const BURNERS = 1;
const TRAYS = 2;
const FREEZE_DRYER = 3;
const FREEZER = 4;
const POTS = 5;

/** The resources of a kitchen by the names that tasks use. */
export function rowsOf({ hands, burners, pots, canners, trays, freezerKg }: Means): Row[] {
  const row = (name: string, capacity: number, attended = true): Row => ({ name, capacity, attended });
  return [
    row('hands', hands),
    row('burners', burners),
    row('dryer trays', trays, false),
    row('freeze-dryer', 1, false),
    row('freezer', freezerKg ?? Number.POSITIVE_INFINITY, false),
    ...pots.map(({ label }) => row(label, 1)),
    ...canners.map((label) => row(label, 1)),
  ];
}

const QUIET_ROW = { dry: TRAYS, 'freeze-dry': FREEZE_DRYER, freeze: FREEZER } as const;

const part = (row: number, amount: number, at: number, minutes: number): Part => ({ row, amount, at, minutes });
/** Minutes by the clock of work that so many pairs of hands share. */
export const shared = (work: number, hands: number): number => Math.ceil(work / hands - 1e-9);

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
  const board: Board = emptyBoard(rows, open, horizon);
  const firstCanner = POTS + means.pots.length;
  const placed: Placed[] = [];
  /** When the last load of each canner ends. */
  const cannerEnds = means.canners.map(() => Number.NEGATIVE_INFINITY);
  const dropped: { readonly at: number; readonly lot: number; readonly kg: number }[] = [];
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
    unattended: kind === 'dry' || kind === 'freeze-dry' || kind === 'freeze',
  });

  /** Preparing a portion with so many pairs of hands. */
  const preparing = ({ prepare }: Portion, hands: number): Block => {
    const minutes = shared(prepare, hands);
    return { minutes, parts: [part(HANDS, hands, 0, minutes)] };
  };
  /** Cooking and filling in one piece: the pot stays on its burner until the last jar is filled. */
  const cooking = ({ cook, fill }: Portion, hands: number, pot: number | undefined): Block => {
    const boils = cook?.minutes ?? 0;
    const fills = shared(fill, hands);
    return {
      minutes: boils + fills,
      parts: [
        ...(pot === undefined ? [] : [part(pot, 1, 0, boils + fills), part(BURNERS, 1, 0, boils + fills)]),
        ...(cook?.stirred ? [part(HANDS, 1, 0, boils)] : []),
        ...(fills > 0 ? [part(HANDS, hands, boils, fills)] : []),
      ],
    };
  };
  /** The pots that a portion fits into; one of each size is enough to try while it is free. */
  const potsFor = ({ cook }: Portion): (number | undefined)[] =>
    cook === undefined
      ? [undefined]
      : means.pots.flatMap(({ litres }, pot) => (litres >= cook.litres - 1e-6 ? [POTS + pot] : []));
  const handsTried = Array.from({ length: means.hands }, (_, index) => means.hands - index);

  /** The last way to do something that ends by a minute, not longer before it than may be waited. */
  const latestOf = (
    ways: readonly Block[],
    by: number,
    wait: number,
    from: number,
  ): { block: Block; start: number } | undefined => {
    let best: { block: Block; start: number } | undefined;
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

  const waysOf = (portion: Portion) =>
    potsFor(portion).flatMap((pot) => handsTried.map((hands) => cooking(portion, hands, pot)));

  /**
   * Places a portion so that it is filled by a minute and not longer before it than may be waited.
   *
   * @returns nothing where it is placed; otherwise the next minute worth trying, to be asked with the job off the board
   */
  const placePortion = (portion: Portion, by: number, wait: number, from: number): Retry | undefined => {
    const ways = waysOf(portion);
    const cuts = portion.prepare > 0 ? handsTried.map((hands) => preparing(portion, hands)) : [];
    let next: Retry | undefined;
    // cooked as late as can be; earlier where it could not be prepared in time for that
    for (let latest = by; ; ) {
      const cook = latestOf(ways, latest, wait - (by - latest), from);
      if (cook === undefined) return next ?? (() => nextEnd(ways, by, from));
      const mark = placed.length;
      put({ ...cook, tasks: cookTasks(portion, cook) });
      if (cuts.length === 0) return undefined;
      const cut = latestOf(cuts, cook.start, HOLD_PREPARED, from);
      if (cut !== undefined) {
        const facts = { what: portion.what, products: [portion.product], raw: portion.raw };
        put({ ...cut, tasks: [task('prepare', facts, cut.start, cut.start + cut.block.minutes)] });
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
  const cookTasks = ({ product, cook, filled }: Portion, { block, start }: Omit<Placed, 'tasks'>): Placed['tasks'] => {
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
      const cuts = portion.prepare > 0 ? handsTried.map((hands) => preparing(portion, hands)) : [];
      const cut = cuts.length === 0 ? from : nextEnd(cuts, from, from);
      const end = nextEnd(waysOf(portion), cut, cut);
      ready = Math.max(ready, end);
    }
    return Number.isFinite(ready) ? ready : undefined;
  };

  /** From when on the trimmings that a job needs have fallen off. */
  const released = (needs: readonly Trimmings[]): number | undefined => {
    let from = 0;
    for (const { lot, kg } of needs) {
      let left = kg + (takenTrimmings.get(lot) ?? 0) - 1e-6;
      const drops = dropped.filter((drop) => drop.lot === lot).sort((one, other) => one.at - other.at);
      for (const drop of drops) {
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

  type CannerChoice = CanStep['canners'][number];
  /** Minutes of one pair of hands to put the jars in, or to lift them out. */
  const lifting = ({ lift }: CanStep, minutes: number): number => Math.min(Math.ceil(lift), Math.floor(minutes / 2));
  /** One load, from the first jar in to the last jar out. */
  const canning = (step: CanStep, { canner, minutes }: CannerChoice): Block => {
    const lift = lifting(step, minutes);
    return {
      minutes,
      parts: [
        part(firstCanner + canner, 1, 0, minutes),
        part(BURNERS, 1, 0, minutes),
        part(HANDS, 1, 0, lift),
        part(HANDS, 1, minutes - lift, lift),
      ],
    };
  };
  /** The water of a canner that stood cold. */
  const heating = ({ canner, warmUp }: CannerChoice): Block => ({
    minutes: warmUp,
    parts: [part(firstCanner + canner, 1, 0, warmUp), part(BURNERS, 1, 0, warmUp)],
  });
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
    const block = canning(step, choice);
    const heat = heating(choice);
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
    const block: Block = { minutes: step.minutes, parts: [part(QUIET_ROW[step.kind], step.amount, 0, step.minutes)] };
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
    const block: Block = { minutes: shared(pack, 1), parts: [part(HANDS, 1, 0, shared(pack, 1))] };
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
    // what falls off is there when its portion is prepared; the last portion stands first
    const cuts = placed.slice(first).flatMap(({ tasks }) => tasks.filter(({ kind }) => kind === 'prepare'));
    const preparedPortions = [...job.portions].reverse().filter(({ prepare }) => prepare > 0);
    preparedPortions.forEach(({ drops }, index) => {
      for (const { lot, kg } of drops) dropped.push({ at: cuts[index]?.end ?? filled, lot, kg });
    });
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
