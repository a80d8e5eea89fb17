import fc from 'fast-check';
import { expect, test } from 'vitest';
import { freezerLoad } from '../../src/freezing/index';
import { expectError } from '../helpers/errors';

// no more than 2 lb for each cubic foot in 24 hours; another page of the book prints 2 to 3 lb
test('what a freezer takes in a day', () => {
  expect(freezerLoad({ freezerVolume: '15 ft3' })).toMatchObject({
    perDay: { low: { value: 30 }, high: { value: 30 } },
    alsoPrinted: { value: 45 },
  });
  expect(freezerLoad({ freezerVolume: '15 ft3' }).wholeDays).toBeUndefined();
  expect(freezerLoad({ freezerVolume: '15 ft3', mass: '30 lb' })).toMatchObject({
    wholeDays: { low: 1, high: 1 },
    atOnce: true,
  });
  expect(freezerLoad({ freezerVolume: '15 ft3', mass: '30.1 lb' })).toMatchObject({
    wholeDays: { low: 2, high: 2 },
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
      const days = load.wholeDays?.high ?? 0;
      expect(days * load.perDay.low.value).toBeGreaterThanOrEqual(pounds * (1 - 1e-9));
      expect((days - 1) * load.perDay.low.value).toBeLessThan(pounds);
      expect(load.wholeDays?.low).toBeLessThanOrEqual(days);
    }),
  );
});

test('bad input', () => {
  expectError(() => freezerLoad({ freezerVolume: '0 ft3' }), 'OUT_OF_RANGE', 'freezerVolume');
  expectError(() => freezerLoad({ freezerVolume: '15 ft' as never }), 'WRONG_DIMENSION', 'freezerVolume');
  expectError(() => freezerLoad({ freezerVolume: '15 ft3', mass: '-3 lb' }), 'OUT_OF_RANGE', 'mass');
});
