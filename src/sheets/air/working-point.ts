import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { supplyPressures } from './bounds.ts';
import { derived } from './sources.ts';

interface WorkingPointInputs {
  readonly machinePressure: number;
  readonly dryerLoss: number;
  readonly filterLoss: number;
  readonly pipeLoss: number;
  readonly regulatorLoss: number;
  readonly band: number;
  readonly cutOut: number;
}

const losses = (assumed: number) => ({ least: 0, most: 1e6, assumed }) as const;

export const workingPointSheet = defineSheet({
  id: 'air/working-point',
  version: 1,
  inputs: {
    machinePressure: numberField('gaugePressure', 'p_m', supplyPressures),
    // allowances of practice, memory: dryer 0.2, dirty filters up to 0.5, pipe 0.1, regulator 0.3 to 0.7, band 1 bar
    dryerLoss: numberField('pressureDifference', '\\Delta p_1', losses(0.2e5)),
    filterLoss: numberField('pressureDifference', '\\Delta p_2', losses(0.5e5)),
    pipeLoss: numberField('pressureDifference', '\\Delta p_3', losses(0.1e5)),
    regulatorLoss: numberField('pressureDifference', '\\Delta p_4', losses(0.5e5)),
    band: numberField('pressureDifference', '\\Delta p_b', losses(1e5)),
    cutOut: numberField('gaugePressure', 'p_o', supplyPressures),
  },
  outputs: {
    cutInNeeded: numberField('gaugePressure', 'p_{i,n}'),
    cutOutNeeded: numberField('gaugePressure', 'p_{o,n}'),
    margin: numberField('pressureDifference', '\\Delta p_m'),
  },
  formula: [
    'p_{i,n} = p_m + \\Delta p_1 + \\Delta p_2 + \\Delta p_3 + \\Delta p_4, \\quad p_{o,n} = p_{i,n} + \\Delta p_b',
    '\\Delta p_m = p_o - p_{o,n}',
  ],
  limits: [
    { code: 'WORKING_POINT_SHORT', broken: (_, { margin }) => margin < 0 },
    { code: 'WORKING_POINT_ALLOWANCES', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived],
  compute: (i: WorkingPointInputs) => {
    const cutInNeeded = i.machinePressure + i.dryerLoss + i.filterLoss + i.pipeLoss + i.regulatorLoss;
    const cutOutNeeded = cutInNeeded + i.band;
    return { cutInNeeded, cutOutNeeded, margin: i.cutOut - cutOutNeeded };
  },
});
