import { describe, expect, test } from 'vitest';
import { isothermChart } from '../../src/charts/index';
import { fruitWaterActivity, isothermActivity, isothermMoisture, keeps } from '../../src/water-activity/index';
import { known } from '../helpers/known';

const kiwi = { food: 'kiwifruit', temperature: '30 degC' } as const;
const said = ({ title }: { title: { subtitle: readonly string[] } }): string => title.subtitle.join(' ');

describe('isothermChart of a published isotherm', () => {
  test('every point is the answer of isothermMoisture, over the range of the isotherm', () => {
    const { data } = isothermChart(kiwi);
    const last = data.values[data.values.length - 1];
    expect(last?.waterActivity).toBe(0.675);
    for (const { waterActivity, moisture } of data.values) {
      expect(moisture).toBe(known(isothermMoisture({ ...kiwi, waterActivity })).wetMoisture);
    }
  });

  test('the batch lies where isothermActivity puts it, and the verdict is that of keeps', () => {
    const spec = isothermChart({ ...kiwi, batch: { moisture: '6 %' } });
    const { waterActivity } = known(isothermActivity({ ...kiwi, moisture: 0.06 / 0.94 }));
    expect(JSON.stringify(spec.layer)).toContain(`{"waterActivity":${waterActivity},"moisture":0.06`);
    expect(keeps({ waterActivity }).verdict).toBe('keeps');
    expect(said(spec)).toContain('It keeps');
    expect(spec.usermeta.cautions.map(({ id }) => id)).toContain('isotherm-state');
  });

  test('a batch outside the isotherm is refused, not drawn', () => {
    expect(() => isothermChart({ ...kiwi, batch: { moisture: '40 %' } })).toThrow(/^moisture: /);
  });
});

describe('isothermChart of a fruit by its composition', () => {
  test('every point and its band are the answers of fruitWaterActivity', () => {
    for (const { waterActivity, moisture, low, high } of isothermChart({ food: 'apple' }).data.values) {
      const answer = known(fruitWaterActivity({ food: 'apple', moisture }));
      expect([low, waterActivity, high]).toEqual([
        answer.waterActivityRange.low,
        answer.waterActivity,
        answer.waterActivityRange.high,
      ]);
    }
  });

  test('the verdict counts the range of the estimate', () => {
    const wet = isothermChart({ food: 'apple', batch: { moisture: '30 %', name: 'the apples' } });
    expect(
      keeps({ waterActivity: known(fruitWaterActivity({ food: 'apple', moisture: 0.3 })).waterActivityRange }).verdict,
    ).toBe('not shown to be safe');
    expect(said(wet)).toContain('The apples at 30 % moisture');
    expect(said(wet)).toContain('Not shown to be safe');
    expect(said(isothermChart({ food: 'apple', batch: { moisture: '20 %' } }))).toContain('Yeasts and molds');
    expect(said(isothermChart({ food: 'apple', batch: { moisture: '60 %' } }))).toContain('Not safe');
  });

  test('the limits are the lowest published: 0.60 for molds and yeasts (Banwart 1989), 0.83 for S. aureus', () => {
    const text = JSON.stringify(isothermChart({ food: 'peach' }).layer);
    expect(text).toContain('{"waterActivity":0.6,"text":"yeasts, molds\\nfrom 0.60"}');
    expect(text).toContain('{"waterActivity":0.83,"text":"harmful bacteria\\nfrom 0.83"}');
  });

  test('added sugar makes an estimate of a food with an isotherm too', () => {
    expect(isothermChart({ food: 'kiwifruit' }).title.text).toContain('Isotherm');
    expect(isothermChart({ food: 'kiwifruit', sugarToFruit: 0.1 }).title.text).not.toContain('Isotherm');
  });

  test('a composition of your own', () => {
    const spec = isothermChart({ composition: { solids: '15 %', sugars: '11 %' } });
    expect(spec.title.text).toContain('your own fruit');
  });
});

test('bad input names its field', () => {
  const composition = { solids: '15 %', sugars: '11 %' } as const;
  expect(() => isothermChart({ food: 'kiwifruit', composition })).toThrow(/^food: /);
  expect(() => isothermChart({ parameters: { M0: 0.1, C: 10, K: 0.9 }, composition })).toThrow(/^composition: /);
  // neither an isotherm nor its sugars
  expect(() => isothermChart({ food: 'jerky' })).toThrow(/^composition: /);
  expect(() => isothermChart({})).toThrow(/^food: /);
  expect(() => isothermChart({ food: 'kiwifruit', batch: { moisture: 1 } })).toThrow(/^batch.moisture: /);
  expect(() => isothermChart({ food: 'kiwifruit', wet: 1 } as never)).toThrow(/^wet: /);
});
