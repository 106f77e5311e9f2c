import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { gaugePressures, supplyPressures } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Pressure to which a receiver may fall before the drop has less than it needs.
 *
 * Method   p_min = p_r - (p_d - p_n)
 * Symbols  p_r  receiver  scalar  Pa gauge
 *          p_d  arrives   scalar  Pa gauge  at the drop, with p_r at the receiver
 *          p_n  needed    scalar  Pa gauge  at the drop
 * Returns  Pa gauge; above p_r where the drop has too little already
 * Assumes  as much is lost on the way as now
 * Cost     O(1)
 * Source   definition
 */
export const receiverLeast = (receiver: number, arrives: number, needed: number): number =>
  receiver - (arrives - needed);

interface ReceiverLeastInputs {
  readonly receiver: number;
  readonly arrives: number;
  readonly needed: number;
}

export const receiverLeastSheet = defineSheet({
  id: 'air/receiver-least',
  version: 1,
  inputs: {
    receiver: numberField('gaugePressure', 'p_r', supplyPressures),
    arrives: numberField('gaugePressure', 'p_d', gaugePressures),
    needed: numberField('gaugePressure', 'p_n', supplyPressures),
  },
  outputs: { least: numberField('gaugePressure', 'p_{\\min}') },
  formula: ['p_{\\min} = p_r - (p_d - p_n)'],
  limits: [
    { code: 'RECEIVER_DROP_SHORT', broken: ({ arrives, needed }) => arrives < needed },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived],
  compute: (i: ReceiverLeastInputs) => ({ least: receiverLeast(i.receiver, i.arrives, i.needed) }),
});
