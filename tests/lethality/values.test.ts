import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  decimalReductions,
  equivalentTime,
  heatResistance,
  lethality,
  publishedLethality,
  zValue,
} from '../../src/lethality/index';
import { codeAndPath as errorOf } from '../helpers/errors';

const F0 = { reference: '121.1 degC', z: '10 degC' } as const;

test('a list of holds is the sum of its parts, and agrees with a record of the same', () => {
  const held = lethality({
    holds: [
      { temperature: '111.1 degC', time: '30 min' },
      { temperature: '121.1 degC', time: '120 s' },
    ],
    ...F0,
  });
  expect(held.parts[0]).toBeCloseTo(3, 9);
  expect(held.parts[1]).toBeCloseTo(2, 9);
  expect(held.minutes).toBeCloseTo(5, 9);
  const record = lethality({
    log: [
      { time: '0 min', temperature: '111.1 degC' },
      { time: '30 min', temperature: '111.1 degC' },
    ],
    ...F0,
  });
  expect(record.minutes).toBeCloseTo(held.parts[0] as number, 9);
});

test('an equivalent time is worth the time it stands for', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: 60, max: 130, noNaN: true }),
      fc.double({ min: 5, max: 20, noNaN: true }),
      (minutes, degC, zDegrees) => {
        const z = { value: zDegrees, unit: 'delta degC' } as const;
        const temperature = { value: degC, unit: 'degC' } as const;
        const reference = '100 degC';
        const { time } = equivalentTime({ time: { value: minutes, unit: 'min' }, reference, z, temperature });
        const { minutes: rate } = lethality({ holds: [{ temperature, time: '1 min' }], reference, z });
        expect(time.value * rate).toBeCloseTo(minutes, 6);
        if (degC > 100) expect(time.value).toBeLessThan(minutes);
      },
    ),
  );
});

test('z leads from one D value to the other', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 50, max: 90, noNaN: true }),
      fc.double({ min: 1, max: 30, noNaN: true }),
      fc.double({ min: 1.5, max: 1000, noNaN: true }),
      (degC, rise, ratio) => {
        const first = { temperature: { value: degC, unit: 'degC' }, dValue: { value: ratio, unit: 'min' } } as const;
        const second = { temperature: { value: degC + rise, unit: 'degC' }, dValue: '60 s' } as const;
        const { z } = zValue({ first, second });
        if (z.value < 1 || z.value > 100) return; // outside what the others take
        const moved = equivalentTime({
          time: first.dValue,
          reference: first.temperature,
          z: z as { value: number; unit: 'delta degC' },
          temperature: second.temperature,
        });
        expect(moved.time.value).toBeCloseTo(1, 6);
      },
    ),
  );
});

test('z is in the degrees of the first temperature', () => {
  // 10 degC apart and a factor of ten is z = 10 degC = 18 degF
  const celsius = zValue({
    first: { temperature: '100 degC', dValue: '10 min' },
    second: { temperature: '110 degC', dValue: '1 min' },
  });
  const fahrenheit = zValue({
    first: { temperature: '212 degF', dValue: '10 min' },
    second: { temperature: '230 degF', dValue: '1 min' },
  });
  expect(celsius.z).toEqual({ value: 10, unit: 'delta degC' });
  expect(fahrenheit.z.unit).toBe('delta degF');
  expect(fahrenheit.z.value).toBeCloseTo(18, 9);
});

test('reductions and their time are each the inverse of the other', () => {
  const { time } = decimalReductions({ dValue: '0.21 min', reductions: 12 });
  expect(time).toEqual({ value: 2.52, unit: 'min' }); // handbook Table 10.10: 12 x 0.21
  expect(decimalReductions({ time, dValue: '12.6 s' }).reductions).toBeCloseTo(12, 9);
});

test('every answer of arithmetic says that it is not a process or that resistance varies', () => {
  const first = { temperature: '80 degC', dValue: '10 min' } as const;
  const answers = [
    lethality({ holds: [{ temperature: '100 degC', time: '1 min' }], ...F0 }),
    equivalentTime({ time: '1 min', temperature: '100 degC', ...F0 }),
    decimalReductions({ dValue: '1 min', reductions: 5 }),
    decimalReductions({ time: '1 min', dValue: '1 min' }),
  ];
  for (const { cautions, basis } of answers) {
    expect(cautions.map(({ id }) => id)).toContain('record-check-only');
    expect(basis.length).toBeGreaterThan(0);
  }
  const z = zValue({ first, second: { temperature: '90 degC', dValue: '1 min' } });
  expect(z.cautions.map(({ id }) => id)).toEqual(['resistance-varies']);
});

test('any words of a name find all its lines; a recalled line is said to be recalled', () => {
  const ids = (input: Parameters<typeof heatResistance>[0]) => heatResistance(input).cautions.map(({ id }) => id);
  expect(heatResistance({ organism: 'clostridium botulinum' }).entries).toHaveLength(2);
  expect(heatResistance({ organism: 'Spores' }).entries.length).toBeGreaterThan(5);
  expect(ids({ organism: 'botulinum' })).not.toContain('recalled');
  expect(ids({ organism: 'Listeria' })).toContain('recalled');
  expect(heatResistance({ organism: 'Listeria' }).entries[0]).not.toHaveProperty('dValue');
  expect(publishedLethality({ about: 'juices' }).entries).toHaveLength(6);
  expect(publishedLethality({ about: 'apple cider' }).entries[0]).not.toHaveProperty('z');
  expect(publishedLethality({}).cautions.map(({ id }) => id)).toContain('published-heat-no-process');
});

test.each([
  [() => heatResistance({ organism: 'Salmonela' }), ['UNKNOWN_NAME', 'organism']],
  [() => heatResistance({ organism: '' }), ['UNKNOWN_NAME', 'organism']],
  [() => publishedLethality({ about: 'zzzzzz' }), ['UNKNOWN_NAME', 'about']],
  [() => equivalentTime({ time: '1 min', temperature: '-50 degC', ...F0 }), ['OUT_OF_RANGE', 'temperature']],
  [
    () => equivalentTime({ time: '1 min', temperature: '200 degC', reference: '0 degC', z: '1 degC' }),
    ['OUT_OF_RANGE', 'temperature'],
  ],
  [() => decimalReductions({ dValue: '0 min', time: '1 min' }), ['OUT_OF_RANGE', 'dValue']],
  [() => decimalReductions({ dValue: '1 min' }), ['MISSING', 'time']],
  [() => decimalReductions({ dValue: '1 min', time: '1 min', reductions: 2 }), ['CONTRADICTION', 'reductions']],
  [() => lethality({ holds: [], log: [], ...F0 } as never), ['CONTRADICTION', 'holds']],
  [() => decimalReductions({ dValue: '1 min', reductions: 0 }), ['OUT_OF_RANGE', 'reductions']],
  [() => decimalReductions({ time: '1 lb' as never, dValue: '1 min' }), ['WRONG_DIMENSION', 'time']],
  [() => lethality({ holds: [], ...F0 }), ['OUT_OF_RANGE', 'holds']],
  [
    () =>
      zValue({
        first: { temperature: '80 degC', dValue: '1 min' },
        second: { temperature: '80 degC', dValue: '2 min' },
      }),
    ['CONTRADICTION', 'second'],
  ],
])('bad input %# is refused', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});

test('a misspelt organism is offered the nearest', () => {
  expect(() => heatResistance({ organism: 'Salmonela' })).toThrow(/Salmonella/);
});
