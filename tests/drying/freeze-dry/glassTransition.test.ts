import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type GlassTransitionInput, glassTransition, type KnownGlassTransition } from '../../../src/drying/index';
import { formName, nameOf } from '../../../src/foods/tables';
import { readTable } from '../../helpers/tables';
import { errorOf } from '../helpers';

const transition = (input: GlassTransitionInput): KnownGlassTransition => {
  const answer = glassTransition(input);
  if (!answer.known) throw new Error(answer.reason.text);
  return answer;
};

describe('glassTransition', () => {
  it('falls as moisture rises, and mostMoisture is where it meets the store', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.constantFrom('kiwifruit', 'sucrose', 'lactose', 'fructose'),
        (moisture, food) => {
          const now = transition({ food, moisture, storage: '-10 degC' });
          expect(now.temperature.value).toBeGreaterThan(
            transition({ food, moisture: moisture + 0.01 }).temperature.value,
          );
          const most = now.mostMoisture ?? 0;
          expect(transition({ food, moisture: most }).temperature.value).toBeCloseTo(-10, 9);
          expect(now.texture).toBe(moisture < most ? 'glassy' : 'sticky');
        },
      ),
    );
  });
  it('is never glassy in a store above the dry transition', () => {
    expect(transition({ food: 'fructose', moisture: 0, storage: '70 degF' })).toMatchObject({
      texture: 'sticky',
      mostMoisture: 0,
    });
  });
  it('takes a mixture of sugars between its parts, as an estimate', () => {
    const half = transition({ sugarParts: { sucrose: 1, fructose: 1 }, moisture: 0 });
    expect(half.temperature.value).toBeCloseTo((62 + 5) / 2, 12);
    expect(half.cautions.map(({ id }) => id)).toEqual(expect.arrayContaining(['estimate', 'recalled']));
    // one sugar alone has the correlation's k, within its rounding of the printed one
    const alone = transition({ sugarParts: { sucrose: 3 }, moisture: 0.1 }).temperature.value;
    expect(alone).toBeCloseTo(transition({ food: 'sucrose', moisture: 0.1 }).temperature.value, 0);
  });
  it('takes constants of your own', () => {
    const own = transition({ constants: { glassTransition: '40.3 degC', k: 4.88 }, moisture: 0.1 });
    expect(own.temperature.value).toBeCloseTo(transition({ food: 'kiwi', moisture: 0.1 }).temperature.value, 12);
  });
  it('refuses two ways or none, no sugar, and an unknown food', () => {
    expect(errorOf(() => transition({ moisture: 0.1 })).code).toBe('CONTRADICTION');
    expect(errorOf(() => transition({ food: 'kiwi', sugarParts: { sucrose: 1 }, moisture: 0.1 })).code).toBe(
      'CONTRADICTION',
    );
    expect(errorOf(() => transition({ sugarParts: { sucrose: 0 }, moisture: 0.1 })).code).toBe('MISSING');
    expect(errorOf(() => transition({ food: 'strawbery', moisture: 0.1 })).code).toBe('UNKNOWN_NAME');
    expect(errorOf(() => transition({ form: 'dried', sugarParts: { sucrose: 1 }, moisture: 0.1 })).path).toBe('form');
  });
  it('takes a dried fruit for the fruit, and knows nothing of foods without constants', () => {
    expect(transition({ food: 'apple', moisture: 0 }).temperature.value).toBe(-1.9);
    expect(transition({ food: 'apple', form: 'freeze-dried juice', moisture: 0 }).temperature.value).toBe(-16.3);
    for (const food of ['strawberry', 'mango', 'beef']) {
      expect(glassTransition({ food, moisture: 0.1 }), food).toMatchObject({
        known: false,
        reason: { code: 'no-glass-transition' },
      });
    }
  });
  it('serves every row with both constants, and not the rejected fructose', () => {
    const served = [
      ...readTable('drying/freeze-dry', 'glass-transition-sugars')
        .rows.filter((row: { k_GordonTaylor: number | null }) => row.k_GordonTaylor !== null)
        .map((row: { food: string; Tg_degC: number; k_GordonTaylor: number }) => ({
          food: nameOf(row.food),
          Tg: row.Tg_degC,
          k: row.k_GordonTaylor,
        })),
      ...readTable('drying/freeze-dry', 'glass-transition-fruit').rows.flatMap(
        (row: { food: string; form?: string; Tgs_degC?: number | null; k?: number | null }) =>
          typeof row.Tgs_degC === 'number' && typeof row.k === 'number'
            ? [
                {
                  food: nameOf(row.food),
                  ...(row.form === undefined ? {} : { form: formName(row.form) }),
                  Tg: row.Tgs_degC,
                  k: row.k,
                },
              ]
            : [],
      ),
    ] as { food: string; form?: string; Tg: number; k: number }[];
    expect(served).toHaveLength(12);
    for (const { Tg, k, ...food } of served) {
      expect(transition({ ...food, moisture: 0 }).temperature.value, food.food).toBe(Tg);
      const expected = (0.9 * Tg - k * 0.1 * 135) / (0.9 + k * 0.1);
      expect(transition({ ...food, moisture: 0.1 }).temperature.value, food.food).toBeCloseTo(expected, 9);
    }
    expect(transition({ food: 'fructose', moisture: 0 }).temperature.value).toBeLessThan(20);
    // the recalled k follow their correlation k = 0.0293 Tg + 3.61 within 0.05
    for (const { Tg, k, food } of served.slice(0, 9))
      expect(Math.abs(k - (0.0293 * Tg + 3.61)), food).toBeLessThan(0.05);
  });
});
