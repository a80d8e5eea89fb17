import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { type FoundFood, food, form } from '../../foods/fields';
import { fields, number, optional, readInput } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { type NotKnown, notKnown } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { moisture as moistureWord } from '../../words/shares';
import { temperature } from '../../words/temperature';
import { basisFrom, measured } from '../basis';
import { caution } from '../cautions';
import { formAsked, ofForm, rowsFor } from '../pantry';
import { figure, numberOf } from '../rows';
import { type FreezeDryCollapse, type FreezeDryCollapseInput, freezeDryCollapse } from './freezeDryCollapse';
import { type GlassSugarRow, glassFormula, glassFruitRows, glassSugarRows } from './tables';

const WATER = glassFormula('glass-transition-water');
const EQUATION = glassFormula('gordon-taylor');
const CORRELATION = glassFormula('k-of-sugars');
/** k of sugars by the straight line of the row, Tg in degC. */
const constantOf = (degC: number): number => figure(CORRELATION.slope) * degC + figure(CORRELATION.intercept);

/** Dry solids with both of Gordon and Taylor's constants. */
interface Constants {
  readonly degC: number;
  readonly k: number;
}

/** Foods and sugars with both constants. */
const SOLIDS = [
  ...glassFruitRows.flatMap(({ Tgs_degC: degC, k, ...row }) =>
    typeof degC === 'number' && typeof k === 'number' ? [{ row, ...linkOf(row), degC, k }] : [],
  ),
  ...glassSugarRows.flatMap((row) =>
    row.k_GordonTaylor === null
      ? []
      : [{ row, food: row.food, printed: row.sugar, degC: row.Tg_degC, k: row.k_GordonTaylor }],
  ),
];
function linkOf({ food: id, form: shape, printed }: { food: string; form?: string; printed: string }) {
  return { food: id, printed, ...(shape === undefined ? {} : { form: shape }) };
}

const part = () => optional(number('a part by mass, 0 to 1,000', { min: 0, max: 1000 }));
const schema = /* @__PURE__ */ fields({
  /** A dried fruit or a sugar: give this, `sugarParts` or `constants`. */
  food: optional(food()),
  /** How it was dried, where the food names it: `dried`, `freeze-dried`. */
  form: optional(form()),
  /** The sugars of a fruit, in parts by mass. */
  sugarParts: optional(
    fields({
      /** Parts by mass: 0 to 1,000. */
      fructose: part(),
      /** Parts by mass: 0 to 1,000. */
      glucose: part(),
      /** Parts by mass: 0 to 1,000. */
      sucrose: part(),
      /** Parts by mass: 0 to 1,000. */
      maltose: part(),
      /** Parts by mass: 0 to 1,000. */
      lactose: part(),
      /** Parts by mass: 0 to 1,000. */
      sorbitol: part(),
    }),
  ),
  /** Constants from a source of your own. */
  constants: optional(
    fields({
      /** Of the dry solids: -150 degC and above. */
      glassTransition: temperature({ min: { value: -150, unit: 'degC' } }),
      /** Gordon and Taylor's constant, on the water: above 0 to 20. */
      k: number('k above 0 and at most 20', { above: 0, max: 20 }),
    }),
  ),
  /** Wet basis: 0 to below 1, or percent. */
  moisture: moistureWord({ below: 1 }),
  /** Temperature of the store, for `texture` and `mostMoisture`: -60 to 80 degC. */
  storage: optional(temperature({ min: { value: -60, unit: 'degC' }, max: { value: 80, unit: 'degC' } })),
});
export type GlassTransitionInput = z.input<typeof schema>;

/** The glass transition of a food. */
export interface KnownGlassTransition {
  /** These tables, or you, hold the constants. */
  readonly known: true;
  /** Below it the food is a hard glass, above it a rubber that sticks, cakes and collapses. */
  readonly temperature: Quantity<'temperature'>;
  /** At the storage temperature: `glassy`, or `sticky` where the glass has gone soft. */
  readonly texture?: 'glassy' | 'sticky';
  /** Most moisture, wet basis, at which it is still a glass at the storage temperature; 0 where it never is. */
  readonly mostMoisture?: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}
/** The glass transition of a food, or that these tables hold no constants of it. */
export type GlassTransition = KnownGlassTransition | NotKnown;

/** Gordon and Taylor: Tg = (ws Tgs + k ww Tgw) / (ws + k ww), k on the water. */
const gordonTaylor = ({ degC, k }: Constants, water: number, moisture: number): number =>
  ((1 - moisture) * degC + k * moisture * water) / (1 - moisture + k * moisture);

interface SugarParts {
  readonly [sugar: string]: number | undefined;
}
interface SolidsFound extends Constants {
  readonly basis: readonly Basis[];
  readonly estimated: boolean;
}

/** A mixture's dry glass transition as the mean by mass, and its k by the correlation for sugars. */
function mixture(parts: SugarParts, given: unknown): SolidsFound {
  const used = Object.entries(parts).filter((entry): entry is [string, number] => (entry[1] ?? 0) > 0);
  const total = used.reduce((sum, [, amount]) => sum + amount, 0);
  if (total === 0) fail('MISSING', 'sugarParts', given, 'at least one sugar');
  const rowOfSugar = (sugar: string): GlassSugarRow =>
    figure(glassSugarRows.find((row) => row.sugar === sugar && row.k_GordonTaylor !== null));
  const rows = used.map(([sugar]) => rowOfSugar(sugar));
  const degC = used.reduce((sum, [sugar, amount]) => sum + (amount / total) * rowOfSugar(sugar).Tg_degC, 0);
  return {
    degC,
    k: constantOf(degC),
    basis: [
      ...rows.map((row) => basisOf(row, 'temperature', `glass transition of dry ${row.sugar}`)),
      basisOf(CORRELATION, 'temperature', 'k of sugars'),
    ],
    estimated: true,
  };
}

/** The constants of a food; nothing where these tables hold none. */
function ofFood(asked: FoundFood, shape: string | undefined): SolidsFound | undefined {
  const { rows, lender } = rowsFor(SOLIDS, asked.id, 'glass-transition');
  // a fruit that is dry is a dried fruit
  const found = ofForm(rows, shape, ['dried']);
  if (found === undefined) return undefined;
  const { degC, k, row, printed } = found;
  return {
    degC,
    k,
    basis: [basisFrom(row, 'temperature', `glass transition of ${printed}`, lender)],
    estimated: false,
  };
}

const none = ({ name }: FoundFood): NotKnown =>
  notKnown({
    code: 'no-glass-transition',
    text: `these tables hold no Gordon-Taylor constants of ${name} in this form`,
    instead: 'give the sugars of the fruit in parts by mass, for a rough estimate',
    basis: [basisOf(EQUATION, 'reason', 'Gordon-Taylor equation')],
    cautions: [],
  });

/** The constants by the one way that is given; nothing where these tables hold none of the food. */
function solidsOf(given: z.output<typeof schema>, input: GlassTransitionInput): SolidsFound | undefined {
  const { food: asked, sugarParts: sugars, constants: solids } = given;
  const ways = [asked, sugars, solids].filter((way) => way !== undefined).length;
  if (ways !== 1) fail('CONTRADICTION', 'food', input.food, 'just one of food, sugarParts and constants');
  if (asked !== undefined) return ofFood(asked, formAsked(asked, given.form, input.form));
  if (given.form !== undefined) fail('CONTRADICTION', 'form', input.form, 'a form only with a food');
  if (sugars !== undefined) return mixture(sugars, input.sugarParts);
  const own = figure(solids);
  return {
    degC: valueIn(own.glassTransition, 'degC'),
    k: own.k,
    basis: [measured('temperature', 'constants of the solids')],
    estimated: false,
  };
}

/**
 * The glass transition of dried fruit or sugar at a moisture, and whether it stays a hard glass in the store or turns
 * sticky and cakes; or, with an `iceTemperature` in place of the moisture, whether the food collapses into a sticky foam
 * in the freeze-dryer.
 *
 * Gordon-Taylor: Tg = (ws Tgs + k ww Tgw) / (ws + k ww), wet-basis shares, k on the water, Tgw = -135 degC. For a
 * fruit without its own constants give its `sugarParts`: the dry transition is their mean by mass, a rough estimate.
 * Stickiness begins some degrees above Tg; anything at or above it counts as sticky here.
 *
 * In the freeze-dryer the ice front must stay below the collapse temperature. Sugary juices collapse at -41 to -48 degC,
 * so they dry only under a deep vacuum, or when thickened or mixed with less sugary pulp. A food that these tables do not
 * hold may be compared with liquid foods in general (`fruit juice`), -60 to -5 degC. Sources: the studies and tables named
 * in `basis`.
 *
 * @returns `temperature` in degC; with an `iceTemperature` `collapses` and the printed temperature or range; or
 *   `known: false` for a food without a figure
 * @throws StillroomError UNKNOWN_NAME; CONTRADICTION unless you give just one of food, sugarParts and constants
 *
 * @example
 * ```ts
 * import { glassTransition } from 'stillroom/drying';
 *
 * const kiwi = glassTransition({ food: 'kiwifruit', moisture: '2 %', storage: '70 degF' });
 * kiwi.known && kiwi.temperature.value; // ≈ 24.4
 * kiwi.known && kiwi.texture; // => 'glassy'
 * const juice = glassTransition({ food: 'grape juice', iceTemperature: '-30 degC' });
 * juice.known && juice.collapses; // => 'yes'
 * ```
 */
export function glassTransition(input: GlassTransitionInput): GlassTransition;
export function glassTransition(input: FreezeDryCollapseInput): FreezeDryCollapse;
export function glassTransition(
  input: GlassTransitionInput | FreezeDryCollapseInput,
): GlassTransition | FreezeDryCollapse {
  const ice: unknown = (input as Partial<FreezeDryCollapseInput> | null | undefined)?.iceTemperature;
  return ice === undefined
    ? inStore(input as GlassTransitionInput)
    : freezeDryCollapse(input as FreezeDryCollapseInput);
}

function inStore(input: GlassTransitionInput): GlassTransition {
  const given = readInput(schema, input);
  const found = solidsOf(given, input);
  if (found === undefined) return answer(none(figure(given.food)));
  const { degC, k } = found;
  const water = numberOf(WATER);
  const transition = gordonTaylor(found, water, given.moisture);
  const basis = [
    basisOf(EQUATION, 'temperature', 'Gordon-Taylor equation'),
    basisOf(WATER, 'temperature', 'glass transition of water'),
    ...found.basis,
  ];
  const store = given.storage === undefined ? undefined : valueIn(given.storage, 'degC');
  return answer({
    known: true,
    temperature: { value: transition, unit: 'degC' },
    ...(store === undefined
      ? {}
      : {
          texture: transition > store ? 'glassy' : 'sticky',
          // the equation solved for the moisture at which Tg is the store's temperature
          mostMoisture: store >= degC ? 0 : (degC - store) / (degC - store + k * (store - water)),
        }),
    basis,
    cautions: [
      caution('powder-cakes'),
      ...(found.estimated ? [caution('estimate')] : []),
      ...(basis.some(({ kind }) => kind === 'recalled') ? [caution('recalled')] : []),
    ],
  });
}
