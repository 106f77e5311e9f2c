/** Writes dy/dt at y into `into`. */
export type Rates = (y: Float64Array, into: Float64Array) => void;

export interface Step {
  /** Where the step ends. */
  readonly y: Float64Array;
  /** dy/dt there. */
  readonly rates: Float64Array;
  /** Takes the step from y0 with its rates over h; returns its error, each part over its scale, the greatest. */
  readonly take: (y0: Float64Array, rates0: Float64Array, h: number, scale: Float64Array) => number;
  /** What bends the step last taken beyond a cubic, each part over its scale, the greatest: large across a corner. */
  readonly bend: (scale: Float64Array) => number;
  /** One part of y at a share of the step that was taken last. */
  readonly part: (i: number, share: number) => number;
}

// Dormand and Prince (1980), order 5 with an error of order 4; the coefficients as rows of the tableau
const a21 = 1 / 5;
const [a31, a32] = [3 / 40, 9 / 40];
const [a41, a42, a43] = [44 / 45, -56 / 15, 32 / 9];
const [a51, a52, a53, a54] = [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729];
const [a61, a62, a63, a64, a65] = [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656];
const [a71, a73, a74, a75, a76] = [35 / 384, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84];
const [e1, e3, e4, e5, e6, e7] = [71 / 57600, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];
// the continuous form of order 4 of the same pair
const [d1, d3, d4, d5, d6, d7] = [
  -12715105075 / 11282082432,
  87487479700 / 32700410799,
  -10690763975 / 1880347072,
  701980252875 / 199316789632,
  -1453857185 / 822651844,
  69997945 / 29380423,
];

/**
 * One step of an ordinary differential equation, with its error and all that lies between its ends.
 *
 * Method   explicit Runge-Kutta 5(4) with continuous extension of order 4
 * Symbols  n  parts of y;  rates  dy/dt, which does not depend on t
 * Cost     6 evaluations of the rates a step; the last one starts the next step
 * Source   Dormand, Prince, A family of embedded Runge-Kutta formulae, J. Comp. Appl. Math. 6 (1980) 19 (memory);
 *          continuous extension: Hairer, Norsett, Wanner, Solving Ordinary Differential Equations I, II.6 (memory)
 */
export const dormandPrince = (n: number, rates: Rates): Step => {
  const trial = new Float64Array(n);
  const k2 = new Float64Array(n);
  const k3 = new Float64Array(n);
  const k4 = new Float64Array(n);
  const k5 = new Float64Array(n);
  const k6 = new Float64Array(n);
  const k7 = new Float64Array(n);
  const y = new Float64Array(n);
  let from: Float64Array = y;
  let k1: Float64Array = k7;
  let span = 0;
  const bendOf = (i: number): number =>
    span * (d1 * k1[i]! + d3 * k3[i]! + d4 * k4[i]! + d5 * k5[i]! + d6 * k6[i]! + d7 * k7[i]!);
  return {
    y,
    rates: k7,
    take: (y0, rates0, h, scale) => {
      from = y0;
      k1 = rates0;
      span = h;
      for (let i = 0; i < n; i++) trial[i] = y0[i]! + h * a21 * k1[i]!;
      rates(trial, k2);
      for (let i = 0; i < n; i++) trial[i] = y0[i]! + h * (a31 * k1[i]! + a32 * k2[i]!);
      rates(trial, k3);
      for (let i = 0; i < n; i++) trial[i] = y0[i]! + h * (a41 * k1[i]! + a42 * k2[i]! + a43 * k3[i]!);
      rates(trial, k4);
      for (let i = 0; i < n; i++) {
        trial[i] = y0[i]! + h * (a51 * k1[i]! + a52 * k2[i]! + a53 * k3[i]! + a54 * k4[i]!);
      }
      rates(trial, k5);
      for (let i = 0; i < n; i++) {
        trial[i] = y0[i]! + h * (a61 * k1[i]! + a62 * k2[i]! + a63 * k3[i]! + a64 * k4[i]! + a65 * k5[i]!);
      }
      rates(trial, k6);
      for (let i = 0; i < n; i++) {
        y[i] = y0[i]! + h * (a71 * k1[i]! + a73 * k3[i]! + a74 * k4[i]! + a75 * k5[i]! + a76 * k6[i]!);
      }
      rates(y, k7);
      let worst = 0;
      for (let i = 0; i < n; i++) {
        const miss = h * (e1 * k1[i]! + e3 * k3[i]! + e4 * k4[i]! + e5 * k5[i]! + e6 * k6[i]! + e7 * k7[i]!);
        const share = Math.abs(miss) / scale[i]!;
        if (!(share <= worst)) worst = share;
      }
      return worst;
    },
    bend: (scale) => {
      let worst = 0;
      // share^2 (1 - share)^2 of it counts, which is 1/16 in the middle of the step
      for (let i = 0; i < n; i++) worst = Math.max(worst, Math.abs(bendOf(i)) / (16 * scale[i]!));
      return worst;
    },
    part: (i, share) => {
      const whole = y[i]! - from[i]!;
      const first = span * k1[i]! - whole;
      const last = whole - span * k7[i]! - first;
      const rest = 1 - share;
      return from[i]! + share * (whole + rest * (first + share * (last + rest * bendOf(i))));
    },
  };
};
