import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { volumes } from './bounds.ts';
import { doseVolume, type MeterPhase, phaseBias } from './lane-dose.ts';
import { derived } from './sources.ts';

/**
 * Count at which a lane must shut so that its mean volume comes nearest to the target.
 *
 * Method   N = round( k (V - V_a - bias) )
 * Symbols  V    target        scalar  m3    > 0
 *          V_a  after         scalar  m3    by `afterRun`
 *          k    pulseDensity  scalar  1/m3  > 0
 *          bias               scalar  m3    by `phaseBias`
 * Returns  whole number of pulses, never negative
 * Cost     O(1)
 * Source   mass balance
 */
export const countPreset = (target: number, after: number, pulseDensity: number, bias: number): number =>
  Math.max(0, Math.round(pulseDensity * (target - after - bias)));

interface CountPresetInputs {
  readonly target: number;
  readonly afterRun: number;
  readonly pulseDensity: number;
  readonly phase: MeterPhase;
}

export const countPresetSheet = defineSheet({
  id: 'water/count-preset',
  version: 1,
  inputs: {
    target: numberField('volume', 'V', volumes),
    afterRun: numberField('volume', 'V_a', volumes),
    pulseDensity: numberField('pulseDensity', 'k', { least: 1, most: 1e12 }),
    phase: choiceField<MeterPhase>('\\text{phase}', ['free-running', 'reset'], 'free-running'),
  },
  outputs: {
    pulses: numberField('count', 'N'),
    volume: numberField('volume', 'V_N'),
    rounding: numberField('volume', '\\Delta V'),
  },
  formula: [
    'N = \\operatorname{round} \\left( k (V - V_a - \\delta) \\right), \\quad \\delta = -\\frac{1}{2 k} \\ \\text{or}\\ 0',
    '\\Delta V = \\frac{N}{k} + V_a + \\delta - V',
  ],
  limits: [
    { code: 'DOSE_FEW_COUNTS', broken: (_, { pulses }) => pulses < 1000 },
    { code: 'PRESET_AFTER_RUN', broken: ({ target, afterRun }) => afterRun >= target },
  ],
  sources: [derived],
  compute: ({ target, afterRun, pulseDensity, phase }: CountPresetInputs) => {
    const bias = phaseBias(pulseDensity, phase);
    const pulses = countPreset(target, afterRun, pulseDensity, bias);
    const volume = doseVolume(pulses, pulseDensity, afterRun, bias);
    return { pulses, volume, rounding: volume - target };
  },
});
