import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { lowAcidByLaw } from '../../src/acid/phLimits';
import { nameOf } from '../../src/foods/tables';
import { assumed } from '../../src/water-activity/assumptions';
import { conditionsAllow, organisms } from '../../src/water-activity/growthLimits';
import { saturatedSaltHumidity, waterActivityOf } from '../../src/water-activity/index';
import { isothermEquations } from '../../src/water-activity/isothermEquations';
import * as models from '../../src/water-activity/models';
import { tables } from '../../src/water-activity/schemas';
import { soluteOf } from '../../src/water-activity/solutes';
import { known } from '../helpers/known';
import { checkTables, expectFolder } from '../helpers/tables';
import recalledLimits from './recalledLimits.json';

type Name = keyof typeof tables;
const folder = new URL('../../data/water-activity/', import.meta.url);
const sourceFolder = new URL('../../src/water-activity/', import.meta.url);
const read = (name: string) => JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8'));
const rowsOf = (name: Name) => read(name).rows;

checkTables('water-activity', Object.fromEntries(Object.entries(tables).map(([name, row]) => [name, row()])));

test('every table of the folder has its schema', () => {
  expectFolder('water-activity', Object.keys(tables));
});

test('ids are unique in their table', () => {
  for (const name of Object.keys(tables) as Name[]) {
    const ids = rowsOf(name).flatMap(({ id }: { id?: string }) => id ?? []);
    expect(new Set(ids).size, name).toBe(ids.length);
  }
});

test('every assumption is used, and every one used is written', () => {
  const code = readdirSync(sourceFolder).map((file) => readFileSync(new URL(file, sourceFolder), 'utf8'));
  const used = code.flatMap((text) => [...text.matchAll(/'([a-z]+(?:-[a-z]+)+)'/g)].map(([, id]) => id));
  const written = rowsOf('assumptions').map(({ id }: { id: string }) => id);
  const unused = written.filter(
    (id: string) => !used.includes(id) && !code.some((text) => text.includes(`assumed('${id}')`)),
  );
  expect(unused).toEqual([]);
  expect(() => assumed('nothing')).toThrow('no assumption');
});

test('the organisms that go by the law are in the tables of limits, and so are the groups that make people ill', () => {
  const read = (['growth-limits', 'growth-limits-older', 'growth-limits-others'] as const).flatMap((name) =>
    rowsOf(name).map(({ organism }: { organism: string }) => organism),
  );
  for (const { organism } of rowsOf('growth-by-law')) expect(read).toContain(organism);
  for (const { organism, kind } of rowsOf('growth-limits-groups'))
    if (kind === 'pathogen') expect(read).toContain(organism);
});

test('every part of a mixture of solutes is a solute', () => {
  for (const { parts } of rowsOf('solute-mixtures')) {
    expect(parts.reduce((sum: number, { share }: { share: number }) => sum + share, 0)).toBe(1);
    for (const { solute } of parts) expect(soluteOf(solute).id).toBe(solute);
  }
  expect(() => soluteOf('nothing')).toThrow('no solute');
});

test('every caution is used, and every caution used is written', () => {
  const written = read('cautions').map(({ id }: { id: string }) => id);
  const code = readdirSync(sourceFolder).map((file) => readFileSync(new URL(file, sourceFolder), 'utf8'));
  const inCode = code.flatMap((source) => [...source.matchAll(/activityCaution\('([^']+)'\)/g)].map(([, id]) => id));
  const inData = [...rowsOf('isotherms'), ...rowsOf('sugar-moisture')].flatMap(
    ({ caution }: { caution?: string }) => caution ?? [],
  );
  expect([...new Set([...inCode, ...inData])].sort()).toEqual([...written].sort());
});

test('rows printed in order stand in order', () => {
  for (const table of ['saturated-salts', 'saturated-salts-recalled', 'solubility'] as const) {
    const rows = rowsOf(table);
    rows.slice(1).forEach((row: { salt?: string; solute?: string; t_degC: number }, i: number) => {
      const before = rows[i];
      if (row.salt === before.salt && row.solute === before.solute) expect(row.t_degC).toBeGreaterThan(before.t_degC);
    });
  }
  const bands = rowsOf('activity-bands');
  bands.slice(1).forEach((band: { high: number }, i: number) => {
    expect(band.high).toBe(bands[i].low);
  });
});

test('the two tables of humidity over salts agree within 1 % RH, LiCl in the cold apart', () => {
  for (const { salt, t_degC, rh_pct } of rowsOf('saturated-salts-recalled')) {
    const printed = rowsOf('saturated-salts').find(
      (row: { salt: string; t_degC: number }) => row.salt === salt && row.t_degC === t_degC,
    );
    if (printed !== undefined && printed.u_pct !== null) expect(Math.abs(printed.rh_pct - rh_pct)).toBeLessThan(0.15);
  }
});

test('the logarithmic fits meet the printed table within 2 % RH at 25 degC', () => {
  for (const { salt } of rowsOf('salt-log-fits')) {
    const fit = saturatedSaltHumidity({ solute: salt, fit: 'log' }).relativeHumidity;
    expect(Math.abs(fit - saturatedSaltHumidity({ solute: salt }).relativeHumidity)).toBeLessThan(0.02);
  }
});

test('every printed moisture of a sugar is served as printed', () => {
  for (const { food, state, points } of rowsOf('sugar-moisture')) {
    const series = known(waterActivityOf({ food: nameOf(food) })).series.find((one) => one.state === state);
    expect(series?.points.map(({ waterActivity, moisture }) => [waterActivity, moisture * 100])).toEqual(
      points.map(([aw, x]: [number, number]) => [aw, expect.closeTo(x, 9)]),
    );
  }
});

test('the older constants in common logarithms are the natural ones over ln 10', () => {
  for (const { k_log10, K_natural } of rowsOf('norrish-log10')) expect(k_log10 * Math.LN10).toBeCloseTo(K_natural, 3);
});

test('the parameter sets of one salt agree within 0.003 up to 4 mol/kg', () => {
  const sets = rowsOf('pitzer');
  for (const set of sets) {
    const first = sets.find(({ salt }: { salt: string }) => salt === set.salt);
    for (const m of [0.5, 1, 2, 4].filter((value) => value <= set.max_m)) {
      const [one, other] = [first, set].map((row) => models.osmotic(2, m, models.pitzerCoefficient(m, row)));
      expect(one).toBeCloseTo(other as number, 2.5);
    }
  }
  const fructose = rowsOf('norrish').filter(({ solute }: { solute: string }) => solute === 'fructose');
  expect(fructose.map(({ K }: { K: number }) => K)).toEqual([2.15, 2.25]);
});

test('every equation stands on a row of the table of equations, and every row has its equation', () => {
  const rows = rowsOf('isotherm-equations').map(({ id }: { id: string }) => id);
  expect([...new Set(isothermEquations.map(({ row }) => row))].sort()).toEqual([...rows].sort());
});

test('every isotherm has the constants of its equation', () => {
  for (const { model, parameters } of rowsOf('isotherms')) {
    const equation = isothermEquations.find((one) => one.model === model);
    expect(Object.keys(parameters).sort()).toEqual([...(equation?.constants ?? [])].sort());
  }
});

describe('growth limits', () => {
  const pathogens = organisms.filter(({ kind }) => kind === 'pathogen');

  test('no served limit is stricter than any that was read', () => {
    const read = [...rowsOf('growth-limits'), ...rowsOf('growth-limits-older'), ...rowsOf('growth-limits-others')];
    for (const row of read) {
      const organism = organisms.find(({ name }) => name === row.organism);
      if (row.aw_min !== null) expect(organism?.waterActivity).toBeLessThanOrEqual(row.aw_min);
      if (row.pH_min !== null) expect(organism?.pH?.[0]).toBeLessThanOrEqual(row.pH_min);
      if (row.pH_max !== null) expect(organism?.pH?.[1]).toBeGreaterThanOrEqual(row.pH_max);
      if (row.t_min_degC !== null) expect(organism?.temperature?.[0]).toBeLessThanOrEqual(row.t_min_degC);
    }
    for (const { organism: name, aw_min_low } of rowsOf('growth-limits-groups')) {
      expect(organisms.find((one) => one.name === name)?.waterActivity).toBeLessThanOrEqual(aw_min_low);
    }
  });

  // recalled figures are never served; they only have to be no lower than what is, within a hundredth and 0.2 pH
  test('the recalled table is nowhere much more generous than what is served', () => {
    for (const row of recalledLimits as { organism: string; aw_min: number; pH_min: number; t_min_degC: number }[]) {
      const served = pathogens.find(({ name }) => name === row.organism);
      if (served === undefined) continue;
      expect(served.waterActivity, row.organism).toBeLessThanOrEqual(row.aw_min);
      expect(served.pH?.[0], row.organism).toBeLessThanOrEqual(row.pH_min + 0.6);
    }
  });

  test('what decides is the printed row', () => {
    const limit = (name: string) => organisms.find((one) => one.name === name)?.waterActivity;
    expect(limit('Staphylococcus aureus')).toBe(0.83);
    expect(limit('Clostridium perfringens')).toBe(0.93); // and not the 0.97 printed in the place of the least
    expect(limit('Clostridium botulinum A & B (proteolytic)')).toBe(0.93);
    expect(limit('Listeria monocytogenes')).toBe(0.9);
    expect(limit('Yersinia enterocolitica')).toBe(0.85); // no limit was read
  });

  test('botulism counts above the line of the law and not at it', () => {
    expect(lowAcidByLaw()).toMatchObject({ pH: 4.6, waterActivityAbove: 0.85 });
    const botulinum = organisms.filter(({ name }) => name.startsWith('Clostridium botulinum'));
    expect(botulinum).toHaveLength(2);
    for (const organism of botulinum) {
      expect(conditionsAllow(organism, 4.6, undefined)).toBe(false);
      expect(conditionsAllow(organism, 4.61, undefined)).toBe(true);
    }
  });
});
