type State = readonly number[];

export interface Arrival {
  readonly time: number;
  readonly state: State;
}

// Dormand and Prince, 1980: order 5 with an embedded one of order 4
const A: readonly (readonly number[])[] = [
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];
const errorWeights: State = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];

const stepOnce = (slope: (y: State) => State, y: State, h: number): { next: State; error: State } => {
  const k: State[] = [slope(y)];
  let next = y;
  for (const row of A) {
    next = y.map((value, j) => value + h * row.reduce((sum, a, i) => sum + a * k[i]![j]!, 0));
    k.push(slope(next));
  }
  return { next, error: y.map((_, j) => h * errorWeights.reduce((sum, e, i) => sum + e * k[i]![j]!, 0)) };
};

/** More steps than a cylinder ever takes; one that needs more is stiff beyond this method. */
const mostSteps = 4000;
/** Halvings of the last step: its share of the whole time is then below rounding. */
const halvings = 40;

/**
 * Time at which an event happens in a system of differential equations.
 *
 * Method   Dormand-Prince steps of controlled error; the step in which `event` turns positive is halved on it
 * Symbols  slope  dy/dt of a state
 *          event  negative before, positive after
 *          scale  size of an error that is allowed, by part of the state
 *          first  first step, s
 * Returns  time and state; undefined where it does not happen in `mostSteps`
 * Cost     6 slopes a step, usually some hundred steps
 * Source   J. R. Dormand, P. J. Prince, 1980 (memory of the coefficients)
 */
export const integrateUntil = (
  slope: (y: State) => State,
  start: State,
  event: (y: State) => number,
  scale: State,
  first: number,
): Arrival | undefined => {
  if (event(start) >= 0) return { time: 0, state: start };
  let y = start;
  let time = 0;
  let h = first;
  for (let i = 0; i < mostSteps; i++) {
    const { next, error } = stepOnce(slope, y, h);
    const off = error.reduce((most, e, j) => Math.max(most, Math.abs(e) / scale[j]!), 0);
    if (!Number.isFinite(off)) return undefined;
    if (off <= 1) {
      if (event(next) >= 0) {
        let low = 0;
        let high = h;
        for (let n = 0; n < halvings; n++) {
          const middle = 0.5 * (low + high);
          if (event(stepOnce(slope, y, middle).next) >= 0) high = middle;
          else low = middle;
        }
        return { time: time + high, state: stepOnce(slope, y, high).next };
      }
      y = next;
      time += h;
    }
    h *= Math.min(5, Math.max(0.2, 0.9 * (off + 1e-12) ** -0.2));
  }
  return undefined;
};
