import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const inputs = { volume: 0.3, high: 8e5, low: 6e5, demand: 0.01 };

export const receiverTimeCases: readonly SheetCase[] = [
  {
    name: '300 L from 8 to 6 bar(g) at 600 L/min: 60.0 s',
    source: script,
    inputs,
    outputs: { time: 60 },
    tolerance: { relative: 1e-3, reason: 'as the reference states it' },
    notes: ['AIR_REFERENCE', 'CAUTION_COMPRESSED_AIR'],
  },
  {
    name: 'with 450 L/min flowing in: 240 s',
    source: script,
    inputs: { ...inputs, supply: 0.0075 },
    outputs: { time: 240 },
    tolerance: { relative: 1e-3, reason: 'as the reference states it' },
  },
  {
    name: 'with the receiver at 40 degC: 56.2 s',
    source: script,
    inputs: { ...inputs, temperature: 313.15 },
    outputs: { time: 56.2 },
    tolerance: { relative: 1e-3, reason: 'as the reference states it' },
  },
];
