/** Student's t, for the intervals of what is learned from few weighings. */

/** Lanczos's approximation (g = 7, nine terms) of the logarithm of the gamma function, for x of at least 1/2. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];
function logGamma(x: number): number {
  let sum = LANCZOS[0] as number;
  for (let i = 1; i < LANCZOS.length; i++) sum += (LANCZOS[i] as number) / (x - 1 + i);
  const t = x + 6.5;
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

/** The continued fraction of the incomplete beta function (modified Lentz), good for x below (a + 1) / (a + b + 2). */
function betaFraction(x: number, a: number, b: number): number {
  const TINY = 1e-300;
  const away = (value: number) => (Math.abs(value) < TINY ? TINY : value);
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let product = d;
  for (let m = 1; m <= 500; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / away(1 + even * d);
    c = away(1 + even / c);
    product *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / away(1 + odd * d);
    c = away(1 + odd / c);
    product *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return product;
}

function incompleteBeta(x: number, a: number, b: number): number {
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2) ? (front * betaFraction(x, a, b)) / a : 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/** How likely Student's t with these degrees of freedom is above t, for t above zero. */
export const tailOfT = (t: number, degrees: number): number =>
  0.5 * incompleteBeta(degrees / (degrees + t * t), degrees / 2, 0.5);

/** The t that leaves 5 % above it, so that -t to t is the central 90 %; by bisection. */
export function ninetyPercentT(degrees: number): number {
  let low = 1.6;
  let high = 6.4; // t of one degree of freedom is 6.314
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (tailOfT(middle, degrees) > 0.05) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
