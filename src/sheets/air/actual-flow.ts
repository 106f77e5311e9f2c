import { type Si, si } from '../../quantity/kinds.ts';
import { normalToActual } from '../../quantity/normal-air.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { absoluteProblems } from './absolute-problems.ts';
import { bores, gaugePressures, normalFlows, roomTemperatures, standardAtmospheres } from './bounds.ts';
import { idealGas } from './sources.ts';

interface ActualFlowInputs {
  readonly flow: Si<'normalAirFlow'>;
  readonly pressure: number;
  readonly atmosphere: number;
  readonly temperature: Si<'temperature'>;
  readonly bore: number;
}

export const actualFlowSheet = defineSheet({
  id: 'air/actual-flow',
  version: 1,
  inputs: {
    flow: numberField('normalAirFlow', 'q_n', normalFlows),
    pressure: numberField('gaugePressure', 'p', gaugePressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T', roomTemperatures),
    bore: numberField('length', 'D', bores),
  },
  outputs: {
    actualFlow: numberField('actualAirFlow', 'q'),
    velocity: numberField('velocity', 'v'),
  },
  formula: ['q = q_n \\frac{p_n}{p + p_a} \\frac{T}{T_n}, \\quad v = \\frac{4 q}{\\pi D^2}'],
  limits: [
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'AIR_VELOCITY_HIGH', broken: (_, { velocity }) => velocity > 15 },
  ],
  sources: [idealGas],
  check: ({ pressure, atmosphere }) => absoluteProblems({ pressure }, atmosphere),
  compute: ({ flow, pressure, atmosphere, temperature, bore }: ActualFlowInputs) => {
    const actualFlow = normalToActual(flow, si('absolutePressure', pressure + atmosphere), temperature);
    return { actualFlow, velocity: actualFlow / (0.25 * Math.PI * bore * bore) };
  },
});
