import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jerky } from '../../../src/drying/index';
import { foodRows } from '../../../src/foods/tables';

describe('jerky', () => {
  const after = {
    food: 'beef',
    heating: 'after',
    dryerTemperature: '150 degF',
    dryingTime: '8 h',
    oven: { temperature: '275 degF', time: '12 min' },
    thickness: '1/8 in',
  } as const;
  it('is refused without its heating step, at any temperature and time', () => {
    fc.assert(
      fc.property(fc.integer({ min: 70, max: 300 }), fc.integer({ min: 1, max: 96 }), (degF, hours) => {
        const answer = jerky({
          food: 'beef',
          dryerTemperature: { value: degF, unit: 'degF' },
          dryingTime: { value: hours, unit: 'h' },
        });
        expect(answer.tested).toBe(false);
      }),
    );
  });
  it('never names 120 degF', () => {
    for (const answer of [jerky(after), jerky({ food: 'beef', dryerTemperature: '120 degF' })]) {
      expect(JSON.stringify(answer)).not.toContain('120');
    }
  });
  it('takes both printed ways', () => {
    expect(jerky(after).tested).toBe(true);
    expect(
      jerky({ food: 'pork', heating: 'before', internalTemperature: '71.2 degC', dryerTemperature: '60 degC' }).tested,
    ).toBe(true);
  });
  it('is refused at a dryer or an oven hotter than printed, as at a cooler one', () => {
    const before = { food: 'beef', heating: 'before', internalTemperature: '160 degF' } as const;
    const at = (degF: number) => jerky({ ...before, dryerTemperature: { value: degF, unit: 'degF' } });
    for (const degF of [100, 120, 129, 141, 145, 180, 212, 300]) {
      const answer = at(degF);
      expect(answer.tested, `${degF}`).toBe(false);
      if (!answer.tested) expect(answer.instead).toEqual([{ text: 'dry at 130 to 140 degF' }]);
    }
    for (const degF of [130, 135, 140]) expect(at(degF).tested, `${degF}`).toBe(true);
    const dried = (degF: number) => jerky({ ...after, dryerTemperature: { value: degF, unit: 'degF' } }).tested;
    expect([144, 145, 155, 156, 200, 275].map(dried)).toEqual([false, true, true, false, false, false]);
    const oven = (degF: number) =>
      jerky({ ...after, oven: { temperature: { value: degF, unit: 'degF' }, time: '10 min' } }).tested;
    expect([274, 275, 276, 350, 500].map(oven)).toEqual([false, true, false, false, false]);
  });
  it.each<[string, object]>([
    ['no thickness', { thickness: undefined }],
    ['thick strips', { thickness: '3/8 in' }],
    ['no drying time', { dryingTime: undefined }],
    ['a short drying time', { dryingTime: '5 h' }],
    ['no oven', { oven: undefined }],
    ['a cool oven', { oven: { temperature: '270 degF', time: '10 min' } }],
    ['poultry', { food: 'chicken' }],
  ])('refuses the oven step with %s', (_, change) => {
    expect(jerky({ ...after, ...change } as never).tested).toBe(false);
  });
  it('refuses a heating before drying that was not measured', () => {
    const answer = jerky({ food: 'duck', heating: 'before', dryerTemperature: '140 degF' });
    expect(answer).toMatchObject({ tested: false });
    expect(answer.cautions.map(({ id }) => id)).toContain('jerky-heat-first');
    if (!answer.tested) expect(answer.instead[0]?.text).toContain('165');
  });
  it('asks 165 degF of all that is or may be poultry, and 160 of other meat', () => {
    for (const { id, name, kind } of foodRows) {
      const inside = (degF: number) =>
        jerky({
          food: name,
          heating: 'before',
          internalTemperature: { value: degF, unit: 'degF' },
          dryerTemperature: '140 degF',
        }).tested;
      const bird = kind === 'poultry' || id === 'chicken-or-rabbit' || id === 'meat-and-poultry';
      expect(inside(164), name).toBe(inside(160));
      if (bird) expect([inside(164), inside(165)], name).toEqual([false, true]);
      else if (!inside(165)) expect(inside(300), name).toBe(false);
      else expect(['meat', 'game'], name).toContain(kind);
      expect(inside(159), name).toBe(false);
    }
  });
  it('is refused for what is no fresh meat', () => {
    for (const food of ['salmon', 'egg', 'strawberry', 'bacon', 'ham', 'cheddar cheese']) {
      const answer = jerky({ ...after, food });
      expect(answer, food).toMatchObject({ tested: false, reason: { code: 'not-meat' } });
    }
  });
  it('has the oven step for strips and slices only', () => {
    expect(jerky({ ...after, form: 'strips' }).tested).toBe(true);
    expect(jerky({ ...after, food: 'beef strips' }).tested).toBe(true);
    expect(jerky({ ...after, form: 'ground' })).toMatchObject({ reason: { code: 'oven-for-thin-strips' } });
    expect(jerky({ ...after, food: 'ground beef' }).tested).toBe(false);
  });
  it('gives every refusal its own code, a way out, and the heating caution', () => {
    const codes = [
      jerky({ food: 'beef', dryerTemperature: '140 degF' }),
      jerky({ ...after, dryingTime: '5 h' }),
      jerky({ ...after, dryerTemperature: '140 degF' }),
      jerky({ ...after, dryerTemperature: '160 degF' }),
      jerky({ ...after, oven: undefined } as never),
      jerky({ ...after, food: 'chicken' }),
    ].map((answer) => {
      expect(answer.cautions[0]?.id).toBe('jerky-heat-first');
      if (answer.tested) throw new Error('tested');
      expect(answer.instead.length).toBeGreaterThan(0);
      return answer.reason.code;
    });
    expect(codes).toEqual([
      'no-heating',
      'dried-too-briefly',
      'dryer-too-cool',
      'dryer-too-hot',
      'wrong-oven',
      'oven-not-for-poultry',
    ]);
  });
});
