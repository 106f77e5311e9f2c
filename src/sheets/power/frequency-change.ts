import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { affineHead, affinePower } from '../water/pump-affinity.ts';
import { frequencies, somePowers, voltages } from './bounds.ts';
import { always, caution } from './caution.ts';

export type LoadLaw = 'pump-or-fan' | 'constant-torque' | 'constant-power';

/**
 * Shaft power that a load asks at another speed.
 *
 * Method   P q^3 of a pump or fan (same impeller), P q of a constant torque, P of a constant power
 * Symbols  power  scalar  W at the old speed;  q  ratio of the speeds
 * Returns  W
 * Cost     O(1)
 * Source   affinity laws, DOE Fundamentals Handbook, Fluid Flow
 */
export const loadPower = (power: number, speedRatio: number, law: LoadLaw): number => {
  switch (law) {
    case 'pump-or-fan':
      return affinePower(power, speedRatio);
    case 'constant-torque':
      return power * speedRatio;
    case 'constant-power':
      return power;
  }
};

/** Flux of a motor against its plate: (U/f)/(U_N/f_N). Over 1.10 the iron saturates, under 0.9 torque is short. */
export const fluxRatio = (
  voltage: number,
  frequency: number,
  plateVoltage: number,
  plateFrequency: number,
): number => voltage / frequency / (plateVoltage / plateFrequency);

interface FrequencyChangeInputs {
  readonly platePower: number;
  readonly shaftPower: number;
  readonly law: LoadLaw;
  readonly plateFrequency: number;
  readonly supplyFrequency: number;
  readonly plateVoltage: number;
  readonly supplyVoltage: number;
  readonly serviceFactor: number;
}

/** A motor straight on a supply of another frequency: speed, shaft power against its plate, flux, torques. */
export const frequencyChangeSheet = defineSheet({
  id: 'power/frequency-change',
  version: 1,
  inputs: {
    platePower: numberField('power', 'P_N', somePowers),
    shaftPower: numberField('power', 'P_1', somePowers),
    law: choiceField<LoadLaw>('\\text{load}', ['pump-or-fan', 'constant-torque', 'constant-power']),
    plateFrequency: numberField('frequency', 'f_N', frequencies),
    supplyFrequency: numberField('frequency', 'f', frequencies),
    plateVoltage: numberField('voltage', 'U_N', voltages),
    supplyVoltage: numberField('voltage', 'U', voltages),
    serviceFactor: numberField('ratio', 'k_s', { least: 1, most: 1.5, assumed: 1 }),
  },
  outputs: {
    speedRatio: numberField('ratio', 'q'),
    headRatio: numberField('ratio', 'q^2'),
    shaftPower: numberField('power', 'P_2'),
    loading: numberField('ratio', 'P_2 / P_N'),
    torqueLoading: numberField('ratio', 'T_2 / T_N'),
    flux: numberField('ratio', 'k'),
    rightVoltage: numberField('voltage', 'U_{\\text{right}}'),
    maximumTorque: numberField('ratio', 'T_{\\max} / T_{\\max,N}'),
    startTorque: numberField('ratio', 'T_{LR} / T_{LR,N}'),
    startCurrent: numberField('ratio', 'I_{LR} / I_{LR,N}'),
  },
  formula: [
    'q = \\frac{f}{f_N}, \\quad P_2 = q^3 P_1 \\ (\\text{pump, fan}),\\ q P_1 \\ (\\text{constant torque}),\\ P_1 \\ (\\text{constant power})',
    '\\frac{T_2}{T_N} = \\frac{P_2}{q P_N}, \\quad k = \\frac{U / f}{U_N / f_N}, \\quad U_{\\text{right}} = q\\, U_N',
    '\\frac{T_{\\max}}{T_{\\max,N}} = k^2, \\quad \\frac{I_{LR}}{I_{LR,N}} = k, \\quad \\frac{T_{LR}}{T_{LR,N}} = \\frac{k^2}{q}',
  ],
  limits: [
    caution,
    {
      code: 'FREQUENCY_OVERLOADS_MOTOR',
      broken: ({ serviceFactor }, { loading }) => loading > serviceFactor * (1 + 1e-9),
      parts: (_, { loading }) => ({ percent: Math.round(100 * loading) }),
    },
    { code: 'FREQUENCY_FLUX_HIGH', broken: (_, { flux }) => flux > 1.1 },
    { code: 'FREQUENCY_FLUX_LOW', broken: (_, { flux }) => flux < 0.9 },
    {
      code: 'FREQUENCY_FLUX_OFF',
      broken: (_, { flux }) => flux >= 0.9 && flux <= 1.1 && Math.abs(flux - 1) > 0.05,
    },
    {
      code: 'FREQUENCY_PUMP_FASTER',
      broken: ({ law }, { speedRatio }) => law === 'pump-or-fan' && speedRatio > 1 + 1e-9,
    },
    {
      code: 'FREQUENCY_PUMP_SLOWER',
      broken: ({ law }, { speedRatio }) => law === 'pump-or-fan' && speedRatio < 1 - 1e-9,
    },
    {
      code: 'FREQUENCY_LINE_SPEED',
      broken: ({ law }, { speedRatio }) => law !== 'pump-or-fan' && Math.abs(speedRatio - 1) > 1e-9,
    },
    always('FREQUENCY_STARTING_FROM_LEAKAGE'),
  ],
  sources: [
    {
      title: 'DOE Fundamentals Handbook, Fluid Flow',
      edition: 'HT-03',
      place: 'p. 50, affinity laws',
      mark: 'read',
    },
    { title: 'public page on a 60 Hz motor on 50 Hz', place: 'volts per hertz', mark: 'read' },
    { title: 'equivalent circuit with leakage reactance only', place: 'derived', mark: 'computed' },
  ],
  compute: (i: FrequencyChangeInputs) => {
    const q = i.supplyFrequency / i.plateFrequency;
    const shaftPower = loadPower(i.shaftPower, q, i.law);
    const flux = fluxRatio(i.supplyVoltage, i.supplyFrequency, i.plateVoltage, i.plateFrequency);
    return {
      speedRatio: q,
      headRatio: affineHead(1, q),
      shaftPower,
      loading: shaftPower / i.platePower,
      torqueLoading: shaftPower / (q * i.platePower),
      flux,
      rightVoltage: q * i.plateVoltage,
      maximumTorque: flux * flux,
      startTorque: (flux * flux) / q,
      startCurrent: flux,
    };
  },
});
