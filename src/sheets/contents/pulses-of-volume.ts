import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { someFillVolumes } from './fill-bounds.ts';
import { meterResolution } from './pulse-sources.ts';

interface PulsesOfVolumeInputs {
  readonly pulses: number;
  readonly volume: number;
  readonly meterClass: number;
}

interface PulsesOfVolumeOutputs {
  readonly lowest: number;
  readonly highest: number;
}

/**
 * Between which bounds the pulses that were counted, by the volume that was weighed or measured, must lie for the counter
 * to be the one that the book says.
 *
 * Method   the largest error of the meter, and one pulse more or less in the count: k (1 -+ c) -+ 1/V
 * Symbols  pulses      k  pulses of the meter for a volume  1/m3
 *          volume      V  least volume that is let through  m3; more of it is held closer than need be asked
 *          meterClass  c  largest error of the meter over its range, ratio
 * Returns  bounds, 1/m3; the lower one never below nothing
 * Assumes  the volume itself is known far better than the class: a scale or a vessel with a certificate
 * Cost     O(1)
 * Source   one pulse in the count: Comstock 1993 (read in its abstract); the class: what its maker states
 */
export const pulsesOfVolume = ({
  pulses,
  volume,
  meterClass,
}: PulsesOfVolumeInputs): PulsesOfVolumeOutputs => ({
  lowest: Math.max(0, pulses * (1 - meterClass) - 1 / volume),
  highest: pulses * (1 + meterClass) + 1 / volume,
});

export const pulsesOfVolumeSheet = defineSheet<PulsesOfVolumeInputs, PulsesOfVolumeOutputs>({
  id: 'contents/pulses-of-volume',
  version: 1,
  inputs: {
    pulses: numberField('pulseDensity', 'k', { above: 0, most: 1e12 }),
    volume: numberField('volume', 'V', { ...someFillVolumes, above: 1e-9 }),
    meterClass: numberField('ratio', 'c', { least: 0, most: 0.2 }),
  },
  outputs: {
    lowest: numberField('pulseDensity', 'k_1'),
    highest: numberField('pulseDensity', 'k_2'),
  },
  formula: ['k_1 = k (1 - c) - \\frac{1}{V}', 'k_2 = k (1 + c) + \\frac{1}{V}'],
  limits: [{ code: 'PULSES_FEW', broken: ({ pulses, volume }) => pulses * volume < 100 }],
  sources: [meterResolution],
  compute: pulsesOfVolume,
});
