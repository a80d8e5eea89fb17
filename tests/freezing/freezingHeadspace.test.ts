import { expect, test } from 'vitest';
import { freezingHeadspace } from '../../src/freezing/index';
import { HEADSPACE } from '../../src/freezing/tables';
import { expectError } from '../helpers/errors';

test('headspace by the names of packs', () => {
  const inches = (style: Parameters<typeof freezingHeadspace>[0]['style']) =>
    freezingHeadspace({ style, mouth: 'narrow', jar: 'quart' }).headspace.value;
  expect([inches('syrup'), inches('sugar'), inches('puree'), inches('water'), inches('liquid')]).toEqual(
    Array(5).fill(1.5),
  );
  expect([inches('dry'), inches('unsweetened')]).toEqual([0.5, 0.5]);
  expect(freezingHeadspace({ style: 'juice', mouth: 'regular', jar: 'pint' }).headspace.value).toBe(1.5);
});

test('a container between the printed sizes takes the headspace of the larger', () => {
  const inches = (jar: string) => freezingHeadspace({ style: 'liquid', mouth: 'wide', jar }).headspace.value;
  expect(['half-pint', 'pint', '500 mL', '24 oz', 'quart'].map(inches)).toEqual([0.5, 0.5, 1, 1, 1]);
});

test.each(HEADSPACE)('the row $id is served', ({ pack, mouth, size, inches }) => {
  const { headspace, basis } = freezingHeadspace({ style: pack, mouth, jar: size });
  expect(headspace).toEqual({ value: inches, unit: 'in' });
  expect(basis.map(({ of }) => of)).toEqual(['headspace']);
});

test('bad input', () => {
  expectError(() => freezingHeadspace({ style: 'dry', mouth: 'wide', jar: 'tub' }), 'UNKNOWN_NAME', 'jar');
  expectError(() => freezingHeadspace({ style: 'dry', mouth: 'wide', jar: 'half-gallon' }), 'OUT_OF_RANGE', 'jar');
  expectError(() => freezingHeadspace({ style: 'dry', jar: 'pint' } as never), 'MISSING', 'mouth');
});
