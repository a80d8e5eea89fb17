import { bestLeft, dualSimplex, stand } from './dualSimplex';
import { type Experience, floorOf, type Node, type Search, stepped } from './node';
import { copyOf, restore, type Tableau } from './tableau';

const WHOLE = 1e-6;
/** Times after which what a branch cost is relied on. */
const RELIED_ON = 3;
/** Columns that are tried at one node, and pivots of one trial. */
const MOST_TRIED = 8;
const MOST_PIVOTS = 15;

export const noExperience = (columns: number): Experience => ({
  loss: [new Float64Array(columns), new Float64Array(columns)],
  times: [new Float64Array(columns), new Float64Array(columns)],
});

export function learn({ loss, times }: Experience, column: number, up: boolean, lost: number, distance: number): void {
  const side = up ? 1 : 0;
  loss[side][column] = (loss[side][column] as number) + lost / Math.max(distance, WHOLE);
  times[side][column] = (times[side][column] as number) + 1;
}

/** Where to branch; or that the plan is whole; or that a trial narrowed the node or left nothing of it. */
export type Choice = { readonly column: number; readonly upFirst: boolean } | 'whole' | 'narrowed' | 'none';

interface Candidate {
  readonly column: number;
  readonly score: number;
  readonly upFirst: boolean;
}

/**
 * The column to branch on: the one by which both sides lose most, as far as that was seen before; where it was not, the
 * likeliest ones are tried.
 */
export function branchOn(search: Search, node: Node, worth: number, inTheWay: readonly number[]): Choice {
  const { tableau, valued, wholes } = search;
  let columns = [...valued, ...inTheWay].filter((column) => isSplit(tableau, column));
  if (columns.length === 0 && inTheWay.length > 0) columns = wholes.filter((column) => isSplit(tableau, column));
  if (columns.length === 0) return 'whole';
  const usual = usualLoss(search.experience);
  const ranked = columns
    .map((column) => scored(search, column, usual))
    .sort((one, other) => other.score - one.score || one.column - other.column);
  const { times } = search.experience;
  const unsure = ranked
    .filter(({ column }) => Math.min(times[0][column] as number, times[1][column] as number) < RELIED_ON)
    .slice(0, MOST_TRIED);
  if (unsure.length === 0 || ranked.length === 1) return ranked[0] as Candidate;
  const tried = tryEach(search, node, worth, unsure);
  if (typeof tried === 'string') return tried;
  const best = ranked.find(({ column }) => !unsure.some((each) => each.column === column));
  return best === undefined || tried.score >= best.score ? tried : best;
}

const isSplit = ({ value }: Tableau, column: number): boolean => {
  const own = value[column] as number;
  const part = own - Math.floor(own);
  return part > WHOLE && part < 1 - WHOLE;
};

/** What a branch costs on the whole, for those not seen yet. */
function usualLoss({ loss, times }: Experience): [down: number, up: number] {
  return [0, 1].map((side) => {
    const sum = (loss[side] as Float64Array).reduce((all, each) => all + each, 0);
    const count = (times[side] as Float64Array).reduce((all, each) => all + each, 0);
    return count === 0 ? 1 : sum / count;
  }) as [number, number];
}

function scored({ tableau, experience }: Search, column: number, usual: readonly [number, number]): Candidate {
  const { loss, times } = experience;
  const value = tableau.value[column] as number;
  const part = value - Math.floor(value);
  const rate = (side: 0 | 1): number => {
    const count = times[side][column] as number;
    return count === 0 ? usual[side] : (loss[side][column] as number) / count;
  };
  return candidate(column, part * rate(0), (1 - part) * rate(1));
}

const candidate = (column: number, down: number, up: number): Candidate => ({
  column,
  score: Math.max(down, WHOLE) * Math.max(up, WHOLE),
  upFirst: up < down,
});

/** Tries both sides of some columns with a few pivots each; the best of them, or that one side of some is empty. */
function tryEach(
  search: Search,
  node: Node,
  worth: number,
  some: readonly Candidate[],
): Candidate | 'narrowed' | 'none' {
  const { tableau } = search;
  const saved = copyOf(tableau);
  let best: Candidate | undefined;
  for (const { column } of some) {
    const value = saved.value[column] as number;
    const part = value - Math.floor(value);
    const loss = [false, true].map((up) => {
      const left = reachOfSide(search, column, up, value);
      restore(tableau, saved);
      if (left === undefined) return undefined;
      const lost = Math.max(0, worth - left);
      learn(search.experience, column, up, lost, up ? 1 - part : part);
      return lost;
    });
    const [down, up] = loss;
    if (down === undefined && up === undefined) return 'none';
    if (down === undefined || up === undefined) {
      if (down === undefined) node.min[column] = Math.ceil(value);
      else node.max[column] = Math.floor(value);
      return 'narrowed';
    }
    const each = candidate(column, down, up);
    if (best === undefined || each.score > best.score) best = each;
  }
  return best ?? 'none';
}

/** The most that one side can be worth as far as some pivots tell; nothing where it holds no better plan. */
function reachOfSide(search: Search, column: number, up: boolean, value: number): number | undefined {
  const { tableau, compact, grain } = search;
  if (up) tableau.min[column] = Math.ceil(value);
  else tableau.max[column] = Math.floor(value);
  stand(tableau);
  const floor = floorOf(search);
  const ended = dualSimplex(tableau, floor - compact.constant, MOST_PIVOTS);
  if (ended === 'infeasible' || ended === 'below') return undefined;
  const sum = bestLeft(tableau) + compact.constant;
  return stepped(grain, sum) <= floor ? undefined : sum;
}
