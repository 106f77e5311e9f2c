import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { standardGravity } from '../standard-gravity.ts';
import { densities, flows, frequencies, heads, heights } from './bounds.ts';
import { fitPumpCurve, type PumpCurve, pumpHead, pumpPoints } from './pump-curve.ts';
import { epanetManual } from './sources.ts';

/**
 * Gauge pressure behind a pump, and behind its regulator if it has one.
 *
 * Method   p = rho g (z_t + H(Q, s));  with a regulator the lower of this and its set pressure
 * Symbols  curve              A, B, C of `fitPumpCurve`
 *          Q    flow               scalar  m3/s
 *          s    speedRatio         scalar  ratio
 *          z_t  suctionHeight      scalar  m         of the open surface drawn from, over the point of p
 *          rho  density            scalar  kg/m3
 *          p_r  regulatorPressure  scalar  Pa gauge  0 stands for none
 * Returns  gauge pressure, Pa; negative beyond run-out
 * Assumes  an ideal regulator: no droop, no loss when wide open; suction loss belongs to the run
 * Cost     O(1), one power
 * Source   `pumpHead`; hydrostatics
 */
export const pumpedPressure = (
  curve: PumpCurve,
  flow: number,
  speedRatio: number,
  suctionHeight: number,
  density: number,
  regulatorPressure: number,
): number => {
  const pressure = density * standardGravity * (suctionHeight + pumpHead(curve, flow, speedRatio));
  return regulatorPressure > 0 ? Math.min(pressure, regulatorPressure) : pressure;
};

interface PumpedSupplyInputs {
  readonly flows: readonly number[];
  readonly heads: readonly number[];
  readonly ratedFrequency: number;
  readonly frequency: number;
  readonly suctionHeight: number;
  readonly regulatorPressure: number;
  readonly density: number;
  readonly flow: number;
}

export const pumpedSupplySheet = defineSheet({
  id: 'water/pumped-supply',
  version: 1,
  inputs: {
    flows: listField('volumeFlow', 'Q_i', flows),
    heads: listField('length', 'H_i', heads),
    ratedFrequency: numberField('frequency', 'f_1', frequencies),
    frequency: numberField('frequency', 'f_2', frequencies),
    suctionHeight: numberField('length', 'z_t', { ...heights, assumed: 0 }),
    regulatorPressure: numberField('gaugePressure', 'p_r', { least: 0, most: 1e8, assumed: 0 }),
    density: numberField('density', '\\rho', densities),
    flow: numberField('volumeFlow', 'Q', flows),
  },
  outputs: {
    speedRatio: numberField('ratio', 's'),
    head: numberField('length', 'H'),
    pressure: numberField('gaugePressure', 'p'),
    residual: numberField('length', '\\Delta H_{\\mathrm{rms}}'),
  },
  formula: [
    's = \\frac{f_2}{f_1}, \\quad H = s^2 A - s^{2 - C} B Q^C',
    'p = \\min \\left( \\rho g (z_t + H),\\ p_r \\right)',
  ],
  limits: [
    { code: 'PUMP_SPEED_FAR', broken: (_, { speedRatio }) => speedRatio < 0.7 || speedRatio > 1.3 },
    { code: 'PUMP_RUN_OUT', broken: (_, { head }) => head < 0 },
    {
      code: 'PUMP_EXTRAPOLATED',
      broken: ({ flows, flow }, { speedRatio }) => flow > speedRatio * Math.max(...flows),
    },
    {
      code: 'PUMP_REGULATED',
      broken: ({ regulatorPressure }, { pressure }) =>
        regulatorPressure > 0 && pressure === regulatorPressure,
    },
    { code: 'PRESSURE_CAUTION', broken: () => true },
  ],
  sources: [epanetManual],
  check: ({ flows, heads }) => listLengths({ flows, heads }),
  compute: (i: PumpedSupplyInputs) => {
    const curve = fitPumpCurve(pumpPoints(i.flows, i.heads));
    const speedRatio = i.frequency / i.ratedFrequency;
    return {
      speedRatio,
      head: pumpHead(curve, i.flow, speedRatio),
      pressure: pumpedPressure(curve, i.flow, speedRatio, i.suctionHeight, i.density, i.regulatorPressure),
      residual: curve.residual,
    };
  },
});
