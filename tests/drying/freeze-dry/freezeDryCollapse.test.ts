import { describe, expect, it } from 'vitest';
import { glassTransition as freezeDryCollapse } from '../../../src/drying/index';
import { formName, nameOf } from '../../../src/foods/tables';
import { readTable } from '../../helpers/tables';
import { errorOf } from '../helpers';

const at = (food: string, degC: number) => freezeDryCollapse({ food, iceTemperature: { value: degC, unit: 'degC' } });

describe('freezeDryCollapse', () => {
  it('says perhaps within a printed range', () => {
    const corn = [-16, -15, -12, -8].map((degC) => {
      const answer = at('sweet corn', degC);
      return answer.known && answer.collapses;
    });
    expect(corn).toEqual(['no', 'perhaps', 'perhaps', 'yes']);
  });
  it('labels what is from memory', () => {
    const ids = (food: string) => at(food, -30).cautions.map(({ id }) => id);
    expect(ids('tomato')).toContain('recalled');
    expect(ids('potato')).not.toContain('recalled');
  });
  it('finds every row by its food and form, and none collapses below -60 degC', () => {
    for (const { food, form } of readTable('drying/freeze-dry', 'collapse').rows) {
      const answer = freezeDryCollapse({
        food: nameOf(food),
        ...(form === undefined ? {} : { form: formName(form) }),
        iceTemperature: '-60.1 degC',
      });
      expect(answer, food).toMatchObject({ known: true, collapses: 'no' });
    }
  });
  it('knows nothing of a fruit whose juice alone is printed, and says which forms are', () => {
    expect(at('apple', -30)).toMatchObject({
      known: false,
      reason: { code: 'no-collapse-temperature' },
      instead: [{ food: 'apple', form: 'juice' }, { food: 'fruit juice' }],
    });
    expect(at('beef', -30).known).toBe(false);
    expect(errorOf(() => at('gravel', -30)).code).toBe('UNKNOWN_NAME');
  });
});
