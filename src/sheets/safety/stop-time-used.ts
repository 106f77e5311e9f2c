import { univariate } from '../../statistics/univariate.ts';
import { choiceField, listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { stopTimes } from './bounds.ts';
import { guardingCaution } from './caution.ts';

/** Readings that the rule wants. */
export const stopReadings = 10;

export const stopTimeSettlers = ['highest', 'spread'] as const;
export type StopTimeSettler = (typeof stopTimeSettlers)[number];

interface StopTimeInputs {
  readonly readings: readonly number[];
  readonly wear: number;
}

/**
 * Stop time that distances are worked out with.
 *
 * Method   T = (1 + w) max(max t, mean t + 3 s)
 * Symbols  t  readings  [n]     s        n >= 2, ten or more wanted
 *          w  wear      scalar  share    added for brakes and valves that wear
 * Returns  highest, mean, sd with n - 1, mean + 3 s, which of both settles, T
 * Assumes  stops at the worst speed, load, pressure, temperature and place
 * Cost     O(n)
 * Source   rule of ten stops and three standard deviations, memory; definition of mean and sd
 */
export const stopTimeUsed = ({ readings, wear }: StopTimeInputs) => {
  const { mean, sd = 0 } = univariate(readings);
  const highest = Math.max(...readings);
  const spread = mean + 3 * sd;
  const settledBy: StopTimeSettler = highest >= spread ? 'highest' : 'spread';
  return { highest, mean, sd, spread, settledBy, time: (1 + wear) * Math.max(highest, spread) };
};

export const stopTimeUsedSheet = defineSheet({
  id: 'safety/stop-time-used',
  version: 1,
  inputs: {
    readings: listField('time', 't', { ...stopTimes, fewest: 2 }),
    wear: numberField('ratio', 'w', { least: 0, most: 1 }),
  },
  outputs: {
    highest: numberField('time', '\\max t'),
    mean: numberField('time', '\\bar{t}'),
    sd: numberField('time', 's'),
    spread: numberField('time', '\\bar{t} + 3 s'),
    settledBy: choiceField<StopTimeSettler>('\\text{settled by}', stopTimeSettlers),
    time: numberField('time', 'T'),
  },
  formula: ['T = (1 + w) \\max\\left( \\max t_i,\\ \\bar{t} + 3 s \\right)'],
  limits: [
    guardingCaution,
    {
      code: 'STOP_READINGS_FEW',
      broken: ({ readings }) => readings.length < stopReadings,
      parts: ({ readings }) => ({ n: readings.length, wanted: stopReadings }),
    },
    { code: 'STOP_NO_WEAR', broken: ({ wear }) => wear === 0 },
    { code: 'STOP_MEASURE_AGAIN', broken: () => true },
    { code: 'STOP_RULE_MEMORY', broken: () => true },
  ],
  sources: [
    {
      title: 'rule of ten stops, the highest or three standard deviations over the mean',
      place: 'recalled; public manuals agree only that the measured time is used',
      mark: 'memory',
    },
  ],
  compute: stopTimeUsed,
});
