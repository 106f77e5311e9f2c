export type { FillFloor } from './fill-floor.ts';
export { type FillAsk, type FillStory, fillStory, type NoAnswer, type OtherFloor } from './fill-story.ts';
export type { FloorAllowances } from './floor-change.ts';
export { type FillProblemCode, fillProblems } from './problems.ts';
export type { TrialNote, TrialNoteCode, TrialRefused } from './trial-note.ts';
export { slipGround, type TrialSlips, trialSlips } from './trial-slips.ts';
export { type TrialInSi, type TrialsInSi, trialsInSi } from './trials-in-si.ts';
export type { MeasuredSample, WeighedLot, WeighedPackage, WeighedTrial } from './weighed.ts';
