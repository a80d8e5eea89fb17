import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { activityBand, growthAt, keeps, regulatoryClass, tcsClass } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

const activity = fc.double({ min: 0.01, max: 0.999, noNaN: true });
const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);

describe('growthAt', () => {
  test('nothing grows below 0.60', () => {
    expect(growthAt({ waterActivity: 0.599 }).mayGrow).toEqual([]);
    expect(growthAt({ waterActivity: 0.599 }).basis).not.toEqual([]);
  });

  test('those that make ill stop below 0.83', () => {
    expect(growthAt({ waterActivity: 0.829 }).pathogens).toEqual([]);
    expect(growthAt({ waterActivity: '83 %' }).pathogens.map(({ name }) => name)).toEqual(['Staphylococcus aureus']);
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
    expect(errorOf(() => keeps({ waterActivity }))).toEqual(['OUT_OF_RANGE', 'waterActivity']);
  });
});

describe('keeps', () => {
  test('an estimate within its own error of a limit is not shown to be safe', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.2, noNaN: true }),
        fc.double({ min: 0, max: 0.99, noNaN: true }),
        (uncertainty, share) => {
          const waterActivity = 0.83 - uncertainty * share - 1e-6;
          const answer = keeps({ waterActivity, uncertainty });
          expect(answer.verdict).toBe('not shown to be safe');
          expect(answer.pathogens.notExcluded).toContain('Staphylococcus aureus');
          expect(answer.pathogens.margin).toBeLessThanOrEqual(0);
        },
      ),
    );
  });

  test('what is said to be needed would indeed do', () => {
    fc.assert(
      fc.property(activity, fc.double({ min: 0, max: 0.1, noNaN: true }), (waterActivity, uncertainty) => {
        const { pathogens, spoilers } = keeps({ waterActivity, uncertainty });
        // near 1 the error is cut off at 1, which makes the room it leaves look larger
        fc.pre(waterActivity + uncertainty < 1);
        expect(keeps({ waterActivity: pathogens.needed as number, uncertainty }).pathogens.growth).toBe('none');
        expect(keeps({ waterActivity: spoilers.needed as number, uncertainty }).verdict).toBe('keeps');
      }),
    );
  });

  test('a verdict never grows milder with more uncertainty', () => {
    const order = ['keeps', 'may spoil', 'not shown to be safe', 'not safe'];
    fc.assert(
      fc.property(activity, fc.double({ min: 0, max: 0.2, noNaN: true }), (waterActivity, uncertainty) => {
        const rank = (u: number) => order.indexOf(keeps({ waterActivity, uncertainty: u }).verdict);
        expect(rank(uncertainty * 1.5)).toBeGreaterThanOrEqual(rank(uncertainty));
      }),
    );
  });

  test('a range counts as the same uncertainty', () => {
    const one = keeps({ waterActivity: { low: 0.78, likely: 0.8, high: 0.82 } });
    const other = keeps({ waterActivity: 0.8, uncertainty: 0.02 });
    expect([one.verdict, one.pathogens.notExcluded]).toEqual([other.verdict, other.pathogens.notExcluded]);
    expect(one.pathogens.needed).toBeCloseTo(other.pathogens.needed as number, 9);
  });

  test('a reading without its uncertainty takes 0.02 and says so', () => {
    const plain = keeps({ waterActivity: 0.59 });
    expect(plain.verdict).toBe('may spoil');
    expect(plain.basis[0]).toEqual({ of: 'uncertainty of the reading, 0.02', kind: 'common-practice' });
  });

  test('advice for each verdict', () => {
    const advice = (input: Parameters<typeof keeps>[0]) => keeps(input).advice;
    expect(advice({ waterActivity: 0.5, uncertainty: 0.01 })).toMatch(/takes up no water/);
    expect(advice({ waterActivity: 0.7, uncertainty: 0.01 })).toMatch(/Yeasts and molds.*0\.58/);
    expect(advice({ waterActivity: 0.82, uncertainty: 0.02 })).toMatch(/Measure it more closely/);
    expect(advice({ waterActivity: 0.95, uncertainty: 0.01 })).toMatch(/further/);
  });

  test('acid that stops all of a kind leaves no limit', () => {
    const sour = keeps({ waterActivity: 0.97, uncertainty: 0.01, pH: 3.4 });
    expect(sour.pathogens).toEqual({ growth: 'none', mayGrow: [], notExcluded: [] });
    expect(sour.verdict).toBe('may spoil');
  });

  test('bad ranges', () => {
    expect(errorOf(() => keeps({ waterActivity: { low: 0.9, likely: 0.8, high: 0.95 } }))).toEqual([
      'CONTRADICTION',
      'waterActivity',
    ]);
    expect(errorOf(() => keeps({ waterActivity: { low: 0.7, likely: 0.8, high: 1.2 } }))).toEqual([
      'OUT_OF_RANGE',
      'waterActivity.high',
    ]);
    expect(errorOf(() => keeps({ waterActivity: 0.8, uncertainty: -1 }))).toEqual(['OUT_OF_RANGE', 'uncertainty']);
    expect(errorOf(() => keeps({ waterActivity: { low: 0.7, likely: 0.8, high: 0.9 }, uncertainty: 0.1 }))[1]).toBe(
      'uncertainty',
    );
    expect(errorOf(() => keeps({} as never))).toEqual(['MISSING', 'waterActivity']);
    expect(errorOf(() => keeps(undefined as never))).toEqual(['MISSING', '']);
  });
});

describe('tcsClass', () => {
  test('drier or more acid is never stricter, and Table B never milder than Table A', () => {
    fc.assert(
      fc.property(activity, activity, fc.double({ min: 0, max: 14, noNaN: true }), (a, b, pH) => {
        const at = (waterActivity: number, heatTreatedAndPackaged: boolean) =>
          tcsClass({ waterActivity, pH, heatTreatedAndPackaged }).class === 'PA' ? 1 : 0;
        const [dry, wet] = [Math.min(a, b), Math.max(a, b)];
        for (const heated of [true, false]) expect(at(wet, heated)).toBeGreaterThanOrEqual(at(dry, heated));
        expect(at(a, false)).toBeGreaterThanOrEqual(at(a, true));
      }),
    );
  });
  test('PA carries its caution', () => {
    expect(ids(tcsClass({ waterActivity: 0.97, pH: 6, heatTreatedAndPackaged: true }))).toContain('product-assessment');
    expect(errorOf(() => tcsClass({ waterActivity: 0.97, pH: 6 } as never))).toEqual([
      'MISSING',
      'heatTreatedAndPackaged',
    ]);
  });
});

test('regulatoryClass points to the line it used', () => {
  expect(regulatoryClass({ pH: 4.5, waterActivity: 0.95, tomato: true }).class).toBe('acid');
  expect(regulatoryClass({ pH: 4.5, waterActivity: 0.95 }).basis[0]?.source).toBe('cfr-114');
});

describe('activityBand', () => {
  test('a border belongs to the wetter band, and drier than the last is the last', () => {
    expect(activityBand({ waterActivity: 0.87 }).band).toEqual([0.87, 0.91]);
    expect(activityBand({ waterActivity: 0.1 }).band).toEqual([0.2, 0.3]);
    expect(activityBand({ waterActivity: 0.5 }).saltedFish).toBeUndefined();
  });
});
