import { describe, expect, test } from 'vitest';
import { saturatedSaltHumidity } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

describe('saturatedSaltHumidity', () => {
  test('25 degC when no temperature is given', () => {
    expect(saturatedSaltHumidity({ salt: 'MgCl2' }).relativeHumidity).toBe(32.8); // OIML R 121, table 1
  });

  test('the range is the printed uncertainty, or the printed spread', () => {
    const salt = saturatedSaltHumidity({ salt: 'NaCl' }).range;
    expect([salt.low, salt.high]).toEqual([expect.closeTo(0.751, 9), expect.closeTo(0.755, 9)]);
    const lithium = saturatedSaltHumidity({ salt: 'LiCl', temperature: '5 degC' }).range;
    expect([lithium.low, lithium.high]).toEqual([expect.closeTo(0.112, 9), expect.closeTo(0.14, 9)]);
  });

  test('between two rows it lies between them and says so', () => {
    const between = saturatedSaltHumidity({ salt: 'NaBr', temperature: '22 degC' });
    expect(between.relativeHumidity).toBeCloseTo(59.1 + 0.4 * (57.6 - 59.1), 9);
    expect(between.cautions.map(({ id }) => id)).toEqual(['salt-between-rows']);
  });

  test('where the table ends the next road is taken', () => {
    expect(saturatedSaltHumidity({ salt: 'NaCl', temperature: '2 degC' }).fit).toBe('cubic');
    expect(saturatedSaltHumidity({ salt: 'CH3COOK', temperature: '40 degC' }).relativeHumidity).toBeCloseTo(18.89, 2);
    expect(saturatedSaltHumidity({ salt: 'NH4Cl' }).fit).toBe('exponential');
    expect(saturatedSaltHumidity({ salt: 'KBr' }).cautions.map(({ id }) => id)).toEqual(['recalled']);
  });

  test('names, formulas and hydrates', () => {
    expect(saturatedSaltHumidity({ salt: 'table salt' }).relativeHumidity).toBe(75.3);
    expect(saturatedSaltHumidity({ salt: 'MgCl2.6H2O', fit: 'exponential' }).relativeHumidity).toBeCloseTo(32.8, 0);
  });

  test('refusals', () => {
    expect(errorOf(() => saturatedSaltHumidity({ salt: 'sand' }))).toEqual(['UNKNOWN_NAME', 'salt']);
    expect(errorOf(() => saturatedSaltHumidity({ salt: 'NaCl', temperature: '95 degC' }))).toEqual([
      'OUT_OF_RANGE',
      'temperature',
    ]);
    expect(errorOf(() => saturatedSaltHumidity({ salt: 'NH4Cl', fit: 'cubic' }))).toEqual(['UNKNOWN_NAME', 'fit']);
  });
});
