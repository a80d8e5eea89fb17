import { expect, test } from 'vitest';
import { forms } from '../../src/foods/index';
import { formRows } from '../../src/foods/tables';
import { thrownBy } from '../helpers/errors';

test('every form, with what it is a case of', () => {
  expect(forms()).toHaveLength(formRows.length);
  expect(forms().find(({ form }) => form === 'halves')?.within).toEqual(['pieces']);
});

test('the forms that tables have for a food', () => {
  const peach = forms({ food: 'peaches' }).map(({ form }) => form);
  expect(peach).toContain('halves');
  expect(peach.length).toBeLessThan(formRows.length);
  expect(peach).not.toContain('kraut');
  expect(thrownBy(() => forms({ food: 'gravel' }))).toMatchObject({ code: 'UNKNOWN_NAME', path: 'food' });
});
