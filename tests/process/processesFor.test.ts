import { describe, expect, test } from 'vitest';
import { processesFor, testedProcess } from '../../src/process/index';
import { notCannedOf } from '../../src/process/processesFor';
import { notRecommendedRows } from '../../src/process/tables';
import { thrownBy as errorOf } from '../helpers/errors';

describe('processesFor', () => {
  test('every printed line of a food, with its bands', () => {
    const { food, processes, basis } = processesFor({ food: 'figs' });
    expect(food).toBe('fig');
    expect(processes).toEqual([
      expect.objectContaining({
        form: 'whole',
        pack: 'hot',
        jarSizes: ['pint'],
        method: 'boiling-water',
        headspace: { value: 0.5, unit: 'in' },
        acidByJar: [{ jar: 'pint', acid: expect.objectContaining({ bottledLemonJuice: { value: 1, unit: 'tbsp' } }) }],
        bands: [
          { elevationBand: '0 to 1,000 ft', minutes: 45 },
          { elevationBand: '1,001 to 3,000 ft', minutes: 50 },
          { elevationBand: '3,001 to 6,000 ft', minutes: 55 },
          { elevationBand: 'above 6,000 ft', minutes: 60 },
        ],
      }),
      expect.objectContaining({ jarSizes: ['quart'] }),
    ]);
    expect(basis.length).toBeGreaterThan(1);
  });

  test('says what it will not serve, cell by cell', () => {
    const sauce = processesFor({ food: 'tomato sauce' }).processes.find(({ alternative }) => alternative === 'c');
    expect(sauce?.bands).toEqual([
      { elevationBand: '0 to 1,000 ft', minutes: 10, pressure: { value: 15, unit: 'psi' } },
      { elevationBand: 'above 1,000 ft', refused: 'not-recommended' },
    ]);
    const cantaloupe = processesFor({ food: 'cantaloupe' });
    expect(cantaloupe.processes[0]?.bands.map(({ minutes }) => minutes)).toEqual([15, 20, 25]);
    const clean = processesFor({ food: 'jam' }).processes.find(({ alternative }) => alternative === 'b');
    expect(clean?.bands.map(({ minutes, refused }) => minutes ?? refused)).toEqual([10, 'recalled', 'recalled']);
    expect(cantaloupe.notCanned[0]?.covers).toBe('every form without a process');
    expect(processesFor({ food: 'oysters' }).processes[0]?.pack).toBe('not stated');
    expect(processesFor({ food: 'banana' })).toMatchObject({
      processes: [],
      notCanned: [{ foods: ['banana', 'plantain'] }],
    });
  });

  test('only the form that the name holds', () => {
    expect(new Set(processesFor({ food: 'applesauce' }).processes.map(({ form }) => form))).toEqual(new Set(['sauce']));
  });

  test('agrees with testedProcess on every line', () => {
    for (const { form, pack, jarSizes: jars, method, alternative, bands } of processesFor({ food: 'tomato' })
      .processes) {
      for (const jar of jars) {
        for (const [index, elevation] of (['0 ft', '9000 ft'] as const).entries()) {
          if (method === 'dial-gauge' && index === 1) continue;
          const band = index === 0 ? bands[0] : bands[bands.length - 1];
          const answer = testedProcess({
            food: 'tomato',
            form,
            pack,
            jar,
            method,
            elevation,
            ...(alternative === undefined ? {} : { alternative: alternative as 'a' }),
          });
          expect(answer.tested ? answer.minutes : undefined).toBe(band?.minutes);
        }
      }
    }
  });

  test('an unknown food is an error with the nearest names', () => {
    expect(errorOf(() => processesFor({ food: 'aple' }))).toMatchObject({
      code: 'UNKNOWN_NAME',
      nearest: expect.arrayContaining(['apple']),
    });
  });
});

test('every food that is not canned has its reason and what to do instead', () => {
  for (const { reason, instead } of notRecommendedRows.map(notCannedOf)) {
    expect(reason.code).toBe('not canned');
    expect(`${reason.text}${instead[0]?.text}`.length).toBeGreaterThan(20);
    expect(instead.some(({ keep }) => keep !== undefined)).toBe(true);
  }
});

test('the list of foods that are not canned speaks of these tables', () => {
  for (const { reason, instead } of notRecommendedRows.map(notCannedOf)) {
    expect(`${reason.text} ${instead[0]?.text}`).not.toMatch(/\b(?:is|are) published\b/);
    if (/no tested|no process/.test(reason.text)) expect(reason.text).toMatch(/in these tables/);
  }
});
