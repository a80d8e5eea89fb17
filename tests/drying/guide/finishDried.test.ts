import { describe, expect, it } from 'vitest';
import { type FinishDriedInput, type FinishedDried, finishDried } from '../../../src/drying/index';
import { errorOf } from '../helpers';

const finished = (input: FinishDriedInput): FinishedDried => {
  const answer = finishDried(input);
  if (!answer.known) throw new Error(answer.reason.text);
  return answer;
};

describe('finishDried', () => {
  it('counts containers only where both volumes are given', () => {
    const containers = (more: object) => finished({ food: 'apple', ...more }).conditioning.containers;
    expect(containers({})).toBeUndefined();
    expect(containers({ driedVolume: '2 cups' })).toBeUndefined();
    expect(containers({ driedVolume: '2 cups', containerVolume: '1 quart' })).toBe(1);
    expect(containers({ driedVolume: '0.6667 quarts', containerVolume: '1 quart' })).toBe(1);
    expect(containers({ driedVolume: '0.67 quarts', containerVolume: '1 quart' })).toBe(2);
  });
  it('serves the hotter and the longer of the printed treatments', () => {
    const both = finished({ food: 'vegetable' });
    expect(both.insects.map(({ by }) => by)).toEqual(['freezer', 'oven', 'oven']);
    expect(both.insects.every(({ atLeast }) => atLeast.value >= 15)).toBe(true);
    expect(both.insects.some(({ temperature }) => temperature.value === 150)).toBe(false);
    expect(finished({ food: 'fruit', by: 'freezer' }).insects).toHaveLength(1);
    expect(finished({ food: 'fruit', by: 'oven' }).insects).toHaveLength(2);
    expect(both.cautions.map(({ id }) => id)).toContain('pasteurizing-is-for-insects');
  });
  it('has nothing for meat, and no unknown food', () => {
    for (const food of ['beef', 'chicken', 'salmon', 'cheddar cheese']) {
      const answer = finishDried({ food });
      expect(answer, food).toMatchObject({ known: false, reason: { code: 'no-fruit-or-vegetable' } });
      expect(answer.cautions.map(({ id }) => id)).toContain('pasteurizing-is-for-insects');
    }
    expect(errorOf(() => finishDried({ food: 'cardboard' })).code).toBe('UNKNOWN_NAME');
  });
});
