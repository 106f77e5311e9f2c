import { brentMinimum } from '../brent-minimum.ts';
import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { flows, heads } from './bounds.ts';
import { epanetManual } from './sources.ts';

export interface PumpPoint {
  /** m3/s, never negative. */
  readonly flow: number;
  /** m of the pumped liquid. */
  readonly head: number;
}

/** H = A - B Q^C: with B >= 0 and C > 0 it never rises. */
export interface PumpCurve {
  /** A, m. */
  readonly shutOffHead: number;
  /** B, m/(m3/s)^C. */
  readonly factor: number;
  /** C. */
  readonly exponent: number;
  /** Root of the mean square of the head that the curve misses at the points, m. */
  readonly residual: number;
}

/** Exponents between which the curve is sought; a real centrifugal pump has 1.5 to 3. */
const least = 0.3;
const most = 20;

/** Under a litre in eleven days nothing is pumped: all points count as taken at no flow. */
const leastFlow = 1e-9;

interface Line {
  readonly A: number;
  readonly b: number;
  readonly squares: number;
}

/** Least squares of H = A - b (Q/Qmax)^C for one C; where the points rise, b = 0 and A their mean. */
const fitLine = (points: readonly PumpPoint[], greatest: number, C: number): Line => {
  const n = points.length;
  let meanX = 0;
  let meanY = 0;
  for (const { flow, head } of points) {
    meanX += (flow / greatest) ** C / n;
    meanY += head / n;
  }
  let xx = 0;
  let xy = 0;
  for (const { flow, head } of points) {
    const x = (flow / greatest) ** C - meanX;
    xx += x * x;
    xy += x * (head - meanY);
  }
  const b = xx > 0 ? Math.max(0, -xy / xx) : 0;
  const A = meanY + b * meanX;
  let squares = 0;
  for (const { flow, head } of points) squares += (A - b * (flow / greatest) ** C - head) ** 2;
  return { A, b, squares };
};

const searchExponent = (points: readonly PumpPoint[], greatest: number): number => {
  const misfit = (logC: number): number => fitLine(points, greatest, Math.exp(logC)).squares;
  // the misfit may have more than one dip: look coarsely first
  const steps = 24;
  const low = Math.log(least);
  const width = (Math.log(most) - low) / steps;
  let best = 0;
  let bestMisfit = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= steps; i++) {
    const m = misfit(low + i * width);
    if (m < bestMisfit) {
      best = i;
      bestMisfit = m;
    }
  }
  return Math.exp(
    brentMinimum(misfit, low + Math.max(0, best - 1) * width, low + Math.min(steps, best + 1) * width),
  );
};

/**
 * Curve of a centrifugal pump through its points, of a form that never rises.
 *
 * Method   H = A - B Q^C.
 *          One point: the duty-point rule, A = 4/3 H, C = 2, B = H/(3 Q^2).
 *          Two points: C = 2. Three points, one at no flow, falling: exactly,
 *          A = H0, C = ln[(H0-H2)/(H0-H1)]/ln(Q2/Q1), B = (H0-H1)/Q1^C.
 *          Else: least squares in the head; for each C a line in Q^C with B >= 0, C by a search from 0.3 to 20
 * Symbols  Q  flow  [n]  m3/s  >= 0
 *          H  head  [n]  m
 * Returns  shutOffHead A, factor B, exponent C, residual
 * Problems an empty list is a mistake of the caller and throws
 * Assumes  points at one speed, one impeller, one liquid
 * Cost     exact O(1); least squares about 60 n powers: fit once, not in a loop
 * Source   EPANET 2.2 User Manual, chapter 3 (power function; single-point rule); least squares derived
 */
export const fitPumpCurve = (points: readonly PumpPoint[]): PumpCurve => {
  const sorted = [...points].sort((a, b) => a.flow - b.flow);
  const first = sorted[0];
  if (first === undefined) throw new RangeError('a pump curve needs at least one point');
  const greatest = sorted.at(-1)!.flow;
  if (!(greatest > leastFlow)) {
    return fitted(points, sorted.reduce((sum, p) => sum + p.head, 0) / sorted.length, 0, 2);
  }
  if (sorted.length === 1) {
    return fitted(points, (4 / 3) * first.head, first.head / (3 * first.flow ** 2), 2);
  }
  if (sorted.length === 3 && first.flow === 0) {
    const near = sorted[1]!;
    const far = sorted[2]!;
    const C = Math.log((first.head - far.head) / (first.head - near.head)) / Math.log(far.flow / near.flow);
    if (first.head > near.head && near.head > far.head && C >= least && C <= most) {
      return fitted(points, first.head, (first.head - near.head) / near.flow ** C, C);
    }
  }
  const C = sorted.length === 2 ? 2 : searchExponent(sorted, greatest);
  const { A, b } = fitLine(sorted, greatest, C);
  return fitted(points, A, b / greatest ** C, C);
};

const fitted = (
  points: readonly PumpPoint[],
  shutOffHead: number,
  factor: number,
  exponent: number,
): PumpCurve => {
  let squares = 0;
  for (const { flow, head } of points) squares += (shutOffHead - factor * flow ** exponent - head) ** 2;
  return { shutOffHead, factor, exponent, residual: Math.sqrt(squares / points.length) };
};

/**
 * Head of a pump at a flow and a speed.
 *
 * Method   H = s^2 A - s^(2-C) B Q^C, written s^2 (A - B (Q/s)^C)
 * Symbols  curve       A, B, C of `fitPumpCurve`
 *          Q  flow        scalar  m3/s   backward flow is taken as none: a check valve shuts
 *          s  speedRatio  scalar  ratio  speed over the speed of the points; a pump at rest gives no head
 * Returns  head, m; negative beyond run-out
 * Assumes  affinity: one impeller, efficiency unchanged; good for a ratio of 0.7 to 1.3
 * Cost     O(1), one power
 * Source   affinity laws, DOE Fundamentals Handbook HT-03, p. 50; EPANET 2.2 User Manual, chapter 12
 */
export const pumpHead = (curve: PumpCurve, flow: number, speedRatio: number): number => {
  if (!(speedRatio > 0)) return 0;
  const forward = flow > 0 ? flow / speedRatio : 0;
  return speedRatio * speedRatio * (curve.shutOffHead - curve.factor * forward ** curve.exponent);
};

/** The points of a curve from two lists of one length. */
export const pumpPoints = (flows: readonly number[], heads: readonly number[]): PumpPoint[] =>
  flows.map((flow, i) => ({ flow, head: heads[i]! }));

/** Flow at which a curve at its own speed gives no more head, m3/s; none where the curve never reaches zero. */
export const runOutFlow = (curve: PumpCurve): number | undefined =>
  curve.factor > 0 && curve.shutOffHead >= 0
    ? (curve.shutOffHead / curve.factor) ** (1 / curve.exponent)
    : undefined;

export const pumpCurveSheet = defineSheet({
  id: 'water/pump-curve',
  version: 1,
  inputs: {
    flows: listField('volumeFlow', 'Q_i', flows),
    heads: listField('length', 'H_i', heads),
  },
  outputs: {
    shutOffHead: numberField('length', 'A'),
    factor: numberField('ratio', 'B'),
    exponent: numberField('ratio', 'C'),
    residual: numberField('length', '\\Delta H_{\\mathrm{rms}}'),
    runOutFlow: numberField('volumeFlow', 'Q_{\\max}'),
  },
  formula: [
    'H = A - B Q^C, \\quad B \\ge 0, \\quad C > 0',
    'A = H_0, \\quad C = \\frac{\\ln \\frac{H_0 - H_2}{H_0 - H_1}}{\\ln \\frac{Q_2}{Q_1}}, \\quad B = \\frac{H_0 - H_1}{Q_1^C} \\quad \\text{(three points, one at no flow)}',
    'A = \\tfrac{4}{3} H_1, \\quad C = 2, \\quad B = \\frac{H_1}{3 Q_1^2} \\quad \\text{(one duty point)}',
    '\\min_{A, B, C} \\sum_i \\left( A - B Q_i^C - H_i \\right)^2 \\quad \\text{(other points)}',
  ],
  limits: [
    { code: 'PUMP_ONE_POINT', broken: ({ flows }) => flows.length === 1 },
    { code: 'PUMP_TWO_POINTS', broken: ({ flows }) => flows.length === 2 },
    {
      code: 'PUMP_FIT_POOR',
      broken: (_, { residual, shutOffHead }) => residual > 0.02 * Math.abs(shutOffHead),
    },
    {
      code: 'PUMP_POINTS_RISE',
      broken: ({ flows, heads }) => {
        const points = pumpPoints(flows, heads).sort((a, b) => a.flow - b.flow);
        return points.some((p, i) => i > 0 && p.head > points[i - 1]!.head);
      },
    },
  ],
  sources: [epanetManual],
  check: ({ flows, heads }) => {
    const problems = listLengths({ flows, heads });
    if (problems.length > 0) return problems;
    if (runOutFlow(fitPumpCurve(pumpPoints(flows, heads))) === undefined) {
      return [{ code: 'PUMP_CURVE_FLAT', path: 'heads', given: heads }];
    }
    return [];
  },
  compute: ({ flows, heads }: { readonly flows: readonly number[]; readonly heads: readonly number[] }) => {
    const curve = fitPumpCurve(pumpPoints(flows, heads));
    return { ...curve, runOutFlow: runOutFlow(curve)! };
  },
});
