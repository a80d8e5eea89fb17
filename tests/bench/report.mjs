/** The figures of a run: printed, and written as docs/performance.md. Ratios first, each with its bar. */
import { readFileSync, writeFileSync } from 'node:fs';

/** The bar of a ratio or a size, by its key; one that has none is only told. */
const BARS = JSON.parse(readFileSync(new URL('bars.json', import.meta.url), 'utf8'));
/** What was looked at, tried and reached where a bar is missed, by its key. */
const WHY = JSON.parse(readFileSync(new URL('why.json', import.meta.url), 'utf8'));
const PAGE = new URL('../../docs/performance.md', import.meta.url);

const sections = [];

/** Begins a section: what is compared with what, in one sentence. */
export function section(title, about) {
  sections.push({ title, about, lines: [], notes: [] });
  console.log(`\n${title}: ${about}`);
}

const digits = (value) =>
  value >= 100
    ? value.toFixed(0)
    : value >= 10
      ? value.toFixed(1)
      : value >= 0.1
        ? value.toFixed(2)
        : value.toPrecision(2);
const micros = (value) =>
  value === undefined ? '' : value >= 1000 ? `${digits(value / 1000)} ms` : `${digits(value)} µs`;

/**
 * Tells one figure. `key` names its bar unless one is given, `value` is held against it; `unit` is `x` for a ratio or `kB`; `wall` and
 * `cpu` are microseconds.
 */
export function tell(key, what, { value, unit = 'x', wall, cpu, bar = BARS[key] }) {
  const verdict = bar === undefined ? '' : value <= bar ? 'pass' : 'FAIL';
  if (verdict === 'FAIL' && key in WHY) sections.at(-1).notes.push(`${what}, ${digits(value)} ${unit}: ${WHY[key]}`);
  const line = { what, value: `${digits(value)} ${unit}`, bar: bar === undefined ? '' : `${bar} ${unit}`, verdict };
  sections.at(-1).lines.push({ ...line, wall: micros(wall), cpu: micros(cpu) });
  const columns = [what.padEnd(44), line.value.padStart(10), (line.bar && `bar ${line.bar}`).padStart(13)];
  console.log(
    [...columns, verdict.padEnd(4), micros(wall).padStart(10), micros(cpu).padStart(10)].join('  ').trimEnd(),
  );
}

/** Says something that is no figure of its own. */
export function note(text) {
  sections.at(-1).notes.push(text);
  console.log(text);
}

/** How many bars were missed. */
export const missed = () => sections.flatMap(({ lines }) => lines).filter(({ verdict }) => verdict === 'FAIL').length;

/** Writes the page. */
export function write(machine) {
  const parts = sections.flatMap(({ title, about, lines, notes }) => [
    `## ${title}`,
    about,
    ...(lines.length === 0
      ? []
      : [
          [
            '| what | figure | bar | | wall | CPU |',
            '| --- | ---: | ---: | --- | ---: | ---: |',
            ...lines.map(({ what, value, bar, verdict, wall, cpu }) =>
              `| ${[what, value, bar, verdict, wall, cpu].join(' | ')} |`.replaceAll('  ', ' '),
            ),
          ].join('\n'),
        ]),
    ...notes,
  ]);
  const head = [
    '# How fast, and how large',
    'Written by `npm run bench -- --write` from the built package, bundled as a user bundles it. A ratio says more than a time: both sides of it ran in turn on the same machine, and the median over the rounds stands here. Ratios are of CPU time. Times are of the machine below, for their order of magnitude only.',
    machine,
  ];
  writeFileSync(PAGE, `${[...head, ...parts].join('\n\n')}\n`);
}
