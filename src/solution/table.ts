/** Straight-line reading between the points of a table whose first column rises. */
export type Point = readonly [x: number, y: number];

/** y at x between the two neighboring points, or undefined outside the table. */
export function between(points: readonly Point[], x: number): number | undefined {
  const first = points[0];
  if (first !== undefined && x === first[0]) return first[1];
  for (let i = 1; i < points.length; i++) {
    const [x0, y0] = points[i - 1] as Point;
    const [x1, y1] = points[i] as Point;
    if (x >= x0 && x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return undefined;
}

/** The x between `low` and `high` at which a rising function reaches `target`, by halving to the last digits. */
export function solveRising(f: (x: number) => number, target: number, low: number, high: number): number {
  let below = low;
  let above = high;
  for (let i = 0; i < 60 && above - below > 1e-12 * Math.abs(above); i++) {
    const middle = (below + above) / 2;
    if (f(middle) < target) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}
