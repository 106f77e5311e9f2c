import type { ChuteKnots } from './chute-knots.ts';
import type { CapChute } from './shift-line.ts';
import type { ChuteMoment } from './shift-moment.ts';

/** The chute of a shift with its corners, and when its sorter stood, in the order of time. */
export interface ChuteTrace {
  readonly chute: CapChute;
  readonly knots: ChuteKnots;
  readonly stops: readonly { readonly from: number; readonly to: number }[];
}

/** Last corner that is not later than a moment. */
const knotBefore = ({ at: times }: ChuteKnots, at: number): number => {
  let [low, high] = [0, times.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (times[middle]! > at) high = middle;
    else low = middle + 1;
  }
  return Math.max(0, low - 1);
};

/**
 * Caps in the chute at a moment and what the sorter does.
 *
 * Method   straight between two corners over the seconds that the sorter works: while it is stopped no cap comes
 */
export const chuteAt = ({ chute, knots, stops }: ChuteTrace, at: number): ChuteMoment => {
  const i = knotBefore(knots, at);
  const [from, to] = [knots.at[i] ?? 0, knots.at[i + 1] ?? Number.POSITIVE_INFINITY];
  const [caps, next] = [knots.caps[i] ?? chute.start, knots.caps[i + 1] ?? knots.caps[i] ?? chute.start];
  const worked = (until: number): number =>
    stops.reduce(
      (left, stop) => left - Math.max(0, Math.min(until, stop.to) - Math.max(from, stop.from)),
      until - from,
    );
  const runs = knots.runs[i] === true;
  const whole = to < Number.POSITIVE_INFINITY ? worked(to) : 0;
  const share = runs && whole > 0 ? Math.min(1, Math.max(0, worked(at) / whole)) : 0;
  const stopped = runs && stops.some((stop) => stop.from <= at && at < stop.to);
  return {
    sorter: chute.station,
    caps: caps + (runs ? (next - caps) * share : 0),
    low: chute.low,
    high: chute.high,
    does: stopped ? 'stopped' : runs ? 'running' : 'idle',
  };
};
