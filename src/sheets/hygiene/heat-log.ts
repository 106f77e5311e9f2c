import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { temperatures, timesAboveZero, zValues } from './bounds.ts';
import { always, authority, heatCaution } from './caution.ts';
import { type Course, courseFields, courseProblems } from './course.ts';
import { equivalentTime } from './lethality.ts';
import { dValueArticle } from './sources.ts';

interface HeatLogInputs extends Course {
  readonly d: number;
  readonly reference: number;
  readonly z: number;
}

export const heatLogSheet = defineSheet({
  id: 'hygiene/heat-log',
  version: 1,
  inputs: {
    ...courseFields,
    d: numberField('time', 'D_0', { least: 1e-3, most: timesAboveZero.most }),
    reference: numberField('temperature', 'T_0', temperatures),
    z: numberField('temperatureDifference', 'z', zValues),
  },
  outputs: { reached: numberField('ratio', 'L'), time: numberField('time', 't_0') },
  formula: ['L = \\int \\frac{\\mathrm{d}t}{D_T} = \\frac{1}{D_0} \\int 10^{(T - T_0)/z} \\, \\mathrm{d}t'],
  limits: [authority, always('LETHALITY_COLDEST'), heatCaution],
  sources: [dValueArticle],
  check: courseProblems,
  compute: (i: HeatLogInputs) => {
    const time = equivalentTime(i.times, i.temperatures, i.reference, i.z, 0);
    return { reached: time / i.d, time };
  },
});
