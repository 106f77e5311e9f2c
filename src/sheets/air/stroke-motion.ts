import { brentRoot } from '../brent-root.ts';
import { normalPressure, normalTemperature } from './dry-air.ts';
import { fillTime } from './filling-time.ts';
import { timeUntil } from './integrate-until.ts';
import { flowShare } from './restriction-flow.ts';
import { ventTime } from './vent-time.ts';

/** A cylinder with its valve, at one stroke. Areas in m2, volumes m3, pressures Pa absolute, forces N. */
export interface Stroke {
  readonly driven: number;
  readonly exhausting: number;
  readonly stroke: number;
  readonly deadDriven: number;
  readonly deadExhausting: number;
  /** m3/(s Pa), both already at the temperature of the air: C sqrt(T/T_n). */
  readonly supplyConductance: number;
  readonly supplyRatio: number;
  readonly exhaustConductance: number;
  readonly exhaustRatio: number;
  readonly supply: number;
  readonly atmosphere: number;
  /** Load and friction, which both hold back. */
  readonly resistance: number;
  readonly mass: number;
}

/** Over this ratio the flow is taken as straight: its slope is infinite at equality. */
const straightFrom = 0.999;

const share = (ratio: number, b: number): number =>
  ratio <= straightFrom
    ? flowShare(ratio, b)
    : (flowShare(straightFrom, b) * Math.max(0, 1 - ratio)) / (1 - straightFrom);

/** Free air in m3/s from the first pressure to the second, turned round where the second is higher. */
const flow = (C: number, b: number, from: number, to: number): number =>
  to <= from ? C * from * share(to / from, b) : -C * to * share(from / to, b);

/** Force that is left to move the load, N, at the pressures of both chambers. */
export const netForce = (s: Stroke, driven: number, exhausting: number): number =>
  driven * s.driven - exhausting * s.exhausting - s.atmosphere * (s.driven - s.exhausting) - s.resistance;

export interface Breakaway {
  /** s, isothermal. */
  readonly time: number;
  /** Pressures of both chambers at that moment, Pa absolute. */
  readonly driven: number;
  readonly exhausting: number;
}

/**
 * Moment at which a piston starts to move.
 *
 * Method   one side fills and the other vents, both at rest, by `fillTime` and `ventTime`; the pressure p_d is sought
 *          at which filling to it takes as long as venting to the p_b that balances it
 * Symbols  s  stroke  `Stroke`
 * Returns  time and pressures; undefined where the force never suffices
 * Assumes  starts with the driven side at the atmosphere and the other at the supply
 * Cost     O(1), about ten evaluations of two closed forms
 * Source   ISO 6358, balance of forces
 */
export const breakaway = (s: Stroke): Breakaway | undefined => {
  const { atmosphere: pa, supply: ps } = s;
  const lowest = pa + s.resistance / s.driven;
  if (lowest >= ps) return undefined;
  const volume = s.deadExhausting + s.exhausting * s.stroke;
  const filled = (pd: number): number =>
    fillTime(s.deadDriven, s.supplyConductance, s.supplyRatio, pa, pd, ps, normalTemperature);
  const vented = (pb: number): number =>
    ventTime(volume, s.exhaustConductance, s.exhaustRatio, ps, pb, pa, normalTemperature);
  const balancing = (pd: number): number =>
    Math.min(ps, Math.max(pa, pa + (s.driven * (pd - lowest)) / s.exhausting));
  const late = (pd: number): number => filled(pd) - vented(balancing(pd));

  // driven pressure that moves it against the full supply on the other side
  const against = lowest + (s.exhausting * (ps - pa)) / s.driven;
  // vented long before the driven side is filled enough, or the other way round
  if (late(lowest) >= 0) return { time: filled(lowest), driven: lowest, exhausting: pa };
  const highest = Math.min(ps, against);
  if (late(highest) <= 0) {
    const exhausting = balancing(highest);
    return { time: vented(exhausting), driven: highest, exhausting };
  }
  const driven = brentRoot(late, lowest, highest);
  return { time: filled(driven), driven, exhausting: balancing(driven) };
};

export interface StrokeTimes {
  /** Until the piston moves, s. */
  readonly breakaway: number;
  /** Until it arrives, s. */
  readonly total: number;
}

/**
 * Time of a stroke from the moment that the valve shifts.
 *
 * Method   dp_d/dt = n (q_s p_n - p_d A_d v)/(V_d + A_d x);  dp_b/dt = n (p_b A_b v - q_e p_n)/(V_b + A_b (s - x));
 *          M dv/dt = p_d A_d - p_b A_b - p_a (A_d - A_b) - F;  q by ISO 6358; from the moment of `breakaway`, and
 *          the piston never runs back
 * Symbols  s  stroke    `Stroke`
 *          n  exponent  scalar  1  1 isothermal to 1.4 adiabatic
 * Returns  breakaway and total time, s; undefined where it does not arrive
 * Assumes  starts at an end with the driven side at the atmosphere and the other at the supply; steady friction;
 *          no cushion at the end
 * Cost     some hundred steps of an ODE
 * Source   mass balance of the chambers, ISO 6358, Newton
 */
export const strokeTimes = (s: Stroke, exponent: number): StrokeTimes | undefined => {
  const { atmosphere: pa, supply: ps } = s;
  const held = breakaway(s);
  if (held === undefined) return undefined;
  const moving = timeUntil(
    (y, out) => {
      const pd = y[0]!;
      const pb = y[1]!;
      const x = Math.min(s.stroke, Math.max(0, y[2]!));
      const v = Math.max(0, y[3]!);
      const force = netForce(s, pd, pb);
      const inflow = flow(s.supplyConductance, s.supplyRatio, ps, pd) * normalPressure;
      const outflow = flow(s.exhaustConductance, s.exhaustRatio, pb, pa) * normalPressure;
      out[0] = (exponent * (inflow - pd * s.driven * v)) / (s.deadDriven + s.driven * x);
      out[1] =
        (exponent * (pb * s.exhausting * v - outflow)) / (s.deadExhausting + s.exhausting * (s.stroke - x));
      out[2] = v;
      // friction holds what has come to rest
      out[3] = y[3]! <= 0 && force < 0 ? 0 : force / s.mass;
    },
    [held.driven, held.exhausting, 0, 0],
    2,
    s.stroke,
    [3e-4 * ps, 3e-4 * ps, 1e-4 * s.stroke, 1e-3],
    1e-5,
  );
  // at rest every pressure changes n times as fast, so the moment of breakaway comes n times sooner
  const rest = held.time / exponent;
  return Number.isNaN(moving) ? undefined : { breakaway: rest, total: rest + moving };
};
