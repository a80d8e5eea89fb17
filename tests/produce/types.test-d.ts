import { expectTypeOf, test } from 'vitest';
import {
  type Composition,
  composition,
  kitchenMeasure,
  type ReadyFromRaw,
  rawForJars,
  readyFromRaw,
} from '../../src/produce/index';
import type { Quantity, Range } from '../../src/quantity/index';
import type { NotKnown } from '../../src/sources/no';

test('a quantity of the wrong kind does not compile', () => {
  readyFromRaw({ food: 'peach', form: 'halves', raw: '3 cups' });
  // @ts-expect-error raw food is no length
  readyFromRaw({ food: 'peach', form: 'halves', raw: '3 ft' });
  // @ts-expect-error a ready weight is a mass
  readyFromRaw({ food: 'peach', form: 'halves', ready: '1 ft' });
  // @ts-expect-error a measured ready weight too
  readyFromRaw({ food: 'peach', form: 'halves', raw: '3 lb', ownYield: { ready: '2 cups' } });
  // @ts-expect-error jars are counted
  rawForJars({ food: 'peach', form: 'halves', jar: 'quart', jars: '7' });
  // @ts-expect-error a jar has a name
  rawForJars({ food: 'peach', form: 'halves', jar: 7, raw: '3 lb' });
  // @ts-expect-error a volume where one belongs
  kitchenMeasure({ food: 'sugar', volume: '1 lb' });
  // @ts-expect-error a mass where one belongs
  kitchenMeasure({ food: 'sugar', mass: '1 cup' });
});

test('answers are plain values', () => {
  expectTypeOf(readyFromRaw({ food: 'peach', form: 'halves', raw: '3 lb' })).toEqualTypeOf<ReadyFromRaw | NotKnown>();
  expectTypeOf<ReadyFromRaw['ready']>().toEqualTypeOf<Range<Quantity<'mass'>>>();
  expectTypeOf(composition).returns.toEqualTypeOf<Composition | NotKnown>();
  expectTypeOf<Composition['moisture']>().toEqualTypeOf<Range<number>>();
});
