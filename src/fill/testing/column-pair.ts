/**
 * Pairs whose truth is the whole liquid column: it is set moving from rest while the valves open, and it goes on pressing
 * while they close. Written apart from the estimator's column: one integration from rest in short steps, the run's own
 * loss at each of them.
 */
import { conductance, offset } from '../../hydraulics/balance.ts';
import { full, supplyPressure } from '../../hydraulics/supply.ts';
import type { FillSystem } from '../../hydraulics/system.ts';
import { openRun, stiffRun } from '../column-shares.ts';
import { countedLanes } from './counted-lanes.ts';
import { pairFilledBy } from './filled-pair.ts';
import type { FloorPair, PairOptions, TrueRow } from './floor-pair.ts';
import type { Random } from './random.ts';

/** While a valve moves, and while none does, s. */
const fine = 2.5e-4;
const coarse = 4e-3;
/** A row that takes longer than this is none of the study's, s. */
const never = 600;

/**
 * One row from rest.
 *
 * Method   sum(rho L/A) dQ/dt = p(Q) - p_m, Q = G sqrt(p_m + o), G = sum x_i c_i, x_i straight over each valve's stroke;
 *          implicit in p_m, which closes the last valve without a jump
 * Assumes  all jets at one height; stiff walls; a tank that does not fall
 */
export const columnRow = (system: FillSystem): TrueRow => {
  const { liquid, manifold, lanes, run } = system;
  const weight = offset(manifold, lanes[0]!.outlet, liquid.density);
  const open = lanes.map(({ kv }) => conductance(kv, liquid.density));
  let mass = 0;
  for (const piece of run) {
    if (piece.kind === 'pipe') mass += (liquid.density * piece.length) / (0.25 * Math.PI * piece.bore ** 2);
  }
  const counted = countedLanes(system);
  let flow = 0;
  for (let time = 0; time < never; ) {
    const moves = lanes.some((_, i) => counted.moves(i, time, coarse));
    const dt = moves ? fine : coarse;
    time += dt;
    const through = open.map((c, i) => c * counted.openShare(i, time));
    const all = through.reduce((sum, c) => sum + c, 0);
    const inertia = mass / dt;
    const push = supplyPressure(system, flow, full) + weight + inertia * flow;
    flow = all > 0 ? (2 * push) / (inertia + Math.sqrt(inertia * inertia + (4 * push) / (all * all))) : 0;
    counted.pass(
      through.map((c) => (all > 0 ? (dt * flow * c) / all : 0)),
      time,
      dt,
    );
    const row = counted.row(time);
    if (row !== undefined) return row;
  }
  throw new Error('stuck');
};

/** The same pairs as of the study, filled by the column on both floors; what their books say tells how stiff the runs are. */
export const columnPair = (random: Random, options: PairOptions): FloorPair =>
  pairFilledBy(random, options, { here: columnRow, there: columnRow, column: stiffRun });

/** The same where nobody says it. */
export const openColumnPair = (random: Random, options: PairOptions): FloorPair =>
  pairFilledBy(random, options, { here: columnRow, there: columnRow, column: openRun });

/** A column on one of the two floors alone, by turns, and nobody says which. */
export const mixedColumnPair = (random: Random, options: PairOptions): FloorPair =>
  pairFilledBy(random, options, {
    ...(random.uniform(0, 1) < 0.5 ? { here: columnRow } : { there: columnRow }),
    column: openRun,
  });

/** None on either floor, and nobody says so. */
export const stillPair = (random: Random, options: PairOptions): FloorPair =>
  pairFilledBy(random, options, { column: openRun });
