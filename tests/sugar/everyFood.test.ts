import { describe, expect, test } from 'vitest';
import { foodRows } from '../../src/foods/tables';
import * as sugar from '../../src/sugar/index';
import { basisOfEveryCall } from '../helpers/everyCall';
import { lostPaths } from '../helpers/paths';

basisOfEveryCall(sugar);

describe('every food of the pantry has an answer, or one that says what is missing', () => {
  const batch = { ready: '45 kg', sugar: '55 kg', finishSolids: 0.65, jam: '90 kg' } as const;
  const asks: Readonly<Record<string, (food: string) => unknown>> = {
    pectinNeeded: (food) => sugar.pectinNeeded({ food, ready: '1 kg', sugar: '1 kg', grade: 150 }),
    jelly: (food) => sugar.jelly({ food, raw: '1 kg' }),
    legalJam: (food) => sugar.legalJam({ spread: 'jam', food, ...batch }),
  };
  test.each(Object.entries(asks))('%s', (_, ask) => {
    for (const { name } of foodRows) expect(lostPaths(ask(name)), name).toEqual([]);
  });
});
