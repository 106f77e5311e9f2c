import { lanePressure } from '../sheets/water/lane-flow.ts';
import { valveFlow, valveLoss } from '../sheets/water/valve-flow.ts';
import { type Held, supplyPressure } from './supply.ts';
import type { FillSystem } from './system.ts';

/** What one lane is to the balance: how much it passes, and how far its jet lies from the manifold. */
export interface Opening {
  /** Flow at a pressure difference of 1 Pa, m3/s per sqrt(Pa); 0 when shut */
  conductance: number;
  /** Weight of liquid between manifold and jet, Pa: positive where the jet is lower */
  offset: number;
}

export interface Balance {
  /** Pa gauge at the manifold */
  pressure: number;
  /** m3/s through the run */
  flow: number;
}

/** Kv in m3/h at 1 bar of water to m3/s per sqrt(Pa) of the liquid. */
export const conductance = (kv: number, density: number): number => valveFlow(kv, 1, density);

export const offset = (manifold: number, outlet: number, density: number): number =>
  lanePressure(0, manifold, outlet, density);

/** Flow of one opening, m3/s; a manifold below its jet passes nothing. */
export const openingFlow = (opening: Opening, pressure: number): number => {
  const difference = pressure + opening.offset;
  return difference > 0 ? opening.conductance * Math.sqrt(difference) : 0;
};

const totalFlow = (openings: readonly Opening[], pressure: number): number => {
  let flow = 0;
  for (const opening of openings) flow += openingFlow(opening, pressure);
  return flow;
};

/** Friction factor of most runs of this trade, good enough for where to look first. */
const roughFriction = 0.02;

/** Loss of the run over the pressure that drives the lanes, if friction did not depend on the flow. */
const roughResistance = ({ run, liquid, source }: FillSystem, openings: readonly Opening[]): number => {
  if (source.kind === 'reading') return 1;
  let through = 0;
  for (const opening of openings) through += opening.conductance;
  let resistance = 0;
  for (const piece of run) {
    if (piece.kind === 'pipe') {
      const area = 0.25 * Math.PI * piece.bore * piece.bore;
      const lost = (roughFriction * piece.length) / piece.bore + piece.kSum;
      resistance += (0.5 * liquid.density * lost) / (area * area);
    } else if (piece.kind === 'valve') resistance += valveLoss(piece.kv, 1, liquid.density);
  }
  return resistance * through * through;
};

/** Share of the unknown below which a secant step is the last: what is left then is lost in rounding. */
const roundingStep = 1e-9;

/**
 * Pressure and flow at the manifold where supply and open lanes agree.
 *
 * Method   p = S(Q) - loss(Q) and Q = sum c_i sqrt(p + o_i). The unknown is u = p + o, o the greatest offset of an open
 *          lane: where the loss goes with Q^2 the gap S(Q(u)) - loss(Q(u)) - p(u) is nearly straight in it. The gap
 *          falls strictly, so one root: secant steps kept inside a shrinking bracket
 * Symbols  openings  [n]     c m3/s per sqrt(Pa) >= 0, o Pa
 *          start     scalar  a first guess of the pressure, Pa, such as the balance a moment before
 *          lastStep  scalar  share of u; 1e-5 leaves 1e-8 of the flow
 * Returns  pressure Pa gauge and flow m3/s; with nothing open or no head, the supply's pressure and no flow
 * Assumes  steady flow, lanes straight from one manifold without loss between them
 * Cost     4 to 8 evaluations of the run; 2 to 4 from a good start
 * Source   steady energy and mass balance, derived
 */
export const balance = (
  system: FillSystem,
  openings: readonly Opening[],
  held: Held,
  start = Number.NaN,
  lastStep = roundingStep,
): Balance => {
  let highest = Number.NEGATIVE_INFINITY;
  for (const { conductance: c, offset: o } of openings) if (c > 0 && o > highest) highest = o;
  const shut = supplyPressure(system, 0, held);
  const most = shut + highest;
  if (!(most > 0)) return { pressure: shut, flow: 0 };

  // how far the supply stands above the pressure u - o that drives the lanes
  const gap = (u: number): number => {
    const pressure = u - highest;
    return supplyPressure(system, totalFlow(openings, pressure), held) - pressure;
  };
  let low = 0;
  let high = most;
  const guess = start + highest;
  let u = guess > 0 && guess < most ? guess : most / (1 + roughResistance(system, openings));
  let g = gap(u);
  let stalled = Math.abs(g);
  // with a loss in Q^2 and equal offsets the gap is most - (1 + r) u, so this first step would be the last
  let next = (u * most) / Math.max(most - g, 1e-6 * most);
  for (let i = 0; i < 200 && g !== 0; i++) {
    if (g > 0) low = u;
    else high = u;
    // a chord that has not halved the gap in three steps hangs on one end: the bracket is halved instead
    const slow = i % 3 === 2 && Math.abs(g) > 0.5 * stalled;
    if (i % 3 === 2) stalled = Math.abs(g);
    if (slow || !(next > low && next < high)) next = 0.5 * (low + high);
    const change = next - u;
    const before = g;
    u = next;
    // what is left after a step goes with its power 1.6
    if (Math.abs(change) <= lastStep * u) break;
    g = gap(u);
    next = u - (g * change) / (g - before);
  }
  const pressure = u - highest;
  return { pressure, flow: totalFlow(openings, pressure) };
};
