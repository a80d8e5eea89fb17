import { describe, expect, test } from 'vitest';
import * as produce from '../../../src/produce/index';
import { known } from '../../helpers/known';

const frozenPintsFromRaw = (input: Parameters<typeof produce.frozenPintsFromRaw>[0]) =>
  known(produce.frozenPintsFromRaw(input));

describe('frozen pints', () => {
  test('by pounds a pint, read rows before recalled ones', () => {
    const { pints, rawPerPint, cautions } = frozenPintsFromRaw({ food: 'apple', raw: '48 lb' });
    expect(pints).toEqual({ low: 32, likely: 34, high: 38 });
    expect([rawPerPint.low.value, rawPerPint.high.value]).toEqual([1.25, 1.5]);
    expect(cautions.map(({ id }) => id)).not.toContain('recalled');
    const beans = frozenPintsFromRaw({ food: 'snap beans', raw: '30 lb' });
    expect(beans.pints).toMatchObject({ low: 30, high: 44 }); // 30 / 0.667, printed as 45
    expect(beans.cautions.map(({ id }) => id)).toContain('recalled');
  });

  test('rows printed by the quart or pint of fruit go by the crate', () => {
    const { pints } = frozenPintsFromRaw({ food: 'blackberries', raw: '36 lb' });
    expect(pints).toMatchObject({ low: 32, high: 36 });
    expect(frozenPintsFromRaw({ food: 'strawberries', raw: '36 lb' }).pints.high).toBe(38);
  });

  test('in the unit asked in', () => {
    expect(frozenPintsFromRaw({ food: 'plum', raw: '10 kg' }).rawPerPint.low.unit).toBe('kg');
  });

  test('is refused where none is printed', () => {
    expect(produce.frozenPintsFromRaw({ food: 'jicama', raw: '1 lb' }).known).toBe(false);
  });
});
