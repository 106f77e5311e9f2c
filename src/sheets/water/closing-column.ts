import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows, times } from './bounds.ts';
import { columnSolver, derived } from './sources.ts';

/**
 * Flow of a column after a short time in which what lies behind it stays as it is.
 *
 * Method   M (Q' - Q)/dt = p - (R + 1/G^2) Q'^2, solved for Q': the loss at the end of the step, so that a valve that is
 *          all but shut stops it without a jump
 * Symbols  Q   flow        scalar  m3/s         before
 *          p   push        scalar  Pa           that drives the jets at no flow
 *          R   resistance  scalar  Pa s2/m6     of supply and run
 *          M   mass        scalar  Pa s2/m3     sum(rho L/A)
 *          G   through     scalar  m3/s/Pa^1/2  of all openings; none stops it
 *          dt  time        scalar  s            > 0
 * Returns  m3/s
 * Cost     O(1)
 * Source   momentum of a rigid column
 */
export const columnFlow = (
  flow: number,
  push: number,
  resistance: number,
  mass: number,
  through: number,
  time: number,
): number => {
  if (!(through > 0)) return 0;
  const m = mass / time;
  const b = push + m * flow;
  return (2 * b) / (m + Math.sqrt(m * m + 4 * b * (resistance + 1 / (through * through))));
};

/** Steps over a stroke: they leave 1e-4 of what is passed. */
const steps = 4000;

/**
 * What a valve passes over its stroke, of what it passed in as much time while it was open, where the liquid in the run
 * goes on pressing.
 *
 * Method   T du/dt = 1 - (1 - j) u^2 - j (u/x)^2, u = Q/Q_0, x = 1 - t/t_c, from u = 1;  kappa = integral of u over the
 *          stroke. With T = 0 it is 1/(1 + sqrt j), with j = 1 the half that a straight closing has
 * Symbols  T    inertia  scalar  s      by `inertiaTime`
 *          t_c  closing  scalar  s      > 0
 *          j    jets     ratio   part of the whole head that is left for the jets, > 0
 * Returns  ratio, 0.5 to 1
 * Assumes  all lanes close together; opening in proportion to the stroke; stiff walls, no air
 * Cost     O(1), some thousand steps
 * Source   momentum of a rigid column
 */
export const closingFactor = (inertia: number, closing: number, jets: number): number => {
  const dt = closing / steps;
  // a flow of 1 is that with all open, a head of 1 the whole
  const open = 1 / Math.sqrt(jets);
  let flow = 1;
  let passed = 0;
  for (let i = 1; i <= steps; i++) {
    const next = columnFlow(flow, 1, 1 - jets, inertia, open * (1 - i / steps), dt);
    passed += (0.5 * (flow + next)) / steps;
    flow = next;
  }
  return passed;
};

interface ClosingColumnInputs {
  readonly inertia: number;
  readonly closing: number;
  readonly jets: number;
  readonly flow: number;
}

/** What the after-run counts of a stroke. */
export const straightClosing = 0.5;

export const closingColumnSheet = defineSheet({
  id: 'water/closing-column',
  version: 1,
  inputs: {
    inertia: numberField('time', 'T', times),
    closing: numberField('time', 't_c', { least: 1e-4, most: 100 }),
    jets: numberField('ratio', 'j', { least: 1e-4, most: 1 }),
    flow: numberField('volumeFlow', 'Q_0', flows),
  },
  outputs: { factor: numberField('ratio', '\\kappa'), volume: numberField('volume', '\\Delta V') },
  formula: [
    'T \\dot{u} = 1 - (1 - j) u^2 - j \\left( \\frac{u}{x} \\right)^2, \\quad x = 1 - \\frac{t}{t_c}',
    '\\kappa = \\frac{1}{t_c} \\int_0^{t_c} u \\, dt',
    '\\Delta V = Q_0 t_c (\\kappa - \\frac{1}{2})',
  ],
  limits: [],
  sources: [columnSolver, derived],
  compute: ({ inertia, closing, jets, flow }: ClosingColumnInputs) => {
    const factor = closingFactor(inertia, closing, jets);
    return { factor, volume: flow * closing * (factor - straightClosing) };
  },
});
