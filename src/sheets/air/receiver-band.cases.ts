import type { SheetCase } from '../sheet-case.ts';

const psi = 6894.757293;
const cubicFoot = 0.0283168466;
/** Free air at 14.7 psia, in normal air of the same temperature. */
const cfm = (0.0004719474432 * 14.7 * psi) / 1e5;

export const receiverBandCases: readonly SheetCase[] = [
  {
    name: '350 cfm out and 250 in for 5 min from 100 to 60 psig: 183.75 ft3, 1374.5 US gal',
    source: {
      title: 'Sizing of air receivers, public document',
      place: 'worked example, draw-down',
      mark: 'read',
    },
    inputs: {
      time: 300,
      demand: 350 * cfm,
      supply: 250 * cfm,
      high: 100 * psi,
      low: 60 * psi,
      atmosphere: 14.7 * psi,
    },
    outputs: { volume: 183.75 * cubicFoot },
    tolerance: { relative: 1e-3, reason: 'as the reference states it' },
    notes: ['RECEIVER_DROP_TO_MACHINE', 'RECEIVER_RULES', 'CAUTION_COMPRESSED_AIR'],
  },
];
