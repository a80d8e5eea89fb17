import { expect, test } from 'vitest';
import { boilingSolidsChart } from '../../src/charts/index';
import { syrupBoilingTemperature } from '../../src/solution/index';
import { gelTemperature } from '../../src/sugar/index';

test('every row is the answer of syrupBoilingTemperature, with the spread of its sources', () => {
  const { data } = boilingSolidsChart({ elevation: '3400 ft' });
  expect(data.values.map(({ brix }) => brix)).toEqual(Array.from({ length: 81 }, (_, brix) => brix));
  for (const { brix, low, likely, high } of data.values) {
    const { temperatureRange: range } = syrupBoilingTemperature({
      brix: brix === 1 ? '1 Brix' : brix,
      elevation: '3400 ft',
    });
    expect([low, likely, high]).toEqual([range.low.value, range.likely.value, range.high.value]);
  }
});

test('at sea level 70 Brix lies 5.0 to 6.5 degC above water (rises of the followed equation and of Browne 1912)', () => {
  const { data } = boilingSolidsChart({ elevation: '0 m' });
  const [water, syrup] = [data.values[0], data.values[70]];
  expect((syrup?.likely ?? 0) - (water?.likely ?? 0)).toBeCloseTo(5.0, 1);
  expect((syrup?.high ?? 0) - (water?.likely ?? 0)).toBeCloseTo(6.5, 1);
});

test('the line across is the gel point of the place, 8 degF above boiling water', () => {
  const { layer, title } = boilingSolidsChart({ elevation: '3400 ft' });
  const gel = gelTemperature({ elevation: '3400 ft' }).temperature.value;
  expect(layer[2]?.data?.values).toEqual([{ likely: gel, text: 'gel point, 213.8 °F' }]);
  expect(title.text).toContain('3,400 ft');
  expect(boilingSolidsChart({ elevation: '1000 m' }).title.subtitle.join(' ')).toContain('96.6 °C');
});

test('the pot is marked at its own Brix', () => {
  const { layer } = boilingSolidsChart({ elevation: '3400 ft', brix: 62.5 });
  const { temperatureRange: range } = syrupBoilingTemperature({ brix: 62.5, elevation: '3400 ft' });
  expect(layer[4]?.data?.values[0]).toMatchObject({ brix: 62.5, likely: range.likely.value });
  expect(boilingSolidsChart({ elevation: '3400 ft' }).layer).toHaveLength(4);
});

test('bad input names its field', () => {
  const at = (input: unknown) => () => boilingSolidsChart(input as { elevation: '1 ft' });
  expect(at({ elevation: '9000 m' })).toThrow(/^elevation: /);
  expect(at({ elevation: '1 m', brix: 90 })).toThrow(/^brix: /);
  expect(at({})).toThrow(/^elevation: /);
  expect(at(null)).toThrow('one object of named fields');
});
