/** The normal distribution to the last digits, far into its tails, where guard bands are judged. */

/**
 * The complementary error function, relative error below 1e-12 for |x| ≤ 26: a power series near zero (Abramowitz and
 * Stegun 7.1.6), a continued fraction beyond (7.1.14).
 */
export function erfc(x: number): number {
  if (x < 0) return 2 - erfc(-x);
  return x < 2 ? 1 - erfNearZero(x) : erfcInTheTail(x);
}

/** The share of a standard normal distribution that lies below z, 0 to 1. */
export function normalBelow(z: number): number {
  return erfc(-z / Math.SQRT2) / 2;
}

/** The share that lies between two places, each as many standard deviations from the middle; exact in either tail. */
export function normalBetween(from: number, to: number): number {
  if (!(from < to)) return 0;
  return from > 0 ? normalBelow(-from) - normalBelow(-to) : normalBelow(to) - normalBelow(from);
}

/** The z below which a share p of a standard normal distribution lies; −∞ at 0, ∞ at 1, absolute error below 1e-11. */
export function normalQuantile(p: number): number {
  if (!(p > 0)) return -Infinity;
  if (!(p < 1)) return Infinity;
  if (p > 0.5) return -normalQuantile(1 - p);
  let z = firstGuess(p);
  for (let round = 0; round < 4; round += 1) {
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    const step = (normalBelow(z) - p) / density;
    z -= step / (1 + (z * step) / 2);
  }
  return z;
}

function erfNearZero(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; term > sum * 1e-17; n += 1) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}

/** 1 / (x + ½/(x + 1/(x + 3⁄2/(x + …)))), from the far end forwards. */
function erfcInTheTail(x: number): number {
  let fraction = x;
  for (let n = 120; n >= 1; n -= 1) fraction = x + n / 2 / fraction;
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / fraction;
}

/** Within 4.5e-4 for p up to a half (Abramowitz and Stegun 26.2.23). */
function firstGuess(p: number): number {
  const t = Math.sqrt(-2 * Math.log(p));
  const above = 2.515517 + 0.802853 * t + 0.010328 * t * t;
  const below = 1 + 1.432788 * t + 0.189269 * t * t + 0.001308 * t ** 3;
  return above / below - t;
}
