import type * as z from 'zod/mini';
import collapseTable from '../../../data/drying/collapse.json';
import fruitTable from '../../../data/drying/glass-transition-fruit.json';
import sugarTable from '../../../data/drying/glass-transition-sugars.json';
import formulaTable from '../../../data/drying/gordon-taylor.json';
import { answer } from '../../common/answer';
import { lookUp, type Named } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { fields, name, number, optional, readInput, share, temperature } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { caution } from '../cautions';
import { type ItemRow, itemOf, numberOf } from '../guide/settings';

interface FruitRow extends Sourced, Named {
  readonly printed: string;
  readonly Tgs_degC?: number | null;
  readonly k?: number | null;
}
interface SugarRow extends Sourced {
  readonly sugar: string;
  readonly Tg_degC: number;
  readonly k_GordonTaylor: number | null;
}
interface CollapseRow extends Sourced, Named {
  readonly printed: string;
  readonly Tc_degC: readonly [number, number];
}

const fruits = asTable<FruitRow>(fruitTable).rows;
const sugars = asTable<SugarRow>(sugarTable).rows;
const collapses = asTable<CollapseRow>(collapseTable).rows;
const formulas = asTable<ItemRow>(formulaTable).rows;

const WATER = itemOf(formulas, 'Tg_water');
const EQUATION = itemOf(formulas, 'GordonTaylor');
const CORRELATION = itemOf(formulas, 'k_sugar_correlation');
/** k = 0.0293 Tg + 3.61, Tg in degC: the row's correlation for sugars. */
const constantOf = (degC: number): number => 0.0293 * degC + 3.61;

/** Solids with both of Gordon and Taylor's constants. */
interface Solids extends Named {
  readonly degC: number;
  readonly k: number;
  readonly row: Sourced;
}

const SOLIDS: readonly Solids[] = [
  ...fruits.flatMap((row) =>
    typeof row.Tgs_degC === 'number' && typeof row.k === 'number'
      ? [{ name: row.name, ...(row.synonyms ? { synonyms: row.synonyms } : {}), degC: row.Tgs_degC, k: row.k, row }]
      : [],
  ),
  ...sugars.flatMap((row) =>
    row.k_GordonTaylor === null ? [] : [{ name: row.sugar, degC: row.Tg_degC, k: row.k_GordonTaylor, row }],
  ),
];

const partByMass = () => optional(number('a part by weight, 0 to 1,000', { min: 0, max: 1000 }));
const schema = fields({
  food: optional(name('a dried fruit or a sugar')),
  sugars: optional(
    fields({
      fructose: partByMass(),
      glucose: partByMass(),
      sucrose: partByMass(),
      maltose: partByMass(),
      lactose: partByMass(),
      sorbitol: partByMass(),
    }),
  ),
  solids: optional(
    fields({
      glassTransition: temperature({ min: { value: -150, unit: 'degC' } }),
      k: number('k above 0 and at most 20', { above: 0, max: 20 }),
    }),
  ),
  moisture: share({ below: 1 }),
  storage: optional(temperature({ min: { value: -60, unit: 'degC' }, max: { value: 80, unit: 'degC' } })),
});
export type GlassTransitionInput = z.input<typeof schema>;

export interface GlassTransition {
  /** Below it the food is a hard glass, above it a rubber that sticks, cakes and collapses. */
  readonly temperature: Quantity<'temperature'>;
  /** At the storage temperature: `glassy`, or `sticky` where the glass has gone soft. */
  readonly state?: 'glassy' | 'sticky';
  /** Most moisture, wet basis, at which it is still a glass at the storage temperature; 0 where it never is. */
  readonly mostMoisture?: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Gordon and Taylor: Tg = (ws Tgs + k ww Tgw) / (ws + k ww), k on the water. */
const gordonTaylor = (solids: number, k: number, water: number, moisture: number): number =>
  ((1 - moisture) * solids + k * moisture * water) / (1 - moisture + k * moisture);

interface SugarShares {
  readonly [sugar: string]: number | undefined;
}

/** A mixture's dry glass transition as the mean by weight, and its k by the sugars' correlation. */
function mixture(shares: SugarShares, given: unknown): { degC: number; k: number; rows: Sourced[] } {
  const parts = Object.entries(shares).filter((part): part is [string, number] => (part[1] ?? 0) > 0);
  const total = parts.reduce((sum, [, part]) => sum + part, 0);
  if (total === 0) fail('MISSING', 'sugars', given, 'at least one sugar');
  const rows = parts.map(
    ([sugar]) => sugars.find((row) => row.sugar === sugar && row.k_GordonTaylor !== null) as SugarRow,
  );
  const degC = parts.reduce((sum, [, part], i) => sum + (part / total) * (rows[i] as SugarRow).Tg_degC, 0);
  return { degC, k: constantOf(degC), rows };
}

function solidsOf(
  given: z.output<typeof schema>,
  input: GlassTransitionInput,
): { degC: number; k: number; basis: Basis[]; estimated: boolean } {
  const { food, sugars: shares, solids } = given;
  if ([food, shares, solids].filter((way) => way !== undefined).length !== 1) {
    fail('CONTRADICTION', 'food', input.food, 'just one of food, sugars and solids');
  }
  if (solids !== undefined) {
    return {
      degC: valueIn(solids.glassTransition, 'degC'),
      k: solids.k,
      basis: [{ of: 'constants of the solids', kind: 'measured' }],
      estimated: false,
    };
  }
  if (shares !== undefined) {
    const { degC, k, rows } = mixture(shares, input.sugars);
    return {
      degC,
      k,
      basis: [
        ...rows.map((row) => basisOf(row, 'glass transition of the dry sugar')),
        basisOf(CORRELATION, 'k of sugars'),
      ],
      estimated: true,
    };
  }
  const found = lookUp(food as string, SOLIDS, 'food', 'food or sugar with published Gordon-Taylor constants');
  return {
    degC: found.degC,
    k: found.k,
    basis: [basisOf(found.row, `glass transition of ${found.name}`)],
    estimated: false,
  };
}

/**
 * The glass transition of dried fruit or sugar at a moisture, and whether it stays a hard glass in store or turns
 * sticky and cakes.
 *
 * Gordon-Taylor: Tg = (ws Tgs + k ww Tgw) / (ws + k ww), wet-basis weight shares, k on the water, Tgw = -135 degC. For a
 * fruit without its own constants give its `sugars`: the dry transition is their mean by weight, a rough estimate.
 * Stickiness begins some degrees above Tg; anything at or above it counts as sticky here.
 *
 * @param input.food - a dried fruit or a sugar of the tables (kiwifruit, apple, sucrose ...), or
 * @param input.sugars - parts by weight of fructose, glucose, sucrose, maltose, lactose, sorbitol, or
 * @param input.solids - `glassTransition` of the dry solids and `k`, from a source of your own
 * @param input.moisture - wet basis, 0 to below 1 or percent
 * @param input.storage - temperature of the store, for `state` and `mostMoisture`
 * @returns `temperature` in degC
 * @throws StillroomError UNKNOWN_NAME; CONTRADICTION unless just one of food, sugars and solids is given
 *
 * @example
 * ```ts
 * import { glassTransition } from 'stillroom/drying';
 *
 * const kiwi = glassTransition({ food: 'kiwifruit', moisture: '2 %', storage: '70 degF' });
 * kiwi.temperature.value; // ≈ 24.4
 * kiwi.state; // => 'glassy'
 * glassTransition({ food: 'kiwifruit', moisture: '10 %', storage: '70 degF' }).state; // => 'sticky'
 * ```
 */
export function glassTransition(input: GlassTransitionInput): GlassTransition {
  const given = readInput(schema, input);
  const { degC, k, basis, estimated } = solidsOf(given, input);
  const water = numberOf(WATER);
  const transition = gordonTaylor(degC, k, water, given.moisture);
  const lines = joinBasis(
    [basisOf(EQUATION, 'Gordon-Taylor equation'), basisOf(WATER, 'glass transition of water')],
    basis,
  );
  const store = given.storage === undefined ? undefined : valueIn(given.storage, 'degC');
  return answer({
    temperature: { value: transition, unit: 'degC' },
    ...(store === undefined
      ? {}
      : {
          state: transition > store ? 'glassy' : 'sticky',
          // the equation solved for the moisture at which Tg is the store's temperature
          mostMoisture: store >= degC ? 0 : (degC - store) / (degC - store + k * (store - water)),
        }),
    basis: lines,
    cautions: [
      caution('powder-cakes'),
      ...(estimated ? [caution('estimate')] : []),
      ...(lines.some(({ kind }) => kind === 'recalled') ? [caution('recalled')] : []),
    ],
  });
}

const collapseSchema = fields({
  food: name('a food'),
  iceTemperature: temperature({ min: { value: -100, unit: 'degC' }, max: { value: 0, unit: 'degC' } }),
});
export type FreezeDryCollapseInput = z.input<typeof collapseSchema>;

export interface FreezeDryCollapse {
  /** `yes` where the ice front is at or above the collapse temperature, `perhaps` within a printed range, else `no`. */
  readonly collapses: 'yes' | 'perhaps' | 'no';
  readonly collapseTemperature: { readonly low: Quantity<'temperature'>; readonly high: Quantity<'temperature'> };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Whether a food collapses into a sticky foam at the temperature of its ice front in the freeze-dryer.
 *
 * The ice front must stay below the collapse temperature. Sugary juices collapse at -41 to -48 degC, so they dry only
 * under a deep vacuum, or when thickened or mixed with less sugary pulp. A food that is not listed may be compared with
 * `food liquids`, -60 to -5 degC.
 *
 * @param input.food - grape juice, apple juice, tomato, potato, coffee extract ...
 * @param input.iceTemperature - of the ice front, -100 to 0 degC: see `frostPoint` and `freezeDryTime`
 * @returns `collapses` and the printed temperature or range, degC
 * @throws StillroomError UNKNOWN_NAME with the nearest names
 *
 * @example
 * ```ts
 * import { freezeDryCollapse } from 'stillroom/drying';
 *
 * freezeDryCollapse({ food: 'grape juice', iceTemperature: '-30 degC' }).collapses; // => 'yes'
 * ```
 */
export function freezeDryCollapse(input: FreezeDryCollapseInput): FreezeDryCollapse {
  const { food, iceTemperature } = readInput(collapseSchema, input);
  const row = lookUp(food, collapses, 'food', 'food with a collapse temperature');
  const ice = valueIn(iceTemperature, 'degC');
  const [low, high] = row.Tc_degC;
  const basis = [basisOf(row, `collapse temperature of ${row.printed}`)];
  return answer({
    collapses: ice >= high ? 'yes' : ice >= low ? 'perhaps' : 'no',
    collapseTemperature: { low: { value: low, unit: 'degC' }, high: { value: high, unit: 'degC' } },
    basis,
    cautions: [caution('keep-below-collapse'), ...(row.obtained === 'memory' ? [caution('recalled')] : [])],
  });
}
