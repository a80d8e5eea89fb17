import { describe, expect, it } from 'vitest';
import { type DryingStudyInput, dryingCurve, type KnownDryingStudy } from '../../../src/drying/index';
import { formName, nameOf } from '../../../src/foods/tables';
import { readTable } from '../../helpers/tables';
import { errorOf } from '../helpers';

const study = (input: DryingStudyInput): KnownDryingStudy => {
  const answer = dryingCurve(input);
  if (!answer.known) throw new Error(answer.reason.text);
  return answer;
};

describe('dryingCurve of a food', () => {
  it('gives a diffusivity at a temperature only where the study has an activation energy', () => {
    expect(study({ food: 'mango', temperature: '60 degC' }).diffusivity).toBeCloseTo(4.97e-10, 15);
    expect(study({ food: 'sweet cherry', temperature: '65 degC' }).diffusivity).toBeUndefined();
    expect(study({ food: 'apple' }).diffusivityRange).toBeUndefined();
    expect(study({ food: 'onion' }).bestModel).toContain('Page');
  });
  it('finds every study by its food and form', () => {
    for (const { food, foods = [food], form, printed } of readTable('drying/curve', 'diffusivity').rows) {
      if (foods[0] === undefined) continue;
      for (const each of foods) {
        const found = study({ food: nameOf(each), ...(form === undefined ? {} : { form: formName(form) }) });
        expect(found, printed).toMatchObject({ printed, isGeneral: false });
      }
    }
  });
  it('gives the range of foods in general for a plant without a study, and says so', () => {
    const plum = study({ food: 'plum' });
    expect(plum).toMatchObject({ isGeneral: true, diffusivityRange: { low: 1e-11, high: 1e-9 } });
    expect(plum.cautions.map(({ id }) => id)).toContain('recalled');
    expect(dryingCurve({ food: 'beef' })).toMatchObject({ known: false, reason: { code: 'no-study' } });
  });
  it('says how it was dried where it was not hot air alone', () => {
    expect(study({ food: 'bell pepper' }).driedBy).toContain('microwaves');
    expect(study({ food: 'mango' }).driedBy).toBeUndefined();
  });
  it('refuses a temperature outside the study and an unknown food', () => {
    expect(errorOf(() => study({ food: 'mango', temperature: '50 degC' }))).toMatchObject({
      code: 'OUT_OF_RANGE',
      path: 'temperature',
    });
    expect(errorOf(() => study({ food: 'breadd' })).code).toBe('UNKNOWN_NAME');
  });
});
