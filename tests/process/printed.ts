/** The published rows as the check vectors hold them: transcribed from the references, not from the library's data. */
import { readFileSync } from 'node:fs';
import type { TestedProcessInput } from '../../src/process/index';

export interface PrintedCheck {
  id: string;
  call: string;
  input: TestedProcessInput;
  expect: { tested?: boolean; minutes?: number; pressure?: { value: number }; error?: string };
}

/** The checks of one file of process vectors. */
export function checksOf(name: string): PrintedCheck[] {
  const file = new URL(`../../shared/process-${name}.json`, import.meta.url);
  return JSON.parse(readFileSync(file, 'utf8')).checks as PrintedCheck[];
}
export const printedChecks: PrintedCheck[] = ['fruit', 'tomato-lowacid', 'pickle-jam', 'guide-2015'].flatMap(checksOf);

/** One printed line: what it says at both edges of each of its bands. */
export interface PrintedLine {
  question: Omit<TestedProcessInput, 'elevation'>;
  edges: { feet: number; minutes?: number; pressure?: number; tested: boolean }[];
}

/** Checks of `testedProcess` that differ only in the elevation in feet, gathered into lines. */
export const printedLines: PrintedLine[] = (() => {
  const lines = new Map<string, PrintedLine>();
  for (const { call, input, expect } of printedChecks) {
    const feet = /^(\d+) ft$/.exec(String(input.elevation ?? ''))?.[1];
    if (call !== 'testedProcess' || feet === undefined || expect.tested === undefined) continue;
    const { elevation, ...question } = input;
    const key = JSON.stringify(question);
    const line = lines.get(key) ?? { question, edges: [] };
    const { minutes, pressure, tested } = expect;
    if (line.edges.every((edge) => edge.feet !== Number(feet)))
      line.edges.push({
        feet: Number(feet),
        tested,
        ...(minutes === undefined ? {} : { minutes }),
        ...(pressure === undefined ? {} : { pressure: pressure.value }),
      });
    lines.set(key, line);
  }
  const whole = [...lines.values()].filter(
    ({ edges }) => edges.length >= 4 && edges.length % 2 === 0 && edges.some(({ feet }) => feet === 0),
  );
  for (const { edges } of whole) edges.sort((a, b) => a.feet - b.feet);
  return whole;
})();
