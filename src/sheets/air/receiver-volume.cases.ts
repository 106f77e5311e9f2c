import type { SheetCase } from '../sheet-case.ts';

const psi = 6894.757293;
const cubicFoot = 0.0283168466;
const cfm = (0.0004719474432 * 14.7 * psi) / 1e5;

export const receiverVolumeCases: readonly SheetCase[] = [
  {
    name: 'five minutes of 350 cfm against 250, then rest: the 183.75 ft3 of the worked example',
    source: {
      title: 'Sizing of air receivers, public document',
      place: 'worked example, draw-down, as a profile of minutes',
      mark: 'read',
    },
    inputs: {
      demands: [350, 350, 350, 350, 350, 0, 100].map((flow) => flow * cfm),
      interval: 60,
      supply: 250 * cfm,
      pattern: 'once',
      high: 100 * psi,
      low: 60 * psi,
      atmosphere: 14.7 * psi,
    },
    outputs: { volume: 183.75 * cubicFoot, deficit: 500 * 60 * cfm, peakDemand: 350 * cfm },
    tolerance: { relative: 1e-3, reason: 'as the reference states it' },
    notes: ['CAUTION_COMPRESSED_AIR'],
  },
  {
    name: 'a pattern across its own end, by hand: 20 L/s for 2 s in 5 from 10 L/s takes 20 L, 10 L of 1 bar a bar',
    source: {
      title: 'hand calculation of one burst a cycle',
      place: 'worked apart from this program',
      mark: 'computed',
    },
    inputs: {
      demands: [0.02, 0, 0, 0, 0.02],
      interval: 1,
      supply: 0.01,
      high: 8e5,
      low: 6e5,
    },
    outputs: { volume: 0.01, deficit: 0.02, meanDemand: 0.008 },
    tolerance: { relative: 1e-9, reason: 'exact but for rounding' },
  },
];
