import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './trial-sources.ts';

const minute = 60;
const printed = { relative: 1e-12, reason: 'printed digits' };

export const availabilityFromStopsCases: readonly SheetCase[] = [
  {
    name: 'five stops, 450 min running, 25 min standing: over 0.858032 at 95 %',
    source: statisticsScript,
    inputs: { running: 450 * minute, stopped: 25 * minute, stops: 5, confidence: 0.95 },
    outputs: { availability: 18 / 19, factor: 2.9782370160823213, lower: 0.858032063714451 },
    tolerance: printed,
    notes: ['STOPS_STEADY', 'AVAILABILITY_CLEARED'],
  },
  {
    name: 'twelve stops, 462 min running, 18 min standing: over 0.937817 at 90 %',
    source: statisticsScript,
    inputs: { running: 462 * minute, stopped: 18 * minute, stops: 12, confidence: 0.9 },
    outputs: { availability: 0.9625, factor: 1.7018541845725565, lower: 0.937817093082124 },
    tolerance: printed,
  },
];
