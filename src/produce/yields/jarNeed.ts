/** What jars or packs of one food and form take as bought. Internal: `rawForJars` answers it. */
import type { FoundFood } from '../../foods/fields';
import { isWithin } from '../../foods/isWithin';
import { formName, nameOf } from '../../foods/tables';
import type { Basis, Caution } from '../../sources/basis';
import type { NotKnown } from '../../sources/no';
import { caution } from '../cautions';
import { figure } from '../figures';
import { type Form, formOfId } from '../forms';
import { formNeeded, inForms, inWords, missing } from '../shape';
import { basisOfRows, mapSpan, memoryCaution, type Span, workedOut } from '../span';
import { foodDensity } from '../weights/weights';
import { frozenPints } from './frozenPints';
import { printedNeed } from './printed';
import { formsWithYield, poundsInQuart, readyShare } from './share';
import type { CanningRow } from './tables';

/** By which road the answer came: printed pounds for jars, or the share left and the weight of a measure. */
export type YieldRoad = 'printed' | 'weights';

/** What every answer on jars says. */
export interface JarAnswer {
  /** These tables have figures for it. */
  readonly known: true;
  /** Its trade name. */
  readonly food: string;
  /** The name of the form. */
  readonly form: string;
  /** By which road the answer came: `printed` pounds for jars, or `weights` of a measure. */
  readonly road: YieldRoad;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}
/** What jars of one food and form take, in pounds. */
export interface Need extends JarAnswer {
  /** Pounds of raw food a quart. */
  readonly quart: Span;
  readonly guide: CanningRow | undefined;
}

function weighedQuart(food: string, form: Form): Need | undefined {
  const density = foodDensity(food, form, true);
  const ready = readyShare(food, form);
  if (density === undefined || ready === undefined) return undefined;
  const fluid = form.behaves === 'juice' || form.fills === 'mash';
  const packing = fluid ? { low: 1, likely: 1, high: 1 } : figure('packing');
  const { low, likely, high } = density.gramsPerMl;
  const { span } = ready;
  return {
    known: true,
    food: nameOf(food),
    form: formName(form.id),
    road: 'weights',
    guide: undefined,
    quart: {
      low: (poundsInQuart(low) * packing.low) / span.high,
      likely: (poundsInQuart(likely) * packing.likely) / span.likely,
      high: (poundsInQuart(high) * packing.high) / span.low,
    },
    basis: [
      ...ready.basis.map((line) => ({ ...line, of: 'raw', note: line.note ?? 'share left' })),
      ...(density.estimated ? [] : basisOfRows(food, density.rows, 'raw', 'weight of a measure')),
      workedOut('raw', 'jar volume x weight of a measure x packing / share left'),
    ],
    cautions: [
      caution('yield-is-no-process'),
      caution('yield-varies'),
      caution('estimate'),
      ...memoryCaution([...ready.rows, ...density.rows]),
    ],
  };
}

/** Packs of frozen food, by the pounds a pint that are printed. */
function frozenNeed(food: string, id: string): Need | undefined {
  const printed = frozenPints(food);
  if (printed === undefined) return undefined;
  return {
    known: true,
    food: nameOf(food),
    form: formName(id),
    road: 'printed',
    guide: undefined,
    quart: mapSpan(printed.pounds, (pounds) => pounds * 2),
    basis: basisOfRows(food, printed.rows, 'raw', 'raw weight for a frozen pint'),
    cautions: [caution('yield-varies'), ...memoryCaution(printed.rows)],
  };
}

/** The pounds for a food in a form, or the no that says which figure is missing. */
export function needFor(asked: FoundFood, named: string | undefined): Need | NotKnown {
  const id = formNeeded(asked, named);
  const form = formOfId(id);
  const food = asked.id;
  if (isWithin(id, 'frozen')) return frozenNeed(food, id) ?? noNeed(food, id, form);
  const printed = form && printedNeed(food, form);
  if (printed !== undefined) {
    return {
      known: true,
      food: nameOf(food),
      form: formName(id),
      road: 'printed',
      guide: printed.guide,
      quart: printed.lbPerQuart,
      basis: basisOfRows(food, printed.rows, 'raw', 'raw weight for a jar, load or container'),
      cautions: [caution('yield-is-no-process'), caution('yield-varies'), ...memoryCaution(printed.rows)],
    };
  }
  return (form && weighedQuart(food, form)) ?? noNeed(food, id, form);
}

/** Says which figure is missing: the pounds for a jar are not printed, and no yield or weight makes up for them. */
function noNeed(food: string, id: string, form: Form | undefined): NotKnown {
  const lacking =
    form !== undefined && readyShare(food, form) !== undefined
      ? 'a weight of a measure of it'
      : 'a share that preparing it leaves';
  const text = `These tables print no raw weight for jars of ${inWords(food, id)}, and they have not ${lacking} to work it out.`;
  const offered = formsWithYield(food).filter((each) => each !== id && foodDensity(food, formOfId(each), true));
  return missing('no raw weight', text, [
    { text: 'Weigh what goes into one jar, and multiply.' },
    ...inForms(food, offered),
  ]);
}
