import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { bores, lengths } from './bounds.ts';
import { arithmetic } from './sources.ts';

/**
 * Volume that lies in pipes.
 *
 * Method   V = sum pi/4 D^2 L
 * Symbols  D  bores    [n]  m  > 0
 *          L  lengths  [n]  m  >= 0
 * Returns  m3
 * Cost     O(n)
 * Source   geometry
 */
export const pipesVolume = (boresIn: readonly number[], lengthsIn: readonly number[]): number => {
  let volume = 0;
  for (let i = 0; i < boresIn.length; i++) {
    volume += 0.25 * Math.PI * boresIn[i]! * boresIn[i]! * lengthsIn[i]!;
  }
  return volume;
};

/** Flow that reaches a velocity in the widest of the pipes, m3/s. */
export const flushFlow = (bore: number, velocity: number): number => 0.25 * Math.PI * bore * bore * velocity;

interface FlushingInputs {
  readonly bores: readonly number[];
  readonly lengths: readonly number[];
  readonly turns: number;
  readonly velocity: number;
  readonly available: number;
}

export const flushingSheet = defineSheet({
  id: 'water/flushing',
  version: 1,
  inputs: {
    bores: listField('length', 'D_i', bores),
    lengths: listField('length', 'L_i', lengths),
    // 5 to 20 times the volume are asked, and 1.5 to 2 m/s: common practice
    turns: numberField('ratio', 'n', { least: 1, most: 1000, assumed: 10 }),
    velocity: numberField('velocity', 'v', { least: 0.05, most: 20, assumed: 1.5 }),
    available: numberField('volumeFlow', 'Q_a', { least: 1e-7, most: 100 }),
  },
  outputs: {
    volume: numberField('volume', 'V'),
    flushVolume: numberField('volume', 'V_f'),
    flowWanted: numberField('volumeFlow', 'Q'),
    velocityReached: numberField('velocity', 'v_a'),
    time: numberField('time', 't'),
  },
  formula: [
    'V = \\sum \\frac{\\pi D_i^2}{4} L_i, \\quad V_f = n V, \\quad Q = \\frac{\\pi D_{\\max}^2}{4} v',
    'v_a = \\frac{4 Q_a}{\\pi D_{\\max}^2}, \\quad t = \\frac{V_f}{Q_a}',
  ],
  limits: [
    {
      code: 'FLUSHING_SLOW',
      broken: ({ velocity }, { velocityReached }) => velocityReached < velocity * (1 - 1e-9),
    },
    { code: 'FLUSHING_HABIT', broken: () => true },
    { code: 'FLUSHING_BEFORE', broken: () => true },
  ],
  sources: [
    arithmetic,
    { title: 'pipework trade', place: 'turns and velocity of flushing', mark: 'common practice' },
  ],
  check: ({ bores: given, lengths: along }) => listLengths({ bores: given, lengths: along }),
  compute: (i: FlushingInputs) => {
    const volume = pipesVolume(i.bores, i.lengths);
    const widest = i.bores.reduce((a, b) => Math.max(a, b));
    return {
      volume,
      flushVolume: i.turns * volume,
      flowWanted: flushFlow(widest, i.velocity),
      velocityReached: i.available / flushFlow(widest, 1),
      time: (i.turns * volume) / i.available,
    };
  },
});
