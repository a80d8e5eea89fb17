import { expect, test } from 'vitest';
import { soluteProperties } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

test('a printed row (CRC Handbook): 10 % salt', () => {
  const { density, refractiveIndex, freezingPoint, viscosity } = soluteProperties({ solute: 'NaCl', soluteShare: 0.1 });
  expect(density).toEqual({ value: 1.0707, unit: 'g/mL' });
  expect(refractiveIndex).toBe(1.3505);
  expect(freezingPoint?.value).toBeLessThan(-6);
  expect(viscosity).toBeGreaterThan(1);
});

test('between rows, and where a column is blank it is left out', () => {
  expect(soluteProperties({ solute: 'salt', soluteShare: '10.5 %' }).density.value).toBeCloseTo(
    (1.0707 + 1.0781) / 2,
    9,
  );
  expect(soluteProperties({ solute: 'sucrose', soluteShare: '60 %' }).freezingPoint).toBeUndefined();
  expect(soluteProperties({ solute: 'sucrose', soluteShare: '84 %' }).viscosity).toBeUndefined();
});

test('names', () => {
  expect(soluteProperties({ solute: 'dextrose', soluteShare: 0.1 }).solute).toBe('glucose');
  expect(errorOf(() => soluteProperties({ solute: 'sand', soluteShare: 0.1 }))).toBe('UNKNOWN_NAME solute');
  expect(errorOf(() => soluteProperties({ solute: 'salt', soluteShare: '40 %' }))).toBe('OUT_OF_RANGE soluteShare');
});
