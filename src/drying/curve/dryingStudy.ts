import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { type FoundFood, food, form } from '../../foods/fields';
import { foodOf } from '../../foods/tables';
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
import { modelBasis, type StudyRow, studyRows } from './tables';

const schema = /* @__PURE__ */ fields({
  /** The food of the study. */
  food: food(),
  /** Its cut, where studies of several are known: `slices`, `cubes`. */
  form: optional(form()),
  /** Of the drying air, 0 to 120 degC, where you want the diffusivity at it. */
  temperature: optional(temperature({ min: { value: 0, unit: 'degC' }, max: { value: 120, unit: 'degC' } })),
});
export type DryingStudyInput = z.input<typeof schema>;

/** What a study found. */
export interface KnownDryingStudy {
  /** These tables hold a study, or at least the range of foods in general. */
  readonly known: true;
  /** Trade name of the food. */
  readonly food: string;
  /** What the study dried, in its words. */
  readonly printed: string;
  /** True where these tables hold no study of the food, and the figures are those of foods in general. */
  readonly isGeneral: boolean;
  /** m2/s, as printed over the temperatures of the study. */
  readonly diffusivityRange?: {
    /** The least that is printed, m2/s. */
    readonly low: number;
    /** The most that is printed, m2/s. */
    readonly high: number;
  };
  /** m2/s at the temperature asked for. */
  readonly diffusivity?: number;
  /** The model that fitted best, in words. */
  readonly bestModel?: string;
  /** How it was dried, where it was not hot air alone. */
  readonly driedBy?: string;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}
/** What a study found, or that these tables hold none for this kind of food. */
export type DryingStudy = KnownDryingStudy | NotKnown;

const ANY = rowOf(studyRows, 'any-food');
/** kJ/(mol K) */
const GAS_CONSTANT = 8.314462618e-3;

/** D at a temperature inside the study's own, by its activation energy from its coolest run on. */
function diffusivityAt(row: StudyRow, air: Quantity<'temperature'> | undefined, given: unknown): number | undefined {
  const { D_m2_per_s: ends, Ea_kJ_per_mol: energy, temperature_degC: tried } = row;
  if (air === undefined || ends === undefined || energy === undefined || tried === undefined) return undefined;
  const [coldest, hottest] = [Math.min(...tried), Math.max(...tried)];
  const degC = valueIn(air, 'degC');
  if (degC < coldest - 1e-9 || degC > hottest + 1e-9) {
    fail('OUT_OF_RANGE', 'temperature', given, `the study's own ${coldest} to ${hottest} degC`);
  }
  const inverse = 1 / valueIn(air, 'K') - 1 / (coldest + 273.15);
  return ends[0] * Math.exp((-energy / GAS_CONSTANT) * inverse);
}

/** Kinds of food whose water leaves as it does from the foods that the general range is printed for. */
const PLANTS: readonly string[] = ['fruit', 'vegetable', 'mushroom', 'herb'];

const none = ({ name }: FoundFood): NotKnown =>
  notKnown({
    code: 'no-study',
    text: `these tables hold no drying study of ${name}`,
    instead: 'weigh a tray of your own, and fit its curve',
    basis: [basisOf(ANY, 'reason', 'diffusivities of foods in general')],
    cautions: [],
  });

/**
 * What a published thin-layer drying study found for a food: the effective moisture diffusivity and the best model. With
 * a temperature inside the study's own, and its activation energy, D = D1 exp(-Ea/R (1/T - 1/T1)) from the low end.
 */
export function dryingStudy(input: DryingStudyInput): DryingStudy {
  const { food: asked, form: cut, temperature: air } = readInput(schema, input);
  const shape = formAsked(asked, cut, input.form);
  const { rows, lender } = rowsFor(studyRows, asked.id, 'drying-rate');
  const studied = ofForm(rows, shape) ?? rows[0];
  if (studied === undefined && !PLANTS.includes(foodOf(asked.id).kind)) return answer(none(asked));
  const row = studied ?? ANY;
  const range = row.D_m2_per_s;
  const diffusivity = diffusivityAt(row, air, input.temperature);
  const line = (of: string) => basisFrom(row, of, `drying of ${row.printed}`, lender);
  const { bestModel, method: driedBy } = row;
  return answer({
    known: true,
    food: asked.name,
    printed: row.printed,
    isGeneral: studied === undefined,
    ...(range === undefined ? {} : { diffusivityRange: { low: range[0], high: range[1] } }),
    ...(diffusivity === undefined ? {} : { diffusivity }),
    ...(bestModel === undefined ? {} : { bestModel }),
    ...(driedBy === undefined ? {} : { driedBy }),
    basis: [
      line('printed'),
      ...(range === undefined ? [] : [line('diffusivityRange')]),
      ...(bestModel === undefined ? [] : [line('bestModel')]),
      ...(diffusivity === undefined ? [] : [line('diffusivity'), modelBasis('arrhenius', 'diffusivity')]),
    ],
    cautions: [caution('estimate'), ...(row.obtained === 'memory' ? [caution('recalled')] : [])],
  });
}
