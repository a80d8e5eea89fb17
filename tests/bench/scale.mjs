/** Large arguments: time by the size of the argument (1 is in proportion), and memory that does not grow. */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import * as stillroom from 'stillroom';
import { finishForecast } from 'stillroom/drying';
import { lethality } from 'stillroom/lethality';
import { learnFromRecords } from 'stillroom/record';
import { median, once } from './measure.mjs';
import { note, section, tell } from './report.mjs';

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc');
const heldMegabytes = () => {
  collect();
  return process.memoryUsage().heapUsed / 1e6;
};

const FOODS = ['peach', 'apricot', 'pear', 'plum'];
const ELEVATIONS = ['500 ft', '1,500 ft', '3,400 ft', '6,200 ft', '400 m'];
function processes(calls) {
  let tested = 0;
  for (let i = 0; i < calls; i++) {
    const answer = stillroom.testedProcess({
      food: FOODS[i % FOODS.length],
      form: i % FOODS.length === 3 ? 'whole' : 'halves',
      pack: 'hot',
      jar: i % 2 === 0 ? 'pint' : 'quart',
      method: 'boiling-water',
      elevation: ELEVATIONS[i % ELEVATIONS.length],
    });
    if (answer.tested) tested++;
  }
  return tested;
}

const logOf = (points) =>
  Array.from({ length: points }, (_, i) => ({
    time: { value: i / 60, unit: 'min' },
    temperature: { value: 60 + 60 * Math.sin(i / points), unit: 'degC' },
  }));
const counted = (log) => lethality({ log, reference: '121.1 degC', z: '10 degC' }).minutes;
/** The same sum without units, bounds and order: what no reader can be faster than. */
function bareLoop(log) {
  let minutes = 0;
  for (let i = 1; i < log.length; i++) {
    const rate = (at) => 10 ** ((log[at].temperature.value - 121.1) / 10);
    minutes += ((rate(i - 1) + rate(i)) / 2) * (log[i].time.value - log[i - 1].time.value);
  }
  return minutes;
}

const record = (i) => ({
  lotCode: 'A1',
  date: '2026-08-14',
  name: 'a batch',
  lots: [
    {
      food: 'peaches',
      form: 'halves',
      raw: { value: 20 + (i % 7), unit: 'lb' },
      ready: { value: 15 + (i % 5), unit: 'lb' },
    },
  ],
});
const learn = (records) => learnFromRecords({ records }).learned[0]?.n;

const weighed = (count) => ({
  weighings: Array.from({ length: count }, (_, i) => ({
    time: { value: (i * 8) / count, unit: 'h' },
    mass: { value: 150 + 850 * Math.exp((-i * 2.2) / count) + (i % 3) * 0.2, unit: 'g' },
  })),
  stopWeight: '190 g',
  scaleError: '1 g',
});

const medianRun = (work, rounds) => {
  const runs = Array.from({ length: rounds }, () => once(work));
  return { wall: median(runs.map(({ wall }) => wall)) * 1000, cpu: median(runs.map(({ cpu }) => cpu)) * 1000 };
};

/** Tells how a time grows with the size: the time of the larger, by that of the smaller times the growth of the size. */
function linear(key, what, work, small, large, rounds) {
  // the engine learns on the first runs
  for (let run = 0; run < 3; run++) work(small);
  const short = medianRun(() => work(small), Math.max(3, rounds));
  const long = medianRun(() => work(large), rounds);
  const growth = (large.length ?? large) / (small.length ?? small);
  tell(key, what, { value: long.cpu / short.cpu / growth, ...long });
}

export function scale({ quick }) {
  const rounds = 3;
  section(
    'Large arguments',
    'The time of the larger by that of the smaller, for the same amount of work: 1 is in proportion.',
  );
  processes(2000);
  const calls = quick ? 5000 : 1_000_000;
  const before = heldMegabytes();
  linear(
    'scale / testedProcess',
    `${calls} calls of testedProcess by a tenth of them`,
    processes,
    calls / 10,
    calls,
    1,
  );
  const grown = heldMegabytes() - before;
  tell('scale / memory', `memory held after ${calls} calls, more than before`, {
    value: Math.max(0, grown),
    unit: 'MB',
  });

  const points = quick ? 100_000 : 1_000_000;
  const log = logOf(points);
  const short = log.slice(0, points / 10);
  linear('scale / log', `${points} points of a log by a tenth of them`, counted, short, log, rounds);
  const own = medianRun(() => counted(log), rounds);
  const bare = medianRun(() => bareLoop(log), rounds);
  tell('scale / log loop', `${points} points of a log / a bare loop over them`, { value: own.cpu / bare.cpu, ...own });
  const [ours, theirs] = [counted(log), bareLoop(log)];
  note(`The sums of both: ${ours.toPrecision(9)} and ${theirs.toPrecision(9)} min.`);

  const records = Array.from({ length: quick ? 2000 : 100_000 }, (_, i) => record(i));
  const tenth = records.slice(0, records.length / 10);
  linear('scale / records', `${records.length} records by a tenth of them`, learn, tenth, records, 1);

  const forecast = (count) => finishForecast(weighed(count));
  linear('scale / weighings', '1000 weighings by a tenth of them', forecast, 100, 1000, rounds);
  const thousand = medianRun(() => forecast(1000), 3);
  tell('scale / 1000 weighings', 'forecast from 1000 weighings', {
    value: thousand.cpu / 1000,
    unit: 'ms',
    ...thousand,
  });
  const most = medianRun(() => forecast(10_000), 1);
  tell('', 'forecast from 10000 weighings', { value: most.cpu / 1000, unit: 'ms', ...most });
}
