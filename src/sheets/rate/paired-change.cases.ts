import type { SheetCase } from '../sheet-case.ts';
import { bankDelays, tenObservations } from './textbook-figures.cases.ts';
import { statisticsScript } from './trial-sources.ts';

export const pairedChangeCases: readonly SheetCase[] = [
  {
    name: 'two columns of ten figures by pairs: 0.688 less, half width 0.453 at 95 %',
    source: statisticsScript,
    inputs: { before: bankDelays, after: tenObservations, confidence: 0.95 },
    outputs: {
      mean: -0.688,
      spread: 0.6331543606771135,
      halfWidth: 0.4529313444558142,
      low: -1.1409313444558142,
      high: -0.2350686555441858,
    },
    tolerance: { relative: 1e-12, reason: 'printed digits' },
  },
  {
    name: 'a change that helps in one shift and hurts in the other is not shown',
    source: {
      title: 't of one degree at 95 %: tan 0.475 pi',
      place: 'Cauchy distribution',
      mark: 'computed',
    },
    inputs: { before: [100, 100], after: [101, 99], confidence: 0.95 },
    outputs: { mean: 0, spread: Math.SQRT2, halfWidth: Math.tan(0.475 * Math.PI) },
    tolerance: { relative: 1e-12, absolute: 1e-12, reason: 'a tangent' },
    notes: ['CHANGE_NOT_SHOWN'],
  },
];
