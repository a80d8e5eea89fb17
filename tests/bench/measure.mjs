/** Timing: every rival in turn within each round, so that a busy moment of the machine falls on all of them alike. */

export const median = (values) => {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)];
};

const cpuMicros = () => {
  const { user, system } = process.cpuUsage();
  return user + system;
};

/** Milliseconds of runs that the engine takes to make a long call as fast as it gets. */
const LEARNING = 1000;

/** How often a work is repeated, so that one sample lasts some `milliseconds`; the engine learns on the runs before. */
function repeatsOf(work, milliseconds) {
  const until = performance.now() + Math.max(3 * milliseconds, LEARNING);
  do work();
  while (performance.now() < until);
  for (let repeats = 1; ; repeats *= 2) {
    const start = performance.now();
    for (let i = 0; i < repeats; i++) work();
    const took = performance.now() - start;
    if (took >= milliseconds / 4) return Math.max(1, Math.round((repeats * milliseconds) / Math.max(took, 1e-3)));
  }
}

/**
 * Times works beside each other. `works` is a list of `{ name, work }`, the first of them the base.
 *
 * @returns for each `{ name, wall, cpu, ratio }`: medians in microseconds a call, and the median over the rounds of its
 *   CPU time as a share of the base's
 */
export function beside(works, { rounds, milliseconds }) {
  const planned = works.map(({ name, work }) => ({ name, work, repeats: repeatsOf(work, milliseconds), samples: [] }));
  for (let round = 0; round < rounds; round++) {
    for (const { work, repeats, samples } of planned) {
      const cpu = cpuMicros();
      const start = performance.now();
      for (let i = 0; i < repeats; i++) work();
      const wall = ((performance.now() - start) * 1000) / repeats;
      samples.push({ wall, cpu: (cpuMicros() - cpu) / repeats });
    }
  }
  const [{ samples: base }] = planned;
  return planned.map(({ name, samples }) => ({
    name,
    wall: median(samples.map(({ wall }) => wall)),
    cpu: median(samples.map(({ cpu }) => cpu)),
    ratio: median(samples.map(({ cpu }, round) => cpu / base[round].cpu)),
  }));
}

/** Wall and CPU time of one run, in milliseconds. */
export function once(work) {
  const cpu = cpuMicros();
  const start = performance.now();
  const result = work();
  return { wall: performance.now() - start, cpu: (cpuMicros() - cpu) / 1000, result };
}
