import type { Overflow } from './trial.ts';

/** One bottle of "turn it until a trace shows". */
export interface TraceStep {
  readonly preset: number;
  readonly overflow: Overflow;
}

/** The way of one lane to its preset, as practice goes it. */
export interface TracePath {
  readonly steps: readonly TraceStep[];
  /** Count to try next; absent where the path is at its end. */
  readonly next?: number;
  /**
   * Agreed: the last counts showed a trace and the estimate says the same. Unlike: traces were seen where the estimate
   * has none. Astray: a higher count ran over less than a lower one.
   */
  readonly state: 'under way' | 'agreed' | 'unlike' | 'astray';
}

export interface TraceGuide {
  /** Count at which the estimate lets a bottle just reach its level, and its standard deviation in counts. */
  readonly expected: number;
  readonly deviation: number;
  /** Counts of a step where nothing better is known: about 1 % of a fill. */
  readonly coarse: number;
}

/** Traces in a row at one count that are no chance. */
const traces = 2;
/** Deviations between what was seen and what was estimated that are no chance. */
const unlike = 3;

const decide = (steps: readonly TraceStep[], guide: TraceGuide): Omit<TracePath, 'steps'> => {
  const short = Math.max(...steps.filter((s) => s.overflow === 'none').map((s) => s.preset), 0);
  const over = Math.min(...steps.filter((s) => s.overflow === 'stream').map((s) => s.preset), Infinity);
  const traced = steps.filter((s) => s.overflow === 'trace').map((s) => s.preset);
  const lowestTrace = Math.min(...traced, Infinity);
  // bottles differ: a path is astray only where a count that ran over lies well below one that was short
  const play = Math.max(1, 2 * guide.deviation);
  if (short > over + play) return { state: 'astray' };
  const last = steps.slice(-traces);
  const settled =
    last.length === traces && last.every((s) => s.overflow === 'trace' && s.preset === last[0]!.preset);
  if (settled) {
    const far = Math.abs(last[0]!.preset - guide.expected) > unlike * Math.max(1, guide.deviation);
    return { state: far ? 'unlike' : 'agreed' };
  }
  const latest = steps.at(-1);
  if (latest === undefined) return { state: 'under way', next: Math.max(1, Math.round(guide.expected)) };
  // a trace is tried again where it was seen, so that one lucky bottle sets nothing
  if (latest.overflow === 'trace') return { state: 'under way', next: latest.preset };
  const low = short;
  const high = Math.min(over, lowestTrace);
  let next: number;
  if (low > 0 && high < Infinity && high > low) next = Math.ceil(0.5 * (low + high));
  else next = latest.overflow === 'none' ? latest.preset + guide.coarse : latest.preset - guide.coarse;
  if (next === latest.preset) next += latest.overflow === 'none' ? 1 : -1;
  return { state: 'under way', next: Math.max(1, Math.round(next)) };
};

/** The path with nothing tried yet: it begins where the estimate says. */
export const tracePath = (guide: TraceGuide): TracePath => ({ steps: [], ...decide([], guide) });

/** The path after one bottle more; one that has ended stays as it is. */
export const traceStep = (path: TracePath, step: TraceStep, guide: TraceGuide): TracePath => {
  if (path.state !== 'under way') return path;
  const steps = [...path.steps, step];
  return { steps, ...decide(steps, guide) };
};
