import fc from 'fast-check';
import { expect, test } from 'vitest';
import { diluteVinegar } from '../../src/acid/index';
import { expectError } from '../helpers/errors';

test('liquids add up, acid stays', () => {
  const answer = diluteVinegar({ vinegar: '1 L', acetic: '6 %', waterVolume: '0.5 L', otherLiquids: '500 mL' });
  expect(answer.acetic).toBeCloseTo(0.03, 12);
  expect(answer.liquid).toEqual({ value: 2, unit: 'L' });
  expect(answer.aceticMass).toEqual({ value: 60, unit: 'g' });
  expect(answer.withVegetables).toBeUndefined();
});

test('the water of the vegetables takes its share', () => {
  // 1 kg of cucumber, 95 % water (952 mL at 20 degC), under 1 L of 5 % vinegar: 50 g in 1952 mL
  const answer = diluteVinegar({ vinegar: '1 L', acetic: 0.05, soaked: { ready: '1 kg', moisture: '95 %' } });
  expect(answer.acetic).toBe(0.05);
  expect(answer.withVegetables?.acetic).toBeCloseTo(50 / (1000 + 950 / 0.9982071), 9);
  expect(answer.basis).toContainEqual(expect.objectContaining({ source: 'crc-water-density' }));
});

test('vinegar below 5 % is flagged', () => {
  const ids = (acetic: `${number} %`) =>
    diluteVinegar({ vinegar: '1 cup', acetic, waterVolume: '1 mL' }).cautions.map(({ id }) => id);
  expect(ids('4 %')).toContain('vinegar-below-five');
  expect(ids('5 %')).not.toContain('vinegar-below-five');
});

test('diluting and measuring agree, at any strength', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.3, noNaN: true }),
      fc.double({ min: 0.1, max: 50, noNaN: true }),
      (acetic, litres) => {
        const { waterVolume: water, liquid } = diluteVinegar({ vinegar: { value: litres, unit: 'L' }, acetic });
        expect(water.value).toBeGreaterThanOrEqual(0);
        expect(liquid.value).toBeCloseTo(litres + water.value, 9);
        if (water.value > 0) {
          expect(
            diluteVinegar({ vinegar: { value: litres, unit: 'L' }, acetic, waterVolume: water }).acetic,
          ).toBeCloseTo(0.05, 9);
        }
      },
    ),
  );
});

test('strong acid carries its own caution', () => {
  expect(diluteVinegar({ vinegar: '1 L', acetic: '25 %' }).cautions.map(({ id }) => id)).toContain('strong-acid-burns');
  expect(diluteVinegar({ vinegar: '1 L', acetic: '7 %' }).cautions.map(({ id }) => id)).not.toContain(
    'strong-acid-burns',
  );
});

test('vinegar above 5 % carries a caution wherever it is used', () => {
  const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);
  expect(ids(diluteVinegar({ vinegar: '1 L', acetic: '6 %' }))).toContain('stronger-vinegar');
  expect(ids(diluteVinegar({ vinegar: '1 L', acetic: '5 %' }))).not.toContain('stronger-vinegar');
  expect(ids(diluteVinegar({ vinegar: '1 cup', acetic: '10 %', waterVolume: '1 cup' }))).toContain('stronger-vinegar');
  expect(ids(diluteVinegar({ vinegar: '1 cup', acetic: '5 %', waterVolume: '1 cup' }))).not.toContain(
    'stronger-vinegar',
  );
});

test('bad input', () => {
  expectError(() => diluteVinegar({ vinegar: '1 lb' as never, acetic: 0.05 }), 'WRONG_DIMENSION', 'vinegar');
  expectError(() => diluteVinegar({ vinegar: '1 cup', acetic: 5 }), 'OUT_OF_RANGE', 'acetic');
  expectError(() => diluteVinegar({ vinegar: '1 cup', acetic: 0 }), 'OUT_OF_RANGE', 'acetic');
  expectError(() => diluteVinegar({ vinegar: '1 cup', acetic: '80 %' }), 'OUT_OF_RANGE', 'acetic');
  expectError(() => diluteVinegar({ vinegar: '1 cup' } as never), 'MISSING', 'acetic');
  expectError(
    () => diluteVinegar({ vinegar: '1 cup', acetic: 0.05, soaked: { ready: '1 kg', moisture: 2 } }),
    'OUT_OF_RANGE',
    'soaked.moisture',
  );
  expectError(
    () => diluteVinegar({ vinegar: '1 L', acetic: '7 %', targetAcetic: '4 %' }),
    'OUT_OF_RANGE',
    'targetAcetic',
  );
  expectError(
    () => diluteVinegar({ vinegar: '1 L', acetic: '6 %', targetAcetic: '7 %' }),
    'CONTRADICTION',
    'targetAcetic',
  );
  expectError(() => diluteVinegar({ vinegar: '1 L', acetic: '4 %' }), 'CONTRADICTION', 'targetAcetic');
  expectError(
    () => diluteVinegar({ vinegar: '1 L', acetic: '6 %', targetAcetic: '5 %', waterVolume: '1 L' }),
    'CONTRADICTION',
    'targetAcetic',
  );
});
