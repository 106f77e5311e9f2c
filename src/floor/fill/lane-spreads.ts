import { type LanePriors, lanePriors } from '../../fill/lane-priors.ts';
import type { Lane } from '../../hydraulics/system.ts';
import type { Kind } from '../../quantity/kinds.ts';
import type { BookReader } from '../book-reader.ts';

/** Below this share of the value a spread would hold a lane to the book whatever was weighed. */
const leastShare = 1e-6;
const leastWidth = 1e-9;

/**
 * How far a lane may lie from the book before any trial: by the spread that the book states, else wide.
 *
 * Method   one standard deviation of each value that was written with its spread; the after-run is delay + closing/2, so
 *          that both add up
 * Symbols  path  place of the lane in the book
 */
export const laneSpreads = (reader: BookReader, path: string, lane: Lane): LanePriors => {
  const wide = lanePriors(lane);
  const deviationOf = (field: string, kind: Kind): number | undefined =>
    reader.reading(`${path}/${field}`, kind)?.sd;
  const kv = deviationOf('kv', 'flowCoefficient');
  const pulses = deviationOf('pulses', 'pulseDensity');
  const delay = deviationOf('delay', 'time');
  const closing = deviationOf('closing', 'time');
  const drip = deviationOf('afterDrip', 'volume');
  return {
    kv: kv === undefined ? wide.kv : Math.max(leastShare, kv / lane.kv),
    pulse: pulses === undefined ? wide.pulse : Math.max(leastShare, pulses / lane.pulses),
    afterRun:
      delay === undefined || closing === undefined
        ? wide.afterRun
        : Math.max(leastShare, Math.hypot(delay, 0.5 * closing)),
    halfClosing: closing === undefined ? wide.halfClosing : Math.max(leastShare, 0.5 * closing),
    drip: drip === undefined ? wide.drip : Math.max(leastWidth, drip),
  };
};
