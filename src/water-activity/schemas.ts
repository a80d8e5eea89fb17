/**
 * The shape of a row of each table in `data/water-activity`. The types of the rows come from here; the schemas
 * themselves run in the tests only. Internal.
 */
import * as z from 'zod/mini';
import { forReaders, id, positive, practiceColumns, type RowOf, sourcedColumns, text } from '../sources/columns';
import { ISOTHERM_MODELS } from './isothermModels';

/** What a row carries besides its figures, where no code reads its id. */
const sourced = () => ({ id: forReaders(id()), ...sourcedColumns() });
const practice = () => ({ id: forReaders(id()), ...practiceColumns() });
const number = () => z.number();
const maybe = () => z.nullable(z.number());
const share = () => z.number().check(z.gte(0), z.lte(1));
const pair = () => z.tuple([z.number(), z.number()]);
/** A row that is linked to the pantry: one food, or several, and the words of the page. */
const linked = () => ({
  food: z.exactOptional(id()),
  foods: z.exactOptional(z.array(id()).check(z.minLength(2))),
  form: z.exactOptional(id()),
  printed: text(),
});
/** A row of one food. */
const ofFood = () => ({ food: id(), form: z.exactOptional(id()), printed: text() });
const named = () => ({ name: text(), synonyms: z.array(text()) });
const limits = () => ({
  organism: text(),
  aw_min: z.nullable(share()),
  pH_min: maybe(),
  pH_max: maybe(),
  t_min_degC: maybe(),
  t_max_degC: maybe(),
});

/** The schema of a row, by the name of its table. */
export const tables = {
  'activity-bands': () =>
    z.strictObject({
      low: share(),
      high: share(),
      inhibited_below: text(),
      foods: text(),
      ...sourced(),
    }),
  assumptions: () => z.strictObject({ id: id(), value: number(), what: forReaders(text()), ...practiceColumns() }),
  'dried-from': () => z.strictObject({ food: id(), from: id(), ...practice() }),
  'extended-debye-huckel': () =>
    z.strictObject({
      salt: text(),
      A: number(),
      B: number(),
      C: number(),
      D: number(),
      E: number(),
      beta: number(),
      max_m: positive(),
      ...sourced(),
    }),
  'food-water-activity': () =>
    z.strictObject({
      ...linked(),
      low: share(),
      high: share(),
      printed_activity: forReaders(text()),
      moisture_pct: z.exactOptional(pair()),
      ...sourced(),
    }),
  glycerol: () =>
    z.strictObject({
      a12: number(),
      a21: number(),
      b12: number(),
      b21: number(),
      v1: positive(),
      v2: positive(),
      t_min_K: number(),
      t_max_K: number(),
      ...sourced(),
    }),
  grover: () =>
    z.strictObject({
      ...named(),
      ingredient: text(),
      E: z.number().check(z.gte(0)),
      ...sourced(),
    }),
  'growth-by-law': () => z.strictObject({ organism: text(), limit: id(), ...practice() }),
  'growth-limits': () =>
    z.strictObject({
      ...limits(),
      aw_opt: maybe(),
      pH_opt: z.nullable(text()),
      ...sourced(),
    }),
  'growth-limits-groups': () =>
    z.strictObject({
      organism: text(),
      kind: z.enum(['pathogen', 'bacterium', 'yeast', 'mold']),
      aw_min_low: share(),
      aw_min_high: share(),
      printed: forReaders(z.tuple([text(), text()])),
      ...sourced(),
    }),
  'growth-limits-older': () =>
    z.strictObject({
      ...limits(),
      printed: forReaders(z.strictObject({ aw: z.string(), pH: z.string(), t_degC: z.string() })),
      ...sourced(),
    }),
  'growth-limits-others': () => z.strictObject({ ...limits(), ...sourced() }),
  'isotherm-equations': () =>
    z.strictObject({
      id: id(),
      model: text(),
      formula: forReaders(text()),
      inverse: forReaders(z.string()),
      activities: z.nullable(pair()),
      ...sourcedColumns(),
    }),
  'isotherm-points': () =>
    z.strictObject({
      ...ofFood(),
      temperature_degC: number(),
      aw: share(),
      X_g_per_g_dry: positive(),
      ...sourced(),
    }),
  isotherms: () =>
    z.strictObject({
      id: id(),
      ...ofFood(),
      state: z.string(),
      model: z.enum(ISOTHERM_MODELS),
      temperature_degC: z.nullable(pair()),
      activities: z.nullable(pair()),
      parameters: z.record(z.string(), z.number()),
      caution: z.exactOptional(text()),
      ...sourcedColumns(),
    }),
  models: () =>
    z.strictObject({
      id: id(),
      equation: text(),
      variables: forReaders(text()),
      validity: forReaders(text()),
      least_activity: z.exactOptional(share()),
      least_E: z.exactOptional(positive()),
      most_E: z.exactOptional(positive()),
      most_below_zero_degC: z.exactOptional(positive()),
      ...sourcedColumns(),
    }),
  monolayers: () =>
    z.strictObject({
      ...ofFood(),
      state: z.string(),
      model: z.enum(['BET', 'GAB']),
      temperature_degC: z.nullable(pair()),
      M0_g_per_g_dry: z.tuple([positive(), positive()]),
      ...sourced(),
    }),
  norrish: () =>
    z.strictObject({
      solute: text(),
      K: number(),
      uncertainty: z.nullable(z.number().check(z.gte(0))),
      alternative: z.exactOptional(z.literal(true)),
      ...sourced(),
    }),
  'norrish-log10': () =>
    z.strictObject({
      solute: text(),
      k_log10: number(),
      K_natural: number(),
      ...sourced(),
    }),
  pitzer: () =>
    z.strictObject({
      set: text(),
      salt: text(),
      beta0: number(),
      beta1: number(),
      Cphi: number(),
      max_m: positive(),
      served: z.exactOptional(z.literal(true)),
      ...sourced(),
    }),
  'salt-bands': () =>
    z.strictObject({
      low: share(),
      high: share(),
      aw: text(),
      nacl_pct: text(),
      pathogens: text(),
      spoilage: text(),
      salt_from: z.nullable(share()),
      salt_to: z.nullable(share()),
      ...sourced(),
    }),
  'salt-cubic-fits': () =>
    z.strictObject({
      salt: text(),
      A0: number(),
      A1: number(),
      A2: number(),
      A3: number(),
      ...sourced(),
    }),
  'salt-exponential-fits': () =>
    z.strictObject({
      salt: text(),
      compound: text(),
      t_min_degC: number(),
      t_max_degC: number(),
      A: positive(),
      B: number(),
      rh25_pct: number(),
      ...sourced(),
    }),
  'salt-log-fits': () => z.strictObject({ salt: text(), k1: number(), k2: number(), ...sourced() }),
  'salt-names': () => z.strictObject({ ...named(), ...sourced() }),
  'saturated-salts': () =>
    z.strictObject({
      salt: text(),
      t_degC: number(),
      rh_pct: z.number().check(z.gte(0), z.lte(100)),
      u_pct: z.nullable(positive()),
      spread_pct: z.exactOptional(pair()),
      ...sourced(),
    }),
  'saturated-salts-recalled': () =>
    z.strictObject({
      salt: text(),
      t_degC: number(),
      rh_pct: z.number().check(z.gte(0), z.lte(100)),
      ...sourced(),
    }),
  solubility: () =>
    z.strictObject({
      solute: text(),
      t_degC: number(),
      mass_pct: z.number().check(z.gte(0), z.lte(100)),
      ...sourced(),
    }),
  'solute-mixtures': () =>
    z.strictObject({
      id: id(),
      ...named(),
      parts: z.array(z.strictObject({ solute: id(), share: share() })).check(z.minLength(2)),
      ...sourcedColumns(),
    }),
  solutes: () =>
    z.strictObject({
      id: id(),
      ...named(),
      ions: z.number().check(z.int(), z.gt(0)),
      M_g_mol: positive(),
      hexose: z.exactOptional(z.literal(true)),
      ...sourcedColumns(),
    }),
  'sucrose-equations': () =>
    z.strictObject({
      id: id(),
      equation: text(),
      constants: z.record(z.string(), z.number()),
      range: text(),
      most_mol_kg: z.exactOptional(positive()),
      least_mass_fraction: z.exactOptional(share()),
      ...sourcedColumns(),
    }),
  'sugar-moisture': () =>
    z.strictObject({
      ...ofFood(),
      state: text(),
      points: z.array(pair()).check(z.minLength(1)),
      caution: z.exactOptional(text()),
      ...sourced(),
    }),
  tcs: () =>
    z.strictObject({
      table: z.enum(['A', 'B']),
      aw: text(),
      aw_to: number(),
      aw_to_included: z.boolean(),
      pH: text(),
      pH_to: number(),
      pH_to_included: z.boolean(),
      class: z.enum(['non-TCS', 'PA']),
      ...sourced(),
    }),
};

/** A row of the table of this name. */
export type TableRow<Name extends keyof typeof tables> = RowOf<(typeof tables)[Name]>;
