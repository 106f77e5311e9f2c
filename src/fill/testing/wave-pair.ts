/**
 * Pairs whose truth is a run with soft walls: waves run through it while valves open and close. Written apart from the
 * estimator, which knows of no waves: the method of characteristics from rest, bottle by bottle.
 */
import { conductance, offset } from '../../hydraulics/balance.ts';
import { manifoldBalance } from '../../hydraulics/manifold-balance.ts';
import { full, supplyPressure } from '../../hydraulics/supply.ts';
import type { FillSystem } from '../../hydraulics/system.ts';
import { openRun } from '../column-shares.ts';
import { countedLanes } from './counted-lanes.ts';
import { pairFilledBy } from './filled-pair.ts';
import type { FloorPair, PairOptions, TrueRow } from './floor-pair.ts';
import type { Random } from './random.ts';

/** Longest step, s: a hundredth of a stroke. */
const longest = 1e-3;
/** A row that takes longer than this is none of the study's, s. */
const never = 600;

/**
 * One row from rest behind an elastic run.
 *
 * Method   characteristics dp +- (rho a/A) dQ = 0 along dx = +- a dt; all losses of supply and run at the inlet, with the
 *          square of the flow; at the lanes Q = G sqrt(p), G = sum x_i c_i, x_i straight over each valve's stroke
 * Symbols  speed  of the waves, m/s
 * Assumes  one pipe; all jets at one height; a tank that does not fall; no vapour
 * Source   V. L. Streeter, E. B. Wylie, Fluid Transients (memory)
 */
export const waveRow = (system: FillSystem, speed: number): TrueRow => {
  const { liquid, manifold, lanes, run } = system;
  const pipe = run.find(({ kind }) => kind === 'pipe');
  if (pipe?.kind !== 'pipe') throw new Error('no pipe');
  const weight = offset(manifold, lanes[0]!.outlet, liquid.density);
  const reaches = Math.ceil(pipe.length / (speed * longest));
  const dt = pipe.length / (speed * reaches);
  const impedance = (liquid.density * speed) / (0.25 * Math.PI * pipe.bore ** 2);
  const open = lanes.map(({ kv }) => conductance(kv, liquid.density));
  const counted = countedLanes(system);
  const push = supplyPressure(system, 0, full) + weight;
  const { flow: steady, pressure: manifoldPressure } = manifoldBalance(system);
  const resistance = (push - weight - manifoldPressure) / (steady * steady);
  let pressure = new Float64Array(reaches + 1).fill(push);
  let flow = new Float64Array(reaches + 1);
  for (let time = dt; time < never; time += dt) {
    const through = open.map((c, i) => c * counted.openShare(i, time));
    const all = through.reduce((sum, c) => sum + c, 0);
    const [p, q] = [new Float64Array(reaches + 1), new Float64Array(reaches + 1)];
    for (let i = 1; i < reaches; i++) {
      const on = pressure[i - 1]! + impedance * flow[i - 1]!;
      const back = pressure[i + 1]! - impedance * flow[i + 1]!;
      p[i] = 0.5 * (on + back);
      q[i] = (on - back) / (2 * impedance);
    }
    const forward = push - pressure[1]! + impedance * flow[1]!;
    q[0] =
      (Math.sign(forward) *
        (Math.sqrt(impedance * impedance + 4 * resistance * Math.abs(forward)) - impedance)) /
      (2 * resistance);
    p[0] = push - forward + impedance * q[0]!;
    const on = pressure[reaches - 1]! + impedance * flow[reaches - 1]!;
    const half = 0.5 * impedance * all * all;
    q[reaches] = on > 0 ? Math.sqrt(half * half + all * all * on) - half : 0;
    p[reaches] = on - impedance * q[reaches]!;
    [pressure, flow] = [p, q];
    const out = flow[reaches]!;
    counted.pass(
      through.map((c) => (all > 0 ? (dt * out * c) / all : 0)),
      time,
      dt,
    );
    const row = counted.row(time);
    if (row !== undefined) return row;
  }
  throw new Error('stuck');
};

/** Pairs with a hose or a tube of plastic on each floor; nobody says which. */
export const wavePair = (random: Random, options: PairOptions): FloorPair => {
  const speed = (): number => 25 * 12 ** random.uniform(0, 1);
  const [here, there] = [speed(), speed()];
  return pairFilledBy(random, options, {
    here: (system) => waveRow(system, here),
    there: (system) => waveRow(system, there),
    column: openRun,
  });
};
