import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './trial-sources.ts';

const stops = { betweenStops: 1800, clearing: 90, confidence: 0.95 } as const;
const hour = 3600;
const own = 20 / 21;

const toShow = (margin: number, passing: number, hours: number): SheetCase => ({
  name: `a margin of ${margin}, to pass in ${100 * passing} of 100: ${hours.toFixed(3)} h`,
  source: statisticsScript,
  inputs: { ...stops, agreed: own - margin, passing },
  outputs: { margin, duration: hours * hour, stops: (hours * hour) / 1890 },
  tolerance: { relative: 1e-10, reason: 'the margin is a small difference of doubles' },
  notes: passing === 0.5 ? ['RUN_PASSES_BY_HALVES'] : [],
});

export const runToShowAvailabilityCases: readonly SheetCase[] = [
  toShow(0.02, 0.5, 14.607188500677102),
  toShow(0.01, 0.5, 58.42875400270841),
  toShow(0.03, 0.5, 6.492083778078712),
  toShow(0.02, 0.9, 46.23608330994479),
  toShow(0.01, 0.9, 184.94433323977916),
];
