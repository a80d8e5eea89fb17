/**
 * `npm run check -- FILE...`: runs vector files against the library and prints each published value, the computed
 * one and the difference; exits with 1 when one falls outside its tolerance. Without files it runs all of shared/.
 * `--report FILE` also writes what it found as a Markdown page; `--failed` prints only what failed.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { loadFunctions } from './loadFunctions';
import { type Comparison, type Outcome, runCheck } from './run';
import { type Check, GROUPS, type Group, groupOf, type VectorFile } from './schema';
import { written, writtenDifference } from './written';

const args = process.argv.slice(2);
const reportAt = args.indexOf('--report');
const report = reportAt === -1 ? undefined : args.splice(reportAt, 2)[1];
const onlyFailed = args.includes('--failed');
const files = args.filter((arg) => !arg.startsWith('--'));
if (files.length === 0) {
  const shared = new URL('../../shared/', import.meta.url).pathname;
  files.push(
    ...readdirSync(shared, { recursive: true })
      .map(String)
      .filter((file) => file.endsWith('.json'))
      .sort()
      .map((file) => shared + file),
  );
}

function line(id: string, comparison: Comparison): string {
  const { field, published, computed, passed } = comparison;
  const off = writtenDifference(comparison);
  const figure = `${passed ? 'ok  ' : 'FAIL'} ${id}${field === '' ? '' : ` ${field}`}`;
  return `${figure}: published ${written(published)}, computed ${written(computed)}${off === '' ? '' : `  difference ${off}`}`;
}

const functions = await loadFunctions();
let failed = 0;
let passed = 0;
const sections: string[] = [];
const counts = new Map<Group, { checks: number; passed: number }>(
  GROUPS.map((group) => [group, { checks: 0, passed: 0 }]),
);
for (const file of files) {
  let vectors: VectorFile;
  try {
    vectors = JSON.parse(readFileSync(file, 'utf8')) as VectorFile;
    if (!Array.isArray(vectors.checks)) throw new Error('it holds no list of checks');
  } catch (error) {
    console.error(`${file}: cannot be read as a vector file: ${(error as Error).message}`);
    process.exitCode = 1;
    failed += 1;
    continue;
  }
  console.log(`\n${vectors.title} (${[vectors.source].flat().join(', ')})`);
  const outcomes = vectors.checks.map((check) => runCheck(check, functions));
  for (const outcome of outcomes) {
    if (outcome.passed) passed += 1;
    else failed += 1;
    const count = counts.get(groupOf(outcome.check));
    if (count !== undefined) {
      count.checks += 1;
      count.passed += outcome.passed ? 1 : 0;
    }
    for (const comparison of outcome.comparisons) {
      if (!onlyFailed || !comparison.passed) console.log(line(outcome.check.id, comparison));
    }
  }
  sections.push(section(vectors, outcomes));
}

function section(vectors: VectorFile, outcomes: Outcome<Check>[]): string {
  const rows = new Map<
    string,
    { checks: number; passed: number; figures: number; worst: number; worstRelative: number }
  >();
  for (const { check, comparisons, passed: good } of outcomes) {
    const row = rows.get(check.call) ?? { checks: 0, passed: 0, figures: 0, worst: 0, worstRelative: 0 };
    row.checks += 1;
    row.passed += good ? 1 : 0;
    row.figures += comparisons.length;
    for (const { published, difference } of comparisons) {
      if (difference === undefined) continue;
      const size = Math.abs(typeof published === 'number' ? published : (published as { value: number }).value);
      row.worst = Math.max(row.worst, Math.abs(difference));
      if (size > 0) row.worstRelative = Math.max(row.worstRelative, Math.abs(difference) / size);
    }
    rows.set(check.call, row);
  }
  const show = (value: number) => (value === 0 ? '0' : value.toPrecision(2));
  const lines = [...rows].map(
    ([call, row]) =>
      `| \`${call}\` | ${row.passed} of ${row.checks} | ${row.figures} | ${show(row.worst)} | ${show(row.worstRelative)} |`,
  );
  return [
    `## ${vectors.title}`,
    '',
    `Source: ${[vectors.source].flat().join(', ')}`,
    '',
    '| function | checks passed | figures compared | largest difference | largest relative difference |',
    '| --- | --- | --- | --- | --- |',
    ...lines,
    '',
  ].join('\n');
}

/** What each group of checks can show. */
const SHOWS: Readonly<Record<Group, string>> = {
  'published table': 'figures that a source prints, and refusals of what it does not',
  'worked example': 'questions that a source answers in print',
  'verification value': 'values that a standard prints so that programs can be checked',
  'second implementation': 'figures computed apart from the library from what a source prints',
  'common practice': 'what the trade does; no source',
  'bad input': 'errors that must be thrown',
  'recalled with recalled': 'figures that nobody read in a copy, on both sides: they show that the code runs',
  'table with its own transcription':
    'rows written from the transcription that the table was made from: they show that the table is served as it is',
};

if (report !== undefined) {
  const head = [
    '# Accuracy',
    '',
    'Written by `npm run check -- --report docs/accuracy.md`: every check vector of `shared/` against the library.',
    "Differences are in the published figure's own unit.",
    '',
    `${passed} passed, ${failed} failed`,
    '',
    '| kind of check | passed | what it shows |',
    '| --- | --- | --- |',
    ...[...counts].map(([group, count]) => `| ${group} | ${count.passed} of ${count.checks} | ${SHOWS[group]} |`),
    '',
    '',
  ].join('\n');
  writeFileSync(report, head + sections.join('\n'));
}
console.log(`\n${passed} passed, ${failed} failed`);
if (failed > 0) process.exitCode = 1;
