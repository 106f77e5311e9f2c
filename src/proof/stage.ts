import { stages } from '../book/schema/milestones.ts';

export { stages };

export type Stage = (typeof stages)[number];

/** Place of a stage in the order. */
export const stageOrder = (stage: Stage): number => stages.indexOf(stage);
