import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LoadTimelineInput, loadTimeline } from '../../src/process/index';
import { ends, expectRising } from '../heat/helpers';
import { expectError } from '../helpers/errors';
import { BEANS as beans } from './loads';

const peaches: LoadTimelineInput = {
  ...beans,
  food: 'peach',
  form: 'halves',
  method: 'boiling-water',
  elevation: '500 ft',
  waterVolume: '12 quarts',
};
function energyOf(input: LoadTimelineInput) {
  const answer = loadTimeline(input);
  if (!answer.tested) throw new Error(answer.reason.text);
  return answer;
}

describe('the energy of a load', () => {
  it.each([
    ['boiling water', peaches, ['heat the water', 'heat to a boil'], ['load the jars', 'process'], ['rest', 'unload']],
    [
      'pressure',
      beans,
      ['heat the water', 'heat to steady steam', 'come to pressure'],
      ['load the jars', 'vent', 'process'],
      ['lose pressure', 'wait with the weight off', 'unload'],
    ],
  ])('counts every step of a load in %s, once', (_, input, full, held, off) => {
    const load = loadTimeline(input);
    if (!load.tested) throw new Error(load.reason.text);
    expect(load.steps.map(({ what: step }) => step).sort()).toEqual([...full, ...held, ...off].sort());
    const minutes = (names: string[]) =>
      load.steps.reduce((sum, { what: step, minutes }) => sum + (names.includes(step) ? minutes.likely : 0), 0);
    const { heatingUp, holding, energy } = energyOf(input);
    expect(heatingUp.likely.value).toBeCloseTo((2.4 * minutes(full)) / 60, 9);
    expect(holding.likely.value).toBeCloseTo((2.4 * 0.4 * minutes(held)) / 60, 9);
    expect(energy.likely.value).toBeCloseTo(heatingUp.likely.value + holding.likely.value, 12);
  });
  it('heating the water up takes its heat over the efficiency, whatever the burner', () => {
    const heated = (burnerPower: '1 kW' | '5 kW') =>
      energyOf({ ...peaches, burnerPower, efficiency: '50 %' }).heatingUp.low.value;
    expect(heated('1 kW')).toBeCloseTo(heated('5 kW'), 9);
    // 12 quarts from 12 degC to the boil at 500 ft, none of the jars' heating
    expect(heated('1 kW')).toBeCloseTo((11.356 * 4.19 * (99.47 - 12)) / 0.5 / 3600, 2);
  });
  it('rises with water and as the efficiency falls; a second load, hot from the start, takes less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 40, noNaN: true }),
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        (litres, efficiency) => {
          const water = { value: litres, unit: 'L' as const };
          const one = energyOf({ ...peaches, waterVolume: water, efficiency });
          expectRising(one);
          const likely = (change: Partial<LoadTimelineInput>) =>
            energyOf({ ...peaches, waterVolume: water, efficiency, ...change }).energy.likely.value;
          expect(likely({ waterVolume: { value: litres + 1, unit: 'L' } })).toBeGreaterThan(one.energy.likely.value);
          expect(likely({ efficiency: 2 * efficiency })).toBeLessThan(one.energy.likely.value);
          expect(likely({ waterTemperature: '90 degC' })).toBeLessThan(one.energy.likely.value);
        },
      ),
    );
  });
  it('holds at the share given', () => {
    const { holding } = energyOf({ ...peaches, holdingShare: '30 %' });
    expect(holding.likely.value).toBeCloseTo((2.4 * 0.3 * (3.5 + 25)) / 60, 9);
    expectRising(energyOf(beans));
    expect(ends(energyOf(peaches).holding)).toHaveLength(3);
  });
  it('passes on a refusal, with no energy', () => {
    const refused = loadTimeline({ ...peaches, food: 'pumpkin butter', form: undefined, pack: undefined });
    expect(refused).toMatchObject({ tested: false });
    expect(refused).not.toHaveProperty('energy');
  });
  it('refuses what cannot be', () => {
    expectError(() => loadTimeline({ ...peaches, holdingShare: 0 }), 'OUT_OF_RANGE', 'holdingShare');
    expectError(() => loadTimeline({ ...peaches, jars: 0 }), 'OUT_OF_RANGE', 'jars');
    expectError(() => loadTimeline({ ...peaches, burnerPower: '1 W' }), 'OUT_OF_RANGE', 'burnerPower');
    expectError(() => loadTimeline({ ...peaches, burnerPower: undefined as never }), 'MISSING', 'burnerPower');
  });
});
