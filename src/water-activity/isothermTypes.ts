/** What an isotherm is, as a caller names it and as an answer shows it. Internal. */
import type { FoundFood } from '../foods/fields';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import type { IsothermModel } from './isothermModels';

/** A lower and an upper end. */
export interface Limits {
  /** The lower end. */
  readonly low: number;
  /** The upper end. */
  readonly high: number;
}

/** The constants of an equation: its `model` and each constant by its letter, as in `isothermEquations`. */
export interface IsothermParameters {
  /** Name of the equation; `GAB` when left out and M0, C and K are given, `BET` with M0 and C. */
  readonly model?: IsothermModel;
  /** The water activities that the constants were fitted over; left out, all that the equation can bear. */
  readonly waterActivityLimits?: Limits;
  /** Each constant by its letter; moisture constants in g water per g dry matter. */
  readonly [constant: string]: number | string | Limits | undefined;
}

/** A question with a food or with constants of your own; one of them, and not both. */
export type OneIsotherm<Question extends { readonly food?: unknown; readonly parameters?: unknown }> = Omit<
  Question,
  'food' | 'parameters'
> &
  (
    | {
        /** The food, by any name; its published isotherm is used. */
        readonly food: string;
        readonly parameters?: undefined;
      }
    | {
        /** The constants of an equation: `{ model: 'GAB', M0: 0.1, C: 10, K: 0.9 }`, in g water per g dry matter. */
        readonly parameters: IsothermParameters;
        readonly food?: undefined;
      }
  );

/** The isotherm that a caller names. */
export interface IsothermChoice {
  readonly food?: FoundFood | undefined;
  readonly parameters?: IsothermParameters | undefined;
  readonly set?: string | undefined;
  readonly model?: IsothermModel | undefined;
  readonly temperature?: Quantity<'temperature'> | undefined;
}

/** Which isotherm an answer was read from. */
export interface IsothermUsed {
  /** Tells the answer from one that these tables have no figure for. */
  readonly known: true;
  /** Trade name of the food. */
  readonly food?: string;
  /** Id of the published set. */
  readonly set?: string;
  /** How the food was prepared, or whose data, as published. */
  readonly state?: string;
  /** Name of the equation. */
  readonly model: IsothermModel;
  /** Temperature that the isotherm is for. */
  readonly temperature?: Quantity<'temperature'>;
  /** The water activities it may be asked about. */
  readonly waterActivityLimits: Limits;
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** An isotherm ready to be read. */
export interface Isotherm extends Omit<IsothermUsed, 'basis'> {
  /** Where it comes from, as lines for a field of the answer. */
  readonly basis: (of: string) => readonly Basis[];
  readonly moisture: (aw: number) => number;
}
