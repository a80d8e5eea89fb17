import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dryBasis, wetBasis } from '../../../src/drying/index';
import { errorOf } from '../helpers';

const moisture = fc.double({ min: 0.05, max: 0.98, noNaN: true });

describe('moisture bases', () => {
  it('return to the start', () => {
    fc.assert(
      fc.property(moisture, (wet) => {
        expect(wetBasis({ moisture: dryBasis({ moisture: wet }).moisture }).moisture).toBeCloseTo(wet, 12);
      }),
    );
  });
  it.each([
    ['1', 'NOT_A_QUANTITY'],
    [Number.NaN, 'OUT_OF_RANGE'],
    [Number.POSITIVE_INFINITY, 'OUT_OF_RANGE'],
    [undefined, 'MISSING'],
  ])('wetBasis refuses %s', (value, code) => {
    expect(errorOf(() => wetBasis({ moisture: value as never }))).toMatchObject({ code, path: 'moisture' });
  });

  it('takes dry basis in percent above 100', () => {
    expect(wetBasis({ moisture: '400 %' }).moisture).toBeCloseTo(0.8, 15);
  });
});
