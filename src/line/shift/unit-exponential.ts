const ln2High = 0.6931471803691238;
const ln2Low = 1.9082149292705877e-10;
const root2 = Math.SQRT2;
/** Powers of two of whole numbers of 32 bits; exact, as a table quicker than raised each time. */
const powers = Float64Array.from({ length: 32 }, (_, power) => 2 ** power);

/** Coefficients of the series for log(1 + f) in s = f/(2 + f), after FreeBSD's e_log.c. */
const l1 = 0.6666666666666735;
const l2 = 0.3999999999940942;
const l3 = 0.2857142874366239;
const l4 = 0.22222198432149784;
const l5 = 0.1818357216161805;
const l6 = 0.15313837699209373;
const l7 = 0.14798198605116586;

/**
 * Time to the next chance event of mean 1, from a whole number of 32 bits.
 *
 * Method   -log((n + 1/2)/2^32) by the four rules of arithmetic alone: Math.log may differ between engines
 * Symbols  n  whole  count  0 to 2^32 - 1
 * Returns  1.2e-10 to 22.9
 * Source   S. Moshier, Sun Microsystems: log of fdlibm (coefficients)
 */
export const unitExponential = (whole: number): number => {
  let power = 31 - Math.clz32(whole);
  // one half is below the least power of two of a whole number
  if (power < 0) return 33 * ln2High + 33 * ln2Low;
  let mantissa = (whole + 0.5) / powers[power]!;
  if (mantissa > root2) {
    mantissa *= 0.5;
    power += 1;
  }
  const f = mantissa - 1;
  const s = f / (2 + f);
  const z = s * s;
  const series = z * (l1 + z * (l2 + z * (l3 + z * (l4 + z * (l5 + z * (l6 + z * l7))))));
  const half = 0.5 * f * f;
  const k = power - 32;
  return -(k * ln2High - (half - (s * (half + series) + k * ln2Low) - f));
};
