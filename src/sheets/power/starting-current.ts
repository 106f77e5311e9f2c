import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { currents } from './bounds.ts';
import { always, caution } from './caution.ts';
import { circuitTheory } from './sources.ts';

const usual = {
  title: 'motor trade',
  place: 'starting current of cage motors',
  mark: 'common practice',
} as const;

/**
 * Current of a cage motor while it starts, where its plate and its maker do not say.
 *
 * Method   I_s = k s I
 * Symbols  I  current  scalar  A  rated
 *          k  factor   scalar  1  5 to 7 started direct, from memory
 *          s  share    scalar  1  1 direct, 1/3 star-delta
 * Returns  A
 * Cost     O(1)
 * Source   common practice; star-delta: a third of the line current, read
 */
export const startingCurrent = (current: number, factor: number, share: number): number =>
  factor * share * current;

interface StartingCurrentInputs {
  readonly current: number;
  readonly factor: number;
  readonly share: number;
}

export const startingCurrentSheet = defineSheet({
  id: 'power/starting-current',
  version: 1,
  inputs: {
    current: numberField('current', 'I', currents),
    factor: numberField('ratio', 'k', { least: 1, most: 15, assumed: 6 }),
    share: numberField('ratio', 's', { least: 0.05, most: 1, assumed: 1 }),
  },
  outputs: { start: numberField('current', 'I_s') },
  formula: ['I_s = k s I'],
  limits: [caution, always('START_ESTIMATED')],
  sources: [circuitTheory, usual],
  compute: (i: StartingCurrentInputs) => ({ start: startingCurrent(i.current, i.factor, i.share) }),
});
