import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { type FoundFood, food, form } from '../../foods/fields';
import { formName } from '../../foods/tables';
import { fields, optional, readInput } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { type NotKnown, notKnown } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { temperature } from '../../words/temperature';
import { basisFrom } from '../basis';
import { caution } from '../cautions';
import { formAsked, ofForm, rowsFor } from '../pantry';
import { rowOf } from '../rows';
import { type CollapseRow, collapseRows } from './tables';

const schema = /* @__PURE__ */ fields({
  /** What is freeze-dried: `apple juice`, `tomato`, `potato`, `coffee` ... */
  food: food(),
  /** Its form, where the food names none: `juice`. */
  form: optional(form()),
  /** Of the ice front: -100 to 0 degC; see `iceVapourPressure` and `freezeDryTime`. */
  iceTemperature: temperature({ min: { value: -100, unit: 'degC' }, max: { value: 0, unit: 'degC' } }),
});
export type FreezeDryCollapseInput = z.input<typeof schema>;

/** Whether a food collapses. */
export interface KnownCollapse {
  /** These tables hold a collapse temperature of it. */
  readonly known: true;
  /** `yes` where the ice front is at or above the collapse temperature, `perhaps` within a printed range, else `no`. */
  readonly collapses: 'yes' | 'perhaps' | 'no';
  /** The printed temperature or range; the ice front must stay below. */
  readonly collapseTemperature: {
    /** The least that is printed. */
    readonly low: Quantity<'temperature'>;
    /** The most that is printed. */
    readonly high: Quantity<'temperature'>;
  };
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}
/** Whether a food collapses, or that these tables hold no figure of it. */
export type FreezeDryCollapse = KnownCollapse | NotKnown;

/** The range of all liquid foods. */
const LIQUIDS = rowOf(collapseRows, 'food-liquids');

function none({ name }: FoundFood, rows: readonly CollapseRow[]): NotKnown {
  const forms = rows.flatMap((row) => (row.form === undefined ? [] : [formName(row.form)]));
  const [low, high] = LIQUIDS.Tc_degC;
  return notKnown({
    code: 'no-collapse-temperature',
    text:
      forms.length === 0
        ? `these tables hold no collapse temperature of ${name}`
        : `these tables hold the collapse temperature of ${name} only as ${forms.join(', ')}`,
    instead: [
      ...forms.map((each) => ({ text: `ask for ${name} as ${each}`, food: name, form: each })),
      { text: `compare with liquid foods in general, ${low} to ${high} degC`, food: 'fruit juice' },
    ],
    basis: [basisOf(LIQUIDS, 'instead', 'range of liquid foods')],
    cautions: [caution('keep-below-collapse')],
  });
}

/**
 * Internal: `glassTransition` answers it. Whether a food collapses into a sticky foam at the temperature of its ice front in the freeze-dryer;
 * `glassTransition` says whether the dry food stays hard in the store.
 *
 * The ice front must stay below the collapse temperature. Sugary juices collapse at -41 to -48 degC, so they dry only
 * under a deep vacuum, or when thickened or mixed with less sugary pulp. A food that these tables do not hold may be
 * compared with liquid foods in general (`fruit juice`), -60 to -5 degC. Sources: chapter on freeze-drying of a food
 * technology text; Bellows and King, recalled.
 *
 * @returns `collapses` and the printed temperature or range, degC; or `known: false`
 * @throws StillroomError UNKNOWN_NAME with the nearest names
 */
export function freezeDryCollapse(input: FreezeDryCollapseInput): FreezeDryCollapse {
  const { food: asked, form: cut, iceTemperature } = readInput(schema, input);
  const { rows, lender } = rowsFor(collapseRows, asked.id, 'glass-transition');
  const row = ofForm(rows, formAsked(asked, cut, input.form));
  if (row === undefined) return answer(none(asked, rows));
  const ice = valueIn(iceTemperature, 'degC');
  const [low, high] = row.Tc_degC;
  return answer({
    known: true,
    collapses: ice >= high ? 'yes' : ice >= low ? 'perhaps' : 'no',
    collapseTemperature: { low: { value: low, unit: 'degC' }, high: { value: high, unit: 'degC' } },
    basis: [basisFrom(row, 'collapseTemperature', `printed for ${row.printed}`, lender)],
    cautions: [caution('keep-below-collapse'), ...(row.obtained === 'memory' ? [caution('recalled')] : [])],
  });
}
