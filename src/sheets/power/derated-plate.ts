import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { somePowers } from './bounds.ts';
import { always, caution } from './caution.ts';
import { circuitTheory } from './sources.ts';

/** Of frequencies and voltages that were divided by each other. */
const rounding = 1e-9;

/**
 * Share of its plate that a motor may give at another frequency, held to the current of its plate: the torque of the plate
 * at the flux of the plate, less at less flux, and never more power than the plate.
 *
 * Method   k_f = min(1, q min(1, k)); 1 at the frequency of the plate
 * Symbols  q  speedRatio  ratio  f/f_N;  k  flux  ratio  (U/f)/(U_N/f_N)
 * Returns  ratio
 * Assumes  torque goes with flux times current; a fan on the shaft that turns slower cools less, which is left out
 * Cost     O(1)
 * Source   volts per hertz of an induction motor, derived
 */
export const frequencyFactor = (speedRatio: number, flux: number): number =>
  Math.abs(speedRatio - 1) < rounding ? 1 : Math.min(1, speedRatio * Math.min(1, flux));

interface DeratedPlateInputs {
  readonly platePower: number;
  readonly serviceFactor: number;
  readonly unbalance: number;
  readonly surroundings: number;
  readonly speedRatio: number;
  readonly flux: number;
  readonly capacity: number;
}

/**
 * Share of its plate that a motor may give where unbalance, heat, altitude and another frequency take from it.
 *
 * Method   k = k_u k_a min(k_f, k_c); the service factor counts only where nothing takes from the plate
 * Symbols  k_u  unbalance     ratio  0 to 1;  k_a  surroundings  ratio  0 to 1
 *          k_c  capacity      ratio  0 to 1, by a maker's table for the other frequency
 *          q, k               as in `frequencyFactor`
 * Returns  ratios: of the frequency alone, of all
 * Assumes  each leaves its share of what the others left
 * Cost     O(1)
 * Source   product of the factors; no service factor off the usual conditions: NEMA MG 1, memory
 */
export const deratedShare = (
  i: DeratedPlateInputs,
): { readonly frequency: number; readonly share: number } => {
  const frequency = Math.min(i.capacity, frequencyFactor(i.speedRatio, i.flux));
  const left = i.unbalance * i.surroundings * frequency;
  return { frequency, share: left < 1 - rounding ? left : i.serviceFactor };
};

const factor = { above: 0, most: 1, assumed: 1 } as const;

export const deratedPlateSheet = defineSheet({
  id: 'power/derated-plate',
  version: 1,
  inputs: {
    platePower: numberField('power', 'P_N', somePowers),
    serviceFactor: numberField('ratio', 'k_s', { least: 1, most: 1.5, assumed: 1 }),
    unbalance: numberField('ratio', 'k_u', factor),
    surroundings: numberField('ratio', 'k_a', factor),
    speedRatio: numberField('ratio', 'q', { above: 0, most: 10, assumed: 1 }),
    flux: numberField('ratio', 'k_{\\Phi}', { above: 0, most: 10, assumed: 1 }),
    capacity: numberField('ratio', 'k_c', factor),
  },
  outputs: {
    frequency: numberField('ratio', 'k_f'),
    share: numberField('ratio', 'k'),
    power: numberField('power', 'P'),
  },
  formula: [
    'k_f = \\min \\left( k_c,\\ 1,\\ q \\min(1, k_{\\Phi}) \\right), \\quad k_f = k_c \\text{ at the frequency of the plate}',
    'k = k_u\\, k_a\\, k_f \\text{ under } 1, \\text{ else } k_s, \\quad P = k\\, P_N',
  ],
  limits: [
    caution,
    always('DERATED_MAKER_DECIDES'),
    {
      code: 'DERATED_NO_SERVICE_FACTOR',
      broken: ({ serviceFactor }, { share }) => serviceFactor > 1 && share < 1,
    },
  ],
  sources: [
    circuitTheory,
    { title: 'NEMA MG 1, service factor under the usual conditions only', place: 'part 14', mark: 'memory' },
  ],
  compute: (i: DeratedPlateInputs) => {
    const { frequency, share } = deratedShare(i);
    return { frequency, share, power: share * i.platePower };
  },
});
