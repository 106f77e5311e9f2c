import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const psi = 6894.757293;
const cfm = (0.0004719474432 * 14.7 * psi) / 1e5;
const inputs = (before: number, after: number) => ({
  volume: 1,
  before: before * psi,
  after: after * psi,
  atmosphere: 14.7 * psi,
  time: 600,
});

export const leakDecayCases: readonly SheetCase[] = [
  ...(
    [
      [90, 1.046],
      [80, 1.099],
      [50, 1.313],
    ] as const
  ).map(([after, factor]) => ({
    name: `100 to ${after} psig: the leak at the start is ${factor} of the mean`,
    source: script,
    inputs: inputs(100, after),
    outputs: { factor },
    tolerance: { relative: 5e-4, reason: 'four printed digits' },
    notes: ['LEAK_RULE'],
  })),
  {
    name: 'US Navy MO-209: 90 to 80 psig in 10.70 min, 40 scfm, with the volume of 629 ft3 that fits every step',
    source: {
      title: 'US Navy MO-209, Maintenance of steam, hot water and compressed air distribution systems',
      place: 'tables 5-3 and 5-4, public transcription; the volume is inferred',
      mark: 'read',
    },
    inputs: { ...inputs(90, 80), volume: 629 * 0.0283168466, time: 10.7 * 60 },
    outputs: { meanLeak: 40 * cfm },
    tolerance: { relative: 5e-3, reason: 'two printed digits' },
  },
  {
    name: 'a bar lost from a cubic metre in 100 s is 10 L/s, by hand; by the rule 12.5, by the exponential 10.72',
    source: {
      title: 'hand calculation',
      place: '8.01325 ln(8.01325/7.01325) = 1.06813',
      mark: 'computed',
    },
    inputs: { volume: 1, before: 7e5, after: 6e5, time: 100 },
    outputs: { meanLeak: 0.01, byRule: 0.0125, leakBefore: 0.0106813 },
    tolerance: { relative: 1e-4, reason: 'five printed digits' },
    notes: ['AIR_REFERENCE', 'CAUTION_COMPRESSED_AIR'],
  },
];
