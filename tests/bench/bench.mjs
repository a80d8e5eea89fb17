/**
 * `npm run bench`: how fast and how large, as ratios within one run; nothing here passes or fails on time.
 * `--quick` takes fewer rounds.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import loadHighs from 'highs';
import Qty from 'js-quantities';
import { create, all as mathAll } from 'mathjs';
import * as stillroom from 'stillroom';
import unitmath from 'unitmath';

const quick = process.argv.includes('--quick');
const rounds = quick ? 3 : 9;
const median = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];

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

/** Median microseconds of one call. */
function timed(work, repeats) {
  work();
  const times = [];
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    for (let i = 0; i < repeats; i++) work();
    times.push(((performance.now() - start) * 1000) / repeats);
  }
  return median(times);
}

const print = (name, micros, base) =>
  console.log(`${name.padEnd(34)} ${micros.toFixed(2).padStart(10)} us  ${(micros / base).toFixed(2).padStart(8)} x`);

console.log('Conversion of a text, 1.5 cup to mL (stillroom = 1; below 1 is faster than stillroom)');
const repeats = quick ? 500 : 5000;
const math = create(mathAll);
const own = timed(() => stillroom.convert('1.5 cup', 'mL').value, repeats);
print('stillroom', own, own);
print(
  'mathjs',
  timed(() => math.unit('1.5 cup').toNumber('mL'), repeats),
  own,
);
print(
  'js-quantities',
  timed(() => new Qty('1.5 cu').to('ml').scalar, repeats),
  own,
);
print(
  'unitmath',
  timed(() => unitmath('1.5 cup').to('mL').value, repeats),
  own,
);
const exact = [
  ['stillroom', stillroom.convert('1 cup', 'tsp').value],
  ['mathjs', math.unit('1 cup').toNumber('teaspoon')],
  ['js-quantities', new Qty('1 cu').to('tsp').scalar],
  ['unitmath', unitmath('1 cup').to('tsp').value],
];
console.log(`a cup in teaspoons (48): ${exact.map(([name, value]) => `${name} ${value}`).join(', ')}`);

console.log('\nPlanner: the same program by stillroom’s solver and by HiGHS (stillroom = 1)');
const request = JSON.parse(readFileSync(new URL('../../examples/day.json', import.meta.url), 'utf8'));
const { prepare, optimize } = await plannerOf();
const { program } = prepare(request);
const highs = await loadHighs();
const text = toLp(program);
const planned = timed(() => stillroom.planDay(request), quick ? 1 : 3);
const ours = timed(() => optimize(program), quick ? 1 : 3);
print('planDay, the whole answer', planned, ours);
print('stillroom, solving', ours, ours);
print(
  'HiGHS, solving',
  timed(() => highs.solve(text, { output_flag: false }), quick ? 1 : 3),
  ours,
);
const reference = highs.solve(text, { output_flag: false }).ObjectiveValue;
console.log(`objective: stillroom ${optimize(program).worth}, HiGHS ${reference}`);
const { schedule } = stillroom.planDay(request);
console.log(
  `order of work: ${schedule.tasks.length} tasks, done at ${schedule.makespan} min, no order before ${schedule.lowerBound} min`,
);

console.log('\nPlanner: invented days of 8 lots and 12 products (HiGHS on the same program beside it)');
const days = Array.from({ length: quick ? 4 : 20 }, (_, index) => largeDay(index + 1));
const solved = days.map((day) => {
  const large = prepare(day).program;
  const begun = performance.now();
  const found = optimize(large);
  const between = performance.now();
  const best = highs.solve(toLp(large), { output_flag: false, mip_rel_gap: 0 }).ObjectiveValue;
  const done = performance.now();
  return { ours: between - begun, theirs: done - between, apart: Math.abs(found.worth - best), gap: found.gap };
});
const middle = (of) => median(solved.map(of)).toFixed(1);
console.log(
  `median ${middle(({ ours }) => ours)} ms, HiGHS ${middle(({ theirs }) => theirs)} ms; ` +
    `slowest ${Math.max(...solved.map(({ ours }) => ours)).toFixed(0)} ms; ` +
    `objectives apart by ${Math.max(...solved.map(({ apart }) => apart)).toExponential(1)} at the most; ` +
    `${solved.filter(({ gap }) => gap > 0).length} of ${solved.length} not proven`,
);

console.log('\nImport time in a fresh process (zod alone = 1)');
const startUp = (module) => {
  const times = [];
  for (let round = 0; round < rounds; round++) {
    const code = `const t=performance.now();await import(${JSON.stringify(module)});console.log(performance.now()-t)`;
    times.push(
      Number(execFileSync(process.execPath, ['--input-type=module', '-e', code], { encoding: 'utf8' })) * 1000,
    );
  }
  return median(times);
};
const zod = startUp('zod');
print('zod', zod, zod);
const { exports: paths } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
const modules = Object.keys(paths)
  .filter((path) => path !== './package.json')
  .map((path) => `stillroom${path.slice(1)}`);
for (const name of quick ? ['stillroom'] : ['stillroom', 'stillroom/quantity', 'stillroom/process'])
  print(name, startUp(name), zod);

console.log('\nSize of a page that imports one module, minified, with all it needs and without zod and decimal.js');
for (const name of modules) {
  const size = async (external) => {
    const { outputFiles } = await build({
      stdin: {
        contents: `export * from ${JSON.stringify(name)}`,
        resolveDir: new URL('../..', import.meta.url).pathname,
      },
      bundle: true,
      minify: true,
      format: 'esm',
      platform: 'neutral',
      mainFields: ['module', 'main'],
      write: false,
      external,
    });
    return gzipSync(outputFiles[0].contents).length / 1024;
  };
  const whole = await size([]);
  const bare = await size(['zod', 'zod/*', 'decimal.js', 'convert-units']);
  console.log(`${name.padEnd(28)} ${whole.toFixed(1).padStart(8)} kB gzip  ${bare.toFixed(1).padStart(8)} kB own`);
}

/** A program in the LP format that HiGHS reads. */
function toLp({ variables, bounds }) {
  const id = new Map(variables.map(({ name }, index) => [name, `v${index}`]));
  const sum = (terms) =>
    terms.map(([name, weight]) => `${weight < 0 ? '-' : '+'} ${Math.abs(weight)} ${id.get(name)}`).join(' ') || '0 v0';
  const rows = bounds.flatMap(({ terms, min, max }, index) => [
    ...(max === undefined ? [] : [` u${index}: ${sum(terms)} <= ${max}`]),
    ...(min === undefined ? [] : [` l${index}: ${sum(terms)} >= ${min}`]),
  ]);
  const integers = variables.filter(({ integer }) => integer).map(({ name }) => id.get(name));
  const worth = sum(variables.map(({ name, worth: each }) => [name, each]));
  return `Maximize\n obj: ${worth}\nSubject To\n${rows.join('\n')}\nGeneral\n ${integers.join(' ')}\nEnd\n`;
}

/** Invented: 8 lots of four kinds of fruit and 12 products of them, in a well found kitchen. */
function largeDay(seed) {
  let state = seed;
  const random = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  const between = (low, high) => Math.round(low + (high - low) * random());
  const kinds = ['peach', 'apple', 'plum', 'pear'];
  const lots = Array.from({ length: 8 }, (_, index) => ({
    name: `lot ${index + 1}`,
    food: kinds[index % kinds.length],
    raw: `${between(10, 60)} lb`,
  }));
  const made = kinds.flatMap((from) => [
    from === 'apple'
      ? { make: 'jars', from, form: 'sauce', jar: 'pint' }
      : { make: 'jars', from, form: from === 'plum' ? 'whole' : 'halves', pack: 'hot', jar: 'quart' },
    { make: 'dried', from, form: 'slices', packSize: '4 oz' },
    { make: 'frozen', from, form: 'slices', packSize: '1 lb' },
  ]);
  return {
    invented: true,
    lots,
    kitchen: {
      elevation: '1,000 ft',
      hours: `${between(6, 14)} h`,
      hands: between(1, 3),
      pots: [{ volume: '12 quarts' }, { volume: '8 quarts' }],
      canners: [{ method: 'boiling-water', holds: { quart: 7, pint: 9 }, count: 2 }],
      jars: [
        { jar: 'quart', count: between(14, 40) },
        { jar: 'pint', count: between(14, 40) },
      ],
      dryer: { trays: between(6, 20), trayArea: '200 in2' },
      freezer: { room: `${between(20, 60)} L` },
    },
    products: made.map((product) => ({ ...product, worth: between(4, 40) / 4 })),
  };
}
