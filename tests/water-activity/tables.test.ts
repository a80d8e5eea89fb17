import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { sources } from '../../src/sources/index';
import { conditionsAllow, organisms } from '../../src/water-activity/growthLimits';
import { equilibriumPoints, saturatedSaltHumidity, typicalWaterActivity } from '../../src/water-activity/index';
import { isothermEquations } from '../../src/water-activity/isothermEquations';
import * as models from '../../src/water-activity/models';
import recalledLimits from './recalledLimits.json';

const sourced = {
  source: z.string(),
  locator: z.string().min(1),
  obtained: z.enum(['read', 'read-secondary', 'memory', 'computed', 'derived']),
  seen: z.enum(['original', 'reproduction', 'citation']).optional(),
  notes: z.string().min(1).optional(),
};
const number = z.number();
const maybe = number.nullable();
const ratio = number.min(0).max(1);
const text = z.string().min(1);
const named = { name: text, synonyms: z.array(text) };
const pair = z.tuple([number, number]);
const limits = {
  organism: text,
  aw_min: ratio.nullable(),
  pH_min: maybe,
  pH_max: maybe,
  t_min_degC: maybe,
  t_max_degC: maybe,
};

/** The shape of a row of each table. */
const shapes = {
  'activity-bands': { low: ratio, high: ratio, inhibited_below: text, foods: text },
  'extended-debye-huckel': {
    salt: text,
    A: number,
    B: number,
    C: number,
    D: number,
    E: number,
    beta: number,
    max_m: number.positive(),
  },
  'food-water-activity': { ...named, low: ratio, high: ratio, printed: text, moisture_pct: pair.optional() },
  glycerol: {
    a12: number,
    a21: number,
    b12: number,
    b21: number,
    v1: number.positive(),
    v2: number.positive(),
    t_min_K: number,
    t_max_K: number,
  },
  grover: { ...named, ingredient: text, E: number.min(0) },
  'growth-limits': { ...limits, aw_opt: maybe, pH_opt: text.nullable() },
  'growth-limits-older': { ...limits, printed: z.strictObject({ aw: z.string(), pH: z.string(), t_degC: z.string() }) },
  'growth-limits-others': limits,
  'growth-limits-groups': {
    organism: text,
    kind: z.enum(['pathogen', 'bacterium', 'yeast', 'mold']),
    aw_min_low: ratio,
    aw_min_high: ratio,
    printed: z.tuple([text, text]),
  },
  'isotherm-equations': { model: text, formula: text, inverse: z.string() },
  'isotherm-points': { ...named, temperature_degC: number, aw: ratio, X_g_per_g_dry: number.positive() },
  isotherms: {
    ...named,
    state: z.string(),
    model: text,
    temperature_degC: pair.nullable(),
    awRange: pair.nullable(),
    parameters: z.record(z.string(), number),
    caution: text.optional(),
  },
  models: { id: text, equation: text, variables: text, validity: text },
  monolayers: {
    ...named,
    state: z.string(),
    model: z.enum(['BET', 'GAB']),
    temperature_degC: pair.nullable(),
    M0_g_per_g_dry: z.tuple([number.positive(), number.positive()]),
  },
  norrish: { solute: text, K: number, uncertainty: number.min(0).nullable(), alternative: z.literal(true).optional() },
  'norrish-log10': { solute: text, k_log10: number, K_natural: number },
  pitzer: { set: text, salt: text, beta0: number, beta1: number, Cphi: number, max_m: number.positive() },
  'regulatory-lines': { rule: text, pH: number, aw: ratio.nullable() },
  'salt-bands': { low: ratio, high: ratio, aw: text, nacl_pct: text, pathogens: text, spoilage: text },
  'salt-cubic-fits': { salt: text, A0: number, A1: number, A2: number, A3: number },
  'salt-exponential-fits': {
    salt: text,
    compound: text,
    t_min_degC: number,
    t_max_degC: number,
    A: number.positive(),
    B: number,
    rh25_pct: number,
  },
  'salt-log-fits': { salt: text, k1: number, k2: number },
  'salt-names': named,
  'saturated-salts': {
    salt: text,
    t_degC: number,
    rh_pct: number.min(0).max(100),
    u_pct: number.positive().nullable(),
    spread_pct: pair.optional(),
  },
  'saturated-salts-recalled': { salt: text, t_degC: number, rh_pct: number.min(0).max(100) },
  solubility: { solute: text, t_degC: number, mass_pct: number.min(0).max(100) },
  solutes: { ...named, ions: z.number().int().positive(), M_g_mol: number.positive() },
  'sorption-heats': { ...named, q_kJ_mol: number, u_kJ_mol: number, moisture_g_per_g_dry: pair },
  'sucrose-equations': { id: text, equation: text, constants: z.record(z.string(), number), range: text },
  'sugar-moisture': { ...named, state: z.string(), points: z.array(pair).min(1) },
  tcs: {
    table: z.enum(['A', 'B']),
    aw: text,
    aw_to: number,
    aw_to_included: z.boolean(),
    pH: text,
    pH_to: number,
    pH_to_included: z.boolean(),
    class: z.enum(['non-TCS', 'PA']),
  },
} as const;
type Name = keyof typeof shapes;
const folder = new URL('../../data/water-activity/', import.meta.url);
const read = (name: string) => JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8'));
const known = new Set(sources().map(({ id }) => id));
const rowsOf = (name: Name) => read(name).rows;

describe.each(Object.entries(shapes))('table %s', (name, shape) => {
  const table = read(name);

  test('every row has its shape, and a source of the register', () => {
    z.strictObject({
      table: z.literal(name),
      title: text,
      columns: z.record(text, z.string()),
      notes: text.optional(),
      rows: z.array(z.strictObject({ ...shape, ...sourced })).min(1),
    }).parse(table);
    for (const { source } of table.rows) expect(known).toContain(source);
  });

  test('every column is explained', () => {
    const common = Object.keys(sourced);
    const used = new Set<string>(table.rows.flatMap((row: object) => Object.keys(row)));
    expect([...used].filter((key) => !common.includes(key)).sort()).toEqual(Object.keys(table.columns).sort());
  });
});

test('every table of the folder has its shape here', () => {
  const files = readdirSync(folder)
    .map((file) => file.replace('.json', ''))
    .filter((name) => name !== 'cautions');
  expect(files.sort()).toEqual(Object.keys(shapes).sort());
});

test('every caution is used, and every caution used is written', () => {
  const written = read('cautions').map(({ id }: { id: string }) => id);
  const here = new URL('../../src/water-activity/', import.meta.url);
  const code = readdirSync(here).map((file) => readFileSync(new URL(file, here), 'utf8'));
  const inCode = code.flatMap((source) => [...source.matchAll(/activityCaution\('([^']+)'\)/g)].map(([, id]) => id));
  const inData = rowsOf('isotherms').flatMap(({ caution }: { caution?: string }) => caution ?? []);
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
    const fit = saturatedSaltHumidity({ salt, fit: 'log' }).relativeHumidity;
    expect(Math.abs(fit - saturatedSaltHumidity({ salt }).relativeHumidity)).toBeLessThan(2);
  }
});

test('every food of the tables is found by its name and answers with its printed range', () => {
  for (const { name, low, high } of rowsOf('food-water-activity')) {
    expect(typicalWaterActivity({ food: name }).waterActivity).toEqual([low, high]);
  }
  for (const { name, state, points } of rowsOf('sugar-moisture')) {
    const series = equilibriumPoints({ food: name }).series.find((one) => one.state === state);
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
  const rows = rowsOf('isotherm-equations').map(({ model }: { model: string }) => model);
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

  test('botulism counts above pH 4.6 and not at it', () => {
    const botulinum = organisms.filter(({ name }) => name.startsWith('Clostridium botulinum'));
    expect(botulinum).toHaveLength(2);
    for (const organism of botulinum) {
      expect(conditionsAllow(organism, 4.6, undefined)).toBe(false);
      expect(conditionsAllow(organism, 4.61, undefined)).toBe(true);
    }
  });
});
