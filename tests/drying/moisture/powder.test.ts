import { describe, expect, it } from 'vitest';
import { powder } from '../../../src/drying/index';
import { errorOf } from '../helpers';

describe('powder', () => {
  it('keeps the solids less the loss', () => {
    const answer = powder({ trimmings: '10 lb', moisture: '88 %', loss: '10 %' });
    expect(answer.dried.likely.value * 0.95).toBeCloseTo(1.2, 12);
    expect(answer.powder.likely.value).toBeCloseTo(answer.dried.likely.value * 0.9, 12);
    expect(answer.waterRemoved.likely.value + answer.dried.likely.value).toBeCloseTo(10, 12);
    expect(answer.targetMoisture).toBe(0.05);
    expect(answer.cautions.map(({ id }) => id)).toContain('no-pits-in-powder');
  });
  it('gives ranges in order, and refuses a wetter target', () => {
    const { powder: made, waterRemoved } = powder({
      trimmings: '1 kg',
      moisture: { low: 0.8, likely: 0.85, high: 0.9 },
    });
    expect(made.low.value).toBeLessThan(made.high.value);
    expect(waterRemoved.low.value).toBeLessThan(waterRemoved.high.value);
    expect(errorOf(() => powder({ trimmings: '1 kg', moisture: 0.5, targetMoisture: 0.6 })).path).toBe(
      'targetMoisture',
    );
    expect(errorOf(() => powder({ trimmings: '1 kg', moisture: 0.01 })).path).toBe('moisture');
  });
  it('always says what must never be ground, whatever food is named', () => {
    for (const food of [undefined, 'peach', 'apple', 'potato', 'rhubarb', 'carrot']) {
      const { cautions } = powder({ trimmings: '1 kg', moisture: 0.85, ...(food === undefined ? {} : { food }) });
      const pits = cautions.find(({ id }) => id === 'no-pits-in-powder');
      expect(pits?.severity, food).toBe('danger');
      expect(pits?.text, food).toMatch(/pits.*kernels.*potato peel.*rhubarb leaves/);
    }
  });
  it('says that the fat of fatty trimmings does not dry', () => {
    const { cautions } = powder({ food: 'avocado', trimmings: '1 kg', moisture: 0.7 });
    expect(cautions.map(({ id }) => id)).toContain('fat-does-not-dry');
  });
});
