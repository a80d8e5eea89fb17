import { expect, test } from 'vitest';
import {
  browneRow,
  constant,
  constantRow,
  correctionRow,
  indexRow,
  polynomialRow,
  riseEquationRow,
  solubilityEquationRow,
  solubilityRow,
  soluteNameRow,
  soluteRow,
  waterDensityRow,
} from '../../src/solution/tables';
import { checkTables, readTable } from '../helpers/tables';

checkTables('solution', {
  'sucrose-density-polynomial': polynomialRow(),
  'water-density-kell': waterDensityRow(),
  'sucrose-refractive-index': indexRow(),
  'refractometer-correction-newer': correctionRow(),
  'refractometer-correction-older': correctionRow(),
  'sucrose-solubility': solubilityRow(),
  'sucrose-solubility-equations': solubilityEquationRow(),
  'boiling-rise-browne': browneRow(),
  'boiling-rise-equations': riseEquationRow(),
  'solute-properties': soluteRow(),
  solutes: soluteNameRow(),
  constants: constantRow(),
});
const read = (name: string) => readTable('solution', name);

test('each solute has its row of names, and each name one solute', () => {
  const names = read('solutes').rows as { id: string; name: string; names: string[] }[];
  expect(names.map(({ name }) => name)).toEqual([
    ...new Set((read('solute-properties').rows as { solute: string }[]).map(({ solute }) => solute)),
  ]);
  const all = names.flatMap(({ name, names: others }) => [name, ...others]);
  expect(new Set(all).size).toBe(all.length);
  expect(() => constant('no-such-row')).toThrow('no-such-row');
});

const rising = (values: number[]) => values.every((value, i) => i === 0 || value > (values[i - 1] as number));

test('what is read along a column rises along it', () => {
  expect(rising(read('sucrose-refractive-index').rows.map((row: { brix: number }) => row.brix))).toBe(true);
  expect(rising(read('sucrose-refractive-index').rows.map((row: { nD20: number }) => row.nD20))).toBe(true);
  expect(rising(read('boiling-rise-browne').rows.map((row: { brix: number }) => row.brix))).toBe(true);
  for (const name of ['refractometer-correction-newer', 'refractometer-correction-older']) {
    for (const row of read(name).rows)
      expect(rising((row.corrections as [number, number][]).map(([x]) => x))).toBe(true);
  }
  const solutes = read('solute-properties').rows as { solute: string; percent: number }[];
  for (const solute of new Set(solutes.map((row) => row.solute))) {
    expect(rising(solutes.filter((row) => row.solute === solute).map((row) => row.percent)), solute).toBe(true);
  }
});

test('the two columns of the solubility table say the same, within its rounding', () => {
  for (const { perSolution, perWater } of read('sucrose-solubility').rows as {
    perSolution: number;
    perWater: number;
  }[]) {
    expect(Math.abs((100 * perSolution) / (100 - perSolution) - perWater) / perWater).toBeLessThan(0.003);
  }
});
