import { describe, expect, test } from 'vitest';
import {
  type ChartSpec,
  type ProcessTimeChartInput,
  type ProcessTimeRow,
  processTimeChart,
} from '../../src/charts/index';
import { processesFor, testedProcess } from '../../src/process/index';

const peaches = { food: 'peaches', form: 'halves', pack: 'hot', jar: 'quart' } as const;
const rows = (input: ProcessTimeChartInput): readonly ProcessTimeRow[] =>
  (processTimeChart(input) as ChartSpec<ProcessTimeRow>).data.values;
const code = (input: unknown): unknown => {
  try {
    return processTimeChart(input as ProcessTimeChartInput);
  } catch (error) {
    const { code, path } = error as { code: string; path: string };
    return `${code} ${path}`;
  }
};

describe('processTimeChart', () => {
  test('peaches, hot pack, quarts in boiling water: 25, 30, 35, 40 min (Complete Guide to Home Canning, guide 2)', () => {
    expect(rows(peaches)).toEqual([
      { bandStart: 0, bandEnd: 1000, minutes: 25 },
      { bandStart: 1000, bandEnd: 3000, minutes: 30 },
      { bandStart: 3000, bandEnd: 6000, minutes: 35 },
      { bandStart: 6000, bandEnd: 10000, minutes: 40 },
    ]);
  });

  test('snap beans, dial gauge: 11, 12, 13, 14 psi and nothing above 8,000 ft (guide 4)', () => {
    const found = rows({ food: 'green beans', pack: 'raw', jar: 'pint', method: 'dial-gauge' });
    expect(found.map(({ bandStart: from, bandEnd: to, minutes, psi }) => [from, to, minutes, psi])).toEqual([
      [0, 2000, 20, 11],
      [2000, 4000, 20, 12],
      [4000, 6000, 20, 13],
      [6000, 8000, 20, 14],
      [8000, 10000, undefined, undefined],
    ]);
    expect(found[4]?.untested).toMatch(/end at 8,000 ft/);
  });

  test('every step is what testedProcess answers there: at its ends and in its middle', () => {
    for (const { bandStart: from, bandEnd: to, minutes } of rows({
      ...peaches,
      fromElevation: '-300 m',
      toElevation: '4000 m',
    })) {
      const feet = [from + 0.5, (from + to) / 2, to - 0.5].map((metres) => ({ value: metres, unit: 'm' as const }));
      for (const elevation of feet) {
        expect(testedProcess({ ...peaches, method: 'boiling-water', elevation })).toMatchObject({ minutes });
      }
    }
  });

  test('the minutes are those that processesFor prints', () => {
    const printed = processesFor({ food: 'peaches' }).processes.find(
      ({ form, pack, jarSizes: jars, method }) =>
        form === 'halves or slices' && pack === 'hot' && jars.includes('quart') && method === 'boiling-water',
    );
    expect(rows(peaches).map(({ minutes }) => minutes)).toEqual(printed?.bands.map(({ minutes }) => minutes));
  });

  test('without a method the first that is tested: pressure for low-acid food', () => {
    const spec = processTimeChart({ food: 'green beans', pack: 'raw', jar: 'pint' }) as ChartSpec;
    expect(spec.title.text).toBe('Gauge pressure by elevation');
    expect(spec.title.subtitle.join(' ')).toContain('dial-gauge');
  });

  test('acid that belongs to the process is said on the chart, and its cautions come along', () => {
    const spec = processTimeChart({
      food: 'tomatoes',
      form: 'crushed',
      jar: 'quart',
      method: 'boiling-water',
    }) as ChartSpec;
    expect(spec.title.subtitle.join(' ')).toMatch(/[Aa]cid must be added/);
    expect(spec.usermeta.cautions.map(({ id }) => id)).toContain('follow-local-guidance');
  });

  test('the kitchen is marked with its own answer', () => {
    const spec = processTimeChart({ ...peaches, elevation: '3400 ft' }) as ChartSpec;
    expect(JSON.stringify(spec.layer)).toContain('3,400 ft: 35 min');
    const high = processTimeChart({
      food: 'green beans',
      pack: 'raw',
      jar: 'pint',
      method: 'dial-gauge',
      elevation: '9000 ft',
    }) as ChartSpec;
    expect(JSON.stringify(high.layer)).toContain('9,000 ft: no tested process');
  });

  test('where nothing is tested from end to end there is no chart but the refusal', () => {
    const answer = processTimeChart({ food: 'green beans', pack: 'raw', jar: 'pint', method: 'boiling-water' });
    expect(answer).toMatchObject({ tested: false });
    expect('data' in answer).toBe(false);
  });

  test('bad input names its field', () => {
    expect(code({ ...peaches, fromElevation: '3000 ft', toElevation: '1000 ft' })).toBe('CONTRADICTION toElevation');
    expect(code({ ...peaches, food: 'peches' })).toBe('UNKNOWN_NAME food');
    expect(code({ ...peaches, food: undefined })).toBe('MISSING food');
    expect(code({ ...peaches, toElevation: '9000 m' })).toBe('OUT_OF_RANGE toElevation');
    expect(code({ ...peaches, hight: 3 })).toBe('UNKNOWN_FIELD hight');
    expect(code(undefined)).toBe('MISSING ');
  });
});
