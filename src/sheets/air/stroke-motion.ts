import { normalPressure } from './dry-air.ts';
import { type Arrival, integrateUntil } from './integrate-until.ts';
import { flowShare } from './restriction-flow.ts';

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

const share = (ratio: number, b: number): number => {
  const edge = Math.max(straightFrom, b + 0.999 * (1 - b));
  return ratio <= edge ? flowShare(ratio, b) : (flowShare(edge, b) * Math.max(0, 1 - ratio)) / (1 - edge);
};

/** Free air in m3/s from the first pressure to the second, turned round where the second is higher. */
const flow = (C: number, b: number, from: number, to: number): number =>
  to <= from ? C * from * share(to / from, b) : -C * to * share(from / to, b);

/** Force that is left to move the load, N, at the pressures of both chambers. */
export const netForce = (s: Stroke, driven: number, exhausting: number): number =>
  driven * s.driven - exhausting * s.exhausting - s.atmosphere * (s.driven - s.exhausting) - s.resistance;

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
 *          M dv/dt = p_d A_d - p_b A_b - p_a (A_d - A_b) - F;  q by ISO 6358; the piston stays until the force turns
 *          positive and never runs back
 * Symbols  s      stroke    `Stroke`
 *          n      exponent  scalar  1  1 isothermal to 1.4 adiabatic
 * Returns  breakaway and total time, s; undefined where it does not arrive or is too stiff to follow
 * Assumes  starts at an end with the driven side at the atmosphere and the other at the supply; steady friction;
 *          no cushion at the end
 * Cost     some hundred steps of an ODE
 * Source   mass balance of the chambers, ISO 6358, Newton
 */
export const strokeTimes = (s: Stroke, exponent: number): StrokeTimes | undefined => {
  const { atmosphere: pa, supply: ps } = s;
  const filling = (pd: number): number => flow(s.supplyConductance, s.supplyRatio, ps, pd) * normalPressure;
  const venting = (pb: number): number => flow(s.exhaustConductance, s.exhaustRatio, pb, pa) * normalPressure;
  const volumes = s.deadExhausting + s.exhausting * s.stroke;
  // filling and venting times of the chambers: the first step is a small part of the shorter
  const first =
    (0.01 * Math.min(s.deadDriven / s.supplyConductance, volumes / s.exhaustConductance)) /
    (exponent * normalPressure);

  const held = integrateUntil(
    ([pd, pb]) => [(exponent * filling(pd!)) / s.deadDriven, (-exponent * venting(pb!)) / volumes],
    [pa, ps],
    ([pd, pb]) => netForce(s, pd!, pb!),
    [1e-6 * ps, 1e-6 * ps],
    first,
  );
  if (held === undefined) return undefined;

  const moved: Arrival | undefined = integrateUntil(
    ([pd, pb, x, v]) => {
      const speed = Math.max(0, v!);
      const force = netForce(s, pd!, pb!);
      return [
        (exponent * (filling(pd!) - pd! * s.driven * speed)) / (s.deadDriven + s.driven * x!),
        (exponent * (pb! * s.exhausting * speed - venting(pb!))) /
          (s.deadExhausting + s.exhausting * Math.max(0, s.stroke - x!)),
        speed,
        // friction holds what has come to rest
        v! <= 0 && force < 0 ? 0 : force / s.mass,
      ];
    },
    [held.state[0]!, held.state[1]!, 0, 0],
    ([, , x]) => x! - s.stroke,
    [1e-6 * ps, 1e-6 * ps, 1e-6 * s.stroke, 1e-5],
    1e-5,
  );
  return moved === undefined ? undefined : { breakaway: held.time, total: held.time + moved.time };
};
