import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { growthAt } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

const activity = fc.double({ min: 0.01, max: 0.999, noNaN: true });
const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);

describe('growthAt', () => {
  test('nothing grows below 0.60', () => {
    expect(growthAt({ waterActivity: 0.599 }).mayGrow).toEqual([]);
    expect(growthAt({ waterActivity: 0.599 }).basis).not.toEqual([]);
  });

  test('those that make people ill stop below 0.83', () => {
    expect(growthAt({ waterActivity: 0.829 }).pathogens).toEqual([]);
    expect(growthAt({ waterActivity: 0.83 }).pathogens.map(({ name }) => name)).toEqual(['Staphylococcus aureus']);
  });

  test('acid and cold stop what they are printed to stop', () => {
    const wet = { waterActivity: 0.99 };
    const names = (input: object) => growthAt({ ...wet, ...input }).pathogens.map(({ name }) => name);
    expect(names({ pH: 3.5 })).toEqual([]);
    expect(names({ pH: 4.6 })).not.toContain('Clostridium botulinum A & B (proteolytic)');
    expect(names({ pH: 4.7 })).toContain('Clostridium botulinum A & B (proteolytic)');
    expect(names({ temperature: '3 degC' })).toEqual(
      expect.arrayContaining(['Listeria monocytogenes', 'Yersinia enterocolitica']),
    );
    expect(names({ temperature: '2 degC' })).toContain('Salmonella spp.');
    expect(names({ temperature: '1.9 degC' })).not.toContain('Salmonella spp.');
    expect(names({ temperature: '-10 degC' })).toEqual([]);
  });

  test('wetter never lets less grow', () => {
    fc.assert(
      fc.property(
        activity,
        activity,
        fc.option(fc.double({ min: 0, max: 14, noNaN: true }), { nil: undefined }),
        (a, b, pH) => {
          const at = (waterActivity: number) =>
            growthAt(pH === undefined ? { waterActivity } : { waterActivity, pH }).mayGrow;
          const [dry, wet] = [Math.min(a, b), Math.max(a, b)];
          expect(at(wet)).toEqual(expect.arrayContaining([...at(dry)]));
        },
      ),
    );
  });

  test('cautions of the traps', () => {
    expect(ids(growthAt({ waterActivity: 0.97 }))).toContain('oil-keeps-out-air');
    expect(ids(growthAt({ waterActivity: 0.97, pH: 4 }))).toContain('mold-may-raise-ph');
    expect(ids(growthAt({ waterActivity: 0.7 }))).not.toContain('oil-keeps-out-air');
  });

  test.each([0, 1, -0.2, 1.4, Number.NaN])('an activity of %s is refused', (waterActivity) => {
    expect(errorOf(() => growthAt({ waterActivity }))).toEqual(['OUT_OF_RANGE', 'waterActivity']);
  });

  test('a water activity is a number, no percentage', () => {
    expect(errorOf(() => growthAt({ waterActivity: '83 %' } as never))).toEqual(['WRONG_TYPE', 'waterActivity']);
  });

  test('every line of the basis is for a field of the answer', () => {
    for (const waterActivity of [0.3, 0.62, 0.97]) {
      const answer = growthAt({ waterActivity });
      for (const { of } of answer.basis) expect(['mayGrow', 'band', 'band.saltedFish']).toContain(of);
    }
  });
});

describe('the classic band', () => {
  test('a border belongs to the wetter band, and drier than the last is the last', () => {
    expect(growthAt({ waterActivity: 0.87 }).band).toMatchObject({ low: 0.87, high: 0.91 });
    expect(growthAt({ waterActivity: 0.1 }).band).toMatchObject({ low: 0.2, high: 0.3 });
    expect(growthAt({ waterActivity: 0.5 }).band.saltedFish).toBeUndefined();
    expect(growthAt({ waterActivity: 0.9 }).band.saltedFish?.salt).toEqual({ low: 0.1, high: 0.17 });
    expect(growthAt({ waterActivity: 0.99 }).band.saltedFish?.salt).toEqual({ high: 0.035 });
  });
});
