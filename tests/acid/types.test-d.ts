import { expectTypeOf, test } from 'vitest';
import { acidClass, acidForJars, brine, diluteVinegar, ferment, saltMeasure } from '../../src/acid/index';
import type { Quantity } from '../../src/quantity/index';

test('a quantity of the wrong kind does not compile', () => {
  // @ts-expect-error a pH is a number
  acidClass({ pH: '4.2' });
  // @ts-expect-error vinegar is measured
  diluteVinegar({ vinegar: '2 lb', acetic: '5 %' });
  // @ts-expect-error a strength is a share
  diluteVinegar({ vinegar: '1 L', acetic: '7 cups' });
  // @ts-expect-error vegetables are weighed
  brine({ share: '5 %', shareOf: 'food', ready: '1 quart' });
  // @ts-expect-error a share is of no salt
  brine({ share: '5 %', shareOf: 'salt', water: '1 L' });
  // @ts-expect-error salt has no length
  brine({ saltAdded: '3 in', water: '1 L' });
  // @ts-expect-error salt has no temperature
  saltMeasure({ amount: '3 degF' });
  // @ts-expect-error cabbage is weighed
  ferment({ food: 'cabbage', ready: '3 cups' });
  // @ts-expect-error a crock has a temperature
  ferment({ food: 'cabbage', temperature: '3 weeks' });
  // @ts-expect-error jars are counted
  acidForJars({ food: 'tomato', jar: 'pint', jars: '7' });
});

test('answers are plain quantities, or a refusal that must be looked at', () => {
  const brined = brine({ share: 0.05, shareOf: 'brine', water: '1 kg' });
  if ('saltMass' in brined) expectTypeOf(brined.saltMass).toEqualTypeOf<Quantity<'mass'>>();
  // @ts-expect-error a refusal has no salt
  brined.saltMass;
  const peach = acidClass({ food: 'peach' });
  if ('home' in peach) expectTypeOf(peach.home).toEqualTypeOf<'acid' | 'low-acid'>();
  const salt = ferment({ food: 'cabbage', ready: '5 lb' });
  // @ts-expect-error a refusal has no salt
  salt.salt;
});
