import type { Basis } from '../../sources/basis';
import { basisOf, type Sourced } from '../../sources/table';
import type { Preparation } from '../columns';
import { cutOf, type Form, formOfId, isVegetable, isWide } from '../forms';
import { basisOfRows, mapSpan, type Span, tidy, workedOut } from '../span';
import { foodDensity } from '../weights/weights';
import { edibleFigures, edibleSpan, preparedFigures } from './edible';
import { printedNeed } from './printed';
import { type SievedRow, sievedRows } from './tables';

/** One part of what is lost, as a share of the raw weight. */
export interface LostPart {
  readonly what: string;
  readonly share: number;
  /** Whether it leaves as steam, so that nothing of it can be used. */
  readonly boiledOff: boolean;
}

/** How much of the raw weight one form leaves. */
export interface ReadyShare {
  readonly span: Span;
  /** What is taken off. */
  readonly preparation: Preparation | 'milled' | 'juiced';
  readonly lost: readonly LostPart[];
  readonly rows: readonly Sourced[];
  readonly basis: readonly Basis[];
  /** Whether another food's figure stands in. */
  readonly estimated: boolean;
}

const QUART_ML = 946.352946; // US quart, exact to the digits: 57.75 in3 of (2.54 cm)^3
const POUND_G = 453.59237; // avoirdupois pound, exact
/** Pounds in a quart of something of this density in g/mL. */
export const poundsInQuart = (gramsPerMl: number): number => (gramsPerMl * QUART_ML) / POUND_G;

/** The part of a loss that leaves as steam. */
export const BOILED_OFF = 'water boiled off';
const part = (what: string, share: number): LostPart => ({ what, share, boiledOff: what === BOILED_OFF });

/** What a sieve leaves of cut fruit: the one page that prints raw fruit and the puree of it serves for every fruit. */
function sievedShare(): { readonly ofCut: number; readonly row: Sourced } {
  const [row] = sievedRows as readonly [SievedRow];
  const peeled = edibleFigures('mango', 'peeled')[0]?.share as number;
  const { sieved_lb, asPurchased_lb } = row;
  return { ofCut: sieved_lb / asPurchased_lb / peeled, row };
}

/** Share of food trimmed, cored, pitted or peeled. */
function preparedShare(food: string, form: Form): ReadyShare | undefined {
  const preparation = form.preparation ?? (form.behaves === 'whole' ? 'whole' : cutOf(food));
  if (preparation === undefined) return undefined;
  const { figures, borrowed } = preparedFigures(food, preparation);
  if (figures.length === 0) return undefined;
  const span = edibleSpan(figures, isWide(food) || borrowed);
  const likely = figures.find(({ share }) => share === span.likely) ?? figures[0];
  const off = likely?.off?.map(({ what, pct }) => part(what, pct / 100));
  // of one part the share that is lost is the likely one, whichever row names it
  const lost = off !== undefined && off.length > 1 ? off : undefined;
  const rows = figures.map(({ row }) => row);
  return {
    span,
    preparation,
    lost: lost ?? [part(off?.[0]?.what ?? offBy(food, preparation), tidy(1 - span.likely))],
    rows,
    basis: basisOfRows(
      food,
      rows,
      'yield',
      borrowed
        ? 'share left of fruit put up whole'
        : `share left, ${preparation === 'with-tops' ? 'with tops' : preparation}`,
    ),
    estimated: borrowed,
  };
}

/** What a preparation takes off, where the figure does not say. */
function offBy(food: string, preparation: Preparation): string {
  if (preparation === 'with-tops') return 'tops, skins and trimmings';
  if (preparation !== 'peeled') return preparation === 'pitted' ? 'pits and stems' : 'trimmings';
  if (edibleFigures(food, 'pitted').length > 0) return 'skins and pits';
  return edibleFigures(food, 'cored').length > 0 ? 'skins and cores' : 'skins';
}

/** Share of sauce or juice: what a printed quart weighs over the raw pounds printed for it. */
function pressedShare(food: string, form: Form): ReadyShare | undefined {
  const need = printedNeed(food, form);
  const density = foodDensity(food, form);
  if (need === undefined || density === undefined) return undefined;
  const quart = poundsInQuart(density.gramsPerMl.likely);
  const { low, likely, high } = need.lbPerQuart;
  const ceiling = pressedCeiling(food);
  const span = mapSpan({ low: high, likely, high: low }, (pounds) => Math.min(quart / pounds, ceiling));
  const juiced = form.behaves === 'juice';
  const juice = juiced ? undefined : juiceShare(food);
  const rows = [...need.rows, ...density.rows];
  return {
    span,
    preparation: juiced ? 'juiced' : 'milled',
    lost:
      juice !== undefined && juice > span.likely
        ? [part('skins, seeds and cores', 1 - juice), part(BOILED_OFF, juice - span.likely)]
        : [part(juiced ? 'pulp, skins and seeds' : 'skins, cores and seeds', 1 - span.likely)],
    rows,
    basis: [
      ...basisOfRows(food, need.rows, 'yield', 'raw weight for a quart'),
      ...basisOfRows(food, density.rows, 'yield', 'weight of a quart'),
      workedOut('yield', 'weight of a quart / raw weight printed for a quart'),
    ],
    estimated: density.estimated,
  };
}

/** Sauce and juice cannot weigh more than the fruit without its stems and cores. */
function pressedCeiling(food: string): number {
  const figures = (['trimmed', 'cored'] as const).flatMap((preparation) => edibleFigures(food, preparation));
  return Math.max(...figures.map(({ share }) => share));
}

/** The likely share of juice where it is printed: what a strainer leaves before anything is boiled off. */
function juiceShare(food: string): number | undefined {
  const juice = formOfId('juice') as Form;
  return isVegetable(food) ? pressedShare(food, juice)?.span.likely : undefined;
}

/** Share of puree: the cut share, down to what a sieve leaves of it. */
function pureeShare(food: string, form: Form): ReadyShare | undefined {
  const cut = preparedShare(food, { ...form, behaves: 'cut' });
  if (cut === undefined) return undefined;
  const { ofCut, row } = sievedShare();
  return {
    ...cut,
    span: { ...cut.span, low: cut.span.low * ofCut },
    rows: [...cut.rows, row],
    basis: [...cut.basis, { ...basisOf(row, 'yield.low', 'what a sieve leaves of cut fruit'), food: 'mango' }],
    estimated: true,
  };
}

function workOutShare(food: string, form: Form): ReadyShare | undefined {
  if (form.behaves === 'dry') return undefined;
  if (form.behaves === 'juice') return pressedShare(food, form);
  if (form.behaves === 'sauce') return pressedShare(food, form) ?? pureeShare(food, form);
  if (form.behaves === 'puree') return pureeShare(food, form);
  return preparedShare(food, form);
}

const known = new Map<string, ReadyShare | undefined>();

/** The share of a food that this form leaves, worked out once; nothing where no table prints one. */
export function readyShare(food: string, form: Form): ReadyShare | undefined {
  const key = `${food} ${form.id}`;
  if (!known.has(key)) known.set(key, workOutShare(food, form));
  return known.get(key);
}

// One form for each way of preparing; the other cuts yield what slices do.
const OFFERED = [
  'whole',
  'trimmed',
  'with-tops',
  'cored',
  'pitted',
  'peeled',
  'slices',
  'puree',
  'sauce',
  'thick-sauce',
  'juice',
];

/** The forms whose share is known for this food, to offer them. */
export const formsWithYield = (food: string): string[] =>
  OFFERED.filter((id) => readyShare(food, formOfId(id) as Form) !== undefined);
