import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { always, authority, heatCaution } from './caution.ts';
import { type Course, courseFields, courseProblems } from './course.ts';
import { equivalentTime } from './lethality.ts';
import { sterilisationArticle } from './sources.ts';

export const sterilisationReferences = ['121.11', '121.1'] as const;
/** Reference in degC: 250 degF, or the same rounded. */
export type SterilisationReference = (typeof sterilisationReferences)[number];

interface FZeroInputs extends Course {
  readonly reference: SterilisationReference;
}

export const fZeroSheet = defineSheet({
  id: 'hygiene/f-zero',
  version: 1,
  inputs: {
    ...courseFields,
    reference: choiceField<SterilisationReference>('T_0', sterilisationReferences, '121.11'),
  },
  outputs: { minutes: numberField('ratio', 'F_0'), time: numberField('time', 't_{121}') },
  formula: ['F_0 = \\int 10^{(T - 121.11)/10} \\, \\mathrm{d}t \\ [\\mathrm{min}]'],
  limits: [authority, always('F_ZERO_REFERENCE'), always('LETHALITY_COLDEST'), heatCaution],
  sources: [sterilisationArticle],
  check: courseProblems,
  compute: (i: FZeroInputs) => {
    const time = equivalentTime(i.times, i.temperatures, Number(i.reference) + 273.15, 10, 0);
    return { minutes: time / 60, time };
  },
});
