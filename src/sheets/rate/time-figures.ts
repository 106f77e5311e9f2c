import type { Problem } from '../../quantity/problem.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bottlesAboveZero, bottlesMade, periods } from './bounds.ts';
import { equipmentFigures } from './trial-sources.ts';

interface TimeFiguresInputs {
  readonly planned: number;
  readonly running: number;
  readonly perBottle: number;
  readonly made: number;
  readonly good: number;
}

interface TimeFigures {
  readonly availability: number;
  readonly effectiveness: number;
  readonly quality: number;
  readonly product: number;
}

/**
 * Where the planned time of a run went: stops, slow running, bad bottles.
 *
 * Method   A = APT/PBT,  E = PRI PQ/APT,  Q = GQ/PQ,  A E Q = PRI GQ/PBT
 * Symbols  PBT  planned    scalar  s      > 0, planned busy time
 *          APT  running    scalar  s      > 0, actual production time
 *          PRI  perBottle  scalar  s      > 0, planned time of a bottle
 *          PQ   made       count          > 0
 *          GQ   good       count          >= 0
 * Returns  availability, effectiveness, quality and their product
 * Assumes  nothing; a run that was never planned has no availability and is refused
 * Cost     O(1)
 * Source   ISO 22400-2
 */
export const timeFigures = ({ planned, running, perBottle, made, good }: TimeFiguresInputs): TimeFigures => ({
  availability: running / planned,
  effectiveness: (perBottle * made) / running,
  quality: good / made,
  product: (perBottle * good) / planned,
});

const problemsOf = ({ planned, running, made, good }: TimeFiguresInputs): readonly Problem[] => [
  ...(running > planned
    ? [{ code: 'RUN_OVER_PLANNED', path: 'running', given: running, allowed: `<= ${planned}` }]
    : []),
  ...(good > made ? [{ code: 'GOOD_OVER_MADE', path: 'good', given: good, allowed: `<= ${made}` }] : []),
];

export const timeFiguresSheet = defineSheet<TimeFiguresInputs, TimeFigures>({
  id: 'rate/time-figures',
  version: 1,
  inputs: {
    planned: numberField('time', '\\mathit{PBT}', periods),
    running: numberField('time', '\\mathit{APT}', periods),
    perBottle: numberField('time', '\\mathit{PRI}', periods),
    made: numberField('count', '\\mathit{PQ}', bottlesAboveZero),
    good: numberField('count', '\\mathit{GQ}', bottlesMade),
  },
  outputs: {
    availability: numberField('ratio', 'A'),
    effectiveness: numberField('ratio', 'E'),
    quality: numberField('ratio', 'Q'),
    product: numberField('ratio', 'A E Q'),
  },
  formula: [
    'A = \\frac{\\mathit{APT}}{\\mathit{PBT}}, \\quad E = \\frac{\\mathit{PRI} \\cdot \\mathit{PQ}}{\\mathit{APT}}, \\quad Q = \\frac{\\mathit{GQ}}{\\mathit{PQ}}',
    'A E Q = \\frac{\\mathit{PRI} \\cdot \\mathit{GQ}}{\\mathit{PBT}}',
  ],
  limits: [{ code: 'EFFECTIVENESS_OVER_ONE', broken: (_, { effectiveness }) => effectiveness > 1 }],
  sources: [equipmentFigures],
  check: problemsOf,
  compute: timeFigures,
});
