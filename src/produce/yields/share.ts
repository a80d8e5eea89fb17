import recipes from '../../../data/produce/recipe-yields.json';
import { fail } from '../../errors/StillroomError';
import type { Basis } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { type CatalogueRow, findProduce } from '../catalogue';
import { produceDensity } from '../weights/weights';
import { edibleFigures, edibleSpan, figuresFor } from './edible';
import { FORMS, type Form, findForm, type Preparation } from './forms';
import { printedNeed } from './printed';
import { mapSpan, type Span, tidy, workedOut } from './span';

export interface RecipeRow extends Sourced {
  readonly product: string;
  readonly batch: Readonly<Record<string, number>>;
  readonly jars: readonly [number, number];
  readonly jar: 'quart' | 'pint' | 'half-pint' | null;
  readonly reduction?: string;
}
export const recipeRows = asTable<RecipeRow>(recipes).rows;

/** One part of what is lost, as a share of the raw weight. */
/** The part that leaves the pot as steam: all others can be used. */
export const BOILED_OFF = 'water boiled off';

export interface LostPart {
  readonly what: string;
  readonly share: number;
}

/** How much of the raw weight one form leaves. */
export interface ReadyShare {
  readonly span: Span;
  /** What is taken off. */
  readonly preparation: Preparation | 'milled' | 'juiced';
  readonly lost: readonly LostPart[];
  readonly rows: readonly Sourced[];
  readonly basis: readonly Basis[];
  /** Whether water is boiled off besides. */
  readonly boiledDown: boolean;
  /** Whether another food's figure stands in. */
  readonly estimated: boolean;
}

const QUART_ML = 946.352946; // US quart, exact to the digits: 57.75 in3 of (2.54 cm)^3
const POUND_G = 453.59237; // avoirdupois pound, exact
/** Pounds in a quart of something of this density in g/mL. */
export const poundsInQuart = (gramsPerMl: number): number => (gramsPerMl * QUART_ML) / POUND_G;

/** `10% core and stem, 13% skin` as parts; the whole as one part where no shares are printed or they do not add up. */
function partsOf(off: string | undefined, lost: number): LostPart[] {
  const what = (off ?? 'trimmings').toLowerCase();
  const pieces = what.split(',').map((piece) => {
    const match = /(?:^|\s)(\d+)%/.exec(piece);
    return { what: piece.replace(/\d+%/, '').trim(), share: Number(match?.[1] ?? Number.NaN) / 100 };
  });
  const sum = pieces.reduce((total, { share }) => total + share, 0);
  return pieces.length > 1 && Math.abs(sum - lost) < 0.005
    ? pieces
    : [{ what: what.replace(/\d+% ?/g, ''), share: lost }];
}

/** What a fruit's own recipe prints of raw fruit and the sieved puree made of it: mango, 3 1/4 lb from 5 lb. */
function sievedShare(): { ratio: number; row: Sourced } {
  const row = recipeRows.find(({ batch }) => batch.mangoPuree_lb !== undefined) as RecipeRow;
  const peeled = edibleFigures(findProduce('mango'), 'peeled')[0]?.share as number;
  const { mangoPuree_lb = 0, mangoAsPurchased_lb = 1 } = row.batch;
  return { ratio: mangoPuree_lb / mangoAsPurchased_lb / peeled, row };
}

function preparationOf(produce: CatalogueRow, form: Form): Preparation {
  if (form.preparation !== undefined) return form.preparation;
  return form.class === 'whole' ? 'whole' : produce.cut;
}

/** Share of produce trimmed, cored, pitted or peeled. */
function preparedShare(produce: CatalogueRow, form: Form): ReadyShare | undefined {
  const preparation = preparationOf(produce, form);
  const { figures, borrowed } = figuresFor(produce, preparation);
  if (figures.length === 0) return undefined;
  const group = produce.ndb.length === 0 || borrowed;
  const span = edibleSpan(figures, group);
  const figure = figures.find(({ share }) => share === span.likely) ?? figures[0];
  const rows = figures.map(({ row }) => row);
  return {
    span,
    preparation,
    lost: partsOf(figure?.off ?? offBy(produce, preparation), tidy(1 - span.likely)),
    rows,
    basis: rows.map((row) => basisOf(row, `share left, ${borrowed ? 'from fruit put up whole' : preparation}`)),
    boiledDown: false,
    estimated: borrowed,
  };
}

/** What a preparation takes off, where the figure does not say. */
function offBy(produce: CatalogueRow, preparation: Preparation): string {
  if (preparation === 'with tops') return 'tops, skins and trimmings';
  if (preparation !== 'peeled') return preparation === 'pitted' ? 'pits and stems' : 'trimmings';
  if (edibleFigures(produce, 'pitted').length > 0) return 'skins and pits';
  return edibleFigures(produce, 'cored').length > 0 ? 'skins and cores' : 'skins';
}

/** Share of sauce or juice: what a printed quart weighs over the raw pounds printed for it. */
function pressedShare(produce: CatalogueRow, form: Form): ReadyShare | undefined {
  const need = printedNeed(produce, form);
  const density = produceDensity(produce, form);
  if (need === undefined || density === undefined) return undefined;
  const quart = poundsInQuart(density.gramsPerMl.likely);
  const { low, likely, high } = need.lbPerQuart;
  const ceiling = pressedCeiling(produce);
  const span = mapSpan({ low: high, likely, high: low }, (pounds) => Math.min(quart / pounds, ceiling));
  const juice = form.class === 'juice' ? undefined : produceJuice(produce);
  const boiledDown = juice !== undefined && juice > span.likely;
  const rows = [...need.rows, ...density.rows];
  return {
    span,
    preparation: form.class === 'juice' ? 'juiced' : 'milled',
    lost: boiledDown
      ? [
          { what: 'skins, seeds and cores', share: 1 - juice },
          { what: BOILED_OFF, share: juice - span.likely },
        ]
      : [{ what: form.class === 'juice' ? 'pulp, skins and seeds' : 'skins, cores and seeds', share: 1 - span.likely }],
    rows,
    basis: [
      ...need.rows.map((row) => basisOf(row, 'raw weight for a quart')),
      ...density.rows.map((row) => basisOf(row, 'weight of a quart')),
      workedOut('share left', 'weight of a quart / raw weight printed for a quart'),
    ],
    boiledDown,
    estimated: density.estimated,
  };
}

/** Sauce and juice cannot weigh more than the fruit without its stems and cores. */
function pressedCeiling(produce: CatalogueRow): number {
  const figures = (['trimmed', 'cored'] as const).flatMap((preparation) => edibleFigures(produce, preparation));
  return Math.max(...figures.map(({ share }) => share));
}

/** The likely share of juice where it is printed: what a strainer leaves before anything is boiled off. */
function produceJuice(produce: CatalogueRow): number | undefined {
  const juice = FORMS.find(({ name }) => name === 'juice') as Form;
  return produce.kind === 'fruit' ? undefined : pressedShare(produce, juice)?.span.likely;
}

/** Share of puree: the cut share, down to what a sieve leaves of it. */
function pureeShare(produce: CatalogueRow, form: Form): ReadyShare | undefined {
  const cut = preparedShare(produce, { ...form, class: 'cut' });
  if (cut === undefined) return undefined;
  const { ratio, row } = sievedShare();
  return {
    ...cut,
    span: { ...cut.span, low: cut.span.low * ratio },
    rows: [...cut.rows, row],
    basis: [...cut.basis, basisOf(row, 'what a sieve leaves of cut fruit, for the low end')],
    estimated: true,
  };
}

const known = new WeakMap<CatalogueRow, Map<string, ReadyShare | undefined>>();

/** The share of one produce in one form, worked out once; nothing where no source prints one. */
function shareOf(produce: CatalogueRow, form: Form): ReadyShare | undefined {
  const shares = known.get(produce) ?? new Map<string, ReadyShare | undefined>();
  known.set(produce, shares);
  if (!shares.has(form.name)) shares.set(form.name, workOutShare(produce, form));
  return shares.get(form.name);
}

function workOutShare(produce: CatalogueRow, form: Form): ReadyShare | undefined {
  if (form.class === 'dry') return undefined;
  if (form.class === 'juice') return pressedShare(produce, form);
  if (form.class === 'sauce') return pressedShare(produce, form) ?? pureeShare(produce, form);
  if (form.class === 'puree') return pureeShare(produce, form);
  return preparedShare(produce, form);
}

// One form for each way of preparing; the other cuts yield what slices do.
const TOLD = [
  'whole',
  'trimmed',
  'with tops',
  'cored',
  'pitted',
  'peeled',
  'slices',
  'puree',
  'sauce',
  'thick sauce',
  'juice',
];

/** The forms whose share is known for this produce, for messages. */
const formsKnown = (produce: CatalogueRow): string[] =>
  TOLD.filter((name) => shareOf(produce, findForm(name)) !== undefined);

/**
 * The share of raw produce that this form leaves.
 *
 * @throws StillroomError UNKNOWN_NAME where no source prints one, naming the forms that have
 */
export function readyShare(produce: CatalogueRow, formText: string): { form: Form; share: ReadyShare } {
  const form = findForm(formText);
  const share = shareOf(produce, form);
  if (share === undefined) {
    const told = formsKnown(produce);
    const forms = told.length === 0 ? 'none: give `measured`' : `${told.join(', ')}; or give \`measured\``;
    fail('UNKNOWN_NAME', 'form', formText, `a form with a published yield for ${produce.name}: ${forms}`);
  }
  return { form, share };
}
