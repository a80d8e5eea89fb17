/** The published headspace of a food in a form: `headspace-scopes.json` names the rule, `headspace.json` its figures. */
import { readFood } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { isWithin } from '../foods/isWithin';
import { foodsNamed, formNamed } from '../foods/lookUpFood';
import { nameOf } from '../foods/tables';
import { reading } from '../quantity/fields';
import type { Basis } from '../sources/basis';
import { basisOf } from '../sources/table';
import { type HeadspaceScopeRow, headspaceRows, headspaceScopeRows } from './tables';

/** A food, or a form that says its food: `juice`, `pie filling`, `relish`. */
export interface AskedFood {
  /** Id of the food; absent where a form alone was named. */
  readonly id?: string;
  /** The name to answer with. */
  readonly name: string;
  /** Id of the form that the name says. */
  readonly form?: string;
}

/** A form that some rule serves without a food. */
function formAlone(given: unknown): AskedFood | undefined {
  if (typeof given !== 'string' || foodsNamed(given).length > 0) return undefined;
  const form = formNamed(given);
  const known = form !== undefined && headspaceScopeRows.some((row) => row.withoutFood === true && serves(row, form));
  return known ? { name: given, form } : undefined;
}

/** A food by any name, or a form that some rule serves without a food. */
export const foodOrForm = () => reading<string, AskedFood>((given): AskedFood => formAlone(given) ?? readFood(given));

/** Whether a row serves a form of its foods. */
const serves = ({ forms, withoutForm }: HeadspaceScopeRow, form: string | undefined): boolean =>
  form === undefined ? forms === undefined || withoutForm === true : (forms ?? []).some((own) => isWithin(form, own));

/** The row that serves a food in a form: of the food itself, of a wider food that lends it, or of any food. */
function rowFor(id: string | undefined, form: string | undefined): { row?: HeadspaceScopeRow; lender?: string } {
  const fitting = headspaceScopeRows.filter((row) => serves(row, form));
  if (id === undefined) {
    const row = fitting.find(({ withoutFood }) => withoutFood === true);
    return row === undefined ? {} : { row };
  }
  for (const each of figuresFor(id, 'headspace')) {
    const row = fitting.find(({ foods = [] }) => foods.includes(each));
    if (row !== undefined) return { row, ...(each === id ? {} : { lender: nameOf(each) }) };
  }
  const any = fitting.find(({ foods, except = [] }) => foods === undefined && !except.includes(id));
  return any === undefined ? {} : { row: any };
}

/** A headspace in inches, with where it comes from. */
export interface PublishedHeadspace {
  readonly least: number;
  readonly most: number;
  readonly basis: readonly Basis[];
}

/** The headspace of a food in a form, both by id; where several copies print it, what all of them allow. */
export function headspaceFor(id: string | undefined, form: string | undefined): PublishedHeadspace | undefined {
  const { row: served, lender } = rowFor(id, form);
  if (served === undefined) return undefined;
  const rows = headspaceRows.filter(({ rule }) => rule === served.rule);
  return {
    least: Math.max(...rows.map(({ least_in }) => least_in)),
    most: Math.min(...rows.map(({ most_in }) => most_in)),
    basis: rows.map((row) => ({
      ...basisOf(row, 'leastHeadspace', `headspace of ${row.printed}`),
      ...(lender === undefined ? {} : { food: lender }),
    })),
  };
}
