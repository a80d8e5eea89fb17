import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pearsonSquare } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('Pearson square: 500 kg of 4 % with 35 % to 10 % takes 120 kg (University of Guelph)', () => {
  const { strongMass, strongShare } = pearsonSquare({
    strong: '35 %',
    weak: '4 %',
    target: '10 %',
    weakMass: '500 kg',
  });
  expect(strongMass?.value).toBe(120);
  expect(strongShare).toBeCloseTo(6 / 31, 12);
  expect(pearsonSquare({ strong: '35 %', weak: '4 %', target: '10 %', strongMass: '120 kg' }).weakMass?.value).toBe(
    500,
  );
  expect(pearsonSquare({ strong: '35 %', weak: '4 %', target: '10 %', mass: '620 kg' }).weakMass?.value).toBe(500);
  expect(pearsonSquare({ strong: '35 %', weak: '4 %', target: '10 %' }).strongMass).toBeUndefined();
});

test('a blend keeps its solids', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 0.4, noNaN: true }),
      fc.double({ min: 0.01, max: 0.5, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (weak, span, share) => {
        const target = weak + share * span;
        const { strongMass, weakMass } = pearsonSquare({ strong: weak + span, weak, target, mass: '10 kg' });
        const solids = (strongMass?.value ?? 0) * (weak + span) + (weakMass?.value ?? 0) * weak;
        expect(solids / 10).toBeCloseTo(target, 6);
      },
    ),
  );
});

test('squares that do not close', () => {
  expect(errorOf(() => pearsonSquare({ strong: '10 %', weak: '10 %', target: '10 %' }))).toBe('CONTRADICTION strong');
  expect(errorOf(() => pearsonSquare({ strong: '60 %', weak: '10 %', target: '5 %' }))).toBe('CONTRADICTION target');
  expect(
    errorOf(() => pearsonSquare({ strong: '60 %', weak: '10 %', target: '20 %', mass: '1 kg', weakMass: '1 kg' })),
  ).toBe('CONTRADICTION weakMass');
  expect(errorOf(() => pearsonSquare({ strong: '60 %', weak: '10 %', target: '10 %', strongMass: '1 kg' }))).toBe(
    'CONTRADICTION strongMass',
  );
});
