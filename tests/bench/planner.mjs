/** The planner: its solver beside HiGHS on the same program, and whole plans. */
import { readFileSync } from 'node:fs';
import { build } from 'esbuild';
import loadHighs from 'highs';
import * as stillroom from 'stillroom';
import { largeDay, toLp } from './days.mjs';
import { beside, median, once } from './measure.mjs';
import { note, section, tell } from './report.mjs';

/** The planner's own program and its solver, which the package does not export. */
async function plannerOf() {
  const from = (file) => JSON.stringify(new URL(`../../src/plan/${file}`, import.meta.url).pathname);
  const contents = `export { prepare } from ${from('program/prepare.ts')}; export { optimize } from ${from('solver/optimize.ts')};`;
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: new URL('.', import.meta.url).pathname, loader: 'ts' },
    bundle: true,
    format: 'esm',
    platform: 'node',
    write: false,
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString('base64')}`);
}

const SIZES = [
  { key: '8x12', what: '8 lots and 12 products', days: { quick: 2, full: 20 }, size: {} },
  {
    key: '24x32',
    what: '24 lots and 32 products',
    days: { quick: 0, full: 5 },
    size: { lots: 24, fruits: 8, kinds: 4, scale: 3 },
  },
];
/** Seconds that HiGHS is given for one program. */
const PATIENCE = 60;

export async function planner({ quick, ...options }) {
  const { prepare, optimize } = await plannerOf();
  const highs = await loadHighs();
  const solve = (text) => highs.solve(text, { output_flag: false, mip_rel_gap: 0, time_limit: PATIENCE });

  section(
    'The planner: the example day',
    'Solving by the time of HiGHS on the same program; the whole plan beside it.',
  );
  const request = JSON.parse(readFileSync(new URL('../../examples/day.json', import.meta.url), 'utf8'));
  const { program } = prepare(request);
  const text = toLp(program);
  const [other, own, whole] = beside(
    [
      { name: 'HiGHS', work: () => solve(text) },
      { name: 'stillroom', work: () => optimize(program) },
      { name: 'planDay', work: () => stillroom.planDay(request) },
    ],
    { ...options, milliseconds: 50 },
  );
  tell('planner / example', 'solving: stillroom / HiGHS', { value: own.ratio, wall: own.wall, cpu: own.cpu });
  tell('planner / example whole', 'planDay, the whole answer / HiGHS', { ...whole, value: whole.ratio });
  tell('', 'HiGHS itself', { value: 1, wall: other.wall, cpu: other.cpu });
  const { schedule } = stillroom.planDay(request);
  note(
    `Worth: stillroom ${optimize(program).worth}, HiGHS ${solve(text).ObjectiveValue}. ${schedule.tasks.length} tasks, done at ${schedule.makespan} min; no order of work is done before ${schedule.lowerBound} min.`,
  );

  for (const { key, what, days, size } of SIZES) {
    const count = quick ? days.quick : days.full;
    if (count === 0) continue;
    section(`The planner: ${what}`, 'Invented days; HiGHS solves the same programs.');
    const runs = Array.from({ length: count }, (_, index) => {
      const day = largeDay(index + 1, size);
      const large = prepare(day).program;
      const lp = toLp(large);
      const own = once(() => optimize(large));
      const other = once(() => solve(lp));
      const plan = once(() => stillroom.planDay(day));
      return { own, other, plan, apart: Math.abs(own.result.worth - other.result.ObjectiveValue) };
    });
    const middle = (of, figure) => median(runs.map((run) => run[of][figure])) * 1000;
    tell(`planner / ${key}`, 'solving: stillroom / HiGHS', {
      value: median(runs.map(({ own, other }) => own.cpu / other.cpu)),
      wall: middle('own', 'wall'),
      cpu: middle('own', 'cpu'),
    });
    tell(`planner / ${key} whole`, 'planDay, the whole answer / HiGHS', {
      value: median(runs.map(({ plan, other }) => plan.cpu / other.cpu)),
      wall: middle('plan', 'wall'),
      cpu: middle('plan', 'cpu'),
    });
    tell('', 'HiGHS itself', { value: 1, wall: middle('other', 'wall'), cpu: middle('other', 'cpu') });
    const slowest = Math.max(...runs.map(({ plan }) => plan.wall));
    note(
      `${runs.length} days; slowest plan ${slowest.toFixed(0)} ms wall; worths apart by ${Math.max(...runs.map(({ apart }) => apart)).toExponential(1)} at the most; ${runs.filter(({ own }) => own.result.gap > 0).length} not proven best.`,
    );
  }
}
