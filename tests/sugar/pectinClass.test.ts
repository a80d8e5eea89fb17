import { expect, test } from 'vitest';
import {
  gelConditions,
  jellyFromFruit,
  pectinClass,
  pectinContent,
  pectinNeeded,
  pectinStrength,
  sugarForJuice,
  swapPectinGrade,
} from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('a name of several kinds is answered for the one that needs most', () => {
  const apple = pectinClass({ fruit: 'apple' });
  expect(apple).toMatchObject({ fruit: 'ripe apple', group: 2, others: [{ fruit: 'sour apple', group: 1 }] });
  expect(apple.composition.pectin).toBe(0.6);
  expect(pectinClass({ fruit: 'sour apples' }).group).toBe(1);
  expect(pectinClass({ fruit: 'Concord grapes' }).others.length).toBe(1);
});

test('fruit without an analysis has no composition', () => {
  const { composition, basis } = pectinClass({ fruit: 'loquats' });
  expect(composition).toEqual({});
  expect(basis.length).toBe(1);
});

test('two analyses of grapefruit are joined', () => {
  expect(pectinContent({ fruit: 'grapefruit' })).toMatchObject({ pectin: 0.3, acid: 1.5, pH: 3.3 });
  expect(pectinContent({ fruit: 'pineapple' }).pectin).toBeUndefined();
});

test('unknown fruit', () => {
  expect(errorOf(() => pectinClass({ fruit: 'turnip' }))).toBe('UNKNOWN_NAME fruit');
  expect(errorOf(() => pectinContent({ fruit: 'turnip' }))).toBe('UNKNOWN_NAME fruit');
  expect(errorOf(() => pectinClass({ fruit: 7 as never }))).toBe('WRONG_TYPE fruit');
});

test('grade arithmetic', () => {
  expect(pectinNeeded({ sugar: '55 kg', grade: 150 })).toMatchObject({ pectin: { unit: 'kg' } });
  expect(pectinNeeded({ sugar: '55 kg', grade: 150 }).group).toBeUndefined();
  const quince = pectinNeeded({ sugar: '2 lb', grade: 100, fruitName: 'quince', fruit: '3 lb' });
  expect(quince).toMatchObject({ group: 1, pectin: { value: 0.02, unit: 'lb' } });
  expect(quince.fromFruit).toBeUndefined();
  expect(pectinNeeded({ sugar: '2 lb', grade: 100, fruitName: 'plum', fruit: '3 lb' }).fromFruit?.value).toBeCloseTo(
    0.027,
    9,
  );
  expect(swapPectinGrade({ pectin: '50 g', grade: 150, newGrade: 100 }).pectin.value).toBe(75);
  expect(pectinStrength({ pectin: '30 g', grade: 150, total: '0.9 kg' }).sag).toBeCloseTo(5, 9);
  expect(errorOf(() => pectinNeeded({ sugar: '55 kg', grade: 0 }))).toBe('OUT_OF_RANGE grade');
});

test('sugar by the pectin test', () => {
  expect(sugarForJuice({ juice: '6 cups', result: 'flakes' })).toMatchObject({
    sugar: { value: 3, unit: 'cup' },
    atMost: true,
  });
  expect(sugarForJuice({ juice: '6 cups', result: 'one lump' })).toMatchObject({
    sugarMass: { value: 1200 },
    atMost: false,
  });
  expect(errorOf(() => sugarForJuice({ juice: '6 cups', result: 'soup' as never }))).toBe('UNKNOWN_NAME result');
});

test('jelly from whole fruit, in pots of six cups of juice', () => {
  const { juice, batches, sugar, lemonJuice } = jellyFromFruit({ fruit: 'apples', mass: '13 lb' });
  expect([juice.value, batches, sugar.low.value, lemonJuice.value]).toEqual([13, 3, 9.75, 19.5]);
  expect(jellyFromFruit({ fruit: 'grape', mass: '6 lb' })).toMatchObject({ batches: 1, lemonOptional: false });
  expect(errorOf(() => jellyFromFruit({ fruit: 'melon', mass: '6 lb' }))).toBe('UNKNOWN_NAME fruit');
});

test('what a gel needs', () => {
  const { sets, conditions } = gelConditions({
    pectin: 'high-methoxyl',
    pH: 3.9,
    solids: '65 %',
    addedPectin: '0.4 %',
  });
  expect(sets).toBe(false);
  expect(conditions.map(({ verdict }) => verdict)).toEqual(['too high', 'within', 'within']);
  expect(gelConditions({ pectin: 'low-methoxyl', calcium: 40, solids: 0.3 }).sets).toBe(true);
  expect(gelConditions({ pectin: 'high-methoxyl', sag: 9 }).sets).toBe(true);
  expect(errorOf(() => gelConditions({ pectin: 'high-methoxyl' }))).toBe('MISSING');
  expect(errorOf(() => gelConditions({ pectin: 'high-methoxyl', calcium: 40 }))).toBe('CONTRADICTION calcium');
  expect(errorOf(() => gelConditions({ pectin: 'high-methoxyl', pH: 15 }))).toBe('OUT_OF_RANGE pH');
});
