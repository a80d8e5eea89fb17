import { attendedStart, type Day, put } from './day';
import { heldOf, takenOn, tooLateFor } from './inWork';
import type { Job, QuietStep } from './job';
import { placeAlone, placePortions } from './placePortions';
import { factsOf, task } from './tasksOf';

/** What goes on by itself starts when it is loaded; the freeze-dryer when it is free, its trays in the freezer. */
export function placeQuiet(day: Day, job: Job, step: QuietStep, from: number, filled: number): boolean {
  const block = day.blocks.quiet(step);
  const run = (start: number): void => {
    const rests = step.kind === 'ferment' || step.kind === 'stand';
    const facts = { ...factsOf(job), units: step.units, ...(rests ? { leastMinutes: step.minutes } : {}) };
    const quiet = task(step.kind, facts, start, start + step.minutes);
    // what was spread or bagged before, and what is put on as it is
    const held = job.portions.every(({ fill, cook }) => fill === 0 && cook === undefined) ? heldOf(job) : undefined;
    put(day, { block, start, tasks: [step.kind === 'freeze-dry' ? quiet : takenOn(quiet, held)] });
    packLater(day, job, step, start + step.minutes);
  };
  if (step.kind === 'freeze-dry') {
    const loaded = placeAlone(day, job, from, filled);
    // its trays wait in the freezer, and go in whenever it is free
    const start = loaded === undefined ? undefined : day.board.earliest(block, loaded);
    if (start !== undefined) run(start);
    return start !== undefined;
  }
  for (let at = filled; ; ) {
    const start = attendedStart(day, block, at);
    if (start === undefined || tooLateFor(job, start)) return false;
    const next = placePortions(day, job, start, from);
    if (next === undefined) {
      run(start);
      return true;
    }
    at = Math.max(start + 1, next());
  }
}

/** What comes dry while somebody is there is packed; what comes dry at night waits for the morning. */
function packLater(day: Day, job: Job, { pack }: QuietStep, from: number): void {
  const minutes = Math.ceil(pack);
  const block = day.blocks.handwork(minutes);
  const start = pack <= 0 ? undefined : day.board.earliest(block, from);
  if (start === undefined) return;
  const within = day.windows.find((window) => from >= window.startMinute && from < window.endMinute);
  if (within === undefined || start + minutes > within.endMinute) return;
  put(day, { block, start, tasks: [task('pack', factsOf(job), start, start + block.minutes)] });
}
