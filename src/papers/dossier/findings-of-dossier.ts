import type { Finding, FloorAssessment } from '../../floor/assessment.ts';

/**
 * The findings of a floor for which papers that are bound together tell what would carry them: those of the prediction and
 * those of every trade, so that a sheet says the same in the binder as alone.
 */
export const findingsOfDossier = ({ findings, utilities }: FloorAssessment): readonly Finding[] => [
  ...findings,
  ...utilities.findings,
];
