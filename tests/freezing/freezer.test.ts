import fc from 'fast-check';
import { expect, test } from 'vitest';
import { freezerLoad, freezingHeadspace, frozenStorage } from '../../src/freezing/index';
import { expectError } from '../helpers/errors';

// no more than 2 lb for each cubic foot in 24 hours; another page of the book prints 2 to 3 lb
test('what a freezer takes in a day', () => {
  expect(freezerLoad({ freezerVolume: '15 ft3' })).toMatchObject({
    perDay: { low: { value: 30 }, high: { value: 30 } },
    alsoPrinted: { value: 45 },
  });
  expect(freezerLoad({ freezerVolume: '15 ft3' }).days).toBeUndefined();
  expect(freezerLoad({ freezerVolume: '15 ft3', mass: '30 lb' })).toMatchObject({
    days: { low: 1, high: 1 },
    atOnce: true,
  });
  expect(freezerLoad({ freezerVolume: '15 ft3', mass: '30.1 lb' })).toMatchObject({
    days: { low: 2, high: 2 },
    atOnce: false,
  });
  expect(freezerLoad({ freezerVolume: '200 L', mass: '20 kg' }).perDay.low.unit).toBe('kg');
});

test('days are enough, and one day fewer would not be', () => {
  const amount = fc.double({ min: 1, max: 2000, noNaN: true });
  fc.assert(
    fc.property(amount, amount, (pounds, cubicFeet) => {
      const load = freezerLoad({
        freezerVolume: { value: cubicFeet, unit: 'ft3' },
        mass: { value: pounds, unit: 'lb' },
      });
      const days = load.days?.high ?? 0;
      expect(days * load.perDay.low.value).toBeGreaterThanOrEqual(pounds * (1 - 1e-9));
      expect((days - 1) * load.perDay.low.value).toBeLessThan(pounds);
      expect(load.days?.low).toBeLessThanOrEqual(days);
    }),
  );
});

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

test('storage at 0 degF or below; no months for a warmer freezer', () => {
  expect(frozenStorage()).toMatchObject({ months: { low: 8, high: 12 } });
  expect(frozenStorage({ temperature: '-18 degC' })).toMatchObject({ months: { low: 8 } });
  expect(frozenStorage({ temperature: '-10 degF' })).toMatchObject({ months: { low: 8 } });
  expect(frozenStorage({ temperature: '5 degF' })).toMatchObject({
    known: false,
    reason: { code: 'freezer too warm' },
  });
});

test('bad input', () => {
  expectError(() => freezerLoad({ freezerVolume: '0 ft3' }), 'OUT_OF_RANGE', 'freezerVolume');
  expectError(() => freezerLoad({ freezerVolume: '15 ft' as never }), 'WRONG_DIMENSION', 'freezerVolume');
  expectError(() => freezerLoad({ freezerVolume: '15 ft3', mass: '-3 lb' }), 'OUT_OF_RANGE', 'mass');
  expectError(() => freezingHeadspace({ style: 'dry', mouth: 'wide', jar: 'tub' }), 'UNKNOWN_NAME', 'jar');
  expectError(() => freezingHeadspace({ style: 'dry', mouth: 'wide', jar: 'half-gallon' }), 'OUT_OF_RANGE', 'jar');
  expectError(() => freezingHeadspace({ style: 'dry', jar: 'pint' } as never), 'MISSING', 'mouth');
  expectError(() => frozenStorage({ temperature: '20 lb' as never }), 'WRONG_DIMENSION', 'temperature');
});
