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

/** What is fitted: `model(parameters)(x)` to `y`. */
export interface FitProblem {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly model: (parameters: readonly number[]) => (x: number) => number;
  readonly start: readonly number[];
}

const MOST_STEPS = 200;
/** A step this small that does not lower the sum only meets rounding noise. */
const NOISE_STEP = 1e-10;

/** A number for each point: plain loops over these are what makes a thousand points quick. */
type Column = Float64Array;

function dotFrom(from: number, one: Column, other: Column): number {
  let sum = 0;
  for (let i = from; i < one.length; i++) sum += (one[i] as number) * (other[i] as number);
  return sum;
}
const sizeOf = (column: Column): number => Math.sqrt(dotFrom(0, column, column));

/** Solves the least-squares problem A z = b in place by Householder reflections; the upper rows of A become R. */
function solveByQR(a: readonly Column[], b: Column): number[] {
  for (const [k, column] of a.entries()) {
    const norm = Math.sqrt(dotFrom(k, column, column));
    if (norm === 0) continue;
    const v = column.slice();
    v[k] = (v[k] as number) + ((v[k] as number) > 0 ? norm : -norm);
    const scale = 2 / dotFrom(k, v, v);
    for (const each of [...a.slice(k), b]) {
      const by = dotFrom(k, v, each) * scale;
      for (let i = k; i < each.length; i++) each[i] = (each[i] as number) - by * (v[i] as number);
    }
  }
  const z = a.map(() => 0);
  for (let row = a.length - 1; row >= 0; row--) {
    let sum = b[row] as number;
    for (let column = row + 1; column < a.length; column++) sum -= (a[column]?.[row] as number) * (z[column] as number);
    const pivot = a[row]?.[row] as number;
    z[row] = pivot === 0 ? 0 : sum / pivot;
  }
  return z;
}

/** A number of each point as a column. */
function columnOf(x: readonly number[], at: (x: number, i: number) => number): Column {
  const column = new Float64Array(x.length);
  for (let i = 0; i < x.length; i++) column[i] = at(x[i] as number, i);
  return column;
}

/** The slopes, a column for each parameter: central differences, a cube root of the rounding unit wide: good to some ten digits. */
const jacobian = ({ x, model }: FitProblem, parameters: readonly number[]): Column[] =>
  parameters.map((value, j) => {
    const h = Math.cbrt(Number.EPSILON) * (Math.abs(value) || 1);
    const [above, below] = [model(parameters.with(j, value + h)), model(parameters.with(j, value - h))];
    return columnOf(x, (at) => (above(at) - below(at)) / (2 * h));
  });

function residuals({ x, y, model }: FitProblem, parameters: readonly number[]): Column {
  const modeled = model(parameters);
  return columnOf(x, (at, i) => (y[i] as number) - modeled(at));
}

/** The step that a damping allows: the slopes with a row of damping for each parameter below them. */
function dampedStep(slopes: readonly Column[], errors: Column, sizes: readonly number[], root: number): number[] {
  const longer = (column: Column): Column => {
    const copy = new Float64Array(column.length + sizes.length);
    copy.set(column);
    return copy;
  };
  const rows = slopes.map((column, j) => {
    const copy = longer(column);
    copy[column.length + j] = root * (sizes[j] as number);
    return copy;
  });
  return solveByQR(rows, longer(errors));
}

/**
 * Fits the model from its start; a step that leads nowhere finite is refused and shortened. A step smaller than
 * `tolerance`, relative to the parameters, ends the search; the sum of squares is then good to its square.
 */
export function leastSquares(problem: FitProblem, tolerance = 1e-11): Fit {
  const count = problem.start.length;
  let parameters: readonly number[] = problem.start;
  let errors = residuals(problem, parameters);
  let sse = dotFrom(0, errors, errors);
  let damping = 1e-3;
  let converged = false;
  for (let step = 0; step < MOST_STEPS && !converged; step++) {
    const slopes = jacobian(problem, parameters);
    const sizes = slopes.map((column) => sizeOf(column) || 1);
    let improved = false;
    while (!improved && damping < 1e12) {
      const z = dampedStep(slopes, errors, sizes, Math.sqrt(damping));
      const trial = parameters.map((value, j) => value + (z[j] as number));
      const trialErrors = residuals(problem, trial);
      const trialSse = dotFrom(0, trialErrors, trialErrors);
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
function deviations(r: readonly Column[], variance: number): number[] {
  solveByQR(r, new Float64Array(r[0]?.length ?? 0));
  const size = r.length;
  const inverse = r.map(() => new Array<number>(size).fill(0));
  for (let column = 0; column < size; column++) {
    for (let row = column; row >= 0; row--) {
      let sum = row === column ? 1 : 0;
      for (let k = row + 1; k <= column; k++) sum -= (r[k]?.[row] as number) * (inverse[k]?.[column] as number);
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
