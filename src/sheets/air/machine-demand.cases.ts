import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const cylinder = { perIndex: [5.547e-3], strokes: [2.9784e-3], durations: [0.45], period: 5 };
const hole = 42.7e-3 / 60;

export const machineDemandCases: readonly SheetCase[] = [
  {
    name: 'the cylinder of 5.547 L every 5 s: 66.56 L/min, and 397 L/min while it extends in 0.45 s',
    source: script,
    inputs: { ...cylinder, blowFlows: [], blowTimes: [], leak: 0 },
    outputs: { averageFlow: 66.56e-3 / 60, peakFlow: 397e-3 / 60, leakFlow: 0 },
    tolerance: { relative: 2e-3, reason: 'as the reference states it' },
    notes: ['DEMAND_NO_LEAK', 'DEMAND_ALL_TOGETHER', 'AIR_REFERENCE', 'CAUTION_COMPRESSED_AIR'],
  },
  {
    name: 'with a jet of 1 mm (42.7 L/min at 6 bar(g)) open for 1.5 s, a tenth leaking: 87.3 and 448 L/min',
    source: {
      title: 'hand calculation from the worked cylinder and orifice',
      place: '1.1 (66.56 + 42.7 x 1.5/5); 397.1 + 42.7 + 7.94 L/min',
      mark: 'computed',
    },
    inputs: { ...cylinder, blowFlows: [hole], blowTimes: [1.5] },
    outputs: { averageFlow: 87.31e-3 / 60, leakFlow: 7.937e-3 / 60, peakFlow: 447.7e-3 / 60 },
    tolerance: { relative: 2e-3, reason: 'as the reference states the parts' },
    notes: ['DEMAND_LEAK_SHARE'],
  },
  {
    name: 'two unlike cylinders and two jets: 1.2 (3 + 1.5 + 2 + 1)/4 and 2/0.5 + 1/0.25 + 1 + 2 + 0.375 L/s',
    source: {
      title: 'hand calculation from the definition',
      place: 'worked apart from this program',
      mark: 'computed',
    },
    inputs: {
      perIndex: [3e-3, 1.5e-3],
      strokes: [2e-3, 1e-3],
      durations: [0.5, 0.25],
      blowFlows: [1e-3, 2e-3],
      blowTimes: [2, 0.5],
      period: 4,
      leak: 0.2,
    },
    outputs: { averageFlow: 2.25e-3, leakFlow: 0.375e-3, peakFlow: 11.375e-3 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
