import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { densities, flowCoefficients, flows, heights } from './bounds.ts';
import { laneFlow } from './lane-flow.ts';
import { derived } from './sources.ts';

/** p = A - B Q^2 with B >= 0, through what a gauge at the manifold showed. */
export interface ReadingCurve {
  /** A, Pa gauge. */
  readonly shutOffPressure: number;
  /** B, Pa/(m3/s)^2. */
  readonly factor: number;
  /** Root of the mean square of the pressure missed at the readings, Pa. */
  readonly residual: number;
}

/**
 * Curve of an unknown supply from readings at the manifold.
 *
 * Method   least squares of p = A - B Q^2 over the readings, B >= 0; one reading, or all at one flow: A their mean, B = 0
 * Symbols  Q  flows      [n]  m3/s      >= 0
 *          p  pressures  [n]  Pa gauge  as many
 * Returns  shutOffPressure A, factor B, residual
 * Problems an empty list is a mistake of the caller and throws
 * Assumes  what lies before the gauge loses with the square of the flow
 * Cost     O(n)
 * Source   linear least squares in Q^2, derived
 */
export const fitReadings = (flows: readonly number[], pressures: readonly number[]): ReadingCurve => {
  const n = flows.length;
  if (n === 0) throw new RangeError('a supply curve needs at least one reading');
  const greatest = Math.max(...flows);
  const x = flows.map((q) => (greatest > 0 ? (q / greatest) ** 2 : 0));
  const meanX = x.reduce((sum, v) => sum + v, 0) / n;
  const meanP = pressures.reduce((sum, v) => sum + v, 0) / n;
  const xx = x.reduce((sum, v) => sum + (v - meanX) ** 2, 0);
  const xp = x.reduce((sum, v, i) => sum + (v - meanX) * (pressures[i]! - meanP), 0);
  // below this the flows differ by rounding only, and a slope would be noise
  const b = xx > 1e-18 ? Math.max(0, -xp / xx) : 0;
  const A = meanP + b * meanX;
  const squares = x.reduce((sum, v, i) => sum + (A - b * v - pressures[i]!) ** 2, 0);
  return {
    shutOffPressure: A,
    factor: greatest > 0 ? b / greatest ** 2 : 0,
    residual: Math.sqrt(squares / n),
  };
};

/** Gauge pressure at the manifold of a supply known by readings: p = A - B Q |Q|, Pa. */
export const readingPressure = (curve: ReadingCurve, flow: number): number =>
  curve.shutOffPressure - curve.factor * flow * Math.abs(flow);

interface ReadingSupplyInputs {
  readonly lanesOpen: readonly number[];
  readonly pressures: readonly number[];
  readonly kv: number;
  readonly manifoldHeight: number;
  readonly outletHeight: number;
  readonly density: number;
  readonly flow: number;
}

export const readingSupplySheet = defineSheet({
  id: 'water/reading-supply',
  version: 1,
  inputs: {
    lanesOpen: listField('count', 'n_i', { least: 0, most: 1000 }),
    pressures: listField('gaugePressure', 'p_i', { least: -101325, most: 1e8 }),
    kv: numberField('flowCoefficient', 'K_v', flowCoefficients),
    manifoldHeight: numberField('length', 'z_m', { ...heights, assumed: 0 }),
    outletHeight: numberField('length', 'z_o', { ...heights, assumed: 0 }),
    density: numberField('density', '\\rho', densities),
    flow: numberField('volumeFlow', 'Q', flows),
  },
  outputs: {
    flows: listField('volumeFlow', 'Q_i'),
    shutOffPressure: numberField('gaugePressure', 'A'),
    factor: numberField('ratio', 'B'),
    residual: numberField('pressureDifference', '\\Delta p_{\\mathrm{rms}}'),
    pressure: numberField('gaugePressure', 'p'),
  },
  formula: [
    'Q_i = n_i\\, q(p_i)',
    '\\min_{A, B \\ge 0} \\sum_i \\left( A - B Q_i^2 - p_i \\right)^2',
    'p = A - B Q^2',
  ],
  limits: [
    { code: 'READING_ONE', broken: ({ lanesOpen }) => new Set(lanesOpen).size === 1 },
    {
      code: 'READING_FLAT',
      broken: ({ lanesOpen }, { factor }) => new Set(lanesOpen).size > 1 && factor === 0,
    },
    { code: 'READING_EXTRAPOLATED', broken: ({ flow }, { flows }) => flow > 1.2 * Math.max(...flows) },
    {
      code: 'READING_FIT_POOR',
      broken: (_, { residual, shutOffPressure }) => residual > 0.03 * Math.abs(shutOffPressure),
    },
  ],
  sources: [derived],
  check: ({ lanesOpen, pressures }) => listLengths({ lanesOpen, pressures }),
  compute: (i: ReadingSupplyInputs) => {
    const flows = i.lanesOpen.map(
      (n, j) => n * laneFlow(i.kv, i.pressures[j]!, i.manifoldHeight, i.outletHeight, i.density),
    );
    const curve = fitReadings(flows, i.pressures);
    return { flows, ...curve, pressure: readingPressure(curve, i.flow) };
  },
});
