import type { SheetCase } from '../sheet-case.ts';
import { twoSolutions } from './sources.ts';

const inputs = {
  volume: 0.01,
  conductance: 2e-8,
  criticalRatio: 0.3,
  start: 0,
  supply: 7e5 - 101300,
  atmosphere: 101300,
};

export const fillingTimeCases: readonly SheetCase[] = [
  {
    name: '10 L through C 2, b 0.3 from 1.013 to 6.5 bar(a) at 7 bar(a): 4.679 s, adiabatic 3.342 s',
    source: twoSolutions,
    inputs: { ...inputs, end: 6.5e5 - 101300 },
    outputs: { longest: 4.679, shortest: 3.342 },
    tolerance: { relative: 2e-3, reason: 'as the reference states it' },
    notes: ['FILL_BETWEEN', 'CAUTION_COMPRESSED_AIR'],
  },
  {
    name: 'to full equality: 6.274 s',
    source: twoSolutions,
    inputs: { ...inputs, end: 7e5 - 101300 },
    outputs: { longest: 6.274 },
    tolerance: { relative: 2e-3, reason: 'as the reference states it' },
  },
];
