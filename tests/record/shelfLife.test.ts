import { expect, test } from 'vitest';
import { shelfLife } from '../../src/record/index';
import { expectError } from '../helpers/errors';

const cooler = { life: '20 weeks', temperature: '20 degC' } as const;
const warmer = { life: '10 weeks', temperature: '30 degC' } as const;

test('two tests in any order give one Q10, and the life anywhere between', () => {
  expect(shelfLife({ tests: [cooler, warmer] }).q10).toBeCloseTo(2, 12);
  expect(shelfLife({ tests: [warmer, cooler] }).q10).toBeCloseTo(2, 12);
  expect(shelfLife({ tests: [cooler, warmer] })).not.toHaveProperty('life');
  const at = (temperature: `${number} degC`) => shelfLife({ tests: [cooler, warmer], temperature }).life?.value;
  expect(at('30 degC')).toBeCloseTo(10, 9);
  expect(at('40 degC')).toBeCloseTo(5, 9);
});

test('there and back', () => {
  const { life } = shelfLife({ tests: [cooler], temperature: '35 degC', q10: 3 });
  if (life === undefined) throw new Error('a life was asked for');
  expect(shelfLife({ tests: [cooler, { life, temperature: '35 degC' }] }).q10).toBeCloseTo(3, 9);
});

test('bad input', () => {
  expectError(() => shelfLife({ tests: [cooler, cooler] }), 'CONTRADICTION', 'tests[1].temperature');
  const sudden = { life: '1 min', temperature: '22 degC' } as const;
  expectError(() => shelfLife({ tests: [cooler, sudden] }), 'OUT_OF_RANGE', 'tests[0].life');
  expectError(() => shelfLife({ tests: [cooler], temperature: '100 degC', q10: 2 }), 'OUT_OF_RANGE', 'temperature');
  expectError(() => shelfLife({ tests: [cooler], temperature: '30 degC' }), 'MISSING', 'q10');
  expectError(() => shelfLife({ tests: [cooler], q10: 2 }), 'MISSING', 'temperature');
  expectError(() => shelfLife({ tests: [cooler, warmer], q10: 2 }), 'CONTRADICTION', 'q10');
  expectError(() => shelfLife({ tests: [] }), 'OUT_OF_RANGE', 'tests');
  // a food that keeps longer where it is warmer has a Q10, and no life is drawn out from it
  const odd = { life: '30 weeks', temperature: '30 degC' } as const;
  expect(shelfLife({ tests: [cooler, odd] }).q10).toBeLessThan(1);
  expectError(() => shelfLife({ tests: [cooler, odd], temperature: '25 degC' }), 'OUT_OF_RANGE', 'tests[0].life');
});
