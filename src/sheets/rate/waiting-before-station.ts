import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { ratesAboveZero } from './bounds.ts';
import { queueTheory } from './trial-sources.ts';

interface WaitingInputs {
  readonly arrivals: number;
  readonly pace: number;
  readonly variation: number;
}

interface Waiting {
  readonly load: number;
  readonly wait: number;
  readonly through: number;
  readonly waiting: number;
  readonly present: number;
}

/** A load from which a mean over one shift tells little. */
const heavyLoad = 0.9;

/**
 * Bottles that wait before a station of one head, with room for any number.
 *
 * Method   W_q = rho (1 + c^2)/(2 (mu - lambda)),  W = W_q + 1/mu,  L_q = lambda W_q,  L = lambda W
 * Symbols  lambda  arrivals   scalar  1/s    > 0, < mu
 *          mu      pace       scalar  1/s    > 0, of the station while it has bottles
 *          c       variation  ratio          standard deviation of its time for a bottle over the mean: 0 a cam,
 *                                            1 times that vary like the gaps between chance events
 * Returns  load rho; wait and time through, s; bottles waiting, and with the one at the head
 * Assumes  bottles come at random and are taken in turn
 * Cost     O(1)
 * Source   Pollaczek and Khinchine; Little
 */
export const waitingBeforeStation = ({ arrivals, pace, variation }: WaitingInputs): Waiting => {
  const load = arrivals / pace;
  const wait = (load * (1 + variation * variation)) / (2 * (pace - arrivals));
  const through = wait + 1 / pace;
  return { load, wait, through, waiting: arrivals * wait, present: arrivals * through };
};

export const waitingBeforeStationSheet = defineSheet<WaitingInputs, Waiting>({
  id: 'rate/waiting-before-station',
  version: 1,
  inputs: {
    arrivals: numberField('rate', '\\lambda', ratesAboveZero),
    pace: numberField('rate', '\\mu', ratesAboveZero),
    variation: numberField('ratio', 'c', { least: 0, most: 100, assumed: 1 }),
  },
  outputs: {
    load: numberField('ratio', '\\rho'),
    wait: numberField('time', 'W_q'),
    through: numberField('time', 'W'),
    waiting: numberField('count', 'L_q'),
    present: numberField('count', 'L'),
  },
  formula: [
    '\\rho = \\frac{\\lambda}{\\mu}, \\quad W_q = \\frac{\\rho\\, (1 + c^2)}{2\\, (\\mu - \\lambda)}, \\quad W = W_q + \\frac{1}{\\mu}',
    'L_q = \\lambda W_q, \\quad L = \\lambda W',
  ],
  limits: [
    { code: 'WAIT_RANDOM_ARRIVALS', broken: () => true },
    { code: 'WAIT_NEARLY_FULL', broken: (_, { load }) => load > heavyLoad },
  ],
  sources: [queueTheory],
  check: ({ arrivals, pace }) =>
    arrivals < pace ? [] : [{ code: 'WAIT_GROWS', path: 'arrivals', given: arrivals, allowed: `< ${pace}` }],
  compute: waitingBeforeStation,
});
