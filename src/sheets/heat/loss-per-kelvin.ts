import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { heatFlows, roomTemperatures, waterTemperatures } from './bounds.ts';
import { heatBalance } from './sources.ts';

/**
 * Heat that a bath loses for each kelvin over its room.
 *
 * Method   U = P/(T - T_a)
 * Symbols  P    loss  scalar  W  when warm
 *          T    bath  scalar  K
 *          T_a  room  scalar  K  below T
 * Returns  W/K
 * Problems LOSS_NO_DIFFERENCE
 * Assumes  the loss goes with the difference; evaporation grows faster, so a bath that warms up loses less
 * Cost     O(1)
 * Source   heat balance
 */
export const lossPerKelvin = (loss: number, bath: number, room: number): number => loss / (bath - room);

interface LossPerKelvinInputs {
  readonly loss: number;
  readonly bath: number;
  readonly room: number;
}

export const lossPerKelvinSheet = defineSheet({
  id: 'heat/loss-per-kelvin',
  version: 1,
  inputs: {
    loss: numberField('heatFlow', 'P', heatFlows),
    bath: numberField('temperature', 'T', waterTemperatures),
    room: numberField('temperature', 'T_a', roomTemperatures),
  },
  outputs: { heatTransfer: numberField('heatTransfer', 'U') },
  formula: ['U = \\frac{P}{T - T_a}'],
  limits: [{ code: 'LOSS_WHILE_WARMING', broken: () => true }],
  sources: [heatBalance],
  check: ({ bath, room }) =>
    bath - room > 0.5
      ? []
      : [{ code: 'LOSS_NO_DIFFERENCE', path: 'room', given: room, allowed: `< ${bath}` }],
  compute: (i: LossPerKelvinInputs) => ({ heatTransfer: lossPerKelvin(i.loss, i.bath, i.room) }),
});
