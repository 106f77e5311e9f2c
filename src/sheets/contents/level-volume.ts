import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { heights, lengths } from './weighing-bounds.ts';
import { geometry } from './weighing-sources.ts';

/**
 * Volume that a step of the level is worth in a round neck.
 *
 * Method   V = pi/4 d^2 h
 * Symbols  d  bore   scalar  m
 *          h  step   scalar  m
 * Returns  m3
 * Assumes  a cylindrical neck over the step
 * Cost     O(1)
 * Source   geometry
 */
export const levelVolume = (bore: number, step: number): number => 0.25 * Math.PI * bore * bore * step;

interface LevelVolumeInputs {
  readonly bore: number;
  readonly step: number;
}

export const levelVolumeSheet = defineSheet({
  id: 'contents/level-volume',
  version: 1,
  inputs: {
    bore: numberField('length', 'd', lengths),
    step: numberField('length', 'h', { ...heights, assumed: 1e-3 }),
  },
  outputs: { volume: weighedField('volume', 'V') },
  formula: ['V = \\frac{\\pi}{4} d^2 h'],
  limits: [],
  sources: [geometry],
  compute: (i: LevelVolumeInputs) => ({ volume: levelVolume(i.bore, i.step) }),
});
