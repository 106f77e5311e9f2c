import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows, heads, speedRatios } from './bounds.ts';

/** Flow, head and power of a pump at another speed: Q s, H s^2, P s^3. Same impeller, efficiency unchanged. */
export const affineFlow = (flow: number, speedRatio: number): number => flow * speedRatio;
export const affineHead = (head: number, speedRatio: number): number => head * speedRatio ** 2;
export const affinePower = (power: number, speedRatio: number): number => power * speedRatio ** 3;

interface PumpAffinityInputs {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
  readonly speedRatio: number;
}

export const pumpAffinitySheet = defineSheet({
  id: 'water/pump-affinity',
  version: 1,
  inputs: {
    flow: numberField('volumeFlow', 'Q_1', flows),
    head: numberField('length', 'H_1', heads),
    power: numberField('power', 'P_1', { least: 0, most: 1e9 }),
    speedRatio: numberField('ratio', 's', speedRatios),
  },
  outputs: {
    flow: numberField('volumeFlow', 'Q_2'),
    head: numberField('length', 'H_2'),
    power: numberField('power', 'P_2'),
  },
  formula: ['Q_2 = s\\, Q_1, \\quad H_2 = s^2 H_1, \\quad P_2 = s^3 P_1'],
  limits: [
    { code: 'AFFINITY_NOT_OPERATING_POINT', broken: () => true },
    { code: 'PUMP_SPEED_FAR', broken: ({ speedRatio }) => speedRatio < 0.7 || speedRatio > 1.3 },
  ],
  sources: [
    {
      title: 'DOE Fundamentals Handbook, Fluid Flow',
      edition: 'HT-03',
      place: 'p. 50, eq. 3-23 to 3-25',
      mark: 'read',
    },
  ],
  compute: ({ flow, head, power, speedRatio }: PumpAffinityInputs) => ({
    flow: affineFlow(flow, speedRatio),
    head: affineHead(head, speedRatio),
    power: affinePower(power, speedRatio),
  }),
});
