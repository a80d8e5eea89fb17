import { describe, expect, test } from 'vitest';
import { moistAir } from '../../src/steam/index';
import { saturatedSaltHumidity } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

describe('saturatedSaltHumidity', () => {
  test('25 degC when no temperature is given', () => {
    expect(saturatedSaltHumidity({ solute: 'MgCl2' }).relativeHumidity).toBe(0.328); // OIML R 121, table 1
  });

  test('the range is the printed uncertainty, or the printed spread', () => {
    const salt = saturatedSaltHumidity({ solute: 'NaCl' }).relativeHumidityRange;
    expect([salt.low, salt.high]).toEqual([expect.closeTo(0.751, 9), expect.closeTo(0.755, 9)]);
    const lithium = saturatedSaltHumidity({ solute: 'LiCl', temperature: '5 degC' }).relativeHumidityRange;
    expect([lithium.low, lithium.high]).toEqual([expect.closeTo(0.112, 9), expect.closeTo(0.14, 9)]);
  });

  test('between two rows it lies between them and says so', () => {
    const between = saturatedSaltHumidity({ solute: 'NaBr', temperature: '22 degC' });
    expect(between.relativeHumidity).toBeCloseTo(0.591 + 0.4 * (0.576 - 0.591), 9);
    expect(between.cautions.map(({ id }) => id)).toEqual(['salt-between-rows']);
  });

  test('where the table ends the next road is taken', () => {
    expect(saturatedSaltHumidity({ solute: 'NaCl', temperature: '2 degC' }).fit).toBe('cubic');
    expect(saturatedSaltHumidity({ solute: 'CH3COOK', temperature: '40 degC' }).relativeHumidity).toBeCloseTo(
      0.1889,
      4,
    );
    expect(saturatedSaltHumidity({ solute: 'NH4Cl' }).fit).toBe('exponential');
    expect(saturatedSaltHumidity({ solute: 'KBr' }).cautions.map(({ id }) => id)).toEqual(['recalled']);
  });

  test('names, formulas and hydrates', () => {
    expect(saturatedSaltHumidity({ solute: 'table salt' }).relativeHumidity).toBe(0.753);
    expect(saturatedSaltHumidity({ solute: 'MgCl2.6H2O', fit: 'exponential' }).relativeHumidity).toBeCloseTo(0.328, 2);
  });

  test('it is a share, which moistAir takes as it is', () => {
    const { relativeHumidity } = saturatedSaltHumidity({ solute: 'NaCl' });
    expect(moistAir({ temperature: '25 degC', relativeHumidity, elevation: '0 ft' }).relativeHumidity).toBeCloseTo(
      0.753,
      9,
    );
  });

  test('refusals', () => {
    expect(errorOf(() => saturatedSaltHumidity({ solute: 'sand' }))).toEqual(['UNKNOWN_NAME', 'solute']);
    expect(errorOf(() => saturatedSaltHumidity({ solute: 'NaCl', temperature: '95 degC' }))).toEqual([
      'OUT_OF_RANGE',
      'temperature',
    ]);
    expect(errorOf(() => saturatedSaltHumidity({ solute: 'NH4Cl', fit: 'cubic' }))).toEqual(['UNKNOWN_NAME', 'fit']);
  });
});
