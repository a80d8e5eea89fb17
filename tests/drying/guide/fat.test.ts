import { describe, expect, it } from 'vitest';
import { driedMass, freezeDryLoad, stopWeight } from '../../../src/drying/index';
import { formName, nameOf } from '../../../src/foods/tables';
import { readTable } from '../../helpers/tables';
import { errorOf } from '../helpers';

const load = (more: object) =>
  freezeDryLoad({
    fresh: '5 lb',
    moisture: '40 %',
    machine: { iceCapacity: '10 lb', trayArea: '900 in2' },
    ...more,
  });
const ids = ({ cautions }: { cautions: readonly { id: string }[] }) => cautions.map(({ id }) => id);

describe('fat does not dry', () => {
  it('is said of every food of the table above the printed limit', () => {
    for (const { food, form, fat_percent } of readTable('drying/guide', 'fat').rows) {
      const answer = freezeDryLoad({
        food: nameOf(food),
        ...(form === undefined ? {} : { form: formName(form) }),
        fresh: '1 kg',
        moisture: '15 %',
        machine: { iceCapacity: '5 kg', trayArea: '1 m2' },
      });
      expect(answer.fat, food).toBeCloseTo(fat_percent / 100, 9);
      expect(ids(answer).includes('fat-does-not-dry'), food).toBe(fat_percent > 7);
    }
  });
  it('is said by the share that is given, from 7 % up', () => {
    expect(ids(load({ fat: '7 %' }))).not.toContain('fat-does-not-dry');
    expect(ids(load({ fat: '7.1 %' }))[0]).toBe('fat-does-not-dry');
    // the cook's own figure goes before the table's
    expect(ids(load({ food: 'cheddar cheese', fat: '2 %' }))).not.toContain('fat-does-not-dry');
  });
  it('is never passed over where nobody has said how much there is', () => {
    expect(ids(load({}))).toContain('fat-not-known');
    for (const food of ['beef', 'ham', 'yogurt', 'shrimp', 'bread', 'milk'])
      expect(ids(load({ food })), food).toContain('fat-not-known');
    for (const food of ['strawberries', 'zucchini', 'apple', 'mango', 'sweet potato', 'kale'])
      expect(ids(load({ food })), food).not.toContain('fat-not-known');
  });
  it('is said of the weight to stop at, and of the dried weight', () => {
    const stop = stopWeight({ food: 'ground beef', fresh: '1 kg', moisture: '60 %', targetMoisture: '20 %' });
    expect(ids(stop)[0]).toBe('fat-does-not-dry');
    const dried = driedMass({ food: 'avocado', fresh: '1 kg', moisture: '73 %', targetMoisture: '10 %' });
    expect(dried.fatMass?.value).toBeCloseTo(0.1466, 9);
    expect(ids(dried)).toContain('fat-does-not-dry');
    expect(ids(driedMass({ food: 'apple', fresh: '1 kg', moisture: '85 %', targetMoisture: '20 %' }))).toEqual([]);
  });
  it('is at most what the water leaves', () => {
    expect(errorOf(() => load({ fat: '61 %' }))).toMatchObject({ code: 'CONTRADICTION', path: 'fat' });
    expect(errorOf(() => load({ moisture: '90 %', fat: '20 %' }))).toMatchObject({
      expected: expect.stringMatching(/, 0\.1$/),
    });
  });
  it('belongs to the form that is named, and to no other', () => {
    expect(load({ food: 'beef', form: 'ground' }).fat).toBe(0.2);
    expect(load({ food: 'ground beef' }).fat).toBe(0.2);
    expect(load({ food: 'beef strips' }).fat).toBeUndefined();
    expect(errorOf(() => load({ food: 'ground beef', form: 'strips' }))).toMatchObject({
      code: 'CONTRADICTION',
      path: 'form',
    });
  });
  it('is refused for a name that is in no pantry', () => {
    expect(errorOf(() => load({ food: 'chicken casserole of my aunt' }))).toMatchObject({
      code: 'UNKNOWN_NAME',
      path: 'food',
    });
  });
});
