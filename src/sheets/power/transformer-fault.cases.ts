import type { SheetCase } from '../sheet-case.ts';
import { independentScript, pointToPointMethod } from './sources.ts';

export const transformerFaultCases: readonly SheetCase[] = [
  {
    name: 'worked example: 300 kVA, 208 V, 2 %, at 0.9 of it: 833 A, 46 273 A',
    source: pointToPointMethod,
    inputs: { apparentPower: 300e3, voltage: 208, impedance: 0.02, tolerance: 'least-0.9' },
    outputs: { ratedCurrent: 833, faultCurrent: 46273 },
    tolerance: { relative: 1e-3, reason: 'the example rounds the rated current and 1/1.8 %' },
    notes: ['CAUTION_ELECTRICAL', 'TRANSFORMER_STIFF', 'FAULT_TOLERANCE_CHOSEN'],
  },
  {
    name: '500 kVA, 480 V, 5.75 %: 10 459 A',
    source: independentScript,
    inputs: { apparentPower: 500e3, voltage: 480, impedance: 0.0575, tolerance: 'as-marked' },
    outputs: { faultCurrent: 10459 },
    tolerance: { relative: 5e-3, reason: 'also read as about 10.45 kA' },
  },
  {
    name: 'between two phases 0.866 of the three-phase fault',
    source: pointToPointMethod,
    inputs: { apparentPower: 500e3, voltage: 480, impedance: 0.0575, tolerance: 'as-marked' },
    outputs: { lineToLine: 0.866 * 10459 },
    tolerance: { relative: 1e-3, reason: 'printed to three digits' },
  },
  {
    name: 'table of transformer currents: 112.5 kVA at 480 V is 135.3 A',
    source: { title: 'S/(sqrt(3) U)', place: 'table worked by an independent script', mark: 'computed' },
    inputs: { apparentPower: 112.5e3, voltage: 480, impedance: 0.04, tolerance: 'as-marked' },
    outputs: { ratedCurrent: 135.3 },
    tolerance: { relative: 5e-4, reason: 'four digits' },
  },
];
