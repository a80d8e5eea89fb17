import { allBasic, move, pivot, rewrite, settle, type Tableau } from './tableau';

export type Ended = 'optimal' | 'infeasible' | 'below' | 'unfinished';

/** A bound is kept as far as this. */
const KEPT = 1e-9;
/** What is left of a bound that nothing can mend any further is noise where it is less than this. */
const SPENT = 1e-8;
/** A reduced cost this near 0 is 0. */
const EVEN = 1e-9;
/** Smaller cells are not divided by. */
const PIVOT = 1e-8;
/** Pivots after which a tableau is written anew. */
const WORN = 600;
/** The sums of a tableau that is still good are those of its rows within this. */
const DRIFT = 1e-7;

/**
 * The dual simplex method on variables with bounds, from the basis at hand, which other bounds leave dual feasible: the
 * row that is furthest out for its length is mended, and variables on the way that have a bound on the other side jump
 * there (dual steepest edge, bound flipping; recalled).
 *
 * @param floor - ends with `below` as soon as no value above this is left
 * @param most - pivots at the most
 */
export function dualSimplex(tableau: Tableau, floor = Number.NEGATIVE_INFINITY, most = 5_000): Ended {
  let renewed = false;
  const end = tableau.pivots + most;
  for (;;) {
    if (tableau.recent > WORN) renew(tableau);
    if (bestLeft(tableau) <= floor) return 'below';
    const row = rowToMend(tableau);
    if (row >= 0 && tableau.pivots >= end) return 'unfinished';
    if (row >= 0 && (mend(tableau, row) || atItsBound(tableau, row))) continue;
    // an end is believed of a tableau that is still good only
    if (!renewed && tableau.recent > 0 && drift(tableau) > DRIFT) {
      renewed = true;
      renew(tableau);
      continue;
    }
    return row >= 0 ? 'infeasible' : 'optimal';
  }
}

/** Moves each variable that is not basic to the bound that its reduced cost is for. */
export function stand(tableau: Tableau): void {
  const { columns, free, reduced, atMax, value, min, max } = tableau;
  for (let place = 0; place < columns; place++) {
    const each = free[place] as number;
    const rate = reduced[place] as number;
    const [low, high] = [min[each] as number, max[each] as number];
    let up = atMax[each] === 1;
    if (rate > EVEN) up = true;
    else if (rate < -EVEN) up = false;
    if (up ? high === Number.POSITIVE_INFINITY : low === Number.NEGATIVE_INFINITY) up = !up;
    atMax[each] = up ? 1 : 0;
    const by = (up ? high : low) - (value[each] as number);
    if (by !== 0) move(tableau, place, by);
    value[each] = up ? high : low;
  }
}

/** Writes the tableau anew; where its basis is lost, from the start. */
function renew(tableau: Tableau): void {
  rewrite(tableau);
  const { columns, free, reduced, min, max } = tableau;
  for (let place = 0; place < columns; place++) {
    const each = free[place] as number;
    const rate = reduced[place] as number;
    if ((rate > 1e-6 && max[each] === Infinity) || (rate < -1e-6 && min[each] === -Infinity)) {
      allBasic(tableau);
      return;
    }
  }
  stand(tableau);
  settle(tableau);
}

/** No value of the objective above this is left: it falls from basis to basis. */
export function bestLeft({ columns, reduced, free, value }: Tableau): number {
  let sum = 0;
  for (let place = 0; place < columns; place++)
    sum += (reduced[place] as number) * (value[free[place] as number] as number);
  return sum;
}

/** The row whose variable is furthest out of its bounds for its length; -1 where all keep them. */
function rowToMend({ rows, basic, value, min, max, length }: Tableau): number {
  let [best, score] = [-1, 0];
  for (let row = 0; row < rows.length; row++) {
    const each = basic[row] as number;
    const own = value[each] as number;
    const out = Math.max((min[each] as number) - own, own - (max[each] as number));
    if (out <= KEPT * Math.max(1, Math.abs(own))) continue;
    const rate = (out * out) / (length[row] as number);
    if (rate > score) [best, score] = [row, rate];
  }
  return best;
}

/** Brings the variable of a row to the bound that it breaks; false where nothing can. */
function mend(tableau: Tableau, row: number): boolean {
  const { columns, cells, basic, free, value, min, max, atMax } = tableau;
  const own = basic[row] as number;
  const up = (value[own] as number) < (min[own] as number);
  const target = (up ? min[own] : max[own]) as number;
  const place = entering(tableau, row, up, Math.abs(target - (value[own] as number)));
  if (place < 0) return false;
  const by = (target - (value[own] as number)) / (cells[row * columns + place] as number);
  move(tableau, place, by);
  const entered = free[place] as number;
  pivot(tableau, row, place);
  value[own] = target;
  atMax[own] = up ? 0 : 1;
  atMax[entered] = 0;
  mendSigns(tableau);
  return true;
}

/** Whether a row that nothing can mend is out by noise only, as where all that can jump does; it is then at its bound. */
function atItsBound({ basic, value, min, max }: Tableau, row: number): boolean {
  const each = basic[row] as number;
  const own = value[each] as number;
  const bound = Math.min(Math.max(own, min[each] as number), max[each] as number);
  if (Math.abs(own - bound) > SPENT * Math.max(1, Math.abs(own))) return false;
  value[each] = bound;
  return true;
}

/** The place whose variable becomes basic; those before it jump to their other bound. -1 where all jump and it is not enough. */
function entering(tableau: Tableau, row: number, up: boolean, out: number): number {
  const { columns, cells, free, reduced, atMax, min, max } = tableau;
  const from = row * columns;
  const places: number[] = [];
  for (let place = 0; place < columns; place++) {
    const cell = cells[from + place] as number;
    if (cell < PIVOT && cell > -PIVOT) continue;
    const each = free[place] as number;
    if (min[each] === max[each]) continue;
    // up where its variable can rise and its cell is above 0, or fall and below
    if ((cell > 0 === (atMax[each] === 0)) === up) places.push(place);
  }
  let slope = out;
  while (places.length > 0) {
    let reach = Number.POSITIVE_INFINITY;
    for (const place of places) {
      const ratio = (Math.abs(reduced[place] as number) + EVEN) / Math.abs(cells[from + place] as number);
      if (ratio < reach) reach = ratio;
    }
    let [best, size, fall] = [-1, 0, 0];
    const near: number[] = [];
    for (const place of places) {
      const cell = Math.abs(cells[from + place] as number);
      if (Math.abs(reduced[place] as number) / cell > reach) continue;
      near.push(place);
      const each = free[place] as number;
      fall += cell * ((max[each] as number) - (min[each] as number));
      if (cell > size) [best, size] = [place, cell];
    }
    if (!(fall < slope)) return best;
    slope -= fall;
    for (const place of near) {
      jump(tableau, place);
      places.splice(places.indexOf(place), 1);
    }
  }
  return -1;
}

/** Moves the variable at a place to its other bound. */
function jump(tableau: Tableau, place: number): void {
  const { free, atMax, value, min, max } = tableau;
  const each = free[place] as number;
  const up = atMax[each] === 0;
  atMax[each] = up ? 1 : 0;
  const target = (up ? max[each] : min[each]) as number;
  move(tableau, place, target - (value[each] as number));
  value[each] = target;
}

/** After a pivot, a reduced cost of the wrong sign is noise, or its variable jumps. */
function mendSigns(tableau: Tableau): void {
  const { columns, free, reduced, atMax, min, max } = tableau;
  for (let place = 0; place < columns; place++) {
    const rate = reduced[place] as number;
    if (rate === 0) continue;
    const each = free[place] as number;
    if (atMax[each] === 1 ? rate > 0 : rate < 0) continue;
    if (rate < EVEN && rate > -EVEN) continue;
    const other = (atMax[each] === 1 ? min[each] : max[each]) as number;
    if (min[each] !== max[each] && Number.isFinite(other)) jump(tableau, place);
  }
}

/** How far the values are from the sums of the rows themselves. */
function drift({ columns, rows, value }: Tableau): number {
  let most = 0;
  for (let row = 0; row < rows.length; row++) {
    const { index, weight } = rows[row] as (typeof rows)[number];
    let sum = 0;
    for (let at = 0; at < index.length; at++) sum += (weight[at] as number) * (value[index[at] as number] as number);
    const off = Math.abs(sum - (value[columns + row] as number)) / Math.max(1, Math.abs(sum));
    if (off > most) most = off;
  }
  return most;
}
