/** The tables of the pages against the library: what a page prints is what the functions answer. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { syrupBoilingTemperature } from '../../src/solution/index';
import { gelTemperature } from '../../src/sugar/index';
import { fruitWaterActivity, growthAt, keeps } from '../../src/water-activity/index';
import { known } from '../helpers/known';

/** The rows of the table under a heading row that starts so; cells as text. */
function rowsUnder(page: string, heading: string): string[][] {
  const lines = readFileSync(new URL(`../../docs/${page}`, import.meta.url), 'utf8').split('\n');
  const start = lines.findIndex((line) => line.startsWith(`| ${heading}`));
  const rest = lines.slice(start + 2);
  const rows = rest.slice(
    0,
    rest.findIndex((line) => !line.startsWith('|')),
  );
  expect(start).toBeGreaterThan(-1);
  expect(rows.length).toBeGreaterThan(3);
  return rows.map((row) =>
    row
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
}

test('set.md: boiling point and gel point by elevation, and the printed table', () => {
  for (const [place = '', boils, gel, printed] of rowsUnder('set.md', 'elevation')) {
    const feet = { value: Number(place.replace(/[ ,ft]/g, '')), unit: 'ft' } as const;
    const answer = gelTemperature({ elevation: feet });
    expect(answer.boiling.value.toFixed(1)).toBe(boils);
    expect(answer.temperature.value.toFixed(1)).toBe(gel);
    expect(String(answer.printedLine?.temperature.value)).toBe(printed);
  }
});

test('set.md: the rise by each source', () => {
  for (const [brix, followed, handbook, cane] of rowsUnder('set.md', 'Brix')) {
    const { rises } = syrupBoilingTemperature({ brix: Number(brix) });
    expect(rises['starzak-peacock-1997']?.toFixed(2)).toBe(followed);
    expect(rises['browne-1912']?.toFixed(2)).toBe(handbook);
    expect(rises['batterham-norgate']?.toFixed(2)).toBe(cane);
  }
});

test('keep.md: who grows from where', () => {
  const names: Readonly<Record<string, string>> = {
    '*Clostridium botulinum*, proteolytic': 'Clostridium botulinum A & B (proteolytic)',
    '*Staphylococcus aureus*': 'Staphylococcus aureus',
    'yeasts and molds that thrive in sugar or dry food': 'osmophilic yeasts',
  };
  for (const [who = '', from] of rowsUnder('keep.md', 'who')) {
    const name = names[who] ?? who;
    expect(growthAt({ waterActivity: Number(from) }).mayGrow).toContain(name);
    expect(growthAt({ waterActivity: Number(from) - 0.001 }).mayGrow).not.toContain(name);
  }
});

test('keep.md: apple slices', () => {
  for (const [moisture, activity, span, verdict] of rowsUnder('keep.md', 'apple slices')) {
    const { waterActivityRange: range } = known(fruitWaterActivity({ food: 'apple', moisture: moisture as '1 %' }));
    expect(range.likely.toFixed(2)).toBe(activity);
    expect(`${range.low.toFixed(2)} to ${range.high.toFixed(2)}`).toBe(span);
    expect(keeps({ waterActivity: range }).verdict).toBe(verdict);
  }
});
