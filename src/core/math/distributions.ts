/**
 * Student's t that a t-distributed number stays within, either side of 0, with this probability:
 * 4.303 for 0.95 and 2 degrees of freedom. Computed, good to nine digits.
 *
 * @param within Probability of staying within, above 0 and below 1.
 * @param freedom Degrees of freedom, at least 1; need not be whole.
 * @throws RangeError outside these.
 */
export function tQuantile(within: number, freedom: number): number {
  if (!(within > 0 && within < 1 && freedom >= 1))
    throw new RangeError(`tQuantile: no t for ${within} with ${freedom} degrees of freedom`);
  const outside = (t: number) => incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5);
  const peak =
    Math.exp(logGamma((freedom + 1) / 2) - logGamma(freedom / 2)) / Math.sqrt(Math.PI * freedom);
  // Newton's steps from 0: what is left outside falls ever more slowly, so none goes too far.
  let t = 0;
  for (let step = 0; step < 200; step++) {
    const density = peak * (1 + (t * t) / freedom) ** (-(freedom + 1) / 2);
    const move = (outside(t) - (1 - within)) / (2 * density);
    if (!(move > 1e-14 * t)) break;
    t += move;
  }
  return t;
}

/** Continued fraction of the incomplete beta function, by the method of Lentz. */
function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const held = (value: number) => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / held(1 - ((a + b) * x) / (a + 1));
  let result = d;
  for (let m = 1; m <= 400; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    const before = result;
    for (const term of [even, odd]) {
      d = 1 / held(1 + term * d);
      c = held(1 + term / c);
      result *= c * d;
    }
    if (Math.abs(result / before - 1) < 1e-15) break;
  }
  return result;
}

/** Share of a beta distribution with these two shapes, each above 0, that lies below x in 0 to 1. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x),
  );
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(x, a, b)) / a
    : 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/** Coefficients of Lanczos's series for the gamma function, g = 7, 9 terms; from memory. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313,
  -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
  1.5056327351493116e-7,
];

/** Natural logarithm of the gamma function, for x above 0; good to 14 digits. */
export function logGamma(x: number): number {
  const shifted = x - 1;
  const base = shifted + 7.5;
  const sum = LANCZOS.reduce(
    (total, coefficient, at) => (at === 0 ? coefficient : total + coefficient / (shifted + at)),
    0,
  );
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(base) - base + Math.log(sum);
}

/** Where the series gives way to the continued fraction. */
const FAR = 3;

/** Density of the normal distribution of mean 0 and one sigma 1. */
function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** Share of that distribution above z; a series near 0, a continued fraction in the tail. */
export function normalTail(z: number): number {
  if (z < 0) return 1 - normalTail(-z);
  return z < FAR ? 0.5 - normalDensity(z) * tailSeries(z) : normalDensity(z) / fraction(z);
}

/** Natural logarithm of that share; it does not run out of digits. */
export function logNormalTail(z: number): number {
  if (z < FAR) return Math.log(normalTail(z));
  return (-z * z) / 2 - Math.log(2 * Math.PI) / 2 - Math.log(fraction(z));
}

/** Density over tail: how steeply the logarithm of the tail falls. */
export function normalHazard(z: number): number {
  return z < FAR ? normalDensity(z) / normalTail(z) : fraction(z);
}

function tailSeries(z: number): number {
  let term = z;
  let sum = z;
  for (let k = 1; Math.abs(term) > 1e-17 * sum; k++) {
    term *= (z * z) / (2 * k + 1);
    sum += term;
  }
  return sum;
}

/** z + 1/(z + 2/(z + 3/(z + …))). */
function fraction(z: number): number {
  let value = z;
  for (let k = 60; k >= 1; k--) value = z + k / value;
  return value;
}

/** A share found, and where the true one lies 95 times in 100. */
export interface ShareInterval {
  readonly found: number;
  readonly of: number;
  readonly low: number;
  readonly high: number;
  /** With none or all the interval has one end only, and all of the 5 in 100 lie beyond it. */
  readonly ends: "two" | "one";
}

/**
 * Share of yes in some yes-or-no results with the exact interval of Clopper and Pearson. None of 8
 * leaves up to 31 %, all of 8 at least 69 %.
 *
 * @throws RangeError unless `found` is whole and within 0 to `of`, and `of` is above 0.
 * @see SOURCES["clopper-pearson-1934"]
 */
export function shareInterval(found: number, of: number): ShareInterval {
  if (!(Number.isInteger(found) && found >= 0 && found <= of && of > 0))
    throw new RangeError(`shareInterval: ${found} of ${of}`);
  const ends = found === 0 || found === of ? "one" : "two";
  const beyond = ends === "one" ? 0.05 : 0.025;
  const low =
    found === 0 ? 0 : shareWith((share) => incompleteBeta(share, found, of - found + 1), beyond);
  const high =
    found === of
      ? 1
      : 1 - shareWith((share) => incompleteBeta(share, of - found, found + 1), beyond);
  return { found, of, low, high, ends };
}

function shareWith(rising: (share: number) => number, wanted: number): number {
  let [low, high] = [0, 1];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (rising(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * A stream of even numbers in [0, 1) that is the same for the same seed: mulberry32, from memory.
 *
 * @param seed Any whole number; its lowest 32 bits count.
 */
export function seededEven(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * A stream of normal numbers, mean 0 and one sigma 1, that is the same for the same seed.
 * Even numbers two at a time into normal ones by Box and Muller; from memory.
 *
 * @param seed Any whole number; its lowest 32 bits count.
 */
export function seededNormal(seed: number): () => number {
  const even = seededEven(seed);
  return () => Math.sqrt(-2 * Math.log(1 - even())) * cosineOfTurn(even());
}

/**
 * Cosine of a share of a full turn, 0–1, by its series to 1e-16: `Math.cos` is not the same to the
 * last digit in every engine, and a stream is to be the same everywhere.
 */
function cosineOfTurn(turn: number): number {
  const half = turn > 0.5 ? 1 - turn : turn;
  const quarter = half > 0.25 ? 0.5 - half : half;
  const size =
    quarter > 0.125
      ? powerSeries(2 * Math.PI * (0.25 - quarter), 1)
      : powerSeries(2 * Math.PI * quarter, 0);
  return half > 0.25 ? -size : size;
}

/** Sine (first power 1) or cosine (first power 0) of at most an eighth of a turn [rad]. */
function powerSeries(angle: number, firstPower: 0 | 1): number {
  const square = angle * angle;
  let sum = 0;
  for (let power = 18 + firstPower; power > firstPower; power -= 2)
    sum = (-square * (1 + sum)) / (power * (power - 1));
  return (1 + sum) * (firstPower === 1 ? angle : 1);
}
