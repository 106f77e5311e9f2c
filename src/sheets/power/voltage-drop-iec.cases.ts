import type { SheetCase } from '../sheet-case.ts';

const annex = {
  title: 'IEC 60364-5-52',
  edition: '2009',
  place: 'annex G, formula read in a public transcription, figures worked apart from this program',
  mark: 'computed',
} as const;
const run = {
  phases: 'three-phase',
  voltage: 400,
  current: 20,
  length: 30,
  area: 4e-6,
  metal: 'copper',
  powerFactor: 0.85,
};

export const voltageDropIecCases: readonly SheetCase[] = [
  {
    name: '20 A over 30 m of 4 mm2 at 400 V: 2.894 V line to neutral, 5.01 V line to line',
    source: annex,
    inputs: run,
    outputs: { toNeutral: 2.894, lineToLine: 5.01 },
    tolerance: { absolute: 5e-3, reason: 'printed to a hundredth of a volt' },
    notes: ['CAUTION_ELECTRICAL', 'DROP_IEC_TO_NEUTRAL'],
  },
  {
    name: 'the same: 1.253 % of the voltage to neutral, not 0.72 % of the line voltage',
    source: annex,
    inputs: run,
    outputs: { share: 0.01253 },
    tolerance: { absolute: 5e-6, reason: 'printed to a thousandth of a per cent' },
  },
];
