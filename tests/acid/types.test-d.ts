import { expectTypeOf, test } from 'vitest';
import {
  acidClass,
  acidForJars,
  brine,
  brineStrength,
  diluteVinegar,
  fermentSalt,
  fermentTime,
  phOf,
  saltMeasure,
  vinegarStrength,
} from '../../src/acid/index';
import type { Quantity } from '../../src/quantity/index';

test('a quantity of the wrong kind does not compile', () => {
  // @ts-expect-error a pH is a number
  acidClass({ pH: '4.2' });
  // @ts-expect-error vinegar is measured
  vinegarStrength({ vinegar: '2 lb', acetic: '5 %' });
  // @ts-expect-error a strength is a ratio
  diluteVinegar({ vinegar: '1 L', acetic: '7 cups' });
  // @ts-expect-error produce is weighed
  brine({ percent: '5 %', basis: 'produce', produce: '1 quart' });
  // @ts-expect-error no such basis
  brine({ percent: '5 %', basis: 'salt', water: '1 L' });
  // @ts-expect-error salt has no length
  brineStrength({ salt: '3 in', water: '1 L' });
  // @ts-expect-error salt has no temperature
  saltMeasure({ salt: '3 degF' });
  // @ts-expect-error cabbage is weighed
  fermentSalt({ food: 'cabbage', produce: '3 cups' });
  // @ts-expect-error a crock has a temperature
  fermentTime({ food: 'cabbage', temperature: '3 weeks' });
  // @ts-expect-error jars are counted
  acidForJars({ food: 'tomato', jar: 'pint', jars: '7' });
});

test('answers are plain quantities, or a refusal that must be looked at', () => {
  const brined = brine({ percent: 0.05, basis: 'brine', water: '1 kg' });
  if ('salt' in brined) expectTypeOf(brined.salt).toEqualTypeOf<Quantity<'mass'>>();
  // @ts-expect-error a refusal has no salt
  brined.salt;
  expectTypeOf(phOf({ food: 'peach' }).class).toEqualTypeOf<'acid' | 'low-acid'>();
  const salt = fermentSalt({ food: 'cabbage', produce: '5 lb' });
  // @ts-expect-error a refusal has no salt
  salt.salt;
});
