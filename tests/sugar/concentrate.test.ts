import fc from 'fast-check';
import { expect, test } from 'vitest';
import { convert } from '../../src/quantity/index';
import { concentrate, pearsonSquare, waterToThin } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('100 kg at 20 % cooked down to 68 %', () => {
  const { mass, waterRemoved, ratio } = concentrate({ mass: '100 kg', solids: 0.2, targetSolids: '68 %' });
  expect(mass.value).toBeCloseTo(29.41, 2);
  expect(mass.value + waterRemoved.value).toBeCloseTo(100, 9);
  expect(ratio).toBeCloseTo(5 / 17, 12);
});

test('how far down the pot: depth times area is the volume', () => {
  const answer = concentrate({ mass: '10 kg', solids: '12 %', targetSolids: '30 %', pot: { diameter: '28 cm' } });
  const area = (Math.PI / 4) * 28 ** 2;
  expect((answer.depth?.value as number) * area).toBeCloseTo(convert(answer.volume, 'mL').value, 6);
  expect((answer.startDepth?.value as number) * area).toBeCloseTo(convert(answer.startVolume, 'mL').value, 6);
  expect(answer.startDepth?.unit).toBe('cm');
  // denser as it thickens: the depth falls further than the mass
  expect((answer.depth?.value as number) / (answer.startDepth?.value as number)).toBeLessThan(answer.ratio);
});

test('US units stay US units', () => {
  const { mass, volume, depth } = concentrate({
    mass: '20 lb',
    solids: 0.12,
    targetSolids: 0.2,
    pot: { diameter: '12 in', depth: '9 in' },
  });
  expect([mass.unit, volume.unit, depth?.unit]).toEqual(['lb', 'quart', 'in']);
});

test('a pot too full is refused, with the share that fits', () => {
  const pot = { diameter: '10 in', depth: '8 in' } as const;
  const batch = { mass: '30 lb', solids: 0.12, targetSolids: 0.2 } as const;
  expect(errorOf(() => concentrate({ ...batch, pot }))).toBe('TOO_MUCH mass');
  expect(errorOf(() => concentrate({ ...batch, mass: '17 lb', pot }))).toBe('TOO_MUCH mass');
  expect(concentrate({ ...batch, mass: '14 lb', pot }).depth).toBeDefined();
  expect(concentrate({ ...batch, mass: '17 lb', pot: { ...pot, fillLimit: 0.9 } }).depth).toBeDefined();
});

test('thinning undoes it', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.5, noNaN: true }),
      fc.double({ min: 0.5, max: 0.9, noNaN: true }),
      (solids, targetSolids) => {
        const { mass, waterRemoved } = concentrate({ mass: '10 kg', solids, targetSolids });
        const thinned = waterToThin({ mass, solids: targetSolids, targetSolids: solids });
        expect(thinned.water.value).toBeCloseTo(waterRemoved.value, 9);
        expect(thinned.mass.value).toBeCloseTo(10, 9);
      },
    ),
  );
});

test('targets the wrong way round', () => {
  expect(errorOf(() => concentrate({ mass: '1 kg', solids: 0.3, targetSolids: 0.2 }))).toBe(
    'CONTRADICTION targetSolids',
  );
  expect(errorOf(() => waterToThin({ mass: '1 kg', solids: 0.2, targetSolids: 0.3 }))).toBe(
    'CONTRADICTION targetSolids',
  );
  expect(errorOf(() => concentrate({ mass: '1 kg', solids: 0, targetSolids: 0.2 }))).toBe('OUT_OF_RANGE solids');
  expect(errorOf(() => concentrate({ mass: '1 kg', solids: 20, targetSolids: 0.2 }))).toBe('OUT_OF_RANGE solids');
});

test('Pearson square: 500 kg of 4 % with 35 % to 10 % takes 120 kg (University of Guelph)', () => {
  const { masses, highFraction } = pearsonSquare({ high: 35, low: 4, target: 10, lowMass: '500 kg' });
  expect(masses?.high.value).toBe(120);
  expect(highFraction).toBeCloseTo(6 / 31, 12);
  expect(pearsonSquare({ high: 35, low: 4, target: 10, highMass: '120 kg' }).masses?.low.value).toBe(500);
  expect(pearsonSquare({ high: 35, low: 4, target: 10, total: '620 kg' }).masses?.low.value).toBe(500);
  expect(pearsonSquare({ high: 35, low: 4, target: 10 }).masses).toBeUndefined();
});

test('a blend keeps its solids', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 40, noNaN: true }),
      fc.double({ min: 1, max: 50, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (low, span, share) => {
        const target = low + share * span;
        const { masses } = pearsonSquare({ high: low + span, low, target, total: '10 kg' });
        expect(((masses?.high.value ?? 0) * (low + span) + (masses?.low.value ?? 0) * low) / 10).toBeCloseTo(target, 6);
      },
    ),
  );
});

test('squares that do not close', () => {
  expect(errorOf(() => pearsonSquare({ high: 10, low: 10, target: 10 }))).toBe('CONTRADICTION high');
  expect(errorOf(() => pearsonSquare({ high: 60, low: 10, target: 5 }))).toBe('CONTRADICTION target');
  expect(errorOf(() => pearsonSquare({ high: 60, low: 10, target: 20, total: '1 kg', lowMass: '1 kg' }))).toBe(
    'CONTRADICTION lowMass',
  );
  expect(errorOf(() => pearsonSquare({ high: 60, low: 10, target: 10, highMass: '1 kg' }))).toBe(
    'CONTRADICTION highMass',
  );
});
