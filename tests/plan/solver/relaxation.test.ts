import { expect, test } from 'vitest';
import type { Program } from '../../../src/plan/solver/linearProgram';
import { relaxation } from '../../../src/plan/solver/relaxation';

// maximize 3x + 2y + z, x + y = 4, x + 3z <= 6, x <= 3, z >= 0.5: x = 3, y = 1, z = 1
const program: Program = {
  variables: [
    { name: 'x', worth: 3 },
    { name: 'y', worth: 2 },
    { name: 'z', worth: 1 },
  ],
  bounds: [
    {
      name: 'sum',
      terms: [
        ['x', 1],
        ['y', 1],
      ],
      min: 4,
      max: 4,
    },
    {
      name: 'stock',
      terms: [
        ['x', 1],
        ['z', 3],
      ],
      max: 6,
    },
    { name: 'x', terms: [['x', 1]], max: 3 },
    { name: 'z', terms: [['z', 2]], min: 1 },
    {
      name: 'nothing',
      terms: [
        ['x', 1],
        ['z', 1],
      ],
      min: 0,
    },
  ],
};
test('an equality gives a variable, and the values come back whole', () => {
  const found = relaxation(program)(new Map());
  expect(found?.worth).toBeCloseTo(12, 9);
  expect(found?.values.get('x')).toBeCloseTo(3, 9);
  expect(found?.values.get('y')).toBeCloseTo(1, 9);
  expect(found?.values.get('z')).toBeCloseTo(1, 9);
});
test('ranges of a node, another objective, and back again', () => {
  const relax = relaxation(program);
  expect(relax(new Map([['z', { min: 1.2, max: 5 }]]))?.values.get('x')).toBeCloseTo(2.4, 9);
  expect(relax(new Map(), new Map([['y', 1]]))?.worth).toBeCloseTo(4, 9);
  expect(relax(new Map())?.worth).toBeCloseTo(12, 9);
});
test('ranges that are empty, or that no values meet', () => {
  const relax = relaxation(program);
  expect(relax(new Map([['x', { min: 4, max: 9 }]]))).toBeUndefined();
  expect(relax(new Map([['z', { min: 2.5, max: 9 }]]))).toBeUndefined();
});
