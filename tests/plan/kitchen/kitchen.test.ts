import { expect, test } from 'vitest';
import { cannersOf, capacityOf, handsOf, meansOf, potsOf } from '../../../src/plan/kitchen/kitchen';
import { amountOf, BAGS, FREEZER_LOAD, FREEZER_ROOM, jarsOf, LIDS } from '../../../src/plan/request/stock';

const kitchen = {
  elevation: { value: 100, unit: 'm' as const },
  hours: [{ value: 2, unit: 'h' as const }],
};
const request = (more: object = {}): Parameters<typeof capacityOf>[0] => ({
  lots: [{ usableKg: 10 }],
  kitchen: { ...kitchen, ...more },
});

test('pots are spread out and filled to two thirds where nothing is said', () => {
  const pots = potsOf({
    ...kitchen,
    pots: [
      { volume: { value: 9, unit: 'L' }, count: 2 },
      { volume: { value: 5, unit: 'L' }, fill: 0.5 },
    ],
  });
  expect(pots.map(({ label }) => label)).toEqual(['9 L pot 1', '9 L pot 2', '5 L pot']);
  expect(pots.map(({ most }) => most.value)).toEqual([6, 6, 2.5]);
  expect(potsOf(kitchen)).toEqual([]);
});
test('canners by name or method', () => {
  const canners = cannersOf({
    ...kitchen,
    canners: [
      { method: 'dial-gauge', holds: { pint: 9 }, count: 2 },
      { name: 'old one', method: 'boiling-water', holds: { pint: 9 } },
    ],
  });
  expect(canners.map(({ label }) => label)).toEqual(['dial-gauge canner 1', 'dial-gauge canner 2', 'old one']);
  expect(cannersOf(kitchen)).toEqual([]);
});
test('the plain numbers of a kitchen', () => {
  const capacity = capacityOf(
    request({
      jars: [
        { jar: 'pint', count: 4 },
        { jar: 'pint', count: 5 },
      ],
      lids: { count: 7 },
      freezer: { room: { value: 20, unit: 'L' }, volume: { value: 10, unit: 'ft3' } },
      freezeDryer: { trays: 4, trayArea: { value: 1, unit: 'ft2' }, ice: { value: 2, unit: 'kg' } },
    }),
    [],
  );
  expect(capacity).toMatchObject({
    lots: [10],
    minutes: 120,
    hands: 1,
    burners: 4,
    lead: 0,
    trays: 0,
    freezeDryer: { trays: 4, iceKg: 2, loads: 1 },
  });
  // 2 lb a day for each cubic foot of freezer: So Easy to Preserve, freezing
  const amounts = [jarsOf('pint'), LIDS, FREEZER_ROOM, BAGS].map((stock) => amountOf(capacity.stock, stock));
  expect(amounts).toEqual([9, 7, 20, undefined]);
  expect(amountOf(capacity.stock, FREEZER_LOAD)).toBeCloseTo(20 * 0.45359237, 9);
  expect(capacityOf(request(), []).stock).toEqual([]);
});
test('the first load waits for a first jar to be prepared, cooked and filled, or for hot water', () => {
  const activity = {
    product: 0,
    madeOf: 'fruit',
    worth: 1,
    least: 0,
    most: 9,
    stockPerUnit: [],
    handsPerKg: 6,
    handsPerUnit: 2 + 1, // a minute of it lifts the jar in and out
    supplies: [
      {
        lot: 0,
        unitsPerKg: { low: 1, likely: 2, high: 3 },
        trimmingsPerKg: { low: 0, likely: 0, high: 0 },
        readyPerKg: { low: 1, likely: 1, high: 1 },
      },
    ],
    cook: { litresPerKg: 1, minutes: 20, stirred: false },
    canning: { key: 'a', jar: 'pint', canners: [{ canner: 0, jars: 8, minutes: 40, warmUp: 0 }] },
  } as const;
  // a jar from 1/3 kg: (6 / 3 + 2) / 2 hands + 20 min
  expect(capacityOf(request({ hands: 2 }), [activity]).lead).toBe(22);
  const [canner] = activity.canning.canners;
  const cold = { ...activity, canning: { ...activity.canning, canners: [{ ...canner, warmUp: 50 }] } };
  expect(capacityOf(request({ hands: 2 }), [cold]).lead).toBe(50);
  const { canning: _, ...dry } = activity;
  expect(capacityOf(request(), [dry]).lead).toBe(0);
});

test('whose hands, and until when machines run, are for the order of work', () => {
  const asked = request({
    hands: ['cook', 'helper'],
    start: 480,
    canners: [
      { method: 'boiling-water', holds: { pint: 9 }, count: 2 },
      { method: 'dial-gauge', holds: { pint: 9 }, busyUntil: { clock: 600 } },
    ],
    dryer: { trays: 3, trayArea: { value: 1, unit: 'ft2' }, busyUntil: { after: 90 } },
    freezeDryer: {
      trays: 4,
      trayArea: { value: 1, unit: 'ft2' },
      ice: { value: 2, unit: 'kg' },
      busyUntil: { clock: 420 },
    },
  });
  const means = meansOf(asked.kitchen, capacityOf(asked, []));
  expect(means).toMatchObject({ hands: 2, names: ['cook', 'helper'], trays: 3 });
  expect(means.busy).toEqual({ dryer: 90, freezeDryer: 23 * 60, canners: [undefined, undefined, 120] });
  // of the minutes of work, which end after two hours
  expect(capacityOf(asked, []).cannersBusy).toEqual([0, 0, 120]);
  const plain = request();
  expect(capacityOf(plain, [])).not.toHaveProperty('cannersBusy');
  expect(meansOf(plain.kitchen, capacityOf(plain, []))).not.toHaveProperty('busy');
  expect(handsOf(plain.kitchen)).toEqual({ count: 1 });
});
test('days are counted, not windows; trays are counted once', () => {
  const asked = request({
    hours: [
      { value: 8, unit: 'h' },
      { value: 8, unit: 'h' },
    ],
    breaks: [{ at: 720, for: { value: 1, unit: 'h' } }],
    dryer: { trays: 3, trayArea: { value: 1, unit: 'ft2' } },
  });
  expect(capacityOf(asked, [])).toMatchObject({ days: 2, minutes: 14 * 60, trays: 3 });
});
test('a freeze-dryer is loaded as often as its longest run leaves time for', () => {
  const more = { hours: Array(3).fill({ value: 10, unit: 'h' }) };
  const freezeDryer = { trays: 4, trayArea: { value: 1, unit: 'ft2' }, ice: { value: 2, unit: 'kg' } };
  const run = (hours: number) => ({ after: { kind: 'freeze-dry', minutes: hours * 60 }, supplies: [] }) as never;
  const loads = (given: object, ...runs: number[]) =>
    capacityOf(request({ ...more, freezeDryer: { ...freezeDryer, ...given } }), runs.map(run)).freezeDryer?.loads;
  expect(loads({}, 20)).toBe(3);
  expect(loads({}, 20, 36)).toBe(2);
  expect(loads({ loads: 1 }, 20)).toBe(1);
  expect(loads({})).toBe(1);
});
