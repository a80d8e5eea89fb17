import { figuresFor } from '../../foods/figuresFor';
import type { Sourced } from '../../sources/table';
import type { Preparation } from '../columns';
import { figure } from '../figures';
import { byNumber, cutOf, cutRows, isVegetable, numbersOf, servesFor } from '../forms';
import { median, type Span, spanOf, tidy } from '../span';
import { factorRows, type RefuseRow, refuseRows, trimTables } from './tables';

/** A published share of the raw weight that is left after preparation. */
export interface EdibleFigure {
  readonly row: Sourced;
  /** 0 to 1. */
  readonly share: number;
  /** The parts taken off, where the table names them. */
  readonly off?: RefuseRow['refuse'];
}

const isMemory = ({ row }: EdibleFigure): boolean => row.obtained === 'memory';

/**
 * Every published share of this food after this preparation. The order is that of trust: refuse by food number, then
 * extension, kitchen text and buying guide, then the price survey (which largely repeats the first, and whose
 * vegetables are cooked, so that only raw ones count); read figures before recalled ones.
 */
export function edibleFigures(food: string, preparation: Preparation): EdibleFigure[] {
  const foods = new Set(servesFor(food, 'yields'));
  const fits = (row: { readonly food: string; readonly preparation?: Preparation }): boolean =>
    row.preparation === preparation && foods.has(row.food);
  const refuse = byNumber(refuseRows.filter(fits), numbersOf(food, 'yields')).map((row) => ({
    row,
    share: row.ediblePct / 100,
    ...(row.refuse === undefined ? {} : { off: row.refuse }),
  }));
  const trims = trimTables.flatMap((rows) => rows.filter(fits)).map((row) => ({ row, share: row.ediblePct / 100 }));
  const factors = factorRows
    .filter((row) => row.state === 'fresh' && row.cooked === false && fits(row))
    .map((row) => ({ row, share: row.yieldFactor }));
  const figures: EdibleFigure[] = [...refuse, ...trims, ...factors];
  return [...figures.filter((each) => !isMemory(each)), ...figures.filter(isMemory)];
}

/** Fruit put up whole loses only stems and spoiled pieces: the refuse of fruit that is eaten whole. */
function wholeFigures(): EdibleFigure[] {
  const eaten = new Set(cutRows.filter(({ eatenWhole }) => eatenWhole).map(({ food }) => food));
  return refuseRows
    .filter(({ food }) => eaten.has(food))
    .map((row) => ({
      row,
      share: row.ediblePct / 100,
      off: [{ what: 'stems and spoiled fruit', pct: row.refusePct }],
    }));
}

/** Whether these tables hold anything on the yield of a food: nothing is lent to a food that they do not know. */
const isKnown = (food: string): boolean => figuresFor(food, 'yields').some((each) => cutOf(each) !== undefined);

/** What is taken off when food is put up in a form that does not say so itself. */
export function preparedFigures(
  food: string,
  preparation: Preparation,
): { readonly figures: EdibleFigure[]; readonly borrowed: boolean } {
  const own = edibleFigures(food, preparation);
  if (own.length > 0 || preparation !== 'whole' || !isKnown(food)) return { figures: own, borrowed: false };
  const trimmed = edibleFigures(food, 'trimmed');
  if (trimmed.length > 0) return { figures: trimmed, borrowed: false };
  const cut = cutOf(food);
  if (isVegetable(food)) return { figures: cut === undefined ? [] : edibleFigures(food, cut), borrowed: false };
  return { figures: wholeFigures(), borrowed: true };
}

/**
 * The share that stays, as a range: the likely end is the first figure (of a wide food, the middle one of its kinds),
 * the others the lowest and highest figure printed, at least as far away as two sources usually are; never above 1.
 */
export function edibleSpan(figures: readonly EdibleFigure[], wide: boolean): Span {
  const shares = figures.map(({ share }) => share);
  const refuse = figures.filter(({ row }) => 'refusePct' in row).map(({ share }) => share);
  const likely = wide && refuse.length > 0 ? median(refuse) : (shares[0] as number);
  const { likely: usual } = figure('yield-spread');
  const { low, high } = spanOf(likely, [...shares, tidy(likely - usual), tidy(likely + usual)]);
  return { low: Math.max(low, 0), likely, high: Math.min(high, 1) };
}
