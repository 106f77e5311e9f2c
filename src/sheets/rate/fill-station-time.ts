import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { times } from './bounds.ts';
import { definition } from './sources.ts';

/** What a fill station does with one set of bottles, s each. */
export interface FillStationParts {
  readonly travelIn: number;
  readonly lift: number;
  /** Lost while the liquid in the run is set moving. */
  readonly lag: number;
  /** The slowest lane. */
  readonly filling: number;
  readonly drip: number;
  readonly lower: number;
  readonly clearOut: number;
}

/**
 * Time that a fill station takes for one set of bottles, with nobody in its way.
 *
 * Method   t_F = t_e + t_l + t_m + t_f + t_d + t_w + t_x
 * Symbols  the parts, s, each >= 0
 * Returns  time, s
 * Assumes  the steps follow each other; those that overlap are counted once, in one of the parts
 * Cost     O(1)
 * Source   definition
 */
export const fillStationTime = (parts: FillStationParts): number =>
  parts.travelIn + parts.lift + parts.lag + parts.filling + parts.drip + parts.lower + parts.clearOut;

export const fillStationTimeSheet = defineSheet({
  id: 'rate/fill-station-time',
  version: 1,
  inputs: {
    travelIn: numberField('time', 't_e', { ...times, assumed: 0 }),
    lift: numberField('time', 't_l', { ...times, assumed: 0 }),
    lag: numberField('time', 't_m', { ...times, assumed: 0 }),
    filling: numberField('time', 't_f', times),
    drip: numberField('time', 't_d', { ...times, assumed: 0 }),
    lower: numberField('time', 't_w', { ...times, assumed: 0 }),
    clearOut: numberField('time', 't_x', { ...times, assumed: 0 }),
  },
  outputs: { time: numberField('time', 't_F') },
  formula: ['t_F = t_e + t_l + t_m + t_f + t_d + t_w + t_x'],
  limits: [],
  sources: [definition],
  compute: (parts: FillStationParts) => ({ time: fillStationTime(parts) }),
});
