import { expect, test } from 'vitest';
import { roomiestPot, stepsWithPot } from '../../../src/plan/makes/pots';
import { productOf } from '../fullKitchen';

const pot = { steps: ['Blanch it.', 'Cool it.'] } as never;
const work = (before: readonly object[], blanch?: number) => ({ before, blanch }) as never;
test('blanching stands where the page has it, and the page says how long it is cooled', () => {
  const steps = [{ do: 'wash' }, { do: 'blanch', time: '3 min' }, { do: 'cool', time: '6 min' }, { do: 'label' }];
  expect(stepsWithPot(work(steps, 3), pot)).toEqual([
    'Wash.',
    'Blanch it.',
    expect.stringMatching(/^Cool.*6 min/),
    'Use as much ice as food by weight.',
    'Label.',
  ]);
});
test('where the page does not cool it, it is cooled all the same', () => {
  expect(stepsWithPot(work([{ do: 'blanch' }, { do: 'label' }], 3), pot)).toEqual(['Blanch it.', 'Cool it.', 'Label.']);
});
test('what is not blanched has the steps of its page', () => {
  expect(stepsWithPot(work([{ do: 'wash' }, { do: 'label' }]), undefined)).toEqual(['Wash.', 'Label.']);
  expect(stepsWithPot(work([{ do: 'wash' }]), { steps: [] } as never)).toEqual(['Wash.']);
});
test('the roomiest pot, two thirds full', () => {
  const day = (pots: readonly object[]) => ({ request: { kitchen: { pots } } }) as never;
  const quarts = (value: number) => ({ volume: { value, unit: 'quart' } });
  expect(roomiestPot(day([quarts(6), quarts(12)]))).toBeCloseTo(8 * 0.946352946, 6);
  expect(roomiestPot(day([]))).toBe(0);
});
test('food that is heated by its weight takes its pot for longer where there is more of it, and less on a strong burner', () => {
  const minutes = (kitchen: object, raw: '10 lb' | '40 lb') =>
    productOf('apple', { make: 'jars', form: 'sauce', jar: 'quart', method: 'boiling-water' }, kitchen, raw).energy
      ?.likely.value ?? 0;
  expect(minutes({}, '40 lb')).toBeGreaterThan(2 * minutes({}, '10 lb'));
});
test('the cook says the minutes of a batch', () => {
  const { cooking: pots, handsMinutes } = productOf('peach', {
    make: 'jam',
    pectin: 'none',
    jar: 'half-pint',
    cook: '30 min',
    minutesPerPound: 0,
    minutesPerUnit: 1,
  });
  const batches = (pots?.batches ?? []).reduce((sum, each) => sum + each.count, 0);
  expect(pots?.minutesEach).toBe(30);
  expect(handsMinutes.prepare).toBe(0);
  // jam is stirred while it cooks
  expect(handsMinutes.stir).toBe(30 * batches);
});
test('the water to blanch in is measured as a cook does: quarts, or liters to a tenth', () => {
  const blanch = (raw: '20 lb' | '9 kg') =>
    productOf('green beans', { recipe: 'frozen-green-beans' }, {}, raw).directions.find((step) =>
      step.startsWith('Blanch'),
    );
  expect(blanch('20 lb')).toMatch(/with \d+( \d\/\d)? quarts of water/);
  expect(blanch('9 kg')).toMatch(/with \d+(\.\d)? L of water/);
  expect(blanch('9 kg')).not.toContain('mL');
});
