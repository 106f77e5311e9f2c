import type { SheetCase } from '../sheet-case.ts';
import { twoSolutions } from './sources.ts';

const atmosphere = 101300;
const tank = { volume: 0.01, conductance: 2e-8, criticalRatio: 0.3, atmosphere };
const machine = { volume: 0.025, conductance: 5e-8, criticalRatio: 0.3, atmosphere };

export const ventTimeCases: readonly SheetCase[] = [
  {
    name: '10 L through C 2, b 0.3 from 7 to 1.1 bar(a): 10.170 s',
    source: twoSolutions,
    inputs: { ...tank, start: 7e5 - atmosphere, end: 1.1e5 - atmosphere },
    outputs: { longest: 10.17, shortest: 10.17 / 1.4 },
    tolerance: { relative: 2e-3, reason: 'as the reference states it' },
    notes: ['VENT_NOT_PROOF', 'CAUTION_COMPRESSED_AIR'],
  },
  ...(
    [
      [1.513, 7.484],
      [1.063, 10.237],
    ] as const
  ).map(([end, longest]) => ({
    name: `a machine of 25 L through C 5 from 6.529 to ${end} bar(a): ${longest} s`,
    source: twoSolutions,
    inputs: { ...machine, start: 6.529e5 - atmosphere, end: end * 1e5 - atmosphere },
    outputs: { longest },
    tolerance: { relative: 2e-3, reason: 'as the reference states it' },
  })),
];
