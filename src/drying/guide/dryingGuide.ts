import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { type FoundFood, food, form } from '../../foods/fields';
import { foodOf, nameOf } from '../../foods/tables';
import { GUIDE_DRYING_TEMPERATURE } from '../../heat/dryingHeat';
import { fields, optional, readInput } from '../../quantity/fields';
import type { Quantity, Range } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { type NotKnown, notKnown } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { basisFrom } from '../basis';
import { caution } from '../cautions';
import { usualMoisture } from '../moisture/targetMoisture';
import { dryingKind, fatRowOf, formAsked, isFatty, rowsFor, sharesForm } from '../pantry';
import { figure } from '../rows';
import {
  cutOf,
  type DryingCut,
  type DryingSteps,
  middle,
  type PrintedDrying,
  type PrintedYield,
  printedLine,
  printedYield,
  stepsOf,
  timeRange,
} from './printedDrying';
import { type GuideRow, guideRows, setting, yieldRows } from './tables';

const schema = /* @__PURE__ */ fields({
  /** The fruit or vegetable. */
  food: food(),
  /** The cut, where you want the hours for one cut: `whole`, `halves`, `slices`, `rings`, `strips`. */
  form: optional(form()),
});
export type DryingGuideInput = z.input<typeof schema>;

/** The printed guide of a food. */
export interface KnownDryingGuide extends DryingSteps, DryingCut {
  /** These tables hold a guide for it. */
  readonly known: true;
  /** Trade name of the food. */
  readonly food: string;
  /** Whether it is dried as fruit or as a vegetable. */
  readonly kind: 'fruit' | 'vegetable';
  /** How the food is readied. */
  readonly preparation: string;
  /** Of the dryer. */
  readonly temperature: Quantity<'temperature'>;
  /** From the shortest to the longest that any of the publications prints for this cut. */
  readonly hours: Range<Quantity<'time'>>;
  /** True where these tables hold no hours for this food and cut and the general figure is given. */
  readonly hoursAreGeneral: boolean;
  /** How it feels when dry. */
  readonly drynessTest: string;
  /** Moisture to reach, wet basis. */
  readonly targetMoisture: number;
  /** What fresh food gives dried, as printed. */
  readonly printedYields: readonly PrintedYield[];
  /** Each publication's own line, those that were read first. */
  readonly publications: readonly PrintedDrying[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}
/** The printed guide of a food, or why these tables hold none. */
export type DryingGuide = KnownDryingGuide | NotKnown;

const fits = (row: GuideRow, forms: readonly string[] | undefined): boolean =>
  forms === undefined || row.forms === undefined || sharesForm(row.forms, forms);

/** The rows of the cut asked for; with none asked for, those of the first row with hours, never two cuts together. */
function ofOneCut(rows: readonly GuideRow[], cut: string | undefined): readonly GuideRow[] {
  const first = rows.find((row) => row.hours !== null) ?? rows[0];
  return rows.filter((row) => fits(row, cut === undefined ? first?.forms : [cut]));
}

const MEATS: readonly string[] = ['meat', 'game', 'poultry'];

/** Why a food has no guide. */
function none({ id, name }: FoundFood): NotKnown {
  const fatty = isFatty(id);
  const meat = MEATS.includes(foodOf(id).kind);
  const [fat] = fatRowOf(id).rows;
  return notKnown({
    code: fatty ? 'too-fatty' : 'no-fruit-or-vegetable',
    text: fatty
      ? `these tables hold no drying guide for ${name}: it is too fatty, and fat does not dry`
      : `these tables hold no drying guide for ${name}, and the general one is for fruit and vegetables`,
    instead: meat
      ? [{ text: 'see jerky, which heats the meat first', food: name, form: 'jerky' }]
      : [{ text: 'keep it refrigerated or frozen', keep: 'freezer' }],
    basis: fat === undefined ? generalRows('vegetable').map((row) => basisOf(row, 'reason')) : [basisOf(fat, 'reason')],
    cautions: fatty ? [caution('fat-does-not-dry')] : [],
  });
}

const generalRows = (kind: 'fruit' | 'vegetable'): GuideRow[] => guideRows.filter((row) => row.food === kind);

/**
 * The printed drying guide for one food: how to prepare it, how hot and how long to dry it, how it feels when dry,
 * and to what moisture.
 *
 * Publications disagree about hours; `hours` runs from the shortest to the longest printed for the cut (plan with the
 * high end), and `publications` has each line by itself. They are for quality, not for safety: the dryness test
 * decides. Hours belong to a cut and a thickness: without a form they are those of the first cut printed, named in
 * `forms`. Where these tables hold nothing for the food in this cut, you get the general hours for fruit or vegetables,
 * and `hoursAreGeneral` says so. Figures of a wider food (cherry for sour cherry) say so in their basis.
 *
 * Sources: extension guides, each named in `publications` and `basis`.
 *
 * @returns the guide; `targetMoisture` on wet basis (about 0.2 for fruit, 0.1 for vegetables), `printedYields`; or
 *   `known: false` for meat, dairy, fatty food and other food that no guide is for
 * @throws StillroomError UNKNOWN_NAME with the nearest names; CONTRADICTION for two forms
 *
 * @example
 * ```ts
 * import { dryingGuide } from 'stillroom/drying';
 *
 * const guide = dryingGuide({ food: 'apples', form: 'rings' });
 * guide.known && guide.hours.high; // => { value: 12, unit: 'h' }
 * guide.known && guide.temperature; // => { value: 140, unit: 'degF' }
 * guide.known && guide.targetMoisture; // => 0.2
 * dryingGuide({ food: 'appel' }); // throws StillroomError UNKNOWN_NAME
 * ```
 */
export function dryingGuide(input: DryingGuideInput): DryingGuide {
  const { food: asked, form: cut } = readInput(schema, input);
  const shape = formAsked(asked, cut, input.form);
  const kind = dryingKind(asked.id);
  if (kind === undefined) return answer(none(asked));
  const { rows, lender } = rowsFor(guideRows, asked.id, 'drying');
  const fitting = ofOneCut(rows, shape);
  const timed = fitting.filter((row) => row.hours !== null);
  const general = generalRows(kind);
  const hoursAreGeneral = timed.length === 0;
  const hourRows = hoursAreGeneral ? general : timed;
  const hours = hourRows.map((row) => figure(row.hours));
  // the table is sorted with the rows that were read first
  const lead = figure(timed[0] ?? fitting[0] ?? rows[0] ?? general[0]);
  const moisture = usualMoisture(kind, 'targetMoisture');
  const yields = rowsFor(yieldRows, asked.id, 'dried-yields');
  const used = [...new Set([...(fitting.length === 0 ? [lead] : fitting), ...(hoursAreGeneral ? general : [])])];
  const from = (row: GuideRow) => (general.includes(row) && asked.id !== kind ? nameOf(kind) : lender);
  const basis = [
    ...hourRows.map((row) => basisFrom(row, 'hours', `printed for ${row.printed}`, from(row))),
    ...used.map((row) => basisFrom(row, 'publications[]', `printed for ${row.printed}`, from(row))),
    ...moisture.basis,
    basisOf(setting('drying-temperature'), 'temperature', 'of the dryer'),
    ...yields.rows.map((row) => basisFrom(row, 'printedYields[]', `printed for ${row.printed}`, yields.lender)),
  ];
  return answer({
    known: true,
    food: asked.name,
    kind,
    // the preparation and blanching of another cut would mislead
    preparation: (fitting.length === 0 ? undefined : lead.preparation) ?? figure(general[0]?.preparation),
    ...(hoursAreGeneral ? {} : cutOf(lead)),
    ...(fitting.length === 0 ? {} : stepsOf(lead)),
    temperature: GUIDE_DRYING_TEMPERATURE,
    hours: timeRange(
      [Math.min(...hours.map(([low]) => low)), Math.max(...hours.map(([, high]) => high))],
      'h',
      middle(figure(hours[0])),
    ),
    hoursAreGeneral,
    drynessTest: figure(used.find((row) => row.drynessTest !== null)?.drynessTest),
    targetMoisture: moisture.moisture,
    printedYields: yields.rows.map(printedYield),
    publications: used.map(printedLine),
    basis,
    cautions: [
      caution('dryness-test-decides'),
      caution('condition-dried-fruit'),
      ...(basis.some(({ kind: how }) => how === 'recalled') ? [caution('recalled')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
