import { expect, test } from 'vitest';
import { juiceBrix } from '../../../src/produce/index';
import { thrownBy } from '../../helpers/errors';
import { known } from '../../helpers/known';

test('19 CFR 151.91, 21 CFR 101.30 and Directive 2001/112/EC side by side', () => {
  const apple = known(juiceBrix({ food: 'apples' }));
  expect([apple.food, apple.averageUS, apple.minimumUS, apple.minimumEU]).toEqual(['apple', 13.3, 11.5, 11.2]);
  expect(apple.basis.map(({ of }) => of).sort()).toEqual(['averageUS', 'minimumEU', 'minimumUS']);
});

test('a figure that no table prints is left out, and a food without any says so', () => {
  const acerola = known(juiceBrix({ food: 'acerola' }));
  expect(acerola.basis).toHaveLength(Object.keys(acerola).filter((key) => /US|EU/.test(key)).length);
  expect(juiceBrix({ food: 'potato' })).toMatchObject({ known: false });
  expect(thrownBy(() => juiceBrix({ food: 'gravel' }))).toMatchObject({ code: 'UNKNOWN_NAME', path: 'food' });
});
