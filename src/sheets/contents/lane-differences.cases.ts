import type { SheetCase } from '../sheet-case.ts';
import { referenceSets, statisticsScript } from './fill-sources.ts';
import { resistances } from './mean-range-chart.cases.ts';

const five = [1, 2, 3, 4, 5].flatMap((lane) => [lane, lane, lane, lane, lane]);

export const laneDifferencesCases: readonly SheetCase[] = [
  {
    name: 'NIST StRD SiRstv: F 1.18046237440255, s 0.104076068334656',
    source: referenceSets('analysis of variance, SiRstv'),
    inputs: { lanes: five, values: resistances },
    outputs: { ratio: 1.18046237440255, repeatSpread: 0.104076068334656e-6 },
    tolerance: { relative: 1e-9, reason: 'certified digits, inputs rounded to machine numbers' },
  },
  {
    name: 'the same: lanes alike at 95 %',
    source: statisticsScript,
    inputs: { lanes: five, values: resistances },
    outputs: {
      means: [196.24308e-6, 196.2443e-6, 196.16702e-6, 196.14814e-6, 196.14324e-6],
      laneSpread: 0.0197723919e-6,
      ratioNeeded: 2.8660814020157,
      chance: 0.3494474924934,
    },
    tolerance: { relative: 1e-8, reason: 'printed digits' },
    notes: ['LANES_ALIKE'],
  },
  {
    name: 'lanes of four, three and two fills that differ',
    source: statisticsScript,
    inputs: {
      lanes: [1, 1, 1, 1, 2, 2, 2, 3, 3],
      values: [500.1, 501.2, 499.8, 500.6, 502.9, 503.4, 502.2, 498.8, 499.5].map((x) => x * 1e-6),
    },
    outputs: {
      ratio: 26.043271139341,
      chance: 0.0011021156673605,
      laneSpread: 1.74151790556e-6,
      repeatSpread: 0.5914905841272e-6,
    },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
    notes: ['LANES_DIFFER'],
  },
];
