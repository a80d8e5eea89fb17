import fc from 'fast-check';
import { expect, test } from 'vitest';
import { convert } from '../../src/quantity/index';
import { concentrate, pearsonSquare } from '../../src/sugar/index';
import { codeText as errorOf, thrownBy } from '../helpers/errors';

test('100 kg at 20 % cooked down to 68 %', () => {
  const { mass, waterRemoved, leftShare } = concentrate({ mass: '100 kg', solids: 0.2, targetSolids: '68 %' });
  expect(mass.value).toBeCloseTo(29.41, 2);
  expect(mass.value + waterRemoved.value).toBeCloseTo(100, 9);
  expect(leftShare).toBeCloseTo(5 / 17, 12);
});

test('how far down the pot: depth times area is the volume', () => {
  const answer = concentrate({ mass: '10 kg', solids: '12 %', targetSolids: '30 %', potSize: { diameter: '28 cm' } });
  const area = (Math.PI / 4) * 28 ** 2;
  expect((answer.depth?.value as number) * area).toBeCloseTo(convert(answer.volume, 'mL').value, 6);
  expect((answer.startDepth?.value as number) * area).toBeCloseTo(convert(answer.startVolume, 'mL').value, 6);
  expect(answer.startDepth?.unit).toBe('cm');
  // denser as it thickens: the depth falls further than the mass
  expect((answer.depth?.value as number) / (answer.startDepth?.value as number)).toBeLessThan(answer.leftShare);
});

test('US units stay US units', () => {
  const { mass, volume, depth } = concentrate({
    mass: '20 lb',
    solids: 0.12,
    targetSolids: 0.2,
    potSize: { diameter: '12 in', depth: '9 in' },
  });
  expect([mass.unit, volume.unit, depth?.unit]).toEqual(['lb', 'quart', 'in']);
});

test('a pot too full is refused, with the share that fits', () => {
  const pot = { diameter: '10 in', depth: '8 in' } as const;
  const batch = { mass: '30 lb', solids: 0.12, targetSolids: 0.2 } as const;
  expect(errorOf(() => concentrate({ ...batch, potSize: pot }))).toBe('TOO_MUCH mass');
  expect(errorOf(() => concentrate({ ...batch, mass: '17 lb', potSize: pot }))).toBe('TOO_MUCH mass');
  // two thirds of 8 in are 5.3 in
  const full = thrownBy(() => concentrate({ ...batch, potSize: pot }));
  expect([full.given, full.expected]).toEqual(['30 lb', expect.stringMatching(/5\.3 in deep and not \d+\.\d in$/)]);
  expect(concentrate({ ...batch, mass: '14 lb', potSize: pot }).depth).toBeDefined();
  expect(concentrate({ ...batch, mass: '17 lb', potSize: { ...pot, fillLimit: 0.9 } }).depth).toBeDefined();
});

test('thinning undoes it', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.5, noNaN: true }),
      fc.double({ min: 0.5, max: 0.9, noNaN: true }),
      (solids, targetSolids) => {
        const { mass, waterRemoved } = concentrate({ mass: '10 kg', solids, targetSolids });
        const thinned = pearsonSquare({ strong: targetSolids, weak: 0, target: solids, strongMass: mass });
        expect(thinned.weakMass?.value).toBeCloseTo(waterRemoved.value, 6);
        expect(thinned.mass?.value).toBeCloseTo(10, 6);
      },
    ),
  );
});

test('targets the wrong way round', () => {
  expect(errorOf(() => concentrate({ mass: '1 kg', solids: 0.3, targetSolids: 0.2 }))).toBe(
    'CONTRADICTION targetSolids',
  );
  expect(errorOf(() => concentrate({ mass: '1 kg', solids: 0, targetSolids: 0.2 }))).toBe('OUT_OF_RANGE solids');
  expect(errorOf(() => concentrate({ mass: '1 kg', solids: 20, targetSolids: 0.2 }))).toBe('OUT_OF_RANGE solids');
});
