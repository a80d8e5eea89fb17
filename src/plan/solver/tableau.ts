/** A weighted sum of columns, kept within bounds. */
export interface SparseRow {
  readonly index: Int32Array;
  readonly weight: Float64Array;
  readonly min: number;
  readonly max: number;
}

/**
 * A linear program at work, as a dense tableau: each basic variable as a weighted sum of those that are not, which stand
 * at one of their bounds. Variables 0 to `columns` - 1 are those of the program; then comes one for each row, its sum.
 * Changed by the functions of this file and by `dualSimplex` only.
 */
export interface Tableau {
  readonly columns: number;
  rows: SparseRow[];
  /** Weights of the sums, row after row. */
  cells: Float64Array;
  /** What each column adds to the objective. */
  readonly cost: Float64Array;
  /** The same of the variables that are not basic, in their places. */
  readonly reduced: Float64Array;
  /** The variable of each row, and of each place in a row. */
  basic: Int32Array;
  readonly free: Int32Array;
  /** Of each variable. */
  value: Float64Array;
  min: Float64Array;
  max: Float64Array;
  atMax: Uint8Array;
  /** The squared length of each row, for the choice of the one to mend. */
  length: Float64Array;
  /** Places of the row at work that are not 0. */
  readonly places: Int32Array;
  /** Pivots since the tableau was written from its rows, and in all. */
  recent: number;
  pivots: number;
}

/** Smaller cells are noise of doubles. */
const NOISE = 1e-12;

/** A tableau whose rows are all basic. */
export function tableauOf(
  rows: readonly SparseRow[],
  cost: Float64Array,
  min: Float64Array,
  max: Float64Array,
): Tableau {
  const columns = cost.length;
  const tableau: Tableau = {
    columns,
    rows: [],
    cells: new Float64Array(0),
    cost: cost.slice(),
    reduced: new Float64Array(columns),
    basic: new Int32Array(0),
    free: new Int32Array(columns),
    value: new Float64Array(columns),
    min: min.slice(),
    max: max.slice(),
    atMax: new Uint8Array(columns),
    length: new Float64Array(0),
    places: new Int32Array(columns),
    recent: 0,
    pivots: 0,
  };
  setRows(tableau, rows);
  return tableau;
}

/** Takes these rows instead, all basic. */
export function setRows(tableau: Tableau, rows: readonly SparseRow[]): void {
  const { columns } = tableau;
  const size = columns + rows.length;
  const [min, max] = [new Float64Array(size), new Float64Array(size)];
  min.set(tableau.min.subarray(0, columns));
  max.set(tableau.max.subarray(0, columns));
  rows.forEach((row, index) => {
    min[columns + index] = row.min;
    max[columns + index] = row.max;
  });
  Object.assign(tableau, {
    rows: [...rows],
    cells: new Float64Array(rows.length * columns),
    basic: new Int32Array(rows.length),
    length: new Float64Array(rows.length),
    value: new Float64Array(size),
    atMax: new Uint8Array(size),
    min,
    max,
  });
  allBasic(tableau);
}

/** Makes every row basic again; each column stands at the bound that its cost is for. */
export function allBasic(tableau: Tableau): void {
  fill(tableau);
  const { columns, cost, reduced, atMax } = tableau;
  for (let column = 0; column < columns; column++) {
    reduced[column] = cost[column] as number;
    atMax[column] = (cost[column] as number) > 0 ? 1 : 0;
  }
  settle(tableau);
}

/** Writes the cells of the rows themselves, all basic. */
function fill({ columns, rows, cells, basic, free, length }: Tableau): void {
  cells.fill(0);
  rows.forEach(({ index, weight }, row) => {
    basic[row] = columns + row;
    let sum = 1;
    for (let at = 0; at < index.length; at++) {
      const each = weight[at] as number;
      cells[row * columns + (index[at] as number)] = each;
      sum += each * each;
    }
    length[row] = sum;
  });
  for (let column = 0; column < columns; column++) free[column] = column;
}

/** The value of each variable that is not basic by its bound, and of the basic ones by their sums. */
export function settle({ columns, cells, rows, basic, free, value, min, max, atMax }: Tableau): void {
  for (let place = 0; place < columns; place++) {
    const each = free[place] as number;
    value[each] = (atMax[each] === 1 ? max[each] : min[each]) as number;
  }
  for (let row = 0; row < rows.length; row++) {
    let sum = 0;
    const from = row * columns;
    for (let place = 0; place < columns; place++)
      sum += (cells[from + place] as number) * (value[free[place] as number] as number);
    value[basic[row] as number] = sum;
  }
}

/** Moves the variable at a place by so much, and the basic ones with it. */
export function move({ columns, cells, rows, basic, free, value }: Tableau, place: number, by: number): void {
  const each = free[place] as number;
  value[each] = (value[each] as number) + by;
  for (let row = 0, at = place; row < rows.length; row++, at += columns) {
    const cell = cells[at] as number;
    if (cell === 0) continue;
    const own = basic[row] as number;
    value[own] = (value[own] as number) + cell * by;
  }
}

/** Lets the variable of a row and that of a place change their parts. */
export function pivot(tableau: Tableau, row: number, place: number): void {
  const { columns, cells, rows, basic, free, reduced, length, places } = tableau;
  const from = row * columns;
  const by = 1 / (cells[from + place] as number);
  let [count, own] = [0, 1];
  for (let at = 0; at < columns; at++) {
    const cell = cells[from + at] as number;
    if (cell === 0) continue;
    const next = at === place ? by : -cell * by;
    if (at !== place && next < NOISE && next > -NOISE) {
      cells[from + at] = 0;
      continue;
    }
    cells[from + at] = next;
    own += next * next;
    if (at !== place) places[count++] = at;
  }
  length[row] = own;
  for (let other = 0; other < rows.length; other++) {
    if (other === row) continue;
    const base = other * columns;
    const factor = cells[base + place] as number;
    if (factor === 0) continue;
    let sum = length[other] as number;
    for (let each = 0; each < count; each++) {
      const at = places[each] as number;
      const old = cells[base + at] as number;
      let next = old + factor * (cells[from + at] as number);
      if (next < NOISE && next > -NOISE) next = 0;
      cells[base + at] = next;
      sum += next * next - old * old;
    }
    const moved = factor * by;
    cells[base + place] = moved;
    length[other] = Math.max(1, sum + moved * moved - factor * factor);
  }
  const factor = reduced[place] as number;
  if (factor !== 0) {
    for (let each = 0; each < count; each++) {
      const at = places[each] as number;
      reduced[at] = (reduced[at] as number) + factor * (cells[from + at] as number);
    }
    reduced[place] = factor * by;
  }
  [basic[row], free[place]] = [free[place] as number, basic[row] as number];
  tableau.recent += 1;
  tableau.pivots += 1;
}

/** Writes the tableau of the same basis from its rows, without what has gathered in it of rounding. */
export function rewrite(tableau: Tableau): void {
  const { columns, rows, basic, cells, cost, reduced, free } = tableau;
  const wanted = new Uint8Array(columns + rows.length);
  for (const each of basic) wanted[each] = 1;
  fill(tableau);
  reduced.set(cost);
  for (let column = 0; column < columns; column++) {
    if (wanted[column] !== 1) continue;
    const place = free.indexOf(column);
    let [best, size] = [-1, 1e-9];
    for (let row = 0; row < rows.length; row++) {
      const cell = Math.abs(cells[row * columns + place] as number);
      if (cell > size && wanted[basic[row] as number] === 0) [best, size] = [row, cell];
    }
    if (best >= 0) pivot(tableau, best, place);
  }
  tableau.recent = 0;
  settle(tableau);
}

/** What the variables are worth in all. */
export function worthOf({ columns, cost, value }: Tableau): number {
  let sum = 0;
  for (let column = 0; column < columns; column++) sum += (cost[column] as number) * (value[column] as number);
  return sum;
}

/** A copy to come back to. */
export const copyOf = (tableau: Tableau): Tableau => ({
  ...tableau,
  cells: tableau.cells.slice(),
  reduced: tableau.reduced.slice(),
  basic: tableau.basic.slice(),
  free: tableau.free.slice(),
  value: tableau.value.slice(),
  min: tableau.min.slice(),
  max: tableau.max.slice(),
  atMax: tableau.atMax.slice(),
  length: tableau.length.slice(),
});

/** Brings a tableau back to what it was when it was copied. */
export function restore(tableau: Tableau, { pivots: _, ...copy }: Tableau): void {
  for (const part of ['cells', 'reduced', 'basic', 'free', 'value', 'min', 'max', 'atMax', 'length'] as const)
    tableau[part].set(copy[part]);
  tableau.recent = copy.recent;
}
