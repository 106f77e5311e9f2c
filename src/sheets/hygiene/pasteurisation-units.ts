import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { temperatures } from './bounds.ts';
import { always, authority, heatCaution } from './caution.ts';
import { type Course, courseFields, courseProblems } from './course.ts';
import { equivalentTime } from './lethality.ts';
import { pasteurisationBase, pasteurisationZ } from './sources.ts';

export const pasteurisationLaws = ['1.393', 'z = 7'] as const;
export type PasteurisationLaw = (typeof pasteurisationLaws)[number];

/** z that stands behind each published form, K: 1.393 a kelvin is 1/log10(1.393) = 6.947. */
export const zOfLaw: Readonly<Record<PasteurisationLaw, number>> = {
  '1.393': 1 / Math.log10(1.393),
  'z = 7': 7,
};

interface PasteurisationInputs extends Course {
  readonly law: PasteurisationLaw;
  readonly counts: number;
}

export const pasteurisationUnitsSheet = defineSheet({
  id: 'hygiene/pasteurisation-units',
  version: 1,
  inputs: {
    ...courseFields,
    law: choiceField<PasteurisationLaw>('\\text{law}', pasteurisationLaws, '1.393'),
    counts: numberField('temperature', 'T_{\\min}', { ...temperatures, assumed: 323.15 }),
  },
  outputs: { units: numberField('ratio', '\\mathrm{PU}'), z: numberField('temperatureDifference', 'z') },
  formula: [
    '\\mathrm{PU} = \\int_{T \\ge T_{\\min}} 1.393^{T - 60} \\, \\mathrm{d}t = \\int 10^{(T - 60)/6.947} \\, \\mathrm{d}t \\ [\\mathrm{min}]',
  ],
  limits: [authority, always('PU_TWO_FORMS'), always('PU_FROM_50'), always('LETHALITY_COLDEST'), heatCaution],
  sources: [pasteurisationBase, pasteurisationZ],
  check: courseProblems,
  compute: (i: PasteurisationInputs) => {
    const z = zOfLaw[i.law];
    return { units: equivalentTime(i.times, i.temperatures, 333.15, z, i.counts) / 60, z };
  },
});
