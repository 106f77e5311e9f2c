import { choiceField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { type Fitness, fitnesses } from './handbook-133-scale.ts';
import { euDirective, ukRegulations } from './rule-sources.ts';
import { someVolumes, volumes } from './weighing-bounds.ts';

/** The error of measuring may be a fifth of the tolerable deficiency. */
const share = 1 / 5;

interface AverageScaleInputs {
  readonly deficiency: number;
  readonly expanded: number;
}

interface AverageScaleOutputs {
  readonly fitness: Fitness;
  readonly largestError: number;
}

/** Whether a measurement of contents is good enough for an average system. */
export const averageScaleSheet = defineSheet<AverageScaleInputs, AverageScaleOutputs>({
  id: 'contents/average-scale',
  version: 1,
  inputs: {
    deficiency: weighedField('volume', 'T', someVolumes),
    expanded: weighedField('volume', 'U', volumes),
  },
  outputs: {
    fitness: choiceField<Fitness>('\\text{fitness}', fitnesses),
    largestError: weighedField('volume', 'E'),
  },
  formula: ['E = \\frac{T}{5}, \\quad U \\le E'],
  limits: [{ code: 'RULE_AUTHORITY', broken: () => true }],
  sources: [euDirective, { ...ukRegulations, place: 'schedule 2, 1.3' }],
  compute: ({ deficiency, expanded }) => {
    const largestError = share * deficiency;
    return {
      fitness: expanded <= largestError * (1 + 1e-9) ? 'fits' : 'does not fit',
      largestError,
    };
  },
});
