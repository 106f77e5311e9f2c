import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { always, authority, heatCaution } from './caution.ts';
import { type Course, courseFields, courseProblems } from './course.ts';
import { equivalentTime } from './lethality.ts';
import { washerManual } from './sources.ts';

export const aZeroSheet = defineSheet({
  id: 'hygiene/a-zero',
  version: 1,
  inputs: courseFields,
  outputs: { seconds: numberField('ratio', 'A_0'), time: numberField('time', 't_{80}') },
  formula: ['A_0 = \\int_{T \\ge 65} 10^{(T - 80)/10} \\, \\mathrm{d}t \\ [\\mathrm{s}]'],
  limits: [authority, always('A_ZERO_NO_RULE'), always('LETHALITY_COLDEST'), heatCaution],
  sources: [washerManual],
  check: courseProblems,
  compute: (i: Course) => {
    // 80 degC is the reference, time below 65 degC does not count
    const time = equivalentTime(i.times, i.temperatures, 353.15, 10, 338.15);
    return { seconds: time, time };
  },
});
