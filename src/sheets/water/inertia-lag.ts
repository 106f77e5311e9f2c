import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { standardGravity } from '../standard-gravity.ts';
import { bores, flows, lengths, times } from './bounds.ts';
import { pipeVelocity } from './pipe-velocity.ts';
import { closedForms } from './sources.ts';

/**
 * Time constant of a liquid column that a steady head sets moving.
 *
 * Method   T = sum(L v0)/(g H)
 * Symbols  sum(L v0)  lengthVelocity  scalar  m2/s  over the pieces, each at its own steady velocity
 *          H          head            scalar  m     the whole head that the steady flow uses up
 * Returns  time, s
 * Assumes  loss with the square of the flow; rigid column
 * Cost     O(1)
 * Source   L/g dv/dt = H (1 - (v/v0)^2)
 */
export const inertiaTime = (lengthVelocity: number, head: number): number =>
  lengthVelocity / (standardGravity * head);

/** Share of the steady flow that runs at a time after opening from rest: tanh(t/T). */
export const startedShare = (time: number, inertia: number): number => Math.tanh(time / inertia);

/**
 * Time that a fill from rest has lost until now against one that starts at full flow.
 *
 * Method   t - T ln cosh(t/T) = T (ln 2 - ln(1 + exp(-2t/T)));  T ln 2 in the end
 * Symbols  t  time     scalar  s  since opening
 *          T  inertia  scalar  s  by `inertiaTime`; 0 loses nothing
 * Returns  time, s
 * Cost     O(1)
 * Source   integral of 1 - tanh(t/T)
 */
export const lostTime = (time: number, inertia: number): number =>
  inertia > 0 ? inertia * (Math.LN2 - Math.log1p(Math.exp((-2 * time) / inertia))) : 0;

interface InertiaLagInputs {
  readonly lengths: readonly number[];
  readonly bores: readonly number[];
  readonly flow: number;
  readonly head: number;
  readonly time: number;
}

export const inertiaLagSheet = defineSheet({
  id: 'water/inertia-lag',
  version: 1,
  inputs: {
    lengths: listField('length', 'L_i', lengths),
    bores: listField('length', 'D_i', bores),
    flow: numberField('volumeFlow', 'Q_0', flows),
    head: numberField('length', 'H', { least: 1e-4, most: 1e4 }),
    time: numberField('time', 't', times),
  },
  outputs: {
    timeConstant: numberField('time', 'T'),
    share: numberField('ratio', '\\frac{v}{v_0}'),
    lostTime: numberField('time', '\\Delta t'),
    lostInAll: numberField('time', '\\Delta t_\\infty'),
  },
  formula: [
    'T = \\frac{\\sum L_i v_{0,i}}{g H}, \\quad v_{0,i} = \\frac{4 Q_0}{\\pi D_i^2}',
    '\\frac{v}{v_0} = \\tanh \\frac{t}{T}',
    '\\Delta t = t - T \\ln \\cosh \\frac{t}{T}, \\quad \\Delta t_\\infty = T \\ln 2',
  ],
  limits: [{ code: 'INERTIA_NOT_STARTED', broken: ({ time }, { timeConstant }) => time < timeConstant }],
  sources: [closedForms],
  check: ({ lengths, bores }) => listLengths({ lengths, bores }),
  compute: ({ lengths, bores, flow, head, time }: InertiaLagInputs) => {
    const T = inertiaTime(
      lengths.reduce((sum, L, i) => sum + L * pipeVelocity(flow, bores[i]!), 0),
      head,
    );
    return {
      timeConstant: T,
      share: T > 0 ? startedShare(time, T) : 1,
      lostTime: lostTime(time, T),
      lostInAll: lostTime(Number.POSITIVE_INFINITY, T),
    };
  },
});
