import { expect, test } from 'vitest';
import { gelConditions } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('what a gel needs', () => {
  const { sets, conditions } = gelConditions({
    pectinKind: 'high-methoxyl',
    pH: 3.9,
    finishSolids: '65 %',
    addedPectin: '0.4 %',
  });
  expect(sets).toBe(false);
  expect(conditions.map(({ verdict }) => verdict)).toEqual(['too high', 'within', 'within']);
  expect(conditions[1]).toMatchObject({ value: 0.65, low: 0.55, high: 0.8 });
  expect(gelConditions({ pectinKind: 'low-methoxyl', calcium: 40, finishSolids: 0.3 }).sets).toBe(true);
  expect(gelConditions({ pectinKind: 'high-methoxyl', sag: 9 }).sets).toBe(true);
});

test('routes by the solids', () => {
  expect(gelConditions({ finishSolids: '60 %' }).ownProcess).toBe(false);
  expect(gelConditions({ finishSolids: '59 %' })).toMatchObject({
    route: 'low sugar',
    pectinKind: 'high-methoxyl',
    ownProcess: true,
  });
  expect(gelConditions({ finishSolids: '54 %' }).pectinKind).toBe('low-methoxyl');
  expect(gelConditions({ finishSolids: '65 %', sugarToFruit: 0 }).route).toBe('no sugar');
  expect(gelConditions({ finishSolids: '30 %' }).cautions.map(({ id }) => id)).toContain('own-process');
  expect(gelConditions({ pectinKind: 'high-methoxyl', pH: 3 })).not.toHaveProperty('route');
});

test('bad input', () => {
  expect(errorOf(() => gelConditions({ pectinKind: 'high-methoxyl' }))).toBe('MISSING');
  expect(errorOf(() => gelConditions({ pH: 3 }))).toBe('MISSING pectinKind');
  expect(errorOf(() => gelConditions({ pectinKind: 'high-methoxyl', calcium: 40 }))).toBe('CONTRADICTION calcium');
  expect(errorOf(() => gelConditions({ pectinKind: 'high-methoxyl', pH: 15 }))).toBe('OUT_OF_RANGE pH');
});
