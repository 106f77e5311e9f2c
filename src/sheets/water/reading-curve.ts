import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { flows as flowBounds } from './bounds.ts';
import { fitReadings, readingPressure } from './reading-supply.ts';
import { derived } from './sources.ts';

interface ReadingCurveInputs {
  readonly flows: readonly number[];
  readonly pressures: readonly number[];
  readonly flow: number;
}

/** Supply at the manifold from readings whose flows are known: the curve of `fitReadings` at a flow. */
export const readingCurveSheet = defineSheet({
  id: 'water/reading-curve',
  version: 1,
  inputs: {
    flows: listField('volumeFlow', 'Q_i', flowBounds),
    pressures: listField('gaugePressure', 'p_i', { least: -101325, most: 1e8 }),
    flow: numberField('volumeFlow', 'Q', flowBounds),
  },
  outputs: {
    shutOffPressure: numberField('gaugePressure', 'A'),
    residual: numberField('pressureDifference', '\\Delta p_{\\mathrm{rms}}'),
    pressure: numberField('gaugePressure', 'p'),
  },
  formula: ['\\min_{A, B \\ge 0} \\sum_i \\left( A - B Q_i^2 - p_i \\right)^2', 'p = A - B Q^2'],
  limits: [
    { code: 'READING_CURVE_ONE', broken: ({ flows }) => new Set(flows).size === 1 },
    { code: 'READING_CURVE_EXTRAPOLATED', broken: ({ flows, flow }) => flow > 1.2 * Math.max(...flows) },
  ],
  sources: [derived],
  check: ({ flows, pressures }) => listLengths({ flows, pressures }),
  compute: ({ flows, pressures, flow }: ReadingCurveInputs) => {
    const curve = fitReadings(flows, pressures);
    return {
      shutOffPressure: curve.shutOffPressure,
      residual: curve.residual,
      pressure: readingPressure(curve, flow),
    };
  },
});
