import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/crackle/logGamma.ts
var LANCZOS = [
  0.9999999999998099,
  676.5203681218851,
  -1259.1392167224028,
  771.3234287776531,
  -176.6150291621406,
  12.507343278686905,
  -0.13857109526572012,
  9984369578019572e-21,
  15056327351493116e-23
];
function logGamma(x) {
  const shifted = x - 1;
  const base = shifted + 7.5;
  const sum = LANCZOS.reduce(
    (total, coefficient, at) => at === 0 ? coefficient : total + coefficient / (shifted + at),
    0
  );
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(base) - base + Math.log(sum);
}

// src/core/crackle/incompleteBeta.ts
function betaFraction(x, a, b) {
  const tiny = 1e-300;
  const held = (value) => Math.abs(value) < tiny ? tiny : value;
  let c = 1;
  let d = 1 / held(1 - (a + b) * x / (a + 1));
  let result = d;
  for (let m = 1; m <= 400; m++) {
    const even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
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
function incompleteBeta(x, a, b) {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x)
  );
  return x < (a + 1) / (a + b + 2) ? front * betaFraction(x, a, b) / a : 1 - front * betaFraction(1 - x, b, a) / b;
}

// src/core/crackle/tQuantile.ts
function tQuantile(within, freedom) {
  if (!(within > 0 && within < 1 && freedom >= 1))
    throw new RangeError(`tQuantile: no t for ${within} with ${freedom} degrees of freedom`);
  const outside = (t) => incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5);
  let [low, high] = [0, 1];
  while (outside(high) > 1 - within) high *= 2;
  for (let step = 0; step < 80; step++) {
    const middle = (low + high) / 2;
    if (outside(middle) > 1 - within) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export {
  logGamma,
  incompleteBeta,
  tQuantile
};
