import { describe, expect, test } from 'vitest';
import * as acid from '../../src/acid/index';
import { foodRows } from '../../src/foods/tables';
import { basisOfEveryCall } from '../helpers/everyCall';
import { lostPaths } from '../helpers/paths';

basisOfEveryCall(acid);

describe('every food of the pantry has an answer, or one that says what is missing', () => {
  const asks: Readonly<Record<string, (food: string) => unknown>> = {
    acidClass: (food) => acid.acidClass({ food }),
    ferment: (food) => acid.ferment({ food, ready: '5 lb', temperature: '70 degF' }),
    brine: (food) => acid.brine({ share: '8 %', shareOf: 'water', water: '1 kg', food }),
    acidForJars: (food) => acid.acidForJars({ food, jar: 'pint', jars: 2 }),
  };
  test.each(Object.entries(asks))('%s', (_, ask) => {
    for (const { name } of foodRows) expect(lostPaths(ask(name)), name).toEqual([]);
  });
});
