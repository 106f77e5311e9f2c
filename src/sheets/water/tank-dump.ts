import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores, dischargeCoefficients, flows, heads, times } from './bounds.ts';
import { drainBounds } from './drain-capacity.ts';
import { orificeConstant } from './orifice.ts';
import { drainFlow } from './part-full-pipe.ts';
import { closedForms, epanetManual } from './sources.ts';
import { drawDownTime } from './tank-draw-down.ts';

/**
 * Flow at first when a full tank is let go through its outlet, the most that the drain sees.
 *
 * Method   Q = C_d pi/4 d^2 sqrt(2 g (H + z))
 * Symbols  d    outlet                scalar  m  bore of the valve or the pipe
 *          C_d  dischargeCoefficient  ratio
 *          H    depth                 scalar  m  of the liquid
 *          z    drop                  scalar  m  from the tank's bottom to the free end of the outlet pipe
 * Returns  m3/s
 * Assumes  the outlet pipe runs full and ends free
 * Cost     O(1)
 * Source   Torricelli
 */
export const dumpPeak = (outlet: number, dischargeCoefficient: number, depth: number, drop: number): number =>
  orificeConstant(outlet, dischargeCoefficient) * Math.sqrt(depth + drop);

interface TankDumpInputs {
  readonly volume: number;
  readonly depth: number;
  readonly drop: number;
  readonly outlet: number;
  readonly dischargeCoefficient: number;
  readonly running: number;
  readonly betweenDumps: number;
  readonly drainBore: number;
  readonly slope: number;
  readonly manning: number;
  readonly filling: number;
}

export const tankDumpSheet = defineSheet({
  id: 'water/tank-dump',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V', { least: 1e-6, most: 1e5 }),
    depth: numberField('length', 'H', { least: 1e-3, most: 100 }),
    drop: numberField('length', 'z', { ...heads, most: 100, assumed: 0 }),
    outlet: numberField('length', 'd', bores),
    dischargeCoefficient: numberField('ratio', 'C_d', { ...dischargeCoefficients, assumed: 0.62 }),
    running: numberField('volumeFlow', 'Q_r', { ...flows, assumed: 0 }),
    // a shift of eight hours
    betweenDumps: numberField('time', 't_d', { ...times, least: 60, assumed: 28_800 }),
    drainBore: numberField('length', 'D', bores),
    slope: numberField('ratio', 'S', { ...drainBounds.slope, assumed: 0.01 }),
    manning: numberField('ratio', 'n', drainBounds.manning),
    filling: numberField('ratio', 'y/D', { above: 0, most: 1, assumed: 0.5 }),
  },
  outputs: {
    dumpFlow: numberField('volumeFlow', 'Q_0'),
    time: numberField('time', 't'),
    peak: numberField('volumeFlow', 'Q_p'),
    mean: numberField('volumeFlow', 'Q_m'),
    drainCapacity: numberField('volumeFlow', 'Q_D'),
    drainShare: numberField('ratio', 's'),
  },
  formula: [
    'k = C_d \\frac{\\pi d^2}{4} \\sqrt{2 g}, \\quad Q_0 = k \\sqrt{H + z}, \\quad t = \\frac{2 V}{k H} \\left( \\sqrt{H + z} - \\sqrt{z} \\right)',
    'Q_p = Q_0 + Q_r, \\quad Q_m = Q_r + \\frac{V}{t_d}, \\quad s = \\frac{Q_p}{Q_D(D, S, n, y/D)}',
  ],
  limits: [
    { code: 'DUMP_DRAIN_SHORT', broken: (_, { drainShare }) => drainShare > 1 },
    { code: 'DUMP_OFTENER_THAN_IT_RUNS', broken: ({ betweenDumps }, { time }) => time > betweenDumps },
    { code: 'DUMP_MEAN_HIDES', broken: (_, { peak, mean }) => peak > 3 * mean },
    { code: 'DUMP_AUTHORITY', broken: () => true },
  ],
  sources: [closedForms, { ...epanetManual, place: 'Manning coefficients' }],
  compute: (i: TankDumpInputs) => {
    const k = orificeConstant(i.outlet, i.dischargeCoefficient);
    const dumpFlow = dumpPeak(i.outlet, i.dischargeCoefficient, i.depth, i.drop);
    const drainCapacity = drainFlow(i.drainBore, i.slope, i.manning, i.filling);
    return {
      dumpFlow,
      time: drawDownTime(i.volume / i.depth, k, i.depth + i.drop, i.drop, 0),
      peak: dumpFlow + i.running,
      mean: i.running + i.volume / i.betweenDumps,
      drainCapacity,
      drainShare: (dumpFlow + i.running) / drainCapacity,
    };
  },
});
