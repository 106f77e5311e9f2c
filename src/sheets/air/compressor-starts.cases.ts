import type { SheetCase } from '../sheet-case.ts';

const source = {
  title: 'independent script on the form that a compressor dealer’s article prints',
  place: 'V = (t1 + t2) Q p x (1 - x)/D',
  mark: 'computed',
} as const;
const inputs = { receiver: 0.5, delivery: 1 / 60, band: 1e5, allowed: 30 / 3600 };

export const compressorStartsCases: readonly SheetCase[] = [
  {
    name: '1 m3/min, a band of 1 bar and 30 starts an hour at half load: 0.500 m3',
    source,
    inputs: { ...inputs, demand: 0.5 / 60 },
    outputs: {
      loadShare: 0.5,
      starts: 30 / 3600,
      worstStarts: 30 / 3600,
      volumeNeeded: 0.5,
      volumeNeededWorst: 0.5,
    },
    tolerance: { relative: 1e-3, reason: 'as the reference states it' },
  },
  {
    name: 'the same at a load of 0.3: 0.420 m3',
    source,
    inputs: { ...inputs, demand: 0.3 / 60 },
    outputs: { loadShare: 0.3, volumeNeeded: 0.42 },
    tolerance: { relative: 1e-3, reason: 'as the reference states it' },
    notes: ['AIR_REFERENCE'],
  },
];
