import { describe, expect, it } from 'vitest';
import { type KnownDip, type PretreatmentDipInput, pretreatmentDip } from '../../../src/drying/index';
import { readTable } from '../../helpers/tables';
import { errorOf } from '../helpers';

const dipOf = (input: PretreatmentDipInput): KnownDip => {
  const answer = pretreatmentDip(input);
  if (!answer.known) throw new Error(answer.reason.text);
  return answer;
};

describe('pretreatmentDip', () => {
  it('serves the read and stronger acid dip, with the weaker ones beside it', () => {
    const dip = dipOf({ treatment: 'vitamin C dip', waterVolume: '2 quarts' });
    expect(dip.ingredients[0]?.low).toEqual({ value: 15, unit: 'tsp' });
    expect(dip.soak?.low).toEqual({ value: 10, unit: 'min' });
    expect(dip.basis[0]).toMatchObject({ kind: 'published', source: 'ndsu-fn1587' });
    for (const { ingredients } of dip.others) expect(ingredients[0]?.high.value).toBeLessThan(15);
    expect(dip.others.length).toBe(2);
    expect(dipOf({ treatment: 'lemon juice dip', waterVolume: '1 quart' }).ingredients[0]?.low.value).toBeCloseTo(4);
  });
  it('scales a dip to the water, and warns of sulfites', () => {
    const dip = dipOf({ treatment: 'sodium bisulfite', waterVolume: '1 gallon' });
    expect(dip.ingredients[0]).toMatchObject({ low: { value: 3, unit: 'tsp' }, high: { value: 6, unit: 'tsp' } });
    expect(dip.cautions.map(({ id }) => id)).toContain('sulfite-sensitive');
    expect(dipOf({ treatment: 'skin check' }).waterVolume).toBeUndefined();
    expect(dipOf({ treatment: 'honey dip' }).waterVolume).toEqual({ value: 1.5, unit: 'cup' });
    expect(errorOf(() => dipOf({ treatment: 'skin check', waterVolume: '1 cup' })).code).toBe('CONTRADICTION');
    expect(errorOf(() => dipOf({ treatment: 'bleach' })).code).toBe('UNKNOWN_NAME');
  });
  it('warns of sulfites in every dip of them, and of no other', () => {
    for (const { name, sulfite } of readTable('drying/guide', 'pretreatments').rows) {
      const ids = dipOf({ treatment: name }).cautions.map(({ id }) => id);
      expect(ids.includes('sulfite-sensitive'), name).toBe(sulfite);
    }
  });
  it('soaks by the cut and by the fruit where they are printed', () => {
    const minutes = (input: PretreatmentDipInput) => {
      const { soak } = dipOf(input);
      return [soak?.low.value, soak?.high.value];
    };
    expect(minutes({ treatment: 'sodium bisulfite dip' })).toEqual([5, 15]);
    expect(minutes({ treatment: 'sodium bisulfite dip', form: 'slices' })).toEqual([5, 5]);
    expect(minutes({ treatment: 'sodium bisulfite dip', food: 'peach halves' })).toEqual([15, 15]);
    expect(minutes({ treatment: 'sodium bisulfite dip', form: 'whole' })).toEqual([5, 15]);
    expect(minutes({ treatment: 'sulfite dip by fruit', food: 'apricot' })).toEqual([10, 10]);
    expect(minutes({ treatment: 'sulfite dip by fruit', food: 'sour cherry' })).toEqual([5, 5]);
  });
  it('is not known for a food that it is not printed for', () => {
    for (const [treatment, food] of [
      ['sulfite dip by fruit', 'fig'],
      ['ascorbic acid hold', 'plum'],
      ['ascorbic acid dip for strawberries', 'apple'],
      ['ascorbic acid dip', 'beef'],
    ] as const) {
      const answer = pretreatmentDip({ treatment, food });
      expect(answer, food).toMatchObject({ known: false, reason: { code: 'not-for-this-food' } });
    }
  });
});
