/**
 * Nonlinear least squares for a handful of parameters: Levenberg-Marquardt with Marquardt's scaling, each step solved
 * by Householder QR. Checked against the certified values of the NIST Statistical Reference Datasets.
 */

/** A fitted model. */
export interface Fit {
  readonly parameters: readonly number[];
  /** Standard deviation of each parameter; NaN-free: empty where there are no degrees of freedom. */
  readonly sd: readonly number[];
  /** Sum of squared residuals. */
  readonly sse: number;
  readonly degreesOfFreedom: number;
  /** False where the search stopped before the sum could fall no further. */
  readonly converged: boolean;
}

/** What is fitted: `model(x, parameters)` to `y`. */
export interface FitProblem {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly model: (x: number, parameters: readonly number[]) => number;
  readonly start: readonly number[];
}

const MOST_STEPS = 200;
/** A step this small that does not lower the sum only meets rounding noise. */
const NOISE_STEP = 1e-10;

/** Solves the least-squares problem A z = b in place by Householder reflections; gives z and the triangle R. */
function solveByQR(a: number[][], b: number[]): { z: number[]; r: number[][] } {
  const columns = a[0]?.length ?? 0;
  const cell = (row: number, column: number): number => a[row]?.[column] as number;
  for (let k = 0; k < columns; k++) {
    const norm = Math.hypot(...a.slice(k).map((row) => row[k] as number));
    if (norm === 0) continue;
    const alpha = cell(k, k) > 0 ? -norm : norm;
    const v = a.slice(k).map((row, i) => (row[k] as number) - (i === 0 ? alpha : 0));
    const scale = 2 / v.reduce((sum, entry) => sum + entry * entry, 0);
    for (let column = k; column <= columns; column++) {
      const at = (i: number): number => (column === columns ? (b[k + i] as number) : cell(k + i, column));
      const dot = v.reduce((sum, entry, i) => sum + entry * at(i), 0) * scale;
      v.forEach((entry, i) => {
        if (column === columns) b[k + i] = at(i) - dot * entry;
        else (a[k + i] as number[])[column] = at(i) - dot * entry;
      });
    }
  }
  const z = new Array<number>(columns).fill(0);
  for (let row = columns - 1; row >= 0; row--) {
    let sum = b[row] as number;
    for (let column = row + 1; column < columns; column++) sum -= cell(row, column) * (z[column] as number);
    z[row] = cell(row, row) === 0 ? 0 : sum / cell(row, row);
  }
  return { z, r: a.slice(0, columns) };
}

/** Central differences, a cube root of the rounding unit wide: good to some ten digits. */
function jacobian({ x, model }: FitProblem, parameters: readonly number[]): number[][] {
  const width = parameters.map((value) => Math.cbrt(Number.EPSILON) * (Math.abs(value) || 1));
  return x.map((at) =>
    parameters.map((value, j) => {
      const h = width[j] as number;
      const moved = (by: number) => model(at, parameters.with(j, value + by));
      return (moved(h) - moved(-h)) / (2 * h);
    }),
  );
}

const residuals = ({ x, y, model }: FitProblem, parameters: readonly number[]): number[] =>
  x.map((at, i) => (y[i] as number) - model(at, parameters));

const sumOfSquares = (values: readonly number[]): number => values.reduce((sum, value) => sum + value * value, 0);

/**
 * Fits the model from its start; a step that leads nowhere finite is refused and shortened. A step smaller than
 * `tolerance`, relative to the parameters, ends the search; the sum of squares is then good to its square.
 */
export function leastSquares(problem: FitProblem, tolerance = 1e-11): Fit {
  const count = problem.start.length;
  let parameters: readonly number[] = problem.start;
  let errors = residuals(problem, parameters);
  let sse = sumOfSquares(errors);
  let damping = 1e-3;
  let converged = false;
  for (let step = 0; step < MOST_STEPS && !converged; step++) {
    const slopes = jacobian(problem, parameters);
    const scale = parameters.map((_, j) => Math.hypot(...slopes.map((row) => row[j] as number)) || 1);
    let improved = false;
    while (!improved && damping < 1e12) {
      const root = Math.sqrt(damping);
      const rows = [
        ...slopes.map((row) => [...row]),
        ...scale.map((size, j) => scale.map((_, column) => (column === j ? root * size : 0))),
      ];
      const { z } = solveByQR(rows, [...errors, ...scale.map(() => 0)]);
      const trial = parameters.map((value, j) => value + (z[j] as number));
      const trialErrors = residuals(problem, trial);
      const trialSse = sumOfSquares(trialErrors);
      const largest = Math.max(...z.map((change, j) => Math.abs(change) / (Math.abs(trial[j] as number) + 1e-300)));
      if (trialSse <= sse) {
        improved = true;
        converged = largest <= tolerance || trialSse === 0;
        parameters = trial;
        errors = trialErrors;
        sse = trialSse;
        damping = Math.max(damping / 10, 1e-15);
      } else if (largest <= NOISE_STEP) break;
      else damping *= 10;
    }
    // no step lowers the sum: this is the bottom, to the last digit
    if (!improved) converged = true;
  }
  const degreesOfFreedom = problem.x.length - count;
  const sd = degreesOfFreedom > 0 ? deviations(jacobian(problem, parameters), sse / degreesOfFreedom) : [];
  return { parameters, sd, sse, degreesOfFreedom, converged };
}

/** Standard deviations of the parameters: the rows of R inverse, times the residual deviation. */
function deviations(slopes: number[][], variance: number): number[] {
  const { r } = solveByQR(
    slopes.map((row) => [...row]),
    slopes.map(() => 0),
  );
  const size = r.length;
  const inverse = r.map(() => new Array<number>(size).fill(0));
  for (let column = 0; column < size; column++) {
    for (let row = column; row >= 0; row--) {
      let sum = row === column ? 1 : 0;
      for (let k = row + 1; k <= column; k++) sum -= (r[row]?.[k] as number) * (inverse[k]?.[column] as number);
      (inverse[row] as number[])[column] = sum / (r[row]?.[row] as number);
    }
  }
  const all = inverse.map((row) => Math.sqrt(variance) * Math.hypot(...row));
  return all.every(Number.isFinite) ? all : [];
}

/** Chance that Student's t stays within +-t, for a whole number of degrees of freedom (finite trigonometric series). */
function studentWithin(t: number, degrees: number): number {
  const angle = Math.atan(t / Math.sqrt(degrees));
  const cosine = Math.cos(angle);
  const odd = degrees % 2 === 1;
  let term = odd ? cosine : 1;
  let sum = degrees === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k <= degrees - 2; k += 2) {
    term *= ((k - 1) / k) * cosine * cosine;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
}

/** The t within which Student's distribution holds this share, such as 0.9; by bisection. */
export function studentT(share: number, degrees: number): number {
  let low = 0;
  let high = 1e6;
  for (let step = 0; step < 80; step++) {
    const middle = (low + high) / 2;
    if (studentWithin(middle, degrees) < share) low = middle;
    else high = middle;
  }
  return high;
}
