import { expect, test } from 'vitest';
import { potWorkOf } from '../../src/plan/potWork';
import { batches } from '../../src/plan/program';

const kitchen = (
  hours: number,
  pots: object[] = [
    { volume: { value: 3, unit: 'L' }, fill: 1 },
    { volume: { value: 9, unit: 'L' }, fill: 1 },
  ],
) => ({ elevation: { value: 0, unit: 'm' }, hours: { value: hours, unit: 'h' }, pots }) as never;
const kept = (product: number, rawKg: number, cookMinutes: number | undefined) =>
  ({ making: { activity: { product, cook: { litresPerKg: 1 } } }, decided: { rawKg }, said: { cookMinutes } }) as never;

test('few batches in the large pot instead of many in the small one', () => {
  const values = new Map([[batches(0, 0), 6]]);
  expect(potWorkOf(kitchen(4), [kept(0, 18, 30)], values)).toEqual([
    {
      minutesEach: 30,
      volume: { value: 18, unit: 'L' },
      batches: [{ pot: '9 L pot', batches: 2, most: { value: 9, unit: 'L' } }],
    },
  ]);
});
test('as the program shared them out where the large pot has no more minutes', () => {
  const values = new Map([
    [batches(0, 0), 2],
    [batches(1, 1), 2],
  ]);
  const work = potWorkOf(kitchen(1), [kept(0, 6, 30), kept(1, 18, 30)], values);
  expect(work[0]?.batches).toEqual([{ pot: '3 L pot', batches: 2, most: { value: 3, unit: 'L' } }]);
  expect(work[1]?.batches).toMatchObject([{ pot: '9 L pot', batches: 2 }]);
});
test('none where nothing is cooked or no pot is there', () => {
  expect(potWorkOf(kitchen(1), [kept(0, 6, undefined)], new Map())).toEqual([undefined]);
  expect(potWorkOf(kitchen(1, []), [kept(0, 6, 30)], new Map())).toEqual([undefined]);
});
