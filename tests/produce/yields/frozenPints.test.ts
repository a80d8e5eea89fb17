import { describe, expect, test } from 'vitest';
import * as produce from '../../../src/produce/index';
import { known } from '../../helpers/known';

const pack = { form: 'frozen', jar: 'pint' } as const;
const packs = (input: Pick<produce.JarsFromRawInput, 'food' | 'raw'>) =>
  known(produce.rawForJars({ ...input, ...pack }));

describe('frozen pints', () => {
  test('by pounds a pint, read rows before recalled ones', () => {
    const { jars: pints, rawPerJar: rawPerPint, cautions } = packs({ food: 'apple', raw: '48 lb' });
    expect(pints).toEqual({ low: 32, likely: 34, high: 38 });
    expect([rawPerPint.low.value, rawPerPint.high.value]).toEqual([1.25, 1.5]);
    expect(cautions.map(({ id }) => id)).not.toContain('recalled');
    const beans = packs({ food: 'snap beans', raw: '30 lb' });
    expect(beans.jars).toMatchObject({ low: 30, high: 44 }); // 30 / 0.667, printed as 45
    expect(beans.cautions.map(({ id }) => id)).toContain('recalled');
  });

  test('rows printed by the quart or pint of fruit go by the crate', () => {
    const { jars: pints } = packs({ food: 'blackberries', raw: '36 lb' });
    expect(pints).toMatchObject({ low: 32, high: 36 });
    expect(packs({ food: 'strawberries', raw: '36 lb' }).jars.high).toBe(38);
  });

  test('in the unit asked in', () => {
    expect(packs({ food: 'plum', raw: '10 kg' }).rawPerJar.low.unit).toBe('kg');
  });

  test('is refused where none is printed', () => {
    expect(produce.rawForJars({ food: 'jicama', raw: '1 lb', ...pack }).known).toBe(false);
  });

  test('and the other way round, in any jar', () => {
    const { raw, cautions } = known(produce.rawForJars({ food: 'apple', jars: 8, ...pack }));
    expect([raw.low.value, raw.likely.value, raw.high.value]).toEqual([10, 11, 12]);
    expect(cautions.map(({ id }) => id)).not.toContain('yield-is-no-process');
    expect(known(produce.rawForJars({ food: 'apple', form: 'frozen', jar: 'quart', jars: 4 })).raw).toEqual(raw);
  });
});
